package plumeline.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import plumeline.quantity.Print;

/// What to try where a reveal fails: the nearest change of one thing that makes everything hold, each solved anew with
/// exactly the figure that is said, on whole steps of a tape.
final class RevealTries {
    private static final double GAP_STEP = 0.005;

    /// Strides out, in 128ths of the most allowed: doubling at first, later no longer than an eighth.
    private static final int[] STRIDES = {1, 2, 4, 8, 16, 24, 32, 48, 64, 80, 96, 112, 128};

    /// How many steps past the nearest place that holds are looked at until a search from nothing finds it too.
    private static final int LOOKED_PAST = 6;

    /// Who is told to stand back so far has another shot.
    private static final double FARTHEST = 3;

    private final Reveal.Inputs inputs;
    private final double[] others;
    private final Words words;
    private final List<String> attempts = new ArrayList<>();

    RevealTries(Reveal.Inputs inputs, double[] others, Words words) {
        this.inputs = inputs;
        this.others = others.clone();
        this.words = words;
    }

    /// What of the wants fails with the places found; it decides what is worth trying.
    ///
    /// @param upright whether something shows over or under what it should
    /// @param start whether the first thing is cut by the frame at the start, which no slide, gap or place mends
    /// @param end whether something is cut by the frame at the end
    record Failing(boolean upright, boolean start, boolean end) {}

    List<String> list(Failing failing) {
        if (!failing.start()) {
            trySlide(failing.end());
            tryLess();
        }
        if (failing.upright()) {
            tryHeight();
        }
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
        double most = FARTHEST * (travel + inputs.camera().distanceMetres());
        findNearest(travel, most, this::slid)
                .ifPresent(metres -> attempts.add(
                        "Slide " + words.length(metres - travel) + " further: " + words.tape(metres) + " in all."));
        if (shorter) {
            findNearest(travel, words.stepMetres(), this::slid)
                    .ifPresent(metres -> attempts.add(
                            "Slide " + words.length(travel - metres) + " less: " + words.tape(metres) + " in all."));
        }
    }

    private void tryLess() {
        findGap()
                .ifPresent(gap -> attempts.add("Ask for a gap of " + Print.share(gap, 1) + " instead of "
                        + Print.share(inputs.wanted().gapShare(), 1) + "."));
        double hideBy = inputs.wanted().hideByMetres();
        if (hideBy > 0
                && holdsAnew(inputs.with(new Reveal.Wanted(inputs.wanted().gapShare(), 0)))) {
            attempts.add("Hide by nothing to spare instead of " + words.length(hideBy) + ".");
        }
    }

    private void tryHeight() {
        double height = inputs.camera().heightMetres();
        OptionalDouble lower = findNearest(height, 0, this::lensAt);
        if (lower.isPresent()) {
            double metres = lower.getAsDouble();
            attempts.add("Lower the lens by " + words.length(height - metres) + " to " + words.tape(metres) + ".");
            return;
        }
        double most = height + inputs.camera().distanceMetres() / 2;
        findNearest(height, most, this::lensAt)
                .ifPresent(metres -> attempts.add(
                        "Raise the lens by " + words.length(metres - height) + " to " + words.tape(metres) + "."));
    }

    private void tryFrame() {
        double distance = inputs.camera().distanceMetres();
        findNearest(distance, FARTHEST * Math.max(distance, fittingMetres()), this::standingAt)
                .ifPresent(metres -> attempts.add(
                        "Start " + words.length(metres - distance) + " farther back, at " + words.tape(metres) + "."));
        Reveal.Slide panned = new Reveal.Slide(inputs.slide().travelMetres(), Reveal.Keeps.ALL);
        if (inputs.slide().keeps() != Reveal.Keeps.ALL && holdsAnew(inputs.with(panned))) {
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

    /// Whether it could hold so; asking again tells whether a search on whole steps finds it too.
    private boolean holds(Reveal.Inputs other) {
        return RevealSolver.holds(other, others) || RevealSolver.canHold(other);
    }

    /// Whether asking again so would hold.
    private boolean holdsAnew(Reveal.Inputs other) {
        return RevealSolver.holds(other, RevealSolver.solve(other, words.unit()));
    }

    private interface Change {
        Reveal.Inputs to(double total);
    }

    private interface Trial {
        boolean works(long steps);
    }

    /// The nearest whole step of the tape, from one value towards another, at which everything holds.
    private OptionalDouble findNearest(double from, double most, Change change) {
        double step = words.stepMetres();
        int way = most < from ? -1 : 1;
        long start = way < 0 ? (long) Math.ceil(from / step - 1e-6) : (long) Math.floor(from / step + 1e-6);
        long room = (long) Math.floor(Math.abs(most / step - start) + 1e-6);
        OptionalLong steps = findFirst(
                room,
                count -> holds(change.to((start + way * count) * step)),
                count -> holdsAnew(change.to((start + way * count) * step)));
        return steps.isPresent() ? OptionalDouble.of((start + way * steps.getAsLong()) * step) : OptionalDouble.empty();
    }

    /// The largest smaller gap in half per cents at which everything holds.
    private OptionalDouble findGap() {
        long asked = (long) Math.ceil(inputs.wanted().gapShare() / GAP_STEP - 1e-9);
        OptionalLong steps = findFirst(
                asked,
                count -> holds(gap((asked - count) * GAP_STEP)),
                count -> holdsAnew(gap((asked - count) * GAP_STEP)));
        return steps.isPresent() ? OptionalDouble.of((asked - steps.getAsLong()) * GAP_STEP) : OptionalDouble.empty();
    }

    /// The least count from 1 on that works: by growing strides, then halving, then proven by a search from nothing.
    private static OptionalLong findFirst(long room, Trial quick, Trial anew) {
        long bad = 0;
        long good = 0;
        for (int stride = 0; stride < STRIDES.length && good == 0; stride++) {
            long tried = room * STRIDES[stride] / 128;
            if (tried > bad && quick.works(tried)) {
                good = tried;
            } else {
                bad = Math.max(bad, tried);
            }
        }
        if (good == 0) {
            return OptionalLong.empty();
        }
        while (good - bad > 1) {
            long middle = (good + bad) / 2;
            if (quick.works(middle)) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        for (long proven = good; proven <= Math.min(room, good + LOOKED_PAST); proven++) {
            if (anew.works(proven)) {
                return OptionalLong.of(proven);
            }
        }
        return OptionalLong.empty();
    }
}
