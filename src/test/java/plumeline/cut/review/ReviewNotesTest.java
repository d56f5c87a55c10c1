package plumeline.cut.review;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.LongFunction;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import plumeline.cut.review.ReviewNote.Landing;
import plumeline.cut.review.ReviewNote.Standing;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.quantity.FrameRate;
import plumeline.text.Problem;
import plumeline.time.Timecode;
import plumeline.timeline.Timeline;

/// Lists of notes as people and their programs write them.
final class ReviewNotesTest {
    private static final Timecode CODE = new Timecode(new FrameRate(24, 1), Timecode.Counting.NON_DROP);
    private static final FilmClock CLOCK = new FilmClock(CODE, 86_400, 336);
    private static final LongFunction<Landing> SHOWN =
            frame -> new Landing("reveal", "", Long.toString(frame), CODE.label(86_400 + 5 * frame));

    private static ReviewNotes.Reading read(String text) {
        return ReviewNotes.read(text.getBytes(UTF_8), "notes.csv", CLOCK);
    }

    private static ReviewNotes good(String text) {
        ReviewNotes.Reading reading = read(text);
        assertThat(reading.problems()).isEmpty();
        return reading.notes().orElseThrow();
    }

    private static String only(String text) {
        ReviewNotes.Reading reading = read(text);
        assertThat(reading.notes()).isEmpty();
        return reading.problems().stream().map(Problem::toText).collect(Collectors.joining("\n"));
    }

    @Test
    void notes_areRead_whateverTheOrderOfColumns_andWithoutLoss() {
        ReviewNotes notes = good("\uFEFFAuthor,done, Timecode ,priority,note,version\r\n"
                + "Ida,yes,01:00:00:00,2,\"Too dark, \"\"I\"\" say\r\nand slow\",v3\r\n"
                + "\n"
                + "Jo,,01:00:13:23,, as it is ,v2\n");
        assertThat(notes.otherColumns()).containsExactly("priority");
        assertThat(notes.notes())
                .containsExactly(
                        new ReviewNote(
                                "v3",
                                0,
                                "Ida",
                                "Too dark, \"I\" say\r\nand slow",
                                Standing.DONE,
                                new Landing("", "", "", ""),
                                List.of("2")),
                        new ReviewNote(
                                "v2",
                                335,
                                "Jo",
                                " as it is ",
                                Standing.OPEN,
                                new Landing("", "", "", ""),
                                List.of("")));
    }

    @Test
    void notes_areWritten_withWhereTheyLand() {
        ReviewNotes notes = good("version,timecode,author,note,done,priority\n"
                + "v1,01:00:01:00,Ida,\"dark, slow\",no,high\nv1,01:00:02:00,,,YES,\n");
        assertThat(new String(notes.landed(SHOWN).csv(CLOCK), UTF_8))
                .isEqualTo("version,timecode,author,note,done,shot,pass,shot_frame,source_timecode,priority\r\n"
                        + "v1,01:00:01:00,Ida,\"dark, slow\",no,reveal,,24,01:00:05:00,high\r\n"
                        + "v1,01:00:02:00,,,yes,reveal,,48,01:00:10:00,\r\n");
    }

    @Test
    void whereANoteLanded_stays_andIsSaidWhereItMoved() {
        ReviewNotes notes = good("version,timecode,author,note,done,shot,pass,shot_frame,source_timecode\n"
                + "v1,01:00:01:00,Ida,dark,no,spin,rose,3,01:00:00:03\n"
                + "v1,01:00:02:00,Ida,dark,no,reveal,,48,01:00:10:00\n");
        assertThat(notes.landed(SHOWN)).isEqualTo(notes);
        assertThat(notes.listMoved(CLOCK, SHOWN))
                .containsExactly("At 01:00:01:00 the note of Ida on v1 is on spin, pass rose, frame 3 (source"
                        + " 01:00:00:03); the film shows reveal, frame 24 (source 01:00:05:00) there by now.");
    }

