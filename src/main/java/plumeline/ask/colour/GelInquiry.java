package plumeline.ask.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Draft;
import plumeline.answer.Given;
import plumeline.answer.Inquiry;
import plumeline.answer.Item;
import plumeline.answer.Verdict;
import plumeline.answer.Words;
import plumeline.colour.Chromaticity;
import plumeline.colour.White;
import plumeline.quantity.Print;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;

/// What a gel has to do between two whites: the question `gel`.
final class GelInquiry implements Inquiry<GelInquiry.Inputs> {
    /// What of a shift nobody sees, 1/MK and Duv (common practice).
    private static final double UNSEEN_MIREDS = 5;

    private static final double UNSEEN_DUV = 0.002;

    private static final String EXAMPLE = """
        # gel: one white against another. What a gel before the first has to do for it to look as the second.
        from: 3200 K          # the lamp; kelvin, or xy such as [0.423, 0.399] off a colour meter
        to: 5600 K            # what it shall look like
        """;

    /// What is asked.
    ///
    /// @param from the white that there is; empty where it is none
    /// @param to the white that it shall become; empty where it is none
    record Inputs(Optional<White> from, Optional<White> to) {
        boolean areWhites() {
            return from.isPresent() && to.isPresent();
        }

        double miredShift() {
            return White.miredShift(
                    from.orElseThrow().kelvin(), to.orElseThrow().kelvin());
        }

        double duvChange() {
            return to.orElseThrow().duv() - from.orElseThrow().duv();
        }
    }

    @Override
    public String name() {
        return "gel";
    }

    @Override
    public String asks() {
        return "what a gel has to do from one white to another";
    }

    @Override
    public String example() {
        return EXAMPLE;
    }

    @Override
    public Shape shape() {
        String hint = "what a colour meter reads, such as 3200 K or [0.423, 0.399]";
        return Shape.Keys.of(
                Key.required("from", "the white that there is, kelvin or [x, y]", Asked.WHITE)
                        .hint(hint, ""),
                Key.required("to", "the white that it shall become, kelvin or [x, y]", Asked.WHITE)
                        .hint(hint, ""));
    }

    @Override
    public Inputs read(Given given) {
        return new Inputs(white(given, "from"), white(given, "to"));
    }

    private static Optional<White> white(Given given, String key) {
        return switch (Asked.read(given, key)) {
            case Asked.Body(double kelvin) -> Optional.of(new White(kelvin, 0));
            case Asked.Place(Chromaticity colour) -> White.find(colour);
            case Asked.Screen _ -> Optional.empty();
        };
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
                inputs.areWhites()
                        ? List.of(
                                Item.of("mired_shift", inputs.miredShift(), "1/MK"),
                                Item.of("duv_change", inputs.duvChange(), "1"))
                        : List.of(Item.word("mired_shift", "unknown"), Item.word("duv_change", "unknown")),
                List.of(),
                inputs.areWhites() ? Verdict.HOLDS : Verdict.UNKNOWN,
                notes);
    }

    private static Notes notes(Inputs inputs) {
        List<String> because = new ArrayList<>();
        if (inputs.areWhites()) {
            double mireds = inputs.miredShift();
            double duv = inputs.duvChange();
            because.add(said(inputs.from().orElseThrow()) + " to "
                    + said(inputs.to().orElseThrow()) + ".");
            because.add(
                    Math.abs(mireds) < UNSEEN_MIREDS
                            ? "Under 5 mireds are hardly seen: no warming or cooling gel is needed."
                            : "A " + (mireds > 0 ? "warming (orange, +)" : "cooling (blue, -)") + " gel of "
                                    + signed(mireds, 0) + " mireds does it, or the nearest in the swatch book.");
            if (Math.abs(duv) >= UNSEEN_DUV) {
                because.add("Beside that it has to go " + (duv > 0 ? "greener" : "pinker") + " by "
                        + Print.number(Math.abs(duv), 4) + " Duv: a " + (duv > 0 ? "plus" : "minus")
                        + " green gel.");
            }
        } else {
            String which = inputs.from().isEmpty() ? inputs.to().isEmpty() ? "Neither is" : "from isn't" : "to isn't";
            because.add(which + " a white: farther than 0.05 from Planck's locus (Duv), or past 1000 K or 100 000 K,"
                    + " a colour temperature says nothing. Ask colour.");
        }
        return new Notes(
                because,
                List.of(),
                List.of(
                        "A gel before a hot lamp scorches and may burn: one made for heat, with air between, and let"
                                + " lamp and frame cool before a hand goes near.",
                        "Every gel takes light, and lamps that aren't a glowing body's light come out otherwise than"
                                + " its mireds say: meter through it."),
                List.of("mired_shift = 10⁶/to − 10⁶/from; Duv by CIE 15:2004 in the CIE 1960 diagram, a kelvin on"
                        + " Planck's locus; what isn't seen: common practice"));
    }

    private static String said(White white) {
        return Print.number(white.kelvin(), 0) + " K"
                + (Math.abs(white.duv()) < UNSEEN_DUV / 2 ? "" : " (Duv " + signed(white.duv(), 4) + ")");
    }

    private static String signed(double value, int digits) {
        return (value > 0 ? "+" : "") + Print.number(value, digits);
    }
}
