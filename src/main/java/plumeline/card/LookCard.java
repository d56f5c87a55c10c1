package plumeline.card;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import plumeline.colour.Chromaticity;
import plumeline.lit.Metered;
import plumeline.look.Words;
import plumeline.plan.Camera;
import plumeline.plan.Cut;
import plumeline.plan.Mark;
import plumeline.plan.Named;
import plumeline.plan.Placed;
import plumeline.plan.PlacedLight;
import plumeline.plan.Plan;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.solve.ShotAnswer;
import plumeline.solve.WantAnswer;
import plumeline.stage.Tint;

/// How each look of a shot is set: every lamp's level, hue or white and its emitters' drives, what a meter shows at the
/// product, the colours as chips beside their names and coordinates.
///
/// @param id the card's id
/// @param plan the plan
/// @param answer the findings on the shot
/// @param runs its looks, or the shot itself
/// @param isOpen whether a mark is still to be found
record LookCard(String id, Plan plan, ShotAnswer answer, List<LightCard.Run> runs, Predicate<Mark> isOpen) {
    LookCard {
        runs = List.copyOf(runs);
    }

    /// Whether there is anything to set: looks that are lit otherwise, or a lamp of a colour.
    boolean isNeeded() {
        Set<List<String>> settings = new LinkedHashSet<>();
        for (LightCard.Run run : runs) {
            settings.add(lamps(run).mapToObj(lamp -> setting(run, lamp)).toList());
        }
        boolean isColoured = runs.stream()
                .anyMatch(run -> lamps(run)
                        .anyMatch(lamp -> Tint.of(run.light(lamp)) instanceof Tint.Mixed
                                || run.light(lamp).written().has("hue")));
        return settings.size() > 1 || isColoured;
    }

    private static IntStream lamps(LightCard.Run run) {
        return IntStream.range(0, run.shot().lights().size())
                .filter(lamp -> run.light(lamp).light().emitter().isLamp());
    }

    Card card() {
        List<Card.Part> parts = new ArrayList<>();
        parts.add(new Card.Part.Say(
                "Drives are of each emitter's full, at the level that stands beside them; a lamp whose menu takes a hue"
                        + " or kelvin needs none. x and y are CIE 1931, hues CIE LCh under D65. A chip is what print or"
                        + " screen comes nearest to: the figures count."));
        for (LightCard.Run run : runs) {
            parts.add(new Card.Part.Fact(name(run), set(run)));
        }
        addChips(parts);
        findThing().ifPresent(thing -> addMeter(parts, thing));
        addChange(parts);
        addCut(parts);
        return new Card(id, "Look card", Cautions.ofLooks(plan, runs.getFirst().shot()), parts);
    }

    private static String name(LightCard.Run run) {
        return run.pass().isEmpty() ? "The shot" : run.pass();
    }

    private String set(LightCard.Run run) {
        List<String> words = new ArrayList<>();
        for (Placed placed : run.shot().placed()) {
            boolean differs = runs.stream()
                    .anyMatch(other -> !other.shot()
                            .findPlaced(placed.name())
                            .map(one -> one.thing().reference())
                            .equals(Optional.of(placed.thing().reference())));
            if (differs) {
                words.add(placed.name() + " is " + placed.thing().reference()
                        + placed.thing()
                                .written()
                                .findQuantity("hue")
                                .map(hue -> ", hue " + degrees(hue))
                                .orElse(""));
            }
        }
        lamps(run).forEach(lamp -> words.add(run.light(lamp).name() + " " + setting(run, lamp)));
        return String.join(". ", words) + ".";
    }

    private static String degrees(Quantity hue) {
        return Print.degrees(hue.si()) + " (" + Words.hue(hue.si()) + ")";
    }

    private String setting(LightCard.Run run, int lamp) {
        PlacedLight light = run.light(lamp);
        double level = run.scene().beams().get(lamp).level();
        if (light.level().filter(isOpen).isPresent()) {
            return "level not found yet";
        }
        if (level == 0) {
            return "off";
        }
        String colour = light.written()
                .findQuantity("hue")
                .map(hue -> ", hue " + degrees(hue))
                .or(() -> light.written()
                        .findQuantity("white")
                        .or(() -> light.light().written().findQuantity("white"))
                        .map(white -> ", white " + white.valueText()))
                .orElse("");
        return "level " + Print.share(level, level < 0.1 ? 1 : 0)
                + light.light()
                        .findDimmer(level)
                        .map(set -> " (its dimmer at " + Print.share(set, 0) + ")")
                        .orElse("")
                + colour + tinted(Tint.of(light), level);
    }

