package plumeline.lit;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.ToDoubleFunction;
import plumeline.geom.Vec;
import plumeline.light.Glow;
import plumeline.light.Panel;
import plumeline.light.Patch;

/// What falls on a card, from place to place on it, lx: known at 9 by 9 places, between them by the parabola through
/// three. Where parabolas through every other place tell the one between four of them to 0.3 % of the brightest, they
/// tell the rest too.
///
/// It is asked for when it is first needed: what is turned away from a card needs it never. Equal is what is equally
/// lit. For one thread.
final class CardGlow implements Glow {
    private static final int EACH_WAY = 9;

    /// A quarter of the places has so many each way.
    private static final int QUARTER = 5;

    private static final double TOLD_SHARE = 0.003;

    private final Panel card;
    private final ToDoubleFunction<Patch> fallen;
    private List<Double> lux = List.of();

    /// Makes it for a card.
    ///
    /// @param card the card's front
    /// @param fallen gives what falls on a place of it, lx
    CardGlow(Panel card, ToDoubleFunction<Patch> fallen) {
        this.card = card;
        this.fallen = fallen;
    }

    /// What falls on the places, row by row from below, each from its own left.
    private List<Double> lux() {
        if (lux.isEmpty()) {
            lux = new Asked().all();
        }
        return lux;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CardGlow glow && card.equals(glow.card) && lux().equals(glow.lux());
    }

    @Override
    public int hashCode() {
        return lux().hashCode();
    }

    /// The places as they are asked.
    private final class Asked {
        private final Double[] lux = new Double[EACH_WAY * EACH_WAY];

        List<Double> all() {
            for (int row = 0; row < EACH_WAY; row += 2) {
                for (int column = 0; column < EACH_WAY; column += 2) {
                    ask(row, column);
                }
            }
            double most = Arrays.stream(lux)
                    .filter(Objects::nonNull)
                    .max(Double::compare)
                    .orElseThrow();
            for (int row = 0; row + QUARTER <= EACH_WAY; row += QUARTER - 1) {
                for (int column = 0; column + QUARTER <= EACH_WAY; column += QUARTER - 1) {
                    fill(row, column, TOLD_SHARE * most);
                }
            }
            return List.of(lux);
        }

        private void fill(int firstRow, int firstColumn, double near) {
            boolean isTold = true;
            for (int row = 1; row < QUARTER; row += 2) {
                for (int column = 1; column < QUARTER; column += 2) {
                    double asked = ask(firstRow + row, firstColumn + column);
                    isTold &= Math.abs(asked - told(firstRow, firstColumn, row, column)) <= near;
                }
            }
            for (int row = 0; row < QUARTER; row++) {
                for (int column = 0; column < QUARTER; column++) {
                    int index = (firstRow + row) * EACH_WAY + firstColumn + column;
                    if (lux[index] == null) {
                        lux[index] = isTold
                                ? told(firstRow, firstColumn, row, column)
                                : ask(firstRow + row, firstColumn + column);
                    }
                }
            }
        }

        private double ask(int row, int column) {
            double asked =
                    fallen.applyAsDouble(patch(card, (double) column / (EACH_WAY - 1), (double) row / (EACH_WAY - 1)));
            lux[row * EACH_WAY + column] = asked;
            return asked;
        }

        /// By the parabolas through every other place of a quarter.
        private double told(int firstRow, int firstColumn, int row, int column) {
            double sum = 0;
            for (int up = 0; up < 3; up++) {
                for (int right = 0; right < 3; right++) {
                    sum += Course.weight(up, row / 2.0)
                            * Course.weight(right, column / 2.0)
                            * lux[(firstRow + 2 * up) * EACH_WAY + firstColumn + 2 * right];
                }
            }
            return Math.max(0, sum);
        }
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
                        * lux().get((along.first() + row) * EACH_WAY + across.first() + column);
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
            return weight(index, way);
        }

        static double weight(int index, double way) {
            return switch (index) {
                case 0 -> (way - 1) * (way - 2) / 2;
                case 1 -> way * (2 - way);
                default -> way * (way - 1) / 2;
            };
        }
    }
}
