package plumeline.ask.effect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumeline.ask.Asking.answer;
import static plumeline.ask.Asking.number;
import static plumeline.ask.Asking.problems;
import static plumeline.ask.Asking.spread;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;
import plumeline.answer.Answer.Assumed;
import plumeline.answer.Item;
import plumeline.answer.Value;
import plumeline.answer.Verdict;
import plumeline.quantity.PaperUnit;
import plumeline.tidy.Outside;

/// The question `ink` in text: check values through the whole door, regimes, readings, wanted times, refusals.
final class InkQuestionTest {
    /// Density at 20 degC for g′ 0.5 m/s²: 998.207 · (1 + 0.5/9.80665) kg/m³.
    private static final String HALF = "density: 1049.101 kg/m3";

    private static String ask(String ink, String nozzle, String top, String more) {
        return "ink: {" + ink + "}\nnozzle: {" + nozzle
                + "}\nwater: {depth: 300 mm, temperature: 20 degC}\nthing: {top_depth: " + top + "}\n" + more;
    }

    private static Answer still(String more) {
        return answer("ink", ask("volume: 10 ml, " + HALF, "bore: 20 mm, speed: 0 mm/s", "100 mm", more));
    }

    /// What is told to try is tried: past a border between regimes, and on what a syringe and a stopwatch can set.
    @Test
    void lightInkWithoutPush_isSaidToRise() {
        Answer answer = answer(
                "ink",
                "ink: {volume: 10 ml, density: 0.95 g/ml}\nnozzle: {bore: 6 mm, speed: 0 mm/s}\n"
                        + "water: {depth: 300 mm}\nthing: {top_depth: 90 mm}\n");
        assertThat(answer.getValue("arrive")).isEqualTo(new Value.Word("never"));
        assertThat(answer.notes().because())
                .anyMatch(text -> text.contains("has no push: it rises from the nozzle's tip"))
                .noneMatch(text -> text.contains("its push carries it down"));
    }

