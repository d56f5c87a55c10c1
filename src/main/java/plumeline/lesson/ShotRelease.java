package plumeline.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumeline.ink.Descent;
import plumeline.plan.Mark;
import plumeline.plan.Release;
import plumeline.plan.Shot;
import plumeline.plan.TankPlace;
import plumeline.plan.Written;
import plumeline.quantity.Quantity;
import plumeline.quantity.Unit;
import plumeline.take.Conditions;

/// What a shot lets go of ink, as far as its plan tells.
public sealed interface ShotRelease {
    /// Enough is told for a law.
    ///
    /// @param told what is let go
    /// @param assumed what was taken for what isn't told, each in a few words
    record Told(Conditions.Told told, List<String> assumed) implements ShotRelease {
        /// Copies the list.
        public Told {
            assumed = List.copyOf(assumed);
        }

        /// Gives it as numbers.
        ///
        /// @return the descent
        public Descent descent() {
            return TakeNumbers.descent(told);
        }
    }

    /// Something is missing.
    ///
    /// @param what what isn't told, each in a few words
    record Missing(List<String> what) implements ShotRelease {
        /// Copies the list.
        public Missing {
            what = List.copyOf(what);
        }
    }

    /// Reads a shot's release.
    ///
    /// @param shot the shot
    /// @param release its ink
    /// @param instead what was otherwise in a take, by the keys of a take: `volume`, `density`, `bore`,
    /// `squeeze_time`, `speed`, `height`, `water`
    /// @return what is let go, or what is missing
    static ShotRelease of(Shot shot, Release.OfInk release, Map<String, Quantity> instead) {
        List<String> missing = new ArrayList<>();
        List<String> assumed = new ArrayList<>();
        Written written = release.written();
        Optional<Quantity> volume = first(instead, "volume", written.findQuantity("volume"));
        Optional<Quantity> density =
                first(instead, "density", release.ink().written().findQuantity("density"));
        Optional<Quantity> height = first(instead, "height", findHeight(shot, release));
        if (volume.isEmpty()) {
            missing.add("the ink's volume (release.volume)");
        }
        if (density.isEmpty()) {
            missing.add("the ink's density (kit.inks." + release.ink().name() + ".density)");
        }
        if (height.isEmpty()) {
            missing.add("the nozzle's height over the surface (release.at with a z that is not free, tank.water)");
        }
        if (shot.findTank().filter(ShotRelease::isHeavier).isPresent()) {
            missing.add("fresh water (a law isn't corrected in salted water yet: the front alone is)");
        }
        if (!missing.isEmpty()) {
            return new Missing(missing);
        }
        Optional<Quantity> water = first(
                instead,
                "water",
                shot.findTank().flatMap(tank -> tank.tank().written().findQuantity("temperature")));
        if (water.isEmpty()) {
            assumed.add("water of 20 degC");
        }
        Conditions.Outlet outlet = outlet(written, instead, assumed);
        return new Told(
                new Conditions.Told(
                        volume.get(), density.get(), outlet, height.get(), water.orElse(TakeReader.ROOM_WATER)),
                assumed);
    }

    /// Whether a tank's water is other than fresh, as far as anyone says.
    private static boolean isHeavier(TankPlace tank) {
        Written written = tank.tank().written();
        return written.has("salt") || written.has("sea_salt") || written.has("density");
    }

    /// Finds how high the water stands in a shot's tank, over the table.
    ///
    /// @param shot the shot
    /// @return m; empty without a tank or its water's depth
    static Optional<Double> findSurfaceMetres(Shot shot) {
        return shot.findTank().filter(tank -> tank.water().isPresent()).map(ShotRelease::surface);
    }

    private static double surface(TankPlace tank) {
        double base = tank.at().size() > 2 ? tank.at().get(2).si() : 0;
        return base + tank.tank().pane().si() + tank.water().orElseThrow().si();
    }

    private static Optional<Quantity> findHeight(Shot shot, Release.OfInk release) {
        return release.at()
                .z()
                .filter(Mark.Fixed.class::isInstance)
                .flatMap(mark -> findSurfaceMetres(shot)
                        .map(surface -> Quantity.of(
                                Math.rint((((Mark.Fixed) mark).quantity().si() - surface) * 1e4) / 1e4,
                                Unit.MILLIMETRE)));
    }

    private static Optional<Quantity> first(Map<String, Quantity> instead, String key, Optional<Quantity> planned) {
        return Optional.ofNullable(instead.get(key)).or(() -> planned);
    }

    private static Conditions.Outlet outlet(Written written, Map<String, Quantity> instead, List<String> assumed) {
        Optional<Quantity> bore = first(instead, "bore", written.findQuantity("bore"));
        boolean isSpeedInstead = instead.containsKey("speed");
        Optional<Quantity> time = isSpeedInstead
                ? Optional.empty()
                : first(instead, "squeeze_time", written.findQuantity("squeeze_time"));
        Optional<Quantity> speed = first(instead, "speed", written.findQuantity("speed"));
        Conditions.Outlet outlet = TakeReader.outlet(bore, time, speed);
        switch (outlet) {
            case Conditions.Outlet.AtOnce() -> assumed.add("ink let go at once, as neither bore nor squeeze is told");
            case Conditions.Outlet.Squeezed squeezed -> {
                if (bore.isEmpty()) {
                    assumed.add("a bore of " + squeezed.bore().valueText());
                }
                if (time.isEmpty()) {
                    assumed.add("a squeeze of " + squeezed.time().valueText());
                }
            }
            case Conditions.Outlet.AtSpeed fast -> {
                if (bore.isEmpty()) {
                    assumed.add("a bore of " + fast.bore().valueText());
                }
            }
        }
        return outlet;
    }
}
