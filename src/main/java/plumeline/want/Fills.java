package plumeline.want;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Body;
import plumeline.geom.Solid;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.sight.Extent;
import plumeline.sight.Sight;
import plumeline.stage.Picture;
import plumeline.stage.Scene;

/// Things fill a share of the picture's height or width.
///
/// At the thing's middle plane the share is `size · v / depth / picture`, v being the lens's image distance for the
/// shot's focus and depth the middle's along the axis, as seen through a tank's wall; or the drawn outline's share
/// where asked. Margin in % of the picture: the tolerance less the distance from the share wanted.
///
/// @param line as written
/// @param things indices of the things
/// @param along height or width
/// @param wanted share of the picture, dimensionless
/// @param tolerance share of the picture by which it may be off, dimensionless
/// @param more whether more than wanted is as good
/// @param by what is measured
record Fills(WantLine line, List<Integer> things, Along along, double wanted, double tolerance, More more, By by)
        implements Want {
    enum Along {
        HEIGHT,
        WIDTH
    }

    enum More {
        COUNTS_AS_OFF,
        IS_AS_GOOD
    }

    enum By {
        MIDDLE_PLANE,
        OUTLINE
    }

    /// Shares are said in tenths of a per cent.
    private static final double TENTHS = 1000;

    Fills {
        things = List.copyOf(things);
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
        int each = more == More.IS_AS_GOOD ? 1 : 2;
        double[] parts = new double[things.size() * each];
        for (int i = 0; i < things.size(); i++) {
            Body body = scene.things().get(things.get(i));
            double share = share(scene, body);
            parts[i * each] = Parts.PERCENT * (share - wanted + tolerance);
            if (each == 2) {
                parts[i * each + 1] = Parts.PERCENT * (wanted + tolerance - share);
            }
        }
        return parts;
    }

    /// The share of the picture that a body fills now; minus ten where it isn't in front of the lens.
    private double share(Scene scene, Body body) {
        if (Parts.inFrontMetres(scene, body) <= 0) {
            return -10;
        }
        Picture picture = scene.picture();
        double whole = along == Along.HEIGHT ? picture.heightTangent() : picture.widthTangent();
        if (by == By.OUTLINE) {
            Extent extent = Sight.extent(scene.view(body), body);
            return (along == Along.HEIGHT ? extent.height() : extent.width()) / whole;
        }
        return size(body.solid(), along) / scene.view(body).depth(body.middle()) / whole;
    }

    /// The share filled at the want's first instant, for words and for comparing shots.
    static double middlePlaneShare(Scene scene, Body body) {
        return size(body.solid(), Along.HEIGHT)
                / scene.view(body).depth(body.middle())
                / scene.picture().heightTangent();
    }

    private static double size(Solid solid, Along along) {
        if (along == Along.HEIGHT) {
            return solid.heightMetres();
        }
        return switch (solid) {
            case Solid.Revolved revolved -> 2 * revolved.reachMetres();
            case Solid.Box box -> box.widthMetres();
        };
    }

    /// What fills how much now, what is wanted, and whether it is too big or too small.
    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        return Parts.findBehind(moments, line.when(), things).or(() -> Optional.of(worstStanding(moments)));
    }

    private String worstStanding(Moments moments) {
        String standing = "";
        double least = Double.POSITIVE_INFINITY;
        for (Scene scene : moments.during(line.when())) {
            for (int index : things) {
                double share = share(scene, scene.things().get(index));
                double below = wanted - tolerance - share;
                double above = more == More.IS_AS_GOOD ? Double.NEGATIVE_INFINITY : share - wanted - tolerance;
                if (-Math.max(below, above) < least) {
                    least = -Math.max(below, above);
                    standing = Parts.name(moments, index) + " fills " + Parts.percent(share) + " of the picture's "
                            + (along == Along.HEIGHT ? "height" : "width") + "; wanted " + wish() + ": "
                            + Parts.points(Parts.PERCENT * least)
                            + (least >= 0 ? " to spare." : below > above ? " too small." : " too big.");
                }
            }
        }
        return standing;
    }

    private String wish() {
        return Parts.percent(wanted) + (more == More.IS_AS_GOOD ? " or more, less " : " ± ") + Parts.percent(tolerance);
    }

    @Override
    public List<Relaxed> listRelaxed(double lack, Moments moments) {
        List<Relaxed> easier = new ArrayList<>();
        findOtherSize(moments).ifPresent(easier::add);
        double share = Math.ceil((tolerance * Parts.PERCENT + lack) / wanted * 10) / 10 / Parts.PERCENT;
        if (share <= 1) {
            easier.add(new Relaxed(
                    new Fills(line, things, along, wanted, wanted * share, more, by),
                    "within " + Parts.percent(share) + " of the " + Parts.percent(wanted) + " instead of within "
                            + Parts.percent(tolerance / wanted) + "."));
        }
        return easier;
    }

    /// The nearest share to the one wanted that could be asked for instead, with the tolerance as it is of it.
    private Optional<Relaxed> findOtherSize(Moments moments) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (Scene scene : moments.during(line.when())) {
            for (int index : things) {
                double share = share(scene, scene.things().get(index));
                least = Math.min(least, share);
                most = Math.max(most, share);
            }
        }
        double within = tolerance / wanted;
        double easier = least < wanted - tolerance
                ? Math.floor(least / (1 - within) * TENTHS) / TENTHS
                : Math.ceil(most / (1 + within) * TENTHS) / TENTHS;
        Fills other = new Fills(line, things, along, easier, easier * within, more, by);
        return easier > 0 && other.margin(other.parts(moments)) >= 0
                ? Optional.of(new Relaxed(
                        other,
                        (along == Along.HEIGHT ? "height " : "width ") + Parts.percent(easier) + " instead of "
                                + Parts.percent(wanted) + "."))
                : Optional.empty();
    }
}
