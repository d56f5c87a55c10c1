package plumeline.geom;

import java.util.ArrayList;
import java.util.List;

/// Picture parts made ready for hidden margins.
final class Shades {
    private static final int STEPS = 160;

    private Shades() {}

    static Shade[] of(List<Seen> parts) {
        List<Shade> shades = new ArrayList<>(parts.size());
        for (Seen part : parts) {
            switch (part) {
                case Seen.Plain(Disc low, Disc high) -> shades.add(of(low, high));
                case Seen.Points points -> shades.add(points.shade());
                case Bent bent -> shades.add(bent.shade());
            }
        }
        return shades.toArray(new Shade[0]);
    }

    private static Shade of(Disc low, Disc high) {
        double a = low.radius();
        double b = high.radius();
        return Shade.hull(
                Shade.ellipse(low),
                Shade.ellipse(high),
                b * low.cx() - a * high.cx(),
                b * low.cy() - a * high.cy(),
                b * low.cz() - a * high.cz());
    }

    static Shade polygon(Seen part) {
        Hull hull = Hull.of(part, STEPS);
        return Shade.polygon(hull.x, hull.y);
    }
}
