package plumeline.lit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Body;
import plumeline.geom.Clearance;
import plumeline.geom.Pinhole;
import plumeline.geom.Vec;
import plumeline.light.Emitter;
import plumeline.plan.Placed;
import plumeline.plan.Shot;
import plumeline.plan.Thing;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.rim.GlassView;
import plumeline.stage.Scene;
import plumeline.stage.TankWalls;

/// A thing of a shot as glass that lamps are seen through, at one height.
///
/// @param shot the shot
/// @param thing index of the thing
/// @param height where it is looked at
/// @param walls the tank's walls, where the shot has one
record ClearGlass(Shot shot, int thing, Height height, Optional<TankWalls> walls) {
    /// Its top and base are looked at so little within, share of its height.
    private static final double EDGE_SHARE = 0.02;

    /// At which height it is looked at.
    sealed interface Height {
        /// @param metres above its base, m
        record At(double metres) implements Height {}

        /// @param part one of its parts but its label
        record Of(Spots.Part part) implements Height {}
    }

    Placed placed() {
        return shot.placed().get(thing);
    }

    String name() {
        return placed().name();
    }

    String finish() {
        return placed().thing().written().findWord("finish").orElse("gloss");
    }

    /// Its wall as written, m.
    Optional<Double> wall() {
        return placed().thing().written().findQuantity("wall.thickness").map(Quantity::si);
    }

    /// What its wall may be at least and at most, m; none where it is known.
    List<Double> wallEnds() {
        Optional<Quantity> written = placed().thing().written().findQuantity("wall.thickness");
        if (written.isEmpty()) {
            return List.of(ClearThing.THIN_METRES, ClearThing.THICK_METRES);
        }
        double half = written.get().halfWidthSi();
        double least = written.get().si() - half;
        return half > 0
                ? List.of(
                        Math.max(least, ClearThing.LEAST_METRES), written.get().si() + half)
                : List.of();
    }

    private Body body(Scene scene) {
        return scene.things().get(thing);
    }

    private double heightMetres(Scene scene) {
        double all = body(scene).solid().heightMetres();
        return switch (height) {
            case Height.At(double metres) -> metres;
            case Height.Of(Spots.Part part) ->
                switch (part) {
                    case TOP, LID -> (1 - EDGE_SHARE) * all;
                    case BASE -> EDGE_SHARE * all;
                    case MIDDLE, LABEL -> middleMetres(scene);
                };
        };
    }

    double middleMetres(Instant now) {
        return middleMetres(now.scene());
    }

    /// Half its height, or where its label lies there, the middle of what is free over or under that.
    private double middleMetres(Scene scene) {
        double all = body(scene).solid().heightMetres();
        Optional<Thing.Label> label = placed().thing().label().filter(_ -> isOnLabel(all / 2, all));
        if (label.isEmpty()) {
            return all / 2;
        }
        double bottom = Spots.bottom(label.get(), all);
        double top = bottom + label.get().height().si();
        return all - top > bottom ? (all + top) / 2 : bottom / 2;
    }

    private boolean isOnLabel(double metres, double all) {
        return placed().thing()
                .label()
                .filter(label -> metres >= Spots.bottom(label, all)
                        && metres <= Spots.bottom(label, all) + label.height().si())
                .isPresent();
    }

    /// What is seen of it from the camera, past nothing yet.
    Optional<GlassView> findView(Instant now, Optional<Double> wall) {
        Scene scene = now.scene();
        return ClearThing.of(placed(), body(scene), wall) instanceof ClearThing.Reading.Of(ClearThing clear)
                ? Optional.of(new GlassView(
                                body(scene), clear.glass(), scene.aim(), heightMetres(scene), (_, _) -> true))
                        .filter(view -> isBefore(scene) && view.isBefore())
                : Optional.empty();
    }

    private boolean isBefore(Scene scene) {
        return scene.aim().depthMetres(body(scene).middle()) > body(scene).ballMetres();
    }

