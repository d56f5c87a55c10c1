package plumeline.flow;

/// Rows of fields laid side by side in arrays of their own.
///
/// A loop over several of them at the same place works on many numbers at a time; one that reaches to and fro in a
/// single array doesn't, as the compiler can't know what it will overwrite. Copying a row costs a fifth of what that
/// saves.
final class Rows {
    private final float[][] rows;

    Rows(int count, int length) {
        this.rows = new float[count][length];
    }

    float[] get(int row) {
        return rows[row];
    }

    /// Copies a row's worth of a field that begins at a place.
    float[] load(int row, float[] field, int first) {
        System.arraycopy(field, first, rows[row], 0, rows[row].length);
        return rows[row];
    }

    /// Copies a row back into a field.
    void store(int row, float[] field, int first) {
        System.arraycopy(rows[row], 0, field, first, rows[row].length);
    }
}