    @Test
    void tries_areFoundPastABorder_andOnWholeSteps() {
        String slow = "ink: {volume: 6 ml, density: 1.05 g/ml}\nwater: {depth: 320 mm}\nthing: {top_depth: 138 mm}\n"
                + "wanted: 2.94 s\nnozzle: {bore: 6 mm, height: -18 mm, squeeze_time: 0.3 s}\n";
        assertThat(answer("ink", slow).notes().attempts())
                .anyMatch(text -> text.startsWith("Take 2 ml at the same speed: then it is there after 2.9 s"))
                .anyMatch(text -> text.startsWith("Squeeze over "))
                .noneMatch(text -> text.startsWith("No single change"));
        String absurd = slow.replace("wanted: 2.94 s\n", "front: [[0.4 s, 60 mm], [40 s, 65 mm]]\n");
        Answer answer = answer("ink", absurd);
        assertThat(answer.verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(answer.notes().because()).anyMatch(text -> text.contains("read one front again"));
    }

    @Test
    @Outside(
            source = "the project's check values on ink: V 10 ml, g' 0.5 m/s², α 0.25, k 0",
            place = "rows U 0, U 2 m/s, plume",
            kind = "worked example",
            printedDigits = 4)
    void checkRows_areAnswered() {
        Answer puff = still("");
        assertThat(puff.getValue("regime")).isEqualTo(new Value.Word("puff"));
        assertThat(number(puff, "arrive")).isCloseTo(1.891, within(0.001));
        assertThat(number(puff, "radius")).isCloseTo(38.37, within(0.01));
        assertThat(number(puff, "dilution")).isCloseTo(23.65, within(0.01));
        assertThat(number(puff, "nozzle_ahead")).isCloseTo(38.37, within(0.01));
        Answer pushed = answer("ink", ask("volume: 10 ml, " + HALF, "bore: 12 mm, speed: 2 m/s", "100 mm", ""));
        assertThat(pushed.getValue("regime")).isEqualTo(new Value.Word("puff"));
        assertThat(number(pushed, "arrive")).isCloseTo(0.4245, within(0.0005));
        // A wide bore leaves the plume alone: F 2.5e-6, 1.997 s at 100 mm; the first centimetres are the jet's.
        Answer plume = answer("ink", ask("volume: 10 ml, " + HALF, "bore: 12 mm, squeeze_time: 2 s", "100 mm", ""));
        assertThat(plume.getValue("regime")).isEqualTo(new Value.Word("stream"));
        assertThat(number(plume, "arrive")).isBetween(1.9, 2.0);
        // 5 ml/s through 2 mm: speed times bore over 1.0034e-6 m²/s.
        Answer fine = answer("ink", ask("volume: 10 ml, " + HALF, "bore: 2 mm, squeeze_time: 2 s", "100 mm", ""));
        assertThat(number(fine, "reynolds")).isCloseTo(3172, within(5.0));
    }

    @Test
    void everyFieldOfTheRow_isAnswered_withItsUnit() {
        Answer answer = still("");
        assertThat(answer.answers().stream().map(Item::name))
                .containsExactly("regime", "reynolds", "arrive", "radius", "arrive_floor", "dilution", "nozzle_ahead");
        Map<String, String> units =
                Map.of("arrive", "s", "radius", "mm", "arrive_floor", "s", "dilution", "1", "nozzle_ahead", "mm");
        units.forEach((name, unit) -> {
            Value.Spread spread = spread(answer, name);
            assertThat(spread.unit()).as(name).isEqualTo(unit);
            assertThat(spread.low()).as(name).isLessThan(spread.value());
            assertThat(spread.high()).as(name).isGreaterThan(spread.value());
        });
    }

    @Test
    @Outside(
            source = "the project's brief on flacons, shot A2, readings of the test day",
            place = "n 0.63, k 125; 120 mm after 0.94 s",
            kind = "worked example",
            printedDigits = 2)
    void front_ofEarlierTakes_decidesTheTimes() {
        String text = ask(
                "volume: 3 ml, density: 1.03 g/ml",
                "bore: 4 mm, height: 30 mm",
                "%s",
                "front: [[0.40 s, 70 mm], [1.90 s, 188 mm]]\n");
        assertThat(number(answer("ink", text.formatted("120 mm")), "arrive")).isCloseTo(0.94, within(0.005));
        Answer top = answer("ink", text.formatted("70 mm"));
        assertThat(number(top, "arrive")).isCloseTo(0.40, within(1e-9));
        assertThat(number(top, "arrive_floor")).isCloseTo(Math.pow(0.3 / 0.12514, 1 / 0.63405), within(0.005));
        Value.Spread arrive = spread(top, "arrive");
        assertThat(arrive.low()).isBetween(0.28, 0.33);
        assertThat(arrive.high()).isBetween(0.48, 0.56);
        // At 0.94 s the front is 120 mm down: that is where it touches.
        Answer wanted = answer("ink", text.formatted("70 mm") + "wanted: 0.94 s\n");
        assertThat(wanted.notes().because()).anyMatch(line -> line.contains("120 mm down"));
    }

    @Test
    void oneReading_movesEveryTime() {
        Answer law = still("");
        Answer read = still("front: [[1 s, 100 mm]]\n");
        assertThat(number(read, "arrive")).isCloseTo(1, within(1e-9));
        assertThat(number(read, "arrive_floor") / number(law, "arrive_floor"))
                .isCloseTo(1 / number(law, "arrive"), within(1e-6));
        assertThat(read.notes().because()).anyMatch(line -> line.contains("0.53 times the law's"));
    }

    @Test
    void wantedTooSoon_fails_andWhatItSaysToTryBringsItThere() {
        String text = ask("volume: 10 ml, " + HALF, "%s", "140 mm", "wanted: 1.5 s\n");
        Answer answer = answer("ink", text.formatted("bore: 6 mm, height: -10 mm, squeeze_time: 1 s"));
        assertThat(answer.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(answer.getValue("nozzle_ahead")).isEqualTo(new Value.Word("none"));
        String tip = answer.notes().attempts().stream()
                .filter(line -> line.startsWith("Set the tip"))
                .findFirst()
                .orElseThrow();
        String millimetres = tip.replaceAll("Set the tip (\\d+) mm.*", "$1");
        Answer lower = answer("ink", text.formatted("bore: 6 mm, height: -" + millimetres + " mm, squeeze_time: 1 s"));
        assertThat(number(lower, "arrive")).isCloseTo(1.5, within(0.075));
        Answer hopeless = answer("ink", ask("volume: 10 ml, " + HALF, "bore: 6 mm", "250 mm", "wanted: 20 ms\n"));
        assertThat(hopeless.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(hopeless.notes().attempts()).anyMatch(line -> line.contains("No single change"));
    }

    @Test
    void everyChangeThatItTries_bringsTheFrontWhenItSays() {
        Answer answer = answer(
                "ink",
                ask(
                        "volume: 10 ml, " + HALF,
                        "bore: 8 mm, height: -10 mm, squeeze_time: 1.5 s",
                        "100 mm",
                        "wanted: 1.8 s\n"));
        assertThat(answer.notes().attempts()).anyMatch(line -> line.startsWith("Squeeze over"));
        String time = answer.notes().attempts().stream()
                .filter(line -> line.startsWith("Squeeze over"))
                .findFirst()
                .orElseThrow()
                .replaceAll("Squeeze over ([0-9.]+ s): .*", "$1");
        Answer squeezed = answer(
                "ink",
                ask("volume: 10 ml, " + HALF, "bore: 8 mm, height: -10 mm, squeeze_time: " + time, "100 mm", ""));
        assertThat(number(squeezed, "arrive")).isCloseTo(1.8, within(0.09));
    }

    @Test
    void wantedAfterTheFloor_fails_andBetween_isTightOrHolds() {
        assertThat(still("wanted: 30 s\n").verdict()).isEqualTo(Verdict.FAILS);
        assertThat(still("wanted: 2 s\n").verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(still("wanted: 3.2 s\n").verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(still("").verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(still("").assumed().stream().map(Assumed::name)).contains("wanted");
    }

    @Test
    void lightInk_neverComes_andSaysHowDeep() {
        String text = ask("volume: 5 ml, recipe: {alcohol: 40 %%}", "bore: 4 mm, speed: %s", "120 mm", "");
        Answer answer = answer("ink", text.formatted("400 mm/s"));
        assertThat(answer.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(answer.getValue("arrive")).isEqualTo(new Value.Word("never"));
        assertThat(answer.notes().because()).anyMatch(line -> line.contains("rises as a fountain"));
        String speed = answer.notes().attempts().getFirst().replaceAll("Push it at (\\d+ mm/s) or faster.*", "$1");
        assertThat(answer("ink", text.formatted(speed)).verdict()).isNotEqualTo(Verdict.FAILS);
    }

    /// One of ten comes.
    @Test
    void lightInk_thatComesInFewTakes_isCounted() {
        String text = ask("volume: 5 ml, recipe: {alcohol: 40 %%}", "bore: 4 mm, speed: %d mm/s", "120 mm", "");
        String all = IntStream.rangeClosed(20, 80)
                .mapToObj(speed -> answer("ink", text.formatted(10 * speed)).notes())
                .flatMap(notes -> notes.because().stream())
                .filter(line -> line.contains("thing's top at all"))
                .collect(Collectors.joining("\n"));
        assertThat(all)
                .contains("About 1 take in 10 comes to the thing's top at all.")
                .doesNotContain("About 1 takes");
    }

    @Test
    void outsideTheLaws_isUnknown_andSaysWhatToMeasure() {
        Answer high = answer("ink", ask("volume: 10 ml, " + HALF, "bore: 4 mm, height: 250 mm", "100 mm", ""));
        assertThat(high.verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(high.getValue("arrive")).isEqualTo(new Value.Word("unknown"));
        assertThat(high.notes().attempts()).anyMatch(line -> line.contains("Film one take"));
        Answer read = answer(
                "ink",
                ask(
                        "volume: 10 ml, " + HALF,
                        "bore: 4 mm, height: 250 mm",
                        "100 mm",
                        "front: [[0.4 s, 70 mm], [1.9 s, 188 mm]]\n"));
        assertThat(number(read, "arrive")).isCloseTo(Math.pow(0.1 / 0.12514, 1 / 0.63405), within(0.001));
        Answer drop =
                answer("ink", ask("volume: 0.01 ml, density: 1.003 g/ml", "bore: 1 mm, speed: 0 mm/s", "100 mm", ""));
        assertThat(drop.verdict()).isEqualTo(Verdict.UNKNOWN);
        Answer thread = answer(
                "ink",
                ask(
                        "volume: 2 ml, density: 1.03 g/ml",
                        "bore: 2 mm, height: -10 mm, squeeze_time: 12 s",
                        "120 mm",
                        ""));
        assertThat(thread.getValue("regime")).isEqualTo(new Value.Word("laminar"));
        assertThat(spread(thread, "arrive").high() / number(thread, "arrive")).isGreaterThan(1.9);
    }

    @Test
    void recipe_makesTheDensity() {
        // 5 % salt at 20 degC: 1034 kg/m³ (CRC Handbook, from memory).
        Answer salt = answer("ink", ask("volume: 10 ml, recipe: {salt: 5 %}", "bore: 4 mm", "100 mm", ""));
        Answer dense = answer("ink", ask("volume: 10 ml, density: 1.034 g/ml", "bore: 4 mm", "100 mm", ""));
        assertThat(number(salt, "arrive")).isCloseTo(number(dense, "arrive"), within(0.005));
    }

    @Test
    void spreads_widenTheLawsInterval() {
        Value.Spread law = spread(still(""), "arrive");
        Answer loose =
                answer("ink", ask("volume: 10 ml ± 3 ml, " + HALF, "bore: 20 mm, speed: 0 mm/s", "100 mm ± 30 mm", ""));
        Value.Spread both = spread(loose, "arrive");
        assertThat(both.value()).isCloseTo(law.value(), within(1e-9));
        assertThat(both.high()).isGreaterThan(law.high());
        assertThat(both.low()).isLessThan(law.low());
    }

    @Test
    void ahead_saysWhereItTouches() {
        String text = ask("volume: 10 ml, " + HALF, "bore: 20 mm, speed: 0 mm/s", "100 mm, ahead: %s", "");
        // r0 + α z: 13.4 + 0.25 · 160 = 53.4.
        assertThat(answer("ink", text.formatted("53.4 mm")).notes().because())
                .anyMatch(line -> line.contains("touches it 160 mm down"));
        assertThat(answer("ink", text.formatted("20 mm")).notes().because())
                .anyMatch(line -> line.contains("falls onto it"));
        assertThat(answer("ink", text.formatted("200 mm")).notes().because())
                .anyMatch(line -> line.contains("without touching"));
    }

    @Test
    void tiltedNozzle_standsFartherAhead_andSaysHowFarItGoesAside() {
        String text = ask("volume: 10 ml, " + HALF, "bore: 12 mm, speed: 1 m/s, tilt: %s", "100 mm", "");
        Answer straight = answer("ink", text.formatted("0 deg"));
        Answer aside = answer("ink", text.formatted("40 deg"));
        assertThat(straight.answers()).noneMatch(item -> item.name().equals("aside"));
        // Without weight 100 mm · tan 40 deg is 84 mm; what sinks bends down and goes less far.
        assertThat(number(aside, "aside")).isBetween(60.0, 84.0);
        assertThat(number(aside, "nozzle_ahead"))
                .isCloseTo(number(aside, "aside") + number(aside, "radius"), within(0.1));
        assertThat(number(aside, "arrive")).isGreaterThan(number(straight, "arrive"));
        assertThat(aside.notes().because()).anyMatch(line -> line.startsWith("It points 40 deg to the thing's side"));
    }

    @Test
    void slot_isARoll_andOneThatFlowsOn_isUnknownWithATryThatHelps() {
        Answer quick =
                answer("ink", ask("volume: 10 ml, " + HALF, "bore: 4 mm, row: 80 mm, speed: 0 mm/s", "100 mm", ""));
        // Z³ = z0³ + 3/(π α²)·B t²/(2 L) with r0 6.31 mm, B 5e-6, L 80 mm: t = √((Z³ − z0³)·π α²·2 L/(3 B)).
        double origin = 0.0063078 / 0.25;
        double cubes = Math.pow(0.1 + origin, 3) - Math.pow(origin, 3);
        double seconds = Math.sqrt(cubes * Math.PI * 0.0625 * 2 * 0.08 / (3 * 5e-6));
        assertThat(number(quick, "arrive")).isCloseTo(seconds, within(0.002 * seconds));
        assertThat(number(quick, "radius")).isCloseTo(6.31 + 25, within(0.01));
        Answer slow =
                answer("ink", ask("volume: 10 ml, " + HALF, "bore: 1 mm, row: 80 mm, squeeze_time: 4 s", "100 mm", ""));
        assertThat(slow.verdict()).isEqualTo(Verdict.UNKNOWN);
        String attempt = slow.notes().attempts().getFirst();
        assertThat(attempt).startsWith("Squeeze over ");
        String time = attempt.replaceAll("Squeeze over (.*?): .*", "$1");
        Answer tried = answer(
                "ink", ask("volume: 10 ml, " + HALF, "bore: 1 mm, row: 80 mm, squeeze_time: " + time, "100 mm", ""));
        assertThat(tried.getValue("regime")).isEqualTo(new Value.Word("puff"));
        assertThat(attempt).contains("after " + InkInquiry.seconds(number(tried, "arrive")));
    }

    @Test
    void fullestText_isShort_andCautions() {
        String text = answer(
                        "ink",
                        "ink: {volume: 3 ml ± 0.2 ml, density: 1.03 g/ml}\nnozzle: {bore: 4 mm, height: 30 mm}\n"
                                + "water: {depth: 260 mm}\nthing: {top_depth: 100 mm, ahead: 30 mm}\nwanted: 2 s\n"
                                + "front: [[0.40 s, 70 mm]]\n")
                .toText(PaperUnit.MILLIMETRES);
        assertThat(text.lines().count()).as(text).isLessThanOrEqualTo(30);
        assertThat(text).contains("slippery").contains("mains").doesNotContain("safe");
    }

    @Test
    void json_isReadToo() {
        Answer answer = answer("ink", """
                {"ink": {"volume": "10 ml", "density": "1.05 g/ml"}, "nozzle": {"bore": "6 mm"},
                 "water": {"depth": "300 mm"}, "thing": {"top_depth": "90 mm"},
                 "front": [["0.4 s", "60 mm"], ["1.9 s", "188 mm"]]}
                """);
        assertThat(number(answer, "arrive")).isPositive();
    }

    @Test
    void wrongInputs_areRefused() {
        String ink = "volume: 10 ml, " + HALF;
        assertThat(problems("ink", ask(ink, "bore: 4 mm", "300 mm", "")))
                .containsExactly(
                        "ask.yaml:4:20 thing.top_depth is 300 mm; must be less than the water's depth, 300 mm\n"
                                + "  Measure both from the still surface down.   (P-ASK-71, docs/problems.md)");
        assertThat(problems("ink", ask(ink, "bore: 4 mm, height: -120 mm", "100 mm", "")))
                .singleElement()
                .asString()
                .contains("nozzle.height is -120 mm; must be above the thing's top, which is at -100 mm")
                .contains("P-ASK-72");
        assertThat(problems("ink", ask(ink, "bore: 4 mm", "100 mm", "front: [[1 s, 90 mm], [2 s, 80 mm]]\n")))
                .singleElement()
                .asString()
                .contains("P-ASK-73");
        assertThat(problems("ink", ask("volume: 10 ml, recipe: {salt: 60 %}", "bore: 4 mm", "100 mm", "")))
                .singleElement()
                .asString()
                .contains("P-ASK-74");
        assertThat(problems("ink", ask(ink, "bore: 4 mm, height: -50 mm", "100 mm", "front: [[1 s, 40 mm]]\n")))
                .singleElement()
                .asString()
                .contains("deeper than the nozzle's tip, 50 mm")
                .contains("P-ASK-78");
        assertThat(problems("ink", ask(ink, "bore: 4 mm, row: 2 mm", "100 mm", "")))
                .singleElement()
                .asString()
                .contains("P-ASK-79");
        for (String wrong : List.of(
                ask(ink, "bore: 4 mm, row: 20 mm, tilt: 10 deg", "100 mm", ""),
                ask(ink, "bore: 4 mm, tilt: 100 deg", "100 mm", ""),
                ask(ink + ", recipe: {salt: 5 %}", "bore: 4 mm", "100 mm", ""),
                ask("volume: 10 ml", "bore: 4 mm", "100 mm", ""),
                ask(ink, "height: 0 mm", "100 mm", ""),
                ask(ink, "bore: -4 mm", "100 mm", ""),
                ask(ink, "bore: 4 mm, squeeze_time: 1 s, speed: 1 m/s", "100 mm", ""),
                ask(ink, "bore: 4 mm, squeeze: 1 s", "100 mm", ""),
                ask("volume: 10 ml, recipe: {salt: 5 %, sugar: 5 %}", "bore: 4 mm", "100 mm", ""),
                ask(ink, "bore: 4 mm", "100 mm", "front: [[1 s]]\n"))) {
            assertThat(problems("ink", wrong)).as(wrong).isNotEmpty();
        }
    }
}
