package plumeline.desk;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import plumeline.answer.Beside;
import plumeline.clip.Clips;
import plumeline.sound.Sound;
import plumeline.sound.Wav;

/// The files that a question names: relative to the question's own folder, or to the current one where it comes from
/// standard input. Only plain files are opened, so that none of them keeps the program waiting.
public final class FilesBeside implements Beside {
    private static final int HEAD_BYTES = 12;

    private final Path folder;
    private final String called;

    private FilesBeside(Path folder, String called) {
        this.folder = folder;
        this.called = called;
    }

    /// Those beside a question's file, or `-`.
    ///
    /// @param question the question's file, or `-`
    /// @return the files beside it
    /// @throws Refusal where no file can be called that here
    public static FilesBeside of(String question) throws Refusal {
        Path path = PlainFile.toPath(question.equals("-") ? "standard input" : question);
        Path parent = path.getParent();
        if (parent == null) {
            return new FilesBeside(
                    Path.of(""), question.equals("-") ? "the current folder" : "the folder of " + path.getFileName());
        }
        return new FilesBeside(parent, parent.toString());
    }

    @Override
    public File find(String name, int mostBytes) {
        return look(name, path -> {
            try (InputStream in = Files.newInputStream(path)) {
                return new File.There(in.readNBytes(mostBytes));
            }
        });
    }

    /// A WAV file's bytes as they are; any other file's sound is decoded, and given as a WAV file of floating-point
    /// samples.
    @Override
    public File findSound(String name, int mostBytes) {
        return look(name, path -> {
            byte[] head;
            try (InputStream in = Files.newInputStream(path)) {
                head = in.readNBytes(HEAD_BYTES);
            }
            if (Wav.isOne(ByteBuffer.wrap(head))) {
                byte[] bytes = read(path, mostBytes);
                if (!(Wav.read(ByteBuffer.wrap(bytes)) instanceof Wav.Reading.Refused(Wav.Kind kind, String _)
                        && kind == Wav.Kind.COMPRESSED)) {
                    return File.There.ofOwn(bytes);
                }
            }
            return switch (Clips.sound(path, mostBytes / Float.BYTES)) {
                case Clips.Reading.Read(Sound sound) -> File.There.ofOwn(Wav.writeFloat(sound));
                case Clips.Reading.Refused(String given, String attempt) ->
                    new File.Absent(name + ", " + given, attempt);
            };
        });
    }

    /// The pictures of a clip, or a single picture, opened.
    ///
    /// @param name its name, from the question's folder
    /// @return them, or why there are none
    public Clips.Opening findPictures(String name) {
        return switch (look(name, _ -> File.There.ofOwn(new byte[0]))) {
            case File.Absent(String given, String attempt) -> new Clips.Opening.Refused(given, attempt);
            case File.There _ ->
                switch (Clips.pictures(folder.resolve(name))) {
                    case Clips.Opening.Open open -> open;
                    case Clips.Opening.Refused(String given, String attempt) ->
                        new Clips.Opening.Refused(name + ", " + given, attempt);
                };
        };
    }

    private static byte[] read(Path path, int mostBytes) throws IOException {
        byte[] bytes = new byte[(int) Math.min(mostBytes, Files.size(path))];
        try (InputStream in = Files.newInputStream(path)) {
            int count = in.readNBytes(bytes, 0, bytes.length);
            return count == bytes.length ? bytes : Arrays.copyOf(bytes, count);
        }
    }

    private interface Opening {
        File of(Path path) throws IOException;
    }

    private File look(String name, Opening opening) {
        if (name.isBlank()) {
            return new File.Absent("a file without a name", "Name a file.");
        }
        try {
            Path path = folder.resolve(name);
            if (Files.isDirectory(path)) {
                return new File.Absent(name + ", a folder", "Name a file in it.");
            }
            if (!Files.exists(path)) {
                return new File.Absent(
                        name + ", which is not there", "See how it is spelled; it is looked for from " + called + ".");
            }
            if (!Files.isRegularFile(path)) {
                return new File.Absent(name + ", which is no plain file", "Copy what it gives into a file.");
            }
            return opening.of(path);
        } catch (InvalidPathException e) {
            return new File.Absent("what no file can be called here", "Give the file another name.");
        } catch (IOException e) {
            return new File.Absent(name + ", which may not or cannot be read", "See who may read it, and its disk.");
        }
    }
}
