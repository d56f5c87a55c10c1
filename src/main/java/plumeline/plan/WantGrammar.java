package plumeline.plan;

import static plumeline.plan.Forms.any;
import static plumeline.plan.Forms.frames;
import static plumeline.plan.Forms.from0;
import static plumeline.plan.Forms.may;
import static plumeline.plan.Forms.must;
import static plumeline.plan.Forms.name;
import static plumeline.plan.Forms.names;
import static plumeline.plan.Forms.over;
import static plumeline.plan.Forms.share;
import static plumeline.plan.Forms.word;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumeline.quantity.Kind;
import plumeline.text.Nearest;
import plumeline.text.Range;
import plumeline.text.Shape;

/// The want words as data: what each is about, and its further keys. A new want is a line here.
final class WantGrammar {
    /// What a want is about, which says where its names are looked up and how many there may be.
    enum Subject {
        THING("a placed thing"),
        THINGS("a placed thing"),
        DELIVERIES("a delivery"),
        BODIES("a thing or light of the shot"),
        SHADOWS("a thing or light of the shot"),
        THINGS_OR_LIGHTS("a thing or light of the shot"),
        THING_OR_CARD("a placed thing, or a card of the shot"),
        LIGHT("a light of the shot"),
        LIGHT_OR_CAMERA("a light of the shot"),
        CAMERA("the camera"),
        TANK("a tank"),
        PIECE("a piece"),
        THING_OR_PIECE("a placed thing or a piece"),
        MOVE("a move of the shot"),
        PASSES("a pass of the shot"),
        PASSES_OR_CUTS("a pass of the shot"),
        CUTS("the film's cuts"),
        SHOT("the shot");

        final String what;

        Subject(String what) {
            this.what = what;
        }

        Shape shape() {
            return switch (this) {
                case THING, THING_OR_CARD, LIGHT, LIGHT_OR_CAMERA, TANK, PIECE, THING_OR_PIECE, MOVE ->
                    Forms.name(what);
                case THINGS, DELIVERIES, BODIES, SHADOWS, THINGS_OR_LIGHTS, PASSES, PASSES_OR_CUTS -> names(what);
                case CAMERA -> word("camera");
                case CUTS -> word("cuts");
                case SHOT -> word("shot");
            };
        }

        /// Tells whether names are looked up.
        boolean isNamed() {
            return this != CAMERA && this != CUTS && this != SHOT;
        }

        /// Words that stand for themselves beside the names.
        List<String> words() {
            return switch (this) {
                case BODIES -> List.of("all", "camera", "tank");
                case SHADOWS -> List.of("all", "camera", "release", "tank");
                case LIGHT_OR_CAMERA -> List.of("camera", "crew");
                case PASSES_OR_CUTS, CUTS -> List.of("cuts");
                case CAMERA -> List.of("camera");
                case SHOT -> List.of("shot");
                default -> List.of();
            };
        }
    }

    private static final Map<String, Subject> SUBJECTS = new LinkedHashMap<>();
    private static final List<Shape.Word> WORDS = new ArrayList<>();

    static {
        picture();
        table();
        water();
        light();
        time();
        later();
    }

    private WantGrammar() {}

    private static void add(String want, Subject subject, String doc, Shape.Key... keys) {
        SUBJECTS.put(want, subject);
        WORDS.add(Shape.Word.of(must(want, doc, subject.shape()), keys));
    }

    private static Shape.Key within(Kind kind) {
        return may("within", "how far it may be off", over(kind));
    }

    private static Shape.Key under(Shape.Need need, Kind... kinds) {
        var shapes = new ArrayList<Shape>();
        for (Kind kind : kinds) shapes.add(over(kind));
        var shape = shapes.size() == 1 ? shapes.getFirst() : new Shape.AnyOf(shapes);
        return new Shape.Key("under", need, "the most it may be", shape, "", "");
    }

    private static Shape.Key part(String... more) {
        var words = new ArrayList<>(List.of("top", "middle", "base"));
        words.addAll(List.of(more));
        return may("part", "which part of it", new Shape.Choice(words));
    }

