package plumeline.lit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.IntPredicate;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Bounds;
import plumeline.geom.Clearance;
import plumeline.geom.Pinhole;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.light.Emitter;
import plumeline.light.Patch;
import plumeline.mirror.Finish;
import plumeline.mirror.GlossyBody;
import plumeline.mirror.Looking;
import plumeline.mirror.Spot;
import plumeline.mirror.Stripe;
import plumeline.mirror.Ways;
import plumeline.optics.TankView;
import plumeline.plan.Placed;
import plumeline.plan.Shot;
import plumeline.plan.Thing;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.Scene;
import plumeline.stage.Sightlines;
import plumeline.stage.TankWalls;

/// A thing of a shot as a mirror.
///
/// @param shot the shot
/// @param thing index of the thing
record Mirrors(Shot shot, int thing) {
    private static final double LEVEL = 1e-9;

    Placed placed() {
        return shot.placed().get(thing);
    }

    String name() {
        return placed().name();
    }

    /// How it shines, as written: `gloss` where nobody says.
    String finish() {
        return placed().thing().written().findWord("finish").orElse("gloss");
    }

    boolean isMatte() {
        return finish().equals("matte");
    }

    Body body(Scene scene) {
        return scene.things().get(thing);
    }

    /// Why nothing is known of what it mirrors.
    Optional<String> findUnknown(Scene scene, Optional<TankWalls> walls, Vec mirrored) {
        if (findTank(scene).isPresent()) {
            return walls.filter(tank -> isWithin(tank.outside(), mirrored)).isPresent()
                    ? Optional.of("Not computed: what " + name() + " mirrors of what is in the tank with it.")
                    : Optional.empty();
        }
        Body body = body(scene);
        Sightlines.Seeing seeing = scene.lines().at(List.of(body));
        boolean isThrough = walls.map(TankWalls::block)
                .filter(block -> Clearance.isMet(block, body.middle(), mirrored))
                .isPresent();
        return isThrough || !seeing.isCovered() || !(seeing.projection() instanceof Pinhole)
                ? Optional.of("Not computed: what " + name() + " mirrors through a tank's glass and water.")
                : Optional.empty();
    }

    /// How it is seen in a tank's water, where all of it is seen through one pane.
    private Optional<TankLooking> findTank(Scene scene) {
        Body body = body(scene);
        if (!(scene.lines() instanceof Sightlines.WithTank tank)
                || !isWithin(tank.walls().inside(), body.middle())
                || body.bounds().high().z() > tank.walls().waterLineMetres()) {
            return Optional.empty();
        }
        Sightlines.Seeing seeing = tank.at(List.of(body));
        return seeing.isCovered() && seeing.projection() instanceof TankView view
                ? Optional.of(new TankLooking(view, tank.walls()))
                : Optional.empty();
    }

    private static boolean isWithin(Bounds room, Vec place) {
        return place.x() > room.low().x()
                && place.x() < room.high().x()
                && place.y() > room.low().y()
                && place.y() < room.high().y()
                && place.z() > room.low().z()
                && place.z() < room.high().z();
    }

    /// A thing as the camera sees it, past all opaque things.
    ///
    /// @param body the thing
    /// @param opaque what hides, itself too
    /// @param aim the camera
    /// @param tank how it is seen in a tank's water
    record Seen(Body body, List<Body> opaque, Aim aim, Optional<TankLooking> tank) {
        GlossyBody glossy() {
            Looking looking = tank.<Looking>map(through -> through).orElseGet(() -> new Looking.Straight(aim.eye()));
            // What has no hollow never stands before its own side.
            boolean isHollow = body.solid() instanceof Solid.Revolved revolved
                    && revolved.stations().size() > 2;
            List<Body> hiding = isHollow
                    ? opaque
                    : opaque.stream().filter(other -> !other.equals(body)).toList();
            return new GlossyBody(body, aim, Ways.past(hiding), looking);
        }

        /// What a light shows as at a height; nothing on what isn't wholly before the camera. On satin, as if it were
        /// gloss: a wide light's stripe ends there too, where it is half as bright.
        List<Stripe> stripes(double heightMetres, Emitter emitter) {
            return isBefore() ? glossy().listStripes(heightMetres, emitter) : List.of();
        }

        /// Whether all of it is before the camera, as one sees it that looks square to its axis.
        boolean isBefore() {
            Vec square = aim.forward().cross(body.axis());
            Vec right = square.lengthMetres() > LEVEL ? square.unit() : aim.right();
            Vec forward = body.axis().cross(right);
            return body.middle().minus(aim.eye()).dot(forward) > body.solid().reachMetres();
        }
    }

    /// As it is seen past things alone.
    Seen seen(Scene scene) {
        return seen(scene, lamp -> false);
    }

    /// As it is seen where a light is looked for in it: past things and all other lamps, cards and flags.
    Seen seen(Scene scene, Emitter light) {
        return seen(scene, lamp -> scene.beams().get(lamp).aim().eye().distanceMetres(light.middle()) > LEVEL);
    }

    /// @param stands which lamps may be in the way
    Seen seen(Scene scene, IntPredicate stands) {
        List<Body> opaque = new ArrayList<>();
        for (int i = 0; i < shot.placed().size(); i++) {
            boolean isOpaque = shot.placed().get(i).thing().body().orElse(Thing.Body.OPAQUE) == Thing.Body.OPAQUE;
            if (i == thing || isOpaque) {
                opaque.add(scene.things().get(i));
            }
        }
        for (int i = 0; i < scene.lamps().size(); i++) {
            if (stands.test(i)) {
                opaque.add(scene.lamps().get(i));
            }
        }
        return new Seen(body(scene), List.copyOf(opaque), scene.aim(), findTank(scene));
    }

