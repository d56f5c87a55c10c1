package plumeline.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import plumeline.cut.review.FilmClock;
import plumeline.cut.review.ReviewNotes;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.plan.Shot;
import plumeline.post.Post;
import plumeline.post.PostFile;
import plumeline.solve.FilmAnswer;
import plumeline.timeline.Timeline;

/// `post PLAN`: solves the plan and writes everything that post opens.
final class PostCommand implements Command {
    private static final int MOST_TOLD = 8;

    @Override
    public Usage usage() {
        return new Usage(
                "post",
                "Writes what post opens: lists, timelines, cue sheet, guide track, masks, moves and " + Post.PRINT
                        + ".",
                "PLAN",
                1,
                1,
                List.of(
                        Usage.valued("--to", "DIR", "Writes into this folder; else into post, beside the plan."),
                        Usage.valued(
                                "--notes",
                                "FILE",
                                "Reads review notes; else " + Post.NOTES + " of the folder, where there is one.")));
    }

    @Override
    public Outcome run(Arguments given, Console console) throws Refusal, IOException {
        String name = given.plain().getFirst();
        Plans.Reading reading = PlanFile.readMeasured(PlainFile.read(name, console), console);
        if (reading.plan().isEmpty()) {
            return PlanFile.tellProblems(reading, console);
        }
        Plan plan = reading.plan().get();
        Path folder = folder(given, name);
        Optional<PlainFile.Content> written = readNotes(given, folder, console);
        Optional<ReviewNotes> notes = Optional.empty();
        if (written.isPresent()) {
            ReviewNotes.Reading read = ReviewNotes.read(
                    written.get().bytes().toArray(), written.get().name(), clock(plan));
            if (read.notes().isEmpty()) {
                read.problems().forEach(problem -> console.say(problem.toText()));
                console.say("nothing was written");
                return Outcome.REFUSED;
            }
            notes = read.notes();
        }
        PlainFile.makeFolder(folder);
        FilmAnswer film =
                PlanFile.solve(plan, plan.shots().stream().map(Shot::name).toList(), name, console);
        Post post = Post.of(film, notes, toPlan(folder, name));
        new Writer(folder, console).write(post);
        tellMissing(post.listMissing(), console);
        console.answer(folder.resolve(Post.PAGE) + "\n" + folder.resolve(Post.PRINT) + "\n");
        return Outcome.ANSWERED;
    }

    private static void tellMissing(List<String> missing, Console console) {
        missing.stream().limit(MOST_TOLD).forEach(one -> console.say("plumeline: " + one));
        if (missing.size() > MOST_TOLD) {
            console.say(
                    "plumeline: and " + (missing.size() - MOST_TOLD) + " more things are missing: see " + Post.PAGE);
        }
    }

    private static FilmClock clock(Plan plan) throws Refusal {
        Optional<FilmClock> clock = FilmClock.find(plan, Timeline.of(plan));
        if (clock.isEmpty()) {
            throw new Refusal(
                    "review notes can't be read: the plan has no cut, or its rate has no timecode",
                    "Write the film's cut first.");
        }
        return clock.get();
    }

    private static Path folder(Arguments given, String plan) throws Refusal {
        if (given.findValue("--to").isPresent()) {
            return PlainFile.toPath(given.findValue("--to").get());
        }
        Path beside = plan.equals("-") ? null : PlainFile.toPath(plan).getParent();
        return beside == null ? Path.of("post") : beside.resolve("post");
    }

    /// The way from the folder to the plan's, where one leads there.
    private static String toPlan(Path folder, String plan) throws Refusal {
        Path there = plan.equals("-")
                ? Path.of("").toAbsolutePath()
                : PlainFile.toPath(plan).toAbsolutePath().resolveSibling("");
        Path way = folder.toAbsolutePath().normalize().relativize(there.normalize());
        String text = way.toString().replace('\\', '/');
        return text.isEmpty() ? "" : text + "/";
    }

    private static Optional<PlainFile.Content> readNotes(Arguments given, Path folder, Console console)
            throws Refusal, IOException {
        Optional<String> named = given.findValue("--notes");
        Path kept = folder.resolve(Post.NOTES);
        return named.isEmpty() && !Files.isRegularFile(kept)
                ? Optional.empty()
                : Optional.of(PlainFile.read(named.orElse(kept.toString()), console));
    }

    /// Writes all files and says how far it is; takes away masks of an earlier cut.
    private static final class Writer {
        private static final Pattern MASK = Pattern.compile("[0-9]+\\.(png|svg)");

        private final Path folder;
        private final Console console;
        private final Set<Path> written = new HashSet<>();

        Writer(Path folder, Console console) {
            this.folder = folder;
            this.console = console;
        }

        void write(Post post) throws IOException {
            TimeLeft left = new TimeLeft("writing", console);
            double all = post.count();
            try {
                post.forEach(file -> {
                    left.hear(written.size() / all);
                    try {
                        write(file);
                    } catch (IOException failed) {
                        throw new UncheckedIOException(failed);
                    }
                });
            } catch (UncheckedIOException failed) {
                throw failed.getCause();
            }
            int gone = takeAway();
            if (gone > 0) {
                console.say("plumeline: took away " + gone + " masks of an earlier cut");
            }
        }

        private void write(PostFile file) throws IOException {
            Path path = folder.resolve(file.name());
            PlainFile.write(path, (PlainFile.Writing) file.content()::writeTo);
            written.add(path);
        }

        private int takeAway() throws IOException {
            Set<Path> folders = new HashSet<>();
            for (Path path : written) {
                if (MASK.matcher(path.getFileName().toString()).matches()) {
                    folders.add(path.getParent());
                }
            }
            int gone = 0;
            for (Path one : folders) {
                try (Stream<Path> files = Files.list(one)) {
                    for (Path file : files.toList()) {
                        boolean isOld = !written.contains(file)
                                && MASK.matcher(file.getFileName().toString()).matches();
                        gone += isOld && Files.deleteIfExists(file) ? 1 : 0;
                    }
                }
            }
            return gone;
        }
    }

    /// The JDK lends a font to the printer by a temporary file, which it deletes when it shuts down.
    @Override
    public boolean needsShutdown() {
        return true;
    }

    @Override
    public List<Rehearsal> rehearsals() {
        return List.of(new Rehearsal(List.of(Rehearsal.FILE, "--to", Rehearsal.FOLDER), PlanFile.example()));
    }
}
