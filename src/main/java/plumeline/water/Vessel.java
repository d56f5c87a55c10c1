package plumeline.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Vec;
import plumeline.ranges.Ranges;

/// A product as water knows it: an outer form, a shell that weighs, what is inside, a hollow under it, ballast. All its
/// parts lie round one axis.
///
/// @param outer what displaces water, a hollow base included as if it were filled
/// @param shell the empty product's mass and where its centre is
/// @param inside what can move in it
/// @param hollow the hollow under its base
/// @param ballasts what was added to make it sink
public record Vessel(Form outer, Shell shell, Inside inside, Hollow hollow, List<Ballast> ballasts) {
    private static final double ROUNDING = 1e-9;
    private static final int MOST_ROUNDS = 60;

    /// The empty product's mass.
    ///
    /// @param massKilograms mass, kilograms, > 0
    /// @param centreMetres height of its centre on the axis, metres
    public record Shell(double massKilograms, double centreMetres) {
        /// Checks the mass.
        public Shell {
            Ranges.checkPositive(massKilograms, "massKilograms");
        }
    }

    /// What is inside.
    public sealed interface Inside {
        /// Nothing that moves: the shell's mass is all.
        record Solid() implements Inside {}

        /// A liquid and, in what is left of the cavity, air, which lies at the highest place.
        ///
        /// @param cavity the room inside
        /// @param liquidMetres3 the liquid's volume, cubic metres, from 0 to the cavity's
        /// @param densityKilogramsPerMetre3 the liquid's density, kilograms a cubic metre, > 0
        record Filled(Form cavity, double liquidMetres3, double densityKilogramsPerMetre3) implements Inside {
            /// Checks that it goes in.
            public Filled {
                Ranges.checkNotNegative(liquidMetres3, "liquidMetres3");
                Ranges.checkPositive(densityKilogramsPerMetre3, "densityKilogramsPerMetre3");
                double room = cavity.whole().volumeMetres3();
                Ranges.check(
                        liquidMetres3 <= room * (1 + ROUNDING),
                        "liquidMetres3",
                        liquidMetres3,
                        "no more than the cavity's " + room);
            }

            /// Gives the air that is left.
            ///
            /// @return volume, cubic metres, ≥ 0
            public double airMetres3() {
                return Math.max(0, cavity.whole().volumeMetres3() - liquidMetres3);
            }
        }
    }

    /// The hollow under the base.
    public sealed interface Hollow {
        /// None.
        record Flat() implements Hollow {}

        /// A hollow that opens downward at its lowest ring and may hold air. Air that no longer has room above the
        /// rim's highest point at a tilt has left.
        ///
        /// @param recess its form
        /// @param airMetres3 the air in it when upright, cubic metres, from 0 to the recess's volume
        record Under(Turned recess, double airMetres3) implements Hollow {
            /// Checks that the air has room.
            public Under {
                Ranges.checkNotNegative(airMetres3, "airMetres3");
                double room = recess.whole().volumeMetres3();
                Ranges.check(
                        airMetres3 <= room * (1 + ROUNDING),
                        "airMetres3",
                        airMetres3,
                        "no more than the hollow's " + room);
            }

            /// The air that is still there, and its centroid.
            Portion heldAir(Vec up) {
                if (airMetres3 == 0) {
                    return Portion.NOTHING;
                }
                Turned.Ring rim = recess.rings().getFirst();
                double spill = rim.heightMetres() * up.z() + rim.radiusMetres() * Math.hypot(up.x(), up.y());
                Portion whole = recess.whole();
                double room = whole.volumeMetres3() - recess.below(up, spill).volumeMetres3();
                double air = Math.clamp(airMetres3, 0, Math.max(0, room));
                if (!(air > 0)) {
                    return Portion.NOTHING;
                }
                Portion wet =
                        Level.find(recess, up, whole.volumeMetres3() - air).under();
                Vec moment = whole.centroid()
                        .times(whole.volumeMetres3())
                        .minus(wet.centroid().times(wet.volumeMetres3()));
                return new Portion(air, moment.times(1 / air), 0);
            }
        }
    }

