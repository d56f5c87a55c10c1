package plumeline.sketch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
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

    @Test
    void rows_areOneCutRowThatTellsTheNameFromOthers() {
        List<String> names = List.of(
                "the_bottle_of_rosewater_04_with_the_blue_cap",
                "the_bottle_of_rosewater_05_with_the_blue_cap",
                "the_bottle_of_rosewater_05_with_the_blue_lid");
        for (String name : names) {
            List<String> rows = Lettering.rows(name, 250, names);
            assertThat(rows).hasSize(1);
            assertThat(Lettering.width(rows)).isLessThanOrEqualTo(250);
            String head = rows.getFirst().split("\\.\\.\\.", -1)[0];
            String tail = rows.getFirst().split("\\.\\.\\.", -1)[1];
            assertThat(names)
                    .filteredOn(other -> other.startsWith(head) && other.endsWith(tail))
                    .containsExactly(name);
        }
        assertThat(Lettering.rows("hero", 200, names)).containsExactly("hero");
    }

    /// What tells these names apart is within: no cut of eleven letters shows it.
    @Test
    void rows_areAsManyAsTheNameTakesWhereNoCutTellsIt() {
        List<String> names =
                List.of("the_long_named_bottle_4_of_rosewater_oil", "the_long_named_bottle_5_of_rosewater_oil");
        for (String name : names) {
            List<String> rows = Lettering.rows(name, 120, names);
            assertThat(String.join("", rows)).isEqualTo(name);
            assertThat(rows).hasSizeGreaterThan(1).allMatch(row -> Lettering.width(row) <= 120);
        }
    }

    @Test
    void wrapped_losesNoLetter() {
        String text = "no room for: a_name_without_any_space_in_it, wwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwwww and b";
        List<String> lines = Lettering.wrapped(text, 150);
        assertThat(lines).allMatch(line -> Lettering.width(line) <= 150);
        assertThat(String.join("", lines).replace(" ", "")).isEqualTo(text.replace(" ", ""));
        assertThat(Lettering.wrapped("wide", 1)).containsExactly("w", "i", "d", "e");
    }
}
