package plumeline.plume;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import plumeline.geom.Body;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Vec;

/// What tells whether something computed belongs to a shot as it stands: a hash of all that it was computed from.
///
/// Lengths count to a hundredth of a millimetre, angles to a millionth, everything else to a millionth of itself, so
/// that the last bits of what was solved don't matter.
///
/// @param hex SHA-256, 64 hexadecimal digits
public record InkKey(String hex) {
    /// Raised whenever the flow or the films would come out differently.
    private static final String EDITION = "ink 2";

    /// Checks the form.
    public InkKey {
        if (!hex.matches("[0-9a-f]{64}")) {
            throw new IllegalArgumentException("a key has 64 hexadecimal digits, given " + hex);
        }
    }

    /// The first digits, for a folder's name.
    ///
    /// @return 12 hexadecimal digits
    public String brief() {
        return hex.substring(0, 12);
    }

    /// The key of what decides the flow: tank and water, ink, nozzle and each ±, what is in the water, the rate of
    /// frames.
    ///
    /// @param shot the shot's ink and water
    /// @return the key
    public static InkKey ofFlow(InkShot shot) {
        var text = new Text();
        text.place(shot.waters().box().low()).place(shot.waters().box().high());
        text.number(shot.waters().viscosityMetres2PerSecond())
                .number(shot.waters().sinkingMetresPerSecond2());
        text.place(shot.pour().mouth())
                .length(shot.pour().boreMetres())
                .number(shot.pour().metres3PerSecond());
        text.number(shot.pour().startSeconds()).number(shot.pour().endSeconds());
        for (InkShot.Thing thing : shot.things()) {
            text.body(thing.body());
        }
        for (InkShot.Spread spread : shot.spreads()) {
            text.word(spread.name()).number(spread.value().si()).number(spread.halfWidthSi());
        }
        return text.number(shot.timing().framesPerSecond()).key();
    }

    /// The key of a shot's runs: the flow's, how finely and how long it is followed. How many runs there are is none of
    /// it: more can join.
    ///
    /// @param shot the shot's ink and water
    /// @param course how finely and how long
    /// @return the key
    public static InkKey ofRuns(InkShot shot, InkCourse course) {
        var text = new Text();
        text.word(ofFlow(shot).hex()).length(course.cellMetres()).word("seed " + course.seed());
        return switch (course.until()) {
            case InkCourse.Until.Time(double seconds) -> text.number(seconds).key();
            case InkCourse.Until.ShotAndFloor() ->
                text.word("floor and a fifth")
                        .number(shot.timing().shotSeconds())
                        .key();
        };
    }

    /// A text of numbers, hashed in the end.
    static final class Text {
        private final StringBuilder text = new StringBuilder(EDITION);

        Text word(String word) {
            text.append('\n').append(word);
            return this;
        }

        Text length(double metres) {
            return word("" + Math.round(metres * 1e5));
        }

        Text angle(double radians) {
            return word("" + Math.round(radians * 1e6));
        }

        Text number(double value) {
            return word(value == 0 ? "0" : String.format(java.util.Locale.ROOT, "%.5e", value));
        }

        Text place(Vec place) {
            return length(place.x()).length(place.y()).length(place.z());
        }

        Text body(Body body) {
            switch (body.solid()) {
                case Solid.Revolved round ->
                    round.stations().forEach(at -> length(at.heightMetres()).length(at.radiusMetres()));
                case Solid.Box box ->
                    length(box.widthMetres()).length(box.depthMetres()).length(box.heightMetres());
            }
            Pose pose = body.pose();
            return word("at").place(pose.base()).angle(pose.turnRadians()).angle(pose.leanRadians());
        }

        InkKey key() {
            try {
                byte[] hash = MessageDigest.getInstance("SHA-256")
                        .digest(text.toString().getBytes(UTF_8));
                return new InkKey(HexFormat.of().formatHex(hash));
            } catch (NoSuchAlgorithmException e) {
                throw new IllegalStateException("every Java has SHA-256", e);
            }
        }
    }
}
