package plumeline.plan;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import plumeline.quantity.Quantity;

/// A move in a shot.
///
/// @param name its name in the shot
/// @param machine what makes it, where written
/// @param travel how far it goes; empty where the plan leaves it to be found (a pan that keeps things)
/// @param duration how long it takes on the table (`in`)
/// @param start when it starts: seconds on the table or screen frames; with the first frame where not written
/// @param profile how it speeds up, where written
/// @param kept the things that a pan keeps in the picture
/// @param written all keys as written, with `carries`
public record Move(
        String name,
        Optional<Kit.Machine> machine,
        Optional<Travel> travel,
        Optional<Quantity> duration,
        Optional<Quantity> start,
        Optional<Profile> profile,
        List<Named> kept,
        Written written) {

    /// Copies the list.
    public Move {
        kept = List.copyOf(kept);
    }

    /// How a move speeds up and slows down.
    public enum Profile {
        /// Constant speed.
        EVEN,
        /// Speed up, constant, slow down.
        TRAPEZOID,
        /// As a trapezoid, with limited jerk.
        S_CURVE,
        /// Least jerk.
        SMOOTH
    }

    /// How far a move goes.
    public sealed interface Travel {
        /// Gives its marks.
        ///
        /// @return one mark, or one a component
        List<Mark> marks();

        /// Round an axis.
        ///
        /// @param mark the mark `NAME.by`, clockwise seen from above
        record Round(Mark mark) implements Travel {
            @Override
            public List<Mark> marks() {
                return List.of(mark);
            }
        }

        /// Along a written direction: the mark is the length along it, signed.
        ///
        /// @param mark the mark `NAME.by`
        /// @param direction three components of a unit vector, dimensionless; along +x, +y or +z where only one
        ///     component isn't zero, so that the mark is that component
        record Along(Mark mark, List<Double> direction) implements Travel {
            /// Copies the list.
            public Along {
                direction = List.copyOf(direction);
            }

            @Override
            public List<Mark> marks() {
                return List.of(mark);
            }
        }

        /// By components, some of them free.
        ///
        /// @param components the marks `NAME.by_x`, `NAME.by_y` and, where written, `NAME.by_z`
        record Components(List<Mark> components) implements Travel {
            /// Copies the list.
            public Components {
                components = List.copyOf(components);
            }

            @Override
            public List<Mark> marks() {
                return components;
            }
        }

        /// Gives the way's vector for the marks' values.
        ///
        /// @param valueSi gives a mark's value in m
        /// @return x, y, z in m; all 0 for a move round an axis
        default double[] vectorMetres(ToDoubleFunction<Mark> valueSi) {
            var out = new double[3];
            switch (this) {
                case Round _ -> {}
                case Along along -> {
                    double length = valueSi.applyAsDouble(along.mark());
                    for (int i = 0; i < 3; i++)
                        out[i] = length * along.direction().get(i);
                }
                case Components parts -> {
                    for (int i = 0; i < parts.components().size(); i++) {
                        out[i] = valueSi.applyAsDouble(parts.components().get(i));
                    }
                }
            }
            return out;
        }
    }

    /// Gives what the move carries: names of placed things, of lamps, or `camera`.
    ///
    /// @return the names; empty where not written
    public List<Named> listCarried() {
        return written.listNames("carries");
    }

    /// Gives the marks of the move's way.
    ///
    /// @return none, one, or one a component
    public List<Mark> marks() {
        return travel.map(Travel::marks).orElse(List.of());
    }
}
