package plumeline.lit;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plumeline.geom.Bounds;
import plumeline.geom.Vec;
import plumeline.mirror.Looking;
import plumeline.optics.Bent;
import plumeline.optics.Boundary;
import plumeline.optics.TankView;
import plumeline.stage.TankWalls;

/// Sight through a pane to what is wholly in a tank's water, and on from there, mirrored, out of the tank: through the
/// pane that it meets, or through the water's surface and past or through what of the panes stands above it.
///
/// Exact by Snell's law. Where it is reflected whole, and at the floor, it is followed no further.
///
/// @param view the camera's view through the pane that faces it
/// @param walls the tank
record TankLooking(TankView view, TankWalls walls) implements Looking {
    @Override
    public Optional<Vec> findEye() {
        return Optional.empty();
    }

    @Override
    public List<Vec> way(Vec place) {
        return view.path(place).reversed();
    }

    @Override
    public Vec toCamera(Vec place) {
        // A place on the pane itself looks as the next stretch goes.
        return view.path(place).reversed().stream()
                .map(corner -> corner.minus(place))
                .filter(way -> way.lengthMetres() > 0)
                .findFirst()
                .orElseThrow();
    }

    @Override
    public Vec apparent(Vec place) {
        return view.apparent(place);
    }

    @Override
    public Optional<Onward> findOnward(Vec place, Vec toward) {
        Vec in = walls.inside().high();
        Bounds wet =
                new Bounds(walls.inside().low(), new Vec(in.x(), in.y(), Math.min(in.z(), walls.waterLineMetres())));
        Leaving leaving = Leaving.of(wet, place, toward);
        if (leaving.normal.z() == 0) {
            return through(
                    List.of(place, leaving.at),
                    toward,
                    leaving.normal,
                    view.water().behindIndex());
        }
        if (leaving.normal.z() < 0) {
            return Optional.empty();
        }
        Optional<Vec> over = bend(view.water().behindIndex(), 1, toward, leaving.normal);
        return over.flatMap(way -> overWater(place, leaving.at, way));
    }

    /// What has come through the surface goes over the rim, or through a pane above the water.
    private Optional<Onward> overWater(Vec place, Vec surface, Vec toward) {
        Bounds dry = new Bounds(
                new Vec(walls.inside().low().x(), walls.inside().low().y(), surface.z()),
                new Vec(
                        walls.inside().high().x(),
                        walls.inside().high().y(),
                        Math.max(surface.z(), walls.inside().high().z())));
        Leaving leaving = Leaving.of(dry, surface, toward);
        return leaving.normal.z() > 0
                ? Optional.of(new Onward(List.of(place, surface), toward))
                : through(List.of(place, surface, leaving.at), toward, leaving.normal, 1);
    }

    /// Through a pane from what is behind it, as far as there is a pane.
    private Optional<Onward> through(List<Vec> corners, Vec toward, Vec normal, double index) {
        double glass = view.water().glassIndex();
        return bend(index, glass, toward, normal).flatMap(inPane -> {
            double on = view.water().glassMetres() / inPane.dot(normal);
            Vec outer = corners.getLast().plus(inPane.times(on));
            return isOnTank(outer)
                    ? bend(glass, 1, inPane, normal).map(out -> new Onward(append(corners, outer), out))
                    : Optional.empty();
        });
    }

    private boolean isOnTank(Vec outer) {
        Vec low = walls.outside().low();
        Vec high = walls.outside().high();
        double slack = 1e-9;
        return outer.x() >= low.x() - slack
                && outer.x() <= high.x() + slack
                && outer.y() >= low.y() - slack
                && outer.y() <= high.y() + slack
                && outer.z() >= low.z()
                && outer.z() <= high.z();
    }

    private static List<Vec> append(List<Vec> corners, Vec next) {
        return Stream.concat(corners.stream(), Stream.of(next)).toList();
    }

    private static Optional<Vec> bend(double from, double to, Vec toward, Vec normal) {
        return switch (new Boundary(from, to).bend(toward, normal)) {
            case Bent.Passed(Vec way) -> Optional.of(way);
            case Bent.Reflected _ -> Optional.empty();
        };
    }

    /// Where a way leaves a box.
    private record Leaving(Vec at, Vec normal) {
        static Leaving of(Bounds box, Vec from, Vec toward) {
            double x = until(from.x(), toward.x(), box.low().x(), box.high().x());
            double y = until(from.y(), toward.y(), box.low().y(), box.high().y());
            double z = until(from.z(), toward.z(), box.low().z(), box.high().z());
            double on = Math.min(x, Math.min(y, z));
            Vec normal = on == z
                    ? new Vec(0, 0, Math.signum(toward.z()))
                    : on == y ? new Vec(0, Math.signum(toward.y()), 0) : new Vec(Math.signum(toward.x()), 0, 0);
            return new Leaving(from.plus(toward.times(on)), normal);
        }

        private static double until(double from, double toward, double low, double high) {
            return toward == 0 ? Double.POSITIVE_INFINITY : ((toward > 0 ? high : low) - from) / toward;
        }
    }
}
