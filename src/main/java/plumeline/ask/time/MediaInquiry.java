package plumeline.ask.time;

import java.util.ArrayList;
import java.util.List;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Draft;
import plumeline.answer.Given;
import plumeline.answer.Inquiry;
import plumeline.answer.Item;
import plumeline.answer.Verdict;
import plumeline.answer.Words;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.quantity.Ratio;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;

/// The question `media` in text.
final class MediaInquiry implements Inquiry<MediaInquiry.Inputs> {
    private static final String RATIO = "ratio";
    private static final double BITS_PER_BYTE = 8;
    private static final double GIGA = 1e9;

    /// What it is common practice to have before a card is wiped.
    private static final int ENOUGH_COPIES = 3;

    private static final String EXAMPLE = """
        # media: how much media a day takes
        size: [3840 px, 2160 px]   # or, instead of size, depth and rate, the camera's own bit_rate, such as 400 Mb/s
        depth: 12                  # bits a sample
        rate: 60 fps               # captured
        ratio: 5                   # of compression; default 1
        # samples: 2               # a pixel: 1 raw (default), 2 for 4:2:2, 3 for 4:4:4
        takes:
        - {seconds: 30 s, count: 40}   # while the camera runs, at its own rate; count default 1
        - {seconds: 8 s, count: 25}
        copies: 3                  # of everything, the card's own counted; default 1
        card: 512 GB               # default 512 GB
        """;

    /// What is asked.
    ///
    /// @param bitsPerSecond while the camera runs, > 0
    /// @param seconds that it runs in all
    /// @param longestSeconds its longest take
    /// @param copies of everything, ≥ 1
    /// @param cardBytes what a card holds, > 0
    record Inputs(double bitsPerSecond, double seconds, double longestSeconds, double copies, double cardBytes) {
        double shotBytes() {
            return bitsPerSecond * seconds / BITS_PER_BYTE;
        }

        double cardSeconds() {
            return cardBytes * BITS_PER_BYTE / bitsPerSecond;
        }
    }

    @Override
    public String name() {
        return "media";
    }

    @Override
    public String asks() {
        return "how much media takes and their copies need";
    }

    @Override
    public String example() {
        return EXAMPLE;
    }

    @Override
    public Shape shape() {
        Shape take = Shape.Keys.of(
                Key.required(
                        "seconds",
                        "how long the camera runs",
                        Shape.AnyOf.of(amount(Kind.TIME, "0.001 s", "86400 s"), amount(Kind.NUMBER, "0.001", "86400"))),
                Key.optional("count", "how many such takes", new Shape.Whole(1, 100_000)));
        return new Shape.Keys(
                List.of(
                        Key.optional(
                                "bit_rate",
                                "what the camera writes a second",
                                amount(Kind.BIT_RATE, "0.001 Mb/s", "1000 Gb/s")),
                        Key.optional(
                                "size",
                                "pixels across and down",
                                new Shape.Tuple(
                                        List.of(
                                                new Shape.Part("across", amount(Kind.PIXELS, "1 px", "100000 px")),
                                                new Shape.Part("down", amount(Kind.PIXELS, "1 px", "100000 px"))),
                                        2)),
                        Key.optional("depth", "bits a sample", new Shape.Whole(1, 32)),
                        Key.optional("rate", "frames captured a second", amount(Kind.RATE, "0.01 fps", "100000 fps")),
                        Key.optional(
                                RATIO,
                                "of compression, as 5 or \"5:1\"",
                                Shape.AnyOf.of(amount(Kind.NUMBER, "1", "1000"), new Shape.RatioText())),
                        Key.optional("samples", "samples a pixel", amount(Kind.NUMBER, "1", "4")),
                        Key.required("takes", "what is shot", new Shape.Items(take, 1, 1000)),
                        Key.optional("copies", "copies of everything, the card's own counted", new Shape.Whole(1, 20)),
                        Key.optional("card", "what a card holds", amount(Kind.DATA, "1 MB", "1000 TB"))),
                List.of(
                        new Shape.Rule.ExactlyOne(List.of(List.of("bit_rate"), List.of("size", "depth", "rate"))),
                        new Shape.Rule.Needs(RATIO, "size"),
                        new Shape.Rule.Needs("samples", "size")));
    }

