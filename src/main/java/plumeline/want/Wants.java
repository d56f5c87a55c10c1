package plumeline.want;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import plumeline.ink.Estimate;
import plumeline.lit.LightMeasures;
import plumeline.look.LookMeasures;
import plumeline.pace.PaceMeasures;
import plumeline.plan.Named;
import plumeline.plan.Placed;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.plan.WantLine;
import plumeline.plan.When;
import plumeline.plan.Written;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.timeline.Use;
import plumeline.wet.Lacks;

/// From a want as written to a want that can be judged.
public final class Wants {
    private static final String NOT_YET = "not computed yet";
    private static final double FILLS_WITHIN = 0.02;
    private static final double SAME_SIZE_WITHIN = 0.01;
    private static final double SHARP_TO_PIXELS = 2;
    private static final double SAME_TIME = 1e-6;

    private Wants() {}

    /// How large a thing is in another shot, for wants that compare shots.
    public interface Elsewhere {
        /// When what never comes counts as coming, s: far past every shot.
        double NEVER_SECONDS = 600;

        /// Finds the share of the picture's height that a thing fills at its middle plane in another shot.
        ///
        /// @param shot the other shot's name
        /// @param thing the thing's name there
        /// @param when the instant in that shot
        /// @return the share, dimensionless; empty where that shot has no such thing or isn't solved
        Optional<Double> findShare(String shot, String thing, When when);

        /// A height of a thing in a shot with its marks set.
        ///
        /// @param stage the shot
        /// @param values its marks' values, SI, in the order of the stage's marks
        /// @param thing the thing's name
        /// @param heightShare share of its height, 0 its base, 1 its top
        /// @param bySeconds how long it is asked about, s from the release
        record Height(Stage stage, List<Double> values, String thing, double heightShare, double bySeconds) {
            /// Copies the list.
            public Height {
                values = List.copyOf(values);
            }
        }

        /// When ink veils a height, as tries of it differ.
        ///
        /// @param seconds s from the release, with what its runs differ by, [#NEVER_SECONDS] where it never
        /// does
        /// @param byShare share of takes in which it does by the time that was asked about, 0 to 1
        record Veiled(Estimate seconds, double byShare) {}

        /// Finds when ink veils a height of a thing, as a simulation of just these values gave it. This is where its
        /// results are handed in.
        ///
        /// @param height what is asked about
        /// @return when; empty where none was run, then the law decides
        default Optional<Veiled> findVeiled(Height height) {
            return Optional.empty();
        }
    }

    /// Finds the share of the picture's height that a thing fills at its middle plane, as `fills` counts it.
    ///
    /// @param stage the shot
    /// @param valuesSi its marks' values, SI
    /// @param thing the thing's name there
    /// @param when the instant; the start for a whole shot
    /// @return the share, dimensionless; empty where the shot has no such thing, or sees it in a way that isn't
    ///     computed
    public static Optional<Double> findShare(Stage stage, double[] valuesSi, String thing, When when) {
        int index = stage.thingIndex(thing);
        if (index < 0) {
            return Optional.empty();
        }
        Scene scene = stage.scene(valuesSi, stage.frameOf(when));
        if (!scene.lines().at(List.of(scene.things().get(index))).isCovered()) {
            return Optional.empty();
        }
        return Optional.of(Fills.middlePlaneShare(scene, scene.things().get(index)));
    }

    /// Makes a want.
    ///
    /// @param line the want as written
    /// @param plan the plan
    /// @param stage the shot, or the pass, that it is about
    /// @param elsewhere what other shots give
    /// @return the want; one that isn't judged yet where this version can't
    public static Want of(WantLine line, Plan plan, Stage stage, Elsewhere elsewhere) {
        Optional<String> never = findNever(line.when(), stage);
        if (never.isPresent()) {
            return new Want.NotComputed(line, never.get());
        }
        Want want = judged(line, plan, stage, elsewhere);
        return stage.findTank().isPresent() ? sighted(want) : want;
    }

