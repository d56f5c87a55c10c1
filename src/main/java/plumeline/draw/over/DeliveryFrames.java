package plumeline.draw.over;

import java.util.List;
import java.util.Locale;
import plumeline.plan.Delivery;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.sketch.Box;
import plumeline.sketch.Markup;
import plumeline.sketch.Page;
import plumeline.sketch.Pen;
import plumeline.sketch.Shapes;
import plumeline.sketch.Spot;
import plumeline.stage.Frame;
import plumeline.stage.Picture;

/// Deliveries' frames upon a picture of any size: each by its own dashes, its keep-outs hatched.
public final class DeliveryFrames {
    /// Hatching on paper.
    public static final Hatch ON_PAPER = new Hatch(7, 0.4);

    /// Dashes by which deliveries' frames differ; the weight differs with them.
    private static final List<String> DASHES = List.of("", "12 4", "4 3", "12 3 3 3", "1.5 2.5", "18 3 3 3 3 3");

    /// How the frames of deliveries are told apart, in words, in the order of [#DASHES].
    private static final List<String> DASH_WORDS =
            List.of("unbroken line", "long dashes", "short dashes", "dash and dot", "dots", "dash and two dots");

    private DeliveryFrames() {}

    /// Where a picture lies on a page.
    ///
    /// @param middle its middle
    /// @param wide pixels across
    /// @param tall pixels down
    public record Room(Spot middle, double wide, double tall) {}

    /// How keep-outs are hatched.
    ///
    /// @param stepPixels from one line to the next
    /// @param weightPixels of each line
    public record Hatch(double stepPixels, double weightPixels) {}

    /// A delivery's frame in a shot.
    ///
    /// @param delivery the delivery
    /// @param frame its frame, shares of the picture
    public record Framed(Delivery delivery, Frame frame) {
        /// Gives its name and its ratio.
        ///
        /// @return such as `phone 9:16`
        public String words() {
            return delivery.name() + " "
                    + delivery.ratio()
                            .map(ratio -> ratio.across() + ":" + ratio.down())
                            .orElseGet(() -> String.format(Locale.ROOT, "%.2f:1", delivery.aspect()));
        }

        /// Gives where it lies on a page.
        ///
        /// @param picture the picture on the page
        /// @return its box there
        public Box box(Room picture) {
            return boxOf(frame, picture);
        }

        /// Gives what is left of it within its keep-outs.
        ///
        /// @param picture the picture on the page
        /// @return that box there
        public Box free(Room picture) {
            return boxOf(frame.within(delivery.keepOut()), picture);
        }
    }

    /// Lists the frames of a plan's deliveries in a shot.
    ///
    /// @param plan the plan
    /// @param shot the shot
    /// @param picture its picture
    /// @return in the plan's order
    public static List<Framed> list(Plan plan, Shot shot, Picture picture) {
        return plan.deliveries().stream()
                .map(delivery -> new Framed(delivery, Frame.of(picture, delivery, shot.cropOrDefault(delivery.name()))))
                .toList();
    }

    private static Box boxOf(Frame frame, Room picture) {
        Spot middle = picture.middle();
        return new Box(
                middle.x() + frame.left() * picture.wide(),
                middle.y() - frame.top() * picture.tall(),
                middle.x() + frame.right() * picture.wide(),
                middle.y() - frame.bottom() * picture.tall());
    }

    /// Says how a delivery's frame is drawn.
    ///
    /// @param plan the plan
    /// @param delivery one of its deliveries
    /// @return such as `long dashes`
    public static String words(Plan plan, Delivery delivery) {
        return DASH_WORDS.get(plan.deliveries().indexOf(delivery) % DASH_WORDS.size());
    }

    /// Draws frames, a group each.
    ///
    /// @param frames as listed
    /// @param picture the picture on the page
    /// @param page takes the groups
    /// @param hatch how keep-outs are hatched
    public static void draw(List<Framed> frames, Room picture, Page page, Hatch hatch) {
        for (int i = 0; i < frames.size(); i++) {
            Framed framed = frames.get(i);
            Markup group = page.group("delivery." + framed.delivery().name());
            Box outer = framed.box(picture);
            Box free = framed.free(picture);
            for (Box strip : List.of(
                    new Box(outer.left(), outer.top(), outer.right(), free.top()),
                    new Box(outer.left(), free.bottom(), outer.right(), outer.bottom()),
                    new Box(outer.left(), free.top(), free.left(), free.bottom()),
                    new Box(free.right(), free.top(), outer.right(), free.bottom()))) {
                if (strip.width() > 0.5 && strip.height() > 0.5) {
                    group.add(Shapes.hatch(strip, hatch.stepPixels()).with("stroke-width", hatch.weightPixels()));
                }
            }
            Markup frame = Shapes.box(Pen.EDGE, outer).with("stroke-width", 1.3);
            String dash = DASHES.get(i % DASHES.size());
            group.add(dash.isEmpty() ? frame : frame.with("stroke-dasharray", dash));
        }
    }
}
