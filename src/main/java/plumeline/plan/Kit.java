package plumeline.plan;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import plumeline.quantity.Quantity;

/// What the crew has to work with, each list in the order written.
///
/// @param bodies camera bodies
/// @param lenses lenses
/// @param lights lamps
/// @param machines sliders, heads, turntables
/// @param tanks tanks
/// @param inks inks
/// @param pieces falling or poured pieces
/// @param table the table, where written
public record Kit(
        List<CameraBody> bodies,
        List<Lens> lenses,
        List<Light> lights,
        List<Machine> machines,
        List<Tank> tanks,
        List<Ink> inks,
        List<Piece> pieces,
        Optional<Table> table) {

    /// Copies the lists.
    public Kit {
        bodies = List.copyOf(bodies);
        lenses = List.copyOf(lenses);
        lights = List.copyOf(lights);
        machines = List.copyOf(machines);
        tanks = List.copyOf(tanks);
        inks = List.copyOf(inks);
        pieces = List.copyOf(pieces);
    }

    /// A camera body.
    ///
    /// @param name its name
    /// @param sensorWidth the width of the part of the sensor that is used
    /// @param sensorHeight its height
    /// @param acrossPixels pixels across it
    /// @param modes its capture modes in the order written; may be empty
    /// @param written all keys as written, with `iso.base` and `iso.highest`
    public record CameraBody(
            String name,
            Quantity sensorWidth,
            Quantity sensorHeight,
            int acrossPixels,
            List<Mode> modes,
            Written written) {
        /// Copies the list.
        public CameraBody {
            modes = List.copyOf(modes);
        }
    }

    /// A capture mode of a camera body.
    ///
    /// @param rate its rate
    /// @param acrossPixels pixels across in this mode, where it differs
    /// @param width width of the part of the sensor that it uses, where that is less than the body's
    /// @param readout the time from the first row's reading to the last's
    /// @param bitRate what it records
    public record Mode(
            Quantity rate,
            OptionalLong acrossPixels,
            Optional<Quantity> width,
            Optional<Quantity> readout,
            Optional<Quantity> bitRate) {}

    /// A lens.
    ///
    /// @param name its name
    /// @param focalLength its focal length
    /// @param nearest its nearest focus, from the sensor mark as lens makers give it
    /// @param fNumbers the least and the greatest f-number
    /// @param pupilRatio exit over entrance pupil, where written
    /// @param barrel the barrel's size
    /// @param written all keys as written
    public record Lens(
            String name,
            Quantity focalLength,
            Optional<Quantity> nearest,
            Optional<FNumbers> fNumbers,
            OptionalDouble pupilRatio,
            Optional<Barrel> barrel,
            Written written) {
        /// Gives the pupil ratio, 1 where the plan doesn't say.
        ///
        /// @return exit over entrance pupil, dimensionless
        public double pupilRatioOrDefault() {
            return pupilRatio.orElse(1);
        }
    }

    /// The f-numbers that a lens has.
    ///
    /// @param least the widest aperture's, dimensionless
    /// @param greatest the smallest aperture's, dimensionless
    public record FNumbers(double least, double greatest) {}

    /// A lens's barrel, a cylinder round the axis.
    ///
    /// @param diameter its diameter
    /// @param length from the sensor mark's side to the front, as written
    public record Barrel(Quantity diameter, Quantity length) {}

    /// A lamp.
    ///
    /// @param name its name
    /// @param emitter what shines
    /// @param written all keys as written: `gives`, `white`, `primaries`, `power`, `pulse_rate`, `depth` …
    /// @param file what its photometric file holds, each byte as a character, where it names one that was handed in
    public record Light(String name, Emitter emitter, Written written, Optional<String> file) {
        /// Finds how its dimmer is set for a level, straight between what is written (`dims`).
        ///
        /// @param level the share of what it gives that is wanted, 0 to 1
        /// @return the least setting that gives it, share of one; empty where nothing is written or it gives
        /// that nowhere
        public Optional<Double> findDimmer(double level) {
            var dims = written.listPairs("dims");
            for (int i = 0; i < dims.size(); i++) {
                double gives = dims.get(i).getLast().si();
                double set = dims.get(i).getFirst().si();
                if (i == 0 && gives == level) return Optional.of(set);
                double below = i == 0 ? gives : dims.get(i - 1).getLast().si();
                if (below < level && gives >= level) {
                    double from = dims.get(i - 1).getFirst().si();
                    return Optional.of(from + (set - from) * (level - below) / (gives - below));
                }
            }
            return Optional.empty();
        }
    }

    /// What shines on a lamp.
    public sealed interface Emitter {
        /// An even rectangle.
        ///
        /// @param width its width
        /// @param height its height
        record Panel(Quantity width, Quantity height) implements Emitter {}

        /// A tube.
        ///
        /// @param length its length
        /// @param diameter its diameter
        record Tube(Quantity length, Quantity diameter) implements Emitter {}

        /// An even disc.
        ///
        /// @param diameter its diameter
        record Disc(Quantity diameter) implements Emitter {}

        /// A point, also where the plan gives no size.
        record Point() implements Emitter {}

        /// A card or a ceiling: its front throws back what others shine on it.
        ///
        /// @param width its width
        /// @param height its height
        record Card(Quantity width, Quantity height) implements Emitter {}

        /// A flag: it keeps light off, and shines with none.
        ///
        /// @param width its width
        /// @param height its height
        record Flag(Quantity width, Quantity height) implements Emitter {}

        /// Gives the word for it.
        ///
        /// @return `lamp`, `card` or `flag`
        default String word() {
            return switch (this) {
                case Card _ -> "card";
                case Flag _ -> "flag";
                default -> "lamp";
            };
        }

        /// Tells whether it has light of its own.
        ///
        /// @return false for a card and a flag
        default boolean isLamp() {
            return !(this instanceof Card || this instanceof Flag);
        }
    }

    /// A machine that moves something: along a line where its quantities are lengths, round an axis where angles.
    ///
    /// @param name its name
    /// @param way whether it goes along or round
    /// @param written all keys as written: `travel`, `speed`, `acceleration`, `jerk`, `repeats` …
    public record Machine(String name, Way way, Written written) {}

    /// How a machine moves.
    public enum Way {
        /// Along a line: mm, mm/s.
        ALONG,
        /// Round an axis: deg, deg/s, rpm.
        ROUND,
        /// The plan gives nothing that tells.
        UNTOLD
    }

    /// A tank.
    ///
    /// @param name its name
    /// @param inside width (x), depth (y) and height (z) of its inside
    /// @param pane the panes' thickness, the floor's too
    /// @param written all keys as written
    public record Tank(String name, Inside inside, Quantity pane, Written written) {}

    /// The inside of a tank.
    ///
    /// @param width along x
    /// @param depth along y
    /// @param height along z
    public record Inside(Quantity width, Quantity depth, Quantity height) {}

    /// An ink.
    ///
    /// @param name its name
    /// @param written all keys as written: `density`, `front`, `spread`, `strength` …
    public record Ink(String name, Written written) {}

    /// A falling or poured piece.
    ///
    /// @param name its name
    /// @param written all keys as written: `size`, `mass` or `density`, `shape`
    public record Piece(String name, Written written) {}

    /// The table.
    ///
    /// @param written all keys as written: `size`, `carries`
    public record Table(Written written) {}
}