    /// A weight on the axis, taken as a ball.
    ///
    /// @param massKilograms mass, kilograms, > 0
    /// @param densityKilogramsPerMetre3 its density, kilograms a cubic metre, > 0
    /// @param heightMetres height of its centre, metres
    /// @param where inside or outside
    public record Ballast(double massKilograms, double densityKilogramsPerMetre3, double heightMetres, Where where) {
        /// Where it is.
        public enum Where {
            /// In the liquid inside; it displaces no water outside.
            INSIDE,
            /// Outside; the water bears a part of it.
            OUTSIDE
        }

        /// Checks the ranges.
        public Ballast {
            Ranges.checkPositive(massKilograms, "massKilograms");
            Ranges.checkPositive(densityKilogramsPerMetre3, "densityKilogramsPerMetre3");
        }

        /// Gives its volume.
        ///
        /// @return volume, cubic metres
        public double volumeMetres3() {
            return massKilograms / densityKilogramsPerMetre3;
        }

        /// The part of the ball under a level, in closed form.
        private double underMetres3(Vec up, double levelMetres) {
            double depth = depthMetres(up, levelMetres);
            return Math.PI * depth * depth * (radiusMetres() - depth / 3);
        }

        private double sectionMetres2(Vec up, double levelMetres) {
            double depth = depthMetres(up, levelMetres);
            return Math.PI * depth * (2 * radiusMetres() - depth);
        }

        private double depthMetres(Vec up, double levelMetres) {
            double r = radiusMetres();
            return Math.clamp(levelMetres - heightMetres * up.z() + r, 0, 2 * r);
        }

        private double radiusMetres() {
            return Math.cbrt(volumeMetres3() * 3 / (4 * Math.PI));
        }
    }

    /// Copies the list; what is inside must have room.
    public Vessel {
        ballasts = List.copyOf(ballasts);
        if (inside instanceof Inside.Filled filled) {
            double added = 0;
            for (Ballast each : ballasts) {
                added += each.where() == Ballast.Where.INSIDE ? each.volumeMetres3() : 0;
            }
            Ranges.check(
                    added
                            <= filled.airMetres3()
                                    + ROUNDING * filled.cavity().whole().volumeMetres3(),
                    "ballast inside",
                    added,
                    "no more than the air's " + filled.airMetres3());
        }
    }

    /// Makes a vessel with a flat base and no ballast.
    ///
    /// @param outer what displaces water
    /// @param shell the empty product's mass
    /// @param inside what can move in it
    public Vessel(Form outer, Shell shell, Inside inside) {
        this(outer, shell, inside, new Hollow.Flat(), List.of());
    }

    /// Gives it with a weight that touches its base from below.
    ///
    /// @param kilograms the weight's mass, kilograms, > 0
    /// @param kilogramsPerMetre3 its density, kilograms a cubic metre, > 0
    /// @return the vessel
    public Vessel withUnder(double kilograms, double kilogramsPerMetre3) {
        double radius = Math.cbrt(kilograms / kilogramsPerMetre3 * 3 / (4 * Math.PI));
        double height = outer().lowestMetres(Stance.up(0)) - radius;
        return with(new Ballast(kilograms, kilogramsPerMetre3, height, Ballast.Where.OUTSIDE));
    }

    /// Adds ballast.
    ///
    /// @param ballast the weight
    /// @return the vessel with it
    public Vessel with(Ballast ballast) {
        List<Ballast> all = new ArrayList<>(ballasts);
        all.add(ballast);
        return new Vessel(outer, shell, inside, hollow, all);
    }

