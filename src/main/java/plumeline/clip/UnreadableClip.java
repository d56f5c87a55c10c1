package plumeline.clip;

/// A clip that no sound can be read from, and why.
final class UnreadableClip extends Exception {
    private static final long serialVersionUID = 1;

    private final String attempt;

    UnreadableClip(String given, String attempt) {
        super(given);
        this.attempt = attempt;
    }

    String given() {
        return String.valueOf(getMessage());
    }

    String attempt() {
        return attempt;
    }
}
