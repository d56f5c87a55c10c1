package plumeline.ask.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.LongFunction;
import java.util.function.LongPredicate;
import plumeline.answer.Words;
import plumeline.quantity.Print;

/// What to try where a reveal fails: the nearest change of one thing that makes everything hold, on whole steps of a
/// tape, and the nearest at which nothing is tight. Each is solved anew with exactly the figure that is said.
final class RevealTries {
    private static final double GAP_STEP = 0.005;

    /// Strides out are this much longer each, and no longer than this share of the most allowed.
    private static final double LONGER = 1.25;
    private static final double LONGEST = 1.0 / 48;

    /// How many steps past the place that closed forms give are looked at until a search finds it too.
    private static final int[] LOOKED_PAST = {1, 2, 4, 8, 16};

    /// Who is told to stand back so far has another shot.
    private static final double FARTHEST = 3;

    private final Reveal.Inputs inputs;
    private final Words words;
    private final List<String> attempts = new ArrayList<>();

    RevealTries(Reveal.Inputs inputs, Words words) {
        this.inputs = inputs;
        this.words = words;
    }

    /// What of the wants fails with the places found; it decides what is worth trying.
    ///
    /// @param start whether the first thing is cut by the frame at the start, which no slide, gap or place mends
    /// @param end whether something is cut by the frame at the end
    record Failing(boolean start, boolean end) {}

    List<String> list(Failing failing) {
        if (!failing.start()) {
            trySlide(failing.end());
            tryLess();
        }
        tryHeight();
        if (failing.start() || failing.end()) {
            tryFrame();
        }
        if (attempts.isEmpty()) {
            attempts.add("No single change of slide, gap, height or distance was found to be enough: change several, or"
                    + " reveal fewer things.");
        }
        return attempts;
    }

    private void trySlide(boolean shorter) {
        double travel = Math.abs(inputs.slide().travelMetres());
        Walk further = walk(travel, FARTHEST * (travel + inputs.camera().distanceMetres()), this::slid);
        say(further, found -> "Slide " + words.length(found - travel) + " further: " + words.tape(found) + " in all");
        if (shorter) {
            Walk less = walk(travel, words.stepMetres(), this::slid);
            say(less, found -> "Slide " + words.length(travel - found) + " less: " + words.tape(found) + " in all");
        }
    }

    private void tryLess() {
        long asked = (long) Math.ceil(inputs.wanted().gapShare() / GAP_STEP - 1e-9);
        String instead = " instead of " + Print.share(inputs.wanted().gapShare(), 1);
        Walk smaller = new Walk(asked, count -> gap((asked - count) * GAP_STEP));
        OptionalLong least = smaller.findLeast();
        if (least.isPresent()) {
            String share = Print.share((asked - least.getAsLong()) * GAP_STEP, 1);
            OptionalLong roomy = smaller.findRoomy(least.getAsLong());
            attempts.add("Ask for a gap of " + share + instead
                    + ending(least, roomy, count -> Print.share((asked - count) * GAP_STEP, 1)));
        }
        double hideBy = inputs.wanted().hideByMetres();
        if (hideBy > 0 && holds(inputs.with(new Reveal.Wanted(inputs.wanted().gapShare(), 0)))) {
            attempts.add("Hide by nothing to spare instead of " + words.length(hideBy) + ".");
        }
    }

    /// Lower or higher, whichever is nearer.
    private void tryHeight() {
        double height = inputs.camera().heightMetres();
        Walk down = walk(height, 0, this::lensAt);
        Walk up = walk(height, height + inputs.camera().distanceMetres() / 2, this::lensAt);
        OptionalLong lower = down.findLeast();
        OptionalLong higher = up.findLeast();
        if (lower.isPresent() && (higher.isEmpty() || lower.getAsLong() <= higher.getAsLong())) {
            say(down, found -> "Lower the lens by " + words.length(height - found) + " to " + words.tape(found));
        } else {
            say(up, found -> "Raise the lens by " + words.length(found - height) + " to " + words.tape(found));
        }
    }

    private void tryFrame() {
        double distance = inputs.camera().distanceMetres();
        Walk back = walk(distance, FARTHEST * Math.max(distance, fittingMetres()), this::standingAt);
        say(back, found -> "Start " + words.length(found - distance) + " farther back, at " + words.tape(found));
        Reveal.Slide panned = new Reveal.Slide(inputs.slide().travelMetres(), Reveal.Keeps.ALL);
        if (inputs.slide().keeps() != Reveal.Keeps.ALL && holds(inputs.with(panned))) {
            attempts.add("Pan to keep all in the frame (keeps: all).");
        }
    }

    /// Where the first thing just fits the frame, by its middle plane.
    private double fittingMetres() {
        Reveal.Thing first = inputs.things().getFirst();
        double across = first.diameterMetres() / inputs.sensor().widthMetres();
        double upright = first.heightMetres() / inputs.sensor().heightMetres();
        return inputs.focalLengthMetres() * (1 + Math.max(across, upright));
    }

    private Reveal.Inputs slid(double travelMetres) {
        double signed = Math.copySign(travelMetres, inputs.slide().travelMetres());
        return inputs.with(new Reveal.Slide(signed, inputs.slide().keeps()));
    }

