package plumeline.cut.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// Two lists of notes as one.
final class Merging {
    private final List<String> columns;
    private final Map<List<String>, ReviewNote> notes = new LinkedHashMap<>();

    private Merging(List<String> columns) {
        this.columns = columns;
    }

    static ReviewNotes of(ReviewNotes earlier, ReviewNotes later) {
        List<String> columns = new ArrayList<>(earlier.otherColumns());
        List<Integer> places = places(columns, later.otherColumns());
        Merging all = new Merging(columns);
        List<Integer> same = places(new ArrayList<>(columns), earlier.otherColumns());
        earlier.notes().forEach(note -> all.add(note, same));
        later.notes().forEach(note -> all.add(note, places));
        return new ReviewNotes(columns, List.copyOf(all.notes.values()));
    }

    /// Which column of all each of some is; what is new is put behind them. Of several with one name each is another.
    private static List<Integer> places(List<String> all, List<String> some) {
        List<Integer> places = new ArrayList<>();
        for (String name : some) {
            int place = 0;
            while (place < all.size() && (!all.get(place).equals(name) || places.contains(place))) {
                place++;
            }
            if (place == all.size()) {
                all.add(name);
            }
            places.add(place);
        }
        return places;
    }

    private void add(ReviewNote note, List<Integer> places) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < columns.size(); i++) {
            int from = places.indexOf(i);
            cells.add(from < 0 ? "" : note.others().get(from));
        }
        ReviewNote whole = new ReviewNote(
                note.version(), note.frame(), note.author(), note.text(), note.standing(), note.landing(), cells);
        notes.merge(note.key(), whole, Merging::one);
    }

    private static ReviewNote one(ReviewNote earlier, ReviewNote later) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < earlier.others().size(); i++) {
            String cell = later.others().get(i);
            cells.add(cell.isBlank() ? earlier.others().get(i) : cell);
        }
        return new ReviewNote(
                earlier.version(),
                earlier.frame(),
                earlier.author(),
                earlier.text(),
                later.standing(),
                earlier.landing().isEmpty() ? later.landing() : earlier.landing(),
                cells);
    }
}
