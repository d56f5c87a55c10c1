package plumeline.cli;

import java.util.List;
import java.util.Optional;
import plumeline.plan.Kit;
import plumeline.plan.Shot;
import plumeline.plan.TankPlace;
import plumeline.quantity.Quantity;
import plumeline.take.Take;

/// Readings of a take that can't be: they would teach the wrong thing for good.
final class TakeCheck {
    private TakeCheck() {}

    /// @param shot the take's shot
    /// @param fronts its readings, by time
    /// @param widths its widths, by depth
    static void check(Shot shot, List<Take.Front> fronts, List<Take.Width> widths) throws Refusal {
        for (int i = 1; i < fronts.size(); i++) {
            Take.Front before = fronts.get(i - 1);
            Take.Front after = fronts.get(i);
            if (after.depth().si() <= before.depth().si()
                    || after.time().si() <= before.time().si()) {
                throw new Refusal(
                        "--front is " + before.depth().valueText() + " deep at "
                                + before.time().valueText() + " and "
                                + after.depth().valueText() + " at "
                                + after.time().valueText() + "; must go down with time",
                        "Read one front on its way down; depths count from the still surface.");
            }
        }
        Optional<TankPlace> tank = shot.findTank();
        Optional<Quantity> water = tank.flatMap(TankPlace::water);
        for (Take.Front front : fronts) {
            checkDepth("--front", front.depth(), water);
        }
        for (Take.Width width : widths) {
            checkDepth("--width", width.depth(), water);
            checkWidth(width.width(), tank.map(TankPlace::tank));
        }
    }

    private static void checkDepth(String option, Quantity depth, Optional<Quantity> water) throws Refusal {
        if (water.isPresent() && depth.si() > water.get().si()) {
            throw new Refusal(
                    option + " is read " + depth.valueText() + " deep; must be at most the water's depth, "
                            + water.get().valueText(),
                    "Count depths from the still surface down, in the plume's plane.");
        }
    }

    private static void checkWidth(Quantity width, Optional<Kit.Tank> tank) throws Refusal {
        if (tank.isPresent() && width.si() > tank.get().inside().width().si()) {
            throw new Refusal(
                    "--width is " + width.valueText() + "; must be at most the tank's inside, "
                            + tank.get().inside().width().valueText(),
                    "Read it from edge to edge, by the ruler in the plume's plane.");
        }
    }
}
