package plumeline.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.keys.MovedAxis;
import plumeline.motion.RunUp;
import plumeline.pace.LabelFacing;
import plumeline.plan.Mark;
import plumeline.plan.Placed;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.MachineLimits;
import plumeline.stage.Stage;
import plumeline.stage.StagedMark;

/// How a thing on a turntable is set before GO, when its label reads, and which start puts that in the shot's middle.
///
/// @param head what stands at its head
/// @param axis the turntable's move
/// @param thing the index of the thing that it carries
/// @param values the marks' values, SI
/// @param film the film's rate
record TurntableCard(MoveCard.Head head, MovedAxis axis, int thing, List<Double> values, Quantity film) {
    /// A label reads within this of the lens where no want says so: common practice.
    private static final double USUAL_RADIANS = Math.toRadians(30);

    /// Nobody sets a thing closer by hand.
    private static final double SET_RADIANS = Math.toRadians(0.5);

    private static final double TURN = 2 * Math.PI;
    private static final int INSTANTS = 1200;
    private static final int HALVINGS = 40;

    TurntableCard {
        values = List.copyOf(values);
    }

    private Stage stage() {
        return axis.stage();
    }

    private Placed placed() {
        return stage().shot().placed().get(thing);
    }

    private String label() {
        return placed().thing().label().isPresent() ? "its label" : "its front";
    }

    private double facing(double seconds) {
        double[] si = values.stream().mapToDouble(Double::doubleValue).toArray();
        return LabelFacing.radians(stage().laid(si).sceneAt(seconds), thing);
    }

    Card card() {
        double first = facing(0);
        double last = facing(stage().lastSeconds());
        double speed = axis.run().peakSpeed();
        List<Card.Part> parts = new ArrayList<>();
        parts.add(new Card.Part.Fact("Set it", setting(first)));
        parts.add(new Card.Part.Fact("It turns", turns(speed)));
        parts.add(new Card.Part.Fact("At the end", "The middle of " + label() + " looks " + aside(last) + "."));
        parts.add(new Card.Part.Fact("It reads", reads()));
        parts.add(new Card.Part.Fact("In the middle", middle(first)));
        runUp().ifPresent(words -> parts.add(new Card.Part.Fact("Run-up", words)));
        return head.card(parts);
    }

    /// A turn from the lens in words.
    private static String aside(double radians) {
        return CardWords.side(
                Print.fineDegrees(Math.abs(radians)),
                radians,
                "clockwise of the lens",
                "anticlockwise of the lens",
                "at the lens");
    }

    private String setting(double first) {
        String turn = placed().turn()
                .map(_ -> " The protractor reads " + CardWords.turned(turnRadians()) + " from straight to the crew.")
                .orElse("");
        String tape = Math.abs(first) < SET_RADIANS
                ? " Line it up with the lens by eye, plate at its zero."
                : " Turn the plate until it looks at the lens, call that 0, then go " + CardWords.turned(first)
                        + " by its scale, seen from above.";
        return "At GO the middle of " + placed().name() + "'s " + label().substring(4) + " looks " + aside(first)
                + ", seen from above." + tape + turn;
    }

    /// How the plan has it turned at GO, clockwise; 0 where it doesn't say.
    private double turnRadians() {
        return switch (placed().turn().orElse(null)) {
            case null -> 0;
            case Mark.Fixed fixed -> fixed.quantity().si();
            case Mark mark -> {
                List<Mark> marks =
                        stage().marks().stream().map(StagedMark::mark).toList();
                yield values.get(marks.indexOf(mark));
            }
        };
    }

    private String turns(double speed) {
        double si = axis.at(axis.lastSeconds());
        boolean isEven = axis.move().isEven();
        double frames = stage().retime().fastestSpeed(0, (double) stage().frames()) / film.si();
        return CardWords.turned(si) + " seen from above, " + (isEven ? "" : "at most ")
                + Print.number(Math.toDegrees(speed), 1) + " deg/s (" + Print.number(speed / TURN * 60, 2) + " rpm), "
                + Print.number(Math.toDegrees(speed * frames), 2) + " deg a screen frame" + (isEven ? "." : " there.");
    }

