package plumeline.cli.lesson;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import plumeline.desk.Refusal;
import plumeline.lit.Metered;
import plumeline.lit.Spots;
import plumeline.plan.Placed;
import plumeline.plan.PlacedLight;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.quantity.Kind;
import plumeline.quantity.Quantities;
import plumeline.quantity.Quantity;
import plumeline.quantity.Reading;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.solve.Solve;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.take.Measured;

/// `--lux-at SHOT THING [PART] LIGHT LUX`: what a meter showed on a thing, beside what is computed there.
final class MeteredThing {
    private static final String OPTION = "--lux-at";
    private static final String ALL = "all";
    private static final String EXAMPLE = "reveal first label key 2300 lx";

    /// What of a reading must be left for the lamps that weren't read alone.
    private static final double LEAST_SHARE = 0.1;

    private final Plan plan;
    private final BiPredicate<Measured.LuxAt.Spot, String> isReadAlone;
    private final String typed;

    /// @param plan the plan with what was measured before
    /// @param isReadAlone whether a light was read alone at a place before
    /// @param typed the option's words
    MeteredThing(Plan plan, BiPredicate<Measured.LuxAt.Spot, String> isReadAlone, String typed) {
        this.plan = plan;
        this.isReadAlone = isReadAlone;
        this.typed = typed;
    }

    Measured read() throws Refusal {
        List<String> words = List.of(typed.strip().split("\\s+"));
        int names = words.size() > 4 && findPart(words.get(2)).isPresent() ? 4 : 3;
        if (words.size() <= names) {
            throw new Refusal(
                    OPTION + " is " + typed + "; must be a shot, a thing, its part where it isn't the label, a light or"
                            + " all, and the lux read",
                    "Give it as " + OPTION + " " + EXAMPLE + ".");
        }
        Shot shot = plan.findShot(
                        LessonOptions.check("a shot", words.get(0), LessonOptions.names(plan.shots(), Shot::name)))
                .orElseThrow();
        String thing = LessonOptions.check(
                "a thing of " + shot.name(), words.get(1), LessonOptions.names(shot.placed(), Placed::name));
        boolean hasLabel = shot.findPlaced(thing).orElseThrow().thing().label().isPresent();
        Spots.Part part =
                names == 4 ? findPart(words.get(2)).orElseThrow() : hasLabel ? Spots.Part.LABEL : Spots.Part.MIDDLE;
        if (part == Spots.Part.LABEL && !hasLabel) {
            throw new Refusal(thing + " has no label", "Name another part: lid, top, middle or base.");
        }
        List<PlacedLight> lamps = shot.lights().stream()
                .filter(placed -> placed.light().emitter().isLamp())
                .toList();
        List<String> lights = LessonOptions.names(lamps, PlacedLight::name);
        String light = words.get(names - 1);
        Optional<PlacedLight> named = shot.findLight(light);
        if (named.isPresent() && !lights.contains(light)) {
            throw new Refusal(
                    light + " is a " + named.get().light().emitter().word() + ", which has no light of its own",
                    "Meter a lamp that shines on it, with " + light + " as it stands.");
        }
        List<String> on = light.equals(ALL) && !lights.contains(ALL)
                ? lights
                : List.of(LessonOptions.check("a light of " + shot.name(), light, lights));
        Quantity reads = lux(String.join(" ", words.subList(names, words.size())));
        return measured(shot, new Measured.LuxAt.Spot(shot.name(), thing, part.word()), part, on, reads);
    }

    private static Optional<Spots.Part> findPart(String word) {
        return Arrays.stream(Spots.Part.values())
                .filter(part -> part.word().equals(word))
                .findFirst();
    }

    private Quantity lux(String text) throws Refusal {
        return switch (Quantities.read(text, Kind.ILLUMINANCE)) {
            case Reading.Read(Quantity quantity)
            when quantity.si() > 0 && quantity.findAt().isEmpty() -> quantity;
            case Reading.Read _ ->
                throw new Refusal(
                        OPTION + " is " + typed + "; what a meter shows on a thing is above 0 lx and has no distance",
                        "Give it as " + OPTION + " " + EXAMPLE + ".");
            case Reading.Refused refused ->
                throw new Refusal(
                        OPTION + " is " + typed + ": there " + text + " is " + refused.given() + "; must be "
                                + refused.allowed(),
                        "Give it as " + OPTION + " " + EXAMPLE + ".");
        };
    }