    /// What lamps are seen through it.
    Optional<RimField> findField(Instant now, Optional<Double> wall) {
        return findView(now, wall).map(view -> {
            List<RimField.Source> sources = new ArrayList<>();
            for (int i = 0; i < shot.lights().size(); i++) {
                int lamp = i;
                findEmitter(now, i)
                        .ifPresent(emitter -> sources.add(new RimField.Source(
                                shot.lights().get(lamp).name(),
                                emitter,
                                view.past((from, to) ->
                                        now.lighting().isFree(from, to, lamp) && !isHole(now, lamp, from, to)))));
            }
            return new RimField(sources);
        });
    }

    /// Whether a lamp is looked at in its dark window.
    private static boolean isHole(Instant now, int lamp, Vec from, Vec to) {
        return now.lighting().lamps().get(lamp) instanceof Lamp.Known(var _, Shine.Face face, var _, var _)
                && face.isHole(from, to);
    }

    /// What shines on a lamp, as bright as its mean as seen from the thing; of a lamp of which nobody says what it
    /// gives, its form.
    private Optional<Emitter> findEmitter(Instant now, int lamp) {
        return switch (now.lighting().lamps().get(lamp)) {
            case Lamp.Known(var _, Shine.Face face, var _, var _) ->
                Optional.of(face.asSeen(body(now.scene()).middle())).filter(emitter -> emitter.luminance() > 0);
            case Lamp.Known _, Lamp.Flag _ -> Optional.empty();
            case Lamp.Unknown _ ->
                Lamp.findFace(shot.lights().get(lamp), now.scene().beams().get(lamp))
                        .filter(_ -> now.scene().beams().get(lamp).level() > 0);
        };
    }

    /// Why nothing is known of what is seen through it.
    Optional<String> findUnknown(Instant now) {
        Scene scene = now.scene();
        double all = body(scene).solid().heightMetres();
        double metres = heightMetres(scene);
        if (finish().equals("satin")) {
            return Optional.of("Not computed: what is seen through frosted glass. Look at " + name()
                    + " through the lens with the lamps in place.");
        }
        if (ClearThing.of(placed(), body(scene), wall()) instanceof ClearThing.Reading.Missing(String reason)) {
            return Optional.of(reason);
        }
        if (isTanked(now)) {
            return Optional.of("Not computed: what is seen through " + name() + " and a tank. Look at it through the"
                    + " lens with the lamps in place.");
        }
        if (!(metres < all)) {
            return Optional.of("Not known: which height is meant. " + name() + " ends " + mm(all) + " above its base.");
        }
        if (isOnLabel(metres, all)) {
            return Optional.of("Not computed: the rims beside a label. Write a height over or under it, such as at: "
                    + mm(middleMetres(scene)) + ".");
        }
        return findView(now, wall()).isEmpty()
                ? Optional.of("Not known: " + name() + " isn't wholly before the lens.")
                : findUnlit(now);
    }

    private boolean isTanked(Instant now) {
        Scene scene = now.scene();
        Body body = body(scene);
        var seeing = scene.lines().at(List.of(body));
        boolean isBehind = walls.map(TankWalls::block)
                .filter(block ->
                        Clearance.isMet(block, body.middle(), scene.aim().eye())
                                || scene.beams().stream()
                                        .anyMatch(beam -> Clearance.isMet(
                                                block, body.middle(), beam.aim().eye())))
                .isPresent();
        return isBehind || !seeing.isCovered() || !(seeing.projection() instanceof Pinhole);
    }

    /// A single lamp's luminance cancels out; of several each must be known.
    private Optional<String> findUnlit(Instant now) {
        long faces = 0;
        for (int i = 0; i < shot.lights().size(); i++) {
            faces += findEmitter(now, i).isPresent() ? 1 : 0;
        }
        return shot.lights().isEmpty() || faces > 1 ? Unlit.find(now.lighting(), List.of()) : Optional.empty();
    }

    private static String mm(double metres) {
        return Print.number(1000 * metres, 0) + " mm";
    }

    /// What was taken for what isn't written.
    String assumedWords(Instant now) {
        return ClearThing.of(placed(), body(now.scene()), wall()) instanceof ClearThing.Reading.Of(ClearThing clear)
                        && !clear.assumed().isEmpty()
                ? " Taken: " + String.join(", ", clear.assumed()) + "."
                : "";
    }
}
