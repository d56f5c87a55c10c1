package plumeline.solve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import plumeline.plan.Mark;
import plumeline.quantity.Print;
import plumeline.search.Axis;
import plumeline.search.Margins;
import plumeline.search.Search;
import plumeline.stage.StagedMark;

/// What would help a want that fails: which wants stand against it, the smallest change of one locked mark, the
/// smallest relaxation ([Relaxations]). Each is re-tested against all wants that hold before it is said.
final class Remedies {
    /// How many locked marks are tried, those that move the want most first.
    private static final int MARKS_TRIED = 6;

    private static final int MARKS_TOLD = 4;

    private static final int HALVINGS = 14;

    /// A motor's way is tried in steps as long as a tape's, not in its own fine ones.
    private static final double MOTOR_PROBE_METRES = 0.001;

    private final Judged judged;
    private final Axes axes;
    private final double[] si;
    private final Words words;
    private final double[] parts;
    private final List<double[]> starts;

    Remedies(Judged judged, Axes axes, double[] si, Words words) {
        this.judged = judged;
        this.axes = axes;
        this.si = si;
        this.words = words;
        this.parts = judged.parts(si);
        this.starts = Seeds.of(
                        judged.stage(),
                        judged.lines().stream().map(Judged.Line::line).toList())
                .stream()
                .map(axes::fromSi)
                .toList();
    }

    /// The wants that can't hold together with a failing one, as far as free marks go.
    ///
    /// @param alone whether the failing one can't hold even alone
    /// @param against those that can't hold together with it, each alone
    /// @param hasOthers whether any other holds
    record Conflict(boolean alone, List<Judged.Line> against, boolean hasOthers) {
        List<String> sentences() {
            if (alone) {
                return List.of("No place of the free marks was found where it holds, the locked ones as they are.");
            }
            if (against.isEmpty()) {
                return List.of(
                        hasOthers
                                ? "It can't hold together with all the others at once."
                                : "It only just holds anywhere: too closely for marks that a hand sets.");
            }
            return List.of("It can't hold together with "
                    + String.join(
                            " or ", against.stream().map(Judged.Line::named).toList()) + ".");
        }
    }

    /// Finds what stands against a failing want; empty where no mark is free or none bears on it.
    Optional<Conflict> findConflict(Judged.Line failing) {
        boolean isMoved = failing.instances().stream()
                .anyMatch(instance -> instance.want().restsOnMarks());
        if (!axes.anyFree() || !isMoved) {
            return Optional.empty();
        }
        if (!feasible(Set.of(failing.id()))) {
            return Optional.of(new Conflict(true, List.of(), true));
        }
        List<Judged.Line> others = judged.lines().stream()
                .filter(other -> other.isComputed() && !other.id().equals(failing.id()) && holds(other, parts))
                .toList();
        List<Judged.Line> against = others.stream()
                .filter(other -> !feasible(Set.of(failing.id(), other.id())))
                .toList();
        return Optional.of(new Conflict(false, against, !others.isEmpty()));
    }

    private boolean feasible(Set<String> ids) {
        int[] wanted = judged.partsOf(line -> ids.contains(line.id()));
        Margins margins = judged.margins(axes, wanted);
        double[] found = Search.hold(axes.at(si), margins, starts);
        return Margins.least(margins.at(found)) >= 0;
    }

    private static int[] first(int count) {
        return IntStream.range(0, count).toArray();
    }

    private static boolean holds(Judged.Line line, double[] parts) {
        return line.parts().allMatch(part -> parts[part] >= 0);
    }

    /// What to try for a failing want.
    List<String> attempts(Judged.Line failing, Optional<Conflict> conflict) {
        List<String> attempts = new ArrayList<>();
        int[] held = judged.partsOf(line -> line.isComputed() && !line.id().equals(failing.id()) && holds(line, parts));
        int[] own = failing.parts().toArray();
        List<Judged.Line> against =
                conflict.map(found -> opposing(found, failing)).orElse(List.of());
        LinkedHashSet<Integer> marks = new LinkedHashSet<>(touchedMarks(failing));
        against.forEach(other -> marks.addAll(touchedMarks(other)));
        marks.stream()
                .flatMap(index -> oneMark(index, own, held).stream())
                .sorted(Comparator.comparing((Change change) -> !change.isMotor())
                        .thenComparingDouble(Change::size))
                .limit(MARKS_TOLD)
                .map(this::sentence)
                .forEach(attempts::add);
        Relaxations relaxations = new Relaxations(judged, axes, starts);
        attempts.addAll(relaxations.of(failing, si, held));
        for (Judged.Line other : against) {
            int[] rest = judged.partsOf(line -> line.isComputed()
                    && !line.id().equals(other.id())
                    && (line.id().equals(failing.id()) || holds(line, parts)));
            relaxations
                    .ofOther(other, si, rest)
                    .forEach(easier -> attempts.add("It holds where " + other.named() + " asks for less: " + easier));
        }
        return attempts;
    }

