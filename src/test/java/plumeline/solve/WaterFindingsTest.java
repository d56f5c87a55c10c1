package plumeline.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/// Ties that solving finds and their leeway, and what the answer's JSON says of wants on water.
final class WaterFindingsTest {
    /// Where the lever puts the balance point, mm: see `want.PoiseTest`.
    private static final double BALANCE = (197 * 48 - 0.998207 * 133.5 * 56) / (197 - 0.998207 * 133.5);

    private static final String THINGS =
            "things:\n  bottle: {diameter: 42 mm, height: 118 mm, mass: 197 g, displaces: 133.5"
                    + " ml, centre_of_mass: 48 mm, centre_of_volume: 56 mm, temperature: 4 degC}\n";

    private static String text(String placed, String... wants) {
        return Solved.text(
                        "camera: {body: main, lens: macro, at: [0 mm, -1100 mm, 139 mm], aim: hero, f_number: 8}",
                        "tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}",
                        "place: {hero: {thing: bottle, at: [0 mm, 0 mm, 80 mm], " + placed + "}}",
                        "wants: [" + String.join(", ", wants) + "]")
                .replace("things:\n", THINGS)
                .replace("film: {rate: 24 fps", "film: {air: {temperature: 20 degC, humidity: 50 %}, rate: 24 fps");
    }

    private static ShotAnswer solved(String placed, String... wants) {
        return Solved.shot(text(placed, wants));
    }

