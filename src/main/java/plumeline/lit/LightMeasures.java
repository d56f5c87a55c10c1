package plumeline.lit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import plumeline.plan.Named;
import plumeline.plan.Release;
import plumeline.plan.Shot;
import plumeline.plan.WantLine;
import plumeline.plan.Written;
import plumeline.quantity.Quantity;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// From a want on light as written to what it measures.
public final class LightMeasures {
    private static final double WITHIN_STOPS = 0.5;
    private static final double WITHIN_SHARE = 0.02;

    /// Rims as wide show in any cut: common practice.
    private static final double WIDE_SHARE = 0.03;

    /// So much less light counts as dark where nobody says: common practice.
    private static final double DARK_STOPS = 3;

    /// What comes of a want on light.
    public sealed interface Reading {
        /// It can be measured.
        ///
        /// @param measure what it measures
        record Of(Measure measure) implements Reading {}

        /// It can't.
        ///
        /// @param reason what is missing
        record Missing(String reason) implements Reading {}
    }

    private LightMeasures() {}

    /// Tells whether a want word is one of light.
    ///
    /// @param word the want word
    /// @return true for those that are read here
    public static boolean isOne(String word) {
        return switch (word) {
            case "lit", "dark", "even", "ratio", "no_shadow", "highlight", "no_highlight", "edges" -> true;
            default -> false;
        };
    }

    /// Reads a want.
    ///
    /// @param line the want, of one of these words
    /// @param stage the shot
    /// @param film the film's rate
    /// @return what it measures
    public static Reading of(WantLine line, Stage stage, Quantity film) {
        Reading reading = read(line, stage, film);
        boolean isOfForms = List.of("highlight", "no_highlight", "edges").contains(line.word());
        if (isOfForms || reading instanceof Reading.Missing) {
            return reading;
        }
        // What no mark makes known pulls at none.
        Scene start = stage.scene(stage.startValues(), 0);
        return Unlit.findLacking(new Lighting(stage.shot(), start, stage.findTank()).lamps())
                .<Reading>map(Reading.Missing::new)
                .orElse(reading);
    }

    private static Reading read(WantLine line, Stage stage, Quantity film) {
        Written keys = line.written();
        return switch (line.word()) {
            case "lit" -> lit(line, stage, new Lit.Wanted.Within(si(keys, "within", WITHIN_STOPS)), film);
            case "dark" -> lit(line, stage, new Lit.Wanted.Under(si(keys, "by", DARK_STOPS)), film);
            case "even" -> even(line, stage);
            case "ratio" -> ratio(line, stage);
            case "highlight" -> new Reading.Of(highlight(line, stage, Optional.of(film)));
            case "no_highlight" -> noHighlight(line, stage);
            case "edges" -> edges(line, stage);
            default -> noShadow(line, stage);
        };
    }

    /// What a want is about; empty for a lamp, which isn't lit.
    private static Optional<LitThing> findLit(WantLine line, Stage stage) {
        Shot shot = stage.shot();
        String name = line.subjects().getFirst().name();
        if (shot.placed().stream().anyMatch(placed -> placed.name().equals(name))) {
            return Optional.of(new LitThing.OfThing(shot, stage.thingIndex(name)));
        }
        int index = stage.lampIndex(name);
        return shot.lights().get(index).light().emitter().isLamp()
                ? Optional.empty()
                : Optional.of(new LitThing.OfCard(shot, index));
    }

    private static Reading.Missing noLamp(WantLine line) {
        return new Reading.Missing(
                line.subjects().getFirst().name() + " is a lamp: name a thing, a card or a flag that it shines on.");
    }

    private static Reading even(WantLine line, Stage stage) {
        return findLit(line, stage)
                .<Reading>map(on -> new Reading.Of(new Even(on, si(line.written(), "within", WITHIN_STOPS))))
                .orElseGet(() -> noLamp(line));
    }

