package plumeline.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import plumeline.answer.Beside;

/// The files that a question names: relative to the question's own folder, or to the current one where it comes from
/// standard input. Only plain files are opened, so that none of them keeps the program waiting.
final class FilesBeside implements Beside {
    private final Path folder;

    private FilesBeside(Path folder) {
        this.folder = folder;
    }

    /// Those beside a question's file, or `-`.
    static FilesBeside of(String question) throws Refusal {
        Path path = PlainFile.toPath(question.equals("-") ? "standard input" : question);
        Path parent = path.getParent();
        return new FilesBeside(parent == null ? Path.of("") : parent);
    }

    @Override
    public File find(String name, int mostBytes) {
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
                        name + ", which is not there",
                        "See how it is spelled; it is looked for from "
                                + (folder.toString().isEmpty() ? "the current folder" : folder) + ".");
            }
            if (!Files.isRegularFile(path)) {
                return new File.Absent(name + ", which is no plain file", "Copy what it gives into a file.");
            }
            try (InputStream in = Files.newInputStream(path)) {
                return new File.There(in.readNBytes(mostBytes));
            }
        } catch (InvalidPathException e) {
            return new File.Absent("what no file can be called here", "Give the file another name.");
        } catch (IOException e) {
            return new File.Absent(name + ", which may not or cannot be read", "See who may read it, and its disk.");
        }
    }
}
