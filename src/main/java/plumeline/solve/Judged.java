package plumeline.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import plumeline.geom.Body;
import plumeline.look.LookMeasures;
import plumeline.pace.PaceMeasures;
import plumeline.plan.Pass;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.plan.WantLine;
import plumeline.plan.When;
import plumeline.search.Margins;
import plumeline.stage.Stage;
import plumeline.stage.TankWalls;
import plumeline.want.Moments;
import plumeline.want.Recall;
import plumeline.want.Want;
import plumeline.want.Wants;

/// All wants that bear on a shot, laid out as one list of parts.
///
/// A want without a `pass` is judged on every pass of a shot that has passes. The frames are the instants that stand
/// for the whole shot.
final class Judged {
    /// One want on one run of the shot; its parts are `from` to `from + count`.
    record Instance(ShotAnswer.Run run, Want want, int from, int count) {
        boolean isComputed() {
            return want.findUnknown().isEmpty();
        }
    }

    /// A want as written with all its instances.
    record Line(WantLine line, boolean ofFilm, List<Instance> instances) {
        String id() {
            return line.id();
        }

        /// The id with the want's word, as findings name another want: `b2.1 (fills)`.
        String named() {
            return id() + " (" + line.word() + ")";
        }

        boolean isComputed() {
            return instances.stream().allMatch(Instance::isComputed);
        }

        IntStream parts() {
            return instances.stream()
                    .filter(Instance::isComputed)
                    .flatMapToInt(instance -> IntStream.range(instance.from(), instance.from() + instance.count()));
        }
    }

    private static final int COARSE = 5;

    /// A move that changes a margin by less, in the want's unit, doesn't matter to it.
    private static final double MATTERS = 0.05;

    private static final int MOST_FRAMES = 2000;

    private static final int MOST_KNOWN = 20_000;

    /// An instance, by its first part, at some values of the marks.
    private record Asked(int from, List<Double> values) {}

    private final List<ShotAnswer.Run> runs;
    private final List<Line> lines;
    private final List<Double> frames;
    private final int count;
    private final Recall recall;
    private final Map<Asked, double[]> known = new HashMap<>();

    private Judged(List<ShotAnswer.Run> runs, List<Line> lines, List<Double> frames, Recall recall) {
        this.recall = recall;
        this.runs = runs;
        this.lines = lines;
        this.frames = frames;
        count = lines.stream()
                .flatMap(line -> line.instances().stream())
                .mapToInt(instance -> instance.from() + instance.count())
                .max()
                .orElse(0);
    }

    static Judged of(Plan plan, Shot shot, List<WantLine> filmWants, Wants.Elsewhere elsewhere) {
        List<ShotAnswer.Run> runs = new ArrayList<>();
        for (Pass pass : shot.passes()) {
            runs.add(new ShotAnswer.Run(pass.name(), Stage.of(plan, shot, pass.name())));
        }
        if (runs.isEmpty()) {
            runs.add(new ShotAnswer.Run("", Stage.of(plan, shot)));
        }
        List<Double> frames = spread(runs.getFirst().stage(), COARSE);
        List<Line> lines = new ArrayList<>();
        int from = 0;
        List<WantLine> all = new ArrayList<>(shot.wants());
        all.addAll(filmWants);
        for (WantLine line : all) {
            List<Instance> instances = new ArrayList<>();
            for (ShotAnswer.Run run : runs) {
                boolean isOther =
                        line.pass().filter(pass -> !pass.equals(run.pass())).isPresent();
                if (isOther
                        || !PaceMeasures.isJudgedIn(line, run.pass())
                        || !LookMeasures.isJudgedIn(
                                line,
                                run.pass(),
                                run.pass().equals(runs.getFirst().pass()))) {
                    continue;
                }
                Want want = Wants.of(line, plan, run.stage(), elsewhere);
                int count = want.findUnknown().isPresent() ? 0 : countParts(want, run.stage(), frames);
                instances.add(new Instance(run, want, from, count));
                from += count;
            }
            lines.add(new Line(line, filmWants.contains(line), List.copyOf(instances)));
        }
        return new Judged(runs, lines, frames, new Recall());
    }

    private static int countParts(Want want, Stage stage, List<Double> frames) {
        return want.parts(new Moments(stage, stage.startValues(), frames, new Recall())).length;
    }

    private static List<Double> spread(Stage stage, int instants) {
        List<Double> frames = new ArrayList<>();
        double last = stage.frames() - 1;
        for (int i = 0; i < instants; i++) {
            frames.add(Math.rint(last * i / (instants - 1)));
        }
        return frames;
    }

    /// Every frame; of a shot longer than that, so many spread over it.
    private static List<Double> everyFrame(Stage stage) {
        return spread(stage, (int) Math.min(stage.frames(), MOST_FRAMES));
    }

    List<ShotAnswer.Run> runs() {
        return runs;
    }

    List<Line> lines() {
        return lines;
    }

