package plumeline.stage;

import java.util.List;
import java.util.Optional;
import plumeline.plan.Thing;
import plumeline.stage.Immersed.Amount;
import plumeline.stage.Immersed.Body;
import plumeline.water.Material;
import plumeline.water.Vessel;

/// A thing's `ballast`: a weight beside what its mass counts.
///
/// Inside a sealed thing it takes the place of air; inside an open one, or under it, that of the tank's water.
///
/// @param kilograms its mass, kilograms
/// @param kilogramsPerMetre3 its density, kilograms a cubic metre
/// @param place where it is
/// @param isOpen whether the thing is open
record Ballasting(double kilograms, double kilogramsPerMetre3, Place place, boolean isOpen) {
    enum Place {
        INSIDE,
        UNDER
    }

    /// Reads a thing's ballast; of steel where its material isn't written.
    static Optional<Ballasting> find(Thing thing) {
        boolean isUnder = thing.written()
                .findWord("ballast.place")
                .filter("under"::equals)
                .isPresent();
        boolean isOpen = thing.written().findWord("closed").filter("no"::equals).isPresent();
        Material material = thing.written()
                .findWord("ballast.material")
                .flatMap(Material::find)
                .orElse(Material.STEEL);
        return thing.written()
                .findQuantity("ballast.mass")
                .map(mass -> new Ballasting(
                        mass.si(), material.densityKilogramsPerMetre3(), isUnder ? Place.UNDER : Place.INSIDE, isOpen));
    }

    private double metres3() {
        return kilograms / kilogramsPerMetre3;
    }

    /// Puts it on a thing.
    Immersed on(Immersed bare, double water) {
        boolean isInWater = place == Place.UNDER || isOpen;
        double lifted = isInWater ? water * metres3() : 0;
        double under = place == Place.UNDER ? metres3() : 0;
        Body body = switch (bare.body()) {
            case Body.Untold untold -> untold;
            case Body.Of(Vessel vessel, List<String> taken) -> on(vessel, water, taken);
        };
        return new Immersed(
                new Amount(
                        bare.mass().value() + kilograms - lifted + water * under,
                        bare.mass().half()),
                new Amount(bare.displaced().value() + under, bare.displaced().half()),
                new Amount(bare.net().value() + kilograms - lifted, bare.net().half()),
                bare.basis(),
                body,
                bare.assumed());
    }

    /// In an open thing it takes the place of the tank's water that has flooded it.
    private Body on(Vessel vessel, double water, List<String> taken) {
        if (place == Place.UNDER) {
            return new Body.Of(vessel.withUnder(kilograms, kilogramsPerMetre3), taken);
        }
        if (!(vessel.inside() instanceof Vessel.Inside.Filled filled)) {
            double lifted = isOpen ? water * metres3() : 0;
            return new Body.Of(vessel.withInside(kilograms - lifted, kilogramsPerMetre3), taken);
        }
        double spilled = isOpen ? Math.max(0, metres3() - filled.airMetres3()) : 0;
        if (metres3() - spilled > filled.airMetres3() || spilled > filled.liquidMetres3()) {
            return new Body.Untold(Immersed.Lack.TOO_FULL);
        }
        Vessel.Inside left = new Vessel.Inside.Filled(
                filled.cavity(), filled.liquidMetres3() - spilled, filled.densityKilogramsPerMetre3());
        return new Body.Of(vessel.holding(left).withInside(kilograms, kilogramsPerMetre3), taken);
    }

    /// Whether it has no room: then nothing is known of the thing with it.
    boolean hasNoRoom(Immersed bare, double water) {
        return bare.body() instanceof Body.Of(Vessel vessel, List<String> taken)
                && on(vessel, water, taken) instanceof Body.Untold;
    }
}
