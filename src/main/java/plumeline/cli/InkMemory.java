package plumeline.cli;

/// How much of an ink's water fits into the memory that this program may use.
///
/// @param bytes the most that the program may use, bytes
record InkMemory(long bytes) {
    /// What a cell takes while a try runs, is put down and taken up again: 218 to 224 bytes, measured as the least heap
    /// in which 170,000, 580,000 and 1.3 million cells go through that, and a tenth more.
    private static final int RUN_BYTES = 240;

    /// What a cell takes while its film is looked at: two floats, its code and its packed code, and half as much again.
    private static final int LOOK_BYTES = 16;

    /// What the program itself takes; 13 MB measured.
    private static final long OWN_BYTES = 32L << 20;

    static InkMemory ofThisProgram() {
        return new InkMemory(Runtime.getRuntime().maxMemory());
    }

    /// The most cells that one try may have.
    long mostCells() {
        return Math.max(0, (bytes - OWN_BYTES) / RUN_BYTES);
    }

    /// How many tries may run at a time, 1 or more.
    int runsAtOnce(long cells, int threads) {
        return atOnce(cells * RUN_BYTES, threads);
    }

    /// How many films may be looked at at a time, 1 or more.
    int looksAtOnce(long cells, int threads) {
        return atOnce(cells * LOOK_BYTES, threads);
    }

    private int atOnce(long each, int threads) {
        return Math.clamp((bytes - OWN_BYTES) / each, 1, threads);
    }
}
