package plumeline.card;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import plumeline.motion.Registration;
import plumeline.pace.Coupling;
import plumeline.pace.PassesApart;
import plumeline.plan.Cut;
import plumeline.plan.Playback;
import plumeline.plan.Shot;
import plumeline.plan.WantLine;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.Stage;

/// Passes that shall lie on each other: how far apart they may come at worst, part by part, and what helps.
///
/// @param head what stands at its head
/// @param passes what shall lie on each other
/// @param values the marks' values, SI
/// @param film the film's rate
record RegistrationCard(MoveCard.Head head, Passes passes, List<Double> values, Quantity film) {
    /// What is taken where no want says how near.
    private static final double USUAL_PIXELS = 1;

    /// Nobody waits for a move that is slower by more than this.
    private static final double MOST_TIMES = 4;

    private static final double ROUNDING = 1e-9;

    RegistrationCard {
        values = List.copyOf(values);
    }

    /// Passes that shall lie on each other.
    ///
    /// @param names their names
    /// @param stages the shot in each
    /// @param wants the wants that say how near; none where only the cut asks
    /// @param cuts where the film cuts between them
    record Passes(List<String> names, List<Stage> stages, List<WantLine> wants, List<Cut> cuts) {
        Passes {
            names = List.copyOf(names);
            stages = List.copyOf(stages);
            wants = List.copyOf(wants);
            cuts = List.copyOf(cuts);
        }
    }

    private double mostPixels() {
        return passes.wants().stream()
                .flatMap(want -> want.written().findQuantity("within").stream())
                .mapToDouble(Quantity::si)
                .min()
                .orElse(USUAL_PIXELS);
    }

    Card card() {
        PassesApart apart = PassesApart.worst(passes.stages(), values, film);
        Stage stage = passes.stages().getFirst();
        List<Card.Part> parts = new ArrayList<>();
        parts.add(new Card.Part.Fact("Passes", String.join(", ", passes.names()) + "." + cut()));
        parts.add(new Card.Part.Fact(
                "At worst",
                stage.shot().placed().get(apart.thing()).name() + " may lie " + PassesApart.text(apart.pixels())
                        + " apart at screen frame " + Print.number(apart.frame() + 1, 0) + ", in captured px: "
                        + (apart.pixels() <= mostPixels() + ROUNDING ? "within " : "more than ")
                        + PassesApart.text(mostPixels())
                        + (passes.wants().isEmpty() ? ", which is taken as no want says how near." : ", the limit.")));
        parts.add(new Card.Part.Grid(List.of("At worst", "By"), budget(apart)));
        parts.add(new Card.Part.Fact("What helps", help(apart)));
        longer(parts);
        parts.add(new Card.Part.Tick(
                "Between passes nothing is touched but what changes: no focus, no iris, no head, no hand on the"
                        + " table. Same start of the machine, from the same side."));
        parts.add(new Card.Part.Tick("Lay first, middle and last frame of both passes over each other, difference view:"
                + " what shows is the miss."));
        return head.card(parts);
    }

    private String cut() {
        return passes.cuts().stream()
                .map(cut -> " Cut in turn, " + cut.each().orElse(cut.frames()) + " frames each.")
                .distinct()
                .collect(Collectors.joining());
    }

    private List<List<String>> budget(PassesApart apart) {
        Registration parts = apart.registration();
        List<List<String>> rows = new ArrayList<>();
        rows.add(row("how far apart the plan has them", apart.plannedPixels()));
        rows.add(
                row("half a captured frame's travel, where camera and move don't start together", parts.phasePixels()));
        rows.add(row("what the machines repeat", parts.repeatsPixels()));
        rows.add(row("what still sways", parts.residuePixels()));
        rows.add(row("focus and zoom that repeat", parts.breathingPixels()));
        rows.add(row("all of it together", apart.pixels()));
        rows.add(row("that is allowed", mostPixels()));
        return rows;
    }

    private static List<String> row(String what, double pixels) {
        return List.of(pixels > 0 ? PassesApart.text(pixels) : "0 px", what);
    }

    private String help(PassesApart apart) {
        Registration now = apart.registration();
        double left = mostPixels() - apart.plannedPixels();
        double rest = now.restPixels();
        if (now.sumPixels() <= left + ROUNDING) {
            return "Nothing is needed.";
        }
        OptionalDouble slower = left > 0 ? now.findSlower(left) : OptionalDouble.empty();
        OptionalDouble rate = left > 0 ? now.findRate(left) : OptionalDouble.empty();
        List<String> words = new ArrayList<>();
        slower.stream()
                .filter(times -> times <= MOST_TIMES)
                .forEach(times -> words.add(slower(Math.ceil(times * 10 - ROUNDING) / 10)));
        rate.ifPresent(least -> words.add(
                Print.number(Math.ceil(least - ROUNDING), 0) + " fps and more with the move as it is" + mode(least)));
        if (left > 0 && now.phasePixels() > 0 && now.isMetTriggered(left)) {
            words.add("camera and machine started together: " + PassesApart.text(apart.plannedPixels() + rest));
        }
        if (now.residuePixels() > 0) {
            words.add("the machine started so much earlier that what sways has died down by then");
        }
        return words.isEmpty()
                ? "No slower move, no faster rate, no triggered start: without half a frame's travel it is still "
                        + PassesApart.text(apart.plannedPixels() + rest)
                        + ". A machine that repeats better or less of it in the picture does."
                : CardWords.capital(String.join("; or ", words)) + ".";
    }

    /// The move in so many times its time, rounded up so that nobody does less than is needed, and played so.
    private String slower(double times) {
        Shot shot = passes.stages().getFirst().shot();
        String runs = shot.moves().stream()
                .flatMap(move -> move.findTime().stream()
                        .map(time -> move.name() + " in " + Print.seconds(time.si() * times, 1)))
                .collect(Collectors.joining(", "));
        String played = shot.playback() instanceof Playback.Constant(double speed, var _)
                ? "played at " + Coupling.speed(speed * times)
                : "played " + Print.number(times, 1) + " times as fast";
        return "the move " + Print.number(times, 1) + " times slower (" + runs + "), " + played;
    }

    private String mode(double least) {
        List<Double> rates = passes.stages().getFirst().shot().camera().body().modes().stream()
                .map(mode -> mode.rate().si())
                .sorted()
                .toList();
        if (rates.isEmpty()) {
            return "";
        }
        return rates.stream()
                .filter(rate -> rate >= least * (1 - ROUNDING))
                .findFirst()
                .map(rate -> " (the body's " + Coupling.rate(rate) + ")")
                .orElse(" (at as many px; the body has none so fast)");
    }

    /// The longer a look stands, the fewer cuts show the miss.
    private void longer(List<Card.Part> parts) {
        for (Cut cut : passes.cuts()) {
            double each = (double) cut.each().orElse(cut.frames());
            if (each < cut.frames()) {
                parts.add(new Card.Part.Fact(
                        "Longer looks",
                        "At " + Print.number(each, 0) + " frames a look the film cuts "
                                + Print.number(film.si() / each, 1)
                                + " times a second, and each cut shows the miss; at "
                                + Print.number(2 * each, 0) + " frames " + Print.number(film.si() / each / 2, 1)
                                + " times."));
                return;
            }
        }
    }
}
