package plumeline.card;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import plumeline.fall.Medium;
import plumeline.geom.Body;
import plumeline.geom.Vec;
import plumeline.plan.Mark;
import plumeline.plan.Placed;
import plumeline.plan.Plan;
import plumeline.plan.Release;
import plumeline.plan.TankPlace;
import plumeline.plan.Thing;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.stage.TankFill;
import plumeline.want.Suspension;
import plumeline.wet.CarriedTank;

/// The cards of a shot: its tank's, its ink's, one for each thing that shall be in the water, one for each that hangs,
/// its lamps', its looks', its moves'.
public final class Cards {
    private final Plan plan;
    private final ShotAnswer answer;
    private final Print print;

    private Cards(Plan plan, ShotAnswer answer, PaperUnit unit) {
        this.plan = plan;
        this.answer = answer;
        print = new Print(unit);
    }

    /// Writes the cards of a solved shot. Things of one kind share a float card; what only a pass puts in the water or
    /// on lines has its cards too.
    ///
    /// @param plan the shot's plan
    /// @param answer the findings on the shot
    /// @param unit the papers' unit of length
    /// @return the tank card first, then the recipe card, float cards, hang cards, the light card, the look card,
    /// move cards, turntable cards, the ramp page, registration cards; none where a shot has nothing of it
    public static List<Card> of(Plan plan, ShotAnswer answer, PaperUnit unit) {
        Cards cards = new Cards(plan, answer, unit);
        List<Card> all = new ArrayList<>();
        cards.addTank(all);
        cards.addInk(all);
        cards.addFloats(all);
        cards.addHangs(all);
        cards.addLights(all);
        all.addAll(new MovePages(plan, answer, cards.print).list());
        return all;
    }

    private List<Stage> stages() {
        return answer.posed().stages().stream().map(ShotAnswer.Run::stage).toList();
    }

    private Scene start(Stage stage) {
        return stage.scene(answer.posed().values(), 0);
    }

    private String id(String kind) {
        return answer.shot() + ".card." + kind;
    }

    private void addTank(List<Card> all) {
        Stage stage = stages().getFirst();
        stage.shot().findTank().ifPresent(place -> {
            CarriedTank carried = CarriedTank.of(plan, place);
            all.add(new TankCard(id("tank"), stage.shot(), carried, start(stage), wet(stage), print).card());
        });
    }

    private void addInk(List<Card> all) {
        Stage stage = stages().getFirst();
        if (stage.shot().findRelease().orElse(null) instanceof Release.OfInk release) {
            List<Vec> mouth = release.at().marks().stream().anyMatch(this::isOpen)
                    ? List.of()
                    : stage.findMouth(answer.posed().values()).stream().toList();
            all.add(new InkCard(id("ink"), stage, start(stage), mouth, wet(stage), print).card());
        }
    }

    private List<Integer> wet(Stage stage) {
        return IntStream.range(0, stage.shot().placed().size())
                .filter(i -> isPlaced(stage.shot().placed().get(i)) && isWet(stage, i))
                .boxed()
                .toList();
    }

    private void addFloats(List<Card> all) {
        Map<String, FloatCard> cards = new LinkedHashMap<>();
        for (Stage stage : stages()) {
            for (int i = 0; i < stage.shot().placed().size(); i++) {
                if (stage.findTank().isPresent() && isMeantWet(stage, i)) {
                    Placed placed = stage.shot().placed().get(i);
                    cards.merge(placed.thing().reference(), floats(stage, placed), Cards::together);
                }
            }
        }
        cards.values().forEach(card -> all.add(card.card()));
    }

    private FloatCard floats(Stage stage, Placed placed) {
        double by = stage.shot().wants().stream()
                .filter(line -> line.word().equals("stays_under"))
                .filter(line -> line.subjects().getFirst().name().equals(placed.name()))
                .flatMap(line -> line.written().findQuantity("by").stream())
                .mapToDouble(Quantity::si)
                .max()
                .orElse(0);
        Thing thing = placed.thing();
        boolean isUnder = isWanted(stage, placed, "stays_under") || placed.isHung();
        boolean isToFloat = !isUnder && isWanted(stage, placed, "upright");
        TankPlace tank = stage.shot().findTank().orElseThrow();
        return new FloatCard(id("float." + thing.reference()), thing, List.of(placed.name()), tank, by, isToFloat);
    }

