package plumeline.want;

import java.util.List;
import java.util.Optional;
import plumeline.geom.Body;
import plumeline.plan.Delivery;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.sight.Sight;
import plumeline.stage.Frame;
import plumeline.stage.Scene;
import plumeline.stage.Window;
import plumeline.timeline.Use;

/// Things stay inside the frames of deliveries, clear of their keep-outs.
///
/// Margin in % of the camera picture's width (left and right) or height (top and bottom), nearest side, also where a
/// delivery keeps only a part of that picture. What a crop takes from beyond the picture isn't there. Where the picture
/// is scaled, placed or turned in the finished one, the sides are the finished picture's, and per cents are still the
/// camera's. Instants that a delivery doesn't show don't count for it. Four parts a delivery.
///
/// @param line as written
/// @param deliveries the deliveries
/// @param things indices of the things
record Inside(WantLine line, List<In> deliveries, List<Integer> things) implements Want {
    private static final List<String> SIDES = List.of("left", "right", "lower", "upper");

    Inside {
        deliveries = List.copyOf(deliveries);
        things = List.copyOf(things);
    }

    /// A delivery and where it shows the shot.
    record In(Delivery delivery, List<Use> uses) {}

    @Override
    public String unit() {
        return "%";
    }

    @Override
    public double[] parts(Moments moments) {
        return Parts.worst(moments.during(line.when()), scene -> partsIn(scene, moments));
    }

    private double[] partsIn(Scene scene, Moments moments) {
        double[] parts = new double[deliveries.size() * SIDES.size()];
        java.util.Arrays.fill(parts, Parts.PERCENT);
        for (int index : things) {
            double[] one = partsOf(scene, moments, index);
            for (int p = 0; p < parts.length; p++) {
                parts[p] = Math.min(parts[p], one[p]);
            }
        }
        return parts;
    }

    private double[] partsOf(Scene scene, Moments moments, int thing) {
        double[] parts = new double[deliveries.size() * SIDES.size()];
        Body body = scene.things().get(thing);
        double inFront = Parts.inFrontMetres(scene, body);
        if (inFront <= 0) {
            java.util.Arrays.fill(parts, Parts.behind(inFront));
            return parts;
        }
        java.util.Arrays.fill(parts, Parts.PERCENT);
        for (int d = 0; d < deliveries.size(); d++) {
            Delivery delivery = deliveries.get(d).delivery();
            Frame crop =
                    Frame.of(scene.picture(), delivery, moments.stage().shot().cropOrDefault(delivery.name()));
            for (Use use : deliveries.get(d).uses()) {
                if (use.has(scene.frame())) {
                    Window window = new Window(scene.picture(), crop, use.framingAt(scene.frame()));
                    double[] sides =
                            window.sides(turn -> Sight.extent(scene.view(body, turn), body), delivery.keepOut());
                    for (int p = 0; p < sides.length; p++) {
                        int at = SIDES.size() * d + p;
                        parts[at] = Math.min(parts[at], Parts.PERCENT * sides[p]);
                    }
                }
            }
        }
        return parts;
    }

    /// Whether no delivery shows any of it.
    @Override
    public boolean isIdle(Moments moments) {
        return deliveries.stream().allMatch(in -> in.uses().isEmpty());
    }

    /// Which thing comes nearest to, or goes over, which side of which delivery; with what the per cents are of.
    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        return isIdle(moments)
                ? Optional.of("None of these deliveries shows this shot.")
                : Parts.findBehind(moments, line.when(), things).or(() -> worstStanding(moments));
    }

    private Optional<String> worstStanding(Moments moments) {
        Optional<String> standing = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        for (Scene scene : moments.during(line.when())) {
            for (int index : things) {
                double[] parts = partsOf(scene, moments, index);
                for (int p = 0; p < parts.length; p++) {
                    if (parts[p] < least) {
                        least = parts[p];
                        standing = Optional.of(standing(Parts.name(moments, index), p, least));
                    }
                }
            }
        }
        return standing;
    }

    private String standing(String thing, int part, double margin) {
        int side = part % SIDES.size();
        String delivery = deliveries.get(part / SIDES.size()).delivery().name();
        return (margin >= 0 ? "Inside; " + thing + " is " : thing + " goes ") + Parts.points(margin)
                + " of the camera picture's " + (side < 2 ? "width" : "height")
                + (margin >= 0 ? " from " : " over ") + delivery + "'s " + SIDES.get(side) + " side.";
    }
}
