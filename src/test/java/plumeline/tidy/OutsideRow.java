package plumeline.tidy;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/// A row of an outside table: what to compute, from what, and what a source says it is.
public record OutsideRow(String id, String law, List<String> inputs, double expected, double tolerance, String source) {
    /// An input as it stands.
    public String word(int place) {
        return inputs.get(place);
    }

    /// An input as a number.
    public double in(int place) {
        return Double.parseDouble(inputs.get(place));
    }

    /// Reads a table of a room.
    public static List<OutsideRow> readAll(String room, String name) {
        try (InputStream stream = OutsideRow.class.getResourceAsStream("/outside/" + room + "/" + name)) {
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
