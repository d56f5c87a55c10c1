package plumeline.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import plumeline.plan.Thing;
import plumeline.quantity.Print;
import plumeline.stage.Immersed.Amount;
import plumeline.stage.Immersed.Body;
import plumeline.stage.Immersed.Lack;
import plumeline.stage.Immersed.Measure;
import plumeline.stage.Immersed.Reading;
import plumeline.water.Material;
import plumeline.water.Vessel;
import plumeline.water.Wall;

/// Reads a plan's thing as water knows it; made for one use.
final class ImmersedReader {
    /// Fresh water, what contents are taken to be.
    private static final double CONTENTS_KILOGRAMS_PER_METRE3 = 1000;

    /// What it displaces over what its form holds: past that the one or the other isn't of this thing.
    private static final double MOST_OVER_FORM = 1.25;

    /// What can't be less than nothing is no less than this share of itself, however far it may be off.
    private static final double LEAST_SHARE = 1e-3;

    private static final double ROUNDING = 1e-9;

    private final Thing thing;
    private final double water;
    private final Map<Measure, Double> moved;
    private final ImmersedForm form;
    private final Amount volume;
    private final Amount under;
    private final Amount liquid;
    private final Amount liquidDensity;
    private final Amount wallDensity;
    private final boolean isOpen;
    private final List<String> assumed = new ArrayList<>();

    /// @param moved measures that are taken to be other than written, SI
    ImmersedReader(Thing thing, double waterKilogramsPerMetre3, Map<Measure, Double> moved) {
        this.thing = thing;
        this.water = waterKilogramsPerMetre3;
        this.moved = moved;
        isOpen = thing.written().findWord("closed").filter("no"::equals).isPresent();
        liquid = find(Measure.CONTENTS).orElse(new Amount(0, 0));
        liquidDensity = findWeighed()
                .or(() -> find(Measure.CONTENTS_DENSITY))
                .orElse(new Amount(CONTENTS_KILOGRAMS_PER_METRE3, 0));
        wallDensity = find(Measure.WALL).or(this::findMaterial).orElse(material(Material.ALUMINIUM));
        form = new ImmersedForm(thing);
        volume = find(Measure.DISPLACES).orElseGet(this::formVolume);
        under = find(Measure.BASE_AIR).orElse(new Amount(form.recessMetres3(), 0));
    }

    private Optional<Amount> find(Measure measure) {
        Optional<Amount> written = thing.written()
                .findQuantity(measure.path())
                .map(quantity -> new Amount(quantity.si(), quantity.halfWidthSi()));
        return written.map(amount -> new Amount(moved.getOrDefault(measure, amount.value()), amount.half()));
    }

    private Amount formVolume() {
        double metres3 = form.outlineMetres3() - form.recessMetres3();
        return new Amount(moved.getOrDefault(Measure.FORM, metres3), Immersed.FORM_SHARE * metres3);
    }

    /// The contents' density where the thing was weighed full and empty.
    private Optional<Amount> findWeighed() {
        double filled = find(Measure.MASS).map(Amount::value).orElse(0.0)
                - find(Measure.EMPTY_MASS).map(Amount::value).orElse(Double.MAX_VALUE);
        return filled > 0 && liquid.value() > 0
                ? Optional.of(new Amount(filled / liquid.value(), 0))
                : Optional.empty();
    }

    private Optional<Amount> findMaterial() {
        return thing.written().findWord("material").flatMap(Material::find).map(ImmersedReader::material);
    }

    private static Amount material(Material material) {
        return new Amount(material.densityKilogramsPerMetre3(), 0);
    }

    /// The ends of what a measure may be, SI; none where it is known or not written.
    List<Double> ends(Measure measure) {
        Optional<Amount> amount = measure == Measure.FORM
                ? Optional.of(formVolume()).filter(_ -> !thing.written().has(Measure.DISPLACES.path()))
                : find(measure);
        return amount.filter(one -> one.half() > 0)
                .map(one -> List.of(
                        Math.max(one.value() - one.half(), LEAST_SHARE * one.value()), one.value() + one.half()))
                .orElse(List.of());
    }

