package plumeline.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.ink.Descent;
import plumeline.ink.Ink;
import plumeline.ink.Prediction;
import plumeline.plan.Shot;
import plumeline.plan.TankPlace;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.take.Conditions;
import plumeline.take.Take;
import plumeline.text.Node;
import plumeline.text.Problem;

/// Finds readings of a take that can't be: they would teach the wrong thing for good.
final class TakeMeaning {
    /// No ink is so many times faster or slower than the ends of the laws' range.
    private static final double BEYOND = 5;

    /// The first ink is read this well at worst, s.
    private static final double LATE_SECONDS = 0.2;

    private final List<Problem> problems = new ArrayList<>();
    private final int number;
    private final Node.Mapping node;

    private TakeMeaning(int number, Node.Mapping node) {
        this.number = number;
        this.node = node;
    }

    /// What is wrong whatever the tank: readings above the nozzle's mouth, and such as don't go down with time.
    static List<Problem> ofReadings(int number, Node.Mapping node, Take take) {
        TakeMeaning meaning = new TakeMeaning(number, node);
        double mouth = take.conditions() instanceof Conditions.Told told
                ? Math.max(0, -told.height().si())
                : 0;
        for (int i = 0; i < take.fronts().size(); i++) {
            meaning.checkOrder(take.fronts(), i);
            meaning.checkMouth("front[" + (i + 1) + "][2]", take.fronts().get(i).depth(), mouth);
        }
        for (int i = 0; i < take.widths().size(); i++) {
            meaning.checkMouth("width[" + (i + 1) + "][1]", take.widths().get(i).depth(), mouth);
        }
        return meaning.problems;
    }

    /// What is wrong in the shot's tank: readings under its floor, a plume wider than its inside; else times that no
    /// ink has.
    static List<Problem> inTank(int number, Node.Mapping node, Take take, Shot shot) {
        TakeMeaning meaning = new TakeMeaning(number, node);
        shot.findTank().ifPresent(tank -> meaning.checkTank(take, tank));
        if (meaning.problems.isEmpty() && take.conditions() instanceof Conditions.Told told) {
            for (int i = 0; i < take.fronts().size(); i++) {
                meaning.checkSpeed(i, take.fronts().get(i), TakeNumbers.descent(told));
            }
        }
        return meaning.problems;
    }

    private void checkTank(Take take, TankPlace tank) {
        for (int i = 0; i < take.fronts().size(); i++) {
            checkFloor("front[" + (i + 1) + "][2]", take.fronts().get(i).depth(), tank.water());
        }
        for (int i = 0; i < take.widths().size(); i++) {
            String pair = "width[" + (i + 1) + "]";
            checkFloor(pair + "[1]", take.widths().get(i).depth(), tank.water());
            checkWidth(
                    pair + "[2]",
                    take.widths().get(i).width(),
                    tank.tank().inside().width());
        }
    }

    private void checkMouth(String key, Quantity depth, double mouthMetres) {
        if (depth.si() <= mouthMetres) {
            add(
                    key,
                    "P-LESSON-01",
                    "a reading at " + depth.valueText(),
                    "deeper than the nozzle's mouth, "
                            + Quantity.of(mouthMetres, depth.unit()).valueText(),
                    "Count depths from the still surface down.");
        }
    }

    private void checkOrder(List<Take.Front> fronts, int i) {
        if (i == 0) {
            return;
        }
        Take.Front before = fronts.get(i - 1);
        Take.Front after = fronts.get(i);
        if (after.depth().si() <= before.depth().si()
                || after.time().si() <= before.time().si()) {
            add(
                    "front[" + (i + 1) + "]",
                    "P-LESSON-02",
                    said(after) + " behind " + said(before),
                    "deeper and later than the reading before it",
                    "Read one front on its way down; depths count from the still surface.");
        }
    }

    /// A time that no ink of such a release could have: far out of the laws' range, which is wide already.
    private void checkSpeed(int i, Take.Front front, Descent descent) {
        double depth = front.depth().si();
        if (depth <= descent.startMetres() || !(Ink.predict(descent, depth) instanceof Prediction.Reached law)) {
            return;
        }
        double least = Math.max(0, law.seconds().low() / BEYOND - LATE_SECONDS);
        double most = law.seconds().high() * BEYOND + LATE_SECONDS;
        if (front.time().si() < least || front.time().si() > most) {
            add(
                    "front[" + (i + 1) + "]",
                    "P-LESSON-05",
                    said(front),
                    "at " + front.depth().valueText() + " between " + Print.seconds(least, 2) + " and "
                            + Print.seconds(most, 1) + ", as the laws have such a release within a factor of "
                            + Print.number(BEYOND, 0),
                    "See that time and depth have their right units, that depths count from the surface, and that"
                            + " volume, nozzle, squeeze and density are what was let go in that take.");
        }
    }

    private static String said(Take.Front front) {
        return front.depth().valueText() + " at " + front.time().valueText();
    }

    private void checkFloor(String key, Quantity depth, Optional<Quantity> water) {
        if (water.isPresent() && depth.si() > water.get().si()) {
            add(
                    key,
                    "P-LESSON-03",
                    "a reading at " + depth.valueText(),
                    "at most as deep as the water, " + water.get().valueText(),
                    "Count depths from the still surface down, in the plume's plane; the plan's water must be as deep"
                            + " as it was.");
        }
    }

    private void checkWidth(String key, Quantity width, Quantity inside) {
        if (width.si() > inside.si()) {
            add(
                    key,
                    "P-LESSON-04",
                    "a width of " + width.valueText(),
                    "at most the tank's inside, " + inside.valueText(),
                    "Read it from edge to edge, by the ruler in the plume's plane.");
        }
    }

    private void add(String key, String code, String given, String allowed, String attempt) {
        problems.add(new Problem(
                node.at(key).orElse(node).place(), "measured[" + number + "]." + key, code, given, allowed, attempt));
    }
}
