package plumeline.pace;

import java.util.Optional;
import plumeline.geom.Body;
import plumeline.geom.Vec;
import plumeline.quantity.Print;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// A label's middle stays near enough to the lens for so many frames on end.
///
/// Facing is the turn of the label's middle from the lens, seen from above at the thing's axis. Margin in screen
/// frames: the longest time on end within the angle, less the frames wanted.
///
/// @param subject the thing
/// @param withinRadians the angle, radians
/// @param wantedFrames the frames wanted
record Readable(Subject subject, double withinRadians, double wantedFrames) implements PictureGauge {
    private static final int MOST_STEPS = 4000;
    private static final int HALVINGS = 30;

    @Override
    public String unit() {
        return "frames";
    }

    @Override
    public boolean isOfWhole() {
        return true;
    }

    /// The turn of a thing's front from the lens, seen from above.
    ///
    /// @param scene the instant
    /// @param thing its index
    /// @return radians from −π to π, positive clockwise
    static double facingRadians(Scene scene, int thing) {
        Body body = scene.things().get(thing);
        Vec toLens = scene.aim().eye().minus(body.pose().base());
        double lens = Math.atan2(toLens.x(), toLens.y());
        return Math.IEEEremainder(body.pose().turnRadians() + Math.PI - lens, 2 * Math.PI);
    }

    /// The longest stretch on end.
    ///
    /// @param from its first frame
    /// @param to its end, frames
    record Window(double from, double to) {
        double frames() {
            return to - from;
        }
    }

    private double room(Paced at, double frame) {
        return withinRadians - Math.abs(facingRadians(at.laid().scene(frame), subject.index()));
    }

    Window window(Paced at) {
        Stage stage = at.stage();
        double last = stage.frames();
        int steps = (int) Math.min(MOST_STEPS, 2 * stage.frames());
        Window best = new Window(0, 0);
        double from = room(at, 0) >= 0 ? 0 : Double.NaN;
        for (int i = 1; i <= steps; i++) {
            double before = last * (i - 1) / steps;
            double frame = last * i / steps;
            boolean isIn = room(at, frame) >= 0;
            if (isIn && Double.isNaN(from)) {
                from = edge(at, before, frame);
            } else if (!isIn && !Double.isNaN(from)) {
                best = longer(best, new Window(from, edge(at, frame, before)));
                from = Double.NaN;
            }
        }
        return Double.isNaN(from) ? best : longer(best, new Window(from, last));
    }

    private static Window longer(Window one, Window other) {
        return other.frames() > one.frames() ? other : one;
    }

    /// Where it comes within the angle, between a frame that is out and one that is in.
    private double edge(Paced at, double out, double in) {
        double low = out;
        double high = in;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (room(at, middle) >= 0) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return high;
    }

    /// The nearest to the lens that it comes, for a margin that knows which way to go where it never is within.
    private double nearest(Paced at) {
        double last = at.stage().frames();
        double best = Double.NEGATIVE_INFINITY;
        int steps = (int) Math.min(MOST_STEPS, 2 * at.stage().frames());
        for (int i = 0; i <= steps; i++) {
            best = Math.max(best, room(at, last * i / steps));
        }
        return best;
    }

    @Override
    public double[] parts(Paced at) {
        double frames = window(at).frames();
        return new double[] {frames > 0 ? frames - wantedFrames : nearest(at) - wantedFrames};
    }

    @Override
    public String standing(Paced at) {
        Window window = window(at);
        String within = "within " + Print.fineDegrees(withinRadians) + " of the lens";
        String wanted = "; " + Print.number(wantedFrames, 0) + " are wanted.";
        if (!(window.frames() > 0)) {
            return "The middle of " + subject.name() + "'s label is never " + within + ": it comes as near as "
                    + Print.fineDegrees(withinRadians - nearest(at)) + wanted;
        }
        double frames = window.frames();
        return "The middle of " + subject.name() + "'s label is " + within + " for "
                + Print.number(frames < 10 ? frames : Math.floor(frames + 1e-9), 1) + " frames on end, from frame "
                + Print.number(Math.ceil(window.from() - 1e-9) + 1, 0) + " on" + wanted;
    }

    @Override
    public Optional<String> findCaution(Paced at) {
        return at.stage().shot().placed().get(subject.index()).thing().label().isEmpty()
                ? Optional.of("No label is written with " + subject.name() + ": its front counts.")
                : Optional.empty();
    }
}
