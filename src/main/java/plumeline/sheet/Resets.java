package plumeline.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.card.TankReset;
import plumeline.plan.Move;
import plumeline.plan.Placed;
import plumeline.plan.Release;
import plumeline.plan.Shot;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.sketch.Markup;

/// What is done between two takes, with minutes: the plan's own `reset` where it has one, else typical ones.
///
/// **Source:** common practice for the typical minutes; measure your own.
final class Resets {
    /// A step.
    ///
    /// @param text what is done
    /// @param least minutes when all goes well
    /// @param most minutes when it doesn't
    record Step(String text, double least, double most) {}

    private final Shot shot;
    private final boolean hasPasses;

    Resets(Shot shot, boolean hasPasses) {
        this.shot = shot;
        this.hasPasses = hasPasses;
    }

    void addTo(Markup section, String name, Changes changes) {
        section.add(Markup.of("h2", "Reset between takes"));
        List<Step> steps = steps();
        Markup body = Markup.of("tbody");
        for (Step step : steps) {
            body.add(Markup.of(
                    "tr",
                    Markup.of("td", Markup.of("span").with("class", "tick"))
                            .text(step.text())
                            .with("class", "reset"),
                    Rows.cell("minutes", minutes(step.least(), step.most()))));
        }
        Markup total = Rows.flowing(Markup.of("p"), total());
        section.add(
                Markup.of("table", body).with("class", "resets"),
                changes.tell(total, Changes.Of.RESET, name, Facts.RESET));
    }

    /// All steps together, in a sentence.
    private String total() {
        return findPlanned().isPresent()
                ? "Reset: " + minutes() + "; the steps' minutes are typical."
                : "Together " + minutes() + ": write down yours.";
    }

    private Optional<Quantity> findPlanned() {
        return shot.written().findQuantity("reset");
    }

    /// The minutes of all steps together, and whose they are.
    String minutes() {
        List<Step> steps = steps();
        return findPlanned()
                .map(reset -> Print.number(reset.si() / 60, 1) + " min" + origin(reset))
                .orElseGet(() -> minutes(
                                steps.stream().mapToDouble(Step::least).sum(),
                                steps.stream().mapToDouble(Step::most).sum())
                        + ", typical");
    }

    private static String origin(Quantity reset) {
        return reset.origin() == plumeline.quantity.Origin.GIVEN ? " as planned" : Told.origin(reset);
    }

    private static String minutes(double least, double most) {
        return (least == most ? "" : Print.number(least, 0) + " to ") + Print.number(most, 0) + " min";
    }

    List<Step> steps() {
        List<Step> steps = new ArrayList<>();
        for (Move move : shot.moves()) {
            if (move.travel().isPresent() || !move.kept().isEmpty()) {
                steps.add(new Step("Bring " + move.name() + " back to its start mark, from the same side.", 1, 1));
            }
        }
        boolean isInked =
                shot.findRelease().filter(Release.OfInk.class::isInstance).isPresent();
        if (isInked || shot.findTank().isPresent()) {
            TankReset reset = TankReset.of(shot);
            steps.add(new Step(reset.text(), reset.least(), reset.most()));
        }
        shot.findRelease().ifPresent(release -> steps.addAll(after(release)));
        if (shot.placed().stream().anyMatch(Placed::isHung)) {
            steps.add(new Step("Let it hang still.", 1, 2));
        }
        if (hasPasses) {
            steps.add(new Step("Next pass: set what it changes, touch nothing else.", 1, 2));
        }
        steps.add(new Step("Hero: fingerprints, dust, drops; marks not kicked; battery and card.", 1, 2));
        return steps;
    }

    private static List<Step> after(Release release) {
        return switch (release) {
            case Release.OfInk _ -> List.of(new Step("Fill and wipe the nozzle, no bubble in it.", 1, 2));
            case Release.OfPieces _ -> List.of(new Step("Sweep up every piece, load the next.", 3, 5));
            case Release.OfThing _ -> List.of(new Step("Put the thing back, dry, on its marks.", 2, 4));
        };
    }
}
