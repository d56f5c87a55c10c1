package plumeline.pace;

import java.util.Optional;
import plumeline.stage.Gauge;

/// A gauge of a thing in the picture, which rests on where things and camera stand.
interface PictureGauge extends Gauge<Paced> {
    /// The thing that is measured.
    Subject subject();

    @Override
    default Optional<String> findUnknown(Paced at) {
        return subject().findUnknown(at);
    }

    @Override
    default Optional<String> findLack(Paced at) {
        return subject().findLack(at);
    }

    @Override
    default boolean restsOnMarks() {
        return true;
    }
}
