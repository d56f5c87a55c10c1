package plumeline.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Vec;
import plumeline.motion.FreeKeys;
import plumeline.motion.Limits;
import plumeline.motion.Profile;
import plumeline.motion.Run;
import plumeline.motion.SlopeRule;
import plumeline.motion.Travel;
import plumeline.plan.Mark;
import plumeline.plan.Move;
import plumeline.plan.Shot;
import plumeline.quantity.Kind;
import plumeline.quantity.Quantity;
import plumeline.time.Retime;
import plumeline.timeline.Framing;

/// The moves of a shot as numbers: what each carries, and how far it has got at a real time.
final class Motions {
    /// One move.
    ///
    /// @param axis what moves
    /// @param carried names of things and lamps it carries; empty for the camera
    /// @param way how far it goes in all
    /// @param startSeconds real seconds from the shot's first frame
    /// @param seconds how long it takes, real seconds
    /// @param profile how its speed runs
    /// @param limits the machine's
    /// @param keys where it is at which time after its start, as a share of its way; empty where it goes by its
    /// profile
    /// @param kept things that it keeps in the picture's middle, by index; empty where it goes a way of its own
    record Motion(
            Move.Axis axis,
            List<String> carried,
            Way way,
            double startSeconds,
            double seconds,
            Profile profile,
            Limits limits,
            List<FreeKeys.Key> keys,
            List<Integer> kept) {
        /// A move in less isn't one.
        private static final double LEAST_SECONDS = 1e-6;

        /// What has no time for its way is at once at its end.
        double shareAt(double realSeconds, double[] values) {
            Optional<Run> run = findRun(values);
            return run.isPresent()
                    ? run.get().at(realSeconds - startSeconds) / way.lengthIn(values)
                    : realSeconds > startSeconds ? 1 : 0;
        }

        /// Nothing where it goes no way of its own or has no time for it.
        Optional<Run> findRun(double[] values) {
            double length = way.lengthIn(values);
            if (!(length > 0) || seconds < LEAST_SECONDS) {
                return Optional.empty();
            }
            return Optional.of(keys.isEmpty() ? Travel.within(length, seconds, profile, limits) : keyed(length));
        }

        private Run keyed(double length) {
            List<FreeKeys.Key> places = keys.stream()
                    .map(key -> new FreeKeys.Key(key.seconds(), key.place() * length))
                    .toList();
            return new FreeKeys(places, SlopeRule.FRITSCH_BUTLAND, FreeKeys.Ends.AT_REST).toRun();
        }

        double endSeconds() {
            return startSeconds + seconds;
        }

        boolean carries(String name) {
            return carried.contains(name);
        }

        /// How far an axis has got that is said in one figure: radians, or metres of focus or zoom.
        double figureAt(double realSeconds, double[] values) {
            return way.figureIn(values) * shareAt(realSeconds, values);
        }

        boolean movesCamera() {
            return carried.isEmpty() || carried.contains("camera");
        }
    }

    /// How far a move goes in all.
    sealed interface Way {
        /// Along a line by components, metres.
        record Along(Slots.Slot x, Slots.Slot y, Slots.Slot z) implements Way {}

        /// Along a written direction by one mark, metres.
        record Directed(Slots.Slot length, Vec direction) implements Way {}

        /// Round an upright axis, clockwise seen from above, radians.
        record Round(Slots.Slot angle) implements Way {}

        /// A length of focus or zoom, metres.
        record Length(Slots.Slot length) implements Way {}

        /// It follows what it keeps.
        record Following() implements Way {}

        default double lengthIn(double[] values) {
            return switch (this) {
                case Round(Slots.Slot angle) -> Math.abs(angle.in(values));
                case Length(Slots.Slot length) -> Math.abs(length.in(values));
                case Following() -> 0;
                default -> vectorIn(values).lengthMetres();
            };
        }

        default Vec vectorIn(double[] values) {
            return switch (this) {
                case Along(Slots.Slot x, Slots.Slot y, Slots.Slot z) ->
                    new Vec(x.in(values), y.in(values), z.in(values));
                case Directed(Slots.Slot length, Vec direction) -> direction.times(length.in(values));
                case Round(Slots.Slot _), Length(Slots.Slot _) -> Vec.ZERO;
                case Following() -> Vec.ZERO;
            };
        }

        /// The way in one figure, signed: radians, or metres of focus or zoom; 0 for a way in space.
        default double figureIn(double[] values) {
            return switch (this) {
                case Round(Slots.Slot angle) -> angle.in(values);
                case Length(Slots.Slot length) -> length.in(values);
                default -> 0;
            };
        }
    }

    private Motions() {}

    static List<Motion> of(Shot shot, Slots slots, Retime retime) {
        List<Motion> motions = new ArrayList<>();
        for (Move move : shot.moves()) {
            List<Integer> kept = move.kept().stream()
                    .map(named -> indexOf(shot, named.name()))
                    .filter(index -> index >= 0)
                    .toList();
            motions.add(new Motion(
                    move.axis(),
                    move.listCarried().stream().map(named -> named.name()).toList(),
                    kept.isEmpty() ? way(move, slots) : new Way.Following(),
                    move.start().map(start -> seconds(start, retime)).orElse(0.0),
                    move.findTime().map(Quantity::si).orElse(Double.MIN_NORMAL),
                    move.profile().map(Framing::profile).orElse(Profile.EVEN),
                    MachineLimits.of(move.machine()),
                    move.listKeys().stream()
                            .map(key -> new FreeKeys.Key(
                                    key.getFirst().si(), key.getLast().si()))
                            .toList(),
                    kept));
        }
        return motions;
    }

    static int indexOf(Shot shot, String name) {
        for (int i = 0; i < shot.placed().size(); i++) {
            if (shot.placed().get(i).name().equals(name)) {
                return i;
            }
        }
        return -1;
    }

    /// Frames are screen time: on the table they pass as the shot is played.
    private static double seconds(Quantity start, Retime retime) {
        return start.kind() == Kind.FRAMES ? retime.realSeconds(start.si()) : start.si();
    }

    private static Way way(Move move, Slots slots) {
        if (move.travel().isEmpty()) {
            return new Way.Following();
        }
        return switch (move.travel().get()) {
            case Move.Travel.Round round -> new Way.Round(slots.of(round.mark()));
            case Move.Travel.Length length -> new Way.Length(slots.of(length.mark()));
            case Move.Travel.Along along -> {
                List<Double> direction = along.direction();
                yield new Way.Directed(
                        slots.of(along.mark()), new Vec(direction.get(0), direction.get(1), direction.get(2)));
            }
            case Move.Travel.Components parts -> {
                List<Mark> marks = parts.components();
                yield new Way.Along(
                        slots.of(marks.get(0)),
                        slots.of(marks.get(1)),
                        marks.size() > 2 ? slots.of(marks.get(2)) : Slots.ZERO);
            }
        };
    }
}
