package plumeline.trace;

import plumeline.colour.Rgb;
import plumeline.scenery.Paint;

/// Where labels lie on shapes, and what they look like there.
final class Labels {
    private static final int BOX_FRONT = 2;

    private Labels() {}

    /// Whether a met place is on a label.
    static boolean covers(Meets shapes, int shape, Paint.Label label, Hit hit) {
        boolean isSide = shapes.kind(shape) == Shapes.BOX
                ? hit.piece == BOX_FRONT
                : shapes.kind(shape) == Shapes.TURNED && shapes.faces(hit.piece) == 0;
        double down = down(label, hit);
        if (!(isSide && down >= 0 && down <= 1)) {
            return false;
        }
        double across = across(shapes, shape, label, hit);
        return across >= 0 && across <= 1;
    }

    private static double down(Paint.Label label, Hit hit) {
        return (label.bottomMetres() + label.heightMetres() - hit.ownZ) / label.heightMetres();
    }

    private static double across(Meets shapes, int shape, Paint.Label label, Hit hit) {
        if (shapes.kind(shape) == Shapes.BOX) {
            return hit.ownX / label.widthMetres() + 0.5;
        }
        double radius = Math.sqrt(hit.ownX * hit.ownX + hit.ownY * hit.ownY);
        return Math.atan2(hit.ownX, -hit.ownY) * radius / label.widthMetres() + 0.5;
    }

    /// Gives what a place of a label's front sends back evenly.
    ///
    /// @param into takes three shares; a fourth number is used
    static void front(Meets shapes, int shape, Paint.Label label, Hit hit, double[] into) {
        Rgb paper = label.paper();
        if (label.art().isEmpty()) {
            into[0] = paper.red();
            into[1] = paper.green();
            into[2] = paper.blue();
            return;
        }
        label.art().get().at(across(shapes, shape, label, hit), down(label, hit), into);
        double bare = 1 - into[3];
        into[0] = into[0] * into[3] + bare * paper.red();
        into[1] = into[1] * into[3] + bare * paper.green();
        into[2] = into[2] * into[3] + bare * paper.blue();
    }

    /// Gives what a label's back sends back into the clear wall it sticks to. Of even light in the wall only `1/n²`
    /// can get out of it, what is steep enough; the rest is mirrored whole, and comes back to the paper again and
    /// again: `r / (1 − r (1 − 1/n²))`, so that white paper throws back all that falls on it. **Source:** own
    /// derivation, docs/derivations/label.md.
    ///
    /// @param index the wall's
    static void back(Paint.Label label, double index, double[] into) {
        double kept = 1 - 1 / (index * index);
        into[0] = label.paper().red() / (1 - label.paper().red() * kept);
        into[1] = label.paper().green() / (1 - label.paper().green() * kept);
        into[2] = label.paper().blue() / (1 - label.paper().blue() * kept);
    }
}