    /// Why an instant isn't one of the shot's.
    private static Optional<String> findNever(When when, Stage stage) {
        long frames = stage.frames();
        double lasts = stage.lastSeconds();
        return switch (when) {
            case When.AtFrame(long frame)
            when frame >= frames -> Optional.of("No such frame: the shot has " + frames + ", counted from 0.");
            case When.AtTime(Quantity time)
            when time.si() > lasts + SAME_TIME ->
                Optional.of("No such time: the shot is over after " + Print.seconds(lasts, 2) + " on the table.");
            default -> Optional.empty();
        };
    }

    /// Sees to it that a want which rests on sight lines that aren't computed is unknown.
    private static Want sighted(Want want) {
        return switch (want) {
            case Fills fills -> new Sighted(fills, fills.things(), List.of(), Sighted.Seen.EACH);
            case Sharp sharp -> new Sighted(sharp, sharp.things(), List.of(), Sighted.Seen.EACH);
            case Inside inside -> new Sighted(inside, inside.things(), List.of(), Sighted.Seen.EACH);
            case OffPicture off -> new Sighted(off, off.things(), off.lamps(), Sighted.Seen.EACH);
            case SameSize same -> new Sighted(same, List.of(same.thing()), List.of(), Sighted.Seen.EACH);
            case Shown shown -> new Sighted(shown, shown.things(), List.of(), Sighted.Seen.TOGETHER);
            case Hidden hidden -> {
                List<Integer> all = new ArrayList<>(hidden.things());
                all.addAll(hidden.behind());
                yield new Sighted(hidden, all, List.of(), Sighted.Seen.TOGETHER);
            }
            case Reaches reaches -> new Sighted(reaches, List.of(), List.of(), Sighted.Seen.EACH);
            case Clear clear -> clear;
            case StaysUnder under -> under;
            case Hangs hangs -> hangs;
            case Upright upright -> upright;
            case BeadsStay beads -> beads;
            case Sweats sweats -> sweats;
            case LineHidden hidden -> hidden;
            case TankCarries carries -> carries;
            case InkReaches reaches -> reaches;
            case ClearUntil clear -> new Sighted(clear, List.of(clear.thing()), List.of(), Sighted.Seen.EACH);
            case VeiledBy veiled -> new Sighted(veiled, List.of(veiled.at().thing()), List.of(), Sighted.Seen.EACH);
            case SeeThrough through -> new Sighted(through, List.of(through.thing()), List.of(), Sighted.Seen.EACH);
            case Rises rises -> rises;
            case FallsThrough falls -> falls;
            case Shining shining -> shining;
            case Gauged<?> gauged -> gauged;
            case Sighted already -> already;
            case Want.NotComputed not -> not;
        };
    }

