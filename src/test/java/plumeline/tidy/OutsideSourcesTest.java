package plumeline.tidy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import plumeline.tidy.Sources.Source;

/// Holds that physics is checked from outside: each front class is used in an `…OutsideTest` of its room, and each test
/// there names its source.
final class OutsideSourcesTest {
    private static final Pattern FRONT = Pattern.compile("Front class(?:es)?: ((?:[^.]|\\.(?=\\w))*)\\.");
    private static final Pattern LINK = Pattern.compile("\\[(?:[a-z]+\\.)*([A-Z]\\w*)]");
    private static final Pattern TEST = Pattern.compile("@(Test|ParameterizedTest|RepeatedTest|TestFactory)\\b");

    @Test
    void everyPhysicsFrontClass_isCheckedFromOutside() {
        var found = new TreeSet<String>();
        var fronts = new TreeSet<String>();
        for (Source info : Sources.list(Sources.MAIN)) {
            if (!info.name().equals("package-info.java") || !Rooms.PHYSICS.contains(info.room())) {
                continue;
            }
            Set<String> names = fronts(info);
            if (names.isEmpty()) {
                found.add(info.room() + " names no front class in its package-info");
            }
            for (String front : names) {
                fronts.add(front);
                if (!isUsedOutside(info.room(), front)) {
                    found.add(info.room() + "." + front + " is used in no " + "…OutsideTest");
                }
            }
        }
        assertThat(fronts).as("front classes").hasSizeGreaterThan(2);
        assertThat(found).isEmpty();
    }

    @Test
    void everyOutsideTest_namesItsSource() {
        var found = new ArrayList<String>();
        int examined = 0;
        for (Source source : listOutsideTests()) {
            List<String> lines = source.lines();
            boolean wholeClass = classIsAnnotated(lines);
            for (int i = 0; i < lines.size(); i++) {
                if (!TEST.matcher(lines.get(i)).find()) {
                    continue;
                }
                examined++;
                if (!wholeClass && !methodIsAnnotated(lines, i)) {
                    found.add(source.at(i + 1) + " has no @Outside");
                }
            }
        }
        assertThat(examined).as("outside tests").isGreaterThan(1);
        assertThat(found).isEmpty();
    }

    private static List<Source> listOutsideTests() {
        return Sources.list(Sources.TEST).stream()
                .filter(source -> source.name().endsWith("OutsideTest.java"))
                .toList();
    }

    private static Set<String> fronts(Source info) {
        String text = info.text().replace("\n///", "");
        var names = new LinkedHashSet<String>();
        var sentence = FRONT.matcher(text);
        if (sentence.find()) {
            LINK.matcher(sentence.group(1)).results().forEach(link -> names.add(link.group(1)));
        }
        return names;
    }

    private static boolean isUsedOutside(String room, String front) {
        Pattern use = Pattern.compile("\\b" + front + "\\b");
        return listOutsideTests().stream()
                .filter(source -> source.room().equals(room))
                .anyMatch(source -> use.matcher(source.text()).find());
    }

    private static boolean classIsAnnotated(List<String> lines) {
        for (String line : lines) {
            if (line.startsWith("@Outside(")) {
                return true;
            }
            if (line.contains("class ")) {
                return false;
            }
        }
        return false;
    }

    /// Whether the annotations round a line, up to the method they belong to, hold `@Outside`.
    private static boolean methodIsAnnotated(List<String> lines, int index) {
        for (int i = index - 1; i >= 0 && !endsBlock(lines.get(i)); i--) {
            if (lines.get(i).strip().startsWith("@Outside(")) {
                return true;
            }
        }
        for (int i = index + 1; i < lines.size() && !lines.get(i).endsWith("{"); i++) {
            if (lines.get(i).strip().startsWith("@Outside(")) {
                return true;
            }
        }
        return false;
    }

    private static boolean endsBlock(String line) {
        return line.isBlank() || line.strip().equals("}");
    }
}
