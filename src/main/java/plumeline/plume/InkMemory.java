package plumeline.plume;

/// How much of an ink's water fits into memory.
///
/// @param bytes the most that the program may use, bytes
public record InkMemory(long bytes) {
    /// What a cell takes while a try runs, is put down and taken up again: 218 to 224 bytes, measured as the least heap
    /// in which 170,000, 580,000 and 1.3 million cells go through that, and a tenth more.
    private static final int RUN_BYTES = 240;

    /// What a cell takes while its film is looked at: two floats, its code and its packed code, and half as much again.
    private static final int LOOK_BYTES = 16;

    /// What the program itself takes; 13 MB measured.
    private static final long OWN_BYTES = 32L << 20;

    /// The most cells that one try may have.
    ///
    /// @return cells
    public long mostCells() {
        return Math.max(0, (bytes - OWN_BYTES) / RUN_BYTES);
    }

    /// How many tries may run at a time.
    ///
    /// @param cells how many cells each has, > 0
    /// @param threads how many threads there are, 1 or more
    /// @return 1 to `threads`
    public int runsAtOnce(long cells, int threads) {
        return atOnce(cells * RUN_BYTES, threads);
    }

    /// How many films may be looked at at a time.
    ///
    /// @param cells how many cells each has, > 0
    /// @param threads how many threads there are, 1 or more
    /// @return 1 to `threads`
    public int looksAtOnce(long cells, int threads) {
        return atOnce(cells * LOOK_BYTES, threads);
    }

    private int atOnce(long each, int threads) {
        return Math.clamp((bytes - OWN_BYTES) / each, 1, threads);
    }
}
