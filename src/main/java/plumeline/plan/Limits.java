package plumeline.plan;

/// How much a plan may hold. Far above any film of a minute, far below what would hang a program.
final class Limits {
    static final int SHOTS = 200;
    static final int CUTS = 2000;
    static final int WANTS = 200;
    /// Things, lamps, moves or passes of a shot, each.
    static final int IN_SHOT = 100;
    /// Things, variants of a thing, or pieces of kit of a sort.
    static final int SORT = 500;
    /// Shots with their passes: each pass is read as a shot of its own.
    static final int READINGS = 1000;

    private Limits() {}
}
