package plumeline.ink;

/// What the laws take from measurement, all dimensionless.
///
/// **Source:** puffs 0.25, 0.13 to 0.34: published thermals, from memory; streams 0.13, 0.10 to 0.16: published plumes,
/// from memory; front's share 0.6 (Bhamidipati and Woods 2017, abstract), 0.5 to 1.1 (Turner 1962 counts it from the
/// axis, twice the mean; from memory); push left after the surface 0.25 to all: our guess.
///
/// @param puffEntrainment a puff's radius over its way
/// @param addedMass water dragged along, share of a puff's own mass
/// @param streamEntrainment a plume's entrainment
/// @param frontShare a stream's front over the mean speed behind it
/// @param keptPush share of the push that is left after falling through the surface
public record Coefficients(
        double puffEntrainment, double addedMass, double streamEntrainment, double frontShare, double keptPush) {
    /// The usual ones.
    public static final Coefficients USUAL = new Coefficients(0.25, 0, 0.13, 0.6, 0.5);

    Coefficients withPuffEntrainment(double other) {
        return new Coefficients(other, addedMass, streamEntrainment, frontShare, keptPush);
    }

    Coefficients withAddedMass(double other) {
        return new Coefficients(puffEntrainment, other, streamEntrainment, frontShare, keptPush);
    }

    Coefficients withStreamEntrainment(double other) {
        return new Coefficients(puffEntrainment, addedMass, other, frontShare, keptPush);
    }

    Coefficients withFrontShare(double other) {
        return new Coefficients(puffEntrainment, addedMass, streamEntrainment, other, keptPush);
    }

    Coefficients withKeptPush(double other) {
        return new Coefficients(puffEntrainment, addedMass, streamEntrainment, frontShare, other);
    }
}
