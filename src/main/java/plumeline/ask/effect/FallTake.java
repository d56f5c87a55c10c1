package plumeline.ask.effect;

import java.util.OptionalDouble;
import plumeline.fall.Fall;
import plumeline.fall.Medium;
import plumeline.fall.Packing;
import plumeline.fall.Piece;

/// What `fall` finds, in plain SI numbers.
final class FallTake {
    private FallTake() {}

    /// What is asked.
    ///
    /// @param piece the piece
    /// @param medium what it falls through
    /// @param heightMetres from the release to the frame's top edge
    /// @param field the frame
    /// @param camera how it is shot
    /// @param vessel what is filled
    record Inputs(Piece piece, Medium medium, double heightMetres, Field field, Camera camera, Vessel vessel) {
        Inputs withHeight(double metres) {
            return new Inputs(piece, medium, metres, field, camera, vessel);
        }
    }

    /// The frame at the piece.
    record Field(double heightMetres, double pixels) {}

    /// How it is shot.
    ///
    /// @param rate frames a second
    /// @param exposureSeconds exposure of a frame
    /// @param wantedFrames frames that it shall be in, where that was given
    record Camera(double rate, double exposureSeconds, OptionalDouble wantedFrames) {}

    /// What is filled.
    ///
    /// @param metres3 the vessel, where it was given
    /// @param count the pieces there are, where that was given
    record Vessel(OptionalDouble metres3, OptionalDouble count) {}

    /// How it went through the frame.
    sealed interface Pass {
        /// It fell through.
        record Through(double topMetresPerSecond, double bottomMetresPerSecond, double seconds) implements Pass {
            double fastest() {
                return Math.max(topMetresPerSecond, bottomMetresPerSecond);
            }
        }

        /// It floats.
        record Floats() implements Pass {}

        /// It goes faster than its drag is known.
        record Unknown() implements Pass {}
    }

    /// What was found.
    ///
    /// @param inputs what was asked
    /// @param usual with the usual drag
    /// @param slow with the most drag, four times in five
    /// @param fast with the least drag, likewise
    record Found(Inputs inputs, Pass usual, Pass slow, Pass fast) {}

    static Found answer(Inputs inputs) {
        return new Found(
                inputs,
                pass(inputs, 1),
                pass(inputs, inputs.piece.drag().highShare()),
                pass(inputs, inputs.piece.drag().lowShare()));
    }

    private static Pass pass(Inputs inputs, double dragShare) {
        Fall fall = new Fall(inputs.piece, inputs.medium, dragShare);
        if (fall.netNewtons() <= 0 || !fall.moves()) {
            return new Pass.Floats();
        }
        Fall.At top = fall.at(inputs.heightMetres);
        Fall.At bottom = fall.at(inputs.heightMetres + inputs.field.heightMetres());
        return fall.isKnownAt(bottom.metresPerSecond())
                ? new Pass.Through(top.metresPerSecond(), bottom.metresPerSecond(), bottom.seconds() - top.seconds())
                : new Pass.Unknown();
    }

    static double blurPixels(Inputs inputs, Pass.Through pass) {
        return pass.fastest() * inputs.camera.exposureSeconds() * inputs.field.pixels() / inputs.field.heightMetres();
    }

    static double pieces(Inputs inputs, double vesselMetres3, double share) {
        return Packing.pieces(vesselMetres3, inputs.piece.volumeMetres3(), share);
    }
}
