package plumeline.post;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.LongFunction;
import plumeline.cut.list.EditList;
import plumeline.cut.list.OpenTimeline;
import plumeline.cut.mask.MaskFiles;
import plumeline.cut.mask.MaskNumbers;
import plumeline.cut.mask.Masked;
import plumeline.cut.mask.PlateNeed;
import plumeline.cut.review.FilmClock;
import plumeline.cut.review.ReviewNote;
import plumeline.cut.review.ReviewNotes;
import plumeline.cut.scene.MovesGlb;
import plumeline.keys.KeysCsv;
import plumeline.plan.Plan;
import plumeline.sheet.PostPapers;
import plumeline.solve.FilmAnswer;
import plumeline.timeline.Timeline;

/// What post opens of one solved film.
public final class Post {
    /// The page for the editor, for screens.
    public static final String PAGE = "post.html";

    /// The same for paper.
    public static final String PRINT = "post.pdf";

    /// The review notes.
    public static final String NOTES = "notes.csv";

    private static final String MOVES = "moves.csv";
    private static final String MASKS = "masks/";
    private static final String SCENES = "moves/";

    private final FilmAnswer film;
    private final Plan plan;
    private final List<Timeline> timelines;
    private final List<Sounds> sounds;
    private final List<PostFile> files = new ArrayList<>();
    private final List<PostPapers.Opened> opened = new ArrayList<>();
    private final LinkedHashSet<String> missing = new LinkedHashSet<>();
    private final LinkedHashSet<String> lost = new LinkedHashSet<>();
    private final List<PostPapers.Plate> plates = new ArrayList<>();
    private final List<MaskFiles> masks = new ArrayList<>();
    private Optional<PostPapers> drawn = Optional.empty();

    private Post(FilmAnswer film, Optional<ReviewNotes> notes, String toPlan) {
        this.film = film;
        plan = film.plan();
        timelines = Timeline.listAll(plan);
        missing.addAll(OpenTimeline.listMissing(plan));
        timelines.forEach(timeline -> addLists(timeline, toPlan));
        sounds = timelines.stream().map(timeline -> new Sounds(film, timeline)).toList();
        sounds.forEach(this::addSounds);
        addMasks();
        addMoves();
        addNotes(notes);
        missing.addAll(Lacking.list(film));
    }

    /// Prepares what post opens.
    ///
    /// @param film the findings on the film
    /// @param notes what reviewers said, where anything was read
    /// @param toPlan the way from the folder to the plan's: empty, or such as `../`
    /// @return the files, to be written
    public static Post of(FilmAnswer film, Optional<ReviewNotes> notes, String toPlan) {
        return new Post(film, notes, toPlan);
    }

    /// Gives what is missing.
    ///
    /// @return sentences
    public List<String> listMissing() {
        return List.copyOf(missing);
    }

    /// Counts the files.
    ///
    /// @return how many there are
    public long count() {
        return files.size() + masks.stream().mapToLong(MaskFiles::count).sum() + 2;
    }

    /// Hands out the files one by one, the papers last.
    ///
    /// @param taker takes each
    public void forEach(Consumer<PostFile> taker) {
        files.forEach(taker);
        for (MaskFiles one : masks) {
            for (MaskFiles.MaskFile file : one.files()) {
                taker.accept(bytes(MASKS + file.name(), () -> file.bytes().get()));
            }
        }
        taker.accept(bytes(PAGE, () -> papers().html().getBytes(UTF_8)));
        taker.accept(bytes(PRINT, () -> papers().pdf()));
    }

    /// The papers, drawn once.
    private synchronized PostPapers papers() {
        if (drawn.isEmpty()) {
            var content = new PostPapers.Content(
                    opened,
                    List.copyOf(missing),
                    List.copyOf(lost),
                    sounds.stream().map(Sounds::laid).toList(),
                    plates);
            drawn = Optional.of(PostPapers.of(film, content));
        }
        return drawn.get();
    }

    /// Bytes made when they are wanted.
    private interface Making {
        byte[] make();
    }

    private static PostFile bytes(String name, Making making) {
        return new PostFile(name, out -> out.write(making.make()));
    }

    private static PostFile text(String name, String text) {
        return new PostFile(name, out -> out.write(text.getBytes(UTF_8)));
    }

    private static String of(Timeline timeline) {
        return timeline.delivery().isEmpty() ? "the film" : timeline.delivery() + "'s own cut";
    }

