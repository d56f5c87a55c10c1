package plumeline.flow;

import java.util.Arrays;

/// The orthonormal cosine transform (DCT-II) of rows of numbers, many at a time.
///
/// The values of a batch lie in rows: row i holds value i of all its members. What is even about the middle gives the
/// even frequencies, which are a transform of half the length, and so on; what is odd gives the odd ones by a matrix,
/// which is its own inverse. So the work is a third of that of a whole matrix, and rounding stays that of one. The
/// frequencies come out in the order in which they fall off, not sorted.
///
/// **Source:** W.-H. Chen, C. Smith and S. Fralick, "A fast computational algorithm for the discrete cosine transform",
/// IEEE Trans. Communications 25 (1977), the split into halves (from memory).
final class CosineTransform {
    private static final float HALVES = (float) Math.sqrt(0.5);
    private static final int TOGETHER = 4;

    private final int length;
    private final int[] frequency;

    /// Of each halving, from the whole length down, the matrix of the odd half; last that of what can't be halved.
    private final float[][] odd;

    private final float[] rest;
    private final float[] restBack;
    private final int restLength;

    CosineTransform(int length) {
        this.length = length;
        int halvings = Integer.numberOfTrailingZeros(length);
        this.odd = new float[halvings][];
        this.frequency = new int[length];
        int size = length;
        for (int level = 0; level < halvings; level++) {
            size /= 2;
            odd[level] = oddMatrix(size);
            for (int m = 0; m < size; m++) {
                frequency[size + m] = (2 * m + 1) << level;
            }
        }
        this.restLength = size;
        this.rest = matrix(size);
        this.restBack = new float[size * size];
        for (int m = 0; m < size; m++) {
            frequency[m] = m << halvings;
            for (int i = 0; i < size; i++) {
                restBack[i * size + m] = rest[m * size + i];
            }
        }
    }

    /// The frequency that a row holds after the transform: how many half waves fit in the length.
    int frequency(int row) {
        return frequency[row];
    }

    private static float[] oddMatrix(int size) {
        float[] matrix = new float[size * size];
        for (int m = 0; m < size; m++) {
            for (int i = 0; i < size; i++) {
                double angle = Math.PI * (2 * m + 1) * (2 * i + 1) / (4 * size);
                matrix[m * size + i] = (float) (Math.sqrt(2.0 / size) * StrictMath.cos(angle));
            }
        }
        return matrix;
    }

    private static float[] matrix(int size) {
        float[] matrix = new float[size * size];
        for (int m = 0; m < size; m++) {
            double weight = Math.sqrt((m == 0 ? 1.0 : 2.0) / size);
            for (int i = 0; i < size; i++) {
                matrix[m * size + i] = (float) (weight * StrictMath.cos(Math.PI * m * (2 * i + 1) / (2 * size)));
            }
        }
        return matrix;
    }

    /// Transforms in place.
    ///
    /// @param rows `length` rows of as many numbers as are transformed at a time
    /// @param spare as many rows as long; their contents are lost
    void forward(float[][] rows, float[][] spare) {
        int size = length;
        for (float[] matrix : odd) {
            int half = size / 2;
            fold(rows, spare, half);
            for (int i = 0; i < half; i++) {
                copy(spare[i], rows[i]);
            }
            multiply(matrix, half, spare, rows, half);
            size = half;
        }
        for (int i = 0; i < size; i++) {
            copy(rows[i], spare[i]);
        }
        multiply(rest, size, spare, rows, 0);
    }

    /// Takes the transform back, in place.
    void back(float[][] rows, float[][] spare) {
        int size = restLength;
        for (int i = 0; i < size; i++) {
            copy(rows[i], spare[i]);
        }
        multiply(restBack, size, spare, rows, 0);
        for (int level = odd.length - 1; level >= 0; level--) {
            multiply(odd[level], size, rows, spare, size);
            for (int i = 0; i < size; i++) {
                copy(rows[i], spare[i]);
            }
            unfold(rows, spare, size);
            size *= 2;
        }
    }

    private static void copy(float[] from, float[] to) {
        System.arraycopy(from, 0, to, 0, from.length);
    }

    private static void fold(float[][] rows, float[][] spare, int half) {
        for (int i = 0; i < half; i++) {
            cross(rows[i], rows[2 * half - 1 - i], spare[i], spare[half + i]);
        }
    }

    private static void unfold(float[][] rows, float[][] spare, int half) {
        for (int i = 0; i < half; i++) {
            cross(spare[i], spare[half + i], rows[i], rows[2 * half - 1 - i]);
        }
    }

    /// Sum and difference of two rows.
    private static void cross(float[] one, float[] other, float[] sum, float[] difference) {
        for (int n = 0; n < one.length; n++) {
            sum[n] = HALVES * (one[n] + other[n]);
            difference[n] = HALVES * (one[n] - other[n]);
        }
    }

    /// Rows of `to` = matrix times rows of `from`, both from row `first` on.
    private static void multiply(float[] matrix, int size, float[][] from, float[][] to, int first) {
        for (int m = 0; m < size; m++) {
            float[] row = to[first + m];
            Arrays.fill(row, 0);
            int entry = m * size;
            int i = 0;
            for (; i + TOGETHER <= size; i += TOGETHER) {
                addFour(row, from, first + i, matrix, entry + i);
            }
            for (; i < size; i++) {
                addOne(row, from[first + i], matrix[entry + i]);
            }
        }
    }

    /// Each row is an array of its own: only so does the compiler know that they don't overlap, and takes many numbers
    /// at a time.
    private static void addFour(float[] to, float[][] from, int first, float[] matrix, int entry) {
        float a = matrix[entry];
        float b = matrix[entry + 1];
        float c = matrix[entry + 2];
        float d = matrix[entry + 3];
        float[] one = from[first];
        float[] two = from[first + 1];
        float[] three = from[first + 2];
        float[] four = from[first + 3];
        for (int n = 0; n < to.length; n++) {
            to[n] += a * one[n] + b * two[n] + c * three[n] + d * four[n];
        }
    }

    private static void addOne(float[] to, float[] from, float entry) {
        for (int n = 0; n < to.length; n++) {
            to[n] += entry * from[n];
        }
    }
}