    private Reveal.Inputs lensAt(double heightMetres) {
        return inputs.with(new Reveal.Camera(inputs.camera().distanceMetres(), heightMetres));
    }

    private Reveal.Inputs standingAt(double distanceMetres) {
        return inputs.with(new Reveal.Camera(distanceMetres, inputs.camera().heightMetres()));
    }

    private Reveal.Inputs gap(double share) {
        return inputs.with(new Reveal.Wanted(share, inputs.wanted().hideByMetres()));
    }

    private interface Change {
        Reveal.Inputs to(double total);
    }

    private interface Sentence {
        String of(double total);
    }

    /// Whole steps of the tape from one value towards another.
    private Walk walk(double from, double most, Change change) {
        double step = words.stepMetres();
        int way = most < from ? -1 : 1;
        long start = way < 0 ? (long) Math.ceil(from / step - 1e-6) : (long) Math.floor(from / step + 1e-6);
        long room = (long) Math.floor(Math.abs(most / step - start) + 1e-6);
        return new Walk(room, count -> change.to((start + way * count) * step), start, way);
    }

    private void say(Walk walk, Sentence sentence) {
        OptionalLong least = walk.findLeast();
        if (least.isPresent()) {
            OptionalLong roomy = walk.findRoomy(least.getAsLong());
            attempts.add(sentence.of(walk.metres(least.getAsLong()))
                    + ending(least, roomy, count -> words.tape(walk.metres(count))));
        }
    }

    private static String ending(OptionalLong least, OptionalLong roomy, LongFunction<String> text) {
        if (roomy.isEmpty()) {
            return ", just enough: tight.";
        }
        return roomy.equals(least)
                ? "."
                : ", just enough: tight; at " + text.apply(roomy.getAsLong()) + " nothing is tight.";
    }

    private boolean holds(Reveal.Inputs other) {
        return RevealSolver.findQuickly(other, words.unit()).isPresent();
    }

    private boolean isRoomy(Reveal.Inputs other) {
        return RevealSolver.findQuickly(other, words.unit())
                .filter(places -> Reveal.found(other, places).tight().isEmpty())
                .isPresent();
    }

    /// A change by ever more steps.
    private final class Walk {
        private final long room;
        private final LongFunction<Reveal.Inputs> change;
        private final long start;
        private final int way;
        private List<OptionalLong> known = List.of();

        Walk(long room, LongFunction<Reveal.Inputs> change) {
            this(room, change, 0, 1);
        }

        Walk(long room, LongFunction<Reveal.Inputs> change, long start, int way) {
            this.room = room;
            this.change = change;
            this.start = start;
            this.way = way;
        }

        double metres(long count) {
            return (start + way * count) * words.stepMetres();
        }

        /// The least count at which asking again holds.
        OptionalLong findLeast() {
            if (known.isEmpty()) {
                OptionalLong near = findFirst(1, count -> canBear(count, 0), count -> holds(change.apply(count)));
                known = List.of(near.isPresent() ? nearer(near.getAsLong()) : near);
            }
            return known.getFirst();
        }

        /// The least count from one on at which asking again holds and nothing is tight.
        OptionalLong findRoomy(long from) {
            if (isRoomy(change.apply(from))) {
                return OptionalLong.of(from);
            }
            return findFirst(from + 1, count -> canBear(count, 1), count -> isRoomy(change.apply(count)));
        }

        private boolean canBear(long count, double errors) {
            return RevealSolver.canBear(change.apply(count), errors);
        }

        /// By growing strides and halving where closed forms tell, then proven by asking anew.
        private OptionalLong findFirst(long from, LongPredicate quick, LongPredicate anew) {
            long bad = from - 1;
            long good = -1;
            while (good < 0 && bad < room) {
                double stride = Math.min((bad - from + 2) * (LONGER - 1), room * LONGEST);
                long tried = Math.min(room, bad + Math.max(1, (long) stride));
                if (quick.test(tried)) {
                    good = tried;
                } else {
                    bad = tried;
                }
            }
            if (good < 0) {
                return OptionalLong.empty();
            }
            while (good - bad > 1) {
                long middle = (good + bad) / 2;
                if (quick.test(middle)) {
                    good = middle;
                } else {
                    bad = middle;
                }
            }
            return proven(good, anew);
        }

        /// Whole steps may allow a little less than closed forms.
        private OptionalLong proven(long near, LongPredicate anew) {
            if (anew.test(near)) {
                return OptionalLong.of(near);
            }
            for (int past : LOOKED_PAST) {
                if (near + past <= room && anew.test(near + past)) {
                    return OptionalLong.of(near + past);
                }
            }
            return OptionalLong.empty();
        }

        /// A search may find a little more than closed forms: by doubled steps back, then by halved ones.
        private OptionalLong nearer(long good) {
            long least = good;
            long back = 1;
            while (least - back >= 1 && holds(change.apply(least - back))) {
                least -= back;
                back *= 2;
            }
            for (back /= 2; back >= 1; back /= 2) {
                if (least - back >= 1 && holds(change.apply(least - back))) {
                    least -= back;
                }
            }
            return OptionalLong.of(least);
        }
    }
}
