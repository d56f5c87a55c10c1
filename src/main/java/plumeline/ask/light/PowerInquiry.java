package plumeline.ask.light;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Course;
import plumeline.answer.Draft;
import plumeline.answer.Draft.Criterion;
import plumeline.answer.Given;
import plumeline.answer.Inquiry;
import plumeline.answer.Item;
import plumeline.answer.Verdict;
import plumeline.answer.Words;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;

/// The question `power` in text.
final class PowerInquiry implements Inquiry<Circuits.Inputs> {
    /// How much of a breaker's mark may flow for hours.
    private static final double CONTINUOUS_SHARE = 0.8;

    private static final String EXAMPLE = """
        # power: does the circuit carry it. Every device on it, kettle and charger too.
        devices:
          - {name: key, watts: 300 W, power_factor: 0.95}   # on its plate; default 0.6, a lamp of unknown make
          - {name: wash, watts: 40 W}
          - {name: wash2, watts: 40 W}
        volts: 230 V
        breaker: 16 A
        # region: north america     # its code holds what runs for hours to 80 %; or europe, elsewhere
        # continuous: yes           # three hours or more; default yes
        """;

    @Override
    public String name() {
        return "power";
    }

    @Override
    public String asks() {
        return "whether the circuit carries the lamps, and how many circuits do";
    }

    @Override
    public String example() {
        return EXAMPLE;
    }

    @Override
    public Shape shape() {
        Shape device = Shape.Keys.of(
                Key.required("name", "its name", new Shape.Free(60)),
                Key.required(
                        "watts", "its power, as on its plate", amount(Kind.POWER, Range.between("0.1 W", "100000 W"))),
                Key.optional(
                        "power_factor",
                        "its power over volts times amperes",
                        amount(Kind.NUMBER, Range.between("0.2", "1"))));
        return Shape.Keys.of(
                Key.required("devices", "what is plugged in", new Shape.Items(device, 1, 200)),
                Key.required("volts", "the mains' voltage", amount(Kind.VOLTAGE, Range.between("90 V", "480 V"))),
                Key.required(
                        "breaker",
                        "what a circuit's breaker is marked with",
                        amount(Kind.CURRENT, Range.between("1 A", "400 A"))),
                Key.optional("region", "whose code", new Shape.Choice(List.of("north america", "europe", "elsewhere"))),
                Key.optional("continuous", "whether it runs for hours", new Shape.YesNo()));
    }

    private static Shape amount(Kind kind, Range range) {
        return new Shape.Amount(kind, range, Shape.Mark.FIXED);
    }

    @Override
    public Circuits.Inputs read(Given given) {
        List<Circuits.Device> devices = new ArrayList<>();
        for (Given device : given.maps("devices")) {
            devices.add(new Circuits.Device(
                    device.text("name"),
                    device.si("watts"),
                    Math.clamp(
                            device.si("power_factor", "0.6", "a lamp of unknown make; its plate or maker says"),
                            0.2,
                            1)));
        }
        boolean isLong = given.text("continuous", "yes", "lamps of a shooting day burn for hours")
                .equals("yes");
        String region = given.text("region", "elsewhere", "no code was named: the cautious 80 % is kept");
        double share = isLong && !region.equals("europe") ? CONTINUOUS_SHARE : 1;
        return new Circuits.Inputs(devices, given.si("volts"), given.si("breaker"), share);
    }

    @Override
    public Draft answer(Circuits.Inputs inputs, double[] settled, Words words) {
        Circuits.Found found = Circuits.answer(inputs);
        return draft(found, notes(found));
    }

    @Override
    public Draft vary(Circuits.Inputs moved, double[] settled) {
        return draft(Circuits.answer(moved), Notes.NONE);
    }

    private static Draft draft(Circuits.Found found, Notes notes) {
        double spare = found.inputs().mayFlowAmperes() - found.amperes();
        return new Draft(
                List.of(
                        Item.of("amps", found.amperes(), "A"),
                        Item.of("used", 100 * found.usedShare(), "%"),
                        Item.of("circuits", found.circuits().size(), "1").following(new Course.Jumping())),
                List.of(new Criterion("the circuit's spare current", spare)),
                Verdict.NO_OBJECTION_FOUND,
                notes);
    }

    private static Notes notes(Circuits.Found found) {
        Circuits.Inputs inputs = found.inputs();
        List<String> because = new ArrayList<>();
        because.add("All together take " + amperes(found.amperes()) + " of "
                + amperes(inputs.mayFlowAmperes()) + " that may flow on one circuit of "
                + amperes(inputs.breakerAmperes())
                + (inputs.share() < 1 ? ", 80 % of its breaker for what runs for hours." : "."));
        List<String> attempts = new ArrayList<>();
        for (Circuits.Device device : found.tooLarge()) {
            attempts.add(device.name() + " alone takes " + amperes(device.amperes(inputs.volts()))
                    + ", too much for any such circuit: a larger one, by who is licensed for it.");
        }
        if (found.circuits().size() > 1 && attempts.isEmpty()) {
            int number = 1;
            for (List<Circuits.Device> circuit : found.circuits()) {
                attempts.add("Circuit " + number++ + ": "
                        + circuit.stream().map(Circuits.Device::name).collect(Collectors.joining(", ")) + ", "
                        + amperes(circuit.stream()
                                .mapToDouble(device -> device.amperes(inputs.volts()))
                                .sum())
                        + ".");
            }
        }
        return new Notes(
                because,
                attempts,
                List.of(
                        "Local codes and whoever is licensed for mains decide; this sum sees neither wiring, earth nor"
                                + " what else is on the circuit.",
                        "Near water: a residual-current breaker (30 mA or less), plugs and leads up and away, drip"
                                + " loops; no mains at the tank.",
                        "Unroll leads fully, don't chain strips, feel plugs for heat; switch on one lamp after the"
                                + " other."),
                List.of(
                        "I = P/(V pf)",
                        "80 % for loads of three hours or more: the North American codes, from memory",
                        "Power factor 0.6 of unknown lamps: common practice"));
    }

    private static String amperes(double amperes) {
        return Print.number(amperes, 1) + " A";
    }
}