    /// Gives it with a weight on the floor of its cavity, or of its form where it is solid.
    ///
    /// @param kilograms the weight's mass, kilograms, > 0
    /// @param kilogramsPerMetre3 its density, kilograms a cubic metre, > 0
    /// @return the vessel
    public Vessel withInside(double kilograms, double kilogramsPerMetre3) {
        double radius = Math.cbrt(kilograms / kilogramsPerMetre3 * 3 / (4 * Math.PI));
        double floor = switch (inside) {
            case Inside.Filled filled -> filled.cavity().lowestMetres(Stance.up(0));
            case Inside.Solid() -> outer.lowestMetres(Stance.up(0));
        };
        return with(new Ballast(kilograms, kilogramsPerMetre3, floor + radius, Ballast.Where.INSIDE));
    }

    /// Puts something else inside.
    ///
    /// @param other what is inside then
    /// @return the vessel with it
    public Vessel holding(Inside other) {
        return new Vessel(outer, shell, other, hollow, ballasts);
    }

    /// Puts other air under its base; there is none under a flat one.
    ///
    /// @param airMetres3 the air, cubic metres, from 0 to the hollow's volume
    /// @return the vessel with it
    public Vessel withAirUnder(double airMetres3) {
        return switch (hollow) {
            case Hollow.Flat() -> this;
            case Hollow.Under(Turned recess, double _) ->
                new Vessel(outer, shell, inside, new Hollow.Under(recess, airMetres3), ballasts);
        };
    }

    /// Tells whether it is alike all round its axis.
    ///
    /// @return false where its outside or its cavity is a box
    public boolean isRound() {
        return isRound(outer) && (!(inside instanceof Inside.Filled filled) || isRound(filled.cavity()));
    }

    private static boolean isRound(Form form) {
        return switch (form) {
            case Turned _ -> true;
            case Block _ -> false;
            case Dished(Form full, Turned _) -> isRound(full);
        };
    }

    /// Gives the air under its base that is still there once its axis is tilted; what has no room left has gone.
    ///
    /// @param tiltRadians tilt of the axis from upright, radians, 0 to π
    /// @return volume, cubic metres, ≥ 0
    public double airUnderMetres3(double tiltRadians) {
        return hollow instanceof Hollow.Under under
                ? under.heldAir(Stance.up(tiltRadians)).volumeMetres3()
                : 0;
    }

    /// Lets the air under its base go that has no room there when it is turned so; it doesn't come back.
    Vessel spilled(Vec up) {
        return findSpilled(up).orElse(this);
    }

    /// The vessel with less air under its base; empty where none has left.
    Optional<Vessel> findSpilled(Vec up) {
        if (!(hollow instanceof Hollow.Under under) || under.airMetres3() == 0) {
            return Optional.empty();
        }
        double held = under.heldAir(up).volumeMetres3();
        return held < under.airMetres3() * (1 - ROUNDING) ? Optional.of(withAirUnder(held)) : Optional.empty();
    }

    /// Gives all that weighs.
    ///
    /// @return mass, kilograms
    public double massKilograms() {
        double mass = shell.massKilograms();
        if (inside instanceof Inside.Filled filled) {
            mass += filled.liquidMetres3() * filled.densityKilogramsPerMetre3();
        }
        for (Ballast each : ballasts) {
            mass += each.massKilograms();
        }
        return mass;
    }

    /// Gives the water it displaces when all of it is under and upright.
    ///
    /// @return volume, cubic metres
    public double displacedMetres3() {
        double volume = outer.whole().volumeMetres3();
        if (hollow instanceof Hollow.Under under) {
            volume += under.airMetres3() - under.recess().whole().volumeMetres3();
        }
        for (Ballast each : ballasts) {
            volume += each.where() == Ballast.Where.OUTSIDE ? each.volumeMetres3() : 0;
        }
        return volume;
    }

