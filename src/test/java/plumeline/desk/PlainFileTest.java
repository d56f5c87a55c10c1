package plumeline.desk;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class PlainFileTest {
    @TempDir
    private Path folder = Path.of("");

    @Test
    void read_dash_isStandardInput() throws Exception {
        var console = console(new ByteArrayInputStream("é".getBytes(UTF_8)));
        PlainFile.Content content = PlainFile.read("-", console);
        assertThat(content.name()).isEqualTo("standard input");
        assertThat(content.bytes().toArray()).isEqualTo("é".getBytes(UTF_8));
    }

    @Test
    void read_missingFile_isRefused() {
        assertThatThrownBy(() -> read("nowhere.yaml"))
                .isInstanceOf(Refusal.class)
                .hasMessageEndingWith("nowhere.yaml is not there");
    }

    @Test
    void read_folder_isRefused() {
        assertThatThrownBy(() -> read("")).isInstanceOf(Refusal.class).hasMessageContaining("is a folder");
    }

    @Test
    void read_nameless_isRefused() {
        for (String name : new String[] {"", " "}) {
            assertThatThrownBy(() -> PlainFile.read(name, console(InputStream.nullInputStream())))
                    .isInstanceOf(Refusal.class)
                    .hasMessage("a file without a name was asked for");
        }
    }

    @Test
    void write_folderThatIsAFile_saysSo() throws Exception {
        Path file = Files.writeString(folder.resolve("plan.yaml"), "old");
        assertThatThrownBy(() -> PlainFile.write(file.resolve("papers.html"), new byte[1]))
                .isInstanceOf(IOException.class)
                .hasMessage(file + " is a file; a folder is wanted there");
        assertThat(file).hasContent("old");
    }

    @Test
    void toWrite_whereNoFileCanBe_isRefusedBeforeAnyWork() throws Exception {
        Path file = Files.writeString(folder.resolve("plan.yaml"), "old");
        assertThatThrownBy(() -> PlainFile.toWrite(folder.toString()))
                .isInstanceOf(Refusal.class)
                .hasMessage(folder + " is a folder; a file is wanted there");
        assertThatThrownBy(() -> PlainFile.toWrite("/dev/null"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("is no plain file");
        assertThatThrownBy(() -> PlainFile.toWrite(file.resolve("a.png").toString()))
                .isInstanceOf(Refusal.class)
                .hasMessage(file + " is a file; a folder is wanted there");
        assertThatThrownBy(() -> PlainFile.toWrite("/proc/none/a.png"))
                .isInstanceOf(Refusal.class)
                .hasMessage("the folder /proc/none can't be made here");
        assertThat(PlainFile.toWrite(folder.resolve("new/a.png").toString())).isEqualTo(folder.resolve("new/a.png"));
        assertThat(folder.resolve("new")).isEmptyDirectory();
        assertThat(PlainFile.toWrite(file.toString())).hasContent("old");
    }

    @Test
    void read_aMebibyte_isTakenAndOneByteMoreIsNot() throws Exception {
        Files.write(folder.resolve("full"), new byte[PlainFile.MOST_BYTES]);
        Files.write(folder.resolve("over"), new byte[PlainFile.MOST_BYTES + 1]);
        assertThat(read("full").bytes().toArray()).hasSize(PlainFile.MOST_BYTES);
        assertThatThrownBy(() -> read("over"))
                .isInstanceOf(Refusal.class)
                .hasMessageEndingWith("over is larger than 1 MiB; a plan or a question may be 1 MiB at most");
    }

    @Test
    void read_endlessInput_isGivenUpSoon() {
        var counted = new Endless();
        assertThatThrownBy(() -> PlainFile.read("-", console(counted))).isInstanceOf(Refusal.class);
        assertThat(counted.read).isLessThan(2L * PlainFile.MOST_BYTES);
    }

    @Test
    void write_overOldFile_replacesItAndLeavesNothingBeside() throws Exception {
        Path file = Files.writeString(folder.resolve("plan.yaml"), "old");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r-----"));
        PlainFile.write(file, "new".getBytes(UTF_8));
        assertThat(file).hasContent("new");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
                .isEqualTo("rw-r-----");
        try (var beside = Files.list(folder)) {
            assertThat(beside).containsExactly(file);
        }
    }

    @Test
    void write_throughLink_keepsTheLink() throws Exception {
        Path file = Files.writeString(folder.resolve("plan.yaml"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.yaml"), file);
        PlainFile.write(link, "new".getBytes(UTF_8));
        assertThat(Files.isSymbolicLink(link)).isTrue();
        assertThat(file).hasContent("new");
    }

    @Test
    void rewrite_fileChangedMeanwhile_isLeftAlone() throws Exception {
        Path file = Files.writeString(folder.resolve("plan.yaml"), "changed by hand");
        assertThatThrownBy(() -> PlainFile.rewrite(file, "as read".getBytes(UTF_8), "tidied".getBytes(UTF_8)))
                .isInstanceOf(Refusal.class)
                .hasMessageEndingWith("was changed by someone else meanwhile; left as it is");
        assertThat(file).hasContent("changed by hand");
    }

    @Test
    void rewrite_sameText_doesNotTouchTheFile() throws Exception {
        Path file = Files.writeString(folder.resolve("plan.yaml"), "same");
        Object before = Files.getAttribute(file, "unix:ino");
        PlainFile.rewrite(file, "same".getBytes(UTF_8), "same".getBytes(UTF_8));
        assertThat(Files.getAttribute(file, "unix:ino")).isEqualTo(before);
    }

    private PlainFile.Content read(String name) throws Refusal, IOException {
        return PlainFile.read(folder.resolve(name).toString(), console(InputStream.nullInputStream()));
    }

    private static Console console(InputStream in) {
        return new Console(in, OutputStream.nullOutputStream(), OutputStream.nullOutputStream());
    }

    private static final class Endless extends InputStream {
        private long read;

        @Override
        public int read() {
            read++;
            return ' ';
        }
    }

    @Test
    void folderThatCannotBe_isRefusedBeforeAnyWork(@TempDir Path folder) throws Exception {
        Path file = Files.writeString(folder.resolve("taken"), "x");
        assertThatThrownBy(() -> PlainFile.makeFolder(file))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("taken is a file; a folder is wanted there");
        assertThatThrownBy(() -> PlainFile.makeFolder(file.resolve("under"))).isInstanceOf(Refusal.class);
        PlainFile.makeFolder(folder.resolve("new/deep"));
        assertThat(folder.resolve("new/deep")).isDirectory();
    }
}
