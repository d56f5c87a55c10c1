package plumeline.assemble;

import java.util.List;
import java.util.Locale;

/// Frame number and timecode, burnt into a picture: white on a black plate in its upper left corner, each sign of 5 by 7
/// squares, so that a program can read each back.
///
/// A square is `s` pixels wide and high, with s a hundred-twentieth of the film's shorter side, rounded, 2 at least. The
/// plate begins in the corner; the first sign two squares from its left and top. Signs stand 6 squares apart, the second
/// line 10 squares under the first. The first line is the film's frame, from 0, in six digits; the second its timecode.
final class Counter {
    static final int SIGN_ACROSS = 5;
    static final int SIGN_DOWN = 7;
    private static final int STEP = 6;
    private static final int LINE = 10;
    private static final int MARGIN = 2;
    private static final int SHARE = 120;
    private static final int SMALLEST = 2;
    private static final int BLACK = 0x000000;
    private static final int WHITE = 0xFFFFFF;

    /// Rows of each sign from the top, five bits a row, the left one first.
    private static final String SIGNS = "0123456789:;";

    private static final int[][] ROWS = {
        {0b01110, 0b10001, 0b10011, 0b10101, 0b11001, 0b10001, 0b01110},
        {0b00100, 0b01100, 0b00100, 0b00100, 0b00100, 0b00100, 0b01110},
        {0b01110, 0b10001, 0b00001, 0b00010, 0b00100, 0b01000, 0b11111},
        {0b11111, 0b00010, 0b00100, 0b00010, 0b00001, 0b10001, 0b01110},
        {0b00010, 0b00110, 0b01010, 0b10010, 0b11111, 0b00010, 0b00010},
        {0b11111, 0b10000, 0b11110, 0b00001, 0b00001, 0b10001, 0b01110},
        {0b00110, 0b01000, 0b10000, 0b11110, 0b10001, 0b10001, 0b01110},
        {0b11111, 0b00001, 0b00010, 0b00100, 0b01000, 0b01000, 0b01000},
        {0b01110, 0b10001, 0b10001, 0b01110, 0b10001, 0b10001, 0b01110},
        {0b01110, 0b10001, 0b10001, 0b01111, 0b00001, 0b00010, 0b01100},
        {0b00000, 0b00100, 0b00100, 0b00000, 0b00100, 0b00100, 0b00000},
        {0b00000, 0b00100, 0b00100, 0b00000, 0b00100, 0b00100, 0b01000},
    };

    private Counter() {}

    /// How many pixels a square has.
    static int squarePixels(int width, int height) {
        return Math.max(SMALLEST, Math.round(Math.min(width, height) / (float) SHARE));
    }

    /// The first line.
    static String number(long frame) {
        return String.format(Locale.ROOT, "%06d", frame);
    }

    /// Burns lines in.
    static void burn(int[] film, int width, int height, List<String> lines) {
        int square = squarePixels(width, height);
        int longest = lines.stream().mapToInt(String::length).max().orElse(0);
        int across = Math.min(width, square * (2 * MARGIN + STEP * longest - 1));
        int down = Math.min(height, square * (2 * MARGIN + LINE * (lines.size() - 1) + SIGN_DOWN));
        for (int y = 0; y < down; y++) {
            for (int x = 0; x < across; x++) {
                boolean isLit = isLit(lines, Math.floorDiv(x, square) - MARGIN, Math.floorDiv(y, square) - MARGIN);
                film[y * width + x] = isLit ? WHITE : BLACK;
            }
        }
    }

    private static boolean isLit(List<String> lines, int column, int row) {
        if (column < 0 || row < 0 || row / LINE >= lines.size() || row % LINE >= SIGN_DOWN) {
            return false;
        }
        String line = lines.get(row / LINE);
        int sign = column / STEP;
        int bit = column % STEP;
        if (sign >= line.length() || bit >= SIGN_ACROSS) {
            return false;
        }
        return (ROWS[SIGNS.indexOf(line.charAt(sign))][row % LINE] >> SIGN_ACROSS - 1 - bit & 1) == 1;
    }
}