    @Test
    void columnsThatComeTwice_areCarriedAlong() {
        ReviewNotes notes = good("version,timecode,author,note,done,note,x,x\nv,01:00:00:00,a,first,no,second,1,2\n");
        assertThat(notes.notes().getFirst().text()).isEqualTo("first");
        assertThat(notes.otherColumns()).containsExactly("note", "x", "x");
        String text = new String(notes.csv(CLOCK), UTF_8);
        assertThat(text).endsWith("v,01:00:00:00,a,first,no,,,,,second,1,2\r\n");
        assertThat(good(text)).isEqualTo(notes);
    }

    @Test
    void problems_areAllSaid_withTheirPlaces() {
        assertThat(only("version,timecode,author,note,done\n"
                        + "v1,01:00:00:24,Ida,\"two\nlines\",no\n"
                        + "v1,01:00:14:00,Ida,late,maybe\n"
                        + "v1,soon,Ida,x\n"
                        + "v1,,Ida,x,no\n"
                        + "v1,00:59:59:23,Ida,x,no\n"))
                .isEqualTo("""
                        notes.csv:2:4 notes.1.timecode is 01:00:00:24, which has frame 24, and a second's last is 23; \
                        must be the film's timecode at 24 fps, 01:00:00:00 to 01:00:13:23
                          Try 01:00:00:00, the first frame.   (P-NOTE-05, docs/problems.md)
                        notes.csv:4:25 notes.2.done is maybe; must be yes or no, or empty for no
                          Try yes, where nothing is left to do.   (P-NOTE-07, docs/problems.md)
                        notes.csv:5:1 notes.3 is a row of 4 cells; must be as many as there are columns, 5
                          Put a text that holds a comma in quotes, and leave no comma out where a cell is empty.   \
                        (P-NOTE-04, docs/problems.md)
                        notes.csv:6:4 notes.4.timecode is empty; must be the film's timecode at 24 fps, 01:00:00:00 \
                        to 01:00:13:23
                          Try 01:00:00:00, the first frame.   (P-NOTE-05, docs/problems.md)
                        notes.csv:7:4 notes.5.timecode is 00:59:59:23, before the film; must be from the film's first \
                        frame on, 01:00:00:00 to 01:00:13:23
                          Count from 01:00:00:00, where the film starts, or see which version it is of.   \
                        (P-NOTE-06, docs/problems.md)""");
    }

