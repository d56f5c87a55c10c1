package plumeline.motion;

/// What a device moves along or round.
public enum Axis {
    /// Level, along a rail.
    SLIDE(Measure.LENGTH),
    /// Up and down.
    LIFT(Measure.LENGTH),
    /// Round an upright axis, a camera.
    PAN(Measure.ANGLE),
    /// Up and down about a level axis across the lens.
    TILT(Measure.ANGLE),
    /// About the lens's axis.
    ROLL(Measure.ANGLE),
    /// Round an upright axis, a thing.
    TURNTABLE(Measure.ANGLE),
    /// A lens's focus ring.
    FOCUS(Measure.ANGLE),
    /// A lens's zoom ring.
    ZOOM(Measure.ANGLE);

    /// What a way is told in.
    public enum Measure {
        /// Metres.
        LENGTH,
        /// Radians.
        ANGLE
    }

    private final Measure measure;

    Axis(Measure measure) {
        this.measure = measure;
    }

    /// Gives what its way is told in.
    ///
    /// @return length or angle
    public Measure measure() {
        return measure;
    }
}
