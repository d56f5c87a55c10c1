package plumeline.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import plumeline.geom.Vec;
import plumeline.keys.MovedAxis;
import plumeline.motion.CubicRun;
import plumeline.motion.Limits;
import plumeline.motion.Profile;
import plumeline.motion.Run;
import plumeline.motion.RunUp;
import plumeline.motion.Swing;
import plumeline.motion.Travel;
import plumeline.pace.Asked;
import plumeline.pace.Capture;
import plumeline.pace.Paced;
import plumeline.pace.PassesApart;
import plumeline.pace.Sway;
import plumeline.plan.Kit;
import plumeline.plan.Move;
import plumeline.plan.Named;
import plumeline.plan.Written;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.MachineLimits;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// One axis's move: its ends and which of them is GO, its time, profile and keys, what it asks of its machine, when to
/// start that, how long to wait after it.
///
/// @param head what stands at its head
/// @param axis the move
/// @param values the marks' values, SI
/// @param film the film's rate
/// @param print the papers' figures
record MoveCard(Head head, MovedAxis axis, List<Double> values, Quantity film, Print print) {
    private static final int QUARTERS = 4;

    /// Less than this nobody sees of a thing that sways, px.
    private static final double STILL_PIXELS = 0.25;

    private static final double ROUNDING = 1e-9;

    MoveCard {
        values = List.copyOf(values);
    }

    /// What stands at a card's head.
    ///
    /// @param id the card's id
    /// @param title its title
    /// @param cautions what to take care of
    record Head(String id, String title, List<String> cautions) {
        Head {
            cautions = List.copyOf(cautions);
        }

        Card card(List<Card.Part> parts) {
            return new Card(id, title, cautions, parts);
        }
    }

    Card card() {
        List<Card.Part> parts = new ArrayList<>();
        parts.add(new Card.Part.Fact("What moves", what()));
        parts.add(new Card.Part.Fact("At GO", new Ends(this).atGo()));
        parts.add(new Card.Part.Fact("At its end", new Ends(this).atEnd()));
        parts.add(new Card.Part.Fact("Time", time()));
        parts.add(new Card.Part.Fact("Profile", profile()));
        if (move().machine().isPresent()) {
            if (isEven()) {
                parts.add(new Card.Part.Fact("Run-up", runUp()));
            }
            parts.add(new Card.Part.Fact("Asked of it", asked()));
            parts.add(new Card.Part.Fact("Start", start()));
            parts.add(new Card.Part.Fact("Settling", settling()));
        }
        parts.add(keys());
        return head.card(parts);
    }

    private boolean isEven() {
        return move().isEven() && !axis.isFollowing();
    }

    Move move() {
        return axis.move();
    }

    Stage stage() {
        return axis.stage();
    }

    double[] si() {
        return values.stream().mapToDouble(Double::doubleValue).toArray();
    }

    plumeline.pace.Figures figures() {
        return new plumeline.pace.Figures(move().axis(), print.unit());
    }

    private Limits limits() {
        return MachineLimits.of(move().machine());
    }

    private Optional<Written> machine() {
        return move().machine().map(Kit.Machine::written);
    }

    private String machineName() {
        return move().machine().map(Kit.Machine::name).orElse("its machine");
    }

    private static String names(List<Named> named) {
        return named.stream().map(Named::name).collect(Collectors.joining(", "));
    }

    private String what() {
        String carried = move().listCarried().isEmpty() ? "The camera" : names(move().listCarried());
        String es = move().listCarried().size() > 1 ? "" : "es";
        String s = move().listCarried().size() > 1 ? "" : "s";
        String words = switch (move().axis()) {
            case SLIDE -> carried + " slide" + s;
            case LIFT ->
                carried + (stage().wayOf(axis.index(), si()).z() < 0 ? " go" + es + " down" : " go" + es + " up");
            case PAN -> carried + " pan" + s;
            case TILT -> carried + " tilt" + s;
            case ROLL -> carried + " roll" + s + " about where it looks";
            case TURNTABLE -> carried + " turn" + s;
            case FOCUS -> "The focus is pulled";
            case ZOOM -> "The lens zooms";
        };
        String kept = move().kept().isEmpty() ? "" : ", to keep " + names(move().kept()) + " in the picture's middle";
        return words + move().machine().map(one -> ", by " + one.name()).orElse("; what makes it isn't written") + kept
                + ".";
    }

