package plumeline.desk;

import java.io.EOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plumeline.plume.DyeFilm;
import plumeline.plume.InkKey;
import plumeline.plume.InkRecord;
import plumeline.plume.RecordBytes;

/// Where the ink of a shot is kept: beside the plan, a folder for each set of inputs. What has its final name is whole.
///
/// `PLAN.ink/SHOT-KEY/` holds `run-N.dye` (a film), `record.ink`; and while a run isn't over `run-N.dye.part` with the
/// `run-N.stop` from which it goes on.
public final class InkFolder implements AutoCloseable {
    /// The record's name; that of a pass has its name behind a hyphen.
    private static final String RECORD = "record";

    private static final String RECORD_ENDING = ".ink";
    private static final String LOCK = ".lock";

    private final Path folder;
    private final String pass;
    private final FileChannel lockFile;
    private final FileLock lock;

    private InkFolder(Path folder, String pass, FileChannel lockFile, FileLock lock) {
        this.folder = folder;
        this.pass = pass;
        this.lockFile = lockFile;
        this.lock = lock;
    }

    /// The folder of all inks of a plan: its name with `.ink` for its ending.
    ///
    /// @param plan the plan's file as it is typed
    /// @return the folder, there or not
    /// @throws Refusal where what was typed or what was read is at fault
    public static Path ofPlan(String plan) throws Refusal {
        if (plan.equals("-")) {
            return Path.of("plan.ink");
        }
        Path path = PlainFile.toPath(plan);
        Path name = path.getFileName();
        String last = name == null ? "plan" : name.toString();
        int dot = last.lastIndexOf('.');
        return path.resolveSibling((dot > 0 ? last.substring(0, dot) : last) + ".ink");
    }

    /// The folder of one set of inputs, there or not.
    ///
    /// @param ofPlan the plan's folder of inks
    /// @param shot the shot's name
    /// @param runs what tells these inputs from others
    /// @return the folder
    public static Path of(Path ofPlan, String shot, InkKey runs) {
        return ofPlan.resolve(shot + "-" + runs.brief());
    }

