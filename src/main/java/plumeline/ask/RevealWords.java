package plumeline.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import plumeline.quantity.Print;

/// What `reveal` says beside its numbers; each thing to try has been solved anew with all wants.
final class RevealWords {
    private static final double METRE = 1e-3;
    private static final double GAP_STEP = 0.005;
    private static final double STEP_METRES = 1e-3;

    private final Reveal.Found found;
    private final Reveal.Inputs inputs;
    private final double[] others;
    private final Words words;
    private final RevealSet set;
    private final double[] values;
    private final double[] parts;

    RevealWords(Reveal.Found found, double[] others, Words words) {
        this.found = found;
        this.inputs = found.inputs();
        this.others = others.clone();
        this.words = words;
        set = new RevealSet(inputs);
        values = RevealSet.values(inputs, others);
        parts = set.at(values);
    }

    Notes notes() {
        List<String> because = new ArrayList<>();
        sayFailures(because);
        if (found.holds() == Reveal.Holds.ALL) {
            because.add("Everything may be off at once by " + Print.number(found.together(), 1)
                    + " times its placing error of 2 mm.");
        }
        RevealSet.View end = set.end(values);
        because.add("At the end the camera has panned " + Print.fineDegrees(Math.abs(end.turnRadians()))
                + (end.turnRadians() < 0 ? " to the left" : end.turnRadians() > 0 ? " to the right" : "")
                + "; heights then are " + heights(end) + " of the frame (" + firstHeight() + " at the start).");
        because.add("Places are of the axes, from the first thing's: x to camera right, y away from the"
                + " camera's start.");
        List<String> attempts = found.holds() == Reveal.Holds.ALL ? List.of() : attempts();
        return new Notes(
                because,
                attempts,
                List.of(),
                List.of("Outlines of upright cylinders seen from the lens point (closed forms); the places are the best"
                        + " a search found, not proven best"));
    }

