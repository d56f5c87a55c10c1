package plumeline.want;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Body;
import plumeline.geom.Point;
import plumeline.geom.Pose;
import plumeline.geom.Projection;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.plan.Placed;
import plumeline.plan.Thing;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.roots.Roots;
import plumeline.stage.HangingLine;
import plumeline.stage.Picture;
import plumeline.stage.Scene;
import plumeline.stage.Sightlines;
import plumeline.stage.Stage;
import plumeline.wet.Lacks;

/// The lines that a thing hangs on aren't seen: thin enough, behind an opaque body, or out of the picture.
///
/// Margin in px, a part a line: the best of how much thinner than `under` the line is where it shows widest, how far it
/// is inside the outline of what hides it, and how far it is beyond the picture's edge. A line goes straight up from
/// its tie, or from the middle of the top where `tied` isn't written, and counts from where it leaves the thing. One
/// part more, none of the margin, is how far its sight lines are from leaving what is computed, in mm, so that leeway
/// ends there.
///
/// @param line as written
/// @param thing index of the thing
/// @param lines how many lines
/// @param underPixels the width that no longer shows, px
/// @param hung the line
record LineHidden(WantLine line, int thing, int lines, double underPixels, HangingLine hung) implements Want {
    /// Pixels that a mask is wider than the line on each side (common practice).
    private static final double MASK_EDGE_PIXELS = 2;

    /// More than this beyond an edge reads as this.
    private static final double FAR_PIXELS = 1000;

    /// Nobody follows a line farther up than this, metres.
    private static final double REACH_METRES = 2;

    private static final double NEAREST_METRES = 0.02;
    private static final double THIN_METRES = 1e-6;

    /// Makes the want, or one that says what is missing.
    static Want of(WantLine line, int thing, Placed placed, double underPixels) {
        if (!placed.isHung()) {
            return new NotComputed(line, placed.name() + " hangs on no line: write lines or tied.");
        }
        Optional<HangingLine> hung = HangingLine.find(placed);
        int lines = Math.max(1, placed.tied().size());
        return hung.isPresent()
                ? new LineHidden(line, thing, lines, underPixels, hung.get())
                : new NotComputed(
                        line,
                        "Measure the line that " + placed.name() + " hangs on: write its line: {diameter: 0.2 mm}.");
    }

    @Override
    public String unit() {
        return "px";
    }

    /// One line at one instant: what of it is in the picture's height.
    ///
    /// @param foot where it leaves the thing, metres
    /// @param topMetres the height at which it leaves the picture, metres; the foot's where none of it is in
    private record Seen(Vec foot, double topMetres) {
        Vec at(double height) {
            return new Vec(foot.x(), foot.y(), height);
        }

        boolean isNothing() {
            return topMetres - foot.z() < THIN_METRES;
        }

        Body between(double low, double high, double diameterMetres) {
            return new Body(Solid.cylinder(diameterMetres, high - low), new Pose(at(low), 0, 0));
        }
    }

    /// How one line shows, px.
    private record Shows(double widePixels, double behindPixels, double outPixels) {
        double margin(double under) {
            return Math.clamp(Math.max(under - widePixels, Math.max(behindPixels, outPixels)), -FAR_PIXELS, FAR_PIXELS);
        }
    }

    @Override
    public double[] parts(Moments moments) {
        return Parts.worst(moments.during(line.when()), scene -> {
            double[] parts = new double[lines + 1];
            parts[lines] = Parts.FAR_MILLIMETRES;
            for (int i = 0; i < lines; i++) {
                parts[i] = shows(moments, scene, i).margin(underPixels);
                for (Sightlines.Seeing seeing : seeings(moments, scene, i)) {
                    double cover = Parts.MILLIMETRES * seeing.coverMetres();
                    parts[lines] = Math.min(parts[lines], Math.max(-Parts.FAR_MILLIMETRES, cover));
                }
            }
            return parts;
        });
    }

