package plumeline.lit;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Hull;
import plumeline.geom.Vec;
import plumeline.light.Patch;
import plumeline.light.Tube;

/// Something that keeps light off.
///
/// @param thing its index among the scene's things, the lens by [Lighting#LENS], lamps by less
/// @param middle of a ball round it, m
/// @param ballMetres that ball's radius, m
/// @param parts its convex parts
record Hider(int thing, Vec middle, double ballMetres, List<Part> parts) {
    /// A convex part.
    ///
    /// @param named what it is part of
    /// @param hull its form
    /// @param middle of a ball round it, m
    /// @param reachMetres that ball's radius, m
    record Part(LightMemory.Part named, Hull hull, Vec middle, double reachMetres) {
        /// Whether any of it may be before a lamp.
        boolean isBefore(Shine shine) {
            return Hider.isBefore(shine, middle, reachMetres);
        }

        /// Whether any of it is over a surface; a convex body is under its own.
        boolean isOver(Patch patch) {
            Vec place = patch.place();
            Vec facing = patch.facing();
            double above = middle.minus(place).dot(facing);
            if (Math.abs(above) > reachMetres) {
                return above > 0;
            }
            double level = facing.dot(place);
            for (int i = 0; i < hull.one().size(); i++) {
                if (hull.one().get(i).dot(facing) > level || hull.other().get(i).dot(facing) > level) {
                    return true;
                }
            }
            return false;
        }
    }

    /// Whether any of it may be before a lamp.
    boolean isBefore(Shine shine) {
        return isBefore(shine, middle, ballMetres);
    }

    private static boolean isBefore(Shine shine, Vec middle, double ballMetres) {
        return !(shine instanceof Shine.Face(var emitter, var _, var _, var _))
                || emitter instanceof Tube
                || middle.minus(emitter.middle()).dot(emitter.facing()) > -ballMetres;
    }

    /// @param of a thing's body, a lens's barrel or a lamp's face
    static Hider of(int thing, Vec middle, double ballMetres, Record of, List<Hull> hulls) {
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < hulls.size(); i++) {
            Hull hull = hulls.get(i);
            parts.add(new Part(new LightMemory.Part(of, i), hull, hull.middle(), hull.reachMetres()));
        }
        return new Hider(thing, middle, ballMetres, List.copyOf(parts));
    }
}