    /// A time during which it reads, real seconds after GO.
    private record Window(double from, double to) {}

    private double within() {
        return stage().shot().wants().stream()
                .filter(want -> want.word().equals("readable"))
                .filter(want -> want.subjects().getFirst().name().equals(placed().name()))
                .flatMap(want -> want.written().findQuantity("within").stream())
                .mapToDouble(Quantity::si)
                .min()
                .orElse(USUAL_RADIANS);
    }

    private boolean isIn(double seconds) {
        return Math.abs(facing(seconds)) <= within() + 1e-12;
    }

    private List<Window> windows() {
        List<Window> windows = new ArrayList<>();
        double last = stage().lastSeconds();
        double from = isIn(0) ? 0 : Double.NaN;
        for (int i = 1; i <= INSTANTS; i++) {
            double before = last * (i - 1) / INSTANTS;
            double now = last * i / INSTANTS;
            if (isIn(now) && Double.isNaN(from)) {
                from = edge(before, now);
            } else if (!isIn(now) && !Double.isNaN(from)) {
                windows.add(new Window(from, edge(now, before)));
                from = Double.NaN;
            }
        }
        if (!Double.isNaN(from)) {
            windows.add(new Window(from, last));
        }
        return windows;
    }

    private double edge(double outside, double inside) {
        double out = outside;
        double in = inside;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (out + in) / 2;
            if (isIn(middle)) {
                in = middle;
            } else {
                out = middle;
            }
        }
        return in;
    }

    private double frame(double seconds) {
        return stage().retime().frameAt(seconds, (double) stage().frames());
    }

    private String reads() {
        List<String> words = new ArrayList<>();
        for (Window window : windows()) {
            long from = (long) Math.ceil(frame(window.from()) - 1e-6) + 1;
            long to = (long) Math.ceil(frame(window.to()) - 1e-6);
            if (to >= from) {
                words.add("screen frames " + from + " to " + to + " (" + Print.seconds(window.from(), 2) + " to "
                        + Print.seconds(window.to(), 2) + " after GO)");
            }
        }
        String within = "within " + Print.fineDegrees(within()) + " of the lens";
        return words.isEmpty()
                ? "Never in this shot: it isn't " + within + "."
                : CardWords.capital(within) + " in " + String.join(" and in ", words) + ".";
    }

    /// Where it has to look at GO so that it looks at the lens in the shot's middle.
    private String middle(double first) {
        double half = stage().retime().realSeconds(stage().frames() / 2.0);
        double off = facing(half);
        if (Math.abs(off) < SET_RADIANS) {
            return "It looks at the lens in the shot's middle, " + Print.seconds(half, 2) + " after GO.";
        }
        double start = Math.IEEEremainder(first - off, TURN);
        return "In the shot's middle, " + Print.seconds(half, 2) + " after GO, it looks " + aside(off)
                + ". To have it at the lens there, set it at GO " + aside(start)
                + ": " + placed().name() + "'s turn "
                + Print.number(Math.toDegrees(Math.IEEEremainder(turnRadians() - off, TURN)), 1) + " deg in the plan.";
    }

    private Optional<String> runUp() {
        if (!axis.move().isEven()) {
            return Optional.empty();
        }
        return Optional.of(RunUp.find(
                        axis.run().peakSpeed(), MachineLimits.of(axis.move().machine()))
                .map(up -> "The plate needs " + Print.fineDegrees(up.distance()) + " and "
                        + Print.seconds(up.seconds(), 2) + " to come to speed: set it that much back and start it "
                        + Print.seconds(up.seconds(), 2) + " early.")
                .orElse("Not known: write its acceleration. It has to turn at its speed before the first frame."));
    }
}
