package plumeline.cli.ink;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plumeline.desk.PlanFile;
import plumeline.desk.Refusal;
import plumeline.plan.Pass;
import plumeline.plan.Plan;
import plumeline.plan.Release;
import plumeline.plan.Shot;
import plumeline.plume.InkKey;
import plumeline.plume.InkReading;
import plumeline.plume.InkShot;
import plumeline.plume.InkShots;
import plumeline.plume.Viewing;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.solve.Solve;
import plumeline.stage.Stage;

/// The shot, or its pass, whose ink is followed, its marks set.
///
/// @param plan the plan
/// @param shot the shot
/// @param passes the pass, or all of its passes that are alike in this; none where it has no passes
/// @param stage the shot as staged
/// @param valuesSi its marks' values
/// @param ink its ink as written
/// @param open what is said of marks that nothing sets
record InkChoice(
        Plan plan, Shot shot, List<String> passes, Stage stage, List<Double> valuesSi, InkShot ink, List<String> open) {
    InkChoice {
        passes = List.copyOf(passes);
        valuesSi = List.copyOf(valuesSi);
        open = List.copyOf(open);
    }

    /// A shot's marks with their values.
    private record Marks(List<Double> valuesSi, List<String> open) {}

    /// Chooses.
    ///
    /// @param pass the pass that was named
    /// @throws Refusal where there is no such pass, several differ and none was named, or what ink needs is missing
    static InkChoice of(Plan plan, Shot shot, Optional<String> pass) throws Refusal {
        List<String> names = pass.isPresent() ? List.of(PlanFile.pass(shot, pass.get())) : withInk(shot);
        Marks marks = marks(plan, shot);
        List<InkChoice> choices = new ArrayList<>();
        for (String name : names) {
            choices.add(of(plan, shot, List.of(name), Stage.of(plan, shot, name), marks));
        }
        if (choices.isEmpty()) {
            return of(plan, shot, List.of(), Stage.of(plan, shot), marks);
        }
        Set<List<InkKey>> different = new HashSet<>();
        choices.forEach(each ->
                different.add(List.of(InkKey.ofFlow(each.ink), each.viewing().key())));
        if (different.size() > 1) {
            throw new Refusal(
                    "passes of the shot " + shot.name() + " differ in their ink or how it is seen: "
                            + String.join(", ", names),
                    "Name one of them, such as --pass " + names.getFirst() + ".");
        }
        InkChoice first = choices.getFirst();
        return new InkChoice(plan, shot, names, first.stage, first.valuesSi, first.ink, first.open);
    }

    private static List<String> withInk(Shot shot) {
        return shot.passes().stream()
                .filter(pass -> pass.effective().findRelease().orElse(null) instanceof Release.OfInk)
                .map(Pass::name)
                .toList();
    }

    /// Free marks are solved as `solve` does it; those on which nothing bears stand in the middle of where they may.
    private static Marks marks(Plan plan, Shot shot) {
        if (shot.marks().stream().noneMatch(mark -> mark.isFree())) {
            double[] written = Stage.of(plan, shot).startValues();
            return new Marks(Arrays.stream(written).boxed().toList(), List.of());
        }
        ShotAnswer answer =
                Solve.film(plan, List.of(shot.name()), List.of()).shots().getFirst();
        List<Double> values = answer.posed().valuesSi();
        List<String> open = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            MarkAnswer mark = answer.marks().get(i);
            String path = mark.mark().path();
            if (mark.setting() instanceof MarkAnswer.Setting.Open && path.matches(".*[.][xyz]")) {
                open.add(path + " " + InkText.length(plan, values.get(i)) + ", the middle of where it may be");
            }
        }
        return new Marks(values, open);
    }

    private static InkChoice of(Plan plan, Shot shot, List<String> passes, Stage stage, Marks marks) throws Refusal {
        return switch (InkShots.read(stage, values(marks.valuesSi))) {
            case InkReading.Ready(InkShot ink) ->
                new InkChoice(plan, shot, passes, stage, marks.valuesSi, ink, marks.open);
            case InkReading.Lacking(String field, String lack, String attempt) ->
                throw new Refusal(
                        (passes.isEmpty() ? "" : "pass " + passes.getFirst() + ": ") + field + " " + lack, attempt);
        };
    }

    private static double[] values(List<Double> valuesSi) {
        return valuesSi.stream().mapToDouble(Double::doubleValue).toArray();
    }

    Viewing viewing() {
        return Viewing.of(stage, values(valuesSi), ink);
    }

    /// What was taken for what isn't written.
    List<String> assumed() {
        List<String> assumed = new ArrayList<>(open);
        assumed.addAll(ink.assumed());
        return assumed;
    }

    /// The shot's name, and its pass's.
    String title() {
        return passes.isEmpty() ? shot.name() : shot.name() + " (" + String.join(", ", passes) + ")";
    }
}
