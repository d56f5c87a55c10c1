package plumeline.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.draw.Made;
import plumeline.search.Leeway;
import plumeline.solve.FilmAnswer;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;

final class MarksCsvTest {
    /// Reads comma-separated values as RFC 4180, section 2 lays down; written for this test from the standard's
    /// grammar.
    private static List<List<String>> read(String text) {
        List<List<String>> records = new ArrayList<>();
        List<String> record = new ArrayList<>();
        StringBuilder field = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean next = i + 1 < text.length();
            if (quoted && c == '"' && next && text.charAt(i + 1) == '"') {
                field.append('"');
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (!quoted && c == ',') {
                record.add(field.toString());
                field.setLength(0);
            } else if (!quoted && c == '\r' && next && text.charAt(i + 1) == '\n') {
                record.add(field.toString());
                field.setLength(0);
                records.add(List.copyOf(record));
                record.clear();
                i++;
            } else {
                assertThat(quoted || (c != '\n' && c != '\r'))
                        .as("a bare line break at %d", i)
                        .isTrue();
                field.append(c);
            }
        }
        assertThat(record).as("the last record ends in CRLF").isEmpty();
        return records;
    }

    @Test
    void marks_readBackAsTheAnswers() {
        FilmAnswer film = Made.film(Made.text());
        List<List<String>> records = read(Papers.marksCsv(film));
        assertThat(String.join(",", records.getFirst()))
                .isEqualTo("shot,mark,value,unit,origin,leeway_minus,leeway_plus,leeway_unit");
        int row = 1;
        for (ShotAnswer shot : film.shots()) {
            for (MarkAnswer mark : shot.marks()) {
                if (mark.setting() instanceof MarkAnswer.Setting.At at) {
                    List<String> record = records.get(row++);
                    assertThat(record).hasSize(8);
                    assertThat(record.get(0)).isEqualTo(shot.shot());
                    assertThat(record.get(1)).isEqualTo(mark.mark().path());
                    double perSi = perSi(record.get(3));
                    assertThat(Double.parseDouble(record.get(2)) / perSi).isCloseTo(at.si(), within(1e-6));
                    assertThat(record.get(4)).isEqualTo(at.origin().word());
                    check(record.get(5), perSi, mark.leeway().minus());
                    check(record.get(6), perSi, mark.leeway().plus());
                    assertThat(record.get(7)).isEqualTo(record.get(3));
                }
            }
        }
        assertThat(row).isEqualTo(records.size()).isGreaterThan(30);
    }

    private static double perSi(String unit) {
        return switch (unit) {
            case "mm" -> 1000;
            case "deg" -> 180 / Math.PI;
            case "%" -> 100;
            case "1" -> 1;
            default -> throw new AssertionError(unit);
        };
    }

    private static void check(String text, double perSi, Leeway.Side side) {
        if (side instanceof Leeway.Side.Ends(double distance)) {
            assertThat(Double.parseDouble(text) / perSi).isCloseTo(distance, within(1e-6));
        } else {
            assertThat(text).isEqualTo("endless");
        }
    }

    @Test
    void marksWithoutValue_haveNoRow() {
        assertThat(Papers.marksCsv(Made.film(Made.text())))
                .doesNotContain("key.x,0")
                .doesNotContain("release.y");
    }

    @Test
    void inches_areThePapersUnit() {
        List<List<String>> records = read(Papers.marksCsv(Made.film(Made.text().replace("papers: mm", "papers: in"))));
        List<String> lens = records.stream()
                .filter(record ->
                        record.get(0).equals("reveal") && record.get(1).equals("camera.y"))
                .findFirst()
                .orElseThrow();
        assertThat(lens.get(3)).isEqualTo("in");
        assertThat(Double.parseDouble(lens.get(2))).isCloseTo(-600 / 25.4, within(1e-4));
    }

    @Test
    void fields_areQuotedWhereTheStandardAsks() {
        String hostile = "a,\"b\"\r\nc";
        assertThat(MarksCsv.field(hostile)).isEqualTo("\"a,\"\"b\"\"\r\nc\"");
        assertThat(read(MarksCsv.field(hostile) + "\r\n")).containsExactly(List.of(hostile));
    }
}
