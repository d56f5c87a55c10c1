package plumeline.stage;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import plumeline.geom.Body;
import plumeline.geom.Bounds;
import plumeline.geom.Pose;
import plumeline.geom.Vec;
import plumeline.plan.Kit;
import plumeline.plan.Mark;
import plumeline.plan.Placed;
import plumeline.plan.Plan;
import plumeline.plan.Release;
import plumeline.plan.Shot;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Quantity;

/// Where a free mark may be looked for, and what a hand can set.
///
/// Free places are looked for within a table's reach of what stands already ([#anchor]): as far as the kit's table is
/// wide and deep, wherever on it that lies, else 1.5 m; never below the table top. `free between` is kept to the
/// letter.
final class MarkRanges {
    /// How far from its ends a thing is tied, where a plan doesn't say otherwise.
    private static final double TIE_CLEAR_METRES = 0.005;

    /// From higher over the surface ink splashes and takes air along (common practice).
    private static final double NOZZLE_OVER_METRES = 0.05;

    /// So near to the glass no nozzle is clamped (common practice).
    private static final double NOZZLE_CLEAR_METRES = 0.02;

    private static final double TABLE_METRES = 1.5;
    private static final double CAMERA_FAR_METRES = 4;
    private static final double CAMERA_NEAR_METRES = 0.05;
    static final double STANDING_BACK_METRES = 0.8;
    private static final double LAMP_METRES = 2.5;
    private static final double MILLIMETRE = 0.001;
    private static final double SIXTEENTH_INCH = 0.0254 / 16;
    private static final double DEGREE = Math.toRadians(1);
    private static final double FAR_METRES = 20;
    private static final double THIRD_OF_A_STOP = 1.0 / 3;

    private MarkRanges() {}

    static StagedMark of(Mark mark, Shot shot, Plan plan) {
        double step = step(mark, plan.film().papersOrDefault());
        double reach = findTied(mark, shot).orElse(reach(mark));
        double[] range = range(mark, shot, plan);
        Optional<double[]> inWater = nozzleRange(mark, shot).or(() -> wetRange(mark, shot));
        if (inWater.isPresent()) {
            range = inWater.get();
        } else if (!path(mark, ".z")) {
            Vec anchor = anchor(shot);
            double about = path(mark, ".x") ? anchor.x() : path(mark, ".y") ? anchor.y() : 0;
            range = new double[] {range[0] + about, range[1] + about};
        }
        return switch (mark) {
            case Mark.Fixed fixed -> {
                double value = fixed.quantity().si();
                yield new StagedMark(mark, value, Math.min(range[0], value), Math.max(range[1], value), reach, step);
            }
            case Mark.Between between -> {
                double low = between.low().si();
                double high = between.high().si();
                yield new StagedMark(mark, (low + high) / 2, low, high, reach, step);
            }
            case Mark.Free _ -> new StagedMark(mark, (range[0] + range[1]) / 2, range[0], range[1], reach, step);
        };
    }

    /// What free places lie about, so that a set shifted as a whole is solved alike: where the first thing stands that
    /// isn't free; where only the camera does, as far before it as a camera usually stands back; else the zero
    /// mark.
    static Vec anchor(Shot shot) {
        double x = Stream.concat(
                        shot.placed().stream().map(placed -> placed.at().x()),
                        Stream.of(shot.camera().at().x()))
                .flatMap(mark -> fixed(mark).stream())
                .findFirst()
                .orElse(0.0);
        double y = Stream.concat(
                        shot.placed().stream()
                                .flatMap(placed -> fixed(placed.at().y()).stream()),
                        fixed(shot.camera().at().y()).map(metres -> metres + STANDING_BACK_METRES).stream())
                .findFirst()
                .orElse(0.0);
        return new Vec(x, y, 0);
    }

    private static Optional<Double> fixed(Mark mark) {
        return mark instanceof Mark.Fixed fixed ? Optional.of(fixed.quantity().si()) : Optional.empty();
    }

    /// Whether a mark is a place along an axis: `.x`, `.y` or `.z` of something that stands.
    private static boolean path(Mark mark, String axis) {
        return mark.kind() != Mark.Kind.MOTOR && mark.path().endsWith(axis);
    }

    /// A nozzle is looked for over or in its tank's water.
    private static Optional<double[]> nozzleRange(Mark mark, Shot shot) {
        boolean isNozzle = shot.findRelease().orElse(null) instanceof Release.OfInk ink
                && ink.at().marks().contains(mark);
        if (!isNozzle || shot.findTank().isEmpty()) {
            return Optional.empty();
        }
        TankWalls walls = TankWalls.of(shot.findTank().get());
        Bounds inside = walls.inside();
        double clear = Math.min(
                NOZZLE_CLEAR_METRES,
                Math.min(
                                inside.high().x() - inside.low().x(),
                                inside.high().y() - inside.low().y())
                        / 4);
        Vec low = inside.low().plus(new Vec(clear, clear, clear));
        Vec high = inside.high().minus(new Vec(clear, clear, clear));
        return Optional.of(
                path(mark, ".z")
                        ? new double[] {low.z(), walls.waterLineMetres() + NOZZLE_OVER_METRES}
                        : path(mark, ".x") ? new double[] {low.x(), high.x()} : new double[] {low.y(), high.y()});
    }

