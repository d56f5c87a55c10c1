package plumeline.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import plumeline.look.SteadyLight;
import plumeline.plan.Pass;
import plumeline.plan.PlacedLight;
import plumeline.plan.WantLine;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.Beam;
import plumeline.stage.Stage;
import plumeline.text.Node;

/// What helps wants on looks: the level to set in one look so that it matches another, the shutter or rate with which a
/// lamp's pulse doesn't show. Each is judged anew with all wants that hold.
final class LookRemedies {
    private static final int TOLD = 3;
    private static final double PERCENT = 100;

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
                    && otherwise
                            .findHolding(List.of(key), line.id(), List.of())
                            .filter(there -> !isTight || !there.isTight(line.id()))
                            .isPresent()) {
                all.add("Camera " + cleaner.key() + " " + cleaner.value() + ": " + cleaner.why() + ".");
            }
        }
        return all;
    }

    private Node scalar(String text) {
        return new Node.Scalar(text, false, otherwise.shot().place());
    }

    /// Each look's own lamps are tried by themselves, those of the first last.
    private List<String> matched(WantLine line) {
        List<String> all = new ArrayList<>();
        for (int i = line.subjects().size() - 1; i >= 0 && all.size() < TOLD; i--) {
            findLevels(line, line.subjects().get(i).name()).ifPresent(all::add);
        }
        return all;
    }

    /// The levels of one look's lamps, all turned by as much, at which it matches.
    private Optional<String> findLevels(WantLine line, String pass) {
        Optional<Stage> look = otherwise.judged().runs().stream()
                .filter(run -> run.pass().equals(pass))
                .map(ShotAnswer.Run::stage)
                .findFirst();
        Optional<Pass> written = otherwise.shot().findPass(pass);
        if (look.isEmpty() || written.isEmpty()) {
            return Optional.empty();
        }
        Map<String, Double> levels = new TreeMap<>();
        List<Beam> beams = look.get().scene(otherwise.si(), 0).beams();
        for (int i = 0; i < beams.size(); i++) {
            PlacedLight light = look.get().shot().lights().get(i);
            if (light.light().emitter().isLamp() && beams.get(i).level() > 0) {
                levels.put(light.name(), beams.get(i).level());
            }
        }
        if (levels.isEmpty()) {
            return Optional.empty();
        }
        Optional<Double> change = otherwise.here().findLookChange(line.id(), pass);
        if (change.isEmpty()) {
            return Optional.empty();
        }
        double stops = change.get();
        Otherwise.Key key = key(written.get(), levels, stops);
        if (isOver(levels, stops)
                || Math.abs(stops) < 0.01
                || otherwise
                        .findHolding(List.of(key), line.id(), List.of())
                        .isEmpty()) {
            return Optional.empty();
        }
        return Optional.of("In " + pass + " " + words(look.get(), levels, stops) + ": "
                + Print.number(Math.abs(stops), 1) + " stops " + (stops < 0 ? "less" : "more")
                + ", and the looks match.");
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
                    .flatMap(light ->
                            light.light().findDimmer(Math.min(1, level.getValue() * Math.pow(2, stops))))
                    .map(set -> " (its dimmer at " + Print.share(set, 0) + ")")
                    .orElse("");
            words.add(level.getKey() + " at " + share(level.getValue(), stops) + " instead of "
                    + share(level.getValue(), 0) + dimmer);
        }
        return String.join(", ", words);
    }
}
