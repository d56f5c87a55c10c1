package plumeline.plan;

import static plumeline.plan.Forms.any;
import static plumeline.plan.Forms.atLeastOne;
import static plumeline.plan.Forms.atMostOne;
import static plumeline.plan.Forms.either;
import static plumeline.plan.Forms.frames;
import static plumeline.plan.Forms.from0;
import static plumeline.plan.Forms.mark;
import static plumeline.plan.Forms.may;
import static plumeline.plan.Forms.must;
import static plumeline.plan.Forms.name;
import static plumeline.plan.Forms.names;
import static plumeline.plan.Forms.over;
import static plumeline.plan.Forms.share;
import static plumeline.plan.Forms.someShare;
import static plumeline.plan.Forms.spot;
import static plumeline.plan.Forms.start;
import static plumeline.plan.Forms.text;
import static plumeline.plan.Forms.word;
import static plumeline.plan.Forms.yesNo;

import java.util.ArrayList;
import java.util.List;
import plumeline.quantity.Kind;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Items;
import plumeline.text.Shape.Keys;

/// The plan's grammar as data.
final class Grammar {
    /// The form that this program reads.
    static final long VERSION = 1;

    // How much a plan may hold: far above any film of a minute, far below what would hang a program.
    static final int SHOTS = 200;
    static final int CUTS = 2000;
    /// Looks that follow each other in a cut.
    static final int TURNS = 20_000;
    /// Frames of a cut: an hour at 120 a second.
    static final long FILM = 432_000;
    static final int WANTS = 200;
    /// Things, lamps, moves or passes of a shot, each.
    static final int IN_SHOT = 100;
    /// Things, variants of a thing, or pieces of kit of a sort.
    static final int SORT = 500;
    /// Values in all shots, a shot's counted once more for each of its passes, which are read as shots of their own.
    static final long READINGS = 400_000;

    private static final String PLACED = "a placed thing";

    private Grammar() {}

    static Shape plan() {
        return Keys.of(
                must("plumeline", "the plan's form", new Shape.Whole(VERSION, VERSION)),
                must("film", "the film's own facts", film()),
                may("deliver", "what is delivered", new Shape.Named("a delivery", delivery())),
                may("things", "the crew's products", KitGrammar.things()),
                may("kit", "what there is to work with", KitGrammar.kit()),
                must("shots", "the shots", new Shape.Named("a shot", shot())),
                may("cut", "the shots in the film's order", cuts()),
                may("overlays", "pictures laid over the film", new Items(overlay(), 1, CUTS)),
                may("cues", "sound cues", new Items(cue(), 1, CUTS)),
                may(
                        "titles",
                        "titles by shot and language",
                        new Shape.Named("a shot", new Shape.Named("a language", text()))),
                may("wants", "what must be true of the whole film", wants()));
    }

    private static Shape film() {
        return Keys.of(
                may("title", "its title", text()),
                must("rate", "the rate at which it is shown", over(Kind.RATE)),
                may("frames", "its length", frames()),
                may("tempo", "the music's tempo", over(Kind.TEMPO)),
                may("first_beat", "when beat 1 falls, from the film's first frame", from0(Kind.TIME)),
                may("starts", "the timecode of the film's first frame", timecode()),
                may("timecode", "how its timecode counts", word(Cut.DROP, "non-drop")),
                may("handles", "recorded frames kept before and after what is shown", fromNone()),
                may("papers", "the papers' unit of length", word("mm", "in")),
                may(
                        "air",
                        "the air on the set, lamps on",
                        Keys.of(
                                may("temperature", "its temperature", any(Kind.TEMPERATURE)),
                                may("humidity", "its relative humidity", someShare()))));
    }

    private static Shape delivery() {
        var pixels = new Shape.Amount(Kind.PIXELS, Range.between("1 px", "100000 px"), Shape.Mark.FIXED);
        var side = share();
        return Keys.of(
                        may("ratio", "its ratio", new Shape.RatioText()),
                        may("size", "its size", Forms.pair("across", "down", pixels)),
                        may("length", "the length of a cut-down", either(over(Kind.TIME), over(Kind.FRAMES))),
                        may("textless", "whether a copy without titles is wanted", yesNo()),
                        may("loudness", "its loudness", any(Kind.LOUDNESS)),
                        may("true_peak", "its highest true peak", any(Kind.TRUE_PEAK)),
                        may("cut", "a cut of its own, as the film's", cuts()),
                        may(
                                "keep_out",
                                "what must stay free at each side",
                                Keys.of(
                                        may("top", "of the height", side),
                                        may("bottom", "of the height", side),
                                        may("left", "of the width", side),
                                        may("right", "of the width", side))))
                .with(atLeastOne("ratio", "size"));
    }

