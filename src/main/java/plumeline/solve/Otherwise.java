package plumeline.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumeline.lit.Measure;
import plumeline.plan.Mark;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.plan.Shot;
import plumeline.plan.WantLine;
import plumeline.stage.Stage;
import plumeline.stage.StagedMark;
import plumeline.text.Node;
import plumeline.want.Want;
import plumeline.want.Wants;

/// A shot with some of its keys saying something else, all other marks as they stand.
final class Otherwise {
    /// What else is wanted of a lamp that stands otherwise.
    private static final List<String> BESIDE = List.of("off_picture", "clear");

    private final Plan plan;
    private final Shot shot;
    private final List<WantLine> filmWants;
    private final Wants.Elsewhere elsewhere;
    private final Judged judged;
    private final double[] si;
    private final List<String> held;
    private final Map<String, Boolean> known = new HashMap<>();

    /// @param plan the plan
    /// @param shot the shot
    /// @param filmWants the film's wants that bear on it
    /// @param elsewhere what other shots give
    /// @param judged the shot as it is
    /// @param si where its marks stand
    Otherwise(Plan plan, Shot shot, List<WantLine> filmWants, Wants.Elsewhere elsewhere, Judged judged, double[] si) {
        this.plan = plan;
        this.shot = shot;
        this.filmWants = filmWants;
        this.elsewhere = elsewhere;
        this.judged = judged;
        this.si = si.clone();
        There here = new There(judged, this.si);
        held = judged.lines().stream().filter(here::holds).map(Judged.Line::id).toList();
    }

    Shot shot() {
        return shot;
    }

    Plan plan() {
        return plan;
    }

    Judged judged() {
        return judged;
    }

    double[] si() {
        return si.clone();
    }

    /// What one key of the shot says instead.
    ///
    /// @param path its dotted path in the shot
    /// @param value what it says
    record Key(String path, Node value) {}

    /// How a shot is judged then.
    static final class There {
        private final Judged judged;
        private final double[] si;
        private final double[] parts;

        private There(Judged judged, double[] si) {
            this.judged = judged;
            this.si = si.clone();
            parts = judged.parts(si);
        }

        Stage stage() {
            return judged.stage();
        }

        /// A want's margin, the worst of its runs, in its unit.
        double margin(Judged.Line line) {
            return line.parts().mapToDouble(part -> parts[part]).min().orElse(0);
        }

        double[] values() {
            return si.clone();
        }

        /// Whether a want is computed, known and holds.
        boolean holds(Judged.Line line) {
            return line.isComputed()
                    && line.parts().allMatch(part -> parts[part] >= 0)
                    && line.instances().stream().allMatch(this::isKnown);
        }

        private boolean isKnown(Judged.Instance instance) {
            var moments = judged.moments(instance.run().stage(), si);
            return instance.want().findUnknown(moments).isEmpty()
                    && instance.want().findLack(moments).isEmpty();
        }

        Judged.Line line(String id) {
            return judged.lines().stream()
                    .filter(line -> line.id().equals(id))
                    .findFirst()
                    .orElseThrow();
        }

        /// By how much light would have to change for a want, in all its runs.
        Optional<Measure.Change> findChange(String id) {
            Judged.Line line = line(id);
            return line.isComputed() && line.instances().stream().allMatch(this::isKnown)
                    ? line.instances().stream()
                            .flatMap(instance -> findChange(instance.want(), instance).stream())
                            .reduce(Measure.Change::and)
                    : Optional.empty();
        }

        private Optional<Measure.Change> findChange(Want want, Judged.Instance instance) {
            return want.findChange(judged.moments(instance.run().stage(), si));
        }

        /// By how many stops one look's light would have to change for a want that compares looks.
        Optional<Double> findLookChange(String id, String look) {
            return line(id).instances().stream()
                    .filter(this::isKnown)
                    .flatMap(instance ->
                            instance
                                    .want()
                                    .findLookChange(
                                            judged.moments(instance.run().stage(), si), look)
                                    .stream())
                    .findFirst();
        }

        /// Whether a want that holds may fail by what a hand places or by what isn't known so closely.
        boolean isTight(String id) {
            Tightness tightness = Tightness.of(judged, new Axes(judged.stage().marks()), si, parts);
            return line(id).instances().stream()
                    .anyMatch(instance -> tightness.isTight(instance)
                            || instance.want()
                                    .findTight(judged.moments(instance.run().stage(), si))
                                    .isPresent());
        }
    }

    There here() {
        return new There(judged, si);
    }

    /// Judges the shot with other keys, at the instants that stand for the whole.
    Optional<There> find(List<Key> keys) {
        List<Node.Entry> entries = keys.stream()
                .map(key -> new Node.Entry("shots." + shot.name() + "." + key.path(), shot.place(), key.value()))
                .toList();
        return Plans.with(plan, entries).plan().map(other -> {
            Shot changed = other.findShot(shot.name()).orElseThrow();
            Judged there = Judged.of(other, changed, filmWants, elsewhere);
            return new There(there, values(there));
        });
    }

