package plumeline.pace;

import java.util.Optional;

/// What a gauge of a thing in the picture has in common with others: its index, its name, and what keeps it from being
/// measured.
///
/// @param index its index in the scene's things
/// @param name its name in the shot
record Subject(int index, String name) {
    /// What a part reads where the thing is behind the lens.
    static final double BEHIND = -1000;

    Optional<String> findUnknown(Paced at) {
        return findTimeless(at).or(() -> findUncovered(at));
    }

    /// A move that has a way and no time for it.
    static Optional<String> findTimeless(Paced at) {
        return at.stage().shot().moves().stream()
                .filter(move -> move.travel().isPresent() && move.findTime().isEmpty())
                .findFirst()
                .map(move -> "Not known: in which time " + move.name() + " goes. Write `in`, or `keys`.");
    }

    private Optional<String> findUncovered(Paced at) {
        return at.now()
                        .lines()
                        .at(java.util.List.of(at.now().things().get(index)))
                        .isCovered()
                ? Optional.empty()
                : Optional.of("Not computed: " + name + " is seen through more than the tank's front.");
    }

    Optional<String> findLack(Paced at) {
        return Shift.isBefore(at.now(), index) ? Optional.empty() : Optional.of(name + " isn't before the lens.");
    }
}