    /// Finds what is seen at a place across its outline.
    Optional<Spot> findSpot(Scene scene, double heightMetres, double share) {
        Seen seen = seen(scene);
        return seen.isBefore() ? seen.glossy().findSpot(heightMetres, share) : Optional.empty();
    }

    /// Follows sight on from a spot of it to its last straight stretch.
    Optional<Looking.Onward> findOnward(Scene scene, Spot spot) {
        return seen(scene).glossy().findOnward(spot);
    }

    /// What share of a light's brightness is seen in it: by Fresnel's formulas as varnish or plastic, a mirror by what
    /// bright metal gives; less where satin spreads it.
    ///
    /// @return share of the light's luminance; empty where nothing is mirrored or it isn't computed
    OptionalDouble findBrightness(Scene scene, Spot spot, Emitter emitter) {
        if (isMatte() || findTank(scene).isPresent()) {
            return OptionalDouble.empty();
        }
        Finish law = finish().equals("mirror") ? Finish.Metal.USUAL : Finish.Gloss.USUAL;
        double spread = finish().equals("satin")
                ? Finish.Satin.USUAL.share(
                        emitter,
                        new Patch(spot.place(), spot.facing()),
                        scene.aim().eye())
                : 1;
        return OptionalDouble.of(law.findReflectance(spot.incidenceRadians()).orElse(0) * spread);
    }

    /// What is said of a finish that isn't written, and of one that blurs.
    String assumed() {
        return !placed().thing().written().has("finish")
                ? " Taken as glossy: write its finish."
                : finish().equals("satin") ? " Satin blurs it. Try the lamp on it." : "";
    }

    /// The same, and how far satin blurs a light at a height.
    String finishWords(Scene scene, double heightMetres, Emitter emitter) {
        Seen seen = seen(scene, emitter);
        if (!finish().equals("satin") || !seen.isBefore() || seen.tank().isPresent()) {
            return assumed();
        }
        return seen.glossy().listSatinStripes(heightMetres, emitter, Finish.Satin.USUAL).stream()
                .max(Comparator.comparingDouble(Stripe::wide))
                .map(stripe -> " Satin blurs it: half as bright over about " + Print.share(stripe.wide(), 0)
                        + " of the width, by a guess of its surface. Try the lamp on it.")
                .orElse("");
    }

    /// The label's middle, else half its height.
    double middleMetres(Scene scene) {
        double height = body(scene).solid().heightMetres();
        return placed().thing()
                .label()
                .map(label -> Spots.bottom(label, height) + label.height().si() / 2)
                .orElse(height / 2);
    }

    /// Heights that are looked at for all of its label, else all of it: so many, the lowest first.
    List<Double> heightsMetres(Scene scene, int count) {
        double height = body(scene).solid().heightMetres();
        double low = placed().thing()
                .label()
                .map(label -> Spots.bottom(label, height))
                .orElse(0.0);
        double tall = placed().thing()
                .label()
                .map(Thing.Label::height)
                .map(Quantity::si)
                .orElse(height);
        List<Double> heights = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            heights.add(low + tall * (0.02 + 0.96 * i / (count - 1)));
        }
        return heights;
    }

    /// A lamp's mirror image in the thing, row by row: the rows between two heights, and those right below and above
    /// where the number of stretches changes.
    List<Reflections.Row> rows(Scene scene, Emitter emitter, double lowMetres, double highMetres) {
        return new ImageRows(this, scene, emitter).list(lowMetres, highMetres);
    }

    private record ImageRows(Mirrors mirrors, Scene scene, Emitter emitter) {
        /// Heights looked at between the lowest and the highest.
        private static final int HEIGHTS = 33;

        /// So closely the height is found at which an image begins or ends, m.
        private static final double CLOSE_METRES = 1e-5;

        List<Reflections.Row> list(double lowMetres, double highMetres) {
            TreeMap<Double, Reflections.Row> rows = new TreeMap<>();
            for (int i = 0; i < HEIGHTS; i++) {
                double height = lowMetres + (highMetres - lowMetres) * i / (HEIGHTS - 1);
                rows.put(height, row(height));
            }
            for (Reflections.Row below : List.copyOf(rows.values())) {
                Optional.ofNullable(rows.higherEntry(below.heightMetres()))
                        .ifPresent(above -> addChange(rows, below, above.getValue()));
            }
            return List.copyOf(rows.values());
        }

        private void addChange(TreeMap<Double, Reflections.Row> rows, Reflections.Row below, Reflections.Row above) {
            Reflections.Row under = below;
            Reflections.Row over = above;
            if (under.stretches().size() == over.stretches().size()) {
                return;
            }
            while (over.heightMetres() - under.heightMetres() > CLOSE_METRES) {
                Reflections.Row middle = row((under.heightMetres() + over.heightMetres()) / 2);
                if (middle.stretches().size() == under.stretches().size()) {
                    under = middle;
                } else {
                    over = middle;
                }
            }
            rows.put(under.heightMetres(), under);
            rows.put(over.heightMetres(), over);
        }

        private Reflections.Row row(double height) {
            Body body = mirrors.body(scene);
            return new Reflections.Row(
                    height,
                    mirrors.seen(scene, emitter).stripes(height, emitter).stream()
                            .map(stripe -> new Reflections.Stretch(
                                    body.own(stripe.left().place()),
                                    body.own(stripe.right().place())))
                            .toList());
        }
    }
}
