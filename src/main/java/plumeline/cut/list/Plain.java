package plumeline.cut.list;

import java.text.Normalizer;

/// Text in the letters of ASCII, on one line.
final class Plain {
    private Plain() {}

    /// Takes marks off letters; what has no plain letter becomes `?`, what ends a line a blank.
    static String of(String text) {
        StringBuilder plain = new StringBuilder();
        Normalizer.normalize(text, Normalizer.Form.NFKD).codePoints().forEach(c -> {
            if (c >= ' ' && c < 0x7f) {
                plain.append((char) c);
            } else if (c == 'ß') {
                plain.append("ss");
            } else if (c < ' ') {
                plain.append(' ');
            } else if (Character.getType(c) != Character.NON_SPACING_MARK) {
                plain.append('?');
            }
        });
        return plain.toString();
    }
}
