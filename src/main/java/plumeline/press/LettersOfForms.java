package plumeline.press;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/// Tells readers of a print which letter a joined Arabic form stands for, so that joined words are found and copied as
/// they were written: a font's table from codes to characters gets letters for forms.
///
/// **Source:** Unicode Standard, compatibility decompositions of Arabic Presentation Forms (by the JDK's normalizer);
/// PDF 32000-1, 9.10.3 for the table.
final class LettersOfForms {
    private static final Pattern BLOCK = Pattern.compile("\\d+ beginbfrange(.*?)endbfrange", Pattern.DOTALL);

    /// A block holds no more ranges.
    private static final int MOST = 100;

    /// From code, to code, character of the first.
    private static final Pattern RANGE = Pattern.compile("<(\\p{XDigit}{4})> <(\\p{XDigit}{4})> <(\\p{XDigit}{4})>");

    private LettersOfForms() {}

    static void correct(PDDocument document) throws IOException {
        Set<COSStream> seen = Collections.newSetFromMap(new IdentityHashMap<>());
        for (PDPage page : document.getPages()) {
            for (COSName name : page.getResources().getFontNames()) {
                COSStream table =
                        page.getResources().getFont(name).getCOSObject().getCOSStream(COSName.TO_UNICODE);
                if (table != null && seen.add(table)) {
                    correct(table);
                }
            }
        }
    }

    private static void correct(COSStream table) throws IOException {
        String text = new String(table.createInputStream().readAllBytes(), StandardCharsets.US_ASCII);
        String corrected = BLOCK.matcher(text).replaceAll(block -> blocks(block.group(1)));
        try (OutputStream out = table.createOutputStream(COSName.FLATE_DECODE)) {
            out.write(corrected.getBytes(StandardCharsets.US_ASCII));
        }
    }

    private static String blocks(String ranges) {
        List<String> lines =
                RANGE.matcher(ranges).results().flatMap(LettersOfForms::lines).toList();
        StringBuilder blocks = new StringBuilder();
        for (int from = 0; from < lines.size(); from += MOST) {
            List<String> some = lines.subList(from, Math.min(from + MOST, lines.size()));
            blocks.append(from > 0 ? "\n" : "").append(some.size()).append(" beginbfrange\n");
            some.forEach(line -> blocks.append(line).append('\n'));
            blocks.append("endbfrange");
        }
        return blocks.toString();
    }

    /// A range as it is, or code by code where it holds forms, whose letters don't follow each other as they do.
    private static Stream<String> lines(MatchResult range) {
        int from = Integer.parseInt(range.group(1), 16);
        int to = Integer.parseInt(range.group(2), 16);
        int first = Integer.parseInt(range.group(3), 16);
        return isForm(first) || isForm(first + to - from)
                ? IntStream.rangeClosed(from, to).mapToObj(code -> line(code, letter(first + code - from)))
                : Stream.of(range.group());
    }

    private static String line(int code, int letter) {
        return String.format(Locale.ROOT, "<%04X> <%04X> <%04X>", code, code, letter);
    }

    private static int letter(int code) {
        String letters = isForm(code) ? Normalizer.normalize(Character.toString(code), Normalizer.Form.NFKC) : "";
        return letters.length() == 1 ? letters.charAt(0) : code;
    }

    private static boolean isForm(int code) {
        return code >= 0xFB50 && code <= 0xFDFF || code >= 0xFE70 && code <= 0xFEFC;
    }
}
