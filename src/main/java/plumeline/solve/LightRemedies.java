package plumeline.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.lit.Measure;

/// What else a camera or a lamp could be set to so that a want on how much light there is holds; by one thing, or where
/// none does, by two. Each is judged anew with all wants that hold.
final class LightRemedies {
    /// Stops past what would do that are tried all the same: thirds are rounded, and lamps' shares guessed.
    private static final double ABOUT_STOPS = 0.15;

    /// Settings of one knob, and of two, that are tried.
    private static final int TRIED = 5;

    private static final int PAIRS_TRIED = 4;
    private static final int PAIRS_TOLD = 3;

    private final Otherwise otherwise;
    private final Words words;

    LightRemedies(Otherwise otherwise, Words words) {
        this.otherwise = otherwise;
        this.words = words;
    }

    /// Whether a want asks how much light there is.
    static boolean isOne(String word) {
        return word.equals("lit") || word.equals("dark");
    }

    /// What to try for a want that fails or is tight, in sentences.
    ///
    /// @param id the want's
    List<String> attempts(String id) {
        Optional<Measure.Change> wanted = otherwise.here().findChange(id);
        if (wanted.isEmpty() || wanted.get().mostStops() < wanted.get().leastStops()) {
            return List.of();
        }
        boolean isTight = otherwise.here().holds(otherwise.here().line(id));
        Measure.Change change = wanted.get();
        CameraKnobs camera = new CameraKnobs(otherwise);
        Smear smear = new Smear(otherwise.judged().stage(), otherwise.si(), camera.seconds());
        List<Turn.Knob> knobs = new ArrayList<>(camera.list());
        knobs.addAll(new LampKnobs(otherwise, id, words).list());
        List<Turn> found = new ArrayList<>();
        for (Turn.Knob knob : knobs) {
            findBest(knob.listNear(change.aimStops()), change, id, isTight).ifPresent(found::add);
        }
        if (found.isEmpty()) {
            found.addAll(pairs(knobs, change, id, isTight));
        }
        return found.stream().map(turn -> turn.sentence(smear)).toList();
    }

    private List<Turn> pairs(List<Turn.Knob> knobs, Measure.Change change, String id, boolean isTight) {
        double aim = change.aimStops();
        List<Turn> found = new ArrayList<>();
        for (int one = 0; one < knobs.size() && found.size() < PAIRS_TOLD; one++) {
            for (int other = one + 1; other < knobs.size() && found.size() < PAIRS_TOLD; other++) {
                List<Turn> both = new ArrayList<>();
                for (Turn part : knobs.get(one).listPart(aim)) {
                    knobs.get(other).listNear(aim - part.stops()).stream()
                            .limit(1)
                            .filter(rest -> rest.stops() * aim > 0)
                            .forEach(rest -> both.add(part.and(rest)));
                }
                findBest(both, change, id, isTight).ifPresent(found::add);
            }
        }
        return found;
    }

    /// The first that holds by more than hands and lamps may be off, else the first that holds.
    private Optional<Turn> findBest(List<Turn> turns, Measure.Change change, String id, boolean isTight) {
        List<Turn> near = turns.stream()
                .filter(turn -> turn.stops() >= change.leastStops() - ABOUT_STOPS
                        && turn.stops() <= change.mostStops() + ABOUT_STOPS)
                .limit(turns.stream().anyMatch(turn -> turn.keys().size() > 1) ? PAIRS_TRIED : TRIED)
                .toList();
        Optional<Turn> holding = Optional.empty();
        for (Turn turn : near) {
            Optional<Otherwise.There> there = otherwise.findHolding(turn.keys(), id, turn.lamps());
            if (there.isPresent() && !there.get().isTight(id)) {
                return Optional.of(turn);
            }
            if (there.isPresent() && holding.isEmpty() && !isTight) {
                holding = Optional.of(turn);
            }
        }
        return holding;
    }
}
