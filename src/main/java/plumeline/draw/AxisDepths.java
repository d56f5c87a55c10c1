package plumeline.draw;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import plumeline.geom.Body;
import plumeline.geom.Pinhole;
import plumeline.geom.Projection;
import plumeline.geom.Vec;
import plumeline.optics.FarLimit;
import plumeline.optics.Optics;
import plumeline.optics.Sharpness;
import plumeline.plan.Shot;
import plumeline.plan.WantLine;
import plumeline.sight.Depths;
import plumeline.sight.Sight;
import plumeline.stage.Picture;
import plumeline.stage.Scene;

/// Depths along the camera's axis at one instant, as the lens sees them: of things, of the focus, and of the limits of
/// what is sharp for each blur that the shot's wants accept. Limits are those of [Optics]; through a tank's wall a
/// thing's depths are its apparent ones, as in the want `sharp`.
///
/// @param focusMetres the focus, metres
/// @param bars the things whose depths are known
/// @param unknown why a thing has no bar, by its name
/// @param zones what is sharp, one a blur, the finest first
/// @param isThroughGlass whether a thing is seen through a tank's wall
record AxisDepths(
        double focusMetres, List<Bar> bars, Map<String, String> unknown, List<Zone> zones, boolean isThroughGlass) {
    /// Blur that counts where no want says one, captured pixels: as for the want `sharp`.
    static final double USUAL_PIXELS = 2;

    private static final double SAME_METRES = 0.0005;

    /// How deep a thing reaches.
    ///
    /// @param name its name
    /// @param nearMetres its nearest place, metres
    /// @param outlineMetres the deepest place of its outline, metres; what lies deeper is behind it
    /// @param farMetres its farthest place, metres
    record Bar(String name, double nearMetres, double outlineMetres, double farMetres) {}

    /// What is sharp.
    ///
    /// @param wants the wants that accept this blur; none where the usual one is taken
    /// @param pixels the blur, captured pixels
    /// @param nearMetres near limit, metres
    /// @param far far limit
    record Zone(List<WantLine> wants, double pixels, double nearMetres, FarLimit far) {}

    static AxisDepths of(Scene scene, Shot shot, MarkBook marks) {
        List<Bar> bars = new ArrayList<>();
        Map<String, String> unknown = new LinkedHashMap<>();
        boolean through = false;
        for (int i = 0; i < scene.things().size(); i++) {
            String name = shot.placed().get(i).name();
            Body body = scene.things().get(i);
            Projection view = scene.view(body);
            if (!marks.isPlaced(name)) {
                unknown.put(name, "its place is still open");
            } else if (!isInFront(scene, body)) {
                unknown.put(name, "it isn't wholly in front of the lens");
            } else if (!scene.lines().at(List.of(body)).isCovered()) {
                unknown.put(name, "how deep it looks through the tank isn't computed");
            } else {
                bars.add(bar(scene, name, body));
                through |= !(view instanceof Pinhole);
            }
        }
        return new AxisDepths(scene.picture().focusMetres(), bars, unknown, zones(scene.picture(), shot), through);
    }

    private static boolean isInFront(Scene scene, Body body) {
        return Sight.leastDepthMetres(new Pinhole(scene.aim()), body) > 0
                && Sight.leastDepthMetres(scene.view(body), body) > 0;
    }

    private static Bar bar(Scene scene, String name, Body body) {
        Depths depths = Sight.depths(scene.aim(), body);
        double farthest = SideOutline.places(body).stream()
                .mapToDouble(scene.aim()::depthMetres)
                .max()
                .orElse(depths.axisMetres());
        return new Bar(
                name,
                seenMetres(scene, body, depths.nearMetres()),
                seenMetres(scene, body, depths.outlineMetres()),
                seenMetres(scene, body, Math.max(farthest, depths.outlineMetres())));
    }

    /// How deep a place before or behind a body's middle looks.
    private static double seenMetres(Scene scene, Body body, double trueMetres) {
        Vec middle = body.middle();
        Vec way = scene.aim().forward().times(trueMetres - scene.aim().depthMetres(middle));
        return scene.view(body).depth(middle.plus(way));
    }

    private static List<Zone> zones(Picture picture, Shot shot) {
        Map<Double, List<WantLine>> byPixels = new TreeMap<>();
        for (WantLine line : shot.wants()) {
            if (line.word().equals("sharp")) {
                double pixels = line.written()
                        .findQuantity("sharp_to")
                        .map(quantity -> quantity.si())
                        .orElse(USUAL_PIXELS);
                byPixels.computeIfAbsent(pixels, _ -> new ArrayList<>()).add(line);
            }
        }
        if (byPixels.isEmpty()) {
            byPixels.put(USUAL_PIXELS, List.of());
        }
        List<Zone> zones = new ArrayList<>();
        byPixels.forEach((pixels, wants) -> {
            Sharpness sharpness =
                    new Sharpness(picture.lens(), Math.max(picture.fNumber(), 0.1), pixels * picture.pixelMetres());
            zones.add(new Zone(
                    wants,
                    pixels,
                    Optics.nearLimitMetres(sharpness, picture.focusMetres()),
                    Optics.farLimit(sharpness, picture.focusMetres())));
        });
        return zones;
    }

    /// Whether another instant looks the same to a tape.
    boolean isLike(AxisDepths other) {
        if (Math.abs(focusMetres - other.focusMetres) > SAME_METRES
                || bars.size() != other.bars.size()
                || !unknown.equals(other.unknown)) {
            return false;
        }
        for (int i = 0; i < bars.size(); i++) {
            Bar one = bars.get(i);
            Bar two = other.bars.get(i);
            if (Math.abs(one.nearMetres - two.nearMetres) > SAME_METRES
                    || Math.abs(one.outlineMetres - two.outlineMetres) > SAME_METRES
                    || Math.abs(one.farMetres - two.farMetres) > SAME_METRES) {
                return false;
            }
        }
        return true;
    }
}
