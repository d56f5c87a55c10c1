package plumeline.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import plumeline.geom.Vec;
import plumeline.ink.Estimate;
import plumeline.lesson.InkLesson;
import plumeline.plan.Release;
import plumeline.plan.Shot;
import plumeline.plan.Written;
import plumeline.quantity.Origin;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.InkRelease;
import plumeline.stage.PlumePlace;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.stage.TankWalls;
import plumeline.take.Take;
import plumeline.wet.Lacks;

/// What is mixed and let go, when its front is where, how strong it is, when the water is changed; a log in which one
/// thing is changed a take.
///
/// **Source:** [plumeline.ink.Plume] and [Clarity] for figures; common practice for the rest.
///
/// @param id the card's id
/// @param stage the shot; it lets ink go
/// @param scene the shot at its start
/// @param mouth the nozzle's mouth, m; none where its place is open
/// @param wet the things in the water, by index
/// @param print the papers' figures
record InkCard(String id, Stage stage, Scene scene, List<Vec> mouth, List<Integer> wet, Print print) {
    private static final int LOGGED_TAKES = 6;

    private static final String FILM_ONE = " Film one take with a ruler beside it.";

    private static final List<String> CAUTIONS = List.of(
            "Dyes stain skin, cloth, silicone seams and floors: gloves, aprons, a tray under bottle and syringe. Read"
                    + " the ink's label and data sheet; none of it in eyes or mouths, nobody drinks on the set.",
            "Coloured water hides glass edges and dropped blades: look before a hand goes in.",
            "Water and mains: the tank card and the sheet's cautions count here too. Down the drain only what the house"
                    + " and the local code allow.");

    InkCard {
        mouth = List.copyOf(mouth);
        wet = List.copyOf(wet);
    }

    Card card() {
        List<Card.Part> parts = new ArrayList<>();
        mix(parts);
        letGo(parts);
        fronts(parts);
        strength(parts);
        parts.add(new WaterChange(stage, scene, wet).part());
        log(parts);
        return new Card(id, "Recipe card: " + release().ink().name(), CAUTIONS, parts);
    }

    private Shot shot() {
        return stage.shot();
    }

    private Release.OfInk release() {
        return (Release.OfInk) shot().findRelease().orElseThrow();
    }

    private Written ink() {
        return release().ink().written();
    }

    private void mix(List<Card.Part> parts) {
        Optional<String> recipe = ink().findWord("recipe");
        parts.add(
                recipe.isPresent()
                        ? new Card.Part.Fact("Ink", recipe.get() + ". Stir, let bubbles rise.")
                        : new Card.Part.Ask("Ink", "what it is mixed of, grams and millilitres"));
        parts.add(new Card.Part.Ask(
                "Density",
                "grams of 100 ml over 100 are g/ml"
                        + ink().findQuantity("density")
                                .map(density -> "; planned " + Figures.written(density))
                                .orElse("")
                        + ". Weighed"));
        shot().findTank()
                .flatMap(tank -> tank.tank().written().findQuantity("temperature"))
                .ifPresentOrElse(
                        kelvin -> parts.add(new Card.Part.Ask(
                                "Water", "planned at " + Figures.written(kelvin) + "; ink as warm. Read")),
                        () -> parts.add(new Card.Part.Ask("Water", "its temperature, and the ink as warm. Read")));
    }

    private void letGo(List<Card.Part> parts) {
        Written written = release().written();
        asked(parts, written.findQuantity("volume"), "Volume", "a take, by syringe");
        asked(parts, written.findQuantity("bore"), "Bore", "of the nozzle, by the drill that just fits");
        Optional<Quantity> speed = written.findQuantity("speed");
        if (speed.isPresent()) {
            asked(parts, speed, "Push", "at the nozzle");
        } else {
            asked(parts, written.findQuantity("squeeze_time"), "Squeeze", "evenly, to a count; by a stopwatch");
        }
        if (!mouth.isEmpty()) {
            stage.findTank().ifPresent(walls -> parts.add(new Card.Part.Fact("Nozzle", place(walls))));
        }
    }

    private void asked(List<Card.Part> parts, Optional<Quantity> planned, String name, String how) {
        parts.add(
                planned.isPresent()
                        ? new Card.Part.Fact(name, Figures.written(planned.get()) + ", " + how + ".")
                        : new Card.Part.Ask(name, how + ". Yours"));
    }

    private String place(TankWalls walls) {
        Vec at = mouth.getFirst();
        double over = at.z() - walls.waterLineMetres();
        double behind = at.y() - walls.inside().low().y();
        String height = Math.abs(over) < 0.0005
                ? "mouth at the water's surface"
                : "mouth " + print.length(Math.abs(over)) + (over > 0 ? " over" : " under") + " the water's surface";
        return height + ", " + print.length(behind)
                + " behind the front glass; straight down, clamped; its leeway stands"
                + " in the marks table. Full to the tip, wiped, no bubble.";
    }

