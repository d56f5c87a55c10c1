package plumeline.ask.picture;

import java.util.List;
import plumeline.answer.Sensor;
import plumeline.quantity.PaperUnit;
import plumeline.search.Leeway;

/// Many things behind one, then all of them: the question `reveal` in plain SI numbers.
///
/// The table frame has its zero at the first thing's axis and y away from the camera's start; the lens point starts at
/// (0, −distance, height), level, facing +y, and slides along x. The picture's scale is that of a focus on the first
/// thing.
public final class Reveal {
    private Reveal() {}

    /// What is asked.
    ///
    /// @param sensor the part of the sensor that makes the picture
    /// @param focalLengthMetres focal length, metres, > 0
    /// @param camera where the camera starts
    /// @param things the things, front first, two or more
    /// @param slide how the camera moves
    /// @param wanted what must hold
    public record Inputs(
            Sensor sensor, double focalLengthMetres, Camera camera, List<Thing> things, Slide slide, Wanted wanted) {
        /// Checks that the lens can focus on the first thing.
        ///
        /// @throws IllegalArgumentException where it can't, or where there are fewer than two things
        public Inputs {
            things = List.copyOf(things);
            if (things.size() < 2) {
                throw new IllegalArgumentException("a reveal needs two things or more, given " + things.size());
            }
            double radiusMetres = things.getFirst().diameterMetres() / 2;
            if (!(camera.distanceMetres() > Math.max(focalLengthMetres, radiusMetres))) {
                throw new IllegalArgumentException(
                        "a lens of " + focalLengthMetres + " m can't see a thing at " + camera.distanceMetres() + " m");
            }
        }

        Inputs with(Camera other) {
            return new Inputs(sensor, focalLengthMetres, other, things, slide, wanted);
        }

        Inputs with(Slide other) {
            return new Inputs(sensor, focalLengthMetres, camera, things, other, wanted);
        }

        Inputs with(Wanted other) {
            return new Inputs(sensor, focalLengthMetres, camera, things, slide, other);
        }
    }

    /// Where the camera starts.
    ///
    /// @param distanceMetres from the lens point to the first thing's axis, metres
    /// @param heightMetres of the lens point over the table, metres
    public record Camera(double distanceMetres, double heightMetres) {}

    /// An upright cylinder on the table.
    ///
    /// @param name its name
    /// @param diameterMetres diameter, metres, > 0
    /// @param heightMetres height, metres, > 0
    public record Thing(String name, double diameterMetres, double heightMetres) {}

    /// How the camera moves.
    ///
    /// @param travelMetres along x, metres, signed: negative toward camera left
    /// @param keeps what the pan does
    public record Slide(double travelMetres, Keeps keeps) {}

    /// What a pan keeps in the middle.
    public enum Keeps {
        /// No pan: the camera keeps facing +y.
        HEADING,
        /// The first thing's axis is in the middle.
        FRONT,
        /// The outermost edges of all things are equally far from the middle.
        ALL
    }

    /// What must hold.
    ///
    /// @param gapShare clear space between neighbours at the end, share of the frame's width, ≥ 0
    /// @param hideByMetres how much each thing is hidden to spare at the start, metres at its axis's depth, ≥ 0
    public record Wanted(double gapShare, double hideByMetres) {}

    /// What was found.
    ///
    /// @param inputs what was asked
    /// @param places where each thing's axis stands, front first
    /// @param holds whether everything wanted holds
    /// @param together how many placing errors (2 mm each) everything may be off at once; 0 where something fails
    /// @param travelNeeded the least travel that still shows all with these places; `Ends(0)` where none does
    /// @param camera how far the camera may stand aside (start and end together) and from its height
    /// @param tight what may be off by less than its placing error of 2 mm, the least first; empty where something
    /// fails
    public record Found(
            Inputs inputs,
            List<Place> places,
            Holds holds,
            double together,
            Travel travelNeeded,
            CameraLeeway camera,
            List<Mark> tight) {
        /// Copies the lists.
        public Found {
            places = List.copyOf(places);
            tight = List.copyOf(tight);
        }
    }

    /// Something that is set by a tape.
    ///
    /// @param name such as `second.x` or `camera.height`
    /// @param leewayMetres how far it may be off by itself, metres
    public record Mark(String name, double leewayMetres) {}

    /// Whether everything wanted holds.
    public enum Holds {
        /// Everything does.
        ALL,
        /// Something fails.
        NOT_ALL
    }

    /// Where a thing stands and how far it may be off.
    ///
    /// @param xMetres x of its axis, metres
    /// @param yMetres y of its axis, metres
    /// @param aside leeway of x, metres
    /// @param along leeway of y, metres
    public record Place(double xMetres, double yMetres, Leeway aside, Leeway along) {}

    /// The least travel.
    public sealed interface Travel {
        /// This much.
        ///
        /// @param metres travel, metres, ≥ 0
        record Least(double metres) implements Travel {}

        /// No travel shows all with these places.
        record None() implements Travel {}
    }

    /// Leeway of the camera.
    ///
    /// @param aside of its x, start and end together, metres
    /// @param height of its height, metres
    public record CameraLeeway(Leeway aside, Leeway height) {}

    /// Answers; places are on whole millimetres.
    ///
    /// @param inputs what is asked
    /// @return what was found
    public static Found answer(Inputs inputs) {
        return found(inputs, RevealSolver.solve(inputs, PaperUnit.MILLIMETRES));
    }

    static Found found(Inputs inputs, double[] values) {
        return new RevealFinder(inputs, values).find();
    }
}
