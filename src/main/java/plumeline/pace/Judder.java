package plumeline.pace;

import java.util.List;
import java.util.Optional;
import plumeline.quantity.Print;
import plumeline.stage.Scene;

/// A thing goes little enough from one shown frame to the next for its way to look like one.
///
/// Margin in captured px, or in % of the picture's width, at a frame. What is shown at a frame is the captured frame
/// nearest to it, so a rate that doesn't fit goes by uneven steps and the longest counts.
///
/// @param subject the thing
/// @param shown which captured instant is shown at a frame
/// @param limit the limit
record Judder(Subject subject, Shown shown, Limit limit) implements PictureGauge {
    /// The limit and its unit.
    ///
    /// @param most the most, px or a share of the picture's width
    /// @param isShare whether it is a share
    /// @param isUsual whether it is the trade's own, as the plan doesn't say
    record Limit(double most, boolean isShare, boolean isUsual) {
        /// Seven seconds for the picture's width at 24 frames a second: common practice for pans.
        static final Limit USUAL = new Limit(1.0 / (7 * 24), true, true);
    }

    private static final double PERCENT = 100;

    @Override
    public String unit() {
        return limit.isShare() ? "%" : "px";
    }

    private double travelled(Paced at) {
        Scene from = at.laid().sceneAt(shown.seconds(at.now().frame()));
        Scene to = at.laid().sceneAt(shown.seconds(at.now().frame() + 1));
        double pixels = Shift.ofThing(from, to, subject.index());
        double wide = at.now().picture().widthMetres() / at.now().picture().pixelMetres();
        return limit.isShare() ? pixels / wide : pixels;
    }

    /// The last frame has no next.
    private boolean isLast(Paced at) {
        return at.now().frame() + 1 > at.stage().frames() - 1;
    }

    @Override
    public double[] parts(Paced at) {
        if (!Shift.isBefore(at.now(), subject.index())) {
            return new double[] {Subject.BEHIND};
        }
        double margin = limit.most() - (isLast(at) ? 0 : travelled(at));
        return new double[] {limit.isShare() ? PERCENT * margin : margin};
    }

    private String text(double travelled) {
        return limit.isShare()
                ? Print.number(PERCENT * travelled, 2) + " % of the picture's width"
                : Pixels.text(travelled);
    }

    @Override
    public String standing(Paced at) {
        String from = limit.isUsual() ? ", as usual: the picture's width in seven seconds at 24 frames a second" : "";
        return subject.name() + " goes " + text(isLast(at) ? 0 : travelled(at)) + " from one shown frame to the next; "
                + text(limit.most()) + " is allowed" + from + ".";
    }

    /// Slower on the screen is all that helps: longer there, or less far.
    @Override
    public List<String> listAttempts(Paced at) {
        double times = travelled(at) / limit.most();
        return times > 1 && !isLast(at)
                ? List.of("Give its way " + Print.number(Math.ceil(at.stage().frames() * times), 0)
                        + " frames of the film instead of " + at.stage().frames() + ", or let it go less far.")
                : List.of();
    }

    @Override
    public Optional<String> findCaution(Paced at) {
        return shown.isEvenAt(at.now().frame())
                ? Optional.empty()
                : Optional.of("There the playback takes no whole number of captured frames for each that is shown: one"
                        + " step is longer than another.");
    }
}