    private static void picture() {
        add(
                "fills",
                Subject.THINGS,
                "the thing fills this share of the picture at its middle plane",
                may("height", "share of the picture's height", over(Kind.SHARE)),
                may("width", "share of the picture's width", over(Kind.SHARE)),
                within(Kind.SHARE),
                may("or", "more is welcome too", word("more")),
                may("by", "measured by its drawn outline instead", word("outline")));
        add(
                "sharp",
                Subject.THINGS,
                "the thing is sharp from its nearest point to its outline",
                may("sharp_to", "the largest blur disc", over(Kind.PIXELS)),
                may("at", "the axis only", word("axis")));
        add(
                "inside",
                Subject.DELIVERIES,
                "the things are inside these deliveries' frames and keep-outs",
                may("of", "which things; all placed things where not written", names("a placed thing")));
        add("off_picture", Subject.THINGS_OR_LIGHTS, "it isn't seen in the picture");
        add(
                "same_size",
                Subject.THING,
                "the thing is as large as in another shot",
                must("as", "the other shot", name("a shot")),
                within(Kind.SHARE));
        add(
                "shown",
                Subject.THINGS,
                "all are seen side by side",
                may("gap", "clear space between neighbours, of the picture's width", share()));
        add(
                "hidden",
                Subject.THINGS,
                "nothing of them is seen",
                must("behind", "what hides them", names("a placed thing")));
    }

    private static void table() {
        add(
                "clear",
                Subject.BODIES,
                "no body is in another, in the lens, a light or the tank's wall",
                may("by", "the least air between them", from0(Kind.LENGTH)));
        add("reaches", Subject.CAMERA, "the lens focuses there, and has the f-number; the body has the mode");
        add("reachable", Subject.MOVE, "the machine can make the move");
    }

    private static void water() {
        add("stays_under", Subject.THING, "it sinks", may("by", "net weight in water", from0(Kind.MASS)));
        add(
                "hangs",
                Subject.THING,
                "it hangs at this tilt",
                may("tilt", "the tilt wanted; as placed, else upright, where not written", any(Kind.ANGLE)),
                within(Kind.ANGLE));
        add(
                "beads_stay",
                Subject.THING,
                "droplets stay on it",
                may("size", "diameter of the drops' wetted base", over(Kind.LENGTH)),
                may(
                        "liquid",
                        "what the drops are of",
                        Shape.Keys.of(may("glycerine", "glycerine by volume, the rest water", share()))));
        add("stays_dry", Subject.THING, "it doesn't sweat");
        add("sweats", Subject.THING, "it sweats");
        add("upright", Subject.THING, "it stays upright", within(Kind.ANGLE));
        add("line_hidden", Subject.THING, "the line it hangs on isn't seen", under(Shape.Need.OPTIONAL, Kind.PIXELS));
        add("tank_carries", Subject.TANK, "the tank's panes carry the water");
        add(
                "ink_reaches",
                Subject.THING,
                "the ink's front comes to it in time",
                part(),
                must("after", "time from the release", from0(Kind.TIME)),
                within(Kind.TIME));
        add(
                "clear_until",
                Subject.THING,
                "no ink before it until then",
                must("time", "time from the release", from0(Kind.TIME)));
        add(
                "falls_through",
                Subject.PIECE,
                "the piece is seen for so many frames",
                must("frames", "the frames wanted", frames()));
        add(
                "rises",
                Subject.THING,
                "it rises so far in that time",
                must("by", "how far", over(Kind.LENGTH)),
                must("within", "in which time", over(Kind.TIME)));
    }

    private static void light() {
        add(
                "lit",
                Subject.THING_OR_CARD,
                "the light on it is right for the exposure",
                part("label", "lid"),
                within(Kind.STOPS));
        add(
                "highlight",
                Subject.LIGHT,
                "the light's mirror image stands there on the thing",
                must("upon", "the thing", name("a placed thing")),
                must("from_left", "its middle, of the outline's width from the left", share()),
                may("wide", "its width, of the outline's", share()),
                within(Kind.SHARE));
        add("steady_light", Subject.LIGHT, "its pulse doesn't show");
        add("flash_safe", Subject.PASSES_OR_CUTS, "cutting between them is no flash");
    }