    private static Reading lit(WantLine line, Stage stage, Lit.Wanted wanted, Quantity film) {
        Optional<LitThing> on = findLit(line, stage);
        if (on.isEmpty()) {
            return noLamp(line);
        }
        Spots.Part part = findPart(line.written()).orElseGet(() -> usual(on.get(), stage));
        return on.get().has(part)
                ? new Reading.Of(new Lit(on.get(), part, wanted, film))
                : new Reading.Missing(on.get().name() + " has no " + part.word()
                        + (part == Spots.Part.LABEL ? ": write it with the thing, or" : ": write") + " part: middle.");
    }

    /// As the shot is before anything is solved.
    private static Spots.Part usual(LitThing on, Stage stage) {
        if (!(on instanceof LitThing.OfThing thing)) {
            return Spots.Part.MIDDLE;
        }
        Scene start = stage.scene(stage.startValues(), 0);
        return Spots.usual(
                stage.shot().placed().get(thing.index()),
                start.things().get(thing.index()),
                start.aim().eye());
    }

    private static double si(Written keys, String key, double otherwise) {
        return keys.findQuantity(key).map(Quantity::si).orElse(otherwise);
    }

    private static Optional<Spots.Part> findPart(Written keys) {
        return keys.findWord("part")
                .flatMap(word -> Arrays.stream(Spots.Part.values())
                        .filter(part -> part.word().equals(word))
                        .findFirst());
    }

    static Reading ratio(WantLine line, Stage stage) {
        Written keys = line.written();
        Optional<LitThing> on = findLit(line, stage);
        if (on.isEmpty()) {
            return noLamp(line);
        }
        Optional<Quantity> by = keys.findQuantity("by");
        if (by.isEmpty()) {
            return new Reading.Missing("Say how much brighter the key is: by: 2 stops.");
        }
        List<String> names =
                stage.shot().lights().stream().map(light -> light.name()).toList();
        Optional<String> key = keys.findWord("key");
        Optional<String> fill = keys.findWord("fill");
        if ((key.isEmpty() || fill.isEmpty()) && names.size() != 2) {
            return new Reading.Missing(
                    "Say which lights: key: " + first(names, 0) + ", fill: " + first(names, 1) + ".");
        }
        int first = key.map(stage::lampIndex)
                .orElseGet(() ->
                        fill.map(stage::lampIndex).filter(other -> other == 0).isPresent() ? 1 : 0);
        int second = fill.map(stage::lampIndex).orElse(1 - first);
        if (first == second) {
            return new Reading.Missing("Key and fill are the same light: name two.");
        }
        return new Reading.Of(
                new Ratio(on.get(), first, second, new Ratio.Wanted(by.get().si(), si(keys, "within", WITHIN_STOPS))));
    }

    private static String first(List<String> names, int index) {
        return index < names.size() ? names.get(index) : "LIGHT";
    }

    static HighlightAt highlight(WantLine line, Stage stage) {
        return highlight(line, stage, Optional.empty());
    }

    private static HighlightAt highlight(WantLine line, Stage stage, Optional<Quantity> film) {
        Written keys = line.written();
        int lamp = stage.lampIndex(line.subjects().getFirst().name());
        int thing = stage.thingIndex(keys.findWord("upon").orElseThrow());
        return new HighlightAt(
                new Mirrors(stage.shot(), thing),
                new Reflected.OfLamp(stage.shot(), lamp),
                new HighlightAt.Wished(
                        si(keys, "from_left", 0), findSi(keys, "wide"), si(keys, "within", WITHIN_SHARE)),
                stage.findTank(),
                film);
    }

    static Reading edges(WantLine line, Stage stage) {
        Written keys = line.written();
        Optional<RimField.Rims> rims =
                keys.findWord("rims").map(word -> word.equals("dark") ? RimField.Rims.DARK : RimField.Rims.BRIGHT);
        if (rims.isEmpty()) {
            return new Reading.Missing("Say which rims are wanted: rims: dark, or rims: bright.");
        }
        if (keys.has("at") && keys.has("part")) {
            return new Reading.Missing("Two heights are given: write at or part.");
        }
        ClearGlass.Height height = keys.findQuantity("at")
                .<ClearGlass.Height>map(at -> new ClearGlass.Height.At(at.si()))
                .orElseGet(() -> new ClearGlass.Height.Of(findPart(keys).orElse(Spots.Part.MIDDLE)));
        return new Reading.Of(new Edges(
                new ClearGlass(
                        stage.shot(),
                        stage.thingIndex(line.subjects().getFirst().name()),
                        height,
                        stage.findTank()),
                new Edges.Wished(rims.get(), si(keys, "wide", WIDE_SHARE), findSi(keys, "within"))));
    }

