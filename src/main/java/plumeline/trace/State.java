package plumeline.trace;

/// What a ray is in.
final class State {
    /// The clear part whose wall or room it is in; −1 for none.
    int within;

    /// The substance.
    int medium;

    void set(int within, int medium) {
        this.within = within;
        this.medium = medium;
    }

    /// What a place is in.
    static State at(Ready ready, double x, double y, double z) {
        State state = new State();
        state.set(ready.partAt(x, y, z), ready.mediumAt(x, y, z));
        return state;
    }
}
