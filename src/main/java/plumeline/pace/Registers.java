package plumeline.pace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.geom.Body;
import plumeline.geom.Point;
import plumeline.geom.Vec;
import plumeline.motion.Limits;
import plumeline.motion.Registration;
import plumeline.motion.Run;
import plumeline.motion.Swing;
import plumeline.plan.Move;
import plumeline.plan.Shot;
import plumeline.plan.Written;
import plumeline.quantity.Quantity;
import plumeline.stage.Gauge;
import plumeline.stage.MachineLimits;
import plumeline.stage.Picture;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// Passes of a move lie on each other within a limit.
///
/// Margin in captured px at each thing's middle plane, at an instant, the worst thing: the limit less all that may come
/// together: how far apart the plan itself has them, half a captured frame's travel where camera and machine don't
/// start together, what each machine repeats, what still sways, and by how much focus breathes.
///
/// @param passes the passes
/// @param film the rate at which the film is shown
/// @param mostPixels the limit, px
record Registers(List<Stage> passes, Quantity film, double mostPixels) implements Gauge<Paced> {
    /// Over so long a stretch of the move a speed is measured, s.
    private static final double GLIMPSE_SECONDS = 1e-4;

    Registers {
        passes = List.copyOf(passes);
    }

    @Override
    public String unit() {
        return "px";
    }

    @Override
    public boolean restsOnMarks() {
        return true;
    }

    /// How far passes may lie apart.
    ///
    /// @param thing the worst thing's index
    /// @param plannedPixels how far apart the plan has them, px
    /// @param registration what comes in shooting them
    record Apart(int thing, double plannedPixels, Registration registration) {
        double pixels() {
            return plannedPixels + registration.sumPixels();
        }
    }

    @Override
    public double[] parts(Paced at) {
        return new double[] {mostPixels - worst(at).pixels()};
    }

    Apart worst(Paced at) {
        Apart worst = new Apart(
                0,
                -Subject.BEHIND,
                new Registration(
                        new Registration.Move(
                                0, Capture.of(at.stage().shot(), film).framesPerSecond(), start(at)),
                        0,
                        0,
                        0));
        double most = -1;
        List<Scene> others = differing(at).stream()
                .map(pass -> pass.scene(at.si(), at.now().frame()))
                .toList();
        for (int thing = 0; thing < at.now().things().size(); thing++) {
            if (Shift.isBefore(at.now(), thing)) {
                Apart apart = apart(at, thing, others);
                if (apart.pixels() > most) {
                    most = apart.pixels();
                    worst = apart;
                }
            }
        }
        return worst;
    }

    private static Registration.Start start(Paced at) {
        return at.stage().shot().moves().stream().allMatch(Move::isTriggered)
                ? Registration.Start.TRIGGERED
                : Registration.Start.FREE;
    }

    /// The passes in which camera, things or moves are otherwise than in the one that is looked at: lamps alone put
    /// nothing elsewhere.
    private List<Stage> differing(Paced at) {
        Shot own = at.stage().shot();
        return passes.stream()
                .filter(pass -> !pass.shot().placed().equals(own.placed())
                        || !pass.shot().moves().equals(own.moves())
                        || !pass.shot().camera().equals(own.camera())
                        || !pass.shot().playback().equals(own.playback())
                        || !pass.shot().findTank().equals(own.findTank()))
                .toList();
    }

    private Apart apart(Paced at, int thing, List<Scene> others) {
        Scene now = at.now();
        Scene next = at.later(GLIMPSE_SECONDS);
        double speed = Shift.ofThing(now, next, thing) / GLIMPSE_SECONDS;
        double repeats = 0;
        double sways = 0;
        double breathes = 0;
        List<Move> moves = at.stage().shot().moves();
        for (int i = 0; i < moves.size(); i++) {
            Move move = moves.get(i);
            Limits limits = MachineLimits.of(move.machine());
            if (Double.isFinite(limits.repeats())) {
                double pixels = pixels(at, i, thing, limits.repeats());
                if (move.axis().sort() == Move.Axis.Sort.LENGTH) {
                    breathes += pixels;
                } else {
                    repeats += pixels;
                }
            }
            sways += pixels(at, i, thing, sway(at, i));
        }
        double rate = Capture.of(at.stage().shot(), film).framesPerSecond();
        Registration registration =
                new Registration(new Registration.Move(speed, rate, start(at)), repeats, sways, breathes);
        return new Apart(thing, planned(at, thing, others), registration);
    }

    /// How far the thing is from where the other passes have it at the same frame.
    private static double planned(Paced at, int thing, List<Scene> others) {
        double most = 0;
        for (Scene scene : others) {
            // Passes place the same things in the same order: overrides reach into what the shot has.
            if (thing < scene.things().size() && Shift.isBefore(scene, thing)) {
                most = Math.max(most, between(at.now(), scene, thing));
            }
        }
        return most;
    }

    private static double between(Scene one, Scene other, int thing) {
        Point a = place(one, one.things().get(thing));
        Point b = place(other, other.things().get(thing));
        return Math.hypot(a.x() - b.x(), a.y() - b.y());
    }