    private static void time() {
        add("smear", Subject.THING_OR_PIECE, "it blurs less than this", under(Shape.Need.REQUIRED, Kind.PIXELS));
        add("whole_frames", Subject.SHOT, "enough frames for its speed");
        add(
                "readable",
                Subject.THING,
                "its label is near enough to the lens for so long",
                must("within", "angle of the label's middle from the lens", over(Kind.ANGLE)),
                must("for", "for how many frames", frames()));
        add(
                "registers",
                Subject.PASSES,
                "the passes lie on each other",
                must("within", "how far they may be off", over(Kind.PIXELS)));
        add("holds_still", Subject.THING, "it moves less than this", under(Shape.Need.REQUIRED, Kind.PIXELS));
        add("on_beat", Subject.CUTS, "the cuts are on the beat", within(Kind.FRAMES));
        add(
                "sharp_enough",
                Subject.DELIVERIES,
                "enough captured pixels are left for each delivered one",
                may("least", "captured pixels for one delivered, 100 % where not written", over(Kind.SHARE)));
    }

    /// Words whose further keys their own issues name; the contract gives only the words, so these are few.
    private static void later() {
        add(
                "no_highlight",
                Subject.LIGHT_OR_CAMERA,
                "its mirror image isn't seen",
                may("upon", "the thing", names("a placed thing")));
        add(
                "edges",
                Subject.THING,
                "the rims of clear glass",
                may("rims", "which rims", word("dark", "bright")),
                may(
                        "wide",
                        "how wide each is, of the outline's width",
                        new Shape.Amount(Kind.SHARE, Range.above("0 %", "45 %"), Shape.Mark.FIXED)),
                within(Kind.SHARE),
                part(),
                may("at", "at which height above its base", over(Kind.LENGTH)));
        add("even", Subject.THING_OR_CARD, "the light on it is even", within(Kind.STOPS));
        add(
                "ratio",
                Subject.THING_OR_CARD,
                "key to fill on it",
                may("key", "the key light", name("a light of the shot")),
                may("fill", "the fill light", name("a light of the shot")),
                may("by", "how much brighter the key is", any(Kind.STOPS)),
                within(Kind.STOPS));
        add(
                "dark",
                Subject.THING_OR_CARD,
                "little light falls on it",
                may("by", "how much less", over(Kind.STOPS)),
                part("label", "lid"));
        add(
                "no_shadow",
                Subject.SHADOWS,
                "its shadow doesn't fall there",
                may("upon", "the thing", names("a placed thing")));
        var coordinate = new Shape.Amount(Kind.NUMBER, Range.between("0", "1"), Shape.Mark.FIXED);
        add(
                "look",
                Subject.PASSES,
                "the look has its colour",
                may("light", "the light whose colour counts", name("a light of the shot")),
                may("upon", "the thing whose colour in that light counts", name("a placed thing")),
                may(
                        "colour",
                        "the colour wanted: a code, kelvin, or x and y of CIE 1931",
                        Forms.either(Forms.colourCode(), Forms.kelvin(), Forms.pair("x", "y", coordinate))),
                within(Kind.NUMBER));
        add(
                "matched",
                Subject.PASSES,
                "the looks are equally bright",
                may("upon", "the thing on which they are", name("a placed thing")),
                part("label", "lid"),
                may("by", "how much brighter the first is", any(Kind.STOPS)),
                may("within", "how far it may be off", Forms.either(over(Kind.SHARE), over(Kind.STOPS))));
        add(
                "judder_free",
                Subject.THING,
                "it travels little enough a frame",
                under(Shape.Need.OPTIONAL, Kind.PIXELS, Kind.SHARE));
        add("see_through", Subject.THING, "the water before it is clear enough", may("least", "light left", share()));
        add("veiled_by", Subject.THING, "the ink veils it", part(), may("time", "from the release", from0(Kind.TIME)));
    }

    static boolean isWord(String word) {
        return SUBJECTS.containsKey(word);
    }

    /// Tells whether a word takes a key.
    static boolean takes(String word, String key) {
        return WORDS.stream()
                .filter(w -> w.subject().name().equals(word))
                .anyMatch(w -> w.further().stream().anyMatch(k -> k.name().equals(key)));
    }

    static Subject subject(String word) {
        return SUBJECTS.getOrDefault(word, Subject.SHOT);
    }

    /// Gives the want word nearest to a misspelt one; the same where none is near.
    static String nearest(String word) {
        return Nearest.find(word, SUBJECTS.keySet()).orElse(word);
    }

    static Shape.OneWord shape() {
        return new Shape.OneWord(
                "a want word",
                WORDS,
                List.of(
                        may("when", "the instants that count", Forms.when()),
                        may("pass", "the pass it is about", name("a pass"))));
    }
}