    @Override
    public double margin(double[] parts) {
        return Arrays.stream(parts, 0, lines).min().orElseThrow();
    }

    /// How each stretch of a line is seen, under and over the water.
    private List<Sightlines.Seeing> seeings(Moments moments, Scene scene, int index) {
        Seen seen = seen(moments, scene, index);
        List<Sightlines.Seeing> all = new ArrayList<>();
        for (double[] part : seen.isNothing() ? List.<double[]>of() : stretches(moments.stage(), seen)) {
            all.add(
                    part[1] - part[0] < THIN_METRES
                            ? scene.lines().at(List.of(scene.things().get(thing)))
                            : scene.lines().at(List.of(seen.between(part[0], part[1], hung.diameterMetres()))));
        }
        return all;
    }

    private Shows shows(Moments moments, Scene scene, int index) {
        Seen seen = seen(moments, scene, index);
        Projection view = view(scene);
        double pixels = scene.picture().imageMetres() / scene.picture().pixelMetres();
        if (view.depth(seen.foot) <= NEAREST_METRES) {
            return new Shows(0, 0, FAR_PIXELS);
        }
        Point foot = view.project(seen.foot);
        double up = foot.y() - scene.picture().heightTangent() / 2;
        double aside = Math.abs(foot.x()) - scene.picture().widthTangent() / 2;
        double out = pixels * Math.max(up, aside);
        if (seen.isNothing()) {
            return new Shows(0, -FAR_PIXELS, out);
        }
        double widest = 0;
        for (double[] part : stretches(moments.stage(), seen)) {
            widest = Math.max(widest, Math.max(wide(view, seen.at(part[0])), wide(view, seen.at(part[1]))));
        }
        return new Shows(pixels * widest, behind(moments, scene, seen, pixels), out);
    }

    /// As the thing itself is seen: past the tank, or through its wall.
    private Projection view(Scene scene) {
        return scene.view(scene.things().get(thing));
    }

    private double wide(Projection view, Vec place) {
        return hung.diameterMetres() / Math.max(view.depth(place), NEAREST_METRES);
    }

    /// What of it is under the water and what over it.
    private static List<double[]> stretches(Stage stage, Seen seen) {
        double foot = seen.foot.z();
        double surface = stage.findTank().map(walls -> walls.waterLineMetres()).orElse(foot);
        if (surface <= foot || surface >= seen.topMetres) {
            return List.of(new double[] {foot, seen.topMetres});
        }
        return List.of(
                new double[] {foot, surface - THIN_METRES / 2},
                new double[] {surface + THIN_METRES / 2, seen.topMetres});
    }

    private double behind(Moments moments, Scene scene, Seen seen, double pixels) {
        List<Body> hiders = new ArrayList<>();
        List<Placed> placed = moments.stage().shot().placed();
        for (int i = 0; i < placed.size(); i++) {
            boolean isClear = placed.get(i)
                    .thing()
                    .body()
                    .filter(body -> body == Thing.Body.CLEAR)
                    .isPresent();
            if (!isClear && Parts.inFrontMetres(scene, scene.things().get(i)) > 0) {
                hiders.add(scene.things().get(i));
            }
        }
        Body thread = seen.between(seen.foot.z(), seen.topMetres, hung.diameterMetres());
        return hiders.isEmpty() || Parts.inFrontMetres(scene, thread) <= 0
                ? -FAR_PIXELS
                : pixels * moments.recall().hidden(view(scene), thread, hiders).least();
    }

