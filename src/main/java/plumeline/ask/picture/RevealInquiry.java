package plumeline.ask.picture;

import java.util.ArrayList;
import java.util.List;
import plumeline.answer.Answer.Assumed;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Draft;
import plumeline.answer.Draft.Criterion;
import plumeline.answer.Given;
import plumeline.answer.Inquiry;
import plumeline.answer.Item;
import plumeline.answer.Sensor;
import plumeline.answer.Value;
import plumeline.answer.Verdict;
import plumeline.answer.Words;
import plumeline.quantity.Kind;
import plumeline.quantity.PaperUnit;
import plumeline.search.Leeway;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;

/// The question `reveal` in text.
final class RevealInquiry implements Inquiry<Reveal.Inputs> {
    private static final int MOST_THINGS = 12;
    private static final String NONE = "none found";
    private static final String EXAMPLE = """
        # reveal: many behind one, then all. The camera starts in front of the first thing and slides aside.
        sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}   # the part that makes the picture
        focal_length: 50 mm
        camera: {distance: 600 mm, height: 59 mm}   # lens to the first thing's axis; lens over the table
        things:                                     # upright on the table, front first
          - {name: first, diameter: 42 mm, height: 118 mm}
          - {name: second, diameter: 42 mm, height: 118 mm}
          - {name: third, diameter: 42 mm, height: 118 mm}
        slide: {travel: 600 mm, toward: camera left}
        keeps: all          # what a pan centres at the end: all, front, or heading (no pan)
        gap: 2 %            # clear space between neighbours at the end, of the frame's width; default 3 %
        # hide_by: 1 mm     # to spare at the start
        """;

    @Override
    public String name() {
        return "reveal";
    }

    @Override
    public String asks() {
        return "where things stand so that one hides the others, then a slide shows all";
    }

    @Override
    public String example() {
        return EXAMPLE;
    }

    @Override
    public Shape shape() {
        Shape size = length("0.1 mm", "10 m");
        Shape thing = Shape.Keys.of(
                Key.required("name", "its name", new Shape.Reference("a thing", Shape.Variants.NONE)),
                Key.required("diameter", "its diameter", size),
                Key.required("height", "its height", size));
        Shape camera = Shape.Keys.of(
                Key.required("distance", "lens point to the first thing's axis at the start", length("1 mm", "100 m")),
                Key.required("height", "lens point over the table", length("0 mm", "10 m")));
        Shape slide = Shape.Keys.of(
                Key.required("travel", "how far the camera slides", length("1 mm", "100 m")),
                Key.optional("toward", "which way", new Shape.Choice(List.of("camera left", "camera right"))));
        return Shape.Keys.of(
                Key.required("sensor", "the part of the sensor that makes the picture", Sensor.shape()),
                Key.required("focal_length", "the lens's focal length", length("1 mm", "5 m"))
                        .hint("the value engraved on the lens, such as 50 mm", ""),
                Key.required("camera", "where the camera starts", camera),
                Key.required("things", "the things, front first", new Shape.Items(thing, 2, MOST_THINGS)),
                Key.required("slide", "how the camera moves", slide),
                Key.optional("keeps", "what a pan centres", new Shape.Choice(List.of("all", "front", "heading"))),
                Key.optional("gap", "clear space between neighbours at the end", share()),
                Key.optional("hide_by", "how far hidden to spare at the start", length("0 mm", "1 m")));
    }

    private static Shape length(String low, String high) {
        return new Shape.Amount(Kind.LENGTH, Range.between(low, high), Shape.Mark.FIXED);
    }

    private static Shape share() {
        return new Shape.Amount(Kind.SHARE, Range.between("0 %", "100 %"), Shape.Mark.FIXED);
    }

    @Override
    public Reveal.Inputs read(Given given) {
        double focalLengthMetres = given.si("focal_length");
        List<Reveal.Thing> things = readThings(given);
        Reveal.Camera camera = readCamera(given.map("camera"), focalLengthMetres, things.getFirst());
        Given slide = given.map("slide");
        String toward = slide.text("toward", "camera left", "the contract's default");
        double travelMetres = slide.si("travel") * (toward.equals("camera left") ? -1 : 1);
        Reveal.Keeps keeps = switch (given.text("keeps", "all", "a pan keeps all in the frame")) {
            case "heading" -> Reveal.Keeps.HEADING;
            case "front" -> Reveal.Keeps.FRONT;
            default -> Reveal.Keeps.ALL;
        };
        double gap = given.si("gap", "3 %", "enough to read as apart on a phone");
        double hideBy = given.si("hide_by", "0 mm", "just hidden; the leeway says how much may go wrong");
        given.assume("placing_error", "2 mm", "a tape and a hand; counts for every place, the camera's height too");
        return new Reveal.Inputs(
                Sensor.read(given.map("sensor")),
                focalLengthMetres,
                camera,
                things,
                new Reveal.Slide(travelMetres, keeps),
                new Reveal.Wanted(gap, hideBy));
    }

    private static List<Reveal.Thing> readThings(Given given) {
        List<Reveal.Thing> things = new ArrayList<>();
        for (Given each : given.maps("things")) {
            String name = each.text("name");
            for (Reveal.Thing earlier : things) {
                if (earlier.name().equals(name)) {
                    each.refuse("name", "P-ASK-05", name + " again", "a name of its own", "Try " + name + "_2.");
                }
            }
            things.add(new Reveal.Thing(name, each.si("diameter"), each.si("height")));
        }
        return things;
    }