    /// The same with the instants that are worst.
    private static There finer(There coarse) {
        return new There(coarse.judged.withWorstFrames(coarse.si), coarse.si);
    }

    /// Marks that say what they said stand where they stand.
    private double[] values(Judged there) {
        Map<String, Integer> before = new HashMap<>();
        List<StagedMark> marks = judged.stage().marks();
        for (int i = 0; i < marks.size(); i++) {
            before.put(marks.get(i).mark().path(), i);
        }
        return there.stage().marks().stream()
                .mapToDouble(mark -> {
                    int index = before.getOrDefault(mark.mark().path(), -1);
                    boolean isSame =
                            index >= 0 && isSame(mark.mark(), marks.get(index).mark());
                    return isSame ? si[index] : mark.startSi();
                })
                .toArray();
    }

    private static boolean isSame(Mark one, Mark other) {
        return one.isFree() || one.equals(other);
    }

    /// Finds how it is with other keys, where a want then holds and nothing that held is lost.
    ///
    /// @param keys the keys
    /// @param id the want's
    /// @param lamps lamps that stand otherwise: off the picture and in nothing, unless they were so before
    Optional<There> findHolding(List<Key> keys, String id, List<String> lamps) {
        List<Key> all = new ArrayList<>(keys);
        List<String> kept = new ArrayList<>(held);
        kept.add(id);
        if (!lamps.isEmpty()) {
            all.add(new Key("wants", wantsOf(lamps)));
            kept.addAll(idsOf(lamps));
        }
        return find(all)
                .filter(there -> isKept(there, kept))
                .map(Otherwise::finer)
                .filter(there -> isKept(there, kept));
    }

    /// How a shot is with other keys with which a want then holds.
    ///
    /// @param there the shot then
    /// @param lost wants that held before and don't then, by id and word
    record Trial(There there, List<String> lost) {
        /// What it costs, as a sentence of its own; empty where nothing is lost.
        String cost() {
            return lost.isEmpty()
                    ? ""
                    : " But " + String.join(" and ", lost) + (lost.size() == 1 ? " fails then." : " fail then.");
        }
    }

    /// Tries other keys, and tells what is lost by them. For a want that is tight as it is, those with which it isn't.
    ///
    /// @param keys the keys
    /// @param id the want that shall hold
    Optional<Trial> findTrial(List<Key> keys, String id) {
        boolean isTight = here().holds(here().line(id));
        return find(keys)
                .filter(there -> there.holds(there.line(id)))
                .map(Otherwise::finer)
                .filter(there -> there.holds(there.line(id)) && !(isTight && there.isTight(id)))
                .map(there -> new Trial(
                        there,
                        there.judged.lines().stream()
                                .filter(line -> held.contains(line.id()) && !there.holds(line))
                                .map(Judged.Line::named)
                                .toList()));
    }

    private static boolean isKept(There there, List<String> ids) {
        return there.judged.lines().stream()
                .filter(line -> ids.contains(line.id()))
                .allMatch(there::holds);
    }

    private Node wantsOf(List<String> lamps) {
        List<Node> wants = new ArrayList<>(
                shot.written().findNode("wants").orElse(null) instanceof Node.Sequence list ? list.items() : List.of());
        for (String lamp : lamps) {
            for (String word : BESIDE) {
                Node name = new Node.Scalar(lamp, false, shot.place());
                wants.add(new Node.Mapping(List.of(new Node.Entry(word, shot.place(), name)), shot.place()));
            }
        }
        return new Node.Sequence(wants, shot.place());
    }

    /// The ids of those of these wants that hold as it is; all, of a lamp that isn't there yet.
    private List<String> idsOf(List<String> lamps) {
        List<String> ids = new ArrayList<>();
        for (int i = 0; i < lamps.size(); i++) {
            for (int w = 0; w < BESIDE.size(); w++) {
                String lamp = lamps.get(i);
                String word = BESIDE.get(w);
                if (known.computeIfAbsent(lamp + word, _ -> isSo(lamp, word))) {
                    ids.add(shot.name() + "." + (shot.wants().size() + 1 + i * BESIDE.size() + w));
                }
            }
        }
        return ids;
    }

    private boolean isSo(String lamp, String word) {
        if (shot.findLight(lamp).isEmpty()) {
            return true;
        }
        int index = shot.wants().size() + 1 + BESIDE.indexOf(word);
        return find(List.of(new Key("wants", wantsOf(List.of(lamp)))))
                .filter(there -> there.holds(there.line(shot.name() + "." + index)))
                .isPresent();
    }
}
