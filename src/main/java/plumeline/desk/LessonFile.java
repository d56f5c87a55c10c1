package plumeline.desk;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import plumeline.lesson.Lessons;
import plumeline.lesson.LessonsReading;
import plumeline.plan.Plans;
import plumeline.take.Measured;

/// The text of lessons beside a plan: `fernhollow.lessons.yaml` beside `fernhollow.yaml`.
public final class LessonFile {
    private static final String STANDARD_INPUT = "standard input";

    private LessonFile() {}

    /// Where the lessons of a plan are.
    ///
    /// @param plan the plan's file as it is typed
    /// @return the file, there or not
    /// @throws Refusal where what was typed or what was read is at fault
    public static Path beside(String plan) throws Refusal {
        Path path = PlainFile.toPath(plan);
        String name = String.valueOf(path.getFileName());
        int dot = name.lastIndexOf('.');
        return path.resolveSibling((dot > 0 ? name.substring(0, dot) : name) + ".lessons.yaml");
    }

    /// Reads the lessons of a plan; none where there is no such file.
    ///
    /// @param plan the plan's file as it is typed
    /// @param console who hears of it
    /// @return the lessons, or what is wrong with them
    /// @throws Refusal where what was typed or what was read is at fault
    /// @throws IOException where the world fails, such as a full disk
    public static LessonsReading read(String plan, Console console) throws Refusal, IOException {
        Path path = beside(plan);
        if (!Files.exists(path)) {
            return new LessonsReading(Optional.of(Lessons.none(path.toString(), fileName(plan))), List.of());
        }
        PlainFile.Content content = PlainFile.read(path.toString(), console);
        if (new String(content.bytes().toArray(), UTF_8).isBlank()) {
            return new LessonsReading(Optional.of(Lessons.none(path.toString(), fileName(plan))), List.of());
        }
        return Lessons.read(content.bytes().toArray(), content.name());
    }

    /// The plan's file name without its folder.
    ///
    /// @param plan the plan's file as it is typed
    /// @return its name alone
    /// @throws Refusal where what was typed or what was read is at fault
    public static String fileName(String plan) throws Refusal {
        return String.valueOf(PlainFile.toPath(plan).getFileName());
    }

    /// Puts the lessons beside a plan into it, and says so in a line; a plan from standard input has none.
    static Plans.Reading applyTo(Plans.Reading plan, String name, Console console) throws Refusal, IOException {
        if (name.equals(STANDARD_INPUT) || !Files.exists(beside(name))) {
            return plan;
        }
        LessonsReading reading = read(name, console);
        if (reading.lessons().isEmpty()) {
            return new Plans.Reading(Optional.empty(), reading.problems());
        }
        Lessons lessons = reading.lessons().get();
        Plans.Reading measured = lessons.applyTo(plan.plan().orElseThrow());
        if (measured.plan().isPresent() && !lessons.list().isEmpty()) {
            console.say(used(lessons));
        }
        return measured;
    }

    /// The line that says a plan was read with lessons.
    private static String used(Lessons lessons) {
        Map<String, Integer> counted = new LinkedHashMap<>();
        lessons.list().forEach(lesson -> counted.merge(subject(lesson.measured()), 1, Integer::sum));
        String subjects = counted.entrySet().stream()
                .map(entry -> entry.getKey().startsWith("ink ")
                        ? entry.getKey().substring(4) + " from " + entry.getValue()
                                + (entry.getValue() == 1 ? " take" : " takes")
                        : entry.getKey())
                .collect(Collectors.joining(", "));
        return "plumeline: measured values of " + lessons.file() + ": " + subjects;
    }

    private static String subject(Measured measured) {
        return switch (measured) {
            case Measured.OfTake take -> "ink " + take.ink();
            case Measured.Lux lux -> lux.light() + "'s light";
            case Measured.LuxAt at -> at.at().thing() + "'s light in " + at.at().shot();
            case Measured.FocalLength lens -> lens.lens() + "'s focal length";
            case Measured.Speed speed -> speed.machine() + "'s speed";
            case Measured.Reset reset -> reset.shot() + "'s reset";
            case Measured.Strength strength -> strength.ink() + "'s strength";
        };
    }

    /// Something done while nobody else adds or forgets lessons of the same plan.
    public interface Work {
        /// Does it.
        ///
        /// @return how it ended
        /// @throws Refusal where what was typed or what was read is at fault
        /// @throws IOException where the world fails, such as a full disk
        Outcome run() throws Refusal, IOException;
    }

    /// Works alone on a plan's lessons: the plan's own file is locked meanwhile, and not touched. Where it may not be
    /// written nothing is locked.
    ///
    /// @param plan the plan's file as it is typed
    /// @param work what is done
    /// @return what the work gives
    /// @throws Refusal where what was typed or what was read is at fault
    /// @throws IOException where the world fails, such as a full disk
    public static synchronized Outcome alone(String plan, Work work) throws Refusal, IOException {
        Path path = PlainFile.toPath(plan);
        PlainFile.refuseUnlessRewritable(beside(plan).toString());
        if (!Files.isWritable(path)) {
            return work.run();
        }
        try (FileChannel channel = FileChannel.open(path, StandardOpenOption.WRITE);
                FileLock _ = channel.lock()) {
            return work.run();
        }
    }

    /// Writes lessons in one step; refuses where someone else has changed them since they were read.
    ///
    /// @param plan the plan's file as it is typed
    /// @param before the lessons as they were read
    /// @param after the lessons as they become
    /// @throws Refusal where what was typed or what was read is at fault
    /// @throws IOException where the world fails, such as a full disk
    public static void write(String plan, Lessons before, Lessons after) throws Refusal, IOException {
        Path path = beside(plan);
        if (Files.exists(path)) {
            byte[] there = Files.readAllBytes(path);
            boolean isEmpty = new String(there, UTF_8).isBlank();
            PlainFile.rewrite(
                    path,
                    isEmpty ? there : before.text().getBytes(UTF_8),
                    after.text().getBytes(UTF_8));
        } else {
            PlainFile.write(path, after.text().getBytes(UTF_8));
        }
    }
}
