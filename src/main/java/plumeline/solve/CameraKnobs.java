package plumeline.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;
import plumeline.light.Thirds;
import plumeline.plan.Camera;
import plumeline.plan.Kit;
import plumeline.plan.Mark;
import plumeline.plan.Playback;
import plumeline.plan.Shot;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.text.Node;

/// What a camera can be set to for more light or less: f-number, shutter, sensitivity, rate, a grey filter.
final class CameraKnobs {
    private static final double USUAL_F_NUMBER = 8;
    private static final double HALF_TURN_DEGREES = 180;

    /// Whole stops of grey filter that are tried: screwed on, or two of them.
    private static final int FILTER_STOPS = 10;

    /// A rate that repeats no frame may fall short by so much of it.
    private static final double SAME_RATE = 1e-6;

    private final Otherwise otherwise;
    private final Shot shot;
    private final Camera camera;

    CameraKnobs(Otherwise otherwise) {
        this.otherwise = otherwise;
        this.shot = otherwise.shot();
        this.camera = shot.camera();
    }

    /// Settings in thirds.
    private record Dial(List<Turn> turns) implements Turn.Knob {
        @Override
        public List<Turn> listNear(double stops) {
            return turns.stream()
                    .sorted(Comparator.comparingDouble((Turn turn) -> Math.abs(turn.stops() - stops)))
                    .toList();
        }

        @Override
        public List<Turn> listPart(double stops) {
            return turns.stream()
                    .filter(turn -> turn.stops() * stops > 0 && Math.abs(turn.stops()) < Math.abs(stops))
                    .sorted(Comparator.comparingDouble((Turn turn) -> Math.abs(turn.stops())))
                    .toList();
        }
    }

    List<Turn.Knob> list() {
        List<Turn.Knob> knobs = new ArrayList<>();
        knobs.add(fNumbers());
        camera.findIso().ifPresent(iso -> knobs.add(sensitivities(iso)));
        knobs.add(shutters());
        knobs.add(rates());
        knobs.add(filters());
        return knobs;
    }

    private Turn turn(String key, String text, double stops, String words, String cost) {
        Node value = new Node.Scalar(text, false, shot.place());
        return new Turn(
                List.of(new Otherwise.Key("camera." + key, value)),
                stops,
                "set camera." + key + " " + words,
                cost,
                1,
                List.of());
    }

    private static Turn longer(Turn turn, double times) {
        return new Turn(turn.keys(), turn.stops(), turn.words(), turn.cost(), times, turn.lamps());
    }

    private static double stops(double ratio) {
        return Math.log(ratio) / Math.log(2);
    }

    private Turn.Knob fNumbers() {
        double now = fNumber();
        Optional<Kit.FNumbers> has = camera.lens().fNumbers();
        List<Double> numbers = has.map(ends -> Thirds.between(Thirds.F_NUMBERS, ends.least(), ends.greatest()))
                .orElse(Thirds.F_NUMBERS);
        String cost = has.isEmpty() ? "See whether the lens goes so far." : "";
        return new Dial(numbers.stream()
                .filter(number -> Math.abs(stops(number / now)) > 0.1)
                .map(number -> {
                    double more = 2 * stops(now / number);
                    String way = Print.number(Math.abs(more), 1) + " stops " + (more > 0 ? "open" : "down");
                    return turn(
                            "f_number",
                            figure(number),
                            more,
                            "f/" + Print.number(number, 1) + " instead of f/" + Print.number(now, 1) + " (" + way + ")",
                            cost);
                })
                .toList());
    }

    private double fNumber() {
        var marks = otherwise.judged().stage().marks();
        for (int i = 0; i < marks.size(); i++) {
            if (marks.get(i).mark().path().equals("camera.f_number")) {
                return otherwise.si()[i];
            }
        }
        return camera.fNumber()
                .filter(Mark.Fixed.class::isInstance)
                .map(mark -> ((Mark.Fixed) mark).quantity().si())
                .orElse(USUAL_F_NUMBER);
    }

    /// From the body's base to the highest that is used; where either isn't written, whatever menus have to that side.
    private Turn.Knob sensitivities(double now) {
        OptionalDouble base = camera.body().written().findNumber("iso.base");
        OptionalDouble highest = camera.body().written().findNumber("iso.highest");
        double low = base.orElse(Thirds.SENSITIVITIES.getFirst());
        double high = highest.orElse(Thirds.SENSITIVITIES.getLast());
        if (low > high) {
            return new Dial(List.of());
        }
        return new Dial(Thirds.between(Thirds.SENSITIVITIES, low, high).stream()
                .filter(iso -> Math.abs(stops(iso / now)) > 0.1)
                .map(iso -> turn(
                        "iso",
                        figure(iso),
                        stops(iso / now),
                        Print.number(iso, 0) + " instead of " + Print.number(now, 0),
                        (iso > now ? "More noise comes with it." : "")
                                + ((iso > now ? highest : base).isEmpty() ? " See whether the body goes so far." : "")))
                .toList());
    }

