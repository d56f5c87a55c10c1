package plumeline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.nio.file.Files;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import org.verapdf.pdfa.results.ValidationResult;
import plumeline.tidy.Outside;

/// Whether the print can be read aloud and gone through by its tags.
@Outside(
        source = "ISO 14289-1:2014 (PDF/UA-1) by the rules of veraPDF 1.30.2",
        place = "profile PDFUA-1",
        kind = "program")
final class PapersTaggedIT {
    @BeforeAll
    static void readRules() {
        VeraGreenfieldFoundryProvider.initialise();
    }

    static Stream<PapersRun> runs() {
        return PapersRun.all();
    }

    /// What each broken rule says, with the first place where it is broken.
    private static Map<String, String> broken(InputStream pdf) throws Exception {
        Map<String, String> broken = new TreeMap<>();
        try (var parser = Foundries.defaultInstance().createParser(pdf, PDFAFlavour.PDFUA_1);
                var validator = Foundries.defaultInstance().createValidator(PDFAFlavour.PDFUA_1, false)) {
            ValidationResult result = validator.validate(parser);
            assertThat(result.getTotalAssertions()).isGreaterThan(1000);
            for (TestAssertion one : result.getTestAssertions()) {
                if (one.getStatus() == TestAssertion.Status.FAILED) {
                    broken.putIfAbsent(
                            one.getRuleId().getClause() + " test "
                                    + one.getRuleId().getTestNumber(),
                            one.getMessage() + " " + one.getLocation().getContext());
                }
            }
            assertThat(result.isCompliant()).isEqualTo(broken.isEmpty());
        }
        return broken;
    }

    @ParameterizedTest
    @MethodSource("runs")
    void print_keepsEveryRule(PapersRun run) throws Exception {
        try (InputStream pdf = Files.newInputStream(run.pdf())) {
            assertThat(broken(pdf)).isEmpty();
        }
    }

    /// The rules do find what is missing: without its language, its title and its tags a print breaks them.
    @Test
    void printWithoutTags_isFound() throws Exception {
        ByteArrayOutputStream spoilt = new ByteArrayOutputStream();
        try (PDDocument pdf = Loader.loadPDF(PapersRun.of(0).pdf().toFile())) {
            pdf.getDocumentCatalog().setLanguage(null);
            pdf.getDocumentCatalog().setViewerPreferences(null);
            pdf.getDocumentCatalog().getCOSObject().removeItem(COSName.STRUCT_TREE_ROOT);
            pdf.save(spoilt);
        }
        assertThat(broken(new ByteArrayInputStream(spoilt.toByteArray()))).hasSizeGreaterThan(3);
    }
}
