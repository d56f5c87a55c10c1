package plumeline.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.draw.Made;
import plumeline.plan.Mark;
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
                    assertThat(Double.parseDouble(record.get(2)) / perSi)
                            .isCloseTo(at.si(), within(0.5001 * step(mark)));
                    assertThat(record.get(4)).isEqualTo(at.origin().word());
                    check(record.get(5), perSi, mark, mark.leeway().minus());
                    check(record.get(6), perSi, mark, mark.leeway().plus());
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

    /// What a hand sets in millimetre papers, SI.
    private static double step(MarkAnswer mark) {
        return switch (mark.mark().kind()) {
            case TAPE, HEIGHT, HUNG, LAMP_PLACE, FOCUS -> 0.001;
            case MOTOR -> 0.0001;
            case TURN, LAMP_TURN -> Math.toRadians(1);
            case MOTOR_TURN -> Math.toRadians(0.1);
            case DIAL -> mark.mark().path().equals("camera.f_number") ? 0.1 : 0.01;
        };
    }

    /// Rounded down by less than a step, never up.
    private static void check(String text, double perSi, MarkAnswer mark, Leeway.Side side) {
        if (side instanceof Leeway.Side.Ends(double distance)) {
            assertThat(text).matches("[0-9]+(\\.[0-9])?");
            double step = mark.mark().kind() == Mark.Kind.MOTOR ? 0.001 : step(mark);
            assertThat(Double.parseDouble(text) / perSi).isBetween(distance - step, distance + 1e-9);
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
        assertThat(Double.parseDouble(lens.get(2))).isCloseTo(-600 / 25.4, within(1.0 / 32));
        assertThat(lens.get(2)).isEqualTo("-23.625");
        // 244.6 mm and 567.7 mm are 9.63 in and 22.35 in.
        assertThat(lens.subList(5, 8)).containsExactly("9.625", "22.3125", "in");
    }

    @Test
    void figures_areWhatAHandCanSet() {
        List<List<String>> records = read(Papers.marksCsv(Made.film(Made.text())));
        assertThat(records)
                .contains(List.of("reveal", "third.x", "4", "mm", "solved", "6", "1.2", "mm"))
                .contains(List.of("plume", "camera.y", "-1122", "mm", "solved", "1.7", "3", "mm"));
    }

    @Test
    void fields_areQuotedWhereTheStandardAsks() {
        String hostile = "a,\"b\"\r\nc";
        assertThat(MarksCsv.field(hostile)).isEqualTo("\"a,\"\"b\"\"\r\nc\"");
        assertThat(read(MarksCsv.field(hostile) + "\r\n")).containsExactly(List.of(hostile));
    }
}
