package plumeline.ask.light;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Course;
import plumeline.answer.Draft;
import plumeline.answer.Draft.Criterion;
import plumeline.answer.Given;
import plumeline.answer.Inquiry;
import plumeline.answer.Item;
import plumeline.answer.Verdict;
import plumeline.answer.Words;
import plumeline.flicker.CutFlashes;
import plumeline.flicker.FlashLimits;
import plumeline.quantity.FrameRate;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;

/// The question `cut-flash` in text.
final class CutFlashInquiry implements Inquiry<CutFlash.Inputs> {
    private static final String FRAMES = "frames_per_look";
    private static final String AREA = "area_of_the_picture";
    private static final String LASTS = "lasts";
    private static final String TIMES = "times";
    private static final double USUAL_RATIO = 16.0 / 9;
    private static final int MOST_LOOKS = 1000;

    private static final String EXAMPLE = """
        # cut-flash: is an alternating cut within the usual limits on flashes
        rate: 24 fps
        frames_per_look: 5           # or a list, look by look as cut: [12, 4, 4, 12], with times: how often it runs
        # luminances: [70 %, 20 %]   # each look's, of full white, in turn; default: every change counts
        # area_of_the_picture: 100 % # what changes; default 100 %
        # red: no                    # whether a look is a saturated red; default no
        # lasts: 3 s                 # how long looks of equal length alternate
        # seen: 30 deg               # angle that the picture's width takes to the eye: then WCAG's field counts too
        """;

    @Override
    public String name() {
        return "cut-flash";
    }

    @Override
    public String asks() {
        return "whether an alternating cut stays within the usual limits on flashes";
    }

    @Override
    public String example() {
        return EXAMPLE;
    }

    @Override
    public Shape shape() {
        Shape count = amount(Kind.NUMBER, "1", "1000000");
        Shape share = amount(Kind.SHARE, "0 %", "100 %");
        Shape luminance = Shape.AnyOf.of(share, amount(Kind.NUMBER, "0", "1"));
        return Shape.Keys.of(
                        Key.required("rate", "the film's frame rate", amount(Kind.RATE, "1 fps", "1000 fps")),
                        Key.required(
                                FRAMES,
                                "frames that each look is on, or a list of them as cut",
                                Shape.AnyOf.of(
                                        count,
                                        amount(Kind.FRAMES, "1 frames", "1000000 frames"),
                                        new Shape.Items(count, 2, MOST_LOOKS))),
                        Key.optional(
                                "luminances",
                                "each look's relative luminance, of full white, in turn",
                                new Shape.Items(luminance, 2, MOST_LOOKS)),
                        Key.optional(AREA, "what changes, of the picture", share),
                        Key.optional("area", "short for " + AREA, share),
                        Key.optional("red", "whether a look is a saturated red", new Shape.YesNo()),
                        Key.optional(LASTS, "how long equal looks alternate", amount(Kind.TIME, "0.1 s", "3600 s")),
                        Key.optional(TIMES, "how often a list runs", amount(Kind.NUMBER, "1", "1000")),
                        Key.optional(
                                "seen",
                                "angle that the picture's width takes to the eye",
                                amount(Kind.ANGLE, "1 deg", "90 deg")))
                .with(new Shape.Rule.AtMostOne(List.of(AREA, "area")));
    }

    private static Shape amount(Kind kind, String low, String high) {
        return new Shape.Amount(kind, Range.between(low, high), Shape.Mark.FIXED);
    }

    @Override
    public CutFlash.Inputs read(Given given) {
        FrameRate rate = FrameRate.of(given.quantity("rate"));
        String word = given.has("luminances")
                ? ""
                : given.text("luminances", "unknown", "every change of look counts as half a flash");
        List<Double> luminances = word.isEmpty() ? given.list("luminances") : List.of();
        boolean isRed =
                given.text("red", "no", "no look is said to be a saturated red").equals("yes");
        double area = given.has("area") ? given.si("area") : given.si(AREA, "100 %", "looks fill the picture");
        return new CutFlash.Inputs(
                rate,
                looks(given, rate, Math.max(1, luminances.size())),
                given.isList(FRAMES) || given.has(LASTS) ? CutFlash.Ends.TOLD : CutFlash.Ends.UNTOLD,
                luminances.stream().map(each -> Math.clamp(each, 0, 1)).toList(),
                isRed,
                Math.clamp(area, 0, 1),
                given.has("seen") ? FlashLimits.area(given.si("seen"), USUAL_RATIO) : FlashLimits.AREA);
    }

    private static CutFlashes looks(Given given, FrameRate rate, int kinds) {
        if (given.isList(FRAMES)) {
            if (given.has(LASTS)) {
                refuseBeside(given, LASTS, "a list of looks, which lasts as long as they do", TIMES);
            }
            List<Integer> once = given.list(FRAMES).stream()
                    .map(each -> whole(given, FRAMES, each))
                    .toList();
            int times = whole(given, TIMES, given.si(TIMES, "1", "the list runs once"));
            List<Integer> all = new ArrayList<>();
            IntStream.range(0, times).forEach(_ -> all.addAll(once));
            return new CutFlashes(rate, all);
        }
        if (given.has(TIMES)) {
            refuseBeside(given, TIMES, "looks of equal length, which go on", LASTS);
        }
        int frames = whole(given, FRAMES, given.si(FRAMES));
        if (given.has(LASTS)) {
            double count = Math.ceil(given.si(LASTS) * rate.framesPerSecond() / frames - 1e-9);
            return new CutFlashes(
                    rate,
                    IntStream.range(0, (int) Math.max(1, count))
                            .mapToObj(_ -> frames)
                            .toList());
        }
        return CutFlashes.endless(rate, frames, kinds);
    }

    private static void refuseBeside(Given given, String key, String beside, String instead) {
        given.refuse(
                key,
                "P-ASK-25",
                "given beside " + beside,
                "left out here",
                "Leave out " + key + (key.equals(LASTS) ? ", or say how often the list runs: " : ", or say how long: ")
                        + instead + ".");
    }

    private static int whole(Given given, String key, double count) {
        if (count != Math.rint(count)) {
            given.refuse(
                    key,
                    "P-ASK-26",
                    Print.number(count, 4),
                    "a whole number",
                    "Cuts fall on frames: try " + Print.number(Math.rint(count), 0) + ".");
        }
        return (int) Math.max(1, Math.rint(count));
    }

    @Override
    public Draft answer(CutFlash.Inputs inputs, double[] settled, Words words) {
        CutFlash.Found found = CutFlash.answer(inputs);
        return draft(found, new CutFlashWords(found).notes());
    }

    @Override
    public Draft vary(CutFlash.Inputs moved, double[] settled) {
        return draft(CutFlash.answer(moved), Notes.NONE);
    }

    private static Draft draft(CutFlash.Found found, Notes notes) {
        double least = (double) CutFlashes.leastFrames(found.inputs().rate());
        List<Item> items = new ArrayList<>(List.of(
                Item.of("pairs_per_second", found.pairs(), "1").following(new Course.Jumping()),
                Item.of("least_frames", least, "1").following(new Course.Jumping()),
                Item.of("advised_frames", least + 1, "1").following(new Course.Jumping()),
                Item.of("flashes_per_second", found.flashes(), "1").following(new Course.Jumping())));
        found.sequenceSeconds().ifPresent(seconds -> items.add(Item.of("sequence", seconds, "s")));
        return new Draft(
                items,
                List.of(new Criterion("what flashes", found.margin())),
                found.isJust() || found.isLong() ? Verdict.TIGHT : Verdict.NO_OBJECTION_FOUND,
                notes);
    }
}
