package plumeline.stage;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.geom.Solid;
import plumeline.plan.Thing;
import plumeline.quantity.Quantity;
import plumeline.water.Recess;
import plumeline.water.Turned;
import plumeline.water.Vessel;
import plumeline.water.Wall;

/// A plan's outline as water knows it: round about its axis, with the hollow of its base as a dome.
final class ImmersedForm {
    private final List<Turned.Ring> rings;
    private final double outlineMetres3;
    private final Optional<Recess> base;
    private final Optional<Turned> dome;

    ImmersedForm(Thing thing) {
        Solid solid = Forms.solid(thing.form());
        rings = rings(solid);
        outlineMetres3 = solid.volumeMetres3();
        Optional<Double> diameter =
                thing.written().findQuantity("base.diameter").map(Quantity::si);
        base = diameter.map(wide -> new Recess(
                wide / 2,
                thing.written().findQuantity("base.depth").orElseThrow().si()));
        Optional<Double> holds = thing.written().findQuantity("base.volume").map(Quantity::si);
        dome = base.flatMap(recess -> recess.findDome(holds.orElse(recess.capMetres3())));
    }

    private static List<Turned.Ring> rings(Solid solid) {
        return switch (solid) {
            case Solid.Revolved round ->
                round.stations().stream()
                        .map(station -> new Turned.Ring(station.heightMetres(), station.radiusMetres()))
                        .toList();
            case Solid.Box box -> {
                double radius = Math.sqrt(box.widthMetres() * box.depthMetres() / Math.PI);
                yield Turned.cylinder(radius, box.heightMetres()).rings();
            }
        };
    }

    /// The outline's volume, the hollow of its base counted in.
    double outlineMetres3() {
        return outlineMetres3;
    }

    /// What the hollow of its base holds; 0 where that is flat.
    double recessMetres3() {
        return dome.map(form -> form.whole().volumeMetres3()).orElse(0.0);
    }

    /// Whether it has no width somewhere between its ends.
    boolean isHoled() {
        return rings.subList(1, rings.size() - 1).stream().anyMatch(ring -> ring.radiusMetres() == 0);
    }

    /// Whether the hollow of its base is no dome, or isn't within its outline.
    boolean isBaseWrong() {
        return base.isPresent() && (dome.isEmpty() || !isHoled() && !Recess.fits(new Turned(rings), dome.get()));
    }

    /// Its outside as wide as a volume asks for, shifted to a centre of volume. It has no hole.
    ///
    /// @param metres3 what it displaces without air under its base, cubic metres
    /// @param centreMetres height of the centre of that, metres, where it was measured
    /// @param airMetres3 the air under its base, cubic metres
    Wall wall(double metres3, OptionalDouble centreMetres, double airMetres3) {
        Turned outline = new Turned(rings);
        double wider = Math.sqrt((metres3 + recessMetres3()) / outline.whole().volumeMetres3());
        Turned hull = outline.widened(wider);
        double centre = new Wall(hull, hollow(0, 0)).solidCentreMetres();
        double shift = centreMetres.isPresent() ? centreMetres.getAsDouble() - centre : 0;
        return new Wall(shifted(hull, shift), hollow(shift, airMetres3));
    }

    private Vessel.Hollow hollow(double shiftMetres, double airMetres3) {
        return dome.<Vessel.Hollow>map(form -> new Vessel.Hollow.Under(shifted(form, shiftMetres), airMetres3))
                .orElseGet(Vessel.Hollow.Flat::new);
    }

    private static Turned shifted(Turned form, double metres) {
        return new Turned(form.rings().stream()
                .map(ring -> new Turned.Ring(ring.heightMetres() + metres, ring.radiusMetres()))
                .toList());
    }
}
