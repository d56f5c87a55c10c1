package plumeline.cut.review;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongFunction;
import java.util.stream.Stream;
import plumeline.cut.review.ReviewNote.Landing;
import plumeline.plan.Plan;
import plumeline.text.CsvRow;
import plumeline.text.Problem;
import plumeline.timeline.Clip;
import plumeline.timeline.Timeline;

/// A list of review notes.
///
/// As text: UTF-8, a row a note, CRLF between them; columns `version`, `timecode`, `author`, `note`, `done` (`yes` or
/// `no`), then where a note lands, `shot`, `pass`, `shot_frame` (from 0), `source_timecode`, then whatever other
/// columns there were. Read in any order of columns; reading what was written gives the same notes, and writing them
/// the same bytes.
///
/// **Source:** RFC 4180, section 2.
///
/// @param otherColumns names of the columns that we don't know, in their order
/// @param notes in the order of the rows
public record ReviewNotes(List<String> otherColumns, List<ReviewNote> notes) {
    /// What reading a list gave.
    ///
    /// @param notes the list; empty where there is a problem
    /// @param problems all that is wrong with it, in the order of the text
    public record Reading(Optional<ReviewNotes> notes, List<Problem> problems) {
        /// Copies the list.
        public Reading {
            problems = List.copyOf(problems);
        }
    }

    /// Copies the lists.
    public ReviewNotes {
        otherColumns = List.copyOf(otherColumns);
        notes = List.copyOf(notes);
    }

    /// Reads a list.
    ///
    /// @param bytes its text
    /// @param file the file's name, as messages say it
    /// @param clock the film's timecode
    /// @return the list, or its problems
    public static Reading read(byte[] bytes, String file, FilmClock clock) {
        return new NotesReader(file, clock).read(bytes);
    }

    /// Gives where each frame of a film lands. The label of a take that the plan doesn't name counts from GO at
    /// 01:00:00:00.
    ///
    /// @param plan the plan
    /// @param timeline its film's timeline, or a delivery's
    /// @return from a frame of the film to what is shown there; all empty outside the film
    public static LongFunction<Landing> shown(Plan plan, Timeline timeline) {
        return frame -> timeline.findSpan(frame)
                .map(span -> new Landing(
                        span.shot(),
                        span.pass(),
                        Long.toString(span.shotFrameAt(frame)),
                        plan.film()
                                .findTimecode()
                                .map(timecode -> timecode.label(
                                        Clip.of(plan, span.shot(), span.pass()).goFrame() + span.sourceFrame(frame)))
                                .orElse("")))
                .orElse(new Landing("", "", "", ""));
    }

    /// Fills in where notes land that don't say it, and the label where their place is the same. Another place that is
    /// filled in stays: it was so in the note's version.
    ///
    /// @param shown where each frame of the film lands
    /// @return the list with every landing filled in
    public ReviewNotes landed(LongFunction<Landing> shown) {
        return new ReviewNotes(
                otherColumns,
                notes.stream()
                        .map(note -> {
                            Landing now = shown.apply(note.frame());
                            boolean isSeen = !now.isEmpty();
                            return isSeen
                                            && (note.landing().isEmpty()
                                                    || note.landing().isPlaceOf(now))
                                    ? note.landedAt(now)
                                    : note;
                        })
                        .toList());
    }

    /// Puts another list's notes with these. What stands in both is one note: the same version, timecode, author and
    /// note. Such a note is done as the later list says it; its other cells are the later's where that has any.
    ///
    /// @param later the other list
    /// @return the notes of this list in their order, then those that only the later has; columns likewise
    public ReviewNotes merged(ReviewNotes later) {
        return Merging.of(this, later);
    }

    /// Tells which notes land elsewhere by now than their rows say, or nowhere.
    ///
    /// @param clock the film's timecode
    /// @param shown where each frame of the film lands
    /// @return a sentence a note
    public List<String> listMoved(FilmClock clock, LongFunction<Landing> shown) {
        List<String> moved = new ArrayList<>();
        for (ReviewNote note : notes) {
            Landing now = shown.apply(note.frame());
            if (note.frame() >= clock.frames()) {
                moved.add("At " + clock.label(note.frame()) + " the note of " + said(note)
                        + (note.landing().isEmpty() ? "" : " is on " + place(note.landing()) + "; it")
                        + " lands nowhere: the film ends before it now, with " + clock.label(clock.frames() - 1) + ".");
            } else if (!note.landing().isEmpty() && !note.landing().isPlaceOf(now)) {
                moved.add("At " + clock.label(note.frame()) + " the note of " + said(note) + " is on "
                        + place(note.landing()) + "; the film shows " + place(now) + " there by now.");
            }
        }
        return moved;
    }

    private static String said(ReviewNote note) {
        String author = note.author().isBlank() ? "somebody" : note.author();
        return note.version().isBlank() ? author : author + " on " + note.version();
    }

    private static String place(Landing landing) {
        return landing.shot() + (landing.pass().isEmpty() ? "" : ", pass " + landing.pass()) + ", frame "
                + landing.shotFrame()
                + (landing.sourceTimecode().isEmpty() ? "" : " (source " + landing.sourceTimecode() + ")");
    }

    /// Writes the list.
    ///
    /// @param clock the film's timecode
    /// @return its text's bytes
    public byte[] csv(FilmClock clock) {
        StringBuilder out = new StringBuilder();
        CsvRow.write(Columns.head(otherColumns), out);
        for (ReviewNote note : notes) {
            Landing landing = note.landing();
            List<String> own = List.of(
                    note.version(),
                    clock.label(note.frame()),
                    note.author(),
                    note.text(),
                    note.standing().word(),
                    landing.shot(),
                    landing.pass(),
                    landing.shotFrame(),
                    landing.sourceTimecode());
            CsvRow.write(Stream.concat(own.stream(), note.others().stream()).toList(), out);
        }
        return out.toString().getBytes(UTF_8);
    }
}
