package plumeline.plume;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.geom.Body;
import plumeline.geom.Bounds;
import plumeline.geom.Vec;
import plumeline.ink.Coefficients;
import plumeline.ink.Descent;
import plumeline.ink.Ink;
import plumeline.plan.Mark;
import plumeline.plan.Release;
import plumeline.plan.Shot;
import plumeline.plan.TankPlace;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.Stage;
import plumeline.stage.TankFill;
import plumeline.stage.TankWalls;
import plumeline.water.Figure;
import plumeline.water.Water;

/// Reads the ink of a staged shot.
public final class InkShots {
    /// A pipette's or a syringe's bore, where the plan doesn't say (common practice).
    private static final double BORE_METRES = 0.004;

    /// An easy squeeze by hand, as the question `ink` takes it.
    private static final double SQUEEZE_SECONDS = 1;

    /// The flow counts density for weight only: good to a few hundredths, and past this not at all.
    private static final double MOST_EXCESS = 0.1;

    /// More frames a second than this show nothing more of ink: it goes less than a cell between two.
    private static final double MOST_FRAMES_PER_SECOND = 120;

    private static final double FARTHEST_SECONDS = 600;

    private static final double FREEZING_KELVIN = 273.15;

    private final Stage stage;
    private final double[] values;
    private final Chance chance;
    private final Shot shot;
    private final List<String> assumed = new ArrayList<>();

    private InkShots(Stage stage, double[] values, Chance chance) {
        this.stage = stage;
        this.values = values;
        this.chance = chance;
        this.shot = stage.shot();
    }

    /// Reads a shot, all of it as written.
    ///
    /// @param stage the shot, staged
    /// @param values its marks' values, SI, in the order of the stage's marks
    /// @return its ink, or what is missing
    public static InkReading read(Stage stage, double[] values) {
        return read(stage, values, Chance.none());
    }

    /// Reads it as one try has it.
    static InkReading read(Stage stage, double[] values, Chance chance) {
        try {
            return new InkReading.Ready(new InkShots(stage, values, chance).read());
        } catch (Lack lack) {
            return lack.said;
        }
    }

    /// Ends a reading where something is missing.
    private static final class Lack extends Exception {
        private static final long serialVersionUID = 1L;

        @SuppressWarnings("serial")
        private final InkReading.Lacking said;

        Lack(String field, String lack, String attempt) {
            super(field, null, false, false);
            this.said = new InkReading.Lacking(field, lack, attempt);
        }
    }

    private String field(String path) {
        return "shots." + shot.name() + "." + path;
    }

    private InkShot read() throws Lack {
        Release.OfInk release = release();
        Bounds box = water();
        TankPlace tank = shot.findTank().orElseThrow();
        if (!tank.tank().written().has("temperature")) {
            assumed.add("water of 20 degC");
        }
        double waterDensity = waterDensity(tank);
        double viscosity = known(TankFill.viscosity(tank)) / waterDensity;
        double sinking = sinking(release, waterDensity);
        double startSeconds = startSeconds();
        List<InkShot.Thing> things = things(startSeconds);
        plumeline.ink.Release ink = ink(release, sinking, viscosity);
        Vec mouth = mouth(release);
        var descent = new Descent(ink, mouth.z() - box.high().z());
        InkShot.Pour pour = pour(descent, mouth, box);
        var waters = new InkShot.Waters(box, viscosity, sinking);
        InkShot.Timing timing = timing(startSeconds, descent, waters);
        var read = new InkShot(shot.name(), waters, pour, things, timing, chance.spreads(), assumed);
        if (read.isSolid(pour.mouth())) {
            throw new Lack(field("release.at"), "is inside a placed thing", "Move the nozzle clear of the things.");
        }
        return read;
    }

    /// As it was measured, within its ±, else by what is in it.
    private double waterDensity(TankPlace place) throws Lack {
        double density = known(TankFill.density(place));
        return place.tank()
                .written()
                .findQuantity("density")
                .map(measured -> chance.amount("kit.tanks." + place.tank().name() + ".density", measured))
                .orElse(density);
    }

