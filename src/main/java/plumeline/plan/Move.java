package plumeline.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
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
/// @param written all keys as written, with `carries`, `axis`, `keys`
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

    /// What moves.
    public enum Axis {
        /// Along a line, level.
        SLIDE(Sort.WAY),
        /// Straight up or down.
        LIFT(Sort.WAY),
        /// The camera turns about an upright axis.
        PAN(Sort.ANGLE),
        /// The camera looks up or down.
        TILT(Sort.ANGLE),
        /// The camera turns about where it looks, clockwise seen from behind it.
        ROLL(Sort.ANGLE),
        /// Things or lamps turn about their own upright axes.
        TURNTABLE(Sort.ANGLE),
        /// The focus distance along the axis.
        FOCUS(Sort.LENGTH),
        /// The lens's focal length.
        ZOOM(Sort.LENGTH);

        private final Sort sort;

        /// What says how far an axis goes.
        public enum Sort {
            /// Two or three lengths.
            WAY,
            /// An angle.
            ANGLE,
            /// One length.
            LENGTH
        }

        Axis(Sort sort) {
            this.sort = sort;
        }

        /// Gives what says how far it goes.
        ///
        /// @return the sort
        public Sort sort() {
            return sort;
        }

        /// Gives its word in a plan.
        ///
        /// @return such as `pan`
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        /// Tells whether only a camera has it.
        ///
        /// @return true for pan, tilt, roll, focus and zoom
        public boolean isOfCamera() {
            return switch (this) {
                case PAN, TILT, ROLL, FOCUS, ZOOM -> true;
                case SLIDE, LIFT, TURNTABLE -> false;
            };
        }

        static String[] words() {
            return Arrays.stream(values()).map(Axis::word).toArray(String[]::new);
        }
    }

    /// Gives what moves: as written, else as its way and what it carries have it.
    ///
    /// @return the axis
    public Axis axis() {
        Optional<Axis> own = written.findWord("axis")
                .flatMap(word -> Arrays.stream(Axis.values())
                        .filter(axis -> axis.word().equals(word))
                        .findFirst());
        return own.orElseGet(() -> {
            if (travel.isEmpty()) {
                return Axis.PAN;
            }
            List<Named> carried = listCarried();
            boolean isCamera = carried.isEmpty()
                    || carried.stream().anyMatch(named -> named.name().equals("camera"));
            return switch (travel.get()) {
                case Travel.Round _ -> isCamera ? Axis.PAN : Axis.TURNTABLE;
                case Travel.Length _ -> Axis.FOCUS;
                case Travel.Along along -> Math.abs(along.direction().get(2)) == 1 ? Axis.LIFT : Axis.SLIDE;
                case Travel.Components _ -> Axis.SLIDE;
            };
        });
    }

    /// Lists where it is at which time.
    ///
    /// @return pairs of seconds after its start and share of its way; empty where it goes by a profile
    public List<List<Quantity>> listKeys() {
        return written.listPairs("keys");
    }

    /// Gives how long it takes on the table, by its keys where it has them.
    ///
    /// @return the time where written
    public Optional<Quantity> findTime() {
        List<List<Quantity>> keys = listKeys();
        return keys.isEmpty() ? duration : Optional.of(keys.getLast().getFirst());
    }

    /// Tells whether it goes at one speed throughout.
    ///
    /// @return true where neither a profile nor keys are written, too
    public boolean isEven() {
        return listKeys().isEmpty() && profile.orElse(Profile.EVEN) == Profile.EVEN;
    }

    /// Tells whether camera and machine start together: as the move says, else as the machine does.
    ///
    /// @return false where neither says so
    public boolean isTriggered() {
        return written.has("triggered")
                ? written.says("triggered")
                : machine.filter(one -> one.written().says("triggered")).isPresent();
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
        SMOOTH;

        /// Gives its word in a plan.
        ///
        /// @return such as `s-curve`
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        static String[] words() {
            return Arrays.stream(values()).map(Profile::word).toArray(String[]::new);
        }

        static Profile of(String word) {
            return Arrays.stream(values())
                    .filter(profile -> profile.word().equals(word))
                    .findFirst()
                    .orElseThrow();
        }
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

        /// A length that is no way in space: of focus, or of the focal length.
        ///
        /// @param mark the mark `NAME.by`
        record Length(Mark mark) implements Travel {
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
        /// @return x, y, z in m; all 0 for a move round an axis, of focus or of zoom
        default double[] vectorMetres(ToDoubleFunction<Mark> valueSi) {
            var out = new double[3];
            switch (this) {
                case Round _, Length _ -> {}
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
