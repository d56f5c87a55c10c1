package plumeline.plume;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/// What several runs of a shot's ink say: how far its front is, and when each height of each thing is veiled.
///
/// @param head what it is of
/// @param subjects the things that were looked at
/// @param runs the runs, in the order of their numbers, at least one
public record InkRecord(Head head, List<Subject> subjects, List<Run> runs) {
    /// A height is veiled where less than this of the light is left.
    public static final double VEILED = 0.5;

    /// Ink is before a thing where at one of its heights less than this of the light is left.
    public static final double INKED = 0.95;

    /// Copies the lists.
    public InkRecord {
        subjects = List.copyOf(subjects);
        runs = List.copyOf(runs);
        if (runs.isEmpty()) {
            throw new IllegalArgumentException("a record needs a run");
        }
    }

    /// What a record is of.
    ///
    /// @param shot the shot's name
    /// @param flow the key of what decides the flow
    /// @param view the key of what decides the look
    /// @param course how finely and how long the ink was followed
    /// @param strength how dark the ink is
    /// @param levels how high floor, mouth and water line are
    /// @param framesPerSecond how many frames a second were kept, 1/s
    public record Head(
            String shot,
            InkKey flow,
            InkKey view,
            InkCourse course,
            Strength strength,
            Levels levels,
            double framesPerSecond) {
        /// What a shot's record is of.
        ///
        /// @param shot its ink and water
        /// @param course how finely and how long the ink is followed
        /// @param viewing the look from its camera
        /// @return the head
        public static Head of(InkShot shot, InkCourse course, Viewing viewing) {
            double floor = shot.waters().box().low().z();
            return new Head(
                    shot.shot(),
                    InkKey.ofFlow(shot),
                    viewing.key(),
                    course,
                    viewing.strength(),
                    new Levels(
                            floor,
                            shot.waters().depthMetres(),
                            shot.waters().box().high().z() - shot.pour().mouth().z()),
                    shot.timing().framesPerSecond());
        }
    }

    /// How high things are.
    ///
    /// @param floorMetres the tank's floor, over the table, metres
    /// @param depthMetres the water's depth, metres
    /// @param mouthMetres how far the nozzle's mouth is below the water line, metres, ≥ 0
    public record Levels(double floorMetres, double depthMetres, double mouthMetres) {}

    /// One run, frame by frame.
    public static final class Run {
        private final int number;
        private final float[] low;
        private final float[] halfWidth;
        private final List<float[]> clear;

        /// @param low the front's height over the floor, metres, NaN while there is no ink; one a frame
        /// @param halfWidth half its width, metres, likewise
        /// @param clear for each subject: share of the light left, one a height a frame, heights running
        /// fastest
        Run(int number, float[] low, float[] halfWidth, List<float[]> clear) {
            this.number = number;
            this.low = low;
            this.halfWidth = halfWidth;
            this.clear = clear;
        }

        /// Its number.
        ///
        /// @return from 1
        public int number() {
            return number;
        }

        /// How many frames it has.
        ///
        /// @return frames
        public int frames() {
            return low.length;
        }

        /// How high the front's lowest edge is.
        ///
        /// @param frame the frame
        /// @return metres over the floor; empty where no ink is seen
        public OptionalDouble lowMetres(int frame) {
            return Float.isNaN(low[frame]) ? OptionalDouble.empty() : OptionalDouble.of(low[frame]);
        }

        /// Half of how wide the ink is.
        ///
        /// @param frame the frame
        /// @return metres; empty where no ink is seen
        public OptionalDouble halfWidthMetres(int frame) {
            return Float.isNaN(halfWidth[frame]) ? OptionalDouble.empty() : OptionalDouble.of(halfWidth[frame]);
        }

        /// How much of the light is left before a height of a thing, on the mean over its width.
        ///
        /// @param subject the thing's index
        /// @param height the height's index
        /// @param frame the frame
        /// @return share, 0 to 1
        public double clearShare(int subject, int height, int frame) {
            float[] all = clear.get(subject);
            return all[frame * (all.length / low.length) + height];
        }

        List<float[]> series() {
            List<float[]> all = new ArrayList<>(List.of(low, halfWidth));
            all.addAll(clear);
            return all;
        }
    }

    /// Whether it is of a shot whose tank, ink, nozzle and things in the water are as they were: its fronts hold.
    ///
    /// @param shot the shot's ink and water as it stands
    /// @return whether it is
    public boolean isOf(InkShot shot) {
        return head.flow().equals(InkKey.ofFlow(shot));
    }

    /// Whether the shot is also seen as it was: what is veiled when holds too.
    ///
    /// @param viewing the look as it stands
    /// @return whether it is
    public boolean isSeenBy(Viewing viewing) {
        return head.view().equals(viewing.key());
    }

    /// Finds a thing.
    ///
    /// @param thing its name in the shot
    /// @return the thing where it is in the water
    public Optional<Subject> findSubject(String thing) {
        return subjects.stream().filter(each -> each.thing().equals(thing)).findFirst();
    }

