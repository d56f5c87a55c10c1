import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/// Wraps `///` comments that are too wide for the place the formatter will put them at, which it would otherwise break in the
/// middle of a sentence or leave without their slashes. Words that do not fit go to the front of the next line of the
/// same paragraph. Run by `./check format`: `java WrapComments.java FOLDER…`.
public final class WrapComments {
    private static final int MOST_COLUMNS = 120;

    private WrapComments() {}

    public static void main(String[] folders) throws IOException {
        for (String folder : folders) {
            try (var paths = Files.walk(Path.of(folder))) {
                for (Path path : paths.filter(p -> p.toString().endsWith(".java")).toList()) {
                    String before = Files.readString(path);
                    String after = wrap(before);
                    if (!after.equals(before)) {
                        Files.writeString(path, after);
                    }
                }
            }
        }
    }

    static String wrap(String text) {
        var lines = new ArrayList<>(List.of(text.split("\n", -1)));
        int braces = 0;
        int parens = 0;
        boolean inBlock = false;
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i);
            String bare = line.strip();
            if (!inBlock && bare.startsWith("///")) {
                int indent = Math.max(line.indexOf("///"), 4 * braces + (parens > 0 ? 8 : 0));
                wrapLine(lines, i, indent);
                continue;
            }
            int quotes = bare.split("\"\"\"", -1).length - 1;
            if (quotes % 2 == 1) {
                inBlock = !inBlock;
                continue;
            }
            if (inBlock) {
                continue;
            }
            String code = bare.replaceAll("\"(\\\\.|[^\"\\\\])*\"|'(\\\\.|[^'\\\\])+'", "").replaceAll("//.*", "");
            braces += count(code, '{') - count(code, '}');
            parens += count(code, '(') - count(code, ')');
        }
        return String.join("\n", lines);
    }

    private static void wrapLine(List<String> lines, int index, int indent) {
        String line = lines.get(index);
        int written = line.indexOf("///");
        // The formatter takes a run of such lines for one comment and counts the indent of all but its first line twice.
        boolean first = index == 0 || !lines.get(index - 1).strip().startsWith("///");
        int most = MOST_COLUMNS - indent + (first ? written : 0);
        String content = line.substring(written + 3);
        if (width(line) <= most || content.startsWith("    ") || content.strip().startsWith("|")) {
            return;
        }
        int cut = cutAt(line, most);
        if (cut <= written + 4) {
            return;
        }
        String rest = line.substring(cut).strip();
        lines.set(index, line.substring(0, cut).stripTrailing());
        String lead = line.substring(0, written) + "/// " + hanging(content);
        String next = index + 1 < lines.size() ? lines.get(index + 1) : "";
        if (continues(next)) {
            lines.set(index + 1, next.replaceFirst("///\\s*", "/// " + hanging(next.strip().substring(3)) + quoted(rest) + " "));
        } else {
            lines.add(index + 1, lead + rest);
        }
    }

    private static String quoted(String text) {
        return text.replace("\\", "\\\\").replace("$", "\\$");
    }

    /// The last blank that a line may be cut at.
    private static int cutAt(String line, int most) {
        int end = line.offsetByCodePoints(0, Math.min(most, width(line)));
        return line.lastIndexOf(' ', end);
    }

    /// Spaces that the next line of a list item or a tag starts with.
    private static String hanging(String content) {
        String bare = content.strip();
        int given = content.length() - content.stripLeading().length();
        if (bare.startsWith("- ") || bare.startsWith("* ")) {
            return " ".repeat(Math.max(0, given - 1)) + "  ";
        }
        return given > 1 && given < 5 ? " ".repeat(given - 1) : "";
    }

    /// Whether a line goes on with the paragraph before it.
    private static boolean continues(String line) {
        String bare = line.strip();
        if (!bare.startsWith("///")) {
            return false;
        }
        String content = bare.substring(3).strip();
        return !content.isEmpty() && !content.matches("([-*@|#]|\\d+\\.|```|\\*\\*[A-Z]).*") && !bare.startsWith("///     ");
    }

    private static int width(String text) {
        return text.codePointCount(0, text.length());
    }

    private static int count(String text, char what) {
        return (int) text.chars().filter(c -> c == what).count();
    }
}