    /// Angles where an angle is set or nothing is written, else times; never longer than a frame lasts.
    private Turn.Knob shutters() {
        Optional<Quantity> written = camera.findShutter();
        boolean isTime = isTime();
        double frame = 1 / rate();
        double now = seconds();
        DoubleStream times = isTime
                ? Thirds.PARTS_OF_A_SECOND.stream()
                        .filter(parts -> parts == Math.rint(parts))
                        .mapToDouble(parts -> 1 / parts)
                : Thirds.SHUTTER_DEGREES.stream().mapToDouble(degrees -> degrees / 360 * frame);
        DoubleFunction<String> text = isTime
                ? time -> "1/" + figure(rounded(1 / time)) + " s"
                : time -> figure(rounded(time / frame * 360)) + " deg";
        String before = written.map(Quantity::valueText).orElse("180 deg");
        return new Dial(times.filter(time -> time <= frame * (1 + SAME_RATE))
                .filter(time -> Math.abs(stops(time / now)) > 0.1)
                .mapToObj(time -> longer(
                        turn(
                                "shutter",
                                text.apply(time),
                                stops(time / now),
                                text.apply(time) + " instead of " + before,
                                ""),
                        time / now))
                .toList());
    }

    private boolean isTime() {
        return camera.findShutter()
                .filter(shutter -> shutter.kind() == Kind.TIME)
                .isPresent();
    }

    /// How long a frame is exposed as it is.
    double seconds() {
        return isTime() ? camera.findShutter().orElseThrow().si() : degrees() / 360 / rate();
    }

    private double degrees() {
        return camera.findShutter()
                .filter(shutter -> shutter.kind() == Kind.ANGLE)
                .map(shutter -> Math.toDegrees(shutter.si()))
                .orElse(HALF_TURN_DEGREES);
    }

    private static double rounded(double value) {
        return Math.rint(value * 10) / 10;
    }

    private double rate() {
        return camera.findRate().orElse(otherwise.plan().film().rate()).si();
    }

    /// At the same angle a slower rate exposes longer. It may be as slow as the film's over the shot's slowest speed:
    /// below that frames repeat.
    private Turn.Knob rates() {
        double now = rate();
        double least = otherwise.plan().film().rate().si() / slowest(shot.playback());
        String before = camera.findRate().orElse(otherwise.plan().film().rate()).valueText();
        List<Turn> turns = camera.body().modes().stream()
                .filter(mode -> !isTime() && mode.rate().si() >= least * (1 - SAME_RATE))
                .filter(mode -> Math.abs(stops(mode.rate().si() / now)) > 0.05)
                .map(mode -> longer(
                        turn(
                                "rate",
                                mode.rate().valueText(),
                                stops(now / mode.rate().si()),
                                mode.rate().valueText() + " instead of " + before + " at the same shutter angle",
                                ""),
                        now / mode.rate().si()))
                .toList();
        return new Dial(turns);
    }

    /// The slowest speed at which a shot is played.
    static double slowest(Playback playback) {
        return switch (playback) {
            case Playback.Constant(double speed, var _) -> speed;
            case Playback.Curve(List<Playback.Key> keys, var _, var _) ->
                keys.stream().mapToDouble(Playback.Key::speed).min().orElse(1);
        };
    }

    private Turn.Knob filters() {
        double now = camera.written().findQuantity("loss").map(Quantity::si).orElse(0.0);
        List<Turn> turns = new ArrayList<>();
        for (int stops = 1; stops <= FILTER_STOPS; stops++) {
            turns.add(turn(
                    "loss",
                    figure(now + stops) + " stops",
                    -stops,
                    Print.number(now + stops, 1) + " stops instead of " + Print.number(now, 1)
                            + ", by a grey filter of " + Print.number(0.3 * stops, 1),
                    ""));
        }
        return new Dial(turns);
    }

    /// As a plan writes it.
    private static String figure(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.contains(".") ? text.replaceFirst("0+$", "").replaceFirst("[.]$", "") : text;
    }
}
