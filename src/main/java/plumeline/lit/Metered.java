package plumeline.lit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.light.Exposure;
import plumeline.light.Patch;
import plumeline.plan.Placed;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// What a lux meter shows on a thing: on its label's middle, facing straight out of it; without a label on its side
/// toward the camera at half its height.
///
/// @param alone with one lamp on and all others off, cards as they stand, in the shot's order
/// @param together with all on
/// @param neededLux what the camera's setting needs there, lx; empty where no sensitivity is written
public record Metered(List<Shown> alone, Shown together, OptionalDouble neededLux) {
    /// Less than this of a spread isn't worth saying, share of one.
    private static final double LEAST_SHARE = 0.01;

    /// What it shows.
    public sealed interface Shown {
        /// Gives it in words.
        ///
        /// @return such as `1200 lx ± 15 %`, or why it isn't known
        String toText();

        /// So much.
        ///
        /// @param lux lx, two figures of which count
        /// @param halfShare by how much of it it may be off, 95 %, share of one
        /// @param from where that comes from
        record Lux(double lux, double halfShare, From from) implements Shown {
            @Override
            public String toText() {
                return Amounts.lux(lux)
                        + (lux > 0 && halfShare >= LEAST_SHARE ? " ± " + Print.share(halfShare, 0) : "")
                        + (from == From.METER ? " measured" : "");
            }
        }

        /// Where a reading comes from.
        enum From {
            /// It is computed.
            MODEL,
            /// A meter showed it there.
            METER
        }

        /// Nobody can tell.
        ///
        /// @param reason why, to follow a colon
        record NotKnown(String reason) implements Shown {
            @Override
            public String toText() {
                return "not known: " + reason;
            }
        }
    }

    /// Copies the list.
    public Metered {
        alone = List.copyOf(alone);
    }

    /// Meters a thing.
    ///
    /// @param stage the shot
    /// @param scene the instant
    /// @param thing index of the thing
    /// @param film the film's rate
    /// @return what is shown
    public static Metered of(Stage stage, Scene scene, int thing, Quantity film) {
        Lighting lighting = new Lighting(stage.shot(), scene, stage.findTank());
        Patch patch = Spots.of(
                stage.shot().placed().get(thing),
                scene.things().get(thing),
                Spots.Part.LABEL,
                scene.aim().eye());
        Lighting.Light light = Readings.over(
                lighting,
                stage.shot().lights(),
                stage.shot().placed().get(thing),
                Spots.Part.LABEL,
                lighting.light(patch));
        List<Shown> alone = new ArrayList<>();
        for (int i = 0; i < lighting.lamps().size(); i++) {
            alone.add(
                    scene.beams().get(i).level() > 0
                            ? alone(
                                    lighting,
                                    i,
                                    patch,
                                    only(stage, scene, i).light(patch).lux(),
                                    Readings.find(
                                            stage.shot().lights().get(i),
                                            stage.shot().placed().get(thing),
                                            Spots.Part.LABEL))
                            : new Shown.Lux(0, 0, Shown.From.MODEL));
        }
        Shown together = Unlit.find(lighting, List.of(patch)).isPresent()
                ? new Shown.NotKnown("one of the lamps' light isn't")
                : new Shown.Lux(light.lux(), light.halfShare(), Shown.From.MODEL);
        double seen = Setting.seenShare(scene, lighting, patch.place());
        return new Metered(alone, together, needed(stage, scene, seen, film));
    }

    /// The light on a part of a thing, as computed, or as metered there.
    ///
    /// @param light the light
    /// @param neededLux what the camera's setting needs there, lx; empty where no sensitivity is written
    /// @param unknown why the light isn't known; empty where it is
    public record There(Lighting.Light light, OptionalDouble neededLux, Optional<String> unknown) {}

    /// Gives the light on a part of a thing at an instant.
    ///
    /// @param stage the shot
    /// @param now the instant
    /// @param thing index of the thing
    /// @param part which part of it
    /// @param film the film's rate
    /// @return the light
    public static There there(Stage stage, Instant now, int thing, Spots.Part part, Quantity film) {
        LitThing on = new LitThing.OfThing(stage.shot(), thing);
        Patch patch = on.patch(now, part);
        double seen = Setting.seenShare(now.scene(), now.lighting(), patch.place());
        return new There(
                on.light(now, part),
                needed(stage, now.scene(), seen, film),
                Unlit.find(now.lighting(), List.of(patch)));
    }

