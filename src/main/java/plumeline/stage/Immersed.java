package plumeline.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.plan.Thing;
import plumeline.quantity.Quantity;
import plumeline.water.Material;
import plumeline.water.Turned;
import plumeline.water.Vessel;
import plumeline.water.Wall;

/// A plan's thing as water knows it: what it weighs, what it displaces, and the vessel that floats, hangs or stands.
///
/// A sealed thing weighs its `mass`, or its `empty_mass` and `contents`. An open one holds tank water where neither
/// wall, contents nor `air` is. The form is drawn wider or narrower so that it has the volume that was measured, and
/// shifted along its axis where `centre_of_volume` is written; a box with liquid in it is taken as round.
///
/// @param mass all that weighs, kilograms
/// @param displaced the water it displaces with all of it under, cubic metres
/// @param net weight in water, kilograms; negative floats
/// @param basis where the volume comes from
/// @param body the vessel, where its centre of mass is known
/// @param assumed what was taken for what isn't written, each in a few words
public record Immersed(Amount mass, Amount displaced, Amount net, Basis basis, Body body, List<String> assumed) {
    /// How far a volume by a form may be off, 95 %: a millimetre in a diameter of 40.
    ///
    /// **Source:** common practice with a tape.
    public static final double FORM_SHARE = 0.05;

    /// Fresh water, what contents are taken to be.
    private static final double CONTENTS_KILOGRAMS_PER_METRE3 = 1000;

    /// A figure with its spread.
    ///
    /// @param value the value, SI
    /// @param half 95 % half-width, SI, ≥ 0; 0 where none is written
    public record Amount(double value, double half) {}

    /// Where a volume comes from.
    public enum Basis {
        /// It was pushed under and weighed: `displaces`.
        DISPLACES,
        /// Its profile, cylinder or box: typical, within [#FORM_SHARE].
        FORM
    }

    /// What is missing, or can't be.
    public enum Lack {
        /// What it weighs.
        MASS,
        /// It weighs no more than its contents.
        TOO_LIGHT,
        /// How much air stays in an open one.
        AIR,
        /// Wall, contents and air have no room in it.
        TOO_FULL,
        /// Its profile has a hole or no volume.
        PROFILE
    }

    /// The vessel.
    public sealed interface Body {
        /// It is known.
        ///
        /// @param vessel the vessel
        /// @param assumed what was taken for what isn't written of how its weight lies, each in a few words
        record Of(Vessel vessel, List<String> assumed) implements Body {
            /// Copies the list.
            public Of {
                assumed = List.copyOf(assumed);
            }
        }

        /// It isn't.
        ///
        /// @param lack what is missing
        record Untold(Lack lack) implements Body {}
    }

    /// What was read.
    public sealed interface Reading {
        /// Enough is written.
        ///
        /// @param immersed the thing
        record Known(Immersed immersed) implements Reading {}

        /// Something is missing without which nothing is known.
        ///
        /// @param lack what
        record Missing(Lack lack) implements Reading {}
    }

    /// Copies the list.
    public Immersed {
        assumed = List.copyOf(assumed);
    }

    /// Reads a thing.
    ///
    /// @param thing the thing, its variant merged in
    /// @param waterKilogramsPerMetre3 density of what it is in, kilograms a cubic metre, > 0
    /// @return the thing in that, or what is missing
    public static Reading of(Thing thing, double waterKilogramsPerMetre3) {
        return new Reader(thing, waterKilogramsPerMetre3).read();
    }

    private static final class Reader {
        private final Thing thing;
        private final double water;
        private final Amount volume;
        private final Amount liquid;
        private final Amount liquidDensity;
        private final Amount wallDensity;
        private final boolean isOpen;
        private final List<String> assumed = new ArrayList<>();

        Reader(Thing thing, double water) {
            this.thing = thing;
            this.water = water;
            isOpen = thing.written().findWord("closed").filter("no"::equals).isPresent();
            liquid = find("contents.volume").orElse(new Amount(0, 0));
            liquidDensity = findWeighed()
                    .or(() -> find("contents.density"))
                    .orElse(new Amount(CONTENTS_KILOGRAMS_PER_METRE3, 0));
            wallDensity = find("wall.density").or(this::findMaterial).orElse(material(Material.ALUMINIUM));
            double form = Forms.solid(thing.form()).volumeMetres3();
            volume = find("displaces").orElse(new Amount(form, FORM_SHARE * form));
        }

        private Optional<Amount> find(String path) {
            return thing.written().findQuantity(path).map(Reader::amount);
        }

        private static Amount amount(Quantity quantity) {
            return new Amount(quantity.si(), quantity.halfWidthSi());
        }

        /// The contents' density where the thing was weighed full and empty.
        private Optional<Amount> findWeighed() {
            double filled = find("mass").map(Amount::value).orElse(0.0)
                    - find("empty_mass").map(Amount::value).orElse(Double.MAX_VALUE);
            return filled > 0 && liquid.value() > 0
                    ? Optional.of(new Amount(filled / liquid.value(), 0))
                    : Optional.empty();
        }

        private Optional<Amount> findMaterial() {
            return thing.written().findWord("material").flatMap(Material::find).map(Reader::material);
        }

        private static Amount material(Material material) {
            return new Amount(material.densityKilogramsPerMetre3(), 0);
        }

