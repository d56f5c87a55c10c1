package plumeline.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plumeline.text.Place;

/// Where something stands or hangs, in the table's frame.
///
/// @param x to camera right
/// @param y away from the camera
/// @param z up; empty for a thing that stands on the table with two coordinates written
/// @param place where it is written
public record Spot(Mark x, Mark y, Optional<Mark> z, Place place) {
    /// Gives its marks in the order x, y, z.
    ///
    /// @return two or three marks
    public List<Mark> marks() {
        return Stream.concat(Stream.of(x, y), z.stream()).toList();
    }
}
