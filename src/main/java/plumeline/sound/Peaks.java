package plumeline.sound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/// A sound's highest sample, and the highest that it comes to between its samples.
///
/// Between samples it is a sinc over 48 of them, windowed by Kaiser's window (β = 6), at eight places a sample. It is
/// flat within 0.01 dB to 0.45 of the rate (21.6 kHz at 48 kHz). A tone's peak may lie between two of the places: by
/// `20 log₁₀ cos(π f / 8)` at most, f its frequency over the rate: 0.14 dB at 0.45, 0.03 dB at 0.2; a meter that looks
/// at four reads 0.55 dB less at 0.45.
///
/// To be quick, it looks at one place between any two samples first. A bandlimited sound that nowhere exceeds P is at
/// least `P cos(π/4)` at a place within a quarter of a sample of where it reaches P (R. J. Duffin and A. C. Schaeffer);
/// so only the neighbours of places not far below the highest are looked at closely.
///
/// **Source:** ITU-R BS.1770-5, Annex 2 and its Attachment 1 (what is asked, under-reading); the window: J. F. Kaiser,
/// 1974, from memory.
///
/// @param truePeak dBTP
/// @param samplePeak dBFS
record Peaks(Level truePeak, Level samplePeak) {
    private static final int SIDE = 24;
    private static final int PLACES = 8;
    private static final double BETA = 6;
    private static final int BLOCK = 1 << 14;

    /// Share of the highest from which on places are looked at closely; cos(π/4) is 0.707.
    private static final double CLOSE = 0.65;

    static Peaks of(Sound sound) {
        Search search = new Search(sound);
        double sample = search.walk();
        double truePeak = search.walkClosely();
        return new Peaks(level(truePeak), level(sample));
    }

    private static Level level(double peak) {
        return peak > 0 ? new Level.At(20 * StrictMath.log10(peak)) : new Level.None(Level.Missing.SOUND);
    }

    /// Weights of the 48 samples round a place that lies so far from the one before it.
    ///
    /// @param share of the way to the next sample, 0 to 1
    static double[] weights(double share) {
        double[] weights = new double[2 * SIDE];
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            double from = i - (SIDE - 1) - share;
            double along = from / SIDE;
            double sinc = from == 0 ? 1 : StrictMath.sin(Math.PI * from) / (Math.PI * from);
            double inside = Math.max(0, 1 - along * along);
            weights[i] = sinc * bessel(BETA * StrictMath.sqrt(inside)) / bessel(BETA);
            sum += weights[i];
        }
        for (int i = 0; i < weights.length; i++) {
            weights[i] /= sum;
        }
        return weights;
    }

    /// Modified Bessel function of the first kind, order 0.
    private static double bessel(double x) {
        double sum = 1;
        double term = 1;
        for (int k = 1; term > 1e-18 * sum; k++) {
            term *= x / (2 * k) * (x / (2 * k));
            sum += term;
        }
        return sum;
    }

    private static final class Search {
        private final Sound sound;
        private final double[][] rows;
        private final double[][] places = new double[PLACES - 1][];

        /// Half of the middle place's weights, which are even.
        private final double[] middle = new double[SIDE];

        /// What is highest round each block, at samples and middle places.
        private final List<Double> blocks = new ArrayList<>();

        private double highest;

        Search(Sound sound) {
            this.sound = sound;
            rows = new double[sound.speakers().size()][BLOCK + 2 * SIDE];
            for (int p = 1; p < PLACES; p++) {
                places[p - 1] = weights((double) p / PLACES);
            }
            System.arraycopy(places[PLACES / 2 - 1], SIDE, middle, 0, SIDE);
        }

        /// Looks at samples and middle places; gives the highest sample.
        double walk() {
            double sample = 0;
            for (long first = -SIDE; first < sound.samples() + SIDE; first += BLOCK) {
                fill(first);
                double block = 0;
                for (double[] row : rows) {
                    double own = 0;
                    for (int i = 0; i < BLOCK; i++) {
                        own = Math.max(own, Math.abs(row[i + SIDE]));
                    }
                    sample = Math.max(sample, own);
                    block = Math.max(block, own);
                    if (own > 0 || anyAround(row)) {
                        for (int i = 0; i < BLOCK; i++) {
                            block = Math.max(block, Math.abs(middle(row, i)));
                        }
                    }
                }
                blocks.add(block);
                highest = Math.max(highest, block);
            }
            return sample;
        }

        /// Looks closely where it may be highest.
        double walkClosely() {
            double enough = CLOSE * highest;
            for (int block = 0; highest > 0 && block < blocks.size(); block++) {
                if (blocks.get(block) >= enough) {
                    fill((long) block * BLOCK - SIDE);
                    for (double[] row : rows) {
                        lookClosely(row, enough);
                    }
                }
            }
            return highest;
        }

        private void lookClosely(double[] row, double enough) {
            for (int i = 0; i < BLOCK; i++) {
                boolean near = Math.abs(row[i + SIDE]) >= enough
                        || Math.abs(row[i + SIDE + 1]) >= enough
                        || Math.abs(middle(row, i)) >= enough;
                for (int p = 1; near && p < PLACES; p++) {
                    if (2 * p != PLACES) {
                        highest = Math.max(highest, Math.abs(at(row, i, places[p - 1])));
                    }
                }
            }
        }

        /// The place half-way from a block's sample i to the next.
        private double middle(double[] row, int i) {
            double sum = 0;
            int left = i + SIDE;
            for (int k = 0; k < SIDE; k++) {
                sum += middle[k] * (row[left - k] + row[left + 1 + k]);
            }
            return sum;
        }

        private static double at(double[] row, int i, double[] weights) {
            double sum = 0;
            for (int k = 0; k < weights.length; k++) {
                sum += weights[k] * row[i + 1 + k];
            }
            return sum;
        }

        private static boolean anyAround(double[] row) {
            for (int i = 0; i < SIDE; i++) {
                if (row[i] != 0 || row[row.length - 1 - i] != 0) {
                    return true;
                }
            }
            return false;
        }

        /// Puts samples first − 24 up to first + block + 24 into the rows; nothing sounds before the sound and after
        /// it.
        private void fill(long first) {
            long from = Math.max(0, first - SIDE);
            long to = Math.min(sound.samples(), first + BLOCK + SIDE);
            int at = (int) (from - (first - SIDE));
            int count = (int) Math.max(0, to - from);
            double[][] read = new double[rows.length][count];
            sound.read(from, count, read);
            for (int channel = 0; channel < rows.length; channel++) {
                Arrays.fill(rows[channel], 0);
                System.arraycopy(read[channel], 0, rows[channel], at, count);
            }
        }
    }
}
