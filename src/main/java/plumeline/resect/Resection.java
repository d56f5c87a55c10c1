package plumeline.resect;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumeline.geom.Point;
import plumeline.text.Nearest;

/// How far camera and things seem off, by where named places of the set were clicked in a still.
///
/// Clicks and marks are readings with an error each: a click is off by its allowance, a mark by its placing error, and
/// what of the camera isn't a mark by the [Allowance]. Fitted together they give the likeliest place of everything, and
/// how sure that is; what the clicks don't tell stays at its mark with its placing error. Readings that disagree beyond
/// four standard deviations are looked for one by one (see `Doubts`), named, and fitted as if anywhere; and where one
/// owner of marks alone, the camera or one thing, explains all clicks with all else at its mark, that is told too (see
/// `Alone`). It holds where things are off by a few per cent of their distance and turns by a few degrees: the
/// outline's places are the same then.
public final class Resection {
    /// Fewer clicks than this tell nothing.
    public static final int LEAST_CLICKS = 3;

    /// So many names are offered for one that isn't known.
    private static final int NEAR_NAMES = 4;

    private static final double STEP = 1e-3;

    private Resection() {}

    /// A place that was clicked.
    ///
    /// @param name the place's name
    /// @param xPixels from the still's left edge, pixels
    /// @param yPixels from its upper edge, pixels
    public record Click(String name, double xPixels, double yPixels) {}

    /// What clicks came to.
    public sealed interface Outcome {
        /// They tell something.
        ///
        /// @param findings what
        record Found(Findings findings) implements Outcome {}

        /// They can't be used.
        ///
        /// @param why what is wrong
        /// @param attempt what to try
        record Refused(String why, String attempt) implements Outcome {}
    }

    /// Finds how far things seem off.
    ///
    /// @param view the shot and what the still shows of it
    /// @param clicks the places clicked
    /// @param allowance how far off may be what has no placing error
    /// @return the findings, or why there are none
    public static Outcome of(StillView view, List<Click> clicks, Allowance allowance) {
        Optional<Outcome> refused = refuse(view, clicks);
        if (refused.isPresent()) {
            return refused.get();
        }
        List<Landmark> places = new ArrayList<>();
        List<Sighting.By> ways = new ArrayList<>();
        for (Click click : clicks) {
            Landmark landmark = view.find(click.name()).orElseThrow();
            places.add(landmark);
            ways.add(view.way(landmark).orElseThrow());
        }
        Unset unset = Unset.of(view, allowance);
        double[] readings = new double[2 * clicks.size()];
        double[] sigmas = new double[readings.length];
        for (int i = 0; i < readings.length; i++) {
            Click click = clicks.get(i / 2);
            readings[i] = i % 2 == 0 ? click.xPixels() : click.yPixels();
            sigmas[i] = allowance.clickPixels() / Normal.HALF_95;
        }
        double[] steps = unset.sought().stream()
                .mapToDouble(one -> Math.max(STEP * one.errorSi(), 1e-7))
                .toArray();
        Fit.Task task = new Fit.Task(readings, sigmas, off -> unset.pixels(places, ways, off), steps);
        return Doubts.settle(task, unset.sought())
                .<Outcome>map(settled -> new Outcome.Found(new Reading(view, clicks, unset.sought(), task).of(settled)))
                .orElseGet(() -> new Outcome.Refused(
                        "one of the places isn't in the picture with everything at its mark", "Leave it out."));
    }

    private static Optional<Outcome> refuse(StillView view, List<Click> clicks) {
        List<String> names = view.landmarks().stream().map(Landmark::name).toList();
        List<String> seen = new ArrayList<>();
        for (Click click : clicks) {
            Optional<Landmark> landmark = view.find(click.name());
            if (landmark.isEmpty()) {
                return unknown(click.name(), names);
            }
            if (seen.contains(click.name())) {
                return refused(click.name() + " is clicked twice", "Leave one of both out.");
            }
            seen.add(click.name());
            if (view.spot(landmark.get()) instanceof Spotted.Unknown(String why)) {
                return refused("where " + click.name() + " shows isn't known: " + why, "Click another place.");
            }
            Still still = view.still();
            if (!still.holds(new Point(click.xPixels(), click.yPixels()))) {
                return refused(
                        click.name() + " is clicked at " + figure(click.xPixels()) + ", " + figure(click.yPixels())
                                + " px, outside the still; it has " + still.acrossPixels() + " by "
                                + still.downPixels() + " px",
                        "Count from its upper left corner, x to the right, y down.");
            }
        }
        return clicks.size() < LEAST_CLICKS
                ? refused(
                        clicks.size() + (clicks.size() == 1 ? " place is" : " places are")
                                + " clicked; three at least are wanted",
                        "Click places on things that stand at different depths.")
                : Optional.empty();
    }

    private static Optional<Outcome> unknown(String name, List<String> names) {
        List<String> near = Nearest.list(name, names, NEAR_NAMES);
        if (near.isEmpty()) {
            return refused("the shot has no place that can be clicked", "Compare by eye, without points.");
        }
        String has = names.size() > near.size() ? "; the nearest of " + names.size() + " are " : "; it has ";
        return refused(
                "the shot has no place " + name + " that can be clicked" + has + String.join(", ", near),
                "Try " + near.getFirst() + "; without points, compare lists them all.");
    }

    private static Optional<Outcome> refused(String why, String attempt) {
        return Optional.of(new Outcome.Refused(why, attempt));
    }

    private static String figure(double pixels) {
        return pixels == Math.rint(pixels) ? Long.toString((long) pixels) : String.format(Locale.ROOT, "%.1f", pixels);
    }
}
