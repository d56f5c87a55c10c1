package plumeline.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import plumeline.draw.SvgReader;
import plumeline.sheet.SixtyShots;

/// Prints the papers of a long film in a process of its own with little memory. How long that takes is for
/// `PapersBench`.
final class SixtyShotsIT {
    private static final int SHOTS = 60;

    /// What the program may hold in all, and the part of it that is given to what it makes.
    private static final int MOST_MEBIBYTES = 512;

    private static final int HEAP_MEBIBYTES = 300;

    @TempDir
    private static Path folder = Path.of("");

    private static String told = "";

    @BeforeAll
    static void printPapers() throws IOException, InterruptedException {
        Path plan = folder.resolve("long.yaml");
        Files.writeString(plan, SixtyShots.of(SHOTS));
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:+UseSerialGC",
                        String.format(Locale.ROOT, "-Xmx%dm", HEAP_MEBIBYTES),
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        PeakMemory.class.getName(),
                        "papers",
                        plan.toString(),
                        "--to",
                        folder.toString())
                .redirectErrorStream(true)
                .start();
        process.getOutputStream().close();
        told = new String(process.getInputStream().readAllBytes(), UTF_8);
        assertThat(process.waitFor()).as(told).isZero();
    }

    @Test
    void memory_staysWithinWhatIsAllowed() throws IOException {
        List<Integer> kibibytes = told.lines()
                .filter(line -> line.startsWith(PeakMemory.LINE))
                .map(line -> Integer.valueOf(line.substring(PeakMemory.LINE.length())))
                .toList();
        if (Files.isReadable(Path.of("/proc/self/status"))) {
            assertThat(kibibytes).as(told).hasSize(1);
        }
        assertThat(kibibytes).allMatch(peak -> peak < MOST_MEBIBYTES * 1024);
    }

    @Test
    void everyShot_hasItsSheet() throws IOException {
        Document page = SvgReader.parse(Files.readString(folder.resolve("papers.html")));
        try (PDDocument pdf = Loader.loadPDF(folder.resolve("papers.pdf").toFile())) {
            assertThat(pdf.getNumberOfPages()).isGreaterThanOrEqualTo(SHOTS);
            List<String> lines = new PDFTextStripper()
                    .getText(pdf)
                    .lines()
                    .map(PdfText::plain)
                    .toList();
            for (int i = 0; i < SHOTS; i++) {
                String heading = PapersPdfOutsideIT.heading(PapersRun.byId(page, "shot.s" + i));
                assertThat(heading).containsPattern("\\bs" + i + "\\b");
                assertThat(lines).as("the print's lines").contains(PdfText.plain(heading));
            }
        }
    }
}
