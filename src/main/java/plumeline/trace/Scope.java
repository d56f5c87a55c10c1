package plumeline.trace;

/// What rays of a bundle may meet: all, or only what is not wholly beside the bundle. It is filled again and again.
final class Scope {
    /// Opaque sheets, by their place among a crowd's.
    final int[] sheets;

    /// Other opaque parts, by their place in a crowd's order.
    final int[] solids;

    /// Clear parts.
    final int[] clear;

    /// Lights.
    final int[] lights;

    int sheetCount;
    int solidCount;
    int clearCount;
    int lightCount;
    boolean hasBasin;

    Scope(int sheets, int solids, int clear, int lights) {
        this.sheets = new int[sheets];
        this.solids = new int[solids];
        this.clear = new int[clear];
        this.lights = new int[lights];
    }

    /// Whether nothing may be met, but lights.
    boolean isEmpty() {
        return sheetCount + solidCount + clearCount == 0 && !hasBasin;
    }

    /// Forgets all.
    void clear() {
        sheetCount = 0;
        solidCount = 0;
        clearCount = 0;
        lightCount = 0;
        hasBasin = false;
    }

    /// Makes another of the same size the same.
    void copyTo(Scope other) {
        System.arraycopy(sheets, 0, other.sheets, 0, sheetCount);
        System.arraycopy(solids, 0, other.solids, 0, solidCount);
        System.arraycopy(clear, 0, other.clear, 0, clearCount);
        System.arraycopy(lights, 0, other.lights, 0, lightCount);
        other.sheetCount = sheetCount;
        other.solidCount = solidCount;
        other.clearCount = clearCount;
        other.lightCount = lightCount;
        other.hasBasin = hasBasin;
    }
}