    @Test
    void aFreeTie_forLevel_isTheBalancePoint_andTight() {
        ShotAnswer answer = solved("tied: [free]", "{hangs: hero, tilt: 90 deg}");
        assertThat(Solved.millimetres(answer, "hero.tied_1")).isEqualTo(BALANCE, within(1.0));
        assertThat(Solved.want(answer, 1).verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(Solved.want(answer, 1).because().getLast())
                .isEqualTo("hero.tied_1: 0.2 mm less, 0.7 mm more; you place to 2 mm. Use a jig.");
    }

    @Test
    void freeTies_holdUprightAndLevel_withRoom() {
        ShotAnswer upright = solved("tied: [free]", "{hangs: hero}");
        assertThat(Solved.millimetres(upright, "hero.tied_1")).isBetween(BALANCE + 4, 118.001);
        assertThat(upright.verdict()).isEqualTo(Verdict.HOLDS);
        ShotAnswer level = solved("tilt: 90 deg, tied: [free, free]", "{hangs: hero}");
        double first = Solved.millimetres(level, "hero.tied_1");
        double second = Solved.millimetres(level, "hero.tied_2");
        assertThat(Math.min(first, second)).isBetween(0.0, BALANCE - 4);
        assertThat(Math.max(first, second)).isBetween(BALANCE + 4, 118.001);
        assertThat(level.verdict()).isEqualTo(Verdict.HOLDS);
    }

    /// A tie holds it upright down to the balance point; level, each down or up to it.
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "tied: [90 mm] | 1 | -1",
                "tilt: 90 deg, tied: [90 mm, 10 mm] | 1 | -1",
                "tilt: 90 deg, tied: [90 mm, 10" + " mm] | 2 | 1"
            })
    void leewayOfATie_endsAtTheBalancePoint(String placed, int tie, int way) {
        MarkAnswer mark = Solved.mark(solved(placed, "{hangs: hero}"), "hero.tied_" + tie);
        double there = 1000 * (way < 0 ? mark.leeway().minus() : mark.leeway().plus()).distance();
        assertThat(there).isEqualTo(way * (BALANCE - 1000 * Solved.si(mark)), within(0.05));
    }

    /// Water from 8 to 268 mm over the table, the bottle 118 mm tall.
    @Test
    void whatIsToStayUnder_isNotFoundAPlaceOutOfTheWater() {
        String free = text("tied: [100 mm]", "{stays_under: hero}", "{hangs: hero}")
                .replace("at: [0 mm, 0 mm, 80 mm], tied", "at: [0 mm, 0 mm, free], tied")
                .replace("aim: hero", "aim: ahead, focus: 1100 mm");
        ShotAnswer answer = Solved.shot(free);
        assertThat(Solved.millimetres(answer, "hero.z")).isBetween(8.0, 150.0);
        assertThat(answer.verdict()).isEqualTo(Verdict.HOLDS);
        MarkAnswer fixed = Solved.mark(solved("tied: [100 mm]", "{stays_under: hero}"), "hero.z");
        assertThat(fixed.leeway().plus().distance()).isCloseTo(0.070, within(1e-4));
    }

    /// Nearer or farther the line would be seen through the surface: leeway and tries end before that.
    @Test
    void aLinesSightIsComputed_whereverItIsToldToBeSeenFrom() {
        String line = "tied: [100 mm], line: {diameter: 0.25 mm}";
        MarkAnswer camera = Solved.mark(solved(line, "{line_hidden: hero, under: 5 px}"), "camera.y");
        assertThat(camera.leeway().minus().distance()).isGreaterThan(-0.4);
        String thin = text(line, "{line_hidden: hero, under: 2 px}");
        ShotAnswer failing = Solved.shot(thin);
        assertThat(Solved.want(failing, 1).verdict()).isEqualTo(Verdict.FAILS);
        assertThat(Solved.want(failing, 1).attempts()).noneMatch(tried -> tried.contains("Set hero.z 9"));
        ShotAnswer free = Solved.shot(text(line, "{line_hidden: hero, under: 2.5 px}")
                .replace("at: [0 mm, -1100 mm, 139 mm]", "at: [0 mm, free between -1400 mm and -900 mm, 139 mm]"));
        assertThat(free.verdict()).isIn(Verdict.HOLDS, Verdict.TIGHT);
    }

    @Test
    void json_hasTheContractsVerdictsAndUnits() {
        String[] wants = {
            "{tank_carries: glass}",
            "{hangs: hero}",
            "{line_hidden: hero}",
            "{sweats: hero}",
            "{stays_dry: hero}",
            "{beads_stay: hero}",
            "{stays_under: hero}",
            "{upright: hero}"
        };
        JsonNode film = new ObjectMapper()
                .readTree(FilmJson.of(Solved.film(text("tied: [110 mm], line: {diameter: 0.3 mm}", wants))));
        String[][] told = {
            {"no objection found", "1"},
            {"holds", "deg"},
            {"fails", "px"},
            {"holds", "degC"},
            {"fails", "degC"},
            {"holds", "mm"},
            {"holds", "g"},
            {"holds", "deg"}
        };
        JsonNode all = film.get("shots").get(0).get("wants");
        assertThat(all.size()).isEqualTo(told.length);
        for (int i = 0; i < told.length; i++) {
            assertThat(all.get(i).get("verdict").asString()).as(wants[i]).isEqualTo(told[i][0]);
            assertThat(all.get(i).get("margin").get("unit").asString())
                    .as(wants[i])
                    .isEqualTo(told[i][1]);
        }
        assertThat(all.get(1).get("margin").get("value").asDouble()).isEqualTo(3);
        assertThat(all.get(6).get("margin").get("value").asDouble()).isEqualTo(197 - 0.998207 * 133.5, within(1e-3));
    }

    @Test
    void aShotWithATankThatCarries_isNeverSaidToHold() {
        assertThat(solved("tied: [110 mm]", "{hangs: hero}", "{tank_carries: glass}")
                        .verdict())
                .isEqualTo(Verdict.NO_OBJECTION_FOUND);
        FilmAnswer film = Solved.film(text("tied: [110 mm]", "{hangs: hero}") + "wants: [{tank_carries: glass}]\n");
        assertThat(film.wants().getFirst().verdict()).isEqualTo(Verdict.NO_OBJECTION_FOUND);
        assertThat(film.verdict()).isEqualTo(Verdict.NO_OBJECTION_FOUND);
    }

    /// A second shot without the tank says nothing of it.
    @Test
    void aFilmsTank_countsWhereItStands() {
        String dry = "  two:\n    camera: {body: main, lens: macro, at: [0 mm, -1100 mm, 139 mm], aim: ahead}\n"
                + "    place: {hero: {thing: bottle, at: [0 mm, 0 mm]}}\n";
        FilmAnswer film =
                Solved.film(text("tied: [110 mm]", "{hangs: hero}") + dry + "wants: [{tank_carries: glass}]\n");
        assertThat(film.wants().getFirst().verdict()).isEqualTo(Verdict.NO_OBJECTION_FOUND);
        assertThat(film.wants().getFirst().because().getFirst()).isEqualTo("Worst in one.");
    }

    @Test
    void aTableThatIsTooWeak_fails() {
        String weak =
                text("tied: [110 mm]", "{tank_carries: glass}").replace("kit:\n", "kit:\n  table: {carries: 20 kg}\n");
        WantAnswer carries = Solved.want(Solved.shot(weak), 1);
        assertThat(carries.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(carries.because().getFirst()).startsWith("The table carries 20 kg; tank and water weigh 47 kg.");
    }

    @Test
    void wantsNoMarkBearsOn_blameNoMark() {
        ShotAnswer answer = solved("tied: [free]", "{stays_dry: hero}", "{hangs: hero}");
        assertThat(Solved.want(answer, 1).verdict()).isEqualTo(Verdict.FAILS);
        assertThat(Solved.want(answer, 1).because()).noneMatch(why -> why.contains("It can't hold"));
        assertThat(Solved.want(answer, 1).attempts()).isEmpty();
    }
}
