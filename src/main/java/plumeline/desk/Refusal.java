package plumeline.cli;

/// What was asked for cannot be done as it was asked: a wrong argument, a file that is not there. Ends the command with
/// status 2. The message says what is wrong; the attempt says what to do instead.
final class Refusal extends Exception {
    private static final long serialVersionUID = 1L;

    private final String attempt;

    Refusal(String message, String attempt) {
        super(message, null, false, false);
        this.attempt = attempt;
    }

    String attempt() {
        return attempt;
    }
}