    /// The shot is solved as it would be for its papers: its light is computed with all marks where those say.
    private Measured measured(Shot shot, Measured.LuxAt.Spot at, Spots.Part part, List<String> on, Quantity reads)
            throws Refusal {
        ShotAnswer answer =
                Solve.film(plan, List.of(shot.name()), List.of()).shots().getFirst();
        refuseOpen(answer);
        Stage stage = Stage.of(plan, shot);
        Scene scene = stage.scene(answer.posed().values(), 0);
        List<Metered.Shown> computed = Metered.computed(stage, scene, stage.thingIndex(at.thing()), part);
        List<String> alone =
                on.stream().filter(light -> isReadAlone.test(at, light)).toList();
        boolean hasOthers = !alone.isEmpty() && alone.size() < on.size();
        double sum = 0;
        List<Measured.LuxAt.Gave> gave = new ArrayList<>();
        for (String light : hasOthers ? except(on, alone) : on) {
            switch (computed.get(stage.lampIndex(light))) {
                case Metered.Shown.Lux lux -> {
                    sum += lux.lux();
                    PlacedLight placed = shot.findLight(light).orElseThrow();
                    if (!placed.light().written().has("gives")) {
                        throw new Refusal(
                                "what " + light + " gives is told by its file alone",
                                "Write gives with the lamp too, as a meter reads it before it: that is corrected.");
                    }
                    gave.add(new Measured.LuxAt.Gave(light, placed.light().name(), gives(placed)));
                }
                case Metered.Shown.NotKnown(String reason) ->
                    throw new Refusal(
                            "what is computed of " + light + " on " + at.thing() + " isn't known: " + reason,
                            "Meter it by itself: --lux " + light + " 1450 lx at 1 m.");
            }
        }
        if (!(sum > 0)) {
            throw new Refusal(
                    "in the plan no light of " + String.join(", ", on) + " comes to " + at.thing() + "'s " + at.part(),
                    "See whether it stands and faces there, and at which level.");
        }
        Optional<Quantity> others =
                hasOthers ? Optional.of(others(stage, scene, at, part, alone, reads)) : Optional.empty();
        return new Measured.LuxAt(at, reads, others, Quantities.get(fourDigits(sum) + " lx"), gave);
    }

    private static List<String> except(List<String> lights, List<String> others) {
        return lights.stream().filter(light -> !others.contains(light)).toList();
    }

    /// What lights that were read alone there give of what was read of all.
    private Quantity others(
            Stage stage, Scene scene, Measured.LuxAt.Spot at, Spots.Part part, List<String> alone, Quantity reads)
            throws Refusal {
        List<Double> lux = Metered.listLux(stage, scene, stage.thingIndex(at.thing()), part);
        double sum = alone.stream()
                .mapToDouble(light -> lux.get(stage.lampIndex(light)))
                .sum();
        if (sum > (1 - LEAST_SHARE) * reads.si()) {
            String names = String.join(" and ", alone);
            throw new Refusal(
                    OPTION + " is " + typed + ", and by what was read there before " + names + " alone "
                            + (alone.size() > 1 ? "give " : "gives ") + fourDigits(sum)
                            + " lx: what is left for the others is less than a meter tells",
                    "Meter the others alone, or " + names + " again.");
        }
        return Quantities.get(fourDigits(sum) + " lx");
    }

    private static void refuseOpen(ShotAnswer answer) throws Refusal {
        String open = answer.marks().stream()
                .filter(mark -> mark.setting() instanceof MarkAnswer.Setting.Open)
                .map(mark -> mark.mark().path())
                .collect(Collectors.joining(", "));
        if (!open.isEmpty()) {
            throw new Refusal(
                    "in " + answer.shot() + " no place is set for " + open + ": nothing can be computed there",
                    "Write it into the plan where it stands, then note the reading.");
        }
    }

    /// What the kit says, times what was measured in the shot before.
    private static Quantity gives(PlacedLight light) {
        Quantity kit = light.light().written().findQuantity("gives").orElseThrow();
        double output = light.written().findQuantity("output").map(Quantity::si).orElse(1.0);
        Quantity plain = Quantities.get(kit.valueText()
                + kit.findAt().map(at -> " at " + at.valueText()).orElse(""));
        return output == 1 ? plain : plain.withSi(rounded(kit.si() * output));
    }

    private static String fourDigits(double value) {
        return new BigDecimal(value)
                .round(new MathContext(4))
                .stripTrailingZeros()
                .toPlainString();
    }

    /// To six digits, so that noting a reading again changes nothing.
    private static double rounded(double value) {
        return new BigDecimal(value).round(new MathContext(6)).doubleValue();
    }
}
