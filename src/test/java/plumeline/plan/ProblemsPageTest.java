package plumeline.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/// Holds `docs/problems.md` and the code together.
final class ProblemsPageTest {
    private static final Pattern CODE = Pattern.compile("\"(P-[A-Z]+-[0-9]{2})\"");
    private static final Pattern HEADING = Pattern.compile("^### (P-[A-Z]+-[0-9]{2})$", Pattern.MULTILINE);

    @Test
    void everyCode_hasItsHeadingAndNoHeadingIsLeftOver() throws IOException {
        var used = new TreeSet<String>();
        try (var paths = Files.walk(Path.of("src/main/java"))) {
            for (var path : paths.filter(p -> p.toString().endsWith(".java")).toList()) {
                CODE.matcher(Files.readString(path)).results().forEach(m -> used.add(m.group(1)));
            }
        }
        var page = Texts.text(Path.of("docs/problems.md"));
        var headed = HEADING.matcher(page).results().map(m -> m.group(1)).toList();
        assertThat(used).hasSizeGreaterThan(40);
        assertThat(headed).doesNotHaveDuplicates().containsExactlyInAnyOrderElementsOf(used);
    }
}
