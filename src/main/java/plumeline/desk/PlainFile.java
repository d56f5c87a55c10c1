package plumeline.desk;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// Reads what the user names and writes files so that none is ever half there.
public final class PlainFile {
    /// The largest plan or question that is read, bytes.
    public static final int MOST_BYTES = 1 << 20;

    private static final String ELSEWHERE = "Name a place that you may write to.";

    private static final Pattern LEFT = Pattern.compile("[.](.+)[.]([0-9]{1,18})[.]new");

    private PlainFile() {}

    /// What was read, and what to call it in messages.
    ///
    /// @param name its name as it was typed, `-` for standard input
    /// @param bytes what is in it
    public record Content(String name, Bytes bytes) {}

    /// Bytes that compare by what they hold.
    public static final class Bytes {
        private final byte[] bytes;

        /// Copies the bytes.
        ///
        /// @param bytes what is in it
        public Bytes(byte[] bytes) {
            this.bytes = bytes.clone();
        }

        /// Gives a copy of the bytes.
        ///
        /// @return the bytes
        public byte[] toArray() {
            return bytes.clone();
        }
    }

    /// Reads a file, or standard input for `-`; one byte past the limit at most.
    ///
    /// @param name its name as it was typed, `-` for standard input
    /// @param console who hears of it
    /// @return what it holds
    /// @throws Refusal where there is no such file, it is a folder, or it is larger than a plan or a question may
    /// be
    /// @throws IOException where the world fails, such as a full disk
    public static Content read(String name, Console console) throws Refusal, IOException {
        boolean standardInput = name.equals("-");
        byte[] bytes = standardInput ? console.readInput(MOST_BYTES + 1) : readFile(name);
        String called = standardInput ? "standard input" : name;
        if (bytes.length > MOST_BYTES) {
            throw new Refusal(
                    called + " is larger than 1 MiB; a plan or a question may be 1 MiB at most",
                    "See whether it is the right file.");
        }
        return new Content(called, new Bytes(bytes));
    }

    private static byte[] readFile(String name) throws Refusal, IOException {
        Path path = toPath(name);
        if (Files.isDirectory(path)) {
            throw new Refusal(name + " is a folder; a file is wanted", "Name a file in it.");
        }
        try (InputStream in = Files.newInputStream(path)) {
            return in.readNBytes(MOST_BYTES + 1);
        } catch (NoSuchFileException e) {
            throw new Refusal(name + " is not there", "See how its name is spelled and which folder you are in.");
        } catch (AccessDeniedException e) {
            throw new IOException(name + " may not be read by you", e);
        }
    }

    /// Makes a path of what was typed.
    ///
    /// @param name its name as it was typed, `-` for standard input
    /// @return the path
    /// @throws Refusal where what was typed or what was read is at fault
    public static Path toPath(String name) throws Refusal {
        if (name.isBlank()) {
            throw new Refusal("a file without a name was asked for", "Name a file, or - for standard input.");
        }
        try {
            return Path.of(name);
        } catch (InvalidPathException e) {
            throw new Refusal("a file cannot be called that here: " + e.getReason(), "Name another file.");
        }
    }

    /// Something that is written, however long.
    public interface Writing {
        /// Writes it.
        ///
        /// @param out where it goes
        /// @throws IOException where the world fails, such as a full disk
        void to(OutputStream out) throws IOException;
    }

    /// How sure a file must be on the disk before it takes its place.
    private enum Hold {
        /// Somebody's own work: on the disk before the old one goes, so that a power cut leaves one of both.
        KEPT,
        /// Made from a plan at any time: as the system writes it.
        MADE_AGAIN
    }

    /// Writes a file whole: aside first, to the disk, then moved over the old one in one step. A link is followed, and
    /// what it points to is replaced; the old file's permissions are kept.
    ///
    /// @param file the file
    /// @param bytes what is in it
    /// @throws IOException where the world fails, such as a full disk
    public static void write(Path file, byte[] bytes) throws IOException {
        write(file, (Writing) out -> out.write(bytes));
    }

