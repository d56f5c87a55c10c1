package plumeline.look;

import java.util.function.Function;
import plumeline.lit.Instant;
import plumeline.stage.Stage;

/// A look of a shot at an instant, with the shot's other looks at the same frame where they are asked for.
///
/// @param stage the look
/// @param now the instant in it
/// @param other gives the instant in another look
public record Looks(Stage stage, Instant now, Function<Stage, Instant> other) {}
