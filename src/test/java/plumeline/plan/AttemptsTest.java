package plumeline.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import plumeline.text.Check;
import plumeline.text.Document;
import plumeline.text.Node;
import plumeline.text.Problem;
import plumeline.text.Shape;

/// What messages say to try fits the field that they are about: for every key of the grammar.
final class AttemptsTest {
    private static final Pattern ATTEMPT = Pattern.compile("(?:.*[ :])?[Tt]ry (.*)\\.|Add `[a-z_]+: (.*)`\\.");

    /// Keys by their path in the grammar, the names of the crew's own things left out.
    private static Map<String, Shape.Key> keys() {
        var keys = new LinkedHashMap<String, Shape.Key>();
        collect(Plans.grammar(), "", keys);
        return keys;
    }

    private static void collect(Shape shape, String path, Map<String, Shape.Key> into) {
        switch (shape) {
            case Shape.Keys keys -> keys.keys().forEach(key -> add(key, path, into));
            case Shape.Named named -> collect(named.value(), path, into);
            case Shape.Items items -> collect(items.item(), path, into);
            case Shape.AnyOf any -> any.shapes().forEach(s -> collect(s, path, into));
            case Shape.OneWord words -> {
                words.common().forEach(key -> add(key, path, into));
                for (var word : words.words()) {
                    add(word.subject(), path, into);
                    word.further()
                            .forEach(key -> add(key, path + "." + word.subject().name(), into));
                }
            }
            default -> {}
        }
    }

    private static void add(Shape.Key key, String before, Map<String, Shape.Key> into) {
        var path = before.isEmpty() ? key.name() : before + "." + key.name();
        into.put(path, key);
        collect(key.shape(), path, into);
    }

    private static Node tree(String text) {
        return Document.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml")
                .findRoot()
                .orElseThrow();
    }

    private static List<Problem> problems(String path, Shape.Key key, String value) {
        var steps = path.split("\\.");
        Shape shape = Shape.Keys.of(key);
        var text = key.name() + ": " + value;
        for (int i = steps.length - 2; i >= 0; i--) {
            shape = Shape.Keys.of(Shape.Key.optional(steps[i], "", shape));
            text = steps[i] + ": {" + text + "}";
        }
        return Check.against(shape, tree(text), "").stream()
                .filter(p -> p.field().equals(path))
                .toList();
    }

    @Test
    void everyAttempt_fitsItsOwnField() {
        int examined = 0;
        var keys = keys();
        for (var entry : keys.entrySet()) {
            var key = entry.getValue();
            var wrong = new ArrayList<>(List.of("true", "zz!", "0", "-7", "5 zz", "66", "[]", "{}", "[[[]]]"));
            wrong.addAll(List.of("-3 mm", "0 px", "999 %", "7 deg", "free", "-2 s", "-0.5 frames", "1,5 mm"));
            for (var value : wrong) {
                for (var problem : problems(entry.getKey(), key, value)) {
                    if (!key.hint().isEmpty() || problem.code().matches("P-(NAME|KEY)-.*")) continue;
                    if (problem.attempt().matches("Write the name of .* alone\\.")) continue;
                    var match = ATTEMPT.matcher(problem.attempt());
                    assertThat(match.matches()).as(problem.toText()).isTrue();
                    var tried = match.group(1) == null ? match.group(2) : match.group(1);
                    assertThat(Check.against(key.shape(), tree(tried), ""))
                            .as(entry.getKey() + ": " + value + " told to try " + tried)
                            .isEmpty();
                    examined++;
                }
            }
        }
        assertThat(keys).hasSizeGreaterThan(250);
        assertThat(examined).isGreaterThan(1500);
    }

    private static void checkAttempt(String path, String value, String attempt) {
        assertThat(problems(path, keys().get(path), value))
                .as(path + ": " + value)
                .extracting(Problem::attempt)
                .containsExactly(attempt);
    }

    @Test
    void attempts_areOfTheSizeThatIsUsual() {
        checkAttempt("shots.camera.pupil_ratio", "0", "Try 1.");
        checkAttempt("kit.lenses.pupil_ratio", "wide", "Try 1.");
        checkAttempt("shots.camera.f_number", "0", "Try 8.");
        checkAttempt("shots.camera.iso", "-100", "Try 800.");
        checkAttempt("kit.cameras.iso.highest", "0", "Try 3200.");
        checkAttempt("kit.cameras.sensor.width", "0 mm", "Try 36 mm.");
        checkAttempt("kit.cameras.sensor.height", "0 mm", "Try 20.25 mm.");
        checkAttempt("kit.cameras.sensor.across", "0 px", "Try 3840 px.");
        checkAttempt("kit.cameras.modes.readout", "-1 ms", "Try 6 ms.");
        checkAttempt("kit.tanks.pane", "-1 mm", "Try 8 mm.");
        checkAttempt("kit.machines.repeats", "-1 mm", "Try 0.1 mm.");
        checkAttempt("kit.lights.primaries.x", "0", "Try 0.31.");
        checkAttempt("kit.lights.power_factor", "2", "Try 0.9.");
        checkAttempt("kit.inks.spread", "0", "Try 0.2.");
        checkAttempt("shots.release.bore", "0 mm", "Try 2 mm.");
        checkAttempt("shots.camera.shutter", "0 deg", "Try 180 deg.");
        checkAttempt("things.height", "true", "Begin with a number: try 66 mm.");
        checkAttempt("things.height", "0", "Add the unit: try 66 mm.");
        checkAttempt("shots.place.lines", "0", "Try 2.");
        checkAttempt("shots.wants.fills.height", "60", "Add the unit: try 60 %.");
    }

    @Test
    void aLensThatTheKitLacks_isToldTheKitsNames() {
        var lenses = new StringBuilder();
        for (int i = 1; i <= 14; i++) lenses.append("lens_").append(i).append(": {focal_length: 50 mm}, ");
        var text = Texts.SMALL
                .replace("{fifty: {focal_length: 50 mm}}", "{" + lenses + "}")
                .replace("lens: fifty", "lens: lense_14");
        assertThat(Texts.read(text).problems())
                .extracting(Problem::toText)
                .containsExactly("p.yaml:15:32 shots.one.camera.lens is lense_14; must be the name of a lens in"
                        + " kit.lenses: lens_1, lens_2, lens_3, lens_4, lens_5, lens_6, lens_7, lens_8, lens_9,"
                        + " lens_10, lens_11, lens_12 or one of 2 more\n  Try lens_14.   (P-REF-01, docs/problems.md)");
    }

    @Test
    void aReferenceInCapitals_isToldTheNamesToo() {
        for (var slip : List.of("body: main>body: Main", "lens: fifty>lens: Fifty", "thing: tin>thing: Tin")) {
            var halves = slip.split(">");
            assertThat(Texts.read(Texts.replacing(halves[0], halves[1])).problems())
                    .as(slip)
                    .singleElement()
                    .satisfies(p -> {
                        assertThat(p.code()).isEqualTo("P-REF-01");
                        assertThat(p.allowed()).contains(": " + halves[0].split(" ")[1]);
                        assertThat(p.attempt()).isEqualTo("Try " + halves[0].split(" ")[1] + ".");
                    });
        }
    }
}
