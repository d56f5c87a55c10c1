package plumeline.light;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Vec;

/// What of a patch's sky an outline fills, each part counted by the cosine of its angle: the configuration factor, by
/// which an evenly bright source of luminance L gives `π L F`.
///
/// **Source:** Lambert's formula for polygons (Photometria, 1760), from memory; the same as the contour integral of the
/// projected solid angle, so exact for whatever lies within straight edges, near or far.
public final class Seen {
    /// Below this a corner is at the patch itself, m².
    private static final double AT_THE_PATCH = 1e-24;

    private Seen() {}

    /// Gives the factor of an outline.
    ///
    /// @param outline corners in order, either way round, m; edges straight between them; needn't be flat
    /// @param patch who sees it
    /// @return 0 to 1; what lies behind the patch's plane doesn't count
    public static double factor(List<Vec> outline, Patch patch) {
        return Math.min(1, sum(over(outline, patch), patch) / Math.PI);
    }

    /// Gives the sum of an outline that is over the patch, corners from the patch: π times its factor.
    static double sum(List<Vec> over, Patch patch) {
        double sum = 0;
        for (int i = 0; i < over.size(); i++) {
            Vec one = over.get(i);
            Vec next = over.get((i + 1) % over.size());
            Vec across = one.cross(next);
            double sine = across.lengthMetres();
            if (sine * sine > AT_THE_PATCH) {
                sum += Math.atan2(sine, one.dot(next)) * across.dot(patch.facing()) / sine;
            }
        }
        return Math.abs(sum) / 2;
    }

    /// What of an outline is over the patch's plane, from the patch.
    static List<Vec> over(List<Vec> outline, Patch patch) {
        List<Vec> over = new ArrayList<>(outline.size() + 2);
        Vec last = outline.getLast().minus(patch.place());
        double lastHeight = last.dot(patch.facing());
        for (Vec corner : outline) {
            Vec here = corner.minus(patch.place());
            double height = here.dot(patch.facing());
            if (height > 0 != lastHeight > 0) {
                double share = lastHeight / (lastHeight - height);
                over.add(last.plus(here.minus(last).times(share)));
            }
            if (height > 0) {
                over.add(here);
            }
            last = here;
            lastHeight = height;
        }
        return over;
    }
}
