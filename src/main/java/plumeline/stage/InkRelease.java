package plumeline.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.geom.Vec;
import plumeline.ink.Descent;
import plumeline.ink.FrontFit;
import plumeline.ink.Learnt;
import plumeline.ink.Plume;
import plumeline.ink.ReadTake;
import plumeline.lesson.InkLesson;
import plumeline.plan.Release;
import plumeline.plan.Shot;
import plumeline.plan.TankPlace;
import plumeline.plan.Written;
import plumeline.quantity.Origin;
import plumeline.quantity.Quantity;
import plumeline.water.Water;

/// The ink that a shot lets go in its tank, as numbers: by what takes of the ink have taught where they are told whole;
/// read from takes where the ink has two readings of its front or more; else by the laws of what the release says.
public sealed interface InkRelease {
    /// A squeeze of a hand, where neither `squeeze_time` nor `speed` is written (common practice).
    double USUAL_SQUEEZE_SECONDS = 1;

    /// What is missing.
    enum Lack {
        /// No ink is let go.
        INK,
        /// The shot has no tank.
        TANK,
        /// The water's depth.
        DEPTH,
        /// The water is past 0 to 40 degC, with table salt past 5 to 40 degC, or saltier than its laws go.
        TEMPERATURE,
        /// Readings of the front that don't go down with time, or begin above the mouth.
        READINGS,
        /// How much ink.
        VOLUME,
        /// The ink's density.
        DENSITY,
        /// The nozzle's bore.
        BORE
    }

    /// Something is missing.
    ///
    /// @param lack what
    record Missing(Lack lack) implements InkRelease {}

    /// Enough is written.
    ///
    /// @param ink the ink's name
    /// @param walls the tank
    /// @param basis what its front follows
    /// @param width its half-width
    /// @param assumed what was taken for what isn't written, each in a few words
    record Known(String ink, TankWalls walls, Basis basis, Plume.Width width, List<String> assumed)
            implements InkRelease {
        /// Copies the list.
        public Known {
            assumed = List.copyOf(assumed);
        }

        /// Tells whether it is lighter than the water, as far as that is known.
        ///
        /// @return true for ink that rises
        public boolean isLight() {
            return switch (basis) {
                case Basis.Law law -> law.release().reducedGravityMetresPerSecond2() < 0;
                case Basis.Taught taught -> taught.release().reducedGravityMetresPerSecond2() < 0;
                case Basis.Read _ -> false;
            };
        }

        /// Gives the plume of a nozzle.
        ///
        /// @param mouth the nozzle's mouth, table frame, m
        /// @return the plume where it stands
        public PlumePlace at(Vec mouth) {
            double over = mouth.z() - walls.waterLineMetres();
            return new PlumePlace(plume(over), walls, mouth);
        }

        private Plume plume(double overMetres) {
            return switch (basis) {
                case Basis.Read(FrontFit fit, Tip _) ->
                    new Plume.Read(fit, Math.max(0, -overMetres), (Plume.Width.Share) width);
                case Basis.Taught(var release, var learnt) ->
                    new Plume.Taught(new Descent(release, overMetres), learnt);
                case Basis.Law law ->
                    new Plume.ByLaw(
                            new Descent(law.release(), overMetres),
                            law.off().stream()
                                    .map(other -> new Descent(other, overMetres))
                                    .toList(),
                            law.readings().stream()
                                    .map(reading -> new FrontFit.Reading(
                                            reading.seconds(), reading.metres() + Math.max(0, -overMetres)))
                                    .toList(),
                            width);
            };
        }
    }

    /// From where a front was read.
    enum Tip {
        /// The ink's `tip` says how high the nozzle's mouth was.
        WRITTEN,
        /// It isn't written: taken to have been at the surface.
        AT_THE_SURFACE
    }

    /// What a front follows.
    sealed interface Basis {
        /// Its own readings.
        ///
        /// @param fit the line through them, by ways from the initial front
        /// @param tip from where they were read
        record Read(FrontFit fit, Tip tip) implements Basis {}

        /// The laws as takes of the ink have taught them.
        ///
        /// @param release what is let go
        /// @param learnt what its takes have taught
        record Taught(plumeline.ink.Release release, Learnt learnt) implements Basis {}

        /// The laws.
        ///
        /// @param release what is let go
        /// @param off the same with one input moved by what it may be off, either way, four times in five
        /// @param readings one reading, or none
        record Law(plumeline.ink.Release release, List<plumeline.ink.Release> off, List<FrontFit.Reading> readings)
                implements Basis {
            /// Copies the lists.
            public Law {
                off = List.copyOf(off);
                readings = List.copyOf(readings);
            }
        }
    }

    /// Reads a shot's release.
    ///
    /// @param shot the shot, or the pass
    /// @return what is known of its ink, or what is missing
    static InkRelease of(Shot shot) {
        if (!(shot.findRelease().orElse(null) instanceof Release.OfInk release)) {
            return new Missing(Lack.INK);
        }
        if (shot.findTank().isEmpty()) {
            return new Missing(Lack.TANK);
        }
        return shot.findTank().get().water().isEmpty()
                ? new Missing(Lack.DEPTH)
                : new Reader(release, shot.findTank().get()).read();
    }

    /// From what is written to numbers.
    final class Reader {
        /// However far off an input may be, this of it is left.
        private static final double LEAST_SHARE = 1e-3;

        private final Release.OfInk release;
        private final TankPlace tank;
        private final Written ink;
        private final List<String> assumed = new ArrayList<>();

        private Reader(Release.OfInk release, TankPlace tank) {
            this.release = release;
            this.tank = tank;
            ink = release.ink().written();
        }