    /// Where all that weighs has its centre at a tilt.
    Vec massCentre(Vec up) {
        Vec moment = new Vec(0, 0, shell.massKilograms() * shell.centreMetres());
        double liquidDensity = 0;
        if (inside instanceof Inside.Filled filled && filled.liquidMetres3() > 0) {
            liquidDensity = filled.densityKilogramsPerMetre3();
            double taken = filled.liquidMetres3();
            for (Ballast each : ballasts) {
                taken += each.where() == Ballast.Where.INSIDE ? each.volumeMetres3() : 0;
            }
            Portion liquid = Level.find(filled.cavity(), up, taken).under();
            moment = moment.plus(liquid.centroid().times(liquidDensity * taken));
        }
        for (Ballast each : ballasts) {
            double borne = each.where() == Ballast.Where.INSIDE ? liquidDensity * each.volumeMetres3() : 0;
            moment = moment.plus(new Vec(0, 0, (each.massKilograms() - borne) * each.heightMetres()));
        }
        return moment.times(1 / massKilograms());
    }

    /// What it displaces with all of it under, at a tilt.
    Portion displacedUnder(Vec up) {
        return displaced(up, Double.POSITIVE_INFINITY, airUnder(up));
    }

    private Portion airUnder(Vec up) {
        return hollow instanceof Hollow.Under under ? under.heldAir(up) : Portion.NOTHING;
    }

    /// What it displaces where it floats at a tilt, and the level of the water: Newton's steps on the level, kept
    /// between bounds. A hollow that stands out of the water is taken as wet up to the level.
    Level.At displacedAfloat(Vec up, double waterKilogramsPerMetre3) {
        double volume = massKilograms() / waterKilogramsPerMetre3;
        if (ballasts.isEmpty() && hollow instanceof Hollow.Flat) {
            return Level.find(outer, up, volume);
        }
        Portion air = airUnder(up);
        double low = lowestMetres(up);
        double high = outer.highestMetres(up);
        double level = (low + high) / 2;
        Portion displaced = displaced(up, level, air);
        for (int i = 0; i < MOST_ROUNDS && high - low > 1e-15; i++) {
            double over = displaced.volumeMetres3() - volume;
            if (Math.abs(over) <= 1e-12 * volume) {
                break;
            }
            low = over < 0 ? level : low;
            high = over < 0 ? high : level;
            double next = level - over / displaced.sectionMetres2();
            level = next > low && next < high ? next : (low + high) / 2;
            displaced = displaced(up, level, air);
        }
        return new Level.At(level, displaced);
    }

    private double lowestMetres(Vec up) {
        double lowest = outer.lowestMetres(up);
        for (Ballast each : ballasts) {
            lowest = Math.min(lowest, each.heightMetres() * up.z() - each.radiusMetres());
        }
        return lowest;
    }

    private Portion displaced(Vec up, double levelMetres, Portion air) {
        boolean all = Double.isInfinite(levelMetres);
        Portion hull = all ? outer.whole() : outer.below(up, levelMetres);
        double volume = hull.volumeMetres3() + air.volumeMetres3();
        double section = hull.sectionMetres2();
        Vec moment =
                hull.centroid().times(hull.volumeMetres3()).plus(air.centroid().times(air.volumeMetres3()));
        if (hollow instanceof Hollow.Under under) {
            Portion wet = all ? under.recess().whole() : under.recess().below(up, levelMetres);
            volume -= wet.volumeMetres3();
            section -= wet.sectionMetres2();
            moment = moment.minus(wet.centroid().times(wet.volumeMetres3()));
        }
        for (Ballast each : ballasts) {
            if (each.where() == Ballast.Where.OUTSIDE) {
                double under = all ? each.volumeMetres3() : each.underMetres3(up, levelMetres);
                volume += under;
                section += all ? 0 : each.sectionMetres2(up, levelMetres);
                moment = moment.plus(new Vec(0, 0, under * each.heightMetres()));
            }
        }
        return new Portion(volume, volume > 0 ? moment.times(1 / volume) : Vec.ZERO, section);
    }
}
