package plumeline.water;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/// A row of an outside table: what to compute, from what, and what a source says it is.
record OutsideRow(String id, String law, List<String> inputs, double expected, double tolerance, String source) {
    String word(int place) {
        return inputs.get(place);
    }

    double in(int place) {
        return Double.parseDouble(inputs.get(place));
    }

    static List<OutsideRow> readAll(String name) {
        try (InputStream stream = OutsideRow.class.getResourceAsStream("/outside/water/" + name)) {
            if (stream == null) {
                throw new IllegalStateException("no table " + name);
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.startsWith("id;"))
                    .map(OutsideRow::read)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static OutsideRow read(String line) {
        String[] cells = line.split(";", -1);
        return new OutsideRow(
                cells[0],
                cells[1],
                List.of(cells).subList(2, 6),
                Double.parseDouble(cells[6]),
                Double.parseDouble(cells[7]),
                cells[10]);
    }
}
