package plumeline.ask.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Draft;
import plumeline.answer.Draft.Criterion;
import plumeline.answer.Given;
import plumeline.answer.Inquiry;
import plumeline.answer.Item;
import plumeline.answer.Shutter;
import plumeline.answer.Verdict;
import plumeline.answer.Words;
import plumeline.ask.effect.FallTake.Pass;
import plumeline.fall.Medium;
import plumeline.fall.Packing;
import plumeline.fall.Piece;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;
import plumeline.water.Water;

/// The question `fall` in text.
final class FallInquiry implements Inquiry<FallTake.Inputs> {
    /// The densest that a piece can be: osmium, 22.6 g/ml (any table of elements).
    private static final double MOST_DENSITY = 22_600;

    /// The margin of a criterion that wasn't asked for.
    private static final double FREE = 1e9;

    /// An interval that is narrower than this share isn't worth a reader's time.
    private static final double NARROW = 1e-4;

    private static final String EXAMPLE = """
        # fall: falling pieces. Leave out what has a default.
        piece: {size: 16 mm, mass: 2.6 g, shape: ball}   # diameter, or a cube's edge; or disc with thickness
        height: 100 mm             # from the release to the frame's top edge
        field: {height: 175 mm, pixels: 2160 px}   # of the frame where the piece falls; pixels default 2160 px
        rate: 240 fps
        shutter: 1/2000 s          # or an angle; default 180 deg
        wanted_frames: 20          # frames it shall be seen in: gives least_rate
        through: air               # or water all the way; default air
        count: 300                 # pieces there are
        vessel: 0.5 l              # what they shall fill: gives pieces_to_fill
        """;

    @Override
    public String name() {
        return "fall";
    }

    @Override
    public String asks() {
        return "how fast pieces fall through the frame, and how many fill a vessel";
    }

    @Override
    public String example() {
        return EXAMPLE;
    }

    @Override
    public Shape shape() {
        Shape piece = Shape.Keys.of(
                Key.required(
                        "size", "a ball's or disc's diameter, a cube's edge", amount(Kind.LENGTH, "0.1 mm", "1 m")),
                Key.required("mass", "its mass", amount(Kind.MASS, "0.00001 g", "100 kg"))
                        .hint("weigh twenty and divide, such as 2.6 g", ""),
                Key.optional("shape", "its shape", new Shape.Choice(List.of("ball", "cube", "disc"))),
                Key.optional("thickness", "a disc's thickness", amount(Kind.LENGTH, "0.01 mm", "1 m")));
        Shape field = Shape.Keys.of(
                Key.required("height", "the frame's height where the piece falls", amount(Kind.LENGTH, "1 mm", "20 m"))
                        .hint("ask framing for field_height, such as 175 mm", ""),
                Key.optional("pixels", "pixels of that height", amount(Kind.PIXELS, "1 px", "100000 px")));
        Shape whole = new Shape.Amount(Kind.NUMBER, Range.between("1", "1000000"), Shape.Mark.FIXED);
        return Shape.Keys.of(
                Key.required("piece", "one piece", piece),
                Key.required("height", "from the release to the frame's top edge", amount(Kind.LENGTH, "0 mm", "20 m")),
                Key.required("field", "the frame where the piece falls", field),
                Key.required("rate", "frame rate", amount(Kind.RATE, "1 fps", "100000 fps")),
                Key.optional("shutter", "angle or time", Shutter.shape()),
                Key.optional("wanted_frames", "frames it shall be seen in", whole),
                Key.optional("through", "what it falls through all the way", new Shape.Choice(List.of("air", "water"))),
                Key.optional("count", "pieces there are", whole),
                Key.optional("vessel", "room that they shall fill", amount(Kind.VOLUME, "0.1 ml", "10000 l")));
    }

    private static Shape amount(Kind kind, String low, String high) {
        return new Shape.Amount(kind, Range.between(low, high), Shape.Mark.FIXED);
    }

    @Override
    public FallTake.Inputs read(Given given) {
        boolean water = given.text("through", "air", "a dry set").equals("water");
        Given field = given.map("field");
        double rate = given.si("rate");
        return new FallTake.Inputs(
                piece(given.map("piece")),
                water ? Medium.ofWater(Water.ROOM_KELVIN) : Medium.AIR,
                Math.max(0, given.si("height")),
                new FallTake.Field(
                        field.si("height"), field.si("pixels", "2160 px", "a 3840 by 2160 picture held level")),
                new FallTake.Camera(rate, Shutter.readSeconds(given, rate), given.findSi("wanted_frames")),
                new FallTake.Vessel(given.findSi("vessel"), given.findSi("count")));
    }

    private static Piece piece(Given given) {
        Piece.Shape shape = Piece.Shape.valueOf(
                given.text("shape", "ball", "the usual berry or pearl").toUpperCase(Locale.ROOT));
        double size = given.si("size");
        double thickness = size;
        if (shape == Piece.Shape.DISC) {
            thickness = given.si(
                    "thickness",
                    Print.number(size * 1e3 / 5, 3) + " mm",
                    "a fifth of its diameter, as a coin's is less");
        }
        Piece piece = new Piece(shape, size, thickness, given.si("mass"));
        double density = piece.massKilograms() / piece.volumeMetres3();
        if (density > MOST_DENSITY) {
            given.refuse(
                    "mass",
                    "P-ASK-77",
                    Print.number(density / 1e3, 1) + " g/ml in this size",
                    "at most 22.6 g/ml, as dense as any metal",
                    "Measure the size again, or weigh twenty pieces and divide.");
        }
        return piece;
    }