    private static Point place(Scene scene, Body body) {
        Point seen = scene.view(body).project(body.middle());
        return new Point(Shift.scale(scene) * seen.x(), Shift.scale(scene) * seen.y());
    }

    /// By how many pixels a thing is off where a machine is off by so much.
    static double pixels(Paced at, int index, int thing, double off) {
        Scene now = at.now();
        Body body = now.things().get(thing);
        Move move = at.stage().shot().moves().get(index);
        Point seen = now.view(body).project(body.middle());
        boolean isCarried = move.listCarried().stream()
                .anyMatch(named -> named.name()
                        .equals(at.stage().shot().placed().get(thing).name()));
        boolean isOfCamera = move.listCarried().isEmpty()
                || move.listCarried().stream().anyMatch(named -> named.name().equals("camera"));
        if (off == 0 || isCarried == isOfCamera) {
            return 0;
        }
        double scale = Shift.scale(now);
        return switch (move.axis()) {
            case SLIDE, LIFT -> {
                Vec way = at.stage().wayOf(index, at.si());
                double length = way.lengthMetres();
                yield length > 0 ? Shift.ofPlace(now, body, body.middle(), way.times(off / length)) : 0;
            }
            case PAN -> scale * off * (1 + seen.x() * seen.x());
            case TILT -> scale * off * (1 + seen.y() * seen.y());
            case ROLL -> scale * off * Math.hypot(seen.x(), seen.y());
            case TURNTABLE -> off * body.solid().reachMetres() * Shift.pixelsPerMetre(now, body);
            case FOCUS -> scale * edge(seen, now, body) * Math.abs(grown(now.picture(), off, 0) - 1);
            case ZOOM -> scale * edge(seen, now, body) * Math.abs(grown(now.picture(), 0, off) - 1);
        };
    }

    /// How far from the picture's middle a thing reaches at most, a tangent.
    private static double edge(Point seen, Scene now, Body body) {
        return Math.hypot(seen.x(), seen.y())
                + body.ballMetres() / now.view(body).depth(body.middle());
    }

    /// By how much the picture grows with the focus or the focal length: a thin lens breathes so, a lens made not to
    /// less.
    private static double grown(Picture picture, double focus, double zoom) {
        double focal = picture.lens().focalLengthMetres();
        double distance = picture.focusMetres();
        return imageMetres(focal + zoom, distance + focus) / imageMetres(focal, distance);
    }

    private static double imageMetres(double focal, double distance) {
        return focal * distance / (distance - focal);
    }

    /// How far a machine may still sway at an instant: what its last ramp left, decayed since.
    private static double sway(Paced at, int index) {
        Move move = at.stage().shot().moves().get(index);
        Optional<Run> run = at.stage().findRun(index, at.si());
        Optional<Written> machine = move.machine().map(one -> one.written());
        OptionalDouble hertz = si(machine, "sways.rate");
        OptionalDouble damping = si(machine, "sways.damping");
        if (run.isEmpty() || hertz.isEmpty() || damping.isEmpty()) {
            return 0;
        }
        Swing swing = new Swing(hertz.getAsDouble(), damping.getAsDouble());
        return Sway.of(run.get(), swing, si(machine, "sways.by"))
                .at(at.now().realSeconds() - at.stage().startSeconds(index));
    }

    private static OptionalDouble si(Optional<Written> written, String key) {
        return written.flatMap(one -> one.findQuantity(key)).stream()
                .mapToDouble(Quantity::si)
                .findFirst();
    }

    @Override
    public Optional<String> findUnknown(Paced at) {
        Optional<String> timeless = Subject.findTimeless(at);
        if (timeless.isPresent()) {
            return timeless;
        }
        for (int thing = 0; thing < at.now().things().size(); thing++) {
            Subject subject =
                    new Subject(thing, at.stage().shot().placed().get(thing).name());
            Optional<String> unknown = subject.findUnknown(at);
            if (unknown.isPresent()) {
                return unknown;
            }
        }
        return at.stage().shot().moves().stream()
                .filter(move -> move.machine()
                        .filter(machine -> machine.written().has("repeats"))
                        .isEmpty())
                .findFirst()
                .map(move -> "Not known: how well " + move.name() + " repeats. Write a machine with repeats for it.");
    }

    @Override
    public String standing(Paced at) {
        Apart apart = worst(at);
        Registration registration = apart.registration();
        List<String> parts = new ArrayList<>();
        add(parts, apart.plannedPixels(), "as the passes are written");
        add(
                parts,
                registration.phasePixels(),
                "by half a captured frame's travel, as camera and move don't start together");
        add(parts, registration.repeatsPixels(), "by what the machines repeat");
        add(parts, registration.residuePixels(), "by what still sways");
        add(parts, registration.breathingPixels(), "by focus and zoom that repeat");
        String sum = parts.isEmpty() ? "" : ": " + String.join(", ", parts);
        return at.stage().shot().placed().get(apart.thing()).name() + " may lie " + Pixels.text(apart.pixels())
                + " apart" + sum + "; " + Pixels.text(mostPixels) + " is allowed.";
    }

    private static void add(List<String> parts, double pixels, String why) {
        if (pixels > 0) {
            parts.add(Pixels.text(pixels) + " " + why);
        }
    }
}
