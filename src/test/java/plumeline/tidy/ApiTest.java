package plumeline.tidy;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/// Holds that the public types are those listed in `api.txt`, so that a wider API shows in the diff.
/// `-Dapi.update=true` writes the list anew.
final class ApiTest {
    private static final Path LIST = Sources.ROOT.resolve("src/test/resources/api.txt");

    @Test
    void publicTypes_areThoseListed() throws IOException {
        var present = listPublic();
        assertThat(present).as("public types").hasSizeGreaterThan(10);
        if (Boolean.getBoolean("api.update")) {
            Files.createDirectories(LIST.getParent());
            Files.writeString(LIST, String.join("\n", present) + "\n");
        }
        var listed = new TreeSet<>(Files.readAllLines(LIST));
        var differences = new ArrayList<String>();
        for (String name : present) {
            if (!listed.contains(name)) {
                differences.add(name + " is public and not listed");
            }
        }
        for (String name : listed) {
            if (!present.contains(name)) {
                differences.add(name + " is listed and not public any more");
            }
        }
        assertThat(differences)
                .as("differences to src/test/resources/api.txt (./check api writes it anew)")
                .isEmpty();
    }

    private static Set<String> listPublic() {
        var names = new TreeSet<String>();
        for (JavaClass type : new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("plumeline")) {
            if (isPublic(type) && !type.getPackageName().startsWith("plumeline.sheet.jte")) {
                names.add(type.getName());
            }
        }
        return names;
    }

    /// Whether a type and all that it lies in are public.
    private static boolean isPublic(JavaClass type) {
        Optional<JavaClass> each = Optional.of(type);
        while (each.isPresent()) {
            if (!each.get().getModifiers().contains(JavaModifier.PUBLIC)) {
                return false;
            }
            each = each.get().getEnclosingClass();
        }
        return true;
    }
}
