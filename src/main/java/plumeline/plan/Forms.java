package plumeline.plan;

import java.util.ArrayList;
import java.util.List;
import plumeline.quantity.Kind;
import plumeline.text.Range;
import plumeline.text.Shape;

/// Short names for the shapes that the grammar is made of.
final class Forms {
    static final int LONGEST_TEXT = 500;
    static final long MOST_FRAMES = 10_000_000;

    private Forms() {}

    static Shape any(Kind kind) {
        return new Shape.Amount(kind, Range.ANY, Shape.Mark.FIXED);
    }

    static Shape over(Kind kind) {
        return new Shape.Amount(kind, Range.POSITIVE, Shape.Mark.FIXED);
    }

    static Shape from0(Kind kind) {
        return new Shape.Amount(kind, Range.NOT_NEGATIVE, Shape.Mark.FIXED);
    }

    static Shape kelvin() {
        return new Shape.Amount(Kind.COLOUR_TEMPERATURE, Range.between("1000 K", "100000 K"), Shape.Mark.FIXED);
    }

    static Shape share(String low, String high) {
        return new Shape.Amount(Kind.SHARE, Range.between(low, high), Shape.Mark.FIXED);
    }

    /// A share that isn't nothing.
    static Shape someShare() {
        return new Shape.Amount(Kind.SHARE, Range.above("0 %", "100 %"), Shape.Mark.FIXED);
    }

    static Shape share() {
        return share("0 %", "100 %");
    }

    static Shape mark(Kind kind, Range range) {
        return new Shape.Amount(kind, range, Shape.Mark.FREE);
    }

    static Shape word(String... words) {
        return new Shape.Choice(List.of(words));
    }

    static Shape yesNo() {
        return new Shape.YesNo();
    }

    /// A colour as screens and label files have it.
    static Shape colourCode() {
        return new Shape.Written("#[0-9a-fA-F]{6}", "a colour in quotes", "\"#2a9d8f\"");
    }

    static Shape text() {
        return new Shape.Free(LONGEST_TEXT);
    }

    static Shape name(String what) {
        return new Shape.Reference(what, Shape.Variants.NONE);
    }

    static Shape names(String what) {
        return either(name(what), new Shape.Items(name(what), 1, 100));
    }

    static Shape either(Shape... shapes) {
        return new Shape.AnyOf(List.of(shapes));
    }

    static Shape pair(String first, String second, Shape shape) {
        return new Shape.Tuple(List.of(new Shape.Part(first, shape), new Shape.Part(second, shape)), 2);
    }

    /// A place by two or three coordinates, each a mark, or `free` as a whole.
    static Shape spot(int least) {
        return either(word("free"), vector(mark(Kind.LENGTH, Range.ANY), least));
    }

    static Shape vector(Shape component, int least) {
        var parts = new ArrayList<Shape.Part>();
        for (var name : List.of("x", "y", "z")) parts.add(new Shape.Part(name, component));
        return new Shape.Tuple(parts, least);
    }

    /// A count of screen frames, with its unit or bare.
    static Shape frames() {
        return either(
                new Shape.Whole(1, MOST_FRAMES),
                new Shape.Amount(Kind.FRAMES, Range.between("1 frames", MOST_FRAMES + " frames"), Shape.Mark.FIXED));
    }

    static Shape start() {
        return either(from0(Kind.TIME), from0(Kind.FRAMES));
    }

    static Shape when() {
        return either(word("start", "end", "whole"), from0(Kind.TIME), from0(Kind.FRAMES));
    }

    static Shape.Key must(String name, String doc, Shape shape) {
        return Shape.Key.required(name, doc, shape);
    }

    static Shape.Key may(String name, String doc, Shape shape) {
        return Shape.Key.optional(name, doc, shape);
    }

    static Shape.Rule atMostOne(String... keys) {
        return new Shape.Rule.AtMostOne(List.of(keys));
    }

    static Shape.Rule atLeastOne(String... keys) {
        return new Shape.Rule.AtLeastOne(List.of(keys));
    }
}