    private static boolean isWanted(Stage stage, Placed placed, String word) {
        return stage.shot().wants().stream()
                .anyMatch(line -> line.word().equals(word)
                        && line.subjects().getFirst().name().equals(placed.name()));
    }

    private static FloatCard together(FloatCard one, FloatCard other) {
        List<String> names = new ArrayList<>(one.names());
        other.names().stream().filter(name -> !names.contains(name)).forEach(names::add);
        return new FloatCard(
                one.id(),
                one.thing(),
                names,
                one.tank(),
                Math.max(one.by(), other.by()),
                one.isToFloat() && other.isToFloat());
    }

    private void addHangs(List<Card> all) {
        Map<String, Card> cards = new LinkedHashMap<>();
        for (Stage stage : stages()) {
            for (int i = 0; i < stage.shot().placed().size(); i++) {
                Placed placed = stage.shot().placed().get(i);
                if (placed.isHung()) {
                    String key = placed.name() + " " + placed.thing().reference();
                    if (!cards.containsKey(key)) {
                        cards.put(key, hang(stage, i, cards.size() + 1));
                    }
                }
            }
        }
        all.addAll(cards.values());
    }

    private void addLights(List<Card> all) {
        if (!stages().getFirst().shot().lights().isEmpty()) {
            List<LightCard.Run> runs = answer.posed().stages().stream()
                    .map(run -> new LightCard.Run(run.pass(), run.stage(), start(run.stage())))
                    .toList();
            all.add(new LightCard(id("light"), runs, plan.film().rate(), this::isOpen, print).card());
            LookCard looks = new LookCard(id("look"), plan, answer, runs, this::isOpen);
            if (looks.isNeeded()) {
                all.add(looks.card());
            }
        }
    }

    private Card hang(Stage stage, int thing, int number) {
        Placed placed = stage.shot().placed().get(thing);
        boolean isWet = stage.findTank().isPresent() && isMeantWet(stage, thing);
        double density = isWet
                ? TankFill.findDensity(stage.shot().findTank().orElseThrow()).orElse(0)
                : Medium.AIR.densityKilogramsPerMetre3();
        Suspension suspension = isPlaced(placed)
                ? Suspension.of(plan, stage, answer.posed().values(), thing, print.unit())
                : new Suspension.Unknown("Its place or its ties are still free: solve the plan, or write them.");
        HangCard.Place place = new HangCard.Place(isWet, density, ties(stage, thing), suspension);
        return new HangCard(id("hang." + number), placed, place, print).card();
    }

    private List<String> ties(Stage stage, int thing) {
        Placed placed = stage.shot().placed().get(thing);
        List<Double> metres = stage.tiesMetres(thing, answer.posed().values());
        if (placed.tied().isEmpty()) {
            return Collections.nCopies(HangCard.count(placed), "");
        }
        return IntStream.range(0, HangCard.count(placed))
                .mapToObj(i -> !isOpen(placed.tied().get(i)) ? print.length(metres.get(i)) : "")
                .toList();
    }

    /// Whether it is in the tank's water by its place; where that is still open, by its lines; or by a want.
    private boolean isMeantWet(Stage stage, int thing) {
        Placed placed = stage.shot().placed().get(thing);
        return isWanted(stage, placed, "stays_under") || (isPlaced(placed) ? isWet(stage, thing) : placed.isHung());
    }

    private boolean isWet(Stage stage, int thing) {
        Body body = start(stage).things().get(thing);
        boolean isFilled = stage.shot().findTank().flatMap(tank -> tank.water()).isPresent();
        return stage.findTank()
                .filter(walls -> isFilled ? walls.isWet(body) : walls.isWithin(body))
                .isPresent();
    }

    private boolean isPlaced(Placed placed) {
        return placed.marks().stream().noneMatch(this::isOpen);
    }

    private boolean isOpen(Mark mark) {
        return answer.marks().stream()
                .anyMatch(one ->
                        one.mark().path().equals(mark.path()) && one.setting() instanceof MarkAnswer.Setting.Open);
    }
}
