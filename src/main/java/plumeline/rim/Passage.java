package plumeline.rim;

import plumeline.geom.Vec;

/// What becomes of sight that meets round clear glass.
public sealed interface Passage {
    /// It comes out.
    ///
    /// @param place where it leaves the outer face, m
    /// @param direction where it goes from there, of length 1
    /// @param transmittance share of unpolarised light that comes this way, 0 to 1: luminance at the far end times
    /// this is what is seen, where it is the same medium on both sides
    /// @param way whether it went through what is inside
    /// @param faces how many faces it met behind the first
    record Out(Vec place, Vec direction, double transmittance, Way way, int faces) implements Passage {}

    /// It leaves where this law holds: through floor, mouth or surface of what is inside, where the form is no even
    /// cone any more, or it stays inside for long.
    record Lost() implements Passage {}

    /// Which way it took.
    enum Way {
        /// Through what is inside.
        BORE,
        /// Through the wall alone: past the room inside, or totally reflected at it.
        WALL
    }
}