    Stage stage() {
        return runs.getFirst().stage();
    }

    /// All parts at some SI values.
    double[] parts(double[] si) {
        return parts(si, instances(partsOf(line -> true)));
    }

    /// Some parts as margins on a shot's axes; what else is wanted isn't looked at.
    ///
    /// @param axes the shot's
    /// @param parts which, by their index among all
    Margins margins(Axes axes, int[] parts) {
        int[] kept = parts.clone();
        List<Instance> asked = instances(kept);
        return new Margins() {
            @Override
            public double[] at(double[] values) {
                double[] there = parts(axes.toSi(values), asked);
                return IntStream.of(kept).mapToDouble(part -> there[part]).toArray();
            }

            @Override
            public Margins only(int[] some) {
                return margins(axes, IntStream.of(some).map(part -> kept[part]).toArray());
            }
        };
    }

    /// The instances that have any of some parts.
    private List<Instance> instances(int[] parts) {
        return lines.stream()
                .flatMap(line -> line.instances().stream())
                .filter(instance -> IntStream.of(parts)
                        .anyMatch(part -> part >= instance.from() && part < instance.from() + instance.count()))
                .toList();
    }

    /// Parts by their index among all; those of other instances are 0.
    private double[] parts(double[] si, List<Instance> asked) {
        double[] parts = new double[count];
        List<Double> values = Arrays.stream(si).boxed().toList();
        Map<Stage, Moments> moments = new LinkedHashMap<>();
        for (Instance instance : asked) {
            Moments at =
                    moments.computeIfAbsent(instance.run().stage(), stage -> new Moments(stage, si, frames, recall));
            System.arraycopy(parts(instance, at, values), 0, parts, instance.from(), instance.count());
        }
        return parts;
    }

    /// The search, leeway and remedies often ask for the same values again.
    private double[] parts(Instance instance, Moments at, List<Double> values) {
        Asked asked = new Asked(instance.from(), values);
        double[] found = known.get(asked);
        if (found == null) {
            found = instance.want().parts(at);
            if (known.size() >= MOST_KNOWN) {
                known.clear();
            }
            known.put(asked, found);
        }
        return found;
    }

    Moments moments(Stage stage, double[] si) {
        return new Moments(stage, si, frames, recall);
    }

    /// A finding's sentence with the instant at which its want is worst, where that is judged over the whole of a move
    /// that matters to it.
    String withMoment(String sentence, Instance instance, double[] si) {
        Stage stage = instance.run().stage();
        if (stage.isSteady() || !(instance.want().line().when() instanceof When.Whole) || !sentence.endsWith(".")) {
            return sentence;
        }
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        double at = 0;
        for (double frame : frames) {
            Want want = instance.want();
            double margin = want.margin(want.parts(new Moments(stage, si, List.of(frame), recall)));
            most = Math.max(most, margin);
            if (margin < least - 1e-9) {
                least = margin;
                at = frame;
            }
        }
        return most - least < MATTERS
                ? sentence
                : sentence.substring(0, sentence.length() - 1) + moment(stage, Math.round(at)) + ".";
    }

    private static String moment(Stage stage, long frame) {
        return frame == 0 ? " at the start" : frame == stage.frames() - 1 ? " at the end" : " at frame " + (frame + 1);
    }

    int[] partsOf(Predicate<Line> which) {
        return lines.stream().filter(which).flatMapToInt(Line::parts).toArray();
    }

    /// Whether the same things are in the water at the start for some values as for others.
    boolean isAsWet(double[] one, double[] other) {
        for (ShotAnswer.Run run : runs) {
            Optional<TankWalls> tank = run.stage().findTank();
            if (tank.isPresent()) {
                List<Body> before = run.stage().scene(one, 0).things();
                List<Body> after = run.stage().scene(other, 0).things();
                for (int i = 0; i < before.size(); i++) {
                    if (tank.get().isWet(before.get(i)) != tank.get().isWet(after.get(i))) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    /// The same wants with the instants that are worst for some want at some values, and the ends, standing for the
    /// whole.
    Judged withWorstFrames(double[] si) {
        if (stage().isSteady()) {
            return this;
        }
        TreeSet<Double> worst = new TreeSet<>(frames);
        List<Double> fine = everyFrame(stage());
        double[] least = new double[0];
        double[] leastAt = new double[0];
        for (double frame : fine) {
            double[] parts = new Judged(runs, lines, List.of(frame), recall).parts(si);
            if (least.length == 0) {
                least = parts.clone();
                leastAt = new double[parts.length];
                Arrays.fill(leastAt, frame);
            }
            for (int p = 0; p < parts.length; p++) {
                if (parts[p] < least[p] - 1e-9) {
                    least[p] = parts[p];
                    leastAt[p] = frame;
                }
            }
        }
        for (double frame : leastAt) {
            worst.add(frame);
        }
        return worst.size() == frames.size() ? this : new Judged(runs, lines, List.copyOf(worst), recall);
    }
}