        private InkRelease read() {
            if (InkLesson.of(release.ink()) instanceof InkLesson.ByLaws lesson
                    && !lesson.takes().isEmpty()
                    && byLaw(List.of(), new Plume.Width.ByLaw()) instanceof Known told
                    && told.basis() instanceof Basis.Law law) {
                return known(new Basis.Taught(law.release(), lesson.learnt()), told.width());
            }
            assumed.clear();
            double under =
                    Math.max(0, -ink.findQuantity("tip").map(Quantity::si).orElse(0.0));
            boolean isAbove = ink.listPairs("front").stream()
                    .anyMatch(pair -> pair.getLast().si() > 0 && pair.getLast().si() <= under);
            if (isAbove) {
                return new Missing(Lack.READINGS);
            }
            List<ReadTake.FrontReading> readings = readings(under);
            Optional<FrontFit> fit = FrontFit.find(readings);
            if (readings.size() > 1 && fit.isEmpty()) {
                return new Missing(Lack.READINGS);
            }
            Plume.Width width = width(fit.isPresent());
            return fit.isPresent()
                    ? known(new Basis.Read(fit.get(), ink.has("tip") ? Tip.WRITTEN : Tip.AT_THE_SURFACE), width)
                    : byLaw(
                            readings.stream()
                                    .map(read -> new FrontFit.Reading(read.seconds(), read.depthMetres()))
                                    .toList(),
                            width);
        }

        private Known known(Basis basis, Plume.Width width) {
            return new Known(release.ink().name(), TankWalls.of(tank), basis, width, assumed);
        }

        /// Readings with their ways.
        private List<ReadTake.FrontReading> readings(double underMetres) {
            return InkLesson.readings(release.ink()).stream()
                    .map(read -> new ReadTake.FrontReading(
                            read.seconds(),
                            read.deviationSeconds(),
                            read.depthMetres() - underMetres,
                            read.deviationMetres()))
                    .toList();
        }

        private Plume.Width width(boolean isRead) {
            Optional<Quantity> spread = ink.findQuantity("spread").filter(share -> share.si() > 0);
            if (spread.isPresent()) {
                double off = spread.get().eightyHalfWidthSi() / spread.get().si();
                // One take's width is off by as much as its time.
                double ratio = spread.get().origin() == Origin.TYPICAL ? Plume.USUAL_WIDTH.ratio() : Learnt.TAKE_RATIO;
                return new Plume.Width.Share(spread.get().si(), ratio * (1 + off));
            }
            if (isRead) {
                assumed.add("the plume's half-width a fifth of its way");
                return Plume.USUAL_WIDTH;
            }
            return new Plume.Width.ByLaw();
        }

        private InkRelease byLaw(List<FrontFit.Reading> readings, Plume.Width width) {
            OptionalDouble water = TankFill.findDensity(tank);
            OptionalDouble viscosity = TankFill.viscosity(tank).find();
            if (water.isEmpty() || viscosity.isEmpty()) {
                return new Missing(Lack.TEMPERATURE);
            }
            for (var lack : List.of(Lack.VOLUME, Lack.DENSITY, Lack.BORE)) {
                if (findInput(lack).isEmpty()) {
                    return new Missing(lack);
                }
            }
            Recipe recipe = new Recipe(water.getAsDouble(), viscosity.getAsDouble() / water.getAsDouble());
            return known(new Basis.Law(recipe.release(new Moved("", 0)), recipe.off(), readings), width);
        }

        private Optional<Quantity> findInput(Lack lack) {
            return switch (lack) {
                case VOLUME -> release.written().findQuantity("volume");
                case DENSITY -> ink.findQuantity("density");
                default -> release.written().findQuantity("bore");
            };
        }

        /// One input moved, in 80 % half-widths.
        private record Moved(String key, double by) {}

        private final class Recipe {
            private final double water;
            private final double viscosity;

            Recipe(double water, double viscosity) {
                this.water = water;
                this.viscosity = viscosity;
                if (!release.written().has("squeeze_time") && !release.written().has("speed")) {
                    assumed.add("squeezed out in 1 s");
                }
            }

            private Optional<Quantity> find(String key) {
                return key.equals("density")
                        ? ink.findQuantity(key)
                        : release.written().findQuantity(key);
            }

            private double si(String key, double otherwise, Moved moved) {
                return find(key)
                        .map(quantity -> moved.key().equals(key)
                                ? Math.max(
                                        LEAST_SHARE * quantity.si(),
                                        quantity.si() + moved.by() * quantity.eightyHalfWidthSi())
                                : quantity.si())
                        .orElse(otherwise);
            }

            plumeline.ink.Release release(Moved moved) {
                double reduced = Water.GRAVITY_METRES_PER_SECOND2 * (si("density", water, moved) - water) / water;
                double volume = si("volume", 0, moved);
                double bore = si("bore", 0, moved);
                return release.written().has("speed")
                        ? new plumeline.ink.Release(volume, reduced, bore, si("speed", 0, moved), viscosity)
                        : plumeline.ink.Release.ofSqueeze(
                                volume, reduced, bore, si("squeeze_time", USUAL_SQUEEZE_SECONDS, moved), viscosity);
            }

            List<plumeline.ink.Release> off() {
                List<plumeline.ink.Release> off = new ArrayList<>();
                for (String key : List.of("density", "volume", "bore", "speed", "squeeze_time")) {
                    if (find(key).filter(Quantity::hasSpread).isPresent()) {
                        off.add(release(new Moved(key, -1)));
                        off.add(release(new Moved(key, 1)));
                    }
                }
                return off;
            }
        }
    }
}