    /// A distance that can't be photographed is refused; what is read on is then never answered.
    private static Reveal.Camera readCamera(Given given, double focalLengthMetres, Reveal.Thing first) {
        double distanceMetres = given.si("distance");
        double least = Math.max(focalLengthMetres, first.diameterMetres() / 2);
        if (distanceMetres > least) {
            return new Reveal.Camera(distanceMetres, given.si("height"));
        }
        boolean lens = focalLengthMetres >= first.diameterMetres() / 2;
        given.refuse(
                "distance",
                lens ? "P-ASK-03" : "P-ASK-04",
                given.quantity("distance").valueText(),
                "greater than " + Words.MILLIMETRES.length(least)
                        + (lens ? ", the focal length" : ", the first thing's radius"),
                "Measure from the lens to the first thing's axis, such as 600 mm.");
        return new Reveal.Camera(2 * least, given.si("height"));
    }

    @Override
    public double[] settle(Reveal.Inputs inputs, PaperUnit unit) {
        return RevealSolver.solve(inputs, unit);
    }

    @Override
    public Draft answer(Reveal.Inputs inputs, double[] settled, Words words) {
        Reveal.Found found = Reveal.found(inputs, settled);
        return draft(found, settled, new RevealWords(found, settled, words).notes())
                .assuming(room(settled));
    }

    private static Assumed room(double[] settled) {
        double room = RevealSolver.roomMillimetres(settled);
        return new Assumed(
                "room",
                new Value.Number(room, "mm"),
                room > RevealSolver.ROOM_MILLIMETRES
                        ? "behind the first thing: the 1500 mm of a usual table aren't enough"
                        : "a usual table's length behind the first thing");
    }

    @Override
    public Draft vary(Reveal.Inputs moved, double[] settled) {
        return draft(Reveal.found(moved, settled), settled, Notes.NONE);
    }

    private static Draft draft(Reveal.Found found, double[] settled, Notes notes) {
        RevealSet set = new RevealSet(found.inputs());
        double[] values = RevealSet.values(found.inputs(), settled);
        return new Draft(items(found, set.gaps(set.end(values))), criteria(set, values), best(found), notes);
    }

    private static Verdict best(Reveal.Found found) {
        return found.tight().isEmpty() ? Verdict.HOLDS : Verdict.TIGHT;
    }

    private static List<Item> items(Reveal.Found found, double[] gaps) {
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < found.places().size(); i++) {
            Reveal.Place place = found.places().get(i);
            String name = found.inputs().things().get(i).name();
            items.add(Item.millimetres(name + "_x", place.xMetres()));
            items.add(Item.millimetres(name + "_y", place.yMetres()));
            items.add(leeway(name + "_leeway_x", place.aside().least()));
            items.add(leeway(name + "_leeway_y", place.along().least()));
        }
        for (int i = 0; i < gaps.length; i++) {
            items.add(Item.of("end_gap_" + (i + 1), gaps[i], "%"));
        }
        items.add(
                switch (found.travelNeeded()) {
                    case Reveal.Travel.Least(double metres) ->
                        Item.millimetres("travel_needed", metres).rounded(Item.Rounding.UP);
                    case Reveal.Travel.None() -> Item.word("travel_needed", NONE);
                });
        items.add(leeway("camera_leeway_x", found.camera().aside().least()));
        items.addAll(heights(found));
        return items;
    }

    private static List<Item> heights(Reveal.Found found) {
        if (found.holds() == Reveal.Holds.NOT_ALL) {
            return List.of(Item.word("height_low", NONE), Item.word("height_high", NONE));
        }
        double height = found.inputs().camera().heightMetres();
        double low = Math.max(0, height - distance(found.camera().height().minus(), height));
        return List.of(
                Item.millimetres("height_low", low).rounded(Item.Rounding.UP),
                switch (found.camera().height().plus()) {
                    case Leeway.Side.Ends(double metres) ->
                        Item.millimetres("height_high", height + metres).rounded(Item.Rounding.DOWN);
                    case Leeway.Side.Endless() -> Item.word("height_high", "endless");
                });
    }

    private static double distance(Leeway.Side side, double endless) {
        return side instanceof Leeway.Side.Ends(double metres) ? metres : endless;
    }

    private static Item leeway(String name, double metres) {
        return metres < Double.POSITIVE_INFINITY
                ? Item.millimetres(name, metres).rounded(Item.Rounding.DOWN)
                : Item.word(name, "endless");
    }

    /// One for each later thing hidden, each gap, and the frame at the start and at the end.
    private static List<Criterion> criteria(RevealSet set, double[] values) {
        double[] parts = set.at(values);
        List<Criterion> criteria = new ArrayList<>();
        for (int i = 1; i < set.count(); i++) {
            criteria.add(new Criterion("the hiding of " + set.name(i), least(parts, 5 * (i - 1), 5 * i)));
        }
        int gaps = set.hiddenParts();
        for (int p = gaps; p < gaps + set.gapParts(); p++) {
            criteria.add(new Criterion("end_gap_" + (p - gaps + 1), parts[p]));
        }
        int start = gaps + set.gapParts();
        criteria.add(new Criterion("the order from front to back", RevealSolver.order(values)));
        criteria.add(new Criterion("the room in the frame at the start", least(parts, start, start + 4)));
        criteria.add(new Criterion("the room in the frame at the end", least(parts, start + 4, start + 8)));
        return criteria;
    }

    static double least(double[] parts, int from, int to) {
        double least = Double.POSITIVE_INFINITY;
        for (int p = from; p < to; p++) {
            least = Math.min(least, parts[p]);
        }
        return least;
    }
}
