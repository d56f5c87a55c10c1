package plumeline.want;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import plumeline.plan.Delivery;
import plumeline.plan.Named;
import plumeline.plan.Plan;
import plumeline.plan.WantLine;
import plumeline.plan.When;
import plumeline.plan.Written;
import plumeline.quantity.Quantity;
import plumeline.stage.Stage;

/// From a want as written to a want that can be judged.
public final class Wants {
    private static final String NOT_YET = "not computed yet";
    private static final double FILLS_WITHIN = 0.02;
    private static final double SAME_SIZE_WITHIN = 0.01;
    private static final double SHARP_TO_PIXELS = 2;

    private Wants() {}

    /// How large a thing is in another shot, for wants that compare shots.
    public interface Elsewhere {
        /// Finds the share of the picture's height that a thing fills at its middle plane in another shot.
        ///
        /// @param shot the other shot's name
        /// @param thing the thing's name there
        /// @param when the instant in that shot
        /// @return the share, dimensionless; empty where that shot has no such thing or isn't solved
        Optional<Double> findShare(String shot, String thing, When when);
    }

    /// Makes a want.
    ///
    /// @param line the want as written
    /// @param plan the plan
    /// @param stage the shot, or the pass, that it is about
    /// @param elsewhere what other shots give
    /// @return the want; one that isn't judged yet where this version can't
    public static Want of(WantLine line, Plan plan, Stage stage, Elsewhere elsewhere) {
        Written keys = line.written();
        return switch (line.word()) {
            case "fills" -> fills(line, stage);
            case "sharp" ->
                new Sharp(
                        line,
                        things(line.subjects(), stage),
                        si(keys, "sharp_to", SHARP_TO_PIXELS),
                        keys.findWord("at").filter("axis"::equals).isPresent()
                                ? Sharp.AxisOnly.YES
                                : Sharp.AxisOnly.NO);
            case "hidden" ->
                Hidden.of(line, stage, things(line.subjects(), stage), things(keys.listNames("behind"), stage));
            case "shown" -> new Shown(line, things(line.subjects(), stage), si(keys, "gap", 0));
            case "inside" -> inside(line, plan, stage);
            case "clear" ->
                new Clear(
                        line,
                        bodies(line.subjects(), stage),
                        si(keys, "by", 0),
                        stage.shot().camera().lens().barrel());
            case "off_picture" -> new OffPicture(line, things(line.subjects(), stage), lamps(line.subjects(), stage));
            case "reaches" -> new Reaches(line, stage.shot().camera());
            case "same_size" -> sameSize(line, stage, elsewhere);
            default -> new NotComputed(line, NOT_YET);
        };
    }

    /// Tells whether a film's want is judged on each shot alone, so that solving a shot can serve it.
    ///
    /// @param line a want of the film
    /// @return true for `inside` and its like
    public static boolean isJudgedByShot(WantLine line) {
        return switch (line.word()) {
            case "inside", "clear", "reaches" -> true;
            default -> false;
        };
    }

    private static Want fills(WantLine line, Stage stage) {
        Written keys = line.written();
        boolean height = keys.has("height");
        double wanted = si(keys, height ? "height" : "width", 0);
        return new Fills(
                line,
                things(line.subjects(), stage),
                height ? Fills.Along.HEIGHT : Fills.Along.WIDTH,
                wanted,
                wanted * si(keys, "within", FILLS_WITHIN),
                keys.findWord("or").filter("more"::equals).isPresent()
                        ? Fills.More.IS_AS_GOOD
                        : Fills.More.COUNTS_AS_OFF,
                keys.findWord("by").filter("outline"::equals).isPresent() ? Fills.By.OUTLINE : Fills.By.MIDDLE_PLANE);
    }

    private static Want inside(WantLine line, Plan plan, Stage stage) {
        List<Delivery> deliveries = line.subjects().stream()
                .flatMap(named -> plan.findDelivery(named.name()).stream())
                .toList();
        List<Named> of = line.written().listNames("of");
        List<Integer> things = of.isEmpty() || isAll(of) ? allThings(stage) : things(of, stage);
        return new Inside(line, deliveries, things);
    }

    private static Want sameSize(WantLine line, Stage stage, Elsewhere elsewhere) {
        String other = line.written().findWord("as").orElse("");
        String thing = line.subjects().getFirst().name();
        Optional<Double> share = elsewhere.findShare(other, thing, line.when());
        if (share.isEmpty()) {
            return new NotComputed(line, other + " has no " + thing + " to compare with.");
        }
        return new SameSize(line, stage.thingIndex(thing), share.get(), si(line.written(), "within", SAME_SIZE_WITHIN));
    }

    private static double si(Written keys, String path, double otherwise) {
        return keys.findQuantity(path).map(Quantity::si).orElse(otherwise);
    }

    private static boolean isAll(List<Named> names) {
        return names.size() == 1 && names.getFirst().name().equals("all");
    }

    private static List<Integer> allThings(Stage stage) {
        return IntStream.range(0, stage.shot().placed().size()).boxed().toList();
    }

    private static List<Integer> things(List<Named> names, Stage stage) {
        if (isAll(names)) {
            return allThings(stage);
        }
        return names.stream()
                .map(named -> stage.thingIndex(named.name()))
                .filter(index -> index >= 0)
                .toList();
    }

    private static List<Integer> lamps(List<Named> names, Stage stage) {
        return names.stream()
                .map(named -> stage.lampIndex(named.name()))
                .filter(index -> index >= 0)
                .toList();
    }

    private static List<Clear.Named> bodies(List<Named> names, Stage stage) {
        List<Clear.Named> bodies = new ArrayList<>();
        List<Integer> things = things(names, stage);
        things.forEach(index -> bodies.add(new Clear.Named.Thing(index)));
        List<Integer> lamps = isAll(names)
                ? IntStream.range(0, stage.shot().lights().size()).boxed().toList()
                : lamps(names, stage);
        lamps.forEach(index -> bodies.add(new Clear.Named.Lamp(index)));
        if (isAll(names) || names.stream().anyMatch(named -> named.name().equals("camera"))) {
            bodies.add(new Clear.Named.Camera());
        }
        return bodies;
    }
}
