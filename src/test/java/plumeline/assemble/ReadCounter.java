package plumeline.assemble;

import java.util.List;

/// Reads burnt-in counters back by nothing but what their form says: a seven-line drawing of each sign, of which the
/// nearest is taken.
public final class ReadCounter {
    private static final String SIGNS = "0123456789:;";

    /// Signs as they are looked for, side by side, drawn once more by hand.
    private static final String[] DRAWN = {
        " ###    #    ###  #####    #  #####   ##  #####  ###   ###              ",
        "#   #  ##   #   #    #    ##  #      #        # #   # #   #   #     #   ",
        "#   #   #       #   #    # #  ####  #        #  #   # #   #   #     #   ",
        "#   #   #      #     #  #  #      # ####    #    ###   ####             ",
        "#   #   #     #       # #####     # #   #  #    #   #     #   #     #   ",
        "#   #   #    #    #   #    #  #   # #   #  #    #   #    #    #     #   ",
        " ###   ###  #####  ###     #   ###   ###   #     ###   ##          #    ",
    };

    private ReadCounter() {}

    /// A picture's brightness.
    @FunctionalInterface
    public interface Brightness {
        /// Gives it at a pixel, 0 to 255.
        int at(int x, int y);
    }

    /// Reads number and timecode; the timecode's lines joined where it is broken.
    public static List<String> lines(Brightness picture, int width, int height) {
        int square = Math.max(2, Math.round(Math.min(width, height) / 120F));
        while (square > 1 && !isUnbroken(square, width, height) && !isBroken(square, width, height)) {
            square--;
        }
        String number = line(picture, square, 0, 6);
        return isUnbroken(square, width, height)
                ? List.of(number, line(picture, square, 1, 11))
                : List.of(number, line(picture, square, 1, 6) + line(picture, square, 2, 5));
    }

    private static boolean isUnbroken(int square, int width, int height) {
        return 69 * square <= width && 21 * square <= height;
    }

    private static boolean isBroken(int square, int width, int height) {
        return 39 * square <= width && 31 * square <= height;
    }

    private static String line(Brightness picture, int square, int line, int signs) {
        StringBuilder text = new StringBuilder();
        for (int sign = 0; sign < signs; sign++) {
            text.append(sign(picture, square, 2 + 6 * sign, 2 + 10 * line));
        }
        return text.toString();
    }

    private static char sign(Brightness picture, int square, int column, int row) {
        int best = -1;
        int least = Integer.MAX_VALUE;
        for (int i = 0; i < SIGNS.length(); i++) {
            int wrong = 0;
            for (int y = 0; y < 7; y++) {
                for (int x = 0; x < 5; x++) {
                    int bright = picture.at((column + x) * square + square / 2, (row + y) * square + square / 2);
                    wrong += bright > 127 == (DRAWN[y].charAt(6 * i + x) == '#') ? 0 : 1;
                }
            }
            if (wrong < least) {
                least = wrong;
                best = i;
            }
        }
        return SIGNS.charAt(best);
    }
}