    private void addLists(Timeline timeline, String toPlan) {
        String base = timeline.name();
        OpenTimeline open =
                OpenTimeline.of(plan, timeline, new OpenTimeline.Beside(toPlan, Sounds.guideName(timeline)));
        files.add(new PostFile(base + ".otio", out -> out.write(open.json().getBytes(UTF_8))));
        opened.add(new PostPapers.Opened(
                base + ".otio", "open timeline of " + of(timeline) + ": picture, overlays, titles, sounds, markers."));
        open.findLoss().ifPresent(loss -> lost.add(base + ".otio: " + loss));
        switch (EditList.of(plan, timeline)) {
            case EditList.Result.Listed(String text, List<String> notes) -> {
                files.add(text(base + ".edl", text));
                opened.add(new PostPapers.Opened(
                        base + ".edl", "edit decision list of the same, where an open timeline can't be read."));
                List<String> known = open.notes();
                notes.stream().filter(note -> !known.contains(note)).forEach(note -> lost.add(base + ".edl: " + note));
            }
            case EditList.Result.None(String why) -> lost.add(why);
        }
    }

    private void addSounds(Sounds heard) {
        missing.addAll(heard.notes());
        for (Sounds.Made made : heard.list()) {
            files.add(bytes(made.name(), made.bytes()::get));
            opened.add(new PostPapers.Opened(made.name(), made.words()));
        }
    }

    private void addMasks() {
        for (Masked masked : Masked.listAll(film)) {
            MaskNumbers numbers = MaskNumbers.of(plan, masked);
            MaskFiles made = MaskFiles.of(masked, numbers);
            masks.add(made);
            plates.add(new PostPapers.Plate(PlateNeed.of(plan, masked, numbers), masked.notes()));
            opened.add(new PostPapers.Opened(
                    MASKS + made.folder() + "/",
                    "what holds the thing, painted white: source/ by the clip's timecode as a count of frames, screen/"
                            + " by the film's frame, each as PNG and SVG; lines.csv has ends and margins in px."));
        }
    }

    private void addMoves() {
        KeysCsv keys = KeysCsv.of(film);
        files.add(new PostFile(MOVES, out -> writeKeys(keys, out)));
        opened.add(new PostPapers.Opened(MOVES, "where each axis is at every frame and at every step of its machine."));
        lost.addAll(keys.notes());
        List<MovesGlb> scenes = MovesGlb.listAll(film);
        Map<String, List<String>> told = new LinkedHashMap<>();
        for (MovesGlb scene : scenes) {
            files.add(bytes(SCENES + scene.name() + ".glb", scene::bytes));
            scene.notes()
                    .forEach(note ->
                            told.computeIfAbsent(note, _ -> new ArrayList<>()).add(scene.name()));
        }
        told.forEach((note, names) -> lost.add(
                "Scenes: " + note + (names.size() == scenes.size() ? "" : " (" + String.join(", ", names) + ")")));
        if (!scenes.isEmpty()) {
            opened.add(new PostPapers.Opened(
                    SCENES,
                    "camera, things and lamps of each shot as an animated scene (glTF 2.0, GLB), in screen time."));
        }
    }

    private static void writeKeys(KeysCsv keys, OutputStream to) throws IOException {
        BufferedWriter out = new BufferedWriter(new OutputStreamWriter(to, UTF_8));
        keys.writeTo(out);
        out.flush();
    }

    private void addNotes(Optional<ReviewNotes> notes) {
        if (timelines.isEmpty() || FilmClock.find(plan, timelines.getFirst()).isEmpty()) {
            if (!timelines.isEmpty()) {
                lost.add("There is no " + NOTES + ": review notes stand at a timecode, and "
                        + plan.film().rate().valueText() + " has none.");
            }
            return;
        }
        FilmClock clock = FilmClock.find(plan, timelines.getFirst()).get();
        LongFunction<ReviewNote.Landing> shown = ReviewNotes.shown(plan, timelines.getFirst());
        ReviewNotes all = notes.orElseGet(() -> new ReviewNotes(List.of(), List.of()));
        files.add(bytes(NOTES, () -> all.landed(shown).csv(clock)));
        long open = all.notes().stream()
                .filter(note -> note.standing() == ReviewNote.Standing.OPEN)
                .count();
        opened.add(new PostPapers.Opened(
                NOTES,
                all.notes().isEmpty()
                        ? "review notes of the film: none yet; fill in version, timecode, author, note and done: the"
                                + " next post reads them, and --notes FILE adds another reviewer's."
                        : "review notes of the film: " + all.notes().size() + ", of which " + open
                                + " aren't done; each with the shot and source it lands on."));
        missing.addAll(all.listMoved(clock, shown));
    }
}
