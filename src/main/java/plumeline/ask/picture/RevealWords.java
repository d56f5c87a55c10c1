package plumeline.ask.picture;

import java.util.ArrayList;
import java.util.List;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Words;
import plumeline.quantity.Print;

/// What `reveal` says beside its numbers.
final class RevealWords {
    private static final double METRE = 1e-3;

    private final Reveal.Found found;
    private final Reveal.Inputs inputs;
    private final Words words;
    private final RevealSet set;
    private final double[] values;
    private final double[] parts;

    RevealWords(Reveal.Found found, double[] others, Words words) {
        this.found = found;
        this.inputs = found.inputs();
        this.words = words;
        set = new RevealSet(inputs);
        values = RevealSet.values(inputs, others);
        parts = set.at(values);
    }

    Notes notes() {
        List<String> because = new ArrayList<>();
        sayFailures(because);
        if (found.holds() == Reveal.Holds.ALL) {
            sayTight(because);
            because.add("Everything may be off at once by " + Print.number(found.together(), 1)
                    + " times its placing error of 2 mm.");
        }
        sayFar(because);
        RevealView end = set.end(values);
        because.add("At the end the camera has panned " + Print.fineDegrees(Math.abs(end.turnRadians()))
                + (end.turnRadians() < 0 ? " to the left" : end.turnRadians() > 0 ? " to the right" : "")
                + "; heights then are " + heights(end) + " of the frame (" + firstHeight() + " at the start).");
        because.add("Places are of the axes, from the first thing's: x to camera right, y away from the camera's start;"
                + " gaps are counted from the left of the picture.");
        return new Notes(
                because,
                attempts(),
                List.of(),
                List.of("Outlines of upright cylinders seen from the lens point (closed forms); the places are the best"
                        + " a search found, not proven best"));
    }

    private void sayTight(List<String> because) {
        if (!found.tight().isEmpty()) {
            List<String> marks = new ArrayList<>();
            for (Reveal.Mark mark :
                    found.tight().subList(0, Math.min(3, found.tight().size()))) {
                marks.add(mark.name() + " by more than " + words.down(mark.leewayMetres()));
            }
            because.add("Tight: it fails with " + String.join(", or ", marks)
                    + " off, and a tape places it to 2 mm. Use a jig or a stop.");
        }
    }

    private void sayFar(List<String> because) {
        int last = set.count() - 1;
        if (RevealSet.y(values, last) > RevealSolver.ROOM_MILLIMETRES) {
            because.add(set.name(last) + " stands " + words.length(RevealSet.y(values, last) * METRE)
                    + " behind the first thing, farther than a usual table's "
                    + words.length(RevealSolver.ROOM_MILLIMETRES * METRE) + ": on one no places were found.");
        }
    }

    private String heights(RevealView end) {
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < set.count(); i++) {
            all.append(i == 0 ? "" : ", ").append(Words.share(set.heightShare(end, i)));
        }
        return all.toString();
    }

    private String firstHeight() {
        return Words.share(set.heightShare(set.start(values), 0));
    }

    private void sayFailures(List<String> because) {
        int gaps = set.hiddenParts();
        int start = gaps + set.gapParts();
        sayConflict(because, start);
        for (int i = 1; i < set.count(); i++) {
            double hidden = least(5 * (i - 1), 5 * i);
            if (hidden < 0) {
                because.add(set.name(i) + " isn't hidden: " + words.some(-hidden * METRE)
                        + " too much sticks out at the start, in the best place found.");
            }
        }
        double gap = least(gaps, start);
        if (gap < 0) {
            because.add("The narrowest gap at the end lacks " + Words.somePercent(-gap)
                    + " of the frame's width, in the best places found.");
        }
        if (least(start, start + 4) < 0) {
            because.add(set.name(0) + " doesn't fit the frame at the start, wherever the others stand.");
        }
        if (RevealSolver.order(values) < 0) {
            because.add("The best places found aren't in the order written, nearest first.");
        }
        sayFrame(because, "start", start);
        sayFrame(because, "end", start + 4);
    }

    /// Names the wants that can't all be had, where there are several.
    private void sayConflict(List<String> because, int start) {
        List<String> failing = new ArrayList<>();
        if (least(0, set.hiddenParts()) < 0) {
            failing.add("hiding at the start");
        }
        if (least(set.hiddenParts(), start) < 0) {
            failing.add("the gaps at the end");
        }
        if (least(start + 4, start + 8) < 0) {
            failing.add("all in the frame at the end");
        }
        if (failing.size() > 1) {
            String last = failing.removeLast();
            because.add("No places were found for " + String.join(", ", failing) + " and " + last + " together.");
        }
    }

    private void sayFrame(List<String> because, String when, int at) {
        double aside = least(at, at + 2);
        double upright = least(at + 2, at + 4);
        if (aside < 0) {
            because.add(
                    "At the " + when + " " + Words.somePercent(-aside) + " of the frame's width stands outside it.");
        }
        if (upright < 0) {
            because.add(
                    "At the " + when + " " + Words.somePercent(-upright) + " of the frame's height stands outside it.");
        }
    }

    private List<String> attempts() {
        if (found.holds() == Reveal.Holds.ALL) {
            return List.of();
        }
        int start = set.hiddenParts() + set.gapParts();
        RevealTries.Failing failing =
                new RevealTries.Failing(least(start, start + 4) < 0, least(start + 4, start + 8) < 0);
        return new RevealTries(inputs, words).list(failing);
    }

    private double least(int from, int to) {
        return RevealInquiry.least(parts, from, to);
    }
}