    private void fronts(List<Card.Part> parts) {
        if (mouth.isEmpty()) {
            parts.add(new Card.Part.Fact(
                    "Front", "not known while the nozzle's place is free: solve the plan, or write it."));
            return;
        }
        switch (InkRelease.of(shot())) {
            case InkRelease.Missing(InkRelease.Lack lack) ->
                parts.add(new Card.Part.Fact(
                        "Front", "when it is where isn't known. " + Lacks.sentence(lack, shot()) + FILM_ONE));
            case InkRelease.Known known -> fronts(parts, known);
        }
    }

    private void fronts(List<Card.Part> parts, InkRelease.Known known) {
        PlumePlace plume = known.at(mouth.getFirst());
        List<PlumePlace.Front> fronts = plume.fronts();
        if (fronts.isEmpty()) {
            parts.add(new Card.Part.Fact("Front", "no law is known for this release." + FILM_ONE));
            return;
        }
        List<List<String>> rows = new ArrayList<>();
        for (PlumePlace.Front front : fronts) {
            Estimate depth = front.depthMetres();
            double wide = 2 * plume.radiusMetres(depth.value());
            rows.add(List.of(
                    Print.seconds(front.seconds(), 2),
                    front.isOnFloor() ? "on the floor" : print.length(depth.value()),
                    print.lengthNumber(depth.low(), Print.Hand.TAPE) + " to " + print.length(depth.high()),
                    print.length(wide)));
        }
        parts.add(new Card.Part.Fact("Front by", basis(known)));
        parts.add(new Card.Part.Grid(
                List.of("After release", "Front under the surface", "Four takes in five", "Width there"), rows));
    }

    /// What the front's times and widths rest on.
    private String basis(InkRelease.Known known) {
        return switch (known.basis()) {
            case InkRelease.Basis.Taught _ -> taught();
            case InkRelease.Basis.Read _ -> "takes: " + readings() + width();
            case InkRelease.Basis.Law law ->
                (law.readings().isEmpty()
                                ? "the laws; one take filmed beside a ruler narrows them more than anything"
                                : "the laws, set right by one reading: " + readings())
                        + width();
        };
    }

    private String readings() {
        return ink().listPairs("front").stream().map(InkCard::reading).collect(Collectors.joining(", "));
    }

    private static String reading(List<Quantity> pair) {
        return pair.getLast().valueText() + " down after " + pair.getFirst().valueText();
    }

    private String width() {
        return ink().findQuantity("spread")
                        .map(share -> "; to each side " + Figures.written(share) + " of its way wide")
                        .orElse("")
                + ".";
    }

    /// Takes teach width too: a `spread` counts no more.
    private String taught() {
        List<Take> takes =
                InkLesson.of(release().ink()) instanceof InkLesson.ByLaws lesson ? lesson.takes() : List.of();
        String read = takes.getLast().fronts().stream()
                .map(front -> reading(List.of(front.time(), front.depth())))
                .collect(Collectors.joining(", "));
        String last = read.isEmpty() ? "its width only" : read;
        return takes.size() == 1
                ? "the laws, as one take has taught them: " + last + "."
                : "the laws, as " + takes.size() + " takes have taught them; the last: " + last + ".";
    }

    private void strength(List<Card.Part> parts) {
        Optional<Quantity> strength = findStrength();
        if (strength.isPresent()) {
            parts.add(new Card.Part.Fact("Strength", Figures.written(strength.get()) + ", worst colour channel."));
            return;
        }
        parts.add(new Card.Part.Tick("Strength, with a jar and a phone: two like straight-sided jars of tank water, a"
                + " white sheet behind, even light. Into one 1 ml of ink a litre (20 drops of a pipette are about 1 ml:"
                + " count yours); black ink ten times thinner. Stir."));
        parts.add(
                new Card.Part.Tick("Photograph both at once, exposure and white locked. In the middle of each read the"
                        + " colour channel that falls most, 0 to 255."));
        parts.add(new Card.Part.Grid(
                List.of("Ink ml", "Water ml", "Way through mm", "Clean", "Inked", "Strength /cm"),
                List.of(List.of("", "", "", "", "", ""))));
        parts.add(new Card.Part.Say(
                "The question clear-water turns them into a strength: write it as the ink's" + " strength."));
    }

    private Optional<Quantity> findStrength() {
        return ink().findQuantity("strength").filter(one -> one.origin() != Origin.TYPICAL);
    }

    private void log(List<Card.Part> parts) {
        String rate = shot().camera()
                .written()
                .findQuantity("rate")
                .map(capture -> " over " + capture.valueText())
                .orElse(" over the capture rate");
        parts.add(new Card.Part.Say(
                "One change a take, never two: height, or distance, or volume, or squeeze. Readings: a"
                        + " ruler upright in the plume's plane; frames from the first ink that leaves the nozzle" + rate
                        + " are seconds; depth under the surface; width where it is widest."));
        List<List<String>> rows = new ArrayList<>();
        for (int i = 1; i <= LOGGED_TAKES; i++) {
            rows.add(List.of(Integer.toString(i), "", "", "", "", ""));
        }
        String unit = print.lengthUnit();
        parts.add(new Card.Part.Grid(
                List.of("Take, its one change", "1st s", "1st " + unit, "2nd s", "2nd " + unit, "Width " + unit),
                rows));
        parts.add(
                new Card.Part.Say("Two readings, as far apart as the picture allows, and the width go in by lesson add,"
                        + " with what was changed."));
    }
}