    /// What hangs in a tank, or shall stay under, is looked for in its water, upright and clear of its walls.
    private static Optional<double[]> wetRange(Mark mark, Shot shot) {
        Optional<Placed> placed = shot.placed().stream()
                .filter(one -> one.at().marks().contains(mark))
                .filter(one -> one.isHung() || isToStayUnder(shot, one))
                .findFirst();
        boolean isFilled = shot.findTank().flatMap(tank -> tank.water()).isPresent();
        if (placed.isEmpty() || !isFilled) {
            return Optional.empty();
        }
        TankWalls walls = TankWalls.of(shot.findTank().get());
        Bounds form = new Body(Forms.solid(placed.get().thing().form()), new Pose(Vec.ZERO, 0, 0)).bounds();
        Vec low = walls.inside().low().minus(form.low());
        Vec high = walls.inside().high().minus(form.high());
        double[] range = path(mark, ".z")
                ? new double[] {low.z(), walls.waterLineMetres() - form.high().z()}
                : path(mark, ".x") ? new double[] {low.x(), high.x()} : new double[] {low.y(), high.y()};
        boolean isWithin =
                fixed(mark).map(value -> value >= range[0] && value <= range[1]).orElse(true);
        return range[0] < range[1] && isWithin ? Optional.of(range) : Optional.empty();
    }

    private static boolean isToStayUnder(Shot shot, Placed placed) {
        return shot.wants().stream()
                .anyMatch(line -> line.word().equals("stays_under")
                        && line.subjects().getFirst().name().equals(placed.name()));
    }

    private static double[] range(Mark mark, Shot shot, Plan plan) {
        String path = mark.path();
        return switch (mark.kind()) {
            case TAPE, HUNG ->
                path.equals("camera.y")
                        ? new double[] {-CAMERA_FAR_METRES, -CAMERA_NEAR_METRES}
                        : tableRange(path, plan);
            case HEIGHT -> heightRange(findTied(mark, shot));
            case LAMP_PLACE -> new double[] {path.endsWith(".z") ? 0 : -LAMP_METRES, LAMP_METRES};
            case TURN, LAMP_TURN, MOTOR_TURN ->
                path.endsWith(".tilt")
                        ? new double[] {-Math.PI / 2.2, Math.PI / 2.2}
                        : new double[] {-Math.PI, Math.PI};
            case MOTOR -> motorRange(path, shot);
            case FOCUS -> new double[] {1.2 * focalLength(shot), CAMERA_FAR_METRES};
            case DIAL -> dialRange(path, shot);
        };
    }

    /// From the zero mark to either side a thing stays on the table; the camera's stand need not.
    private static double[] tableRange(String path, Plan plan) {
        List<Quantity> size = path.startsWith("camera.") ? List.of() : tableSize(plan);
        double reach = TABLE_METRES;
        if (path.endsWith(".x") && !size.isEmpty()) {
            reach = size.getFirst().si();
        } else if (path.endsWith(".y") && size.size() > 1) {
            reach = size.get(1).si();
        }
        return new double[] {path.endsWith(".z") ? 0 : -reach, reach};
    }

    private static List<Quantity> tableSize(Plan plan) {
        return plan.kit()
                .table()
                .map(table -> table.written().listQuantities("size"))
                .orElse(List.of());
    }

    private static double[] motorRange(String path, Shot shot) {
        double travel = shot.moves().stream()
                .filter(move -> path.startsWith(move.name() + "."))
                .flatMap(move -> move.machine().stream())
                .flatMap(machine -> machine.written().findQuantity("travel").stream())
                .mapToDouble(quantity -> quantity.si())
                .findFirst()
                .orElse(TABLE_METRES);
        return new double[] {-travel, travel};
    }

    /// No line holds on the very edge of a base or a top.
    private static double[] heightRange(OptionalDouble tiedTo) {
        if (tiedTo.isEmpty()) {
            return new double[] {0, TABLE_METRES};
        }
        double height = tiedTo.getAsDouble();
        double clear = Math.min(TIE_CLEAR_METRES, height / 4);
        return new double[] {clear, height - clear};
    }

    /// How high a tie can be: to the top of what it is tied to.
    private static OptionalDouble findTied(Mark mark, Shot shot) {
        return shot.placed().stream()
                .filter(placed -> placed.tied().contains(mark))
                .mapToDouble(placed -> Forms.solid(placed.thing().form()).heightMetres())
                .findFirst();
    }

    private static double[] dialRange(String path, Shot shot) {
        if (!path.equals("camera.f_number")) {
            return new double[] {0, 1};
        }
        Kit.FNumbers numbers = shot.camera().lens().fNumbers().orElse(new Kit.FNumbers(1.4, 32));
        return new double[] {numbers.least(), numbers.greatest()};
    }

    private static double focalLength(Shot shot) {
        return shot.camera().lens().focalLength().si();
    }

    private static double reach(Mark mark) {
        return switch (mark.kind()) {
            case TAPE, HUNG, HEIGHT, MOTOR, FOCUS, LAMP_PLACE -> FAR_METRES;
            case TURN, LAMP_TURN, MOTOR_TURN -> mark.path().endsWith(".tilt") ? Math.PI / 2 : Math.PI;
            case DIAL -> mark.path().equals("camera.f_number") ? 128 : 1;
        };
    }

    private static double step(Mark mark, PaperUnit papers) {
        double tape = papers == PaperUnit.INCHES ? SIXTEENTH_INCH : MILLIMETRE;
        return switch (mark.kind()) {
            case TAPE, HUNG, HEIGHT, LAMP_PLACE, FOCUS -> tape;
            case MOTOR -> papers == PaperUnit.INCHES ? SIXTEENTH_INCH : MILLIMETRE / 10;
            case TURN, LAMP_TURN -> DEGREE;
            case MOTOR_TURN -> DEGREE / 10;
            case DIAL -> mark.path().equals("camera.f_number") ? THIRD_OF_A_STOP : 0.01;
        };
    }
}