    /// As `write` of bytes, for what is too long to be in memory twice.
    ///
    /// @param file the file
    /// @param content what is in it
    /// @throws IOException where the world fails, such as a full disk
    public static void write(Path file, Writing content) throws IOException {
        write(file, content, Hold.KEPT);
    }

    /// As `write`, for what can be made again: never half there either, but nobody waits for the disk.
    ///
    /// @param file the file
    /// @param bytes what is in it
    /// @throws IOException where the world fails, such as a full disk
    public static void lay(Path file, byte[] bytes) throws IOException {
        lay(file, (Writing) out -> out.write(bytes));
    }

    /// As `lay` of bytes, for what is too long to be in memory twice.
    ///
    /// @param file the file
    /// @param content what is in it
    /// @throws IOException where the world fails, such as a full disk
    public static void lay(Path file, Writing content) throws IOException {
        write(file, content, Hold.MADE_AGAIN);
    }

    /// The file that is written, by no link, its folder made.
    private static Path target(Path file) throws IOException {
        Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
        Path folder = target.getParent();
        if (folder == null) {
            throw new IOException(file + " is no file");
        }
        try {
            Files.createDirectories(folder);
        } catch (FileAlreadyExistsException e) {
            throw new IOException(e.getFile() + " is a file; a folder is wanted there", e);
        }
        return target;
    }

    private static Path aside(Path target) {
        return target.resolveSibling(
                "." + target.getFileName() + "." + ProcessHandle.current().pid() + ".new");
    }

    private static void write(Path file, Writing content, Hold hold) throws IOException {
        Path target = target(file);
        Path aside = aside(target);
        try {
            writeAside(aside, content, hold);
            if (Files.exists(target)) {
                keepPermissions(target, aside);
            }
            moveOver(aside, target);
        } finally {
            Files.deleteIfExists(aside);
        }
    }

