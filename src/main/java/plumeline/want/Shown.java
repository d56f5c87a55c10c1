package plumeline.want;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Body;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.sight.Extent;
import plumeline.sight.Gap;
import plumeline.sight.Sight;
import plumeline.stage.Scene;

/// Things show side by side with clear space between neighbours.
///
/// Margin in % of the picture's width as the camera is held: the horizontal clear space between neighbours' outlines
/// less the gap wanted. One part a pair of neighbours, from left to right. Whether they are in the picture is `inside`.
///
/// @param line as written
/// @param things indices of the things
/// @param gap clear space wanted, share of the picture's width, dimensionless
record Shown(WantLine line, List<Integer> things, double gap) implements Want {
    Shown {
        things = List.copyOf(things);
    }

    @Override
    public String unit() {
        return "%";
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        return Parts.findBehind(moments, line.when(), things).or(() -> worstStanding(moments));
    }

    private Optional<String> worstStanding(Moments moments) {
        Optional<String> standing = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        for (Scene scene : moments.during(line.when())) {
            List<Body> bodies = things.stream().map(scene.things()::get).toList();
            for (Gap between : Sight.gaps(scene.lines().at(bodies).projection(), bodies)) {
                double spare =
                        Parts.PERCENT * (between.width() / scene.picture().widthTangent() - gap);
                if (spare < least) {
                    least = spare;
                    String neighbours = Parts.name(moments, things.get(between.leftIndex())) + " and "
                            + Parts.name(moments, things.get(between.rightIndex()));
                    standing = Optional.of("The gap between " + neighbours
                            + (spare >= 0 ? " has " : " lacks ") + Parts.points(spare)
                            + " of the picture's width" + (spare >= 0 ? " to spare." : "."));
                }
            }
        }
        return standing;
    }

    @Override
    public double[] parts(Moments moments) {
        return Parts.worst(moments.during(line.when()), this::partsIn);
    }

    private double[] partsIn(Scene scene) {
        double[] parts = new double[Math.max(1, things.size() - 1)];
        List<Body> bodies = new ArrayList<>(things.size());
        for (int index : things) {
            bodies.add(scene.things().get(index));
            double inFront = Parts.inFrontMetres(scene, bodies.getLast());
            if (inFront <= 0) {
                java.util.Arrays.fill(parts, Parts.behind(inFront));
                return parts;
            }
        }
        java.util.Arrays.fill(parts, Parts.PERCENT);
        List<Gap> gaps = Sight.gaps(scene.lines().at(bodies).projection(), bodies);
        for (int i = 0; i < gaps.size(); i++) {
            parts[i] = Parts.PERCENT * (gaps.get(i).width() / scene.picture().widthTangent() - gap);
        }
        return parts;
    }

    @Override
    public List<Relaxed> listRelaxed(double lack, Moments moments) {
        double easier = Math.floor((gap * Parts.PERCENT - lack) * 10) / 10 / Parts.PERCENT;
        if (easier < 0) {
            return List.of();
        }
        return List.of(new Relaxed(
                new Shown(line, things, easier),
                "gap " + Parts.percent(easier) + " instead of " + Parts.percent(gap) + "."));
    }

    /// Gaps can be clear of things that the picture's edge cuts: say which.
    @Override
    public Optional<String> findCaution(Moments moments) {
        List<String> cut = new ArrayList<>();
        for (int index : things) {
            if (moments.during(line.when()).stream().anyMatch(scene -> isCut(scene, index))) {
                cut.add(moments.stage().shot().placed().get(index).name());
            }
        }
        return cut.isEmpty()
                ? Optional.empty()
                : Optional.of(String.join(", ", cut) + (cut.size() == 1 ? " goes" : " go")
                        + " over the picture's edge, which this want doesn't count: want inside too.");
    }

    private static boolean isCut(Scene scene, int index) {
        Body body = scene.things().get(index);
        if (Parts.inFrontMetres(scene, body) <= 0) {
            return true;
        }
        Extent extent = Sight.extent(scene.view(body), body);
        double aside =
                Math.max(-extent.left(), extent.right()) / scene.picture().widthTangent();
        double up = Math.max(-extent.bottom(), extent.top()) / scene.picture().heightTangent();
        return Math.max(aside, up) > 0.5;
    }
}