    static Shape shot() {
        var keys = new ArrayList<>(overridable());
        keys.add(may(
                "passes",
                "passes, looks, variant runs: what each changes, by dotted path",
                new Shape.Named("a pass", new Shape.Overrides(passTarget()))));
        keys.add(may("reset", "how long setting up again between two takes lasts", over(Kind.TIME)));
        keys.add(may("wants", "what must be true of it", wants()));
        return new Keys(keys, List.of());
    }

    /// What a pass's overrides lead into.
    static Shape passTarget() {
        return new Keys(overridable(), List.of());
    }

    private static List<Shape.Key> overridable() {
        return List.of(
                must("camera", "the camera", camera()),
                may("place", "what is placed", new Shape.Named(PLACED, placed())),
                may("lights", "lamps placed", new Shape.Named("a light of the shot", light())),
                may("moves", "moves", new Shape.Named("a move", move())),
                may("tank", "the tank", tank()),
                may("release", "what is let go", release()),
                may(
                        "speed",
                        "playback speed, or a curve of it over screen frames",
                        either(any(Kind.SHARE), new Shape.Curve(from0(Kind.FRAMES), any(Kind.SHARE), 1))),
                may("ease", "how the curve goes between its keys", word("straight", "smooth")),
                may("frames", "its own length", frames()),
                may("clip", "the take that is used", clip()),
                may("sweep", "a sheet that lies on the table and bends up behind", sweep()),
                may(
                        "crop",
                        "where a delivery's crop stands, from the picture's middle",
                        new Shape.Named("a delivery", Forms.pair("x", "y", share("-100 %", "100 %")))));
    }

    private static Shape camera() {
        var turn = mark(Kind.ANGLE, Range.ANY);
        return Keys.of(
                        must("body", "its body", name("a camera body")),
                        must("lens", "its lens", name("a lens")),
                        must("at", "the lens point", spot(3)),
                        may("aim", "where it looks", either(word("ahead"), name(PLACED))),
                        may("turn", "its turn, clockwise seen from above", turn),
                        may("tilt", "its tilt, up", mark(Kind.ANGLE, Range.between("-90 deg", "90 deg"))),
                        may("f_number", "its f-number", mark(Kind.NUMBER, Range.POSITIVE)),
                        may("rate", "capture rate", over(Kind.RATE)),
                        may(
                                "shutter",
                                "shutter angle or time",
                                either(
                                        new Shape.Amount(Kind.ANGLE, Range.above("0 deg", "360 deg"), Shape.Mark.FIXED),
                                        over(Kind.TIME))),
                        may("iso", "sensitivity", over(Kind.NUMBER)),
                        may("white", "the white it is balanced to", Forms.kelvin()),
                        may("loss", "light lost in filters before the lens", from0(Kind.STOPS)),
                        may("held", "how it is held", word("level", "upright")),
                        may("focus", "what it is focused on", either(mark(Kind.LENGTH, Range.POSITIVE), name(PLACED))),
                        may("pivot", "the pan axis from the lens point", Forms.vector(any(Kind.LENGTH), 2)),
                        may("sensor_behind", "the sensor mark behind the lens point", over(Kind.LENGTH)),
                        may("pupil_ratio", "exit over entrance pupil", over(Kind.NUMBER)))
                .with(atMostOne("aim", "turn"), atMostOne("aim", "tilt"));
    }

    private static Shape placed() {
        return Keys.of(
                must("thing", "the thing", new Shape.Reference("a thing", Shape.Variants.ALLOWED)),
                must("at", "the middle of its base", spot(2)),
                may("turn", "its turn, clockwise seen from above", mark(Kind.ANGLE, Range.ANY)),
                may("tilt", "its lean, top to camera right", mark(Kind.ANGLE, Range.ANY)),
                may("lines", "how many lines it hangs on", new Shape.Whole(1, 8)),
                may(
                        "tied",
                        "heights from its base where lines leave it",
                        new Items(mark(Kind.LENGTH, Range.NOT_NEGATIVE), 1, 8)),
                may("line", "the line it hangs on", line()),
                may("rig", "a rod that holds it", rig()),
                may("beads", "drops that sit on it", beads()));
    }

    private static Shape beads() {
        var size = new Shape.Amount(Kind.LENGTH, Range.between("0.1 mm", "20 mm"), Shape.Mark.FIXED);
        return Keys.of(
                must("cover", "the share of it that is under drops", share("0 %", "60 %")),
                must("size", "the smallest and the largest drop's width", Forms.pair("least", "most", size)));
    }

    /// A sheet that lies on the table and bends up behind what stands there.
    private static Shape sweep() {
        return Keys.of(
                must("behind", "how far behind the zero mark its wall stands, y", any(Kind.LENGTH)),
                may("radius", "the bend's radius", over(Kind.LENGTH)),
                may("width", "its width", over(Kind.LENGTH)),
                may("height", "how high its wall is, over the table", over(Kind.LENGTH)),
                may("reflects", "the share of light that it throws back", KitGrammar.reflectance()),
                may("colour", "its colour under daylight", Forms.colourCode()),
                may("gradient", "how much of that its foot and its upper edge have", Forms.pair("foot", "top", share())));
    }

