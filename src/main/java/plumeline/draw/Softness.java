package plumeline.draw;

import java.util.List;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Clearance;
import plumeline.geom.Pinhole;
import plumeline.geom.Point;
import plumeline.geom.Projection;
import plumeline.geom.Vec;
import plumeline.optics.FarLimit;
import plumeline.optics.Optics;
import plumeline.optics.SharpZone;
import plumeline.optics.Sharpness;
import plumeline.plan.Shot;
import plumeline.plan.WantLine;
import plumeline.quantity.Quantity;
import plumeline.sight.Depths;
import plumeline.sight.Sight;
import plumeline.stage.Picture;
import plumeline.stage.Scene;

/// What of one body is blurred more than is accepted, at one instant: places before the near limit of sharp depth and
/// places beyond the far one. The body must be wholly in front of the lens point.
///
/// Limits are those of depths as they are seen, as the want `sharp` judges them.
final class Softness {
    private static final double BLUR_PIXELS = 2;

    /// What of a body is soft.
    enum Part {
        /// Nothing: from the nearest place to the outline all is sharp.
        NONE(""),
        /// Places nearest to the lens.
        FRONT("front edge soft"),
        /// The outline.
        OUTLINE("outline soft"),
        /// Both.
        BOTH("front edge and outline soft"),
        /// Every place.
        ALL("soft");

        private final String words;

        Part(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }

    private final Body body;
    private final Aim aim;
    private final Projection view;
    private final SharpZone zone;
    private final double nearMetres;
    private final double farMetres;

    Softness(Scene scene, Body body, double blurPixels) {
        this.body = body;
        aim = scene.aim();
        view = scene.view(body);
        zone = zone(scene.picture(), blurPixels);
        nearMetres = trueMetres(zone.nearMetres());
        farMetres = zone.far() instanceof FarLimit.At(double limit) ? trueMetres(limit) : Double.POSITIVE_INFINITY;
    }

    /// The blur accepted on a thing: the least `sharp_to` of the wants that ask for it, else the shot's least, else
    /// 2 pixels.
    static double blurPixels(Shot shot, String thing) {
        List<WantLine> sharp = shot.wants().stream()
                .filter(want -> want.word().equals("sharp"))
                .toList();
        List<WantLine> own = sharp.stream()
                .filter(want ->
                        want.subjects().stream().anyMatch(named -> named.name().equals(thing)))
                .toList();
        return (own.isEmpty() ? sharp : own)
                .stream()
                        .mapToDouble(want -> want.written()
                                .findQuantity("sharp_to")
                                .map(Quantity::si)
                                .orElse(BLUR_PIXELS))
                        .min()
                        .orElse(BLUR_PIXELS);
    }

    static SharpZone zone(Picture picture, double blurPixels) {
        return Optics.sharpZone(
                new Sharpness(picture.lens(), Math.max(picture.fNumber(), 0.1), blurPixels * picture.pixelMetres()),
                picture.focusMetres());
    }

    Part part() {
        Depths depths = Sight.depths(aim, body);
        double near = seen(depths.nearMetres());
        double outline = seen(depths.outlineMetres());
        if (outline < zone.nearMetres() || isBeyond(near)) {
            return Part.ALL;
        }
        boolean front = near < zone.nearMetres();
        boolean back = isBeyond(outline);
        return front ? back ? Part.BOTH : Part.FRONT : back ? Part.OUTLINE : Part.NONE;
    }

    private boolean isBeyond(double seenMetres) {
        return zone.far() instanceof FarLimit.At(double limit) && seenMetres > limit;
    }

    /// How deep a place of a true depth near the body's axis is seen.
    private double seen(double trueMetres) {
        return view.depth(body.middle().plus(aim.forward().times(trueMetres - aim.depthMetres(body.middle()))));
    }

    /// The true depth that is seen at a depth: straight between two places of the body.
    private double trueMetres(double seenMetres) {
        double middle = aim.depthMetres(body.middle());
        double step = body.solid().reachMetres();
        double scale = (seen(middle + step) - seen(middle - step)) / (2 * step);
        return middle + (seenMetres - seen(middle)) / scale;
    }

    /// Whether a picture point on the body shows a soft place: one before the near limit, which the line of sight meets
    /// before it comes there, or one beyond the far limit. Through a tank's wall the body is looked at as it
    /// stands, its picture scaled about its middle.
    boolean isSoft(Point point) {
        Vec ray = ray(point);
        return meets(ray, nearMetres) || Double.isFinite(farMetres) && !meets(ray, farMetres);
    }

    private boolean meets(Vec ray, double depthMetres) {
        return Clearance.isMet(body, aim.eye(), aim.eye().plus(ray.times(depthMetres)));
    }

    /// The way from the lens point to where a picture point shows, one unit deep.
    private Vec ray(Point point) {
        Point straight = point;
        if (!(view instanceof Pinhole)) {
            Point truly = new Pinhole(aim).project(body.middle());
            Point seen = view.project(body.middle());
            double scale = view.depth(body.middle()) / aim.depthMetres(body.middle());
            straight =
                    new Point(truly.x() + (point.x() - seen.x()) * scale, truly.y() + (point.y() - seen.y()) * scale);
        }
        return aim.forward().plus(aim.right().times(straight.x())).plus(aim.up().times(straight.y()));
    }
}