    /// What is known of the tank's water; else says between which temperatures it is.
    private double known(Figure figure) throws Lack {
        TankPlace place = shot.findTank().orElseThrow();
        return switch (figure) {
            case Figure.Known(double value, double _) -> value;
            case Figure.Unknown(Figure.Measure _, double _, double low, double high) ->
                throw new Lack(
                        "kit.tanks." + place.tank().name() + ".temperature",
                        "is past " + celsius(low) + " to " + celsius(high) + " degC, where "
                                + (isSalt(place) ? "salt water" : "water") + " is known",
                        "Give the water's temperature, such as 20 degC.");
        };
    }

    private static boolean isSalt(TankPlace place) {
        return place.tank().written().has("salt") || place.tank().written().has("sea_salt");
    }

    private static String celsius(double kelvin) {
        return Print.number(kelvin - FREEZING_KELVIN, 0);
    }

    private Release.OfInk release() throws Lack {
        Optional<Release> found = shot.findRelease();
        if (found.isPresent() && found.get() instanceof Release.OfInk ink) {
            return ink;
        }
        throw new Lack(
                field("release"),
                found.isPresent() ? "lets no ink go" : "is missing",
                "Add `release: {ink: NAME, volume: 5 ml, bore: 4 mm, squeeze_time: 1 s, at: [0 mm, -60 mm, 250 mm]}`.");
    }

    private Bounds water() throws Lack {
        Optional<TankPlace> place = shot.findTank();
        if (place.isEmpty()) {
            throw new Lack(
                    field("tank"),
                    "is missing",
                    "Add `tank: {tank: NAME, at: [0 mm, 0 mm], water: 260 mm}` to the shot.");
        }
        switch (TankFill.of(place.get())) {
            case TankFill.NoDepth() ->
                throw new Lack(field("tank.water"), "is missing", "Say how deep the water is, such as 260 mm.");
            case TankFill.TooDeep(Quantity depth, Quantity height) ->
                throw new Lack(
                        field("tank.water"),
                        "is " + depth.valueText() + "; the tank is " + height.valueText() + " high inside",
                        "Give less water, or another tank.");
            case TankFill.TooHotOrCold() -> known(TankFill.density(place.get()));
            case TankFill.Known _ -> {}
        }
        TankWalls walls = stage.findTank().orElseThrow();
        Vec high = walls.inside().high();
        return new Bounds(walls.inside().low(), new Vec(high.x(), high.y(), walls.waterLineMetres()));
    }

    private double sinking(Release.OfInk release, double waterDensity) throws Lack {
        String field = "kit.inks." + release.ink().name() + ".density";
        Optional<Quantity> density = release.ink().written().findQuantity("density");
        if (density.isEmpty()) {
            throw new Lack(
                    field, "is missing", "Weigh 100 ml of it: grams over 100 is its density, such as 1.03 g/ml.");
        }
        double excess = chance.amount(field, density.get()) / waterDensity - 1;
        if (Math.abs(excess) > MOST_EXCESS) {
            throw new Lack(
                    field,
                    String.format(
                            Locale.ROOT,
                            "is %s, %.0f %% off the water's %.3f g/ml; the flow is known to within 10 %%",
                            density.get().valueText(),
                            100 * Math.abs(excess),
                            waterDensity / 1000),
                    "Mix the ink nearer to the water's density, or ask plumeline ask ink.");
        }
        return Water.GRAVITY_METRES_PER_SECOND2 * excess;
    }

    private plumeline.ink.Release ink(Release.OfInk release, double sinking, double viscosity) throws Lack {
        OptionalDouble volume = find(release, "volume");
        if (volume.isEmpty()) {
            throw new Lack(field("release.volume"), "is missing", "Say how much ink is let go, such as 5 ml.");
        }
        OptionalDouble bore = find(release, "bore");
        if (bore.isEmpty()) {
            assumed.add("a bore of 4 mm");
        }
        double wide = bore.orElse(BORE_METRES);
        OptionalDouble speed = find(release, "speed");
        if (speed.isPresent()) {
            return new plumeline.ink.Release(volume.getAsDouble(), sinking, wide, speed.getAsDouble(), viscosity);
        }
        OptionalDouble squeeze = find(release, "squeeze_time");
        if (squeeze.isEmpty()) {
            assumed.add("squeezed in 1 s");
        }
        return plumeline.ink.Release.ofSqueeze(
                volume.getAsDouble(), sinking, wide, squeeze.orElse(SQUEEZE_SECONDS), viscosity);
    }

