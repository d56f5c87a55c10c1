package plumeline.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import plumeline.quantity.Quantities;
import plumeline.quantity.Reading;
import plumeline.text.Document;
import plumeline.text.Node;
import plumeline.text.Shape;
import plumeline.text.Tidy;

/// The plan that uses every key of the contract in the form that is written there. That it reads and passes the schema
/// is held with the other good plans.
final class ContractTest {
    private static final String CONTRACT = Texts.text(Texts.PLANS.resolve(Path.of("good", "contract.yaml")));

    /// Every key that the plan's contract writes, as it stands there by section; copied from it, not from the grammar.
    private static final String KEYS = """
            plumeline film deliver things kit shots cut cues titles wants title rate frames tempo papers \
            ratio size loudness true_peak keep_out top bottom left right length textless \
            profile width height depth diameter body finish mass displaces label variants hue contents \
            centre_of_mass centre_of_volume volume density \
            cameras lenses lights machines tanks inks pieces table sensor across modes readout iso base highest \
            focal_length nearest f_numbers barrel panel tube gives white power primaries pulse_rate \
            travel speed acceleration repeats inside pane temperature front spread shape carries \
            camera lens at aim turn tilt f_number shutter held focus pivot sensor_behind pupil_ratio \
            place thing lines tied light level moves machine by in start keeps tank water \
            release ink piece count over bore squeeze_time ease crop passes \
            shot pass from_beat alternate each sound sync when lead \
            within or sharp_to of as under part after time upon from_left wide for gap behind\
            """;

    private static Node root(String text) {
        var document = Document.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml");
        assertThat(document.problems()).isEmpty();
        return document.findRoot().orElseThrow();
    }

    private static void collectKeys(Node node, Set<String> into) {
        switch (node) {
            case Node.Scalar _ -> {}
            case Node.Sequence s -> s.items().forEach(item -> collectKeys(item, into));
            case Node.Mapping m ->
                m.entries().forEach(e -> {
                    into.add(e.key());
                    collectKeys(e.value(), into);
                });
        }
    }

    @Test
    void everyKeyAndWantWordOfTheContract_isInThePlan() {
        var keys = new TreeSet<String>();
        collectKeys(root(CONTRACT), keys);
        assertThat(keys).contains(KEYS.split(" "));
        var words = new ArrayList<String>();
        for (var word : WantGrammar.shape().words()) words.add(word.subject().name());
        assertThat(words).hasSize(44);
        assertThat(keys).containsAll(words);
    }

    @Test
    void thePlan_readsToTheLastWord() {
        var plan = Texts.plan(CONTRACT);
        assertThat(plan.shots()).hasSize(6);
        assertThat(plan.findShot("rise").orElseThrow().findRelease()).containsInstanceOf(Release.OfThing.class);
        var pivot = plan.findShot("reveal").orElseThrow().camera().written().listQuantities("pivot");
        assertThat(pivot).hasSize(3);
    }

    @Test
    void spacedAnyhow_isTidiedToTheSamePlan() {
        long seed = 20261126;
        var random = new Random(seed);
        var before = says(root(CONTRACT));
        for (int i = 0; i < 12; i++) {
            var what = "seed " + seed + " round " + i;
            var messy = messed(CONTRACT, random);
            assertThat(messy).as(what).isNotEqualTo(CONTRACT);
            var tidy = Tidy.rewrite(messy);
            assertThat(says(root(messy))).as(what).isEqualTo(before);
            assertThat(says(root(tidy))).as(what).isEqualTo(before);
            assertThat(Texts.read(tidy).problems()).as(what).isEmpty();
            assertThat(Tidy.rewrite(tidy)).as(what).isEqualTo(tidy);
            assertThat(runs(tidy)).as(what).isEmpty();
            assertThat(comments(tidy)).as(what).isEqualTo(comments(CONTRACT));
        }
    }

    /// Says what every value means: a quantity by what it reads as, anything else by its text.
    private static List<String> says(Node node) {
        var out = new ArrayList<String>();
        switch (node) {
            case Node.Scalar s ->
                out.add(
                        Quantities.read(s.text()) instanceof Reading.Read read
                                ? read.toString()
                                : s.text().startsWith("free") ? s.text().replaceAll(" +", " ") : s.text());
            case Node.Sequence s -> s.items().forEach(item -> out.addAll(says(item)));
            case Node.Mapping m ->
                m.entries().forEach(e -> {
                    out.add(e.key());
                    out.addAll(says(e.value()));
                });
        }
        return out;
    }

    /// Spreads every space inside a line that is no text in quotes and no comment.
    private static String messed(String text, Random random) {
        var out = new StringBuilder();
        boolean indenting = true;
        boolean quoted = false;
        boolean comment = false;
        for (char c : text.toCharArray()) {
            out.append(c);
            quoted ^= c == '"';
            comment = c != '\n' && (comment || c == '#' && !quoted);
            indenting = c == '\n' || indenting && c == ' ';
            boolean spread = c == ' ' && !indenting && !quoted && !comment;
            if (spread && !isInText(out)) out.repeat(' ', random.nextInt(4));
        }
        return out.toString();
    }

    /// Tells whether the words before are those of a text, whose spaces count.
    private static boolean isInText(CharSequence before) {
        var last = before.subSequence(Math.max(0, before.length() - 11), before.length())
                .toString();
        return List.of("Fernhollow ", "bath ", "Four ", "Vier ").stream().anyMatch(last::endsWith);
    }

    /// Lists the runs of spaces left inside quantities.
    private static List<String> runs(String text) {
        var found = new ArrayList<String>();
        for (var says : scalars(root(text))) if (says.contains("  ")) found.add(says);
        return found;
    }

    private static List<String> scalars(Node node) {
        return switch (node) {
            case Node.Scalar s -> List.of(s.text());
            case Node.Sequence s ->
                s.items().stream().flatMap(n -> scalars(n).stream()).toList();
            case Node.Mapping m ->
                m.entries().stream().flatMap(e -> scalars(e.value()).stream()).toList();
        };
    }

    private static List<String> comments(String text) {
        return text.lines()
                .filter(l -> l.contains("#"))
                .map(l -> l.substring(l.indexOf('#')))
                .toList();
    }

    /// Keys of the crew's own words: tidying must leave every space in them, even where they look like a quantity.
    @Test
    void everyTextOfTheGrammar_keepsItsSpaces() {
        var texts = new HashSet<String>();
        collectTexts(Plans.grammar(), texts);
        assertThat(texts).contains("title", "titles", "sound", "recipe", "file");
        for (var key : texts) {
            var line = key.equals("titles") ? "titles: {one: {en: 24   fps}}\n" : key + ": 24   fps\n";
            assertThat(Tidy.rewrite(line)).as(key).isEqualTo(line);
        }
        assertThat(Tidy.rewrite("rate: 24   fps\n")).isEqualTo("rate: 24 fps\n");
    }

    private static void collectTexts(Shape shape, Set<String> into) {
        switch (shape) {
            case Shape.Keys keys -> keys.keys().forEach(k -> collectText(k, into));
            case Shape.Named named -> collectTexts(named.value(), into);
            case Shape.Items items -> collectTexts(items.item(), into);
            case Shape.AnyOf any -> any.shapes().forEach(s -> collectTexts(s, into));
            default -> {}
        }
    }

    private static void collectText(Shape.Key key, Set<String> into) {
        Shape at = key.shape();
        while (at instanceof Shape.Named named) at = named.value();
        if (at instanceof Shape.Free) into.add(key.name());
        collectTexts(key.shape(), into);
    }
}
