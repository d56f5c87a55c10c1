package plumeline.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import plumeline.cut.review.FilmClock;
import plumeline.cut.review.ReviewNotes;
import plumeline.desk.Arguments;
import plumeline.desk.Command;
import plumeline.desk.Console;
import plumeline.desk.Outcome;
import plumeline.desk.PlainFile;
import plumeline.desk.PlanFile;
import plumeline.desk.Refusal;
import plumeline.desk.TimeLeft;
import plumeline.desk.Usage;
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

    /// What the last run wrote, a line a file: SHA-256, two spaces, name.
    private static final String LIST = ".plumeline-files";

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
                                "Adds these review notes to " + Post.NOTES + " of the folder, which is read too.")));
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
        List<PlainFile.Content> written = readNotes(given, folder, console);
        Optional<ReviewNotes> notes = Optional.empty();
        for (PlainFile.Content one : written) {
            ReviewNotes.Reading read = ReviewNotes.read(one.bytes().toArray(), one.name(), clock(plan));
            if (read.notes().isEmpty()) {
                read.problems().forEach(problem -> console.say(problem.toText()));
                console.say("nothing was written");
                return Outcome.REFUSED;
            }
            ReviewNotes next = read.notes().get();
            notes = Optional.of(notes.map(before -> before.merged(next)).orElse(next));
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
            throw plan.cuts().isEmpty()
                    ? new Refusal("review notes can't be read: the plan has no cut", "Write the film's cut first.")
                    : new Refusal(
                            "review notes can't be read: they stand at a timecode, and "
                                    + plan.film().rate().valueText() + " has none",
                            "Take the notes away, or give the film a rate that has timecode.");
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

    /// The folder's own notes first, then those that were named: what both say is one.
    private static List<PlainFile.Content> readNotes(Arguments given, Path folder, Console console)
            throws Refusal, IOException {
        List<PlainFile.Content> all = new ArrayList<>();
        Path kept = folder.resolve(Post.NOTES);
        if (Files.isRegularFile(kept)) {
            all.add(PlainFile.read(kept.toString(), console));
        }
        Optional<String> named = given.findValue("--notes");
        if (named.isPresent()) {
            all.add(PlainFile.read(named.get(), console));
        }
        return all;
    }

    /// Writes all files and says how far it is; takes away what an earlier run wrote and this one doesn't.
    private static final class Writer {
        private final Path folder;
        private final Console console;
        private final List<Left> written = new ArrayList<>();

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
                        written.add(write(file));
                    } catch (IOException failed) {
                        throw new UncheckedIOException(failed);
                    }
                });
            } catch (UncheckedIOException failed) {
                throw failed.getCause();
            }
            int gone = takeAway();
            if (gone > 0) {
                console.say("plumeline: took away " + gone + (gone == 1 ? " file" : " files")
                        + " of an earlier run, unchanged since");
            }
            StringBuilder list = new StringBuilder();
            written.forEach(one -> list.append(one.line()).append('\n'));
            PlainFile.write(folder.resolve(LIST), list.toString().getBytes(UTF_8));
        }

        private Left write(PostFile file) throws IOException {
            Path path = folder.resolve(file.name());
            MessageDigest digest = digest();
            PlainFile.Writing content = out -> file.content().writeTo(new DigestOutputStream(out, digest));
            if (file.name().equals(Post.NOTES)) {
                PlainFile.write(path, content); // What reviewers wrote can't be made again.
            } else {
                PlainFile.lay(path, content);
            }
            return new Left(HexFormat.of().formatHex(digest.digest()), file.name());
        }

        private int takeAway() throws IOException {
            Path list = folder.resolve(LIST);
            if (!Files.isRegularFile(list)) {
                return 0;
            }
            Set<String> names = new HashSet<>();
            written.forEach(one -> names.add(one.name()));
            names.add(Post.NOTES);
            names.add(LIST);
            int gone = 0;
            for (String line : new String(Files.readAllBytes(list), UTF_8).split("\n")) {
                Optional<Left> left = Left.read(line).filter(one -> !names.contains(one.name()));
                Optional<Path> path = left.isEmpty() ? Optional.empty() : find(left.get());
                if (path.isPresent() && !isWritten(path.get())) {
                    Files.delete(path.get());
                    leave(path.get().resolveSibling(""));
                    gone++;
                }
            }
            return gone;
        }

        /// The file in the folder that a line is of, where its bytes are those that were written.
        private Optional<Path> find(Left left) throws IOException {
            Path whole = folder.toRealPath();
            Path path;
            try {
                path = whole.resolve(left.name());
            } catch (InvalidPathException e) {
                return Optional.empty(); // Not from here.
            }
            if (!Files.isRegularFile(path, LinkOption.NOFOLLOW_LINKS)
                    || !path.equals(path.toRealPath())
                    || !path.startsWith(whole)) {
                return Optional.empty();
            }
            MessageDigest digest = digest();
            try (InputStream in = new DigestInputStream(Files.newInputStream(path), digest)) {
                in.transferTo(OutputStream.nullOutputStream());
            }
            return HexFormat.of().formatHex(digest.digest()).equals(left.sum()) ? Optional.of(path) : Optional.empty();
        }

        /// Whether it is a file of this run, by another name: links, or a disk to which small and capital are one.
        private boolean isWritten(Path path) throws IOException {
            for (Left one : written) {
                Path now = folder.resolve(one.name());
                if (now.getFileName()
                                .toString()
                                .equalsIgnoreCase(path.getFileName().toString())
                        && Files.isSameFile(now, path)) {
                    return true;
                }
            }
            return false;
        }

        /// Takes away folders that are empty now, up to post's own.
        private void leave(Path emptied) throws IOException {
            Path whole = folder.toRealPath();
            Path one = emptied;
            while (!one.equals(whole) && isEmpty(one)) {
                Files.delete(one);
                one = one.resolveSibling("");
            }
        }

        private static boolean isEmpty(Path one) throws IOException {
            try (Stream<Path> files = Files.list(one)) {
                return files.findAny().isEmpty();
            }
        }

        private static MessageDigest digest() {
            try {
                return MessageDigest.getInstance("SHA-256");
            } catch (NoSuchAlgorithmException e) {
                throw new IllegalStateException("every Java has SHA-256", e);
            }
        }
    }

    /// A file that a run left.
    ///
    /// @param sum the SHA-256 of its bytes, in hexadecimal
    /// @param name its name in the folder, folders parted by `/`
    private record Left(String sum, String name) {
        private static final Pattern LINE = Pattern.compile("([0-9a-f]{64})  (.+)");

        String line() {
            return sum + "  " + name;
        }

        static Optional<Left> read(String line) {
            Matcher matcher = LINE.matcher(line);
            return matcher.matches() ? Optional.of(new Left(matcher.group(1), matcher.group(2))) : Optional.empty();
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
