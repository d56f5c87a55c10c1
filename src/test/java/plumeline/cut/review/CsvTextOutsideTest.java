package plumeline.cut.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;

/// The rules of the text that comma-separated values go by.
@Outside(source = "RFC 4180, Y. Shafranovich, 2005", place = "section 2, rules 1 to 7", kind = "standard")
final class CsvTextOutsideTest {
    private record Row(String text, List<List<String>> cells) {}

    @Test
    void rulesAndTheirExamples() {
        List<Row> rows = List.of(
                new Row("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n", List.of(abc(), List.of("zzz", "yyy", "xxx"))),
                new Row("aaa,bbb,ccc\r\nzzz,yyy,xxx", List.of(abc(), List.of("zzz", "yyy", "xxx"))),
                new Row("\"aaa\",\"bbb\",\"ccc\"\r\nzzz,yyy,xxx", List.of(abc(), List.of("zzz", "yyy", "xxx"))),
                new Row(
                        "\"aaa\",\"b\r\nbb\",\"ccc\"\r\nzzz,yyy,xxx",
                        List.of(List.of("aaa", "b\r\nbb", "ccc"), List.of("zzz", "yyy", "xxx"))),
                new Row("\"aaa\",\"b\"\"bb\",\"ccc\"", List.of(List.of("aaa", "b\"bb", "ccc"))),
                new Row("aaa,\"b\r\nbb\",\"c\"\"c\"", List.of(List.of("aaa", "b\r\nbb", "c\"c"))),
                new Row("aaa, bbb ,", List.of(List.of("aaa", " bbb ", ""))));
        int compared = 0;
        for (Row row : rows) {
            CsvText.Rows read = CsvText.read(row.text(), "x.csv");
            assertThat(read.broken()).isEmpty();
            assertThat(read.rows().stream()
                            .map(cells -> cells.stream().map(CsvText.Cell::text).toList())
                            .toList())
                    .as(row.text())
                    .isEqualTo(row.cells());
            compared++;
        }
        assertThat(compared).isEqualTo(7);
    }

    private static List<String> abc() {
        return List.of("aaa", "bbb", "ccc");
    }
}