    /// Opens the folder of one set of inputs, for this process alone. Passes whose ink is the same share films, and
    /// each has its record.
    ///
    /// @param ofPlan the plan's folder of inks
    /// @param shot the shot's name
    /// @param pass the pass's name; empty for the shot itself
    /// @param runs what tells these inputs from others
    /// @return the folder, locked until it is closed
    /// @throws Refusal where what was typed or what was read is at fault
    /// @throws IOException where the world fails, such as a full disk
    public static InkFolder open(Path ofPlan, String shot, String pass, InkKey runs) throws Refusal, IOException {
        Path folder = of(ofPlan, shot, runs);
        PlainFile.makeFolder(folder);
        FileChannel file = FileChannel.open(folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        FileLock lock = null;
        try {
            lock = file.tryLock();
        } catch (OverlappingFileLockException e) {
            // Another thread of this process has it: said below.
        } finally {
            if (lock == null) {
                file.close();
            }
        }
        if (lock == null) {
            throw new Refusal("this ink is being run already, into " + folder, "Wait for it, or stop it.");
        }
        return new InkFolder(folder, pass, file, lock);
    }

    /// Every record that lies in a plan's folder and is whole; for whoever judges wants. What can't be read is passed
    /// over.
    ///
    /// @param ofPlan the plan's folder of inks
    /// @return the records
    /// @throws IOException where the world fails, such as a full disk
    public static List<InkRecord> records(Path ofPlan) throws IOException {
        List<InkRecord> records = new ArrayList<>();
        if (Files.isDirectory(ofPlan)) {
            try (Stream<Path> folders = Files.list(ofPlan)) {
                for (Path each : folders.filter(Files::isDirectory).sorted().toList()) {
                    addRecords(each, records);
                }
            }
        }
        return records;
    }

    private static void addRecords(Path folder, List<InkRecord> records) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path each : files.filter(InkFolder::isRecord).sorted().toList()) {
                find(each).flatMap(RecordBytes::read).ifPresent(records::add);
            }
        }
    }

    private static boolean isRecord(Path file) {
        String name = String.valueOf(file.getFileName());
        return name.startsWith(RECORD) && name.endsWith(RECORD_ENDING);
    }

    /// Gives the folder itself.
    ///
    /// @return the folder
    public Path path() {
        return folder;
    }

    /// Where a run's film is once it is whole.
    ///
    /// @param run the run, from 1
    /// @return the file
    public Path film(int run) {
        return folder.resolve("run-" + run + ".dye");
    }

    /// Where a run's film is while it isn't over.
    ///
    /// @param run the run, from 1
    /// @return the file
    public Path part(int run) {
        return folder.resolve("run-" + run + ".dye.part");
    }

    /// Where it is kept from where a run goes on.
    ///
    /// @param run the run, from 1
    /// @return the file
    public Path stop(int run) {
        return folder.resolve("run-" + run + ".stop");
    }

    /// Where the record is.
    ///
    /// @return the file
    public Path record() {
        return folder.resolve(RECORD + (pass.isEmpty() ? "" : "-" + pass) + RECORD_ENDING);
    }

    /// What is done with a film while its file is open.
    ///
    /// @param <T> what comes of it
    public interface Use<T> {
        /// Uses it.
        ///
        /// @param film the film, open
        /// @return what comes of it
        /// @throws IOException where the world fails, such as a full disk
        T of(DyeFilm film) throws IOException;
    }

    /// Uses a run's film; empty where there is none, or a damaged one.
    ///
    /// @param <T> what comes of it
    /// @param run the run, from 1
    /// @param use what is done with it
    /// @return what came of it
    /// @throws IOException where the world fails, such as a full disk
    public <T> Optional<T> use(int run, Use<T> use) throws IOException {
        Path path = film(run);
        if (!Files.isRegularFile(path)) {
            return Optional.empty();
        }
        try (FileChannel file = FileChannel.open(path)) {
            Optional<DyeFilm> film = DyeFilm.read(new FileBytes(file));
            return film.isEmpty() ? Optional.empty() : Optional.of(use.of(film.get()));
        }
    }

    /// Whether a run's film is there, whole and of these inputs.
    ///
    /// @param head what its film begins with
    /// @return whether it is
    /// @throws IOException where the world fails, such as a full disk
    public boolean isWhole(DyeFilm.Head head) throws IOException {
        return use(head.run(), DyeFilm::head).filter(head::equals).isPresent();
    }

    /// Finds the record, if it is there and whole.
    ///
    /// @return the record
    /// @throws IOException where the world fails, such as a full disk
    public Optional<InkRecord> findRecord() throws IOException {
        return find(record()).flatMap(RecordBytes::read);
    }

    /// How long a run's film is by now.
    ///
    /// @param run the run, from 1
    /// @return bytes
    public long filmBytes(int run) {
        return Math.max(film(run).toFile().length(), part(run).toFile().length());
    }

    /// Whether a run was put down.
    ///
    /// @param run the run, from 1
    /// @return whether it was
    public boolean isPutDown(int run) {
        return Files.isRegularFile(part(run)) && Files.isRegularFile(stop(run));
    }

    private static Optional<byte[]> find(Path file) throws IOException {
        return Files.isRegularFile(file) && Files.isReadable(file)
                ? Optional.of(Files.readAllBytes(file))
                : Optional.empty();
    }

    /// A film's last frame is written: from here on it is whole.
    ///
    /// @param run the run, from 1
    /// @throws IOException where the world fails, such as a full disk
    public void finish(int run) throws IOException {
        Files.move(part(run), film(run), StandardCopyOption.REPLACE_EXISTING);
        Files.deleteIfExists(stop(run));
    }

    /// Forgets all that was computed.
    ///
    /// @throws IOException where the world fails, such as a full disk
    public void clear() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            for (Path each : files.toList()) {
                if (!each.endsWith(LOCK)) {
                    Files.delete(each);
                }
            }
        }
    }

    @Override
    public void close() throws IOException {
        lock.release();
        lockFile.close();
    }

    /// The bytes of an open file of any size. It is read, not mapped: a mapped file that someone cuts short ends the
    /// process.
    ///
    /// @param file the file
    public record FileBytes(FileChannel file) implements DyeFilm.Source {
        @Override
        public long size() throws IOException {
            return file.size();
        }

        @Override
        public ByteBuffer read(long at, int length) throws IOException {
            ByteBuffer bytes = ByteBuffer.allocate(length);
            while (bytes.hasRemaining()) {
                if (file.read(bytes, at + bytes.position()) < 0) {
                    throw new EOFException("a film ends before byte " + (at + length));
                }
            }
            return bytes.flip();
        }
    }
}
