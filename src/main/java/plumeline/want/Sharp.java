package plumeline.want;

import java.util.List;
import java.util.Optional;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Projection;
import plumeline.geom.Vec;
import plumeline.optics.FarLimit;
import plumeline.optics.FocusedPoint;
import plumeline.optics.Optics;
import plumeline.optics.Sharpness;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.sight.Depths;
import plumeline.sight.Sight;
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

    /// A wider blur is sharp to nobody, so it isn't offered.
    private static final double MOST_PIXELS = 30;

    Sharp {
        things = List.copyOf(things);
    }

    @Override
    public String unit() {
        return "mm";
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        return Parts.findBehind(moments, line.when(), things).or(() -> Optional.of(standing(moments, papers)));
    }

    private String standing(Moments moments, PaperUnit papers) {
        double[] parts = parts(moments);
        int worst = Parts.worstOf(parts);
        String name = Parts.name(moments, things.get(worst / 2));
        String where = axisOnly == AxisOnly.YES
                ? name + "'s axis"
                : name + (worst % 2 == 0 ? "'s nearest point" : "'s farthest outline");
        if (parts[worst] >= 0) {
            return parts[worst] >= ENDLESS_MILLIMETRES
                    ? "Sharp as far as can be seen."
                    : "Sharp; " + Parts.distance(parts[worst], papers) + " to spare at " + where + ".";
        }
        return "Soft: " + where + " is " + Parts.distance(parts[worst], papers)
                + (worst % 2 == 0 ? " nearer than the sharp depth begins." : " farther than the sharp depth ends.");
    }

    @Override
    public double[] parts(Moments moments) {
        return Parts.worst(moments.during(line.when()), this::partsIn);
    }

    private double[] partsIn(Scene scene) {
        Picture picture = scene.picture();
        Sharpness sharpness =
                new Sharpness(picture.lens(), Math.max(picture.fNumber(), 0.1), blurPixels * picture.pixelMetres());
        double near = Optics.nearLimitMetres(sharpness, picture.focusMetres());
        FarLimit far = Optics.farLimit(sharpness, picture.focusMetres());
        return both(
                scene,
                (seen, nearest, farthest) -> new Pair(
                        Parts.MILLIMETRES * seen.stretched(nearest, seen.depth(nearest) - near),
                        switch (far) {
                            case FarLimit.Endless() -> ENDLESS_MILLIMETRES;
                            case FarLimit.At(double limit) ->
                                Parts.MILLIMETRES * seen.stretched(farthest, limit - seen.depth(farthest));
                        }));
    }

    private record Pair(double nearest, double farthest) {}

    private interface Measure {
        Pair of(Seen seen, double nearestMetres, double farthestMetres);
    }

    /// Measures each thing's nearest place and its farthest, whose depths are given.
    private double[] both(Scene scene, Measure measure) {
        double[] parts = new double[things.size() * 2];
        for (int i = 0; i < things.size(); i++) {
            Body body = scene.things().get(things.get(i));
            double inFront = Parts.inFrontMetres(scene, body);
            Pair pair = new Pair(Parts.behind(inFront), Parts.behind(inFront));
            if (inFront > 0) {
                Depths depths = Sight.depths(scene.aim(), body);
                boolean axis = axisOnly == AxisOnly.YES;
                pair = measure.of(
                        new Seen(scene.view(body), scene.aim(), body.middle()),
                        axis ? depths.axisMetres() : depths.nearMetres(),
                        axis ? depths.axisMetres() : depths.outlineMetres());
            }
            parts[2 * i] = pair.nearest();
            parts[2 * i + 1] = pair.farthest();
        }
        return parts;
    }

    /// In pixels: the blur accepted less the blur of the nearest place and of the farthest.
    @Override
    public double[] slack(Moments moments) {
        return Parts.worst(moments.during(line.when()), this::slackIn);
    }

    private double[] slackIn(Scene scene) {
        Picture picture = scene.picture();
        return both(
                scene,
                (seen, nearest, farthest) -> new Pair(
                        blurPixels - Math.max(0, -behindFocus(picture, seen.depth(nearest))),
                        blurPixels - Math.max(0, behindFocus(picture, seen.depth(farthest)))));
    }

    /// The blur at a depth as seen, in pixels, negative before the focus.
    private static double behindFocus(Picture picture, double depthMetres) {
        double blur = Optics.blurDiameterMetres(
                picture.lens(), Math.max(picture.fNumber(), 0.1), new FocusedPoint(picture.focusMetres(), depthMetres));
        return Math.copySign(blur / picture.pixelMetres(), depthMetres - picture.focusMetres());
    }

    @Override
    public List<Relaxed> listRelaxed(double lack, Moments moments) {
        double easier = Math.ceil((blurPixels + lack) * 10) / 10;
        return easier > MOST_PIXELS
                ? List.of()
                : List.of(new Relaxed(
                        new Sharp(line, things, easier, axisOnly),
                        "sharp_to " + Print.number(easier, 1) + " px instead of " + Print.number(blurPixels, 1)
                                + " px."));
    }

    /// Stopped down far, diffraction blurs everything, which the margin doesn't count: say so where it blurs more than
    /// is accepted.
    @Override
    public Optional<String> findCaution(Moments moments) {
        Picture picture = moments.during(line.when()).getFirst().picture();
        double working = Optics.workingFNumber(
                picture.lens(), picture.fNumber(), Optics.magnificationAt(picture.lens(), picture.focusMetres()));
        double pixels = Optics.airyDiameterMetres(working) / picture.pixelMetres();
        return Optics.softensByDiffraction(working) && pixels > blurPixels
                ? Optional.of("At f/" + Print.number(picture.fNumber(), 1) + " diffraction alone blurs to "
                        + Print.number(pixels, 1) + " px, more than the " + Print.number(blurPixels, 1)
                        + " px asked for, and that isn't counted here.")
                : Optional.empty();
    }

    /// How deep places of a body are seen: those before and behind its middle, along the camera's axis.
    private record Seen(Projection view, Aim aim, Vec middle) {
        double depth(double trueMetres) {
            return view.depth(middle.plus(aim.forward().times(trueMetres - aim.depthMetres(middle))));
        }

        /// A difference of depths as seen, stretched back to true places at a depth.
        double stretched(double trueMetres, double seenMetres) {
            double scale = (depth(trueMetres + STRETCH_STEP_METRES) - depth(trueMetres)) / STRETCH_STEP_METRES;
            return seenMetres / scale;
        }
    }
}