    private static OptionalDouble findSi(Written keys, String key) {
        return keys.findQuantity(key).map(Quantity::si).stream()
                .mapToDouble(Double::doubleValue)
                .findFirst();
    }

    static Reading noHighlight(WantLine line, Stage stage) {
        String name = line.subjects().getFirst().name();
        Reflected what = switch (name) {
            case "camera" -> new Reflected.OfCamera(stage.shot());
            case "crew" -> new Reflected.OfCrew();
            default -> new Reflected.OfLamp(stage.shot(), stage.lampIndex(name));
        };
        List<Mirrors> on = upon(line.written().listNames("upon"), stage, Set.of()).stream()
                .map(thing -> new Mirrors(stage.shot(), thing))
                .toList();
        return on.isEmpty()
                ? new Reading.Missing("Say in what it may not be seen: upon: THING.")
                : new Reading.Of(new NoHighlight(on, what, stage.findTank()));
    }

    private static Reading noShadow(WantLine line, Stage stage) {
        Shot shot = stage.shot();
        Predicate<String> isNamed =
                name -> line.subjects().stream().anyMatch(named -> named.name().equals(name));
        boolean all = isNamed.test("all");
        boolean hasBarrel = shot.camera().lens().barrel().isPresent();
        if (isNamed.test("camera") && !hasBarrel) {
            return new Reading.Missing("Not known: how large the lens is. Write its barrel: {diameter: 80 mm, length:"
                    + " 120 mm} with the lens.");
        }
        if (isNamed.test("tank")) {
            return new Reading.Missing("Not computed: the shadow of a tank's edges and panes.");
        }
        boolean hasNozzle = shot.findRelease()
                .filter(release -> release instanceof Release.OfInk)
                .isPresent();
        if (isNamed.test("release") && !hasNozzle) {
            return new Reading.Missing("The shot has no nozzle: release is where ink comes from.");
        }
        Set<Integer> of = new LinkedHashSet<>();
        if (hasNozzle && (all || isNamed.test("release"))) {
            of.add(Lighting.NOZZLE);
        }
        if (hasBarrel && (all || isNamed.test("camera"))) {
            of.add(Lighting.LENS);
        }
        for (int i = 0; i < shot.placed().size(); i++) {
            if (all || isNamed.test(shot.placed().get(i).name())) {
                of.add(i);
            }
        }
        for (int i = 0; i < shot.lights().size(); i++) {
            if (isNamed.test(shot.lights().get(i).name())) {
                of.add(Lighting.ofLamp(i));
            }
        }
        List<LitThing> upon = upon(line.written().listNames("upon"), stage, all ? Set.of() : of).stream()
                .<LitThing>map(thing -> new LitThing.OfThing(shot, thing))
                .toList();
        return upon.isEmpty()
                ? new Reading.Missing("Say on what it may not fall: upon: THING.")
                : new Reading.Of(new NoShadow(shot, of, upon));
    }

    /// What is named; where nothing is, all that stands and doesn't throw it.
    private static List<Integer> upon(List<Named> names, Stage stage, Set<Integer> but) {
        List<Integer> upon = new ArrayList<>();
        for (int i = 0; i < stage.shot().placed().size(); i++) {
            String name = stage.shot().placed().get(i).name();
            boolean isNamed = names.stream().anyMatch(named -> named.name().equals(name));
            if (isNamed || (names.isEmpty() && !but.contains(i))) {
                upon.add(i);
            }
        }
        return upon;
    }
}