    private static OptionalDouble needed(Stage stage, Scene scene, double seen, Quantity film) {
        return Setting.find(stage.shot().camera(), scene, seen, film).stream()
                .mapToDouble(Exposure::neededLux)
                .findFirst();
    }

    private static Lighting only(Stage stage, Scene scene, int lamp) {
        return new Lighting(stage.shot(), scene, stage.findTank(), new LightMemory(), index -> index == lamp);
    }

    /// Gives what is computed of each lamp alone on a part of a thing, whatever was read there.
    ///
    /// @param stage the shot
    /// @param scene the instant
    /// @param thing index of the thing
    /// @param part which part of it
    /// @return a lamp each, in the shot's order
    public static List<Shown> computed(Stage stage, Scene scene, int thing, Spots.Part part) {
        Lighting lighting = new Lighting(stage.shot(), scene, stage.findTank());
        Patch patch = Spots.of(
                stage.shot().placed().get(thing),
                scene.things().get(thing),
                part,
                scene.aim().eye());
        List<Shown> alone = new ArrayList<>();
        for (int i = 0; i < lighting.lamps().size(); i++) {
            alone.add(
                    alone(lighting, i, patch, only(stage, scene, i).light(patch).lux(), Optional.empty()));
        }
        return alone;
    }

    /// Gives what each lamp gives on a part of a thing, as read there where it was.
    ///
    /// @param stage the shot
    /// @param scene the instant
    /// @param thing index of the thing
    /// @param part which part of it
    /// @return lx a lamp, in the shot's order; 0 for what isn't known
    public static List<Double> listLux(Stage stage, Scene scene, int thing, Spots.Part part) {
        Lighting lighting = new Lighting(stage.shot(), scene, stage.findTank());
        Placed placed = stage.shot().placed().get(thing);
        Patch patch =
                Spots.of(placed, scene.things().get(thing), part, scene.aim().eye());
        return Readings.over(lighting, stage.shot().lights(), placed, part, lighting.light(patch))
                .lamps();
    }

    private static Shown alone(Lighting lighting, int lamp, Patch patch, double lux, Optional<Quantity> read) {
        return switch (lighting.lamps().get(lamp)) {
            case Lamp.Unknown(var _, Lamp.Lack lack) ->
                new Shown.NotKnown(
                        switch (lack) {
                            case GIVES -> "nobody says what it gives";
                            case FILE -> "its file isn't beside the plan";
                        });
            case Lamp.Flag _ -> new Shown.Lux(0, 0, Shown.From.MODEL);
            case Lamp.Known known -> {
                if (lighting.isOfTank(patch, lamp)) {
                    yield new Shown.NotKnown("it stands in the tank");
                }
                boolean isHued = lux > 0 && Unlit.isHued(lighting, lamp);
                yield isHued
                        ? new Shown.NotKnown("how much less it gives at its hue")
                        : new Shown.Lux(
                                lux,
                                read.map(quantity -> quantity.halfWidthSi() / quantity.si())
                                        .orElse(known.halfShare()),
                                read.isPresent() ? Shown.From.METER : Shown.From.MODEL);
            }
        };
    }

    /// Says how all lamps together stand to what the setting needs.
    ///
    /// @return such as `1300 lx: 0.2 stops too little`; empty where either isn't known
    public Optional<String> findStanding() {
        return together instanceof Shown.Lux(double lux, double _, var _) && neededLux.isPresent()
                ? Optional.of(Amounts.lux(neededLux.getAsDouble()) + ": " + Amounts.over(lux, neededLux.getAsDouble()))
                : Optional.empty();
    }

    /// Says what the setting needs.
    ///
    /// @return such as `1300 lx`; empty where no sensitivity is written
    public Optional<String> findNeeded() {
        return neededLux.isPresent() ? Optional.of(Amounts.lux(neededLux.getAsDouble())) : Optional.empty();
    }
}
