package plumeline.lit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import plumeline.geom.Vec;
import plumeline.light.Glow;
import plumeline.light.Panel;
import plumeline.light.Patch;

/// What falls on a card, from place to place on it, lx: known at 9 by 9 places, between them by the parabola through
/// three.
///
/// @param card the card's front
/// @param lux at the places, row by row from below, each from its own left
record CardGlow(Panel card, List<Double> lux) implements Glow {
    private static final int EACH_WAY = 9;

    CardGlow {
        lux = List.copyOf(lux);
    }

    /// Asks what falls on a card.
    static CardGlow of(Panel card, ToDoubleFunction<Patch> fallen) {
        List<Double> lux = new ArrayList<>();
        for (int row = 0; row < EACH_WAY; row++) {
            for (int column = 0; column < EACH_WAY; column++) {
                lux.add(fallen.applyAsDouble(
                        patch(card, (double) column / (EACH_WAY - 1), (double) row / (EACH_WAY - 1))));
            }
        }
        return new CardGlow(card, lux);
    }

    /// Gives a place on it, from its left edge to its right one and from its lower edge to its upper, shares of one.
    static Patch patch(Panel card, double across, double along) {
        Vec place = card.middle()
                .plus(card.right().times((across - 0.5) * card.widthMetres()))
                .plus(card.up().times((along - 0.5) * card.heightMetres()));
        return new Patch(place, card.facing());
    }

    @Override
    public double share(Vec place, Vec toward) {
        Vec out = place.minus(card.middle());
        Course across = Course.at(out.dot(card.right()) / card.widthMetres() + 0.5);
        Course along = Course.at(out.dot(card.up()) / card.heightMetres() + 0.5);
        double sum = 0;
        for (int row = 0; row < 3; row++) {
            for (int column = 0; column < 3; column++) {
                sum += along.weight(row)
                        * across.weight(column)
                        * lux.get((along.first() + row) * EACH_WAY + across.first() + column);
            }
        }
        return Math.max(0, sum);
    }

    /// Three places, and how far between them.
    private record Course(int first, double way) {
        static Course at(double share) {
            double at = Math.clamp(share, 0, 1) * (EACH_WAY - 1);
            int first = 2 * Math.min((int) (at / 2), (EACH_WAY - 3) / 2);
            return new Course(first, at - first);
        }

        double weight(int index) {
            return switch (index) {
                case 0 -> (way - 1) * (way - 2) / 2;
                case 1 -> way * (2 - way);
                default -> way * (way - 1) / 2;
            };
        }
    }
}