    @Test
    void aFileThatIsNoList_isSaidSo() {
        assertThat(only("version,note,time\nv1,b,01:00:00:00\n"))
                .startsWith("notes.csv:1:1 the first line is without timecode, author, done; must be the names of the"
                        + " columns, with version, timecode, author, note, done, parted by commas\n");
        assertThat(only("")).startsWith("notes.csv:1:1 the first line is empty; must be");
        assertThat(only("version,timecode,author,note,done\nv1,01:00:00:00,a,\"b,no\n"))
                .contains("notes.csv:2:18 the cell is opened with a quote that nothing closes; must be");
        assertThat(only("version,timecode,author,note,done\nv1,01:00:00:00,a,\"b\"c,no\n"))
                .contains("notes.csv:2:18 the cell is followed by more behind its closing quote; must be");
        assertThat(ReviewNotes.read(new byte[] {(byte) 0xff, 'a'}, "notes.csv", CLOCK)
                        .problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.toText()).startsWith("notes.csv:1:1 the text is no UTF-8;"));
        assertThat(ReviewNotes.read(new byte[(4 << 20) + 1], "notes.csv", CLOCK).problems())
                .hasSize(1);
    }

    @Test
    void cellsThatAreNotPartedByCommas_areSaidSo() {
        String rest = "; must be parted by commas\n  Save it as CSV parted by commas; they are wanted in every line.";
        assertThat(only("version;timecode;author;note;done\nv1;01:00:00:00;a;b, c;no\n"))
                .startsWith("notes.csv:1:1 the first line is parted by semicolons" + rest);
        assertThat(only("\"Version\"\t\"Timecode\"\t\"Author\"\nv1\t01:00:00:00\ta\n"))
                .startsWith("notes.csv:1:1 the first line is parted by tabs" + rest);
        assertThat(good("version,timecode,author,note,done,a;note;done\n").otherColumns())
                .containsExactly("a;note;done");
    }

    /// A film that was 400 frames long and is 336 now.
    @Test
    void aNotePastTheFilmsEnd_isKept_andSaid() {
        String text = "version,timecode,author,note,done,shot,pass,shot_frame,source_timecode\r\n"
                + "v1,01:00:14:00,Ida,late,no,spin,,12,01:00:00:12\r\n"
                + "v1,01:00:16:15,,later,yes,,,,\r\n"
                + "v1,01:00:13:23,Jo,last,no,,,,\r\n";
        ReviewNotes notes = good(text);
        LongFunction<Landing> shown = frame -> frame < 336 ? SHOWN.apply(frame) : new Landing("", "", "", "");
        assertThat(notes.notes()).extracting(ReviewNote::frame).containsExactly(336L, 399L, 335L);
        assertThat(new String(notes.landed(shown).csv(CLOCK), UTF_8))
                .isEqualTo(text.replace("last,no,,,,", "last,no,reveal,,335," + CODE.label(86_400 + 5 * 335)));
        assertThat(notes.listMoved(CLOCK, shown))
                .containsExactly(
                        "At 01:00:14:00 the note of Ida on v1 is on spin, frame 12 (source 01:00:00:12); it lands"
                                + " nowhere: the film ends before it now, with 01:00:13:23.",
                        "At 01:00:16:15 the note of somebody on v1 lands nowhere: the film ends before it now, with"
                                + " 01:00:13:23.");
    }

    @Test
    void listsThatAreMerged_keepAllNotes_withoutDoubles_andTheLaterDone() {
        ReviewNotes kept = good("version,timecode,author,note,done,shot,shot_frame,x,x\n"
                + "v1,01:00:01:00,Ida,dark,no,spin,3,old,1\n"
                + "v1,01:00:02:00,Ida,slow,yes,,,,2\n"
                + "v1,01:00:03:00,Jo,\"two\r\nlines\",no,,,,\n");
        ReviewNotes later = good("version,timecode,author,note,done,y,x\n"
                + "v2,01:00:01:00,Ida,dark,no,,\n"
                + "v1,01:00:03:00,Jo,\"two\nlines\",yes,b,\n"
                + "v1,01:00:02:00,Ida,slow ,no,,new\n"
                + "v1,01:00:01:00,Ida,dark,yes,a,\n");
        ReviewNotes merged = kept.merged(later);
        assertThat(new String(merged.csv(CLOCK), UTF_8))
                .isEqualTo("version,timecode,author,note,done,shot,pass,shot_frame,source_timecode,x,x,y\r\n"
                        + "v1,01:00:01:00,Ida,dark,yes,spin,,3,,old,1,a\r\n"
                        + "v1,01:00:02:00,Ida,slow,no,,,,,new,2,\r\n"
                        + "v1,01:00:03:00,Jo,\"two\r\nlines\",yes,,,,,,,b\r\n"
                        + "v2,01:00:01:00,Ida,dark,no,,,,,,,\r\n");
        assertThat(merged.merged(later)).isEqualTo(merged);
        assertThat(kept.merged(kept)).isEqualTo(kept);
    }

    @Test
    void aListWithoutNotes_isAList() {
        assertThat(good("version,timecode,author,note,done").notes()).isEmpty();
        assertThat(new String(new ReviewNotes(List.of(), List.of()).csv(CLOCK), UTF_8))
                .isEqualTo("version,timecode,author,note,done,shot,pass,shot_frame,source_timecode\r\n");
    }

    @Test
    void dropFrameLabels_areReadWithEitherSign_andAcrossMidnight() {
        Timecode drop = new Timecode(new FrameRate(30_000, 1001), Timecode.Counting.DROP);
        FilmClock late = new FilmClock(drop, drop.framesPerDay() - 10, 2000);
        String text = "version,timecode,author,note,done\n,23:59:59:29,,,\n,00:00:00;00,,,\n,00:01:00;02,,,\n";
        ReviewNotes notes =
                ReviewNotes.read(text.getBytes(UTF_8), "n", late).notes().orElseThrow();
        assertThat(notes.notes()).extracting(ReviewNote::frame).containsExactly(9L, 10L, 1810L);
        assertThat(new String(notes.csv(late), UTF_8)).contains(",23:59:59;29,", ",00:00:00;00,", ",00:01:00;02,");
        assertThat(ReviewNotes.read(text.replace("00:01:00;02", "00:01:00;01").getBytes(UTF_8), "n", late)
                        .problems())
                .hasSize(1);
    }

    /// Filmed at 48 and played in real time, the shot's frame n is the recorded frame 2n, 12 after the file's first.
    @Test
    void notesOfAPlan_landOnShotPassAndTake() {
        Plan plan = Plans.read("""
                        plumeline: 1
                        film: {rate: 24 fps, starts: "00:59:50:00"}
                        kit:
                          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
                          lenses: {fifty: {focal_length: 50 mm}}
                        shots:
                          one:
                            camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], rate: 48 fps}
                            clip: {file: a.mov, starts: "10:00:00:00", go: 12}
                            passes: {a: {}, b: {clip.file: b.mov}}
                        cut: [{shot: one, frames: 30, alternate: [a, b], each: 10, from: 5}]
                        """.getBytes(UTF_8), "p.yaml").plan().orElseThrow();
        Timeline timeline = Timeline.of(plan);
        FilmClock clock = FilmClock.find(plan, timeline).orElseThrow();
        String text = "version,timecode,author,note,done\n1,00:59:50:12,,,\n1,00:59:50:03,,,\n1,00:59:51:05,,,\n";
        ReviewNotes notes = ReviewNotes.read(text.getBytes(UTF_8), "n.csv", clock)
                .notes()
                .orElseThrow()
                .landed(ReviewNotes.shown(plan, timeline));
        assertThat(notes.notes())
                .extracting(ReviewNote::landing)
                .containsExactly(
                        new Landing("one", "b", "17", "10:00:01:22"),
                        // The pass a names no file of its own: its take is missing, and the clip's timecode counts for
                        // it too.
                        new Landing("one", "a", "8", "10:00:01:04"),
                        new Landing("one", "a", "34", "10:00:03:08"));
        assertThat(notes.listMoved(clock, ReviewNotes.shown(plan, timeline))).isEmpty();
    }

    /// Whatever stands in the cells.
    @Test
    void notesByChance_comeBackAsTheyWere() {
        long seed = 20261202;
        Random chance = new Random(seed);
        List<String> bits = List.of("a", ",", "\"", "\n", "\r\n", "\r", " ", "ß", "\uD83C\uDFA5", "\t", "=", ";");
        for (int round = 0; round < 300; round++) {
            int others = chance.nextInt(3);
            List<String> columns = new ArrayList<>();
            for (int i = 0; i < others; i++) {
                columns.add("x" + text(chance, bits));
            }
            List<ReviewNote> rows = new ArrayList<>();
            for (int i = 0; i < chance.nextInt(5); i++) {
                List<String> cells =
                        columns.stream().map(column -> text(chance, bits)).toList();
                rows.add(new ReviewNote(
                        text(chance, bits),
                        chance.nextInt(336),
                        text(chance, bits),
                        text(chance, bits),
                        chance.nextBoolean() ? Standing.DONE : Standing.OPEN,
                        new Landing(text(chance, bits), "", "", ""),
                        cells));
            }
            ReviewNotes notes = new ReviewNotes(columns, rows);
            byte[] written = notes.csv(CLOCK);
            ReviewNotes.Reading back = ReviewNotes.read(written, "notes.csv", CLOCK);
            assertThat(back.notes()).as("seed %s, round %s", seed, round).contains(notes);
            assertThat(back.notes().orElseThrow().csv(CLOCK)).isEqualTo(written);
        }
    }

    private static String text(Random chance, List<String> bits) {
        return chance.ints(chance.nextInt(6), 0, bits.size())
                .mapToObj(bits::get)
                .collect(Collectors.joining());
    }
}
