package plumeline.cut.review;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumeline.cut.review.CsvText.Cell;
import plumeline.cut.review.ReviewNote.Landing;
import plumeline.cut.review.ReviewNote.Standing;
import plumeline.text.Place;
import plumeline.text.Problem;
import plumeline.time.Timecode;

/// Reads a list of notes, or says all that is wrong with it.
final class NotesReader {
    private static final int MOST_BYTES = 4 << 20;
    private static final int MOST_PROBLEMS = 1000;
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private final String file;
    private final FilmClock clock;
    private final List<Problem> problems = new ArrayList<>();

    NotesReader(String file, FilmClock clock) {
        this.file = file;
        this.clock = clock;
    }

    ReviewNotes.Reading read(byte[] bytes) {
        Optional<ReviewNotes> notes = decode(bytes).flatMap(this::read);
        return new ReviewNotes.Reading(problems.isEmpty() ? notes : Optional.empty(), problems);
    }

    private Optional<String> decode(byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            add(
                    Place.ofFile(file),
                    "",
                    "P-NOTE-01",
                    "larger than 4 MiB",
                    "4 MiB at most",
                    "Leave out the notes that are done, or keep a file a version.");
            return Optional.empty();
        }
        try {
            String text = UTF_8.newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            return Optional.of(text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text);
        } catch (CharacterCodingException e) {
            add(Place.ofFile(file), "", "P-NOTE-01", "no UTF-8", "UTF-8", "Save it as CSV in UTF-8.");
            return Optional.empty();
        }
    }

    private Optional<ReviewNotes> read(String text) {
        Optional<String> other = Columns.findOtherPart(text);
        if (other.isPresent()) {
            add(
                    Place.ofFile(file),
                    "the first line",
                    "P-NOTE-03",
                    "parted by " + other.get(),
                    "parted by commas",
                    "Save it as CSV parted by commas; they are wanted in every line.");
            return Optional.empty();
        }
        CsvText.Rows read = CsvText.read(text, file);
        read.broken()
                .ifPresent(broken -> add(
                        broken.place(),
                        "the cell",
                        "P-NOTE-02",
                        broken.given(),
                        "closed by a quote before a comma or the line's end",
                        "Close the quote, and double each quote inside it: \"a \"\"good\"\" one\"."));
        if (read.rows().isEmpty()) {
            if (read.broken().isEmpty()) {
                missing(Place.ofFile(file), "empty", Columns.NEEDED);
            }
            return Optional.empty();
        }
        List<Cell> head = read.rows().getFirst();
        Columns columns = Columns.of(head);
        if (!columns.listMissing().isEmpty()) {
            missing(
                    head.getFirst().place(),
                    "without " + String.join(", ", columns.listMissing()),
                    columns.listMissing());
            return Optional.empty();
        }
        List<ReviewNote> notes = new ArrayList<>();
        for (int i = 1; i < read.rows().size(); i++) {
            note(i, read.rows().get(i), head, columns).ifPresent(notes::add);
        }
        return Optional.of(new ReviewNotes(columns.others(head), notes));
    }

    private void missing(Place place, String given, List<String> columns) {
        add(
                place,
                "the first line",
                "P-NOTE-03",
                given,
                "the names of the columns, with " + String.join(", ", Columns.NEEDED) + ", parted by commas",
                "Add " + String.join(", ", columns) + "; a cell may be empty.");
    }

    private Optional<ReviewNote> note(int number, List<Cell> row, List<Cell> head, Columns columns) {
        String field = "notes." + number;
        if (row.size() != head.size()) {
            add(
                    row.getFirst().place(),
                    field,
                    "P-NOTE-04",
                    row.size() == 1 ? "a row of one cell" : "a row of " + row.size() + " cells",
                    "as many as there are columns, " + head.size(),
                    "Put a text that holds a comma in quotes, and leave no comma out where a cell is empty.");
            return Optional.empty();
        }
        Optional<Long> frame = frame(field, columns.cell(row, Columns.TIMECODE));
        Optional<Standing> standing = standing(field, columns.cell(row, Columns.DONE));
        if (frame.isEmpty() || standing.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new ReviewNote(
                columns.text(row, Columns.VERSION),
                frame.get(),
                columns.text(row, Columns.AUTHOR),
                columns.text(row, Columns.NOTE),
                standing.get(),
                new Landing(
                        columns.text(row, Columns.SHOT),
                        columns.text(row, Columns.PASS),
                        columns.text(row, Columns.SHOT_FRAME),
                        columns.text(row, Columns.SOURCE_TIMECODE)),
                columns.others(row)));
    }

    private Optional<Long> frame(String field, Cell cell) {
        String label = cell.text().strip();
        String span = clock.label(0) + " to " + clock.label(clock.frames() - 1);
        return switch (clock.timecode().read(label)) {
            case Timecode.Meaning.Nothing(String why) -> {
                add(
                        cell.place(),
                        field + "." + Columns.TIMECODE,
                        "P-NOTE-05",
                        label.isEmpty() ? "empty" : label + ", which " + why,
                        "the film's timecode at " + clock.timecode().rate().toText() + ", " + span,
                        "Try " + clock.label(0) + ", the first frame.");
                yield Optional.empty();
            }
            case Timecode.Meaning.Frame(long frame)
            when clock.isBefore(clock.filmFrame(frame)) -> {
                add(
                        cell.place(),
                        field + "." + Columns.TIMECODE,
                        "P-NOTE-06",
                        label + ", before the film",
                        "from the film's first frame on, " + span,
                        "Count from " + clock.label(0) + ", where the film starts, or see which version it is of.");
                yield Optional.empty();
            }
            case Timecode.Meaning.Frame(long frame) -> Optional.of(clock.filmFrame(frame));
        };
    }

    private Optional<Standing> standing(String field, Cell cell) {
        String word = cell.text().strip().toLowerCase(Locale.ROOT);
        if (word.isEmpty()) {
            return Optional.of(Standing.OPEN);
        }
        for (Standing standing : Standing.values()) {
            if (standing.word().equals(word)) {
                return Optional.of(standing);
            }
        }
        add(
                cell.place(),
                field + "." + Columns.DONE,
                "P-NOTE-07",
                cell.text().strip(),
                "yes or no, or empty for no",
                "Try yes, where nothing is left to do.");
        return Optional.empty();
    }

    private void add(Place place, String field, String code, String given, String allowed, String attempt) {
        if (problems.size() < MOST_PROBLEMS) {
            problems.add(new Problem(place, field, code, given, allowed, attempt));
        }
    }
}
