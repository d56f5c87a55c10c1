package plumeline.want;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// Water that isn't known, in every want that asks for it: fresh past 0 to 40 degC; with table salt past 5 to 40, where
/// the law's own data end (Laliberté, J. Chem. Eng. Data 54 (2009) 1725); sea salt from 0 on (Millero and Poisson
/// 1981).
final class WaterLimitsTest {
    private static final String HOT_SALT =
            "The water's temperature is past 5 to 40 degC, where salt water is known: weigh a litre of it and write its"
                    + " density.";
    private static final String HOT = "The water's temperature is past 0 to 40 degC.";
    private static final String AHEAD =
            "ink: mixed, volume: 10 ml, bore: 4 mm, squeeze_time: 1 s, at: [0 mm, -70 mm, 258 mm]";

    private static String unknown(String release, String want, String water) {
        return Inked.changed(release, want, "pane: 8 mm}", "pane: 8 mm" + water + "}")
                .unknown();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "thing: hero | {stays_under: hero}",
                "thing: hero | {hangs: hero}",
                "thing: hero | {tank_carries: glass}",
                "thing: hero | {rises: hero, by: 60 mm, within: 1 s}",
                AHEAD + " | {ink_reaches: hero, after: 0.4 s}"
            })
    void limits_areThoseOfWhatIsInTheWater(String release, String want) {
        assertThat(unknown(release, want, ", temperature: 41 degC, salt: 3 %")).isEqualTo(HOT_SALT);
        assertThat(unknown(release, want, ", temperature: 41 degC")).isEqualTo(HOT);
        assertThat(unknown(release, want, ", temperature: 41 degC, sea_salt: 3 %"))
                .isEqualTo(HOT);
        for (String known : new String[] {
            ", temperature: 3 degC", ", temperature: 3 degC, sea_salt: 3 %", ", temperature: 5 degC, salt: 3 %"
        }) {
            assertThat(unknown(release, want, known)).as(known).isEqualTo("known");
        }
    }
}
