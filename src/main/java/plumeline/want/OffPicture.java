package plumeline.want;

import java.util.List;
import plumeline.geom.Body;
import plumeline.geom.Extent;
import plumeline.geom.Sight;
import plumeline.plan.WantLine;
import plumeline.stage.Picture;
import plumeline.stage.Scene;

/// Things or lamps stay out of the picture.
///
/// Margin in % of the picture's width or height: how far the outline is beyond the side that it clears best; one part a
/// thing. What is wholly behind the lens is out of the picture by far; what reaches from before it to behind counts as
/// in it.
///
/// @param line as written
/// @param things indices of things
/// @param lamps indices of lamps
record OffPicture(WantLine line, List<Integer> things, List<Integer> lamps) implements Want {
    OffPicture {
        things = List.copyOf(things);
        lamps = List.copyOf(lamps);
    }

    @Override
    public String unit() {
        return "%";
    }

    @Override
    public double[] parts(Moments moments) {
        return Parts.worst(moments.during(line.when()), this::partsIn);
    }

    private double[] partsIn(Scene scene) {
        double[] parts = new double[things.size() + lamps.size()];
        for (int i = 0; i < things.size(); i++) {
            parts[i] = part(scene, scene.things().get(things.get(i)));
        }
        for (int i = 0; i < lamps.size(); i++) {
            parts[things.size() + i] = part(scene, scene.lamps().get(lamps.get(i)));
        }
        return parts;
    }

    private static double part(Scene scene, Body body) {
        double inFront = Parts.inFrontMetres(scene, body);
        if (inFront <= 0) {
            double depth = scene.projection().depth(body.middle());
            double reach = Math.max(body.solid().reachMetres(), body.solid().heightMetres() / 2);
            return Parts.PERCENT * Math.clamp((-depth - reach) / reach, -1, 1);
        }
        Extent extent = Sight.extent(scene.projection(), body);
        Picture picture = scene.picture();
        double aside =
                Math.max(extent.left() / picture.widthTangent() - 0.5, -0.5 - extent.right() / picture.widthTangent());
        double up = Math.max(
                extent.bottom() / picture.heightTangent() - 0.5, -0.5 - extent.top() / picture.heightTangent());
        return Parts.PERCENT * Math.max(aside, up);
    }
}
