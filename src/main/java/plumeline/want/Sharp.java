package plumeline.want;

import java.util.List;
import plumeline.geom.Body;
import plumeline.geom.Depths;
import plumeline.geom.Sight;
import plumeline.geom.Vec;
import plumeline.optics.FarLimit;
import plumeline.optics.Optics;
import plumeline.optics.Sharpness;
import plumeline.plan.WantLine;
import plumeline.stage.Picture;
import plumeline.stage.Scene;

/// Things are sharp, from their nearest surface point to their outline (or at their axis only).
///
/// Depths count along the optical axis. Margin in mm to the nearer limit, as true places: seen through a tank's wall a
/// depth and the limit are compared as they are seen, and the difference is stretched back by the local scale.
///
/// @param line as written
/// @param things indices of the things
/// @param blurPixels largest accepted blur disc, captured pixels
/// @param axisOnly whether the axis alone counts
record Sharp(WantLine line, List<Integer> things, double blurPixels, AxisOnly axisOnly) implements Want {
    enum AxisOnly {
        YES,
        NO
    }

    /// The far margin where everything beyond is sharp, millimetres.
    private static final double ENDLESS_MILLIMETRES = 10_000;

    private static final double STRETCH_STEP_METRES = 1e-4;

    Sharp {
        things = List.copyOf(things);
    }

    @Override
    public String unit() {
        return "mm";
    }

    @Override
    public double[] parts(Moments moments) {
        return Parts.worst(moments.during(line.when()), this::partsIn);
    }

    private double[] partsIn(Scene scene) {
        double[] parts = new double[things.size() * 2];
        Picture picture = scene.picture();
        Sharpness sharpness =
                new Sharpness(picture.lens(), Math.max(picture.fNumber(), 0.1), blurPixels * picture.pixelMetres());
        double near = Optics.nearLimitMetres(sharpness, picture.focusMetres());
        FarLimit far = Optics.farLimit(sharpness, picture.focusMetres());
        for (int i = 0; i < things.size(); i++) {
            Body body = scene.things().get(things.get(i));
            double inFront = Parts.inFrontMetres(scene, body);
            if (inFront <= 0) {
                parts[2 * i] = Parts.behind(inFront);
                parts[2 * i + 1] = parts[2 * i];
                continue;
            }
            Depths depths = Sight.depths(scene.aim(), body);
            double nearest = axisOnly == AxisOnly.YES ? depths.axisMetres() : depths.nearMetres();
            double farthest = axisOnly == AxisOnly.YES ? depths.axisMetres() : depths.outlineMetres();
            parts[2 * i] = Parts.MILLIMETRES * stretched(scene, nearest, seen(scene, nearest) - near);
            parts[2 * i + 1] = switch (far) {
                case FarLimit.Endless() -> ENDLESS_MILLIMETRES;
                case FarLimit.At(double limit) ->
                    Parts.MILLIMETRES * stretched(scene, farthest, limit - seen(scene, farthest));
            };
        }
        return parts;
    }

    /// The depth at which a place of that true depth on the axis is seen.
    private static double seen(Scene scene, double depthMetres) {
        Vec place = scene.aim().eye().plus(scene.aim().forward().times(depthMetres));
        return scene.projection().depth(place);
    }

    private static double stretched(Scene scene, double depthMetres, double seenMetres) {
        double scale =
                (seen(scene, depthMetres + STRETCH_STEP_METRES) - seen(scene, depthMetres)) / STRETCH_STEP_METRES;
        return seenMetres / scale;
    }
}