    private String time() {
        double seconds = axis.lastSeconds() - axis.firstSeconds();
        String late = axis.lastSeconds() > stage().lastSeconds() + 1e-6
                ? " The shot is over " + Print.seconds(stage().lastSeconds(), 2) + " after GO: let it run on."
                : "";
        return Print.seconds(seconds, 2) + " on the table, from "
                + (axis.firstSeconds() > 0 ? Print.seconds(axis.firstSeconds(), 2) + " after GO" : "GO") + " until "
                + Print.seconds(axis.lastSeconds(), 2) + " after GO." + late;
    }

    private Asked asks() {
        return axis.isFollowing() ? Asked.ofPan(paced(0), limits()) : Asked.of(axis.run(), limits());
    }

    private Paced paced(double seconds) {
        Stage.Laid laid = stage().laid(si());
        return new Paced(stage(), values, laid.sceneAt(seconds), laid);
    }

    private String profile() {
        Asked asks = asks();
        String speed = figures().speed(asks.speed());
        String both =
                "highest speed " + speed + ", highest acceleration " + figures().acceleration(asks.acceleration());
        if (axis.isFollowing()) {
            return "As what it keeps asks: " + both + ".";
        }
        return switch (axis.run()) {
            case CubicRun _ -> "By its own keys, from rest to rest: " + both + ".";
            case Travel travel ->
                switch (travel.profile()) {
                    case EVEN -> "Even: " + speed + " throughout.";
                    case SMOOTH -> "Smooth: " + both + ".";
                    case TRAPEZOID -> "Trapezoid: " + ramps(travel) + "; " + both + ".";
                    case S_CURVE ->
                        "S-curve: " + ramps(travel) + ", the first and last " + Print.seconds(travel.jerkSeconds(), 2)
                                + " of each rounded; " + both + ".";
                };
        };
    }

    private static String ramps(Travel travel) {
        String ramp = Print.seconds(travel.rampSeconds(), 2);
        double even = travel.seconds() - 2 * travel.rampSeconds();
        return "speeds up for " + ramp
                + (even > 0.005 ? ", runs even for " + Print.seconds(even, 2) : "")
                + ", slows down for " + ramp;
    }

    private Optional<RunUp> findRunUp() {
        return RunUp.find(axis.run().peakSpeed(), limits());
    }

    private String runUp() {
        Optional<RunUp> up = findRunUp();
        if (up.isEmpty()) {
            return "Not known: write " + machineName()
                    + "'s acceleration. It has to run at its speed before the first frame.";
        }
        String seconds = Print.seconds(up.get().seconds(), 2);
        String way = figures().way(up.get().distance());
        double start = axis.firstSeconds() - up.get().seconds();
        return "Start it " + when(start) + ", " + way
                + " before where it stands at GO: it then comes there at its speed." + " Leave it " + way + " and "
                + seconds + " to stop in at its end.";
    }

    private static String when(double seconds) {
        return Math.abs(seconds) < 0.005
                ? "at GO"
                : Print.seconds(Math.abs(seconds), 2) + (seconds < 0 ? " before GO" : " after GO");
    }

    private String asked() {
        Asked asks = asks();
        List<String> words = new ArrayList<>();
        add(words, "speed", asks.usage().speed(), figures().speed(asks.speed()), figures()::speed);
        if (!isEven()) {
            double share = asks.usage().acceleration();
            add(words, "acceleration", share, figures().acceleration(asks.acceleration()), figures()::acceleration);
        }
        add(words, "travel", asks.usage().travel(), figures().way(asks.way()), figures()::way);
        return words.isEmpty()
                ? "Not known what " + machineName() + " does at most: write its travel, speed and acceleration."
                : CardWords.capital(String.join("; ", words)) + ".";
    }

    private void add(
            List<String> words,
            String key,
            double share,
            String asked,
            java.util.function.DoubleFunction<String> text) {
        machine()
                .flatMap(written -> written.findQuantity(key))
                .ifPresent(most -> words.add((key.equals("travel") ? "way" : key) + " " + asked + " of "
                        + text.apply(most.si()) + CardWords.origin(most)
                        + (share > 1 + ROUNDING ? ", more than " + machineName() + " does" : "")));
    }

