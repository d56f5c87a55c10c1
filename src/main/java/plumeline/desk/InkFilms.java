package plumeline.desk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plumeline.plume.DyeFilm;
import plumeline.plume.InkCourse;
import plumeline.plume.InkReading;
import plumeline.plume.InkRecord;
import plumeline.plume.InkShot;
import plumeline.plume.InkShots;
import plumeline.plume.InkTries;
import plumeline.stage.Stage;

/// A film that was kept of a shot's ink, for pictures: whole, and of the shot's tank, ink, nozzle and things as they
/// stand now. Its file is opened anew for each frame, so that nobody has to close it.
public final class InkFilms {
    /// The finest cells first; of these what was followed by the least seed.
    private static final Comparator<InkCourse> FINEST =
            Comparator.comparingDouble(InkCourse::cellMetres).thenComparingLong(InkCourse::seed);

    private static final String FILM = "run-[0-9]+[.]dye";

    private InkFilms() {}

    /// Finds the film of a shot.
    ///
    /// @param ofPlan the plan's folder of inks
    /// @param stage the shot or pass, staged
    /// @param values its marks' values, SI, as they are for `ink`
    /// @return the first whole try of the finest cells, of those that last as long as the shot if any does; empty
    /// where
    ///     none is of these inputs
    /// @throws IOException where the world fails, such as a full disk
    public static Optional<DyeFilm> find(Path ofPlan, Stage stage, double[] values) throws IOException {
        if (!(InkShots.read(stage, values) instanceof InkReading.Ready(InkShot ink))) {
            return Optional.empty();
        }
        List<Double> valuesSi = Arrays.stream(values).boxed().toList();
        Optional<DyeFilm> shorter = Optional.empty();
        for (InkCourse course : courses(ofPlan, ink)) {
            var tries = new InkTries(stage, valuesSi, ink, course);
            for (Path file : films(InkFolder.of(ofPlan, ink.shot(), tries.key()))) {
                Optional<DyeFilm> film = DyeFilm.read(new FileParts(file)).filter(found -> isOf(found, tries));
                if (film.isPresent() && lasts(film.get(), ink)) {
                    return film;
                }
                shorter = shorter.or(() -> film);
            }
        }
        return shorter;
    }

    private static boolean lasts(DyeFilm film, InkShot ink) {
        return film.frames() / film.head().framesPerSecond() >= ink.timing().shotSeconds();
    }

    /// How it was followed, by records that are of this very ink; and as it is followed where nothing else is asked,
    /// whose record may not be there yet.
    private static List<InkCourse> courses(Path ofPlan, InkShot ink) throws IOException {
        List<InkCourse> courses = new ArrayList<>();
        for (InkRecord record : InkFolder.records(ofPlan)) {
            if (record.head().shot().equals(ink.shot()) && record.isOf(ink)) {
                courses.add(record.head().course());
            }
        }
        courses.add(new InkCourse(InkCourse.CELL_METRES, 1, new InkCourse.Until.ShotAndFloor()));
        return courses.stream().distinct().sorted(FINEST).toList();
    }

    /// In the order of their numbers.
    private static List<Path> films(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(file -> String.valueOf(file.getFileName()).matches(FILM))
                    .sorted(Comparator.comparingInt((Path file) ->
                                    String.valueOf(file.getFileName()).length())
                            .thenComparing(Comparator.naturalOrder()))
                    .toList();
        }
    }

    private static boolean isOf(DyeFilm film, InkTries tries) {
        int run = film.head().run();
        return film.frames() > 0
                && run > 0
                && film.head().equals(tries.task(run).head());
    }

    /// The bytes of a file that is open only while some of them are read.
    ///
    /// @param path the file
    private record FileParts(Path path) implements DyeFilm.Source {
        @Override
        public long size() throws IOException {
            return Files.size(path);
        }

        @Override
        public ByteBuffer read(long at, int length) throws IOException {
            try (FileChannel file = FileChannel.open(path)) {
                return new InkFolder.FileBytes(file).read(at, length);
            }
        }
    }
}