    Reading read() {
        Optional<Amount> mass = find(Measure.MASS);
        Optional<Amount> empty = find(Measure.EMPTY_MASS);
        double contents = liquid.value() * liquidDensity.value();
        if (mass.isEmpty() && empty.isEmpty()) {
            return new Reading.Missing(Lack.MASS);
        }
        double emptyKilograms =
                empty.map(Amount::value).orElseGet(() -> mass.orElseThrow().value() - contents);
        boolean isLighter = mass.isPresent()
                && empty.isPresent()
                && mass.get().value() < empty.get().value();
        if (!(emptyKilograms > 0) || isLighter) {
            return new Reading.Missing(Lack.TOO_LIGHT);
        }
        Optional<Lack> lack = findLack(emptyKilograms);
        if (lack.isPresent()) {
            return new Reading.Missing(lack.get());
        }
        assumeOfForm();
        if (liquid.value() > 0
                && findWeighed().isEmpty()
                && find(Measure.CONTENTS_DENSITY).isEmpty()) {
            assumed.add("contents as heavy as water");
        }
        double contentsHalf = Math.hypot(liquid.half() * liquidDensity.value(), liquidDensity.half() * liquid.value());
        if (isOpen) {
            double half = empty.or(() -> mass).orElseThrow().half();
            return open(emptyKilograms, contents, Math.hypot(half, contentsHalf));
        }
        Amount whole = mass.orElseGet(() -> new Amount(
                emptyKilograms + contents, Math.hypot(empty.orElseThrow().half(), contentsHalf)));
        double half = Math.hypot(whole.half(), water * displaced().half());
        return known(whole, new Amount(whole.value() - water * displaced().value(), half), emptyKilograms, 0);
    }

    /// What can't be, each measure off as far as it may be.
    private Optional<Lack> findLack(double empty) {
        if (form.isHoled() && !thing.written().has(Measure.DISPLACES.path())) {
            return Optional.of(Lack.PROFILE);
        }
        double height = Forms.solid(thing.form()).heightMetres();
        boolean isOutside = Stream.of(Measure.CENTRE_OF_MASS, Measure.CENTRE_OF_VOLUME)
                .flatMap(measure -> find(measure).stream())
                .anyMatch(centre -> centre.value() > height || centre.value() < -height);
        if (isOutside) {
            return Optional.of(Lack.CENTRE);
        }
        if (form.isBaseWrong() || under.value() > form.recessMetres3() * (1 + ROUNDING)) {
            return Optional.of(Lack.BASE);
        }
        if (volume.value() - volume.half() > MOST_OVER_FORM * formVolume().value()) {
            return Optional.of(Lack.OUTLINE);
        }
        boolean isWallKnown = isTold() || thing.written().has(Measure.EMPTY_MASS.path());
        Amount air = find(Measure.AIR).orElse(new Amount(0, 0));
        double inside = (isWallKnown ? empty / wallDensity.value() : 0) + liquid.value() + air.value();
        double half = Math.hypot(volume.half(), Math.hypot(liquid.half(), air.half()));
        boolean isTooFull = inside > (volume.value() + half) * (1 + ROUNDING);
        return isTooFull ? Optional.of(Lack.TOO_FULL) : Optional.empty();
    }

    /// A bottle of which only diameter and height are written displaces less than they hold: that bears on how it
    /// turns, not on what it displaces. More than they hold, or less than half, is worth a word anyway.
    private void assumeOfForm() {
        if (!thing.written().has(Measure.DISPLACES.path())) {
            assumed.add("its volume by its form, ± 5 %");
        } else if (isDrawn() && !isNarrower() || volume.value() < formVolume().value() / 2) {
            assumed.add(drawn());
        }
        if (form.recessMetres3() > 0 && find(Measure.BASE_AIR).isEmpty()) {
            assumed.add(Print.number(1e6 * under.value(), 1) + " ml of air under its base, all that its hollow holds");
        }
    }

    /// Whether its form isn't as wide as what it displaces asks for.
    private boolean isDrawn() {
        return Math.abs(volume.value() - formVolume().value()) > formVolume().half() + volume.half();
    }

    private boolean isNarrower() {
        return volume.value() < formVolume().value();
    }

    private String drawn() {
        double share = Math.sqrt(volume.value() / formVolume().value()) - 1;
        return "its form drawn " + Print.number(100 * Math.abs(share), 0) + (isNarrower() ? " % narrower" : " % wider")
                + ", to hold the " + Print.number(1e6 * volume.value(), 0) + " ml it displaces";
    }