    private static Shape line() {
        return Keys.of(
                may("diameter", "its diameter", over(Kind.LENGTH)),
                may("strength", "as labelled, unknotted", over(Kind.FORCE)),
                may("material", "what it is made of", word("nylon", "fluorocarbon")),
                may("knot", "share of the strength that is left at the knot", someShare()),
                may(
                        "to",
                        "where its upper end is: a height over the table, straight up, or a place x, y, z",
                        either(any(Kind.LENGTH), Forms.vector(any(Kind.LENGTH), 3))));
    }

    private static Shape rig() {
        return Keys.of(
                must("diameter", "its diameter", over(Kind.LENGTH)),
                may("from", "the height on the thing's axis that it points at, from its base", from0(Kind.LENGTH)),
                must("to", "where its other end is, x, y, z", Forms.vector(any(Kind.LENGTH), 3)));
    }

    private static Shape light() {
        return Keys.of(
                        must("light", "the lamp", name("a light")),
                        must("at", "the middle of what shines", spot(3)),
                        may("aim", "what it faces", name(PLACED)),
                        may("turn", "its turn, clockwise seen from above", mark(Kind.ANGLE, Range.ANY)),
                        may("tilt", "its tilt, up", mark(Kind.ANGLE, Range.between("-90 deg", "90 deg"))),
                        may("level", "share of what it gives", mark(Kind.SHARE, Range.between("0 %", "100 %"))),
                        may("loss", "light lost in gel or cloth put before it", from0(Kind.STOPS)),
                        may("grid", "beam that a grid put before it leaves", KitGrammar.grid()),
                        may("output", "what it gives in this shot, of what the kit says", over(Kind.SHARE)),
                        may(
                                "readings",
                                "where that was metered in this shot, and what it gave there",
                                new Shape.Items(
                                        Keys.of(
                                                must("thing", "the thing", name(PLACED)),
                                                must(
                                                        "part",
                                                        "which part",
                                                        word("label", "lid", "top", "middle", "base")),
                                                must("output", "of what the kit says", over(Kind.SHARE))),
                                        1,
                                        100)),
                        may(
                                "hue",
                                "CIE LCh(ab) hue angle, or the one opposite to the thing's",
                                either(any(Kind.ANGLE), word(LampMeaning.COMPLEMENT))),
                        may("white", "its white", Forms.kelvin()))
                .with(atMostOne("aim", "turn"), atMostOne("aim", "tilt"), atMostOne("hue", "white"));
    }

    private static Shape move() {
        return Keys.of(
                        may("machine", "what makes it", name("a machine")),
                        may("axis", "which axis moves", word(Move.Axis.words())),
                        may(
                                "by",
                                "how far: x, y(, z) along a line, an angle, or a length of focus or zoom",
                                either(
                                        mark(Kind.ANGLE, Range.ANY),
                                        mark(Kind.LENGTH, Range.ANY),
                                        Forms.vector(mark(Kind.LENGTH, Range.ANY), 2))),
                        may("in", "in which time on the table", over(Kind.TIME)),
                        may("start", "when it starts", start()),
                        may("profile", "how it speeds up", word(Move.Profile.words())),
                        may(
                                "keys",
                                "where it is at which time after its start, of its way, by a monotone cubic",
                                new Shape.Curve(from0(Kind.TIME), share("-1000 %", "1000 %"), 2)),
                        may("triggered", "whether its start is triggered by the camera", yesNo()),
                        may("keeps", "what a pan keeps in the picture", names(PLACED)),
                        may("carries", "what is on the machine", names("a thing or light of the shot")))
                .with(atMostOne("keys", "in"), atMostOne("keys", "profile"));
    }

    private static Shape tank() {
        return Keys.of(
                must("tank", "the tank", name("a tank")),
                must("at", "the middle of its outer base", Forms.vector(any(Kind.LENGTH), 2)),
                may("water", "the water's depth from its floor", over(Kind.LENGTH)),
                may("takes", "how many takes' ink is in the water", new Shape.Whole(0, 1000)));
    }