    private static String tinted(Tint tint, double level) {
        return switch (tint) {
            case Tint.Mixed mixed ->
                "; drives " + String.join(", ", mixed.listDrives(level))
                        + (mixed.mixture().distance() > 0
                                ? "; nearest it reaches, "
                                        + Print.number(mixed.mixture().distance(), 3) + " off in u'v'"
                                : "")
                        + (mixed.halfShare() > 0 ? " (typical emitters: a start, meter it)" : "");
            case Tint.White _, Tint.Untold _ -> "";
            case Tint.Unknown(String reason) ->
                "; " + reason.substring(0, 1).toLowerCase(Locale.ROOT) + reason.substring(1, reason.length() - 1);
        };
    }

    /// A lamp's colour in a look.
    private record Shine(String lamp, Chromaticity colour) {}

    /// A chip a lamp and colour; where several looks have it none is named.
    private void addChips(List<Card.Part> parts) {
        Map<Shine, String> names = new LinkedHashMap<>();
        for (LightCard.Run run : runs) {
            lamps(run)
                    .filter(lamp -> run.scene().beams().get(lamp).level() > 0)
                    .forEach(lamp -> Tint.of(run.light(lamp)).findColour().ifPresent(colour -> {
                        String lampName = run.light(lamp).name();
                        names.merge(
                                new Shine(lampName, colour),
                                run.pass().isEmpty() ? lampName : lampName + ", " + run.pass(),
                                (_, _) -> lampName);
                    }));
        }
        names.forEach((shine, name) -> parts.add(chip(name, shine.colour())));
    }

    private static Card.Part.Chip chip(String name, Chromaticity colour) {
        String code = Words.chip(colour).toHex();
        return new Card.Part.Chip(
                name,
                code,
                Words.hue(colour) + ": x " + Print.number(colour.x(), 4) + ", y " + Print.number(colour.y(), 4)
                        + "; on a screen about " + code);
    }

    /// What the camera looks at, else the only thing.
    private OptionalInt findThing() {
        LightCard.Run first = runs.getFirst();
        if (first.shot().camera().aim() instanceof Camera.Aim.At(String thing, var _)) {
            return OptionalInt.of(first.stage().thingIndex(thing));
        }
        return first.shot().placed().isEmpty() ? OptionalInt.empty() : OptionalInt.of(0);
    }

    private void addMeter(List<Card.Part> parts, int thing) {
        List<List<String>> rows = new ArrayList<>();
        for (LightCard.Run run : runs) {
            boolean hasOpen = answer.marks().stream().anyMatch(mark -> isOpen.test(mark.mark()));
            rows.add(List.of(
                    name(run),
                    hasOpen
                            ? "not known: marks are still open"
                            : Metered.of(
                                            run.stage(),
                                            run.scene(),
                                            thing,
                                            plan.film().rate())
                                    .together()
                                    .toText(),
                    ""));
        }
        Placed placed = runs.getFirst().shot().placed().get(thing);
        parts.add(new Card.Part.Grid(List.of("Look", "Shall read at " + placed.name(), "Read"), rows));
        for (WantAnswer want : answer.wants()) {
            if (want.want().startsWith("matched ")) {
                parts.add(new Card.Part.Fact(
                        "To match",
                        want.verdict().word() + ". "
                                + want.attempts().stream()
                                        .filter(attempt -> attempt.startsWith("In "))
                                        .findFirst()
                                        .orElseGet(() -> want.because().isEmpty()
                                                ? ""
                                                : want.because().getFirst())));
            }
        }
    }

    /// How long lamps take from look to look; those that change nothing aren't told.
    private void addChange(List<Card.Part> parts) {
        List<String> words = new ArrayList<>();
        lamps(runs.getFirst()).forEach(lamp -> {
            Set<String> settings = runs.stream().map(run -> setting(run, lamp)).collect(Collectors.toSet());
            if (settings.size() > 1) {
                PlacedLight light = runs.getFirst().light(lamp);
                words.add(light.name() + " "
                        + light.light()
                                .written()
                                .findQuantity("changes_in")
                                .map(time -> time.valueText())
                                .orElse("not known: time it, and write "
                                        + light.light().name() + "'s changes_in"));
            }
        });
        if (!words.isEmpty()) {
            parts.add(new Card.Part.Fact("To change", String.join("; ", words) + ". Then wait and roll."));
        }
    }

    private List<Cut> alternating() {
        return plan.cuts().stream()
                .filter(cut -> cut.shot().name().equals(answer.shot()))
                .filter(cut -> !cut.alternate().isEmpty())
                .toList();
    }

    private void addCut(List<Card.Part> parts) {
        for (Cut cut : alternating()) {
            parts.add(new Card.Part.Fact(
                    "In the cut",
                    cut.alternate().stream().map(Named::name).collect(Collectors.joining(", ")) + " in turn, "
                            + cut.each().orElse(cut.frames()) + " frames each, " + cut.frames() + " in all."));
        }
    }
}
