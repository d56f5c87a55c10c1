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
import plumeline.stage.Strand;
import plumeline.wet.Lacks;

/// The lines that a thing hangs on aren't seen: thin enough, behind an opaque body, or out of the picture.
///
/// Margin in px, a part a line: the best of how much thinner than `under` the line is where it shows widest, how far it
/// is inside the outline of what hides it, and how far it is beyond the picture's edge. Where a line runs says
/// [Strand]; it counts from where it leaves the thing to where it goes out of the picture's upper edge. One part more,
/// none of the margin, is how far its sight lines are from leaving what is computed, in mm, so that leeway ends there.
///
/// @param line as written
/// @param thing index of the thing
/// @param strands its lines
/// @param underPixels the width that no longer shows, px
/// @param hung the line
record LineHidden(WantLine line, int thing, List<Strand> strands, double underPixels, HangingLine hung)
        implements Want {
    /// Pixels that a mask is wider than the line on each side (common practice).
    private static final double MASK_EDGE_PIXELS = 2;

    /// More than this beyond an edge reads as this.
    private static final double FAR_PIXELS = 1000;

    private static final double NEAREST_METRES = 0.02;
    private static final double THIN_METRES = 1e-6;

    /// Copies the list.
    LineHidden {
        strands = List.copyOf(strands);
    }

    /// Makes the want, or one that says what is missing.
    static Want of(WantLine line, int thing, Placed placed, double underPixels) {
        if (!placed.isHung()) {
            return new NotComputed(line, placed.name() + " hangs on no line: write lines or tied.");
        }
        Optional<HangingLine> hung = HangingLine.find(placed);
        return hung.isPresent()
                ? new LineHidden(line, thing, Strand.lines(thing, placed), underPixels, hung.get())
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
    /// @param way its direction from there
    /// @param lengthMetres how far from there it leaves the picture, metres; 0 where none of it is in
    private record Seen(Vec foot, Vec way, double lengthMetres) {
        Vec at(double metres) {
            return foot.plus(way.times(metres));
        }

        boolean isNothing() {
            return lengthMetres < THIN_METRES;
        }

        /// How far along it is at a height; endless where it runs level.
        double atHeight(double height) {
            return (height - foot.z()) / way.z();
        }

        Body between(double[] part, double diameterMetres) {
            double length = part[1] - part[0];
            double lean = Math.atan2(Math.hypot(way.x(), way.y()), way.z());
            double turn = lean == 0 ? 0 : Math.atan2(-way.y(), way.x());
            Vec middle = at((part[0] + part[1]) / 2);
            Vec base = lean == 0 ? at(part[0]) : middle.minus(new Vec(0, 0, length / 2));
            return new Body(Solid.cylinder(diameterMetres, length), new Pose(base, turn, lean));
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
            int lines = strands.size();
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
        return Arrays.stream(parts, 0, strands.size()).min().orElseThrow();
    }

    /// How each stretch of a line is seen, under and over the water.
    private List<Sightlines.Seeing> seeings(Moments moments, Scene scene, int index) {
        Seen seen = seen(moments, scene, index);
        List<Sightlines.Seeing> all = new ArrayList<>();
        for (double[] part : seen.isNothing() ? List.<double[]>of() : stretches(moments.stage(), seen)) {
            all.add(
                    part[1] - part[0] < THIN_METRES
                            ? scene.lines().at(List.of(scene.things().get(thing)))
                            : scene.lines().at(List.of(seen.between(part, hung.diameterMetres()))));
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
        double up = lower(view, seen, foot.y()) - scene.picture().heightTangent() / 2;
        double aside = Math.abs(foot.x()) - scene.picture().widthTangent() / 2;
        double out = pixels * Math.max(up, aside(view, scene.picture(), seen, aside));
        if (seen.isNothing()) {
            return new Shows(0, -FAR_PIXELS, out);
        }
        double widest = 0;
        for (double[] part : stretches(moments.stage(), seen)) {
            widest = Math.max(widest, Math.max(wide(view, seen.at(part[0])), wide(view, seen.at(part[1]))));
        }
        return new Shows(pixels * widest, behind(moments, scene, seen, pixels), out);
    }

    /// How low it comes in the picture: to its foot, or to the other end where it goes down.
    private static double lower(Projection view, Seen seen, double footTangent) {
        Vec far = seen.at(seen.lengthMetres);
        return seen.way.z() >= 0 || seen.isNothing() || view.depth(far) <= NEAREST_METRES
                ? footTangent
                : Math.min(footTangent, view.project(far).y());
    }

    /// How far beyond a side it is wholly, m on a plane 1 m ahead; its foot's way out where it goes straight up.
    private static double aside(Projection view, Picture picture, Seen seen, double footTangent) {
        Vec far = seen.at(seen.lengthMetres);
        if (seen.isNothing() || seen.way.z() == 1 || view.depth(far) <= NEAREST_METRES) {
            return footTangent;
        }
        double foot = view.project(seen.foot).x();
        double end = view.project(far).x();
        return Math.max(Math.min(foot, end), Math.min(-foot, -end)) - picture.widthTangent() / 2;
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
        double[] all = {0, seen.lengthMetres};
        double surface = stage.findTank()
                .map(walls -> seen.atHeight(walls.waterLineMetres()))
                .orElse(0.0);
        if (!(surface > 0) || surface >= seen.lengthMetres) {
            return List.of(all);
        }
        return List.of(
                new double[] {0, surface - THIN_METRES / 2},
                new double[] {surface + THIN_METRES / 2, seen.lengthMetres});
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
        Body thread = seen.between(new double[] {0, seen.lengthMetres}, hung.diameterMetres());
        return hiders.isEmpty() || Parts.inFrontMetres(scene, thread) <= 0
                ? -FAR_PIXELS
                : pixels * moments.recall().hidden(view(scene), thread, hiders).least();
    }

    private Seen seen(Moments moments, Scene scene, int index) {
        Strand.Ends ends = strands.get(index).at(moments.stage(), moments.values(), scene);
        Vec foot = ends.foot();
        Vec way = ends.lengthMetres() > THIN_METRES ? ends.far().minus(foot).unit() : Vec.UP;
        Projection view = view(scene);
        double toward = scene.aim().forward().dot(way);
        double reach = ends.lengthMetres();
        if (toward < 0) {
            reach = Math.min(reach, (scene.aim().depthMetres(foot) - NEAREST_METRES) / -toward);
        }
        Seen all = new Seen(foot, way, Math.max(reach, 0));
        boolean isFootOver = view.depth(foot) <= NEAREST_METRES || over(view, scene.picture(), foot) >= 0;
        boolean isFarOver = over(view, scene.picture(), all.at(all.lengthMetres)) >= 0;
        if (isFootOver && (isFarOver || way.z() > 0)) {
            return new Seen(foot, way, 0);
        }
        if (isFootOver || !isFarOver) {
            return all;
        }
        double leaves = Roots.end(metres -> over(view, scene.picture(), all.at(metres)) < 0, 0, all.lengthMetres);
        return new Seen(foot, way, leaves);
    }

    /// How far over the picture's upper edge, m on a plane 1 m ahead; what is beside or behind the lens is over it.
    private static double over(Projection view, Picture picture, Vec place) {
        return view.depth(place) <= NEAREST_METRES ? 1 : view.project(place).y() - picture.heightTangent() / 2;
    }

    /// Where a sight line to it isn't computed.
    @Override
    public Optional<String> findUnknown(Moments moments) {
        for (Scene scene : moments.during(line.when())) {
            for (int i = 0; i < strands.size(); i++) {
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
            for (int i = 0; i < strands.size(); i++) {
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
