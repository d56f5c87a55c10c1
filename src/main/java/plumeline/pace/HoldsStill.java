package plumeline.pace;

import java.util.Optional;
import plumeline.plan.Placed;

/// A thing stays where it was in the picture when the shot began.
///
/// Margin in captured px of its middle's way from there, at an instant. What swings on a line or on a stand isn't
/// counted.
///
/// @param subject the thing
/// @param placed it as placed
/// @param isHung whether it hangs
/// @param mostPixels the limit, px
record HoldsStill(Subject subject, Placed placed, boolean isHung, double mostPixels) implements PictureGauge {
    @Override
    public String unit() {
        return "px";
    }

    private double pixels(Paced at) {
        return Shift.ofMiddle(at.laid().scene(0), at.now(), subject.index());
    }

    @Override
    public double[] parts(Paced at) {
        boolean isSeen = Shift.isBefore(at.now(), subject.index())
                && Shift.isBefore(at.laid().scene(0), subject.index());
        return new double[] {isSeen ? mostPixels - pixels(at) : Subject.BEHIND};
    }

    @Override
    public Optional<String> findUnknown(Paced at) {
        boolean isCarried = at.stage().shot().moves().stream()
                .anyMatch(move -> move.listCarried().stream()
                        .anyMatch(named -> named.name().equals(placed.name())));
        return isHung && isCarried
                ? Optional.of("Not computed: " + placed.name()
                        + " hangs and is carried by a move; how far it swings isn't. Shoot it and step through.")
                : subject.findUnknown(at);
    }

    @Override
    public String standing(Paced at) {
        return subject.name() + " is " + Pixels.text(pixels(at)) + " from where it was at the start; "
                + Pixels.text(mostPixels) + " is allowed.";
    }

    @Override
    public Optional<String> findCaution(Paced at) {
        return isHung
                ? Optional.of("It hangs: wait until it doesn't swing or turn any more, a minute or two; two lines stop"
                        + " it from turning.")
                : Optional.empty();
    }
}