        Reading read() {
            if (!thing.written().has("displaces")) {
                assumed.add("its volume by its form, ± 5 %");
            }
            if (liquid.value() > 0
                    && findWeighed().isEmpty()
                    && find("contents.density").isEmpty()) {
                assumed.add("contents as heavy as water");
            }
            Optional<Amount> mass = find("mass");
            Optional<Amount> empty = find("empty_mass");
            double contents = liquid.value() * liquidDensity.value();
            if (mass.isEmpty() && empty.isEmpty()) {
                return new Reading.Missing(Lack.MASS);
            }
            double emptyKilograms =
                    empty.map(Amount::value).orElseGet(() -> mass.orElseThrow().value() - contents);
            if (!(emptyKilograms > 0)) {
                return new Reading.Missing(Lack.TOO_LIGHT);
            }
            double contentsHalf =
                    Math.hypot(liquid.half() * liquidDensity.value(), liquidDensity.half() * liquid.value());
            if (isOpen) {
                double half = empty.or(() -> mass).orElseThrow().half();
                return open(emptyKilograms, contents, Math.hypot(half, contentsHalf));
            }
            Amount whole = mass.orElseGet(() -> new Amount(
                    emptyKilograms + contents, Math.hypot(empty.orElseThrow().half(), contentsHalf)));
            double half = Math.hypot(whole.half(), water * volume.half());
            return known(whole, new Amount(whole.value() - water * volume.value(), half), emptyKilograms, 0);
        }

        /// In the net weight of an open one the outer volume cancels out: only wall, contents and air lift.
        private Reading open(double empty, double contents, double half) {
            Optional<Amount> air = find("air");
            if (air.isEmpty()) {
                return new Reading.Missing(Lack.AIR);
            }
            double wall = wall(empty);
            double flooded = volume.value() - wall - liquid.value() - air.get().value();
            if (flooded < 0) {
                return new Reading.Missing(Lack.TOO_FULL);
            }
            double net = empty
                    + contents
                    - water * (wall + liquid.value() + air.get().value());
            double off = Math.hypot(half, water * air.get().half());
            double whole = empty + contents + water * flooded;
            return known(
                    new Amount(whole, Math.hypot(half, water * volume.half())), new Amount(net, off), empty, flooded);
        }

        private double wall(double empty) {
            if (find("wall.density").or(this::findMaterial).isEmpty()) {
                assumed.add("a wall of aluminium, 2.7 g/ml");
            }
            return empty / wallDensity.value();
        }

        private Reading known(Amount whole, Amount net, double empty, double flooded) {
            Basis basis = thing.written().has("displaces") ? Basis.DISPLACES : Basis.FORM;
            Body body = body(whole.value(), empty, flooded);
            return new Reading.Known(new Immersed(whole, volume, net, basis, body, assumed));
        }

        private Body body(double whole, double empty, double flooded) {
            Optional<Turned> found = findHull();
            if (found.isEmpty()) {
                return new Body.Untold(Lack.PROFILE);
            }
            Turned hull = found.get();
            Optional<Amount> centre = find("centre_of_mass");
            if (centre.isPresent()) {
                Vessel.Shell shell = new Vessel.Shell(whole, centre.get().value());
                return new Body.Of(new Vessel(hull, shell, new Vessel.Inside.Solid()), List.of());
            }
            boolean isTold = thing.written().has("contents.volume")
                    || thing.written().has("empty_mass") && !thing.written().has("mass");
            if (!isTold) {
                Vessel.Shell even =
                        new Vessel.Shell(whole, hull.whole().centroid().z());
                return new Body.Of(
                        new Vessel(hull, even, new Vessel.Inside.Solid()),
                        List.of("its weight spread evenly through its form: balance it on a ruler"));
            }
            double glassMetres3 = isOpen ? empty / wallDensity.value() : wall(empty);
            double cavity = volume.value() - glassMetres3;
            double inside = liquid.value() + flooded;
            if (cavity < inside * (1 - 1e-9) || cavity < 0) {
                return new Body.Untold(Lack.TOO_FULL);
            }
            double density = inside > 0
                    ? (liquid.value() * liquidDensity.value() + flooded * water) / inside
                    : CONTENTS_KILOGRAMS_PER_METRE3;
            Wall wall = new Wall(hull, new Vessel.Hollow.Flat());
            return new Body.Of(
                    wall.around(new Wall.Empty(empty, OptionalDouble.empty()), cavity, inside, density), List.of());
        }

        /// Its form round the axis, as wide as its volume asks for and shifted to its centre of volume.
        private Optional<Turned> findHull() {
            List<Turned.Ring> rings = rings();
            for (int i = 1; i < rings.size() - 1; i++) {
                if (rings.get(i).radiusMetres() == 0) {
                    return Optional.empty();
                }
            }
            Turned form = new Turned(rings);
            double wider = Math.sqrt(volume.value() / form.whole().volumeMetres3());
            double shift = find("centre_of_volume")
                    .map(centre -> centre.value() - form.whole().centroid().z())
                    .orElse(0.0);
            return Optional.of(new Turned(rings.stream()
                    .map(ring -> new Turned.Ring(ring.heightMetres() + shift, ring.radiusMetres() * wider))
                    .toList()));
        }

        private List<Turned.Ring> rings() {
            return switch (Forms.solid(thing.form())) {
                case plumeline.geom.Solid.Revolved round ->
                    round.stations().stream()
                            .map(station -> new Turned.Ring(station.heightMetres(), station.radiusMetres()))
                            .toList();
                case plumeline.geom.Solid.Box box -> {
                    double radius = Math.sqrt(box.widthMetres() * box.depthMetres() / Math.PI);
                    yield Turned.cylinder(radius, box.heightMetres()).rings();
                }
            };
        }
    }
}
