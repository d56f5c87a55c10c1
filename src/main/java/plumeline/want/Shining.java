package plumeline.want;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import plumeline.lit.Instant;
import plumeline.lit.LightMeasures;
import plumeline.lit.Measure;
import plumeline.plan.Mark;
import plumeline.plan.PlacedLight;
import plumeline.plan.Plan;
import plumeline.plan.WantLine;
import plumeline.plan.When;
import plumeline.quantity.PaperUnit;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// A want on light: what is measured at each instant that counts, and the worst of it.
///
/// A lamp whose place is free is put where its highlight, or a glass's bright rim, is wanted only if it is off the
/// picture then and in nothing else: parts of those wants stand beside its own, and are none of its margin. One that
/// makes rims dark is in nothing else.
///
/// @param line as written
/// @param measure what is measured at an instant
/// @param beside what a place found for a lamp must hold too, each in one part
/// @param papers the papers' unit of length
record Shining(WantLine line, Measure measure, List<Want> beside, PaperUnit papers) implements Want {
    Shining {
        beside = List.copyOf(beside);
    }

    static Want of(WantLine line, Plan plan, Stage stage) {
        return switch (LightMeasures.of(line, stage, plan.film().rate())) {
            case LightMeasures.Reading.Of(Measure measure) ->
                new Shining(
                        line, measure, beside(line, plan, stage), plan.film().papersOrDefault());
            case LightMeasures.Reading.Missing(String reason) -> new NotComputed(line, reason);
        };
    }

    /// The lamps that are put where this want has them.
    private static List<Integer> placed(WantLine line, Stage stage) {
        return IntStream.range(0, stage.shot().lights().size())
                .filter(lamp ->
                        isOf(line, stage.shot().lights().get(lamp), stage.shot().wants()))
                .boxed()
                .toList();
    }

    private static boolean isOf(WantLine line, PlacedLight light, List<WantLine> wants) {
        boolean isFree = light.at().marks().stream().anyMatch(Mark::isFree);
        return switch (line.word()) {
            case "highlight" -> isFree && line.subjects().getFirst().name().equals(light.name());
            case "edges" -> isFree && wants.stream().noneMatch(other -> isMirrored(other, light));
            default -> false;
        };
    }

    private static boolean isMirrored(WantLine other, PlacedLight light) {
        return other.word().equals("highlight")
                && other.subjects().getFirst().name().equals(light.name());
    }

    /// A lamp behind glass whose rims shall be dark is in the picture.
    private static boolean isOff(WantLine line) {
        return !line.written().findWord("rims").filter("dark"::equals).isPresent();
    }

    private static List<Want> beside(WantLine line, Plan plan, Stage stage) {
        List<Want> beside = new ArrayList<>();
        for (int lamp : placed(line, stage)) {
            beside.add(new Clear(
                    line,
                    List.of(new Air.Standing.Lamp(lamp)),
                    0,
                    stage.shot().camera().lens().barrel(),
                    plan.film().papersOrDefault()));
            if (isOff(line)) {
                beside.add(new OffPicture(line, List.of(), List.of(lamp)));
            }
        }
        return beside;
    }

    @Override
    public String unit() {
        return measure.unit();
    }

    @Override
    public double[] parts(Moments moments) {
        double[] own = own(moments);
        return beside.isEmpty()
                ? own
                : DoubleStream.concat(
                                Arrays.stream(own),
                                beside.stream().flatMapToDouble(other -> Arrays.stream(other.parts(moments))))
                        .toArray();
    }

    private double[] own(Moments moments) {
        return Parts.worst(moments.during(line.when()), scene -> measure.parts(moments.lit(scene)));
    }

    @Override
    public double margin(double[] parts) {
        return Arrays.stream(parts, 0, parts.length - beside.size()).min().orElse(Double.POSITIVE_INFINITY);
    }

    @Override
    public double[] slack(Moments moments) {
        return own(moments);
    }

    private Instant worst(Moments moments) {
        Instant worst = moments.lit(moments.during(line.when()).getFirst());
        double least = Double.POSITIVE_INFINITY;
        for (Scene scene : moments.during(line.when())) {
            Instant now = moments.lit(scene);
            double margin = Arrays.stream(measure.parts(now)).min().orElse(Double.POSITIVE_INFINITY);
            if (margin < least) {
                least = margin;
                worst = now;
            }
        }
        return worst;
    }

    @Override
    public Optional<String> findUnknown(Moments moments) {
        return moments.during(line.when()).stream()
                .flatMap(scene -> measure.findUnknown(moments.lit(scene)).stream())
                .findFirst();
    }

    /// Where something lacks its margin is no figure for a crew.
    @Override
    public boolean isMeasured(Moments moments) {
        return measure.findLack(worst(moments)).isEmpty();
    }

    @Override
    public Optional<String> findLack(Moments moments) {
        return measure.findLack(worst(moments))
                .or(() -> beside.stream()
                        .filter(other -> other.margin(other.parts(moments)) < 0)
                        .findFirst()
                        .flatMap(other -> other.findStanding(moments, papers)));
    }

    @Override
    public Optional<String> findCaution(Moments moments) {
        return findComingIn(moments).or(() -> measure.findCaution(worst(moments)));
    }

    /// A lamp that is off the picture then may come into it later in the shot.
    private Optional<String> findComingIn(Moments moments) {
        if (beside.isEmpty()
                || line.when() instanceof When.Whole
                || !moments.stage().isMoving()) {
            return Optional.empty();
        }
        return placed(line, moments.stage()).stream()
                .filter(lamp -> isOff(line))
                .filter(lamp -> {
                    OffPicture off = new OffPicture(always(line), List.of(), List.of(lamp));
                    return off.margin(off.parts(moments)) < 0;
                })
                .map(lamp -> moments.stage().shot().lights().get(lamp).name()
                        + " comes into the picture in the course of the shot: want off_picture of it too.")
                .findFirst();
    }

    private static WantLine always(WantLine line) {
        return new WantLine(
                line.id(), line.word(), line.subjects(), new When.Whole(), line.pass(), line.written(), line.place());
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        return Optional.of(measure.standing(worst(moments)));
    }

    @Override
    public Optional<String> findTight(Moments moments) {
        return measure.findTight(worst(moments));
    }

    @Override
    public List<String> listAttempts(Moments moments) {
        return measure.listAttempts(worst(moments));
    }

    @Override
    public Optional<Measure.Change> findChange(Moments moments) {
        return moments.during(line.when()).stream()
                .flatMap(scene -> measure.findChange(moments.lit(scene)).stream())
                .reduce(Measure.Change::and);
    }

    @Override
    public List<Relaxed> listRelaxed(double lack, Moments moments) {
        return measure
                .findEasier(lack)
                .map(easier -> new Relaxed(new Shining(line, easier.measure(), beside, papers), easier.sentence()))
                .stream()
                .toList();
    }
}