    private Seen seen(Moments moments, Scene scene, int index) {
        Body body = scene.things().get(thing);
        List<Double> ties = moments.stage().tiesMetres(thing, moments.values());
        Vec foot = foot(body, ties.isEmpty() ? body.solid().heightMetres() : ties.get(index));
        Projection view = view(scene);
        double tilt = scene.aim().forward().z();
        double reach = REACH_METRES;
        if (tilt < 0) {
            reach = Math.min(reach, (scene.aim().depthMetres(foot) - NEAREST_METRES) / -tilt);
        }
        double low = foot.z();
        double high = low + Math.max(reach, 0);
        if (view.depth(foot) <= NEAREST_METRES || over(view, scene.picture(), foot) >= 0) {
            return new Seen(foot, low);
        }
        Seen all = new Seen(foot, high);
        if (over(view, scene.picture(), all.at(high)) < 0) {
            return all;
        }
        return new Seen(foot, Roots.end(height -> over(view, scene.picture(), all.at(height)) < 0, low, high));
    }

    /// How far over the picture's upper edge, m on a plane 1 m ahead; what is beside or behind the lens is over it.
    private static double over(Projection view, Picture picture, Vec place) {
        return view.depth(place) <= NEAREST_METRES ? 1 : view.project(place).y() - picture.heightTangent() / 2;
    }

    /// Where a line from a place of its axis leaves a body straight upwards: through an end or through the side.
    private static Vec foot(Body body, double tieMetres) {
        double lean = body.pose().leanRadians();
        double height = body.solid().heightMetres();
        double left = Math.cos(lean) > 0 ? height - tieMetres : tieMetres;
        double radius = switch (body.solid()) {
            case Solid.Revolved round -> round.radiusAtMetres(tieMetres);
            case Solid.Box box -> box.widthMetres() / 2;
        };
        double through = Math.max(0, left) / Math.max(Math.abs(Math.cos(lean)), 1e-9);
        double side = radius / Math.max(Math.abs(Math.sin(lean)), 1e-9);
        return body.place(new Vec(0, 0, tieMetres)).plus(new Vec(0, 0, Math.min(through, side)));
    }

    /// Where a sight line to it isn't computed.
    @Override
    public Optional<String> findUnknown(Moments moments) {
        for (Scene scene : moments.during(line.when())) {
            for (int i = 0; i < lines; i++) {
                for (Sightlines.Seeing seeing : seeings(moments, scene, i)) {
                    if (!seeing.isCovered()) {
                        return Optional.of(
                                Sighted.reason(seeing.trouble(), "the line of " + Parts.name(moments, thing)));
                    }
                }
            }
        }
        return Optional.empty();
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        Shows worst = null;
        for (Scene scene : moments.during(line.when())) {
            for (int i = 0; i < lines; i++) {
                Shows shows = shows(moments, scene, i);
                if (worst == null || shows.margin(underPixels) < worst.margin(underPixels)) {
                    worst = shows;
                }
            }
        }
        return worst == null ? Optional.empty() : Optional.of(sentence(worst, Parts.name(moments, thing)));
    }

    private String sentence(Shows shows, String name) {
        String wide = name + "'s line shows " + pixels(shows.widePixels) + " wide; under " + pixels(underPixels)
                + " is wanted";
        double thin = underPixels - shows.widePixels;
        if (shows.margin(underPixels) < 0) {
            double mask = Math.ceil(shows.widePixels - 1e-9) + 2 * MASK_EDGE_PIXELS;
            return wide + ". Paint it out with a mask of " + pixels(mask)
                    + ", hide it behind something opaque, or take thinner line where that still bears five"
                    + " times the load.";
        }
        if (shows.outPixels >= Math.max(thin, shows.behindPixels)) {
            return name + "'s line is out of the picture by " + pixels(shows.outPixels) + ".";
        }
        return shows.behindPixels >= thin
                ? name + "'s line is hidden; " + pixels(shows.behindPixels) + " to spare."
                : wide + ".";
    }

    private static String pixels(double pixels) {
        return Print.number(pixels, pixels < 10 ? 1 : 0) + " px";
    }

    @Override
    public Optional<String> findCaution(Moments moments) {
        String assumed = Lacks.assumed(hung.assumed());
        return assumed.isEmpty() ? Optional.empty() : Optional.of(assumed);
    }
}
