package plumeline.cut.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import plumeline.cut.review.CsvText.Cell;

/// Which column of a list of notes holds what.
///
/// @param known the index of each column that we know, by its word
/// @param others the indices of all other columns
record Columns(Map<String, Integer> known, List<Integer> others) {
    static final String VERSION = "version";
    static final String TIMECODE = "timecode";
    static final String AUTHOR = "author";
    static final String NOTE = "note";
    static final String DONE = "done";
    static final String SHOT = "shot";
    static final String PASS = "pass";
    static final String SHOT_FRAME = "shot_frame";
    static final String SOURCE_TIMECODE = "source_timecode";

    /// What every list has.
    static final List<String> NEEDED = List.of(VERSION, TIMECODE, AUTHOR, NOTE, DONE);

    /// What we fill in.
    static final List<String> FILLED = List.of(SHOT, PASS, SHOT_FRAME, SOURCE_TIMECODE);

    Columns {
        known = Map.copyOf(known);
        others = List.copyOf(others);
    }

    /// Reads the first row; a column that comes twice is an other the second time.
    static Columns of(List<Cell> head) {
        Map<String, Integer> known = new LinkedHashMap<>();
        List<Integer> others = new ArrayList<>();
        for (int i = 0; i < head.size(); i++) {
            String word = word(head.get(i));
            boolean isKnown = NEEDED.contains(word) || FILLED.contains(word);
            if (!isKnown || known.putIfAbsent(word, i) != null) {
                others.add(i);
            }
        }
        return new Columns(known, others);
    }

    /// A column's word, however it is spelled.
    static String word(Cell cell) {
        return cell.text().strip().toLowerCase(Locale.ROOT);
    }

    /// Finds what parts the names of columns in the first line of a text, where that isn't commas.
    static Optional<String> findOtherPart(String text) {
        String head = text.stripLeading().lines().findFirst().orElse("");
        return Stream.of("; semicolons", "\t tabs")
                .filter(part -> isParted(head, part.substring(0, 1)))
                .map(part -> part.substring(2))
                .findFirst();
    }

    private static boolean isParted(String head, String by) {
        return countNeeded(head, by) > Math.max(1, countNeeded(head, ","));
    }

    private static long countNeeded(String head, String by) {
        List<String> words = Stream.of(head.split(by))
                .map(word -> word.replace("\"", "").strip().toLowerCase(Locale.ROOT))
                .toList();
        return NEEDED.stream().filter(words::contains).count();
    }

    List<String> listMissing() {
        return NEEDED.stream().filter(word -> !known.containsKey(word)).toList();
    }

    /// A row's cell; empty where the list has no such column.
    String text(List<Cell> row, String word) {
        Integer index = known.get(word);
        return index == null ? "" : row.get(index).text();
    }

    Cell cell(List<Cell> row, String word) {
        return row.get(known.getOrDefault(word, 0));
    }

    List<String> others(List<Cell> row) {
        return others.stream().map(index -> row.get(index).text()).toList();
    }

    /// The first row of a list that is written.
    static List<String> head(List<String> others) {
        return Stream.of(NEEDED, FILLED, others).flatMap(List::stream).toList();
    }
}
