package plumeline.resect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Aim;
import plumeline.geom.Bounds;
import plumeline.geom.Pinhole;
import plumeline.geom.Plane;
import plumeline.geom.Point;
import plumeline.geom.Projection;
import plumeline.geom.Vec;
import plumeline.optics.TankView;
import plumeline.plan.Mark;
import plumeline.stage.Scene;
import plumeline.stage.Sightlines;
import plumeline.stage.StagedMark;
import plumeline.stage.TankWalls;

/// The set with everything off its mark by so much: what may be off, and where landmarks show then.
final class Unset {
    private final StillView view;
    private final List<Sought> sought;

    private Unset(StillView view, List<Sought> sought) {
        this.view = view;
        this.sought = List.copyOf(sought);
    }

    static Unset of(StillView view, Allowance allowance) {
        List<Sought> all = new ArrayList<>();
        List<StagedMark> marks = view.stage().marks();
        for (int i = 0; i < marks.size(); i++) {
            Mark mark = marks.get(i).mark();
            Optional<Sought.Kind> kind = kind(mark);
            double error = marks.get(i).placingErrorSi(view.values()[i]);
            if (kind.isPresent() && error > 0) {
                all.add(new Sought(mark.path(), kind.get(), error, new Sought.Of.AMark(i)));
            }
        }
        boolean isTurnSet = marks.stream().anyMatch(mark -> mark.mark().path().equals("camera.turn"));
        boolean isTiltSet = marks.stream().anyMatch(mark -> mark.mark().path().equals("camera.tilt"));
        if (!isTurnSet) {
            add(all, "camera.turn", Sought.Kind.ANGLE, allowance.aimRadians(), Sought.What.TURN);
        }
        if (!isTiltSet) {
            add(all, "camera.tilt", Sought.Kind.ANGLE, allowance.aimRadians(), Sought.What.TILT);
        }
        add(all, "camera.roll", Sought.Kind.ANGLE, allowance.rollRadians(), Sought.What.ROLL);
        add(all, "camera.focal_length", Sought.Kind.SHARE, allowance.focalShare(), Sought.What.FOCAL_LENGTH);
        if (view.stage().findTank().isPresent()) {
            add(all, "tank.x", Sought.Kind.LENGTH, allowance.tankMetres(), Sought.What.TANK_X);
            add(all, "tank.y", Sought.Kind.LENGTH, allowance.tankMetres(), Sought.What.TANK_Y);
        }
        return new Unset(view, all);
    }

    private static void add(List<Sought> all, String name, Sought.Kind kind, double errorSi, Sought.What what) {
        if (errorSi > 0) {
            all.add(new Sought(name, kind, errorSi, new Sought.Of.Else(what)));
        }
    }

    /// What a mark is, where it can show in a picture; lamps' marks and what is dialled can't.
    private static Optional<Sought.Kind> kind(Mark mark) {
        return switch (mark.kind()) {
            case TAPE, HEIGHT, HUNG, MOTOR, FOCUS -> Optional.of(Sought.Kind.LENGTH);
            case TURN, MOTOR_TURN -> Optional.of(Sought.Kind.ANGLE);
            case LAMP_PLACE, LAMP_TURN, DIAL -> Optional.empty();
        };
    }

    List<Sought> sought() {
        return sought;
    }

    /// Where places show, pixels x, y in turn, each seen as it is with everything at its mark; empty where one of them
    /// then is nowhere.
    Optional<double[]> pixels(List<Landmark> landmarks, List<Sighting.By> ways, double[] offSi) {
        Scene scene = scene(offSi);
        double larger = 1 + other(offSi, Sought.What.FOCAL_LENGTH);
        double[] pixels = new double[2 * landmarks.size()];
        for (int i = 0; i < landmarks.size(); i++) {
            Sighting.By by = ways.get(i);
            Optional<Point> point =
                    Sighting.place(scene, by, landmarks.get(i)).flatMap(place -> Sighting.point(scene, by, place));
            if (point.isEmpty()) {
                return Optional.empty();
            }
            Point pixel = view.still()
                    .pixel(
                            scene.picture(),
                            new Point(point.get().x() * larger, point.get().y() * larger));
            pixels[2 * i] = pixel.x();
            pixels[2 * i + 1] = pixel.y();
        }
        return Optional.of(pixels);
    }

    /// The set with everything off by so much, but for the focal length.
    private Scene scene(double[] offSi) {
        double[] values = view.values();
        for (int i = 0; i < offSi.length; i++) {
            if (sought.get(i).of() instanceof Sought.Of.AMark(int index)) {
                values[index] += offSi[i];
            }
        }
        Scene set = view.stage().laid(values).sceneAt(view.realSeconds());
        Aim aim = new Aim(
                set.aim().eye(),
                set.aim().turnRadians() + other(offSi, Sought.What.TURN),
                Math.clamp(set.aim().tiltRadians() + other(offSi, Sought.What.TILT), -Math.PI / 2, Math.PI / 2),
                set.aim().rollRadians() + other(offSi, Sought.What.ROLL));
        Vec tank = new Vec(other(offSi, Sought.What.TANK_X), other(offSi, Sought.What.TANK_Y), 0);
        Sightlines lines = lines(set.lines(), aim, tank);
        return new Scene(
                set.frame(),
                set.realSeconds(),
                aim,
                lines,
                set.projection(),
                set.picture(),
                set.things(),
                set.lamps(),
                set.beams(),
                set.nozzle());
    }

    private double other(double[] offSi, Sought.What what) {
        for (int i = 0; i < offSi.length; i++) {
            if (sought.get(i).of() instanceof Sought.Of.Else(Sought.What other) && other == what) {
                return offSi[i];
            }
        }
        return 0;
    }

    private static Sightlines lines(Sightlines lines, Aim aim, Vec tank) {
        return switch (lines) {
            case Sightlines.Free _ -> new Sightlines.Free(new Pinhole(aim));
            case Sightlines.WithTank with -> {
                Projection through = with.through() instanceof TankView view
                        ? new TankView(
                                aim,
                                new Plane(
                                        view.wall().through().plus(tank),
                                        view.wall().normal()),
                                view.water(),
                                view.waterLineMetres())
                        : new Pinhole(aim);
                TankWalls walls = with.walls();
                yield new Sightlines.WithTank(
                        aim,
                        new TankWalls(
                                moved(walls.outside(), tank),
                                moved(walls.inside(), tank),
                                walls.paneMetres(),
                                walls.waterLineMetres()),
                        through);
            }
        };
    }

    private static Bounds moved(Bounds bounds, Vec by) {
        return new Bounds(bounds.low().plus(by), bounds.high().plus(by));
    }
}
