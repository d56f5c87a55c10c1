package plumeline.geom;

import java.util.List;
import java.util.function.Function;

/// What a lens point sees of bodies.
///
/// Every function here needs the bodies it looks at wholly in front of the lens point: ask [#leastDepthMetres] first; a body
/// that isn't is an `IllegalArgumentException`, never a `NaN`. Hiders that aren't wholly in front hide nothing.
public final class Sight {
    private Sight() {}

    /// Gives the least depth of any point of a body along the optical axis.
    ///
    /// @param projection the view
    /// @param body the body
    /// @return depth, metres; only a body with this over 0 can be looked at
    public static double leastDepthMetres(Projection projection, Body body) {
        throw new UnsupportedOperationException("being written");
    }

    /// Gives the edges of a body's outline.
    ///
    /// @param projection the view
    /// @param body the body, wholly in front
    /// @return the four edges
    public static Extent extent(Projection projection, Body body) {
        throw new UnsupportedOperationException("being written");
    }

    /// Gives a body's outline as convex parts, to be united.
    ///
    /// @param projection the view
    /// @param body the body, wholly in front
    /// @param steps corners round a whole ellipse, 8 or more
    /// @return one part a frustum, or one for a box
    public static List<Outline> outline(Projection projection, Body body, int steps) {
        throw new UnsupportedOperationException("being written");
    }

    /// Unites convex parts for drawing.
    ///
    /// @param parts the parts, of one body or several
    /// @return the connected parts of the union
    public static List<Face> united(List<Outline> parts) {
        throw new UnsupportedOperationException("being written");
    }

    /// Gives the lines that draw a body, split into seen and hidden runs.
    ///
    /// @param projection the view
    /// @param body the body, wholly in front
    /// @param others what may stand before it
    /// @param steps points round a whole rim, 8 or more
    /// @return the runs
    public static List<Edge> edges(Projection projection, Body body, List<Body> others, int steps) {
        throw new UnsupportedOperationException("being written");
    }

    /// Gives by how much a body is hidden behind others.
    ///
    /// @param projection the view
    /// @param hidden the body that shall be hidden, wholly in front
    /// @param hiders what may hide it
    /// @return signed margins in picture lengths; times the depth of the hidden body's axis they are lengths there
    public static Sides hidden(Projection projection, Body hidden, List<Body> hiders) {
        throw new UnsupportedOperationException("being written");
    }

    /// Gives the worst of [#hidden] over the entrance pupil.
    ///
    /// @param aim lens point and direction
    /// @param view the view from an aim, such as `Pinhole::new`
    /// @param hidden the body that shall be hidden
    /// @param hiders what may hide it
    /// @param pupilMetres diameter of the entrance pupil, metres, 0 or more
    /// @return side by side the worst margins
    public static Sides hiddenOverPupil(
            Aim aim, Function<Aim, Projection> view, Body hidden, List<Body> hiders, double pupilMetres) {
        throw new UnsupportedOperationException("being written");
    }

    /// Gives depths of a body along the optical axis.
    ///
    /// @param aim lens point and direction
    /// @param body the body, wholly in front
    /// @return nearest surface, deepest point of the outline, and middle
    public static Depths depths(Aim aim, Body body) {
        throw new UnsupportedOperationException("being written");
    }

    /// Gives the clear space between neighbours, sorted from left to right by the middles of their outlines.
    ///
    /// @param projection the view
    /// @param bodies the bodies, each wholly in front
    /// @return one gap between each two neighbours
    public static List<Gap> gaps(Projection projection, List<Body> bodies) {
        throw new UnsupportedOperationException("being written");
    }
}
