package plumeline.sketch;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class LetteringTest {
    @Test
    void fitted_keepsWhereNamesDiffer() {
        String cut = Lettering.fitted("the_long_named_bottle_of_rosewater_04", 200);
        assertThat(cut).startsWith("the_long").endsWith("...ter_04");
        assertThat(Lettering.width(cut)).isLessThanOrEqualTo(200);
        assertThat(Lettering.width(Lettering.fitted("the_long_named_bottle_of_rosewater_04", 40)))
                .isLessThanOrEqualTo(40);
        assertThat(Lettering.fitted("hero", 200)).isEqualTo("hero");
    }
}
