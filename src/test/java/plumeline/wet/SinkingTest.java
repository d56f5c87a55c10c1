package plumeline.wet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;
import plumeline.water.Turned;
import plumeline.water.Vessel;

/// The least steel that keeps a floating thing upright, against the metacentre of naval architecture.
final class SinkingTest {
    private static final double WATER = 998.2;
    private static final double STEEL = 7850;

    private record Log(double radius, double height, double density, double centre) {
        double kilograms() {
            return density * Math.PI * radius * radius * height;
        }

        Vessel vessel() {
            return new Vessel(
                    Turned.cylinder(radius, height), new Vessel.Shell(kilograms(), centre), new Vessel.Inside.Solid());
        }

        /// Metacentre over centre of mass, m, with a steel ball that touches the base from below: BM = I/V.
        double metacentreMetres(double grams) {
            double mass = kilograms() + grams / 1e3;
            double ball = grams / 1e3 / STEEL;
            double middle = -Math.cbrt(ball * 3 / (4 * Math.PI));
            double displaced = mass / WATER;
            double draught = (displaced - ball) / (Math.PI * radius * radius);
            double buoyancy = ((displaced - ball) * draught / 2 + ball * middle) / displaced;
            double weight = (kilograms() * centre + grams / 1e3 * middle) / mass;
            return buoyancy + Math.PI * Math.pow(radius, 4) / 4 / displaced - weight;
        }
    }

    @Test
    @Outside(
            source = "metacentric height GM = KB + I/V - KG of what floats, upright where it is > 0: any book on ship"
                    + " stability",
            kind = "closed form")
    void leastSteel_isWhereTheMetacentreComesOverTheCentre() {
        int compared = 0;
        for (Log log : new Log[] {
            new Log(0.020, 0.120, 500, 0.06),
            new Log(0.021, 0.118, 730, 0.05),
            new Log(0.030, 0.300, 600, 0.16),
            new Log(0.012, 0.090, 850, 0.045)
        }) {
            double least = 0;
            while (log.metacentreMetres(least) < 0) {
                least += 0.01;
            }
            assertThat(least).isGreaterThan(1);
            OptionalInt grams = Sinking.findUprightGrams(log.vessel(), WATER, 0.3);
            // 0.3 deg off it rests with a little less than keeps it quite upright.
            assertThat((double) grams.orElseThrow()).as("%s", log).isCloseTo(Math.ceil(least), within(0.0));
            assertThat(Sinking.restDegrees(log.vessel().withUnder((grams.getAsInt() - 1) / 1e3, STEEL), WATER))
                    .isGreaterThan(0.3);
            compared++;
        }
        assertThat(compared).isEqualTo(4);
    }

    /// Top-heavy wood of 136 g bears 17 g of steel, and would need four fifths of its own mass to be upright.
    @Test
    void steelThatSinksIt_isNoWayToKeepItAfloat() {
        Log log = new Log(0.020, 0.120, 900, 0.108);
        assertThat(log.metacentreMetres(17)).isNegative();
        assertThat(log.metacentreMetres(120)).isPositive();
        assertThat(Sinking.findUprightGrams(log.vessel(), WATER, 3)).isEmpty();
        assertThat(Sinking.restDegrees(log.vessel().withUnder(0.120, STEEL), WATER))
                .isLessThan(3);
    }
}