    private String start() {
        if (move().isTriggered()) {
            return "Triggered: camera and machine start together, at the same captured frame in every take.";
        }
        double half = asks().speed() / Capture.of(stage().shot(), film).framesPerSecond() / 2;
        return "Free-running: roll first, start it on GO by hand or voice. Takes may lie half a captured frame apart,"
                + " up to " + figures().difference(half) + " of its way.";
    }

    private String settling() {
        Optional<Written> machine = machine();
        OptionalDouble hertz = si(machine, "sways.rate");
        OptionalDouble damping = si(machine, "sways.damping");
        if (hertz.isEmpty() || damping.isEmpty()) {
            return "How long it goes on swinging isn't known: watch the picture large after it stops, count, and write "
                    + machineName() + "'s sways.";
        }
        Swing swing = new Swing(hertz.getAsDouble(), damping.getAsDouble());
        String how = Print.number(swing.hertz(), 1) + " swings a second, " + Print.share(swing.damping(), 1)
                + " of critical damping";
        OptionalDouble left = findLeft(swing);
        if (left.isEmpty()) {
            return how + "; how far it swings when it stops isn't known: write " + machineName() + "'s sways.by.";
        }
        double pixels = PassesApart.pixels(paced(axis.lastSeconds()), axis.index(), left.getAsDouble());
        if (pixels <= STILL_PIXELS) {
            return how + "; when it stops nothing of it is seen.";
        }
        return how + "; when it stops the picture swings " + PassesApart.text(pixels) + " to each side. Wait "
                + Print.seconds(Math.ceil(swing.seconds(pixels, STILL_PIXELS) * 10 - ROUNDING) / 10, 1)
                + " until that is under a quarter of a pixel, then go again.";
    }

    /// How far it swings as it stops, metres or radians.
    private OptionalDouble findLeft(Swing swing) {
        OptionalDouble measured = si(machine(), "sways.by");
        Run run = axis.run();
        if (measured.isPresent() || !(run instanceof Travel travel)) {
            return measured;
        }
        if (travel.profile() != Profile.EVEN) {
            return OptionalDouble.of(Sway.of(run, swing, measured).size());
        }
        boolean isSteady = Double.isInfinite(limits().jerk()) && Double.isFinite(limits().acceleration());
        return isSteady
                ? OptionalDouble.of(swing.residue(
                        limits().acceleration(), findRunUp().orElseThrow().seconds(), 0))
                : OptionalDouble.empty();
    }

    private static OptionalDouble si(Optional<Written> written, String key) {
        return written.flatMap(one -> one.findQuantity(key)).stream()
                .mapToDouble(Quantity::si)
                .findFirst();
    }

    private Card.Part keys() {
        List<List<String>> rows = new ArrayList<>();
        for (int quarter = 0; quarter <= QUARTERS; quarter++) {
            double seconds = axis.firstSeconds() + (axis.lastSeconds() - axis.firstSeconds()) * quarter / QUARTERS;
            rows.add(List.of(Print.seconds(seconds, 2), new Ends(this).way(seconds), frame(seconds)));
        }
        return new Card.Part.Grid(List.of("After GO", "Way from GO", "Screen frame"), rows);
    }

    private String frame(double seconds) {
        double last = stage().lastSeconds();
        if (seconds > last + 1e-6) {
            return "after the shot";
        }
        return seconds > last - 1e-6
                ? "the shot's end"
                : Print.number(stage().retime().frameAt(seconds, (double) stage().frames()) + 1, 1);
    }

    Scene scene(double seconds) {
        return stage().laid(si()).sceneAt(seconds);
    }

    /// A place on the table in words, from the zero mark.
    String place(Vec at) {
        return CardWords.side(
                        print.length(Math.abs(at.x())),
                        at.x(),
                        "to camera right",
                        "to camera left",
                        "on the centreline")
                + ", "
                + CardWords.side(
                        print.length(Math.abs(at.y())),
                        at.y(),
                        "away from the camera",
                        "toward the camera",
                        "level with the zero mark")
                + ", " + print.length(at.z()) + " up";
    }
}