    private String heights(RevealSet.View end) {
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < set.count(); i++) {
            all.append(i == 0 ? "" : ", ").append(Words.share(set.heightShare(end, i)));
        }
        return all.toString();
    }

    private String firstHeight() {
        return Words.share(set.heightShare(set.new View(values, values[RevealSet.CAMERA_X], 0), 0));
    }

    private void sayFailures(List<String> because) {
        for (int i = 1; i < set.count(); i++) {
            double hidden = RevealInquiry.least(parts, 5 * (i - 1), 5 * i);
            if (hidden < 0) {
                because.add(inputs.things().get(i).name() + " can't be hidden: " + words.length(-hidden * METRE)
                        + " too much sticks out at the start, in the best place found.");
            }
        }
        int gaps = set.hiddenParts();
        double gap = RevealInquiry.least(parts, gaps, gaps + set.gapParts());
        if (gap < 0) {
            because.add("The narrowest gap at the end lacks " + Print.number(-gap, 1) + " % of the frame's width, in the best"
                    + " places found.");
        }
        int start = gaps + set.gapParts();
        sayFrame(because, "start", start);
        sayFrame(because, "end", start + 4);
    }

    private void sayFrame(List<String> because, String when, int at) {
        double aside = RevealInquiry.least(parts, at, at + 2);
        double upright = RevealInquiry.least(parts, at + 2, at + 4);
        if (aside < 0) {
            because.add("At the " + when + " " + Print.number(-aside, 1) + " % of the frame's width stands outside it.");
        }
        if (upright < 0) {
            because.add("At the " + when + " " + Print.number(-upright, 1) + " % of the frame's height stands outside it.");
        }
    }

    /// The nearest changes of one thing that make everything hold; only of things that have to do with what fails.
    private List<String> attempts() {
        List<String> attempts = new ArrayList<>();
        trySlide(attempts);
        double hideBy = inputs.wanted().hideByMetres();
        if (hideBy > 0 && works(inputs.with(new Reveal.Wanted(inputs.wanted().gapShare(), 0)))) {
            attempts.add("Hide by nothing to spare instead of " + words.length(hideBy) + ".");
        }
        if (failsUpright()) {
            tryHeight(attempts);
        }
        int start = set.hiddenParts() + set.gapParts();
        if (RevealInquiry.least(parts, start, parts.length) < 0) {
            tryFrame(attempts);
        }
        if (attempts.isEmpty()) {
            return List.of("No single change of slide, gap, height or distance was found to be enough: change"
                    + " several, or reveal fewer things.");
        }
        return attempts;
    }

    /// Whether a thing shows over or under the first one.
    private boolean failsUpright() {
        for (int i = 0; i < set.hiddenParts(); i += 5) {
            if (parts[i + 2] < 0 || parts[i + 3] < 0) {
                return true;
            }
        }
        return false;
    }

    private void trySlide(List<String> attempts) {
        double travel = Math.abs(inputs.slide().travelMetres());
        double most = 3 * (travel + inputs.camera().distanceMetres());
        findLeast(travel, most, this::slid)
                .ifPresent(metres -> attempts.add("Slide " + words.length(metres - travel) + " further: "
                        + words.length(metres) + " in all."));
        findGap().ifPresent(gap -> attempts.add("Ask for a gap of " + Print.share(gap, 1) + " instead of "
                + Print.share(inputs.wanted().gapShare(), 1) + "."));
    }

    private void tryHeight(List<String> attempts) {
        double height = inputs.camera().heightMetres();
        findLeast(0, height, by -> inputs.with(camera(0, -by)))
                .ifPresent(by -> attempts.add(
                        "Lower the lens by " + words.length(by) + " to " + words.length(height - by) + "."));
        if (attempts.isEmpty()) {
            findLeast(0, inputs.camera().distanceMetres() / 2, by -> inputs.with(camera(0, by)))
                    .ifPresent(by -> attempts.add(
                            "Raise the lens by " + words.length(by) + " to " + words.length(height + by) + "."));
        }
    }

    private void tryFrame(List<String> attempts) {
        double distance = inputs.camera().distanceMetres();
        findLeast(0, 3 * distance, by -> inputs.with(camera(by, 0)))
                .ifPresent(by -> attempts.add("Start " + words.length(by) + " farther back, at "
                        + words.length(distance + by) + "."));
        Reveal.Slide panned = new Reveal.Slide(inputs.slide().travelMetres(), Reveal.Keeps.ALL);
        if (inputs.slide().keeps() != Reveal.Keeps.ALL && works(inputs.with(panned))) {
            attempts.add("Pan to keep all in the frame (keeps: all).");
        }
    }

    private Reveal.Camera camera(double fartherMetres, double higherMetres) {
        return new Reveal.Camera(
                inputs.camera().distanceMetres() + fartherMetres, inputs.camera().heightMetres() + higherMetres);
    }

    private Reveal.Inputs slid(double travelMetres) {
        return inputs.with(new Reveal.Slide(
                Math.copySign(travelMetres, inputs.slide().travelMetres()), inputs.slide().keeps()));
    }

    private boolean works(Reveal.Inputs other) {
        return RevealSolver.holds(other, others) || RevealSolver.holds(other, RevealSolver.solve(other));
    }

    private interface Change {
        Reveal.Inputs by(double amount);
    }

    /// The least amount past one that doesn't work, to a millimetre: first by growing strides, then by halving.
    private OptionalDouble findLeast(double from, double most, Change change) {
        double bad = from;
        double good = Double.NaN;
        for (int stride = 1; stride <= 8 && Double.isNaN(good); stride++) {
            double tried = from + (most - from) * Math.pow(2, stride - 8.0);
            if (works(change.by(tried))) {
                good = tried;
            } else {
                bad = tried;
            }
        }
        if (Double.isNaN(good)) {
            return OptionalDouble.empty();
        }
        while (good - bad > STEP_METRES) {
            double middle = (good + bad) / 2;
            if (works(change.by(middle))) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        double rounded = from + Math.ceil((good - from) / STEP_METRES) * STEP_METRES;
        return rounded <= most && works(change.by(rounded)) ? OptionalDouble.of(rounded) : OptionalDouble.empty();
    }

    /// The largest smaller gap in half per cents that works.
    private OptionalDouble findGap() {
        int bad = (int) Math.ceil(inputs.wanted().gapShare() / GAP_STEP - 1e-9);
        if (bad == 0 || !works(gap(0))) {
            return OptionalDouble.empty();
        }
        int good = 0;
        while (bad - good > 1) {
            int middle = (good + bad) / 2;
            if (works(gap(middle * GAP_STEP))) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        return OptionalDouble.of(good * GAP_STEP);
    }

    private Reveal.Inputs gap(double share) {
        return inputs.with(new Reveal.Wanted(share, inputs.wanted().hideByMetres()));
    }
}
