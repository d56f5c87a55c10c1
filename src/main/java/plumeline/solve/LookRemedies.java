package plumeline.solve;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import plumeline.lit.Amounts;
import plumeline.look.SteadyLight;
import plumeline.plan.Pass;
import plumeline.plan.PlacedLight;
import plumeline.plan.WantLine;
import plumeline.quantity.Print;
import plumeline.quantity.Quantities;
import plumeline.quantity.Quantity;
import plumeline.quantity.Reading;
import plumeline.stage.Beam;
import plumeline.stage.Stage;
import plumeline.text.Node;

/// What helps wants on looks: the level to set in one look so that it matches another, the shutter or rate with which a
/// lamp's pulse doesn't show. Each is judged anew with all wants that hold.
final class LookRemedies {
    private static final int TOLD = 3;
    private static final double PERCENT = 100;
    private static final double LEAST_STOPS = 0.01;
    private static final double SAME_RATE = 1e-6;

    /// Levels are told in steps as fine as this, %; below ten of them ten times as fine.
    private static final double STEP_PERCENT = 1;

    private final Otherwise otherwise;
    private final Quantity film;

    LookRemedies(Otherwise otherwise, Quantity film) {
        this.otherwise = otherwise;
        this.film = film;
    }

    /// What to try for a want that fails or is tight, in sentences.
    List<String> attempts(WantLine line) {
        return switch (line.word()) {
            case "steady_light" -> steady(line);
            case "matched" -> matched(line);
            default -> List.of();
        };
    }

    private List<String> steady(WantLine line) {
        List<String> all = new ArrayList<>();
        Stage stage = otherwise.judged().stage();
        int lamp = stage.lampIndex(line.subjects().getFirst().name());
        boolean isTight = otherwise.here().holds(otherwise.here().line(line.id()));
        for (SteadyLight.Cleaner cleaner : new SteadyLight(stage.shot(), lamp, film).listCleaner()) {
            Otherwise.Key key = new Otherwise.Key("camera." + cleaner.key(), scalar(cleaner.value()));
            if (all.size() < TOLD
                    && !repeats(cleaner)
                    && otherwise
                            .findHolding(List.of(key), line.id(), List.of())
                            .filter(there -> !isTight || !there.isTight(line.id()))
                            .isPresent()) {
                all.add("Camera " + cleaner.key() + " " + cleaner.value() + ": " + cleaner.why() + ".");
            }
        }
        return all;
    }

    /// Whether a rate is too slow for the shot's slowest speed, so that frames repeat.
    private boolean repeats(SteadyLight.Cleaner cleaner) {
        return cleaner.key().equals("rate")
                && Quantities.read(cleaner.value()) instanceof Reading.Read(Quantity rate)
                && rate.si() * (1 + SAME_RATE)
                        < film.si() / CameraKnobs.slowest(otherwise.shot().playback());
    }

    private Node scalar(String text) {
        return new Node.Scalar(text, false, otherwise.shot().place());
    }

    /// All looks as dark as the darkest is against what is wanted; else one brighter by itself.
    private List<String> matched(WantLine line) {
        Map<String, Double> changes = new LinkedHashMap<>();
        for (int i = 0; i < line.subjects().size(); i++) {
            String look = line.subjects().get(i).name();
            Optional<Double> change =
                    i == 0 ? Optional.of(0.0) : otherwise.here().findLookChange(line.id(), look);
            if (change.isEmpty()) {
                return List.of();
            }
            changes.put(look, change.get());
        }
        double most = Collections.max(changes.values());
        double least = Collections.min(changes.values());
        List<String> all = new ArrayList<>();
        findLevels(line, changes, most).ifPresent(all::add);
        findLevels(line, changes, least).ifPresent(all::add);
        return all;
    }

    /// The levels with which all looks compare as wanted.
    ///
    /// @param stops what the look that stays has over what is wanted of it
    private Optional<String> findLevels(WantLine line, Map<String, Double> changes, double stops) {
        List<Otherwise.Key> keys = new ArrayList<>();
        List<String> words = new ArrayList<>();
        for (Map.Entry<String, Double> change : changes.entrySet()) {
            double own = change.getValue() - stops;
            if (Math.abs(own) < LEAST_STOPS) {
                continue;
            }
            Optional<Stage> look = findLook(change.getKey());
            Optional<Pass> written = otherwise.shot().findPass(change.getKey());
            Map<String, Double> levels = look.map(this::levels).orElse(Map.of());
            if (look.isEmpty() || written.isEmpty() || levels.isEmpty() || isOver(levels, own)) {
                return Optional.empty();
            }
            keys.add(key(written.get(), levels, own));
            words.add("in " + change.getKey() + " " + words(look.get(), levels, own) + " (" + Amounts.stops(own)
                    + (own < 0 ? " less)" : " more)"));
        }
        return keys.isEmpty()
                        || otherwise.findHolding(keys, line.id(), List.of()).isEmpty()
                ? Optional.empty()
                : Optional.of(capital(String.join(", ", words)) + ": the looks then match.");
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private Optional<Stage> findLook(String pass) {
        return otherwise.judged().runs().stream()
                .filter(run -> run.pass().equals(pass))
                .map(ShotAnswer.Run::stage)
                .findFirst();
    }

    /// The levels of a look's lamps that are on.
    private Map<String, Double> levels(Stage look) {
        Map<String, Double> levels = new TreeMap<>();
        List<Beam> beams = look.scene(otherwise.si(), 0).beams();
        for (int i = 0; i < beams.size(); i++) {
            PlacedLight light = look.shot().lights().get(i);
            if (light.light().emitter().isLamp() && beams.get(i).level() > 0) {
                levels.put(light.name(), beams.get(i).level());
            }
        }
        return levels;
    }

    private static boolean isOver(Map<String, Double> levels, double stops) {
        return levels.values().stream().anyMatch(level -> level * Math.pow(2, stops) > 1);
    }

    private Otherwise.Key key(Pass pass, Map<String, Double> levels, double stops) {
        List<Node.Entry> entries = new ArrayList<>();
        pass.overrides().forEach((path, value) -> entries.add(new Node.Entry(path, pass.place(), value)));
        for (Map.Entry<String, Double> level : levels.entrySet()) {
            String path = "lights." + level.getKey() + ".level";
            entries.removeIf(entry -> entry.key().equals(path));
            entries.add(new Node.Entry(path, pass.place(), scalar(share(level.getValue(), stops))));
        }
        return new Otherwise.Key("passes." + pass.name(), new Node.Mapping(entries, pass.place()));
    }

    private static String share(double level, double stops) {
        double percent = Math.min(PERCENT, PERCENT * level * Math.pow(2, stops));
        return Print.number(percent, percent < 10 * STEP_PERCENT ? 1 : 0) + " %";
    }

    private static String words(Stage look, Map<String, Double> levels, double stops) {
        List<String> words = new ArrayList<>();
        for (Map.Entry<String, Double> level : levels.entrySet()) {
            String dimmer = look.shot()
                    .findLight(level.getKey())
                    .flatMap(light -> light.light().findDimmer(Math.min(1, level.getValue() * Math.pow(2, stops))))
                    .map(set -> " (its dimmer at " + Print.share(set, 0) + ")")
                    .orElse("");
            words.add(level.getKey() + " at " + share(level.getValue(), stops) + " instead of "
                    + share(level.getValue(), 0) + dimmer);
        }
        return String.join(", ", words);
    }
}
