package plumeline.want;

import java.util.Optional;
import plumeline.plan.WantLine;

/// A want that this version reads and keeps, but can't judge.
///
/// @param line as written
/// @param reason what is missing
record NotComputed(WantLine line, String reason) implements Want {
    @Override
    public String unit() {
        return "1";
    }

    @Override
    public Optional<String> findUnknown() {
        return Optional.of(reason);
    }

    @Override
    public double[] parts(Moments moments) {
        return new double[0];
    }
}
