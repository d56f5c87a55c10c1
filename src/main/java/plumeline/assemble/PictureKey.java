package plumeline.assemble;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import plumeline.plan.Plan;
import plumeline.stage.Stage;
import plumeline.text.Node;

/// What tells whether a picture belongs to a shot as it stands: a hash of all that decides it. Titles, cuts, sounds and
/// other shots are none of it.
///
/// @param hex SHA-256, 64 hexadecimal digits
public record PictureKey(String hex) {
    /// Raised whenever pictures would come out differently.
    private static final String EDITION = "picture 2";

    /// Parts of a plan that any shot may rest on.
    private static final List<String> SHARED = List.of("things", "kit");

    /// Gives what decides all pictures of a shot's pass.
    ///
    /// @param plan the plan
    /// @param stage the shot or pass, staged
    /// @param values its marks' values, SI, in the stage's order
    /// @param beside what lies beside the plan and is seen: prints and films of ink, as digests
    /// @return the key
    static PictureKey of(Plan plan, Stage stage, double[] values, String beside) {
        Text text = new Text().word(EDITION).word(stage.pass()).word(beside);
        for (String part : SHARED) {
            plan.source().root().find(part).ifPresent(text::node);
        }
        plan.source()
                .root()
                .find("shots")
                .filter(Node.Mapping.class::isInstance)
                .flatMap(shots -> ((Node.Mapping) shots).find(stage.shot().name()))
                .ifPresent(text::node);
        text.word(plan.film().exactRate().toText()).word(Long.toString(stage.frames()));
        text.word(plan.source().measured());
        Map<String, String> files = new TreeMap<>(plan.source().files());
        files.forEach((lamp, bytes) -> text.word(lamp).word(bytes));
        for (double value : values) {
            text.word(Double.toHexString(value));
        }
        return text.key();
    }

    /// Gives what decides one picture of it.
    ///
    /// @param wanted the picture
    /// @param openSeconds how long its shutter is open
    /// @param samples rays a pixel
    /// @param seed draws their places
    /// @return the key
    PictureKey of(Wanted wanted, double openSeconds, int samples, long seed) {
        return new Text()
                .word(hex)
                .word(Double.toHexString(wanted.realSeconds()))
                .word(Double.toHexString(openSeconds))
                .word(wanted.view().name())
                .word(Integer.toString(samples))
                .word(Long.toString(seed))
                .key();
    }

    /// Words, each with its length before it, hashed in the end.
    private static final class Text {
        private final StringBuilder text = new StringBuilder();

        Text word(String word) {
            text.append(word.length()).append(':').append(word);
            return this;
        }

        /// A part of the plan, wherever it stands in the text.
        Text node(Node node) {
            switch (node) {
                case Node.Scalar scalar -> word(scalar.text());
                case Node.Sequence list -> {
                    text.append('[');
                    list.items().forEach(this::node);
                    text.append(']');
                }
                case Node.Mapping map -> {
                    text.append('{');
                    map.entries().forEach(entry -> word(entry.key()).node(entry.value()));
                    text.append('}');
                }
            }
            return this;
        }

        PictureKey key() {
            try {
                MessageDigest digest = MessageDigest.getInstance("SHA-256");
                return new PictureKey(
                        HexFormat.of().formatHex(digest.digest(text.toString().getBytes(UTF_8))));
            } catch (NoSuchAlgorithmException e) {
                throw new IllegalStateException("every Java has SHA-256", e);
            }
        }
    }
}
