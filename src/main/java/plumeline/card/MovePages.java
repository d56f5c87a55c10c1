package plumeline.card;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import plumeline.keys.MovedAxis;
import plumeline.plan.Cut;
import plumeline.plan.Move;
import plumeline.plan.Named;
import plumeline.plan.Plan;
import plumeline.plan.WantLine;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Stage;

/// The cards of a shot's moves and time: one a move, turntables', the ramp page, registration.
///
/// @param plan the plan
/// @param answer the findings on the shot
/// @param print the papers' figures
record MovePages(Plan plan, ShotAnswer answer, Print print) {
    private Quantity film() {
        return plan.film().rate();
    }

    private List<Double> values() {
        return answer.posed().valuesSi();
    }

    private String id(String kind) {
        return answer.shot() + ".card." + kind;
    }

    private MoveCard.Head head(String kind, String title) {
        return new MoveCard.Head(id(kind), title, Cautions.ofFurtherMoves());
    }

    List<Card> list() {
        List<Card> all = new ArrayList<>();
        MovedAxis.Found found = MovedAxis.of(answer);
        Map<String, List<MovedAxis>> moves = new LinkedHashMap<>();
        found.moved()
                .forEach(axis -> moves.computeIfAbsent(axis.move().name(), _ -> new ArrayList<>())
                        .add(axis));
        moves.values()
                .forEach(axes -> addOnce(all, axes.stream().flatMap(this::move).toList()));
        moves.values()
                .forEach(axes ->
                        addOnce(all, axes.stream().flatMap(this::turntable).toList()));
        addRamp(all);
        addRegistrations(all);
        if (!all.isEmpty() && !all.getFirst().cautions().isEmpty()) {
            Card first = all.removeFirst();
            all.addFirst(new Card(first.id(), first.title(), Cautions.ofMoves(), first.parts()));
        }
        return all;
    }

    /// A card of one pass, by what it is called without that.
    private record OfPass(String pass, String name, Card card) {}

    /// Passes in which a card says the same share one.
    private static void addOnce(List<Card> all, List<OfPass> cards) {
        Map<String, List<OfPass>> byName = new LinkedHashMap<>();
        cards.forEach(card ->
                byName.computeIfAbsent(card.name(), _ -> new ArrayList<>()).add(card));
        for (List<OfPass> same : byName.values()) {
            Map<List<Card.Part>, OfPass> kinds = new LinkedHashMap<>();
            same.forEach(card -> kinds.putIfAbsent(card.card().parts(), card));
            for (OfPass one : kinds.values()) {
                Card card = one.card();
                boolean isShared = kinds.size() == 1;
                all.add(
                        isShared
                                ? card
                                : new Card(
                                        card.id() + "." + one.pass(),
                                        card.title() + ", in " + one.pass(),
                                        card.cautions(),
                                        card.parts()));
            }
        }
    }

    /// A pan has no card where it has no time: its shot is held.
    private Stream<OfPass> move(MovedAxis axis) {
        if (axis.isFollowing() && axis.stage().lastSeconds() <= 0) {
            return Stream.of();
        }
        String name = axis.move().name();
        Card card = new MoveCard(head("move." + name, "Move card: " + name), axis, values(), film(), print).card();
        return Stream.of(new OfPass(axis.pass(), name, card));
    }

    private Stream<OfPass> turntable(MovedAxis axis) {
        if (axis.move().axis() != Move.Axis.TURNTABLE) {
            return Stream.of();
        }
        Stage stage = axis.stage();
        return axis.move().listCarried().stream()
                .map(Named::name)
                .filter(name -> stage.thingIndex(name) >= 0)
                .map(name -> new OfPass(
                        axis.pass(),
                        name,
                        new TurntableCard(
                                        head("turntable." + name, "Turntable card: " + name),
                                        axis,
                                        stage.thingIndex(name),
                                        values(),
                                        film())
                                .card()));
    }

    private void addRamp(List<Card> all) {
        List<OfPass> pages = answer.posed().stages().stream()
                .filter(run -> new RampPage(id("ramp"), run.stage(), film()).isNeeded())
                .map(run -> new OfPass(run.pass(), "ramp", new RampPage(id("ramp"), run.stage(), film()).card()))
                .toList();
        addOnce(all, pages);
    }

    private void addRegistrations(List<Card> all) {
        Map<List<String>, RegistrationCard.Passes> sets = new LinkedHashMap<>();
        List<WantLine> wants = answer.posed().stages().getFirst().stage().shot().wants().stream()
                .filter(want -> want.word().equals("registers"))
                .toList();
        wants.forEach(
                want -> put(sets, want.subjects().stream().map(Named::name).toList(), wants));
        plan.cuts().stream()
                .filter(cut -> cut.shot().name().equals(answer.shot()))
                .filter(cut -> !cut.alternate().isEmpty())
                .forEach(cut -> put(
                        sets,
                        cut.alternate().stream().map(Named::name).distinct().toList(),
                        wants));
        int number = 0;
        for (RegistrationCard.Passes passes : sets.values()) {
            number++;
            MoveCard.Head head = head("registration" + (number == 1 ? "" : "." + number), "Registration card");
            all.add(new RegistrationCard(head, passes, values(), film()).card());
        }
    }

    private void put(Map<List<String>, RegistrationCard.Passes> sets, List<String> names, List<WantLine> wants) {
        List<String> key = names.stream().sorted().toList();
        List<Stage> stages = names.stream()
                .flatMap(name -> answer.posed().stages().stream()
                        .filter(run -> run.pass().equals(name))
                        .map(ShotAnswer.Run::stage))
                .toList();
        boolean moves = stages.stream().anyMatch(stage -> !stage.shot().moves().isEmpty());
        if (stages.size() < 2 || stages.getFirst().shot().placed().isEmpty() || !moves) {
            return;
        }
        List<WantLine> near = wants.stream()
                .filter(want -> want.subjects().stream()
                        .map(Named::name)
                        .sorted()
                        .toList()
                        .equals(key))
                .toList();
        List<Cut> cuts = plan.cuts().stream()
                .filter(cut -> cut.shot().name().equals(answer.shot()))
                .filter(cut -> cut.alternate().stream()
                        .map(Named::name)
                        .distinct()
                        .sorted()
                        .toList()
                        .equals(key))
                .toList();
        sets.putIfAbsent(key, new RegistrationCard.Passes(names, stages, near, cuts));
    }
}