    private static Want judged(WantLine line, Plan plan, Stage stage, Elsewhere elsewhere) {
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
            case "clear" -> clear(line, plan, stage);
            case "off_picture" -> new OffPicture(line, things(line.subjects(), stage), lamps(line.subjects(), stage));
            case "reaches" -> new Reaches(line, stage.shot().camera());
            case "same_size" -> sameSize(line, plan, stage, elsewhere);
            default -> others(line, plan, stage, elsewhere);
        };
    }

    private static Want others(WantLine line, Plan plan, Stage stage, Elsewhere elsewhere) {
        if (InkWants.isOne(line.word())) {
            return InkWants.of(line, plan, stage, elsewhere);
        }
        if (LightMeasures.isOne(line.word())) {
            return Shining.of(line, plan, stage);
        }
        if (LookMeasures.isOne(line.word())) {
            return Gauged.ofLooks(line, plan, stage);
        }
        if (PaceMeasures.isOne(line.word())) {
            return Gauged.ofPace(line, plan, stage);
        }
        return WaterWants.isOne(line.word()) ? WaterWants.of(line, plan, stage) : new Want.NotComputed(line, NOT_YET);
    }

    /// Tells whether a film's want is judged on each shot alone, so that solving a shot can serve it.
    ///
    /// @param line a want of the film
    /// @return true for `inside` and its like
    public static boolean isJudgedByShot(WantLine line) {
        return switch (line.word()) {
            case "inside", "sharp_enough", "clear", "reaches", "tank_carries" -> true;
            default -> false;
        };
    }

    /// Tells whether a film's want has anything to judge in a shot.
    ///
    /// @param line a want of the film that is judged by shot
    /// @param shot one of its shots
    /// @return false for a tank that the shot doesn't place
    public static boolean isAbout(WantLine line, Shot shot) {
        return !line.word().equals("tank_carries")
                || shot.findTank()
                        .filter(tank -> tank.tank()
                                .name()
                                .equals(line.subjects().getFirst().name()))
                        .isPresent();
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
        List<Inside.In> deliveries = line.subjects().stream()
                .flatMap(named -> plan.findDelivery(named.name()).stream())
                .map(delivery -> new Inside.In(
                        delivery, Use.list(plan, delivery, stage.shot().name(), stage.pass(), stage.frames())))
                .toList();
        List<Named> of = line.written().listNames("of");
        List<Integer> things = of.isEmpty() || isAll(of) ? allThings(stage) : things(of, stage);
        return new Inside(line, deliveries, things);
    }

    private static Want clear(WantLine line, Plan plan, Stage stage) {
        List<Air.Standing> bodies = bodies(line.subjects(), stage);
        if (bodies.isEmpty()) {
            return new Want.NotComputed(line, Lacks.NO_TANK);
        }
        return new Clear(
                line,
                bodies,
                si(line.written(), "by", 0),
                stage.shot().camera().lens().barrel(),
                plan.film().papersOrDefault());
    }

    private static Want sameSize(WantLine line, Plan plan, Stage stage, Elsewhere elsewhere) {
        String other = line.written().findWord("as").orElse("");
        String thing = line.subjects().getFirst().name();
        int index = stage.thingIndex(thing);
        String there = nameThere(plan, other, thing, stage.shot().placed().get(index));
        Optional<Double> share = elsewhere.findShare(other, there, line.when());
        if (share.isEmpty()) {
            return new Want.NotComputed(line, other + " has no " + thing + " whose size is known.");
        }
        return new SameSize(
                line, index, new SameSize.Other(other, share.get()), si(line.written(), "within", SAME_SIZE_WITHIN));
    }

    /// What the thing is called in another shot: the same, or else what the first of the same product is called there.
    private static String nameThere(Plan plan, String other, String thing, Placed here) {
        List<Placed> there = plan.findShot(other).map(Shot::placed).orElse(List.of());
        if (there.stream().anyMatch(placed -> placed.name().equals(thing))) {
            return thing;
        }
        return there.stream()
                .filter(placed -> placed.thing().name().equals(here.thing().name()))
                .map(Placed::name)
                .findFirst()
                .orElse(thing);
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

    private static List<Air.Standing> bodies(List<Named> names, Stage stage) {
        List<Air.Standing> bodies = new ArrayList<>();
        List<Integer> things = things(names, stage);
        things.forEach(index -> bodies.add(new Air.Standing.Thing(index)));
        List<Integer> lamps = isAll(names)
                ? IntStream.range(0, stage.shot().lights().size()).boxed().toList()
                : lamps(names, stage);
        lamps.forEach(index -> bodies.add(new Air.Standing.Lamp(index)));
        if (isAll(names) || names.stream().anyMatch(named -> named.name().equals("camera"))) {
            bodies.add(new Air.Standing.Camera());
        }
        if (stage.findTank().isPresent()
                && (isAll(names)
                        || names.stream().anyMatch(named -> named.name().equals("tank")))) {
            bodies.add(new Air.Standing.Tank());
        }
        return bodies;
    }
}