    private static Shape release() {
        return Keys.of(
                        may("ink", "the ink", name("an ink")),
                        may("piece", "the piece", name("a piece")),
                        may("thing", "the placed thing", name(PLACED)),
                        may("at", "the nozzle's mouth, or the hand", spot(3)),
                        may("start", "when it starts", start()),
                        may("volume", "the ink's volume", over(Kind.VOLUME)),
                        may("bore", "the nozzle's bore", over(Kind.LENGTH)),
                        may("squeeze_time", "how long it is squeezed", over(Kind.TIME)),
                        may("speed", "the ink's speed at the nozzle", over(Kind.SPEED)),
                        may("count", "how many pieces", new Shape.Whole(1, 1_000_000)),
                        may("over", "in which time they are let go", from0(Kind.TIME)),
                        may("spread", "how far from the middle pieces are let go", from0(Kind.LENGTH)))
                .with(
                        new Shape.Rule.ExactlyOne(List.of(List.of("ink"), List.of("piece"), List.of("thing"))),
                        atMostOne("squeeze_time", "speed"),
                        new Shape.Rule.Needs("ink", "at"),
                        new Shape.Rule.Needs("piece", "at"));
    }

    private static Shape cut() {
        return Keys.of(
                        must("shot", "the shot", name("a shot")),
                        must("frames", "how long it is seen", frames()),
                        may("pass", "the pass", name("a pass")),
                        may("alternate", "passes that alternate", new Items(name("a pass"), 2, 50)),
                        may("each", "how long each of them is seen", frames()),
                        may("from_beat", "the beat it begins on", new Shape.Whole(1, 1_000_000)),
                        may("from", "the shot's own frame that it begins with", fromNone()),
                        may(
                                "reframe",
                                "how the picture lies in the finished one, for all deliveries or for some",
                                either(reframe(), new Shape.Named("a delivery", reframe()))))
                .with(
                        atMostOne("pass", "alternate"),
                        new Shape.Rule.Needs("alternate", "each"),
                        new Shape.Rule.Needs("each", "alternate"));
    }

    private static Shape cuts() {
        return new Items(cut(), 1, CUTS);
    }

    private static Shape reframe() {
        return new Items(
                Keys.of(
                        must("at", "the frame, from the entry's first", fromNone()),
                        may("scale", "how large, where 100 % fills the delivery", share("1 %", "10000 %")),
                        may(
                                "place",
                                "where its middle goes, of the finished picture",
                                Forms.pair("x", "y", share("-1000 %", "1000 %"))),
                        may("turn", "its turn, clockwise as seen", any(Kind.ANGLE)),
                        may("profile", "how it gets there from the key before", word(Move.Profile.words()))),
                1,
                CUTS);
    }

    /// What a take's file is called and where in it the shot begins.
    private static Shape clip() {
        return Keys.of(
                may("file", "its file, from the plan's folder", text()),
                may("reel", "its reel", new Shape.Written("[A-Za-z0-9_-]{1,32}", "letters, digits, _ and -", "A003")),
                may("starts", "the timecode of its first frame", timecode()),
                may("go", "which of its frames, from 0, is recorded at GO", fromNone()),
                may("frames", "how many frames were recorded", frames()));
    }

    private static Shape overlay() {
        return Keys.of(
                must("overlay", "what is laid over", ownName("steam")),
                must("over", "the instant it begins at", instant()),
                may("frames", "how long it is seen", frames()),
                may("file", "its file, from the plan's folder", text()),
                may(
                        "black",
                        "where its black sits, taken off before",
                        new Shape.Amount(Kind.SHARE, Range.between("0 %", "99 %"), Shape.Mark.FIXED)),
                may("range", "of which range", word("full", "video")),
                may("transfer", "on which scale", word("display", "linear")),
                may("level", "how strongly it is laid on", someShare()));
    }

    private static Shape cue() {
        return Keys.of(
                must("sound", "what is heard", text()),
                must("sync", "the instant it meets", instant()),
                may("lead", "how much earlier it begins", either(from0(Kind.FRAMES), from0(Kind.TIME))),
                may("lasts", "how long it is heard from its beginning", either(over(Kind.FRAMES), over(Kind.TIME))),
                may("layer", "the layer it belongs to", ownName("effects")),
                may("of", "the placed thing it follows", name(PLACED)));
    }

    private static Shape instant() {
        return Keys.of(
                must("shot", "the shot", name("a shot")),
                may("pass", "the pass", name("a pass")),
                must("when", "the instant", Forms.when()));
    }

    /// A count of frames that may be none, with its unit or bare.
    private static Shape fromNone() {
        return either(
                new Shape.Whole(0, Forms.MOST_FRAMES),
                new Shape.Amount(
                        Kind.FRAMES, Range.between("0 frames", Forms.MOST_FRAMES + " frames"), Shape.Mark.FIXED));
    }

    private static Shape ownName(String example) {
        return new Shape.Written("[a-z0-9_-]{1,40}", "a name of small letters, digits, _ and -", example);
    }

    private static Shape timecode() {
        return new Shape.Written("[0-9]{2}:[0-9]{2}:[0-9]{2}[:;][0-9]{2}", "a timecode", "01:00:00:00");
    }

    private static Shape wants() {
        return new Items(WantGrammar.shape(), 1, WANTS);
    }
}