    /// With the air under its base.
    private Amount displaced() {
        return new Amount(volume.value() + under.value(), Math.hypot(volume.half(), under.half()));
    }

    /// Whether it is told what is in it.
    private boolean isTold() {
        return thing.written().has(Measure.CONTENTS.path())
                || thing.written().has(Measure.EMPTY_MASS.path())
                        && !thing.written().has(Measure.MASS.path());
    }

    /// In the net weight of an open one the outer volume cancels out: only wall, contents and air lift.
    private Reading open(double empty, double contents, double half) {
        Optional<Amount> air = find(Measure.AIR);
        if (air.isEmpty()) {
            return new Reading.Missing(Lack.AIR);
        }
        double wall = wall(empty);
        double flooded = volume.value() - wall - liquid.value() - air.get().value();
        if (flooded < 0) {
            return new Reading.Missing(Lack.TOO_FULL);
        }
        double lifting = wall + liquid.value() + air.get().value() + under.value();
        double off = Math.hypot(half, water * Math.hypot(air.get().half(), under.half()));
        double whole = empty + contents + water * flooded;
        return known(
                new Amount(whole, Math.hypot(half, water * volume.half())),
                new Amount(empty + contents - water * lifting, off),
                empty,
                flooded);
    }

    private double wall(double empty) {
        if (find(Measure.WALL).or(this::findMaterial).isEmpty()) {
            assumed.add("a wall of aluminium, 2.7 g/ml");
        }
        return empty / wallDensity.value();
    }

    private Reading known(Amount whole, Amount net, double empty, double flooded) {
        Immersed.Basis basis =
                thing.written().has(Measure.DISPLACES.path()) ? Immersed.Basis.DISPLACES : Immersed.Basis.FORM;
        Body body = form.isHoled() ? new Body.Untold(Lack.PROFILE) : body(whole.value(), empty, flooded);
        Immersed bare = new Immersed(whole, displaced(), net, basis, body, assumed);
        Optional<Ballasting> ballast = Ballasting.find(thing);
        if (ballast.filter(weight -> weight.hasNoRoom(bare, water)).isPresent()) {
            return new Reading.Missing(Lack.TOO_FULL);
        }
        return new Reading.Known(ballast.map(weight -> weight.on(bare, water)).orElse(bare));
    }

    private Body body(double whole, double empty, double flooded) {
        OptionalDouble lifted = find(Measure.CENTRE_OF_VOLUME).stream()
                .mapToDouble(Amount::value)
                .findFirst();
        Wall wall = form.wall(volume.value(), lifted, Math.min(under.value(), form.recessMetres3()));
        Optional<Amount> centre = find(Measure.CENTRE_OF_MASS);
        List<String> taken = new ArrayList<>();
        if (isDrawn() && isNarrower() && (lifted.isEmpty() || centre.isEmpty()) && !assumed.contains(drawn())) {
            taken.add(drawn());
        }
        if (centre.isPresent()) {
            return new Body.Of(solid(wall, new Vessel.Shell(whole, centre.get().value())), taken);
        }
        if (!isTold()) {
            taken.add("its weight spread evenly through its form: balance it on a ruler");
            return new Body.Of(solid(wall, new Vessel.Shell(whole, wall.solidCentreMetres())), taken);
        }
        double glassMetres3 = isOpen ? empty / wallDensity.value() : wall(empty);
        double cavity = volume.value() - glassMetres3;
        double inside = liquid.value() + flooded;
        if (cavity < inside * (1 - ROUNDING) || cavity < 0) {
            return new Body.Untold(Lack.TOO_FULL);
        }
        double density = inside > 0
                ? (liquid.value() * liquidDensity.value() + flooded * water) / inside
                : CONTENTS_KILOGRAMS_PER_METRE3;
        return new Body.Of(wall.around(new Wall.Empty(empty, OptionalDouble.empty()), cavity, inside, density), taken);
    }

    private static Vessel solid(Wall wall, Vessel.Shell shell) {
        return new Vessel(wall.outer(), shell, new Vessel.Inside.Solid(), wall.hollow(), List.of());
    }
}
