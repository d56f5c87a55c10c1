package plumeline.assemble;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/// Frame number and timecode, burnt into a picture: white on a black plate in its upper left corner, each sign of 5 by
/// 7 squares, so that a program can read each back.
///
/// A square is `s` pixels wide and high, with s a hundred-twentieth of the film's shorter side, rounded, 2 at least.
/// The plate begins in the corner; the first sign two squares from its left and top. Signs stand 6 squares apart, each
/// line 10 squares under the one before. The first line is the film's frame, from 0, in six digits; the second its
/// timecode, which goes on in a third after its minutes where the film is too narrow for it. Where that is too wide or
/// too high as well, a square is a pixel. In the middle of a square it is lit or it isn't; from middle to middle it
/// goes straight, and what is over 0.42 is white: so strokes join, and programs that read print read them too.
final class Counter {
    static final int SIGN_ACROSS = 5;
    static final int SIGN_DOWN = 7;
    private static final int STEP = 6;
    private static final int LINE = 10;
    private static final int MARGIN = 2;
    private static final int SHARE = 120;
    private static final int SMALLEST = 2;
    private static final int LOOKS = 4;
    private static final double LIT = 0.42;

    /// So much of a timecode stands before its break.
    private static final int BROKEN = "00:00:".length();

    /// Rows of each sign from the top, five bits a row, the left one first.
    private static final String SIGNS = "0123456789:;";

    private static final int[][] ROWS = {
        {0b01110, 0b10001, 0b10001, 0b10001, 0b10001, 0b10001, 0b01110},
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

    private final int width;
    private final int square;
    private final boolean isBroken;

    /// Signs as they are seen, a square more on each side; how much of each pixel is white, of `LOOKS²`.
    private final int[][] signs;

    private Counter(int width, Form form) {
        this.width = width;
        square = form.square();
        isBroken = form.isBroken();
        signs = new int[SIGNS.length()][];
        for (int i = 0; i < signs.length; i++) {
            signs[i] = raster(ROWS[i]);
        }
    }

    /// How counters are set.
    private record Form(int square, boolean isBroken) {}

    /// The counters of a film, as large as it has room for; empty where it is too small for any.
    ///
    /// @param label one of its timecodes, where it has them; all are as long
    static Optional<Counter> of(int width, int height, Optional<String> label) {
        int wanted = Math.max(SMALLEST, Math.round(Math.min(width, height) / (float) SHARE));
        for (int square = wanted; square >= 1; square--) {
            for (Form form : List.of(new Form(square, false), new Form(square, true))) {
                List<String> lines = lines(0, label, form);
                if (square * squaresAcross(lines) <= width && square * squaresDown(lines) <= height) {
                    return Optional.of(new Counter(width, form));
                }
            }
        }
        return Optional.empty();
    }

    /// The smallest film that has room for them, such as `40x32`.
    static String smallest(Optional<String> label) {
        List<String> lines = lines(0, label, new Form(1, true));
        return even(squaresAcross(lines)) + "x" + even(squaresDown(lines));
    }

    private static int even(int pixels) {
        return pixels + pixels % 2;
    }

    private static int squaresAcross(List<String> lines) {
        return 2 * MARGIN + STEP * lines.stream().mapToInt(String::length).max().orElse(0) - 1;
    }

    private static int squaresDown(List<String> lines) {
        return 2 * MARGIN + LINE * (lines.size() - 1) + SIGN_DOWN;
    }

    private int across() {
        return (SIGN_ACROSS + 2) * square;
    }

    private int[] raster(int[] rows) {
        int[] cover = new int[across() * (SIGN_DOWN + 2) * square];
        for (int y = 0; y < (SIGN_DOWN + 2) * square * LOOKS; y++) {
            int row = Math.floorDiv(y, LOOKS) * across();
            for (int x = 0; x < across() * LOOKS; x++) {
                boolean isLit = light(rows, middle(x), middle(y)) >= LIT;
                cover[row + Math.floorDiv(x, LOOKS)] += isLit ? 1 : 0;
            }
        }
        return cover;
    }

    /// Where a look is, in squares from the middle of a sign's first.
    private double middle(int look) {
        return (look + 0.5) / (LOOKS * square) - 1.5;
    }

    /// How lit a sign is at a place, in squares from the middle of its first.
    private static double light(int[] rows, double x, double y) {
        int column = (int) Math.floor(x);
        int row = (int) Math.floor(y);
        double across = x - column;
        double down = y - row;
        return (1 - down) * ((1 - across) * lit(rows, column, row) + across * lit(rows, column + 1, row))
                + down * ((1 - across) * lit(rows, column, row + 1) + across * lit(rows, column + 1, row + 1));
    }

    private static int lit(int[] rows, int column, int row) {
        boolean isOnIt = column >= 0 && column < SIGN_ACROSS && row >= 0 && row < SIGN_DOWN;
        return isOnIt ? rows[row] >> SIGN_ACROSS - 1 - column & 1 : 0;
    }

    private static List<String> lines(long frame, Optional<String> label, Form form) {
        List<String> lines = new ArrayList<>(List.of(String.format(Locale.ROOT, "%06d", frame)));
        if (label.isPresent() && form.isBroken()) {
            lines.add(label.get().substring(0, BROKEN));
            lines.add(label.get().substring(BROKEN));
        } else {
            label.ifPresent(lines::add);
        }
        return lines;
    }

    /// Burns a frame's number and timecode in.
    void burn(long frame, Optional<String> label, int[] film) {
        List<String> lines = lines(frame, label, new Form(square, isBroken));
        int plateAcross = square * squaresAcross(lines);
        int plateDown = square * squaresDown(lines);
        for (int y = 0; y < plateDown; y++) {
            Arrays.fill(film, y * width, y * width + plateAcross, 0);
        }
        for (int line = 0; line < lines.size(); line++) {
            String text = lines.get(line);
            for (int i = 0; i < text.length(); i++) {
                burn(SIGNS.indexOf(text.charAt(i)), MARGIN - 1 + STEP * i, MARGIN - 1 + LINE * line, film);
            }
        }
    }

    private void burn(int sign, int column, int row, int[] film) {
        for (int i = 0; i < signs[sign].length; i++) {
            int x = column * square + i % across();
            int y = row * square + i / across();
            if (signs[sign][i] > 0) {
                film[y * width + x] = 0x010101 * Math.round(255F * signs[sign][i] / (LOOKS * LOOKS));
            }
        }
    }
}
