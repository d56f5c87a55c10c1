package plumeline.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.plan.Shot;
import plumeline.plan.TankPlace;
import plumeline.quantity.Quantity;
import plumeline.take.Conditions;
import plumeline.take.Take;
import plumeline.text.Node;
import plumeline.text.Problem;

/// Finds readings of a take that can't be: they would teach the wrong thing for good.
final class TakeMeaning {
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

    /// What is wrong in the shot's tank: readings under its floor, a plume wider than its inside.
    static List<Problem> inTank(int number, Node.Mapping node, Take take, Shot shot) {
        TakeMeaning meaning = new TakeMeaning(number, node);
        if (shot.findTank().isEmpty()) {
            return List.of();
        }
        TankPlace tank = shot.findTank().get();
        for (int i = 0; i < take.fronts().size(); i++) {
            meaning.checkFloor("front[" + (i + 1) + "][2]", take.fronts().get(i).depth(), tank.water());
        }
        for (int i = 0; i < take.widths().size(); i++) {
            String pair = "width[" + (i + 1) + "]";
            meaning.checkFloor(pair + "[1]", take.widths().get(i).depth(), tank.water());
            meaning.checkWidth(
                    pair + "[2]",
                    take.widths().get(i).width(),
                    tank.tank().inside().width());
        }
        return meaning.problems;
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