    private static Shape amount(Kind kind, String low, String high) {
        return new Shape.Amount(kind, Range.between(low, high), Shape.Mark.FIXED);
    }

    @Override
    public Inputs read(Given given) {
        double seconds = 0;
        double longest = 0;
        for (Given take : given.maps("takes")) {
            double each = take.si("seconds");
            seconds += each * take.si("count", "1", "one take");
            longest = Math.max(longest, each);
        }
        return new Inputs(
                given.has("bit_rate") ? given.si("bit_rate") : frameByFrame(given),
                seconds,
                longest,
                given.si("copies", "1", "what is on the cards alone"),
                given.si("card", "512 GB", "a usual card"));
    }

    private static double frameByFrame(Given given) {
        List<Double> size = given.list("size");
        double samples = given.si("samples", "1", "raw: one a pixel; 4:2:2 has 2, 4:4:4 has 3");
        return size.get(0) * size.get(1) * samples * given.si("depth") * given.si("rate") / ratio(given);
    }

    private static double ratio(Given given) {
        if (given.has(RATIO) && given.text(RATIO).indexOf(':') >= 0) {
            double ratio = Ratio.read(given.text(RATIO)).orElseThrow().value();
            if (ratio < 1) {
                given.refuse(
                        RATIO,
                        "P-ASK-47",
                        given.text(RATIO),
                        "1:1 or more",
                        "Write what compression makes of it with the larger number first, such as \"5:1\".");
            }
            return ratio;
        }
        return given.si(RATIO, "1", "nothing is compressed");
    }

    @Override
    public Draft answer(Inputs inputs, double[] settled, Words words) {
        return draft(inputs, notes(inputs));
    }

    @Override
    public Draft vary(Inputs moved, double[] settled) {
        return draft(moved, Notes.NONE);
    }

    private static Draft draft(Inputs inputs, Notes notes) {
        return new Draft(
                List.of(
                        Item.of("gigabytes", inputs.shotBytes() * inputs.copies() / GIGA, "GB"),
                        Item.of("minutes_per_card", inputs.cardSeconds() / 60, "min")),
                List.of(),
                Verdict.HOLDS,
                notes);
    }

    private static Notes notes(Inputs inputs) {
        List<String> because = new ArrayList<>();
        int copies = (int) Math.rint(inputs.copies());
        long cards = (long) Math.max(1, Math.ceil(inputs.shotBytes() / inputs.cardBytes() - 1e-9));
        because.add(Print.number(inputs.seconds() / 60, 1) + " min at " + megabits(inputs.bitsPerSecond()) + " are "
                + gigabytes(inputs.shotBytes()) + ": "
                + (cards == 1 ? "one card" : cards + " cards") + " of " + gigabytes(inputs.cardBytes())
                + ", more where takes are not to be parted.");
        because.add(
                copies == 1
                        ? "gigabytes counts it once."
                        : "gigabytes counts " + copies + " copies of it, the card's own among them.");
        because.add("A gigabyte is 10^9 bytes. Sound and what a file system takes for itself are not counted.");
        List<String> attempts = new ArrayList<>();
        if (copies < ENOUGH_COPIES) {
            attempts.add("Have " + ENOUGH_COPIES + " copies on two kinds of media, one elsewhere, before a card is"
                    + " wiped: " + gigabytes(ENOUGH_COPIES * inputs.shotBytes()) + ".");
        }
        if (inputs.longestSeconds() > inputs.cardSeconds()) {
            attempts.add("The longest take doesn't go on one card: take larger ones, or part it.");
        }
        return new Notes(
                because,
                attempts,
                List.of(),
                List.of(
                        "Bits a second times seconds; pixels · samples · depth · rate over the ratio: arithmetic",
                        "Three copies, two kinds of media, one elsewhere: common practice"));
    }

    private static String megabits(double bitsPerSecond) {
        return Print.number(bitsPerSecond / 1e6, 1) + " Mb/s";
    }

    private static String gigabytes(double bytes) {
        double giga = bytes / GIGA;
        return Print.number(giga, giga >= 100 ? 0 : giga >= 10 ? 1 : 2) + " GB";
    }
}