    private OptionalDouble find(Release.OfInk release, String key) {
        return release.written().findQuantity(key).stream()
                .mapToDouble(written -> chance.amount(field("release." + key), written))
                .findFirst();
    }

    /// From above the surface the ink falls, speeds up and narrows, and part of its push is lost where it goes in.
    private InkShot.Pour pour(Descent descent, Vec mouth, Bounds box) throws Lack {
        if (mouth.x() <= box.low().x()
                || mouth.x() >= box.high().x()
                || mouth.y() <= box.low().y()
                || mouth.y() >= box.high().y()
                || mouth.z() <= box.low().z()) {
            throw new Lack(
                    field("release.at"), "is outside the tank's water", "Place the nozzle within the tank's panes.");
        }
        if (descent.heightMetres() > Ink.MOST_HEIGHT_METRES) {
            throw new Lack(
                    field("release.at"),
                    String.format(Locale.ROOT, "is %.0f mm above the water", 1e3 * descent.heightMetres())
                            + "; from more than 150 mm ink falls in drops, which isn't computed",
                    "Lower the nozzle to the water or into it.");
        }
        plumeline.ink.Release ink = descent.release();
        double air = descent.airSeconds();
        double end = air + ink.seconds();
        if (descent.heightMetres() <= 0) {
            return new InkShot.Pour(mouth, ink.boreMetres(), ink.volumeFluxMetres3PerSecond(), air, end);
        }
        assumed.add(String.format(
                Locale.ROOT,
                "the ink falls %.0f mm and goes on in the water with part of its push",
                1e3 * descent.heightMetres()));
        double flux = ink.volumeFluxMetres3PerSecond();
        double speed = descent.pushMetresPerSecond(Coefficients.USUAL);
        double bore = Math.sqrt(4 * flux / (Math.PI * speed));
        return new InkShot.Pour(new Vec(mouth.x(), mouth.y(), box.high().z()), bore, flux, air, end);
    }

    private Vec mouth(Release.OfInk release) {
        Vec mouth = stage.findMouth(values).orElseThrow();
        List<Mark> marks = release.at().marks();
        return new Vec(
                mouth.x() + off(marks.get(0)),
                mouth.y() + off(marks.get(1)),
                mouth.z() + (marks.size() > 2 ? off(marks.get(2)) : 0));
    }

    /// How far off a mark is in this try, where it is written with a ±.
    private double off(Mark mark) {
        return mark instanceof Mark.Fixed fixed
                ? chance.place(field(fixed.path()), fixed.quantity())
                        - fixed.quantity().si()
                : 0;
    }

    private double startSeconds() throws Lack {
        double start = stage.releaseSeconds();
        if (shotSeconds() <= start) {
            throw new Lack(
                    field("release.start"),
                    "is not before the shot's end, " + String.format(Locale.ROOT, "%.2f s", shotSeconds()),
                    "Start the release earlier, or let the shot run longer.");
        }
        return start;
    }

    private double shotSeconds() {
        return stage.lastSeconds();
    }

    /// What is in the water when the release starts.
    private List<InkShot.Thing> things(double startSeconds) {
        double frame = stage.retime().frameAt(startSeconds, (double) stage.frames());
        TankWalls walls = stage.findTank().orElseThrow();
        List<Body> now = stage.scene(values, frame).things();
        List<InkShot.Thing> wet = new ArrayList<>();
        for (int n = 0; n < now.size(); n++) {
            if (walls.isWet(now.get(n))) {
                wet.add(new InkShot.Thing(shot.placed().get(n).name(), now.get(n)));
            }
        }
        if (stage.isMoving()
                && !stage.scene(values, (double) stage.frames()).things().equals(now)) {
            assumed.add("things stand still in the water, as they are when the release starts");
        }
        return wet;
    }

    private InkShot.Timing timing(double startSeconds, Descent descent, InkShot.Waters waters) {
        double rate = shot.camera()
                .written()
                .findQuantity("rate")
                .map(Quantity::si)
                .orElse(stage.retime().framesPerSecond());
        double kept = rate / Math.ceil(rate / MOST_FRAMES_PER_SECOND - 1e-9);
        double floor = descent.findSeconds(waters.depthMetres()).orElse(FARTHEST_SECONDS);
        return new InkShot.Timing(kept, startSeconds, shotSeconds() - startSeconds, floor);
    }
}