    /// When the front is at a height; no front that goes down comes to what the nozzle's mouth is under.
    ///
    /// @param zMetres the height over the table, metres
    /// @param mouthMetres how high the mouth is, metres
    /// @return the times from the release's start; empty for heights over the mouth
    public Optional<Times> findReaches(double zMetres, double mouthMetres) {
        return zMetres < mouthMetres ? Optional.of(reaches(zMetres)) : Optional.empty();
    }

    /// When the front is at a height.
    ///
    /// @param zMetres the height over the table, metres
    /// @return the times from the release's start
    public Times reaches(double zMetres) {
        double height = zMetres - head.levels().floorMetres();
        return times(run -> {
            double before = head.levels().depthMetres();
            for (int n = 0; n < run.frames(); n++) {
                double now = run.lowMetres(n).orElse(before);
                if (now <= height && run.lowMetres(n).isPresent()) {
                    double part = before > now ? Math.clamp((before - height) / (before - now), 0, 1) : 1;
                    return OptionalDouble.of(Math.max(0, n - 1 + part) / head.framesPerSecond());
                }
                before = now;
            }
            return OptionalDouble.empty();
        });
    }

    /// When the front is on the floor: within half a cell of it.
    ///
    /// @return the times from the release's start
    public Times reachesFloor() {
        return reaches(head.levels().floorMetres() + head.course().cellMetres() / 2);
    }

    /// When a height of a thing is first veiled.
    ///
    /// @param subject the thing
    /// @param height the index of one of its heights
    /// @return the times from the release's start
    public Times veiled(Subject subject, int height) {
        return firstBelow(subject, height, VEILED);
    }

    /// When all of a thing has been veiled, each height at some time.
    ///
    /// @param subject the thing
    /// @return the times from the release's start
    public Times veiledAll(Subject subject) {
        return overHeights(subject, VEILED, Math::max, true);
    }

    /// When ink first is before any height of a thing.
    ///
    /// @param subject the thing
    /// @return the times from the release's start
    public Times inked(Subject subject) {
        return overHeights(subject, INKED, Math::min, false);
    }

    private Times firstBelow(Subject subject, int height, double share) {
        int index = subjects.indexOf(subject);
        return times(run -> firstBelow(run, index, height, share));
    }

    private Times overHeights(
            Subject subject, double share, java.util.function.DoubleBinaryOperator join, boolean needsAll) {
        int index = subjects.indexOf(subject);
        return times(run -> {
            OptionalDouble joined = OptionalDouble.empty();
            for (int h = 0; h < subject.heights().size(); h++) {
                OptionalDouble first = firstBelow(run, index, h, share);
                if (first.isEmpty() && needsAll) {
                    return first;
                }
                if (first.isPresent()) {
                    double other = joined.orElse(first.getAsDouble());
                    joined = OptionalDouble.of(join.applyAsDouble(first.getAsDouble(), other));
                }
            }
            return joined;
        });
    }

    private OptionalDouble firstBelow(Run run, int subject, int height, double share) {
        for (int n = 0; n < run.frames(); n++) {
            if (run.clearShare(subject, height, n) < share) {
                return OptionalDouble.of(n / head.framesPerSecond());
            }
        }
        return OptionalDouble.empty();
    }

    private interface When {
        OptionalDouble in(Run run);
    }

    private Times times(When when) {
        List<Double> seconds = new ArrayList<>();
        for (Run run : runs) {
            when.in(run).ifPresent(seconds::add);
        }
        return new Times(seconds, runs.size(), (shortestFrames() - 1) / head.framesPerSecond());
    }

    /// How many frames the shortest run has.
    ///
    /// @return frames
    public int shortestFrames() {
        return runs.stream().mapToInt(Run::frames).min().orElseThrow();
    }

    /// How many frames the longest run has.
    ///
    /// @return frames
    public int longestFrames() {
        return runs.stream().mapToInt(Run::frames).max().orElseThrow();
    }

    /// How deep the front is below the surface.
    ///
    /// @param frame the frame, one that all runs have
    /// @return the depths of those runs in which ink is seen
    public Lengths depth(int frame) {
        List<Double> depths = new ArrayList<>();
        for (Run run : runs) {
            run.lowMetres(frame).ifPresent(low -> depths.add(head.levels().depthMetres() - low));
        }
        return new Lengths(depths, head.levels().mouthMetres(), head.levels().depthMetres());
    }

    /// Half of how wide the ink is.
    ///
    /// @param frame the frame, one that all runs have
    /// @return the half-widths of those runs in which ink is seen
    public Lengths halfWidth(int frame) {
        List<Double> widths = new ArrayList<>();
        for (Run run : runs) {
            run.halfWidthMetres(frame).ifPresent(widths::add);
        }
        return new Lengths(widths, 0, Double.MAX_VALUE);
    }
}
