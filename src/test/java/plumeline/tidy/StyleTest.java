package plumeline.tidy;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.LineMap;
import com.sun.source.tree.MethodTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import javax.tools.DiagnosticCollector;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import plumeline.tidy.Sources.Source;

/// Holds the sizes and forms of the style guide, on the source text.
final class StyleTest {
    private static final int MOST_METHOD_LINES = 70;
    private static final int MOST_FILE_LINES = 600;
    private static final int MOST_COLUMNS = 120;
    private static final int MOST_FILES_IN_A_PACKAGE = 40;

    /// Names that say what kind of thing a package holds and not its subject.
    private static final Set<String> NO_SUBJECTS =
            Set.of("util", "utils", "model", "impl", "common", "manager", "helper", "helpers", "core", "misc", "base");

    // Spelled apart, so that this file does not find itself.
    private static final Pattern LEFT_FOR_LATER = Pattern.compile("\\b(TO" + "DO|FIX" + "ME|XX" + "X)\\b");
    private static final String OLD_JAVADOC = "/*" + "*";

    @Test
    void files_areNoLongerThanSixHundredLines() {
        var found = new ArrayList<String>();
        for (Source source : sources()) {
            if (source.lines().size() > MOST_FILE_LINES) {
                found.add(source.at(source.lines().size()) + " is longer than " + MOST_FILE_LINES + " lines");
            }
        }
        assertThat(found).isEmpty();
    }

    @Test
    void lines_areNoWiderThanTheColumns() {
        var found = new ArrayList<String>();
        for (Source source : sources()) {
            for (int i = 0; i < source.lines().size(); i++) {
                String line = source.lines().get(i);
                if (line.codePointCount(0, line.length()) > MOST_COLUMNS || line.indexOf('\t') >= 0) {
                    found.add(source.at(i + 1) + " is wider than " + MOST_COLUMNS + " columns or holds a tab");
                }
            }
        }
        assertThat(found).isEmpty();
    }

    @Test
    void comments_areMarkdownAndLeaveNothingForLater() {
        var found = new ArrayList<String>();
        for (Source source : sources()) {
            for (int i = 0; i < source.lines().size(); i++) {
                String line = source.lines().get(i);
                if (line.strip().startsWith(OLD_JAVADOC)) {
                    found.add(source.at(i + 1) + " opens a comment the old way; use ///");
                }
                if (LEFT_FOR_LATER.matcher(line).find()) {
                    found.add(source.at(i + 1) + " leaves something for later");
                }
            }
        }
        assertThat(found).isEmpty();
    }

    @Test
    void methods_areNoLongerThanSeventyLines() throws IOException {
        var found = new ArrayList<String>();
        int examined = 0;
        for (Method method : listMethods()) {
            examined++;
            if (method.lines() > MOST_METHOD_LINES) {
                found.add(method.at() + " " + method.name() + " has " + method.lines() + " lines");
            }
        }
        assertThat(examined).as("methods examined").isGreaterThan(50);
        assertThat(found).isEmpty();
    }

    @Test
    void everyPackage_saysWhatItHoldsAndIsNullMarked() {
        var found = new TreeSet<String>();
        for (String folder : folders()) {
            var info = Sources.MAIN.resolve("plumeline/" + folder + "/package-info.java");
            if (!Files.isRegularFile(info)) {
                found.add(folder + " has no package-info.java");
                continue;
            }
            String text = read(info);
            if (!text.contains("@NullMarked")) {
                found.add(folder + " is not @NullMarked");
            }
            if (!text.startsWith("///")) {
                found.add(folder + " does not say what it holds");
            }
        }
        assertThat(found).isEmpty();
    }

    @Test
    void packages_areSubjectsAndNotTooFull() {
        var found = new TreeSet<String>();
        for (String folder : folders()) {
            long files = Sources.list(Sources.MAIN).stream()
                    .filter(source -> source.folder().equals(folder))
                    .count();
            String subject = folder.substring(folder.lastIndexOf('/') + 1);
            if (NO_SUBJECTS.contains(subject.toLowerCase(Locale.ROOT))) {
                found.add(folder + " is a kind of thing and no subject");
            }
            if (files > MOST_FILES_IN_A_PACKAGE) {
                found.add(folder + " holds " + files + " files; split it");
            }
        }
        assertThat(found).isEmpty();
    }

    private static List<Source> sources() {
        List<Source> sources = Sources.listAll();
        assertThat(sources).as("source files under " + Sources.ROOT).hasSizeGreaterThan(20);
        return sources;
    }

    private static Set<String> folders() {
        var folders = new TreeSet<String>();
        for (Source source : Sources.list(Sources.MAIN)) {
            folders.add(source.folder());
        }
        return folders;
    }

    private static String read(java.nio.file.Path path) {
        try {
            return Files.readString(path);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    private record Method(String at, String name, long lines) {}

    private static List<Method> listMethods() throws IOException {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        var methods = new ArrayList<Method>();
        try (var files = compiler.getStandardFileManager(null, Locale.ROOT, null)) {
            var paths = sources().stream().map(Source::path).toList();
            var task = (JavacTask) compiler.getTask(
                    null,
                    files,
                    new DiagnosticCollector<JavaFileObject>(),
                    List.of("-proc:none"),
                    null,
                    files.getJavaFileObjectsFromPaths(paths));
            var trees = Trees.instance(task);
            for (CompilationUnitTree unit : task.parse()) {
                new MethodLengths(unit, trees, methods).scan(unit, null);
            }
        }
        return methods;
    }

    /// Collects the methods of a file and how many lines each takes.
    private static final class MethodLengths extends TreeScanner<Void, Void> {
        private final CompilationUnitTree unit;
        private final Trees trees;
        private final List<Method> methods;

        MethodLengths(CompilationUnitTree unit, Trees trees, List<Method> methods) {
            this.unit = unit;
            this.trees = trees;
            this.methods = methods;
        }

        @Override
        public Void visitMethod(MethodTree method, Void nothing) {
            LineMap lines = unit.getLineMap();
            var positions = trees.getSourcePositions();
            long first = lines.getLineNumber(positions.getStartPosition(unit, method));
            long last = lines.getLineNumber(positions.getEndPosition(unit, method));
            String at = unit.getSourceFile().getName() + ":" + first;
            methods.add(new Method(at, method.getName().toString(), last - first + 1));
            return super.visitMethod(method, nothing);
        }
    }
}
