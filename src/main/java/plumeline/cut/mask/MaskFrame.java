package plumeline.cut.mask;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.geom.Point;
import plumeline.geom.Vec;
import plumeline.stage.PlaceSight;
import plumeline.stage.Sightlines;

/// The mask of one captured frame.
///
/// @param captured the captured frame, 0 at GO
/// @param parts straight parts of strands in the picture, or just beyond its sides
/// @param gaps stretches that aren't computed
/// @param patches what is painted out, strand by strand
public record MaskFrame(long captured, List<Part> parts, List<Gap> gaps, List<Patches> patches) {
    /// Copies the lists.
    public MaskFrame {
        parts = List.copyOf(parts);
        gaps = List.copyOf(gaps);
        patches = List.copyOf(patches);
    }

    /// An end of a part.
    ///
    /// @param place where it is as the exposure begins, metres
    /// @param opens where it shows then, px from the picture's upper left corner
    /// @param closes where the same place of the strand shows as the exposure ends, if that is computed, px
    /// @param slipPixels how far that place goes in the time by which camera and moves may be apart, px
    /// @param margins how wide the mask is there
    public record End(Vec place, Point opens, Optional<Point> closes, double slipPixels, Margins margins) {
        /// Gives how far that place goes while the shutter is open.
        ///
        /// @return px; empty where it isn't seen so then
        public OptionalDouble smearPixels() {
            return closes.stream()
                    .mapToDouble(point -> Math.hypot(point.x() - opens.x(), point.y() - opens.y()))
                    .findFirst();
        }
    }

    /// A part of a strand that shows straight to 0.02 px.
    ///
    /// @param strand the strand's name
    /// @param stretch which stretch of it, from 1: one ends where the way of sight or the picture does
    /// @param way how it is seen
    /// @param from its end toward the thing
    /// @param to its other end
    public record Part(String strand, int stretch, PlaceSight.Way way, End from, End to) {}

    /// A stretch that isn't computed.
    ///
    /// @param strand the strand's name
    /// @param from its end toward the thing, metres
    /// @param to its other end, metres
    /// @param trouble what is in the way
    /// @param about where its ends would show if nothing were in the way, px; none where that is behind the lens
    public record Gap(String strand, Vec from, Vec to, Sightlines.Trouble trouble, List<Point> about) {
        /// Copies the list.
        public Gap {
            about = List.copyOf(about);
        }

        /// Tells whether it may be in the picture.
        ///
        /// @param size the clip's size
        /// @return false where both ends would show beyond the same side
        public boolean mayShow(ClipSize size) {
            return about.size() == 2
                    && about.stream().anyMatch(point -> point.x() > 0)
                    && about.stream().anyMatch(point -> point.x() < size.acrossPixels())
                    && about.stream().anyMatch(point -> point.y() > 0)
                    && about.stream().anyMatch(point -> point.y() < size.downPixels());
        }
    }

    /// What is painted out of one strand.
    ///
    /// @param strand its name
    /// @param corners convex patches, corner by corner, px; what is in any of them is painted out
    public record Patches(String strand, List<List<Point>> corners) {
        /// Copies the lists.
        public Patches {
            corners = corners.stream().map(List::copyOf).toList();
        }
    }
}