    /// The wants of which one asking for less may help: those in the way alone, else any that holds.
    private List<Judged.Line> opposing(Conflict conflict, Judged.Line failing) {
        if (conflict.alone() || !conflict.against().isEmpty()) {
            return conflict.against();
        }
        return judged.lines().stream()
                .filter(line -> line.isComputed() && !line.id().equals(failing.id()) && holds(line, parts))
                .toList();
    }

    /// The locked marks whose moving gives a want more room, a machine's way first, then those that help most.
    private List<Integer> touchedMarks(Judged.Line line) {
        int[] own = line.parts().toArray();
        Margins margins = judged.margins(axes, own);
        double now = Margins.least(margins.at(axes.fromSi(si)));
        record Touched(int index, boolean motor, double gain) {}
        List<Touched> touched = new ArrayList<>();
        for (int i = 0; i < si.length; i++) {
            Mark mark = axes.marks().get(i).mark();
            if (mark.isFree() || mark.kind() == Mark.Kind.LAMP_TURN || isOfLight(line, mark)) {
                continue;
            }
            double best = now;
            double step = mark.kind() == Mark.Kind.MOTOR
                    ? MOTOR_PROBE_METRES
                    : axes.marks().get(i).stepSi();
            for (double size : new double[] {-20, -5, 5, 20}) {
                double[] moved = axes.fromSi(si);
                moved[i] += size * step;
                best = Math.max(best, Margins.least(margins.at(moved)));
            }
            if (best > now + 1e-6) {
                touched.add(new Touched(i, mark.kind() == Mark.Kind.MOTOR, best - now));
            }
        }
        return touched.stream()
                .sorted(Comparator.comparing((Touched t) -> !t.motor()).thenComparingDouble(t -> -t.gain()))
                .limit(MARKS_TRIED)
                .map(Touched::index)
                .toList();
    }

    /// Whether a mark is tried by [LightRemedies] for a want, by amounts that a crew sets; where the camera stands only
    /// trades close-focus loss, which nobody would.
    private static boolean isOfLight(Judged.Line line, Mark mark) {
        boolean isLight =
                LightRemedies.isOne(line.line().word()) || line.line().word().equals("matched");
        return isLight
                && (mark.path().startsWith("camera.")
                        || mark.path().endsWith(".level")
                        || mark.kind() == Mark.Kind.LAMP_PLACE);
    }

    /// A locked mark moved, the free ones following.
    ///
    /// @param index the mark
    /// @param there where all marks stand then, SI
    /// @param size how far it moves, in placing errors or steps of its hand
    private record Change(StagedMark mark, int index, List<Double> there, double size) {
        boolean isMotor() {
            return mark.mark().kind() == Mark.Kind.MOTOR;
        }
    }

    /// The smallest change of one locked mark, the free ones following, with which everything holds.
    private Optional<Change> oneMark(int index, int[] own, int[] held) {
        double[] from = axes.fromSi(si);
        List<Axis> freed = axes.withFree(si, index);
        int[] together = IntStream.concat(IntStream.of(held), IntStream.of(own)).toArray();
        Margins margins = judged.margins(axes, together);
        double[] reached = Search.mend(
                freed, margins, first(held.length), offCrease(freed, judged.margins(axes, own), from, index));
        if (Margins.least(margins.at(reached)) < 0) {
            return Optional.empty();
        }
        Axis axis = freed.get(index);
        double scale = Math.max(Math.abs(reached[index] - from[index]), axis.step());
        Margins nearer = values -> {
            double[] all = margins.at(values);
            double[] more = Arrays.copyOf(all, all.length + 1);
            more[all.length] = -Math.abs(values[index] - from[index]) / scale;
            return more;
        };
        double[] near = Search.raise(freed, nearer, first(together.length), reached);
        double[] best = Margins.least(margins.at(near)) >= 0 ? near : reached;
        for (double[] place : List.of(firstHolding(freed, margins, from, best, index), best, reached)) {
            double[] there = axes.engraved(axes.toSi(place), index);
            double size = Math.abs(place[index] - from[index]) / Math.max(axis.placingError(), axis.step());
            if (nothingLost(there, own)) {
                return Optional.of(new Change(
                        axes.marks().get(index),
                        index,
                        Arrays.stream(there).boxed().toList(),
                        size));
            }
        }
        return Optional.empty();
    }

