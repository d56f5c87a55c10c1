package plumeline.want;

import java.util.List;
import plumeline.geom.Body;
import plumeline.geom.Extent;
import plumeline.geom.Sight;
import plumeline.plan.Delivery;
import plumeline.plan.WantLine;
import plumeline.stage.Picture;
import plumeline.stage.Scene;

/// Things stay inside the frames of deliveries, clear of their keep-outs.
///
/// Margin in % of the picture's width (left and right) or height (top and bottom), nearest side. Four parts a delivery.
///
/// @param line as written
/// @param deliveries the deliveries
/// @param things indices of the things
record Inside(WantLine line, List<Delivery> deliveries, List<Integer> things) implements Want {
    Inside {
        deliveries = List.copyOf(deliveries);
        things = List.copyOf(things);
    }

    @Override
    public String unit() {
        return "%";
    }

    @Override
    public double[] parts(Moments moments) {
        return Parts.worst(moments.during(line.when()), scene -> partsIn(scene, moments));
    }

    private double[] partsIn(Scene scene, Moments moments) {
        double[] parts = new double[deliveries.size() * 4];
        java.util.Arrays.fill(parts, Parts.PERCENT);
        Picture picture = scene.picture();
        for (int index : things) {
            Body body = scene.things().get(index);
            double inFront = Parts.inFrontMetres(scene, body);
            if (inFront <= 0) {
                java.util.Arrays.fill(parts, Parts.behind(inFront));
                return parts;
            }
            Extent extent = Sight.extent(scene.projection(), body);
            for (int d = 0; d < deliveries.size(); d++) {
                Delivery delivery = deliveries.get(d);
                Frame frame = Frame.of(picture, delivery, moments.stage().shot().cropOrDefault(delivery.name()))
                        .within(delivery.keepOut());
                lower(parts, 4 * d, extent.left() / picture.widthTangent() - frame.left());
                lower(parts, 4 * d + 1, frame.right() - extent.right() / picture.widthTangent());
                lower(parts, 4 * d + 2, extent.bottom() / picture.heightTangent() - frame.bottom());
                lower(parts, 4 * d + 3, frame.top() - extent.top() / picture.heightTangent());
            }
        }
        return parts;
    }

    private static void lower(double[] parts, int index, double share) {
        parts[index] = Math.min(parts[index], Parts.PERCENT * share);
    }
}