    @Override
    public Draft answer(FallTake.Inputs inputs, double[] settled, Words words) {
        FallTake.Found found = FallTake.answer(inputs);
        return draft(found, new FallWords(found, words).notes());
    }

    @Override
    public Draft vary(FallTake.Inputs moved, double[] settled) {
        return draft(FallTake.answer(moved), Notes.NONE);
    }

    private static Draft draft(FallTake.Found found, Notes notes) {
        List<Item> items = new ArrayList<>();
        FallTake.Inputs inputs = found.inputs();
        if (found.usual() instanceof Pass.Through usual
                && found.slow() instanceof Pass.Through slow
                && found.fast() instanceof Pass.Through fast) {
            addPass(items, inputs, List.of(usual, slow, fast));
        } else {
            String word = found.usual() instanceof Pass.Floats ? "never" : "unknown";
            for (String name : List.of("speed", "seconds_in_frame", "frames_in_frame", "blur", "least_rate")) {
                items.add(Item.word(name, word));
            }
        }
        items.add(pieces(inputs));
        boolean unknown = !(found.usual() instanceof Pass.Through) && !(found.usual() instanceof Pass.Floats);
        return new Draft(items, criteria(found), unknown ? Verdict.UNKNOWN : best(found), notes);
    }

    private static void addPass(List<Item> items, FallTake.Inputs inputs, List<Pass.Through> passes) {
        FallTake.Camera camera = inputs.camera();
        List<Double> speeds =
                passes.stream().map(Pass.Through::topMetresPerSecond).toList();
        List<Double> seconds = passes.stream().map(Pass.Through::seconds).toList();
        List<Double> blurs =
                passes.stream().map(pass -> FallTake.blurPixels(inputs, pass)).toList();
        items.add(item("speed", speeds, "m/s"));
        items.add(item("seconds_in_frame", seconds, "s"));
        items.add(item(
                "frames_in_frame", seconds.stream().map(s -> s * camera.rate()).toList(), "1"));
        items.add(item("blur", blurs, "px"));
        if (camera.wantedFrames().isPresent()) {
            double wanted = camera.wantedFrames().getAsDouble();
            items.add(item("least_rate", seconds.stream().map(s -> wanted / s).toList(), "fps"));
        } else {
            items.add(Item.word("least_rate", "unknown"));
        }
    }

    /// A value with the usual, the most and the least drag.
    private static Item item(String name, List<Double> values, String unit) {
        double usual = values.getFirst();
        double low = Math.min(usual, Math.min(values.get(1), values.get(2)));
        double high = Math.max(usual, Math.max(values.get(1), values.get(2)));
        return low > 0 && high - low > NARROW * usual
                ? Item.within(name, usual, unit, low, high)
                : Item.of(name, usual, unit);
    }

    private static Item pieces(FallTake.Inputs inputs) {
        if (inputs.vessel().metres3().isEmpty()) {
            return Item.word("pieces_to_fill", "unknown");
        }
        double vessel = inputs.vessel().metres3().getAsDouble();
        Packing packing = Packing.of(inputs.piece().shape());
        return Item.within(
                "pieces_to_fill",
                FallTake.pieces(inputs, vessel, packing.usualShare()),
                "1",
                FallTake.pieces(inputs, vessel, packing.looseShare()),
                FallTake.pieces(inputs, vessel, packing.closeShare()));
    }

    private static List<Criterion> criteria(FallTake.Found found) {
        FallTake.Inputs inputs = found.inputs();
        double frames = FREE;
        if (inputs.camera().wantedFrames().isPresent() && found.usual() instanceof Pass.Through pass) {
            frames = pass.seconds() * inputs.camera().rate()
                    - inputs.camera().wantedFrames().getAsDouble();
        }
        return List.of(
                new Criterion("its weight", found.usual() instanceof Pass.Floats ? -1 : FREE),
                new Criterion("the time in the frame", frames),
                new Criterion(
                        "the number of pieces",
                        spare(inputs, Packing.of(inputs.piece().shape()).usualShare())));
    }

    private static double spare(FallTake.Inputs inputs, double share) {
        FallTake.Vessel vessel = inputs.vessel();
        return vessel.count().isPresent() && vessel.metres3().isPresent()
                ? vessel.count().getAsDouble()
                        - FallTake.pieces(inputs, vessel.metres3().getAsDouble(), share)
                : FREE;
    }

    /// Tight where drag or packing, four times in five, may make it too little.
    private static Verdict best(FallTake.Found found) {
        FallTake.Inputs inputs = found.inputs();
        boolean fewFrames = inputs.camera().wantedFrames().isPresent()
                && found.fast() instanceof Pass.Through pass
                && pass.seconds() * inputs.camera().rate()
                        < inputs.camera().wantedFrames().getAsDouble();
        boolean fewPieces = spare(inputs, Packing.of(inputs.piece().shape()).closeShare()) < 0;
        return fewFrames || fewPieces ? Verdict.TIGHT : Verdict.HOLDS;
    }
}