    /// Where to start moving a mark: where it stands, or a little aside where both sides are as good and better, such
    /// as for a thing in the picture's very middle that should be out of it.
    private static double[] offCrease(List<Axis> freed, Margins own, double[] from, int index) {
        double[] up = from.clone();
        double[] down = from.clone();
        up[index] += freed.get(index).step();
        down[index] -= freed.get(index).step();
        double here = Margins.least(own.at(from));
        double above = Margins.least(own.at(up));
        double below = Margins.least(own.at(down));
        boolean isCrease = above > here && below > here;
        return isCrease ? (above >= below ? up : down) : from;
    }

    /// The first place on the way from one where something fails to one where nothing does at which nothing fails any
    /// more, on whole steps, the mark that is moved a step further than the edge.
    private static double[] firstHolding(List<Axis> freed, Margins margins, double[] from, double[] to, int index) {
        double low = 0;
        double high = 1;
        for (int i = 0; i < HALVINGS; i++) {
            double share = low + (high - low) / 2;
            if (Margins.least(margins.at(between(from, to, share))) >= 0) {
                high = share;
            } else {
                low = share;
            }
        }
        double[] edge = between(from, to, high);
        double[] stepped = Search.onSteps(freed, edge);
        double step = Math.copySign(freed.get(index).step(), to[index] - from[index]);
        for (int further = 0; further < 2 && Margins.least(margins.at(stepped)) < 0; further++) {
            stepped[index] += step;
        }
        return stepped;
    }

    private static double[] between(double[] from, double[] to, double share) {
        double[] between = from.clone();
        for (int a = 0; a < between.length; a++) {
            between[a] += share * (to[a] - from[a]);
        }
        return between;
    }

    /// Whether at other values the failing parts hold and nothing that held fails, and what is in the water stays in
    /// it.
    private boolean nothingLost(double[] there, int[] own) {
        if (!judged.isAsWet(si, there)) {
            return false;
        }
        Judged fine = judged.withWorstFrames(there);
        double[] now = fine.parts(there);
        return IntStream.of(own).allMatch(part -> now[part] >= 0)
                && fine.lines().stream()
                        .filter(line -> line.isComputed() && holds(line, parts))
                        .allMatch(line -> holds(line, now));
    }

    private String sentence(Change change) {
        Mark mark = change.mark().mark();
        double from = si[change.index()];
        double to = change.there().get(change.index());
        String by = words.difference(mark, to - from);
        String values = mark.path() + " " + words.value(mark, to) + " instead of " + words.value(mark, from);
        String after = followers(change.there(), change.index());
        if (change.isMotor() && mark.path().endsWith(".by")) {
            String name = mark.path().substring(0, mark.path().length() - 3);
            return name + " " + along(mark, by, from, to) + ": " + values + "." + after;
        }
        if (mark.path().equals("camera.f_number")) {
            String stops = Print.number(Math.abs(2 * Math.log(to / from) / Math.log(2)), 1);
            return "Set " + values + " (" + stops + " stops " + (to > from ? "down" : "open") + ")." + after;
        }
        return "Set " + values + " (" + by + " " + words.way(mark, to - from) + ")." + after;
    }

    /// Says by how much further or less far a way goes; where it turns about, which way and how far it goes then.
    private String along(Mark mark, String by, double from, double to) {
        if (from * to >= 0) {
            return by + (Math.abs(to) > Math.abs(from) ? " further" : " less");
        }
        String length = words.value(mark, Math.abs(to));
        return judged.stage().shot().moves().stream()
                .flatMap(move -> move.travel().stream())
                .filter(travel -> travel.marks().contains(mark))
                .map(travel -> travel.vectorMetres(_ -> to))
                .map(way -> Words.heading(way[0], way[1], way[2]) + " " + length)
                .findFirst()
                .orElse("the other way, " + length);
    }

    private String followers(List<Double> there, int index) {
        for (int i = 0; i < si.length; i++) {
            if (i != index
                    && Math.abs(there.get(i) - si[i]) > axes.marks().get(i).stepSi() / 2) {
                return " The free marks move with it: solve again.";
            }
        }
        return "";
    }
}