    /// Takes away what runs that were ended in the middle left beside some files: named by their process, which is
    /// gone.
    ///
    /// @param folder the folder
    /// @param names whether a file of this name is meant
    /// @throws IOException where the world fails, such as a full disk
    public static void removeLeft(Path folder, Predicate<String> names) throws IOException {
        if (!Files.isDirectory(folder)) {
            return;
        }
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, ".*.new")) {
            for (Path each : files) {
                Matcher left = LEFT.matcher(String.valueOf(each.getFileName()));
                if (left.matches()
                        && names.test(left.group(1))
                        && ProcessHandle.of(Long.parseLong(left.group(2))).isEmpty()) {
                    Files.deleteIfExists(each);
                }
            }
        }
    }

    /// Something that writes a file by its path; false where it was stopped, and the file is none.
    public interface Making {
        /// Writes the file.
        ///
        /// @param aside where it is written before it takes its place
        /// @return false where it was stopped
        /// @throws IOException where the world fails, such as a full disk
        boolean at(Path aside) throws IOException;
    }

    /// As `lay`, for what writes its file itself.
    ///
    /// @param file the file
    /// @param making what writes it
    /// @return false where it was stopped; what was there then stays
    /// @throws IOException where the world fails, such as a full disk
    public static boolean layAside(Path file, Making making) throws IOException {
        Path target = target(file);
        removeLeft(target.resolveSibling(""), String.valueOf(target.getFileName())::equals);
        Path aside = aside(target);
        try {
            if (!making.at(aside)) {
                return false;
            }
            if (Files.exists(target)) {
                keepPermissions(target, aside);
            }
            moveOver(aside, target);
            return true;
        } finally {
            Files.deleteIfExists(aside);
        }
    }

    /// Makes a path of what was typed for a file to write, and its folder, before any work is done.
    ///
    /// @param name its name as it was typed
    /// @return the path
    /// @throws Refusal where a file can't be written there
    public static Path toWrite(String name) throws Refusal {
        Path path = toPath(name);
        if (Files.isDirectory(path)) {
            throw new Refusal(name + " is a folder; a file is wanted there", "Name a file in it.");
        }
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            throw new Refusal(name + " is no plain file: nothing is written into it", "Name another file.");
        }
        Path folder = path.toAbsolutePath().getParent();
        if (folder != null) {
            makeFolder(folder);
        }
        return path;
    }

    /// Makes a folder to write into, before any work is done.
    ///
    /// @param folder the folder
    /// @throws Refusal where what was typed or what was read is at fault
    public static void makeFolder(Path folder) throws Refusal {
        try {
            Files.createDirectories(folder);
        } catch (FileAlreadyExistsException e) {
            throw new Refusal(e.getFile() + " is a file; a folder is wanted there", ELSEWHERE);
        } catch (IOException e) {
            throw new Refusal("the folder " + folder + " can't be made here", ELSEWHERE);
        }
        if (!Files.isWritable(folder)) {
            throw new Refusal("the folder " + folder + " may not be written into by you", ELSEWHERE);
        }
    }

    /// Refuses what can't be written anew, before any work is done: a pipe or a device, a file that is set read-only. A
    /// step that moves a file over another doesn't mind the other's being read-only; its owner does.
    ///
    /// @param name its name as it was typed, `-` for standard input
    /// @throws Refusal where what was typed or what was read is at fault
    /// @throws IOException where the world fails, such as a full disk
    public static void refuseUnlessRewritable(String name) throws Refusal, IOException {
        if (name.equals("-")) {
            return;
        }
        Path path = toPath(name);
        if (!Files.exists(path) || Files.isDirectory(path)) {
            return; // Reading says so.
        }
        if (!Files.isRegularFile(path)) {
            throw new Refusal(
                    name + " is no file that can be written anew", "Name a file, or - to have the plan printed.");
        }
        if (isReadOnly(path)) {
            throw new IOException(name + " is read-only; left as it is");
        }
        Path folder = path.toRealPath().getParent();
        if (folder == null || !Files.isWritable(folder)) {
            throw new IOException("the folder of " + name + " may not be written by you; left as it is");
        }
    }

    private static boolean isReadOnly(Path path) throws IOException {
        if (!Files.isWritable(path)) {
            return true;
        }
        try {
            // Whoever may write everything should still not write what nobody is to write.
            return Files.getPosixFilePermissions(path).stream()
                    .noneMatch(one -> one.name().endsWith("_WRITE"));
        } catch (UnsupportedOperationException e) {
            return false;
        }
    }

    /// As `write`, for a file that was read before: refuses when it has changed since, so that nobody's work is lost.
    ///
    /// @param file the file
    /// @param before what was read
    /// @param after what it becomes
    /// @throws Refusal where what was typed or what was read is at fault
    /// @throws IOException where the world fails, such as a full disk
    public static void rewrite(Path file, byte[] before, byte[] after) throws Refusal, IOException {
        if (!Arrays.equals(before, Files.readAllBytes(file))) {
            throw new Refusal(file + " was changed by someone else meanwhile; left as it is", "Do it again.");
        }
        if (!Arrays.equals(before, after)) {
            write(file, after);
        }
    }

    private static void writeAside(Path aside, Writing content, Hold hold) throws IOException {
        try (FileChannel channel = FileChannel.open(
                        aside,
                        StandardOpenOption.CREATE,
                        StandardOpenOption.TRUNCATE_EXISTING,
                        StandardOpenOption.WRITE);
                OutputStream out = Channels.newOutputStream(channel)) {
            content.to(out);
            if (hold == Hold.KEPT) {
                channel.force(true);
            }
        }
    }

    private static void keepPermissions(Path from, Path to) throws IOException {
        try {
            Files.setPosixFilePermissions(to, Files.getPosixFilePermissions(from));
        } catch (UnsupportedOperationException e) {
            // A file system without such permissions has none to keep.
        }
    }

    private static void moveOver(Path aside, Path target) throws IOException {
        try {
            Files.move(aside, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(aside, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
