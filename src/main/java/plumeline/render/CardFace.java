package plumeline.render;

import java.util.Optional;
import plumeline.geom.Vec;
import plumeline.light.Glow;
import plumeline.light.Panel;
import plumeline.lit.Shine;
import plumeline.scenery.Light;

/// A card that shines by what falls on it: evenly where that differs little, else from place to place.
final class CardFace {
    /// A card is taken as even where no place differs by more from its mean: about an eighth of a stop.
    private static final double EVEN_SHARE = 0.08;

    /// Places each way that are asked.
    private static final int EACH_WAY = 5;

    private CardFace() {}

    static Light.Source.Face of(Shine.Face card) {
        Panel face = (Panel) card.emitter();
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        double sum = 0;
        for (int i = 0; i < EACH_WAY * EACH_WAY; i++) {
            double there = card.glow().share(place(face, i % EACH_WAY, i / EACH_WAY), face.facing());
            least = Math.min(least, there);
            most = Math.max(most, there);
            sum += weight(i % EACH_WAY) * weight(i / EACH_WAY) * there;
        }
        return most - sum <= EVEN_SHARE * sum && sum - least <= EVEN_SHARE * sum
                ? new Light.Source.Face(face.withLuminance(face.luminance() * sum), Glow.even(), Optional.empty())
                : new Light.Source.Face(face, card.glow(), Optional.empty());
    }

    private static Vec place(Panel face, int column, int row) {
        return face.middle()
                .plus(face.right().times(((double) column / (EACH_WAY - 1) - 0.5) * face.widthMetres()))
                .plus(face.up().times(((double) row / (EACH_WAY - 1) - 0.5) * face.heightMetres()));
    }

    /// Simpson's rule over five places.
    private static double weight(int index) {
        return (index % 2 == 1 ? 4 : index == 2 ? 2 : 1) / 12.0;
    }
}
