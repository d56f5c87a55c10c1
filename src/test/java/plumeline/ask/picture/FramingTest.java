package plumeline.ask.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumeline.ask.Asking.answer;
import static plumeline.ask.Asking.number;
import static plumeline.ask.Asking.problems;
import static plumeline.ask.Asking.spread;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;
import plumeline.answer.Answer.Assumed;
import plumeline.answer.Item;
import plumeline.answer.Outcome;
import plumeline.answer.Value;
import plumeline.answer.Verdict;
import plumeline.ask.Asking;
import plumeline.ask.Questions;
import plumeline.quantity.PaperUnit;

/// The question `framing` in text: values, defaults, intervals, verdicts, sentences and messages.
final class FramingTest {
    private static final String SENSOR = "sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}\n";
    private static final String CAN = "thing: {width: 66.2 mm, height: 122.2 mm, depth: 66.2 mm}\n";
    private static final String MACRO = SENSOR + "focal_length: 100 mm\n";
    private static final String BASE = MACRO + "fills: {height: 70 %}\n" + CAN;
    private static final String FLACON =
            MACRO + "fills: {height: 60 %}\nthing: {width: 42 mm, height: 118 mm, depth: 42 mm}\n";

    @Test
    void defaults_areUsedAndListed() {
        Answer answer = answer("framing", MACRO + "fills: {height: 70 %}\nthing: {width: 66.2 mm, height: 122.2 mm}\n");
        assertThat(answer.assumed().stream().map(Assumed::name))
                .containsExactly("f_number", "sharp_to", "pupil_ratio", "thing.depth");
        assertThat(answer.assumed().getFirst().value()).isEqualTo(new Value.Number(8, "1"));
        assertThat(answer.assumed().getFirst().why()).isNotBlank();
        assertThat(answer.verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void nothingGivenIsAssumed() {
        Answer answer = answer("framing", BASE + "f_number: 8\nsharp_to: 2 px\npupil_ratio: 1\n");
        assertThat(answer.assumed()).isEmpty();
    }

    @Test
    void otherUnits_sameAnswer() {
        String inches = "sensor: {width: 3.6 cm, height: 0.02025 m, across: 3840 px}\nfocal_length: 10 cm\n"
                + "thing: {width: 66.2mm, height: 0.1222 m, depth: 6.62 cm}\nfills: {height: 70%}\n";
        Answer one = answer("framing", BASE);
        Answer other = answer("framing", inches);
        for (Item item : one.answers()) {
            double value = number(one, item.name());
            assertThat(number(other, item.name())).isCloseTo(value, within(1e-9 * value));
        }
    }

    @Test
    void json_isReadAsWell() {
        String json = "{\"sensor\": {\"width\": \"36 mm\", \"height\": \"20.25 mm\", \"across\": \"3840 px\"},"
                + "\"focal_length\": \"100 mm\", \"thing\": {\"width\": \"66.2 mm\", \"height\": \"122.2 mm\","
                + "\"depth\": \"66.2 mm\"}, \"fills\": {\"height\": \"70 %\"}}";
        assertThat(answer("framing", json)).isEqualTo(answer("framing", BASE));
    }

    @Test
    void fillByWidth_isByWidth() {
        Answer answer = answer("framing", MACRO + CAN + "fills: {width: 50 %}\n");
        assertThat(number(answer, "magnification")).isCloseTo(0.5 * 36 / 66.2, within(1e-12));
        assertThat(number(answer, "field_width")).isCloseTo(2 * 66.2, within(1e-9));
    }

    @Test
    void farFocus_isEndless() {
        Answer answer = answer(
                "framing",
                SENSOR
                        + "focal_length: 24 mm\n"
                        + "f_number: 16\n"
                        + "thing: {width: 2 m, height: 3 m}\n"
                        + "fills: {height: 50 %}\n");
        assertThat(answer.getValue("far_limit")).isEqualTo(new Value.Word("endless"));
        assertThat(answer.getValue("depth_of_field")).isEqualTo(new Value.Word("endless"));
        assertThat(answer.toJson()).contains("\"far_limit\": \"endless\"");
    }

    @Test
    void freeSpace_onlyWhereTheFrontIsKnown() {
        assertThat(answer("framing", BASE).answers().stream().map(Item::name)).doesNotContain("free_space");
        Answer answer = answer("framing", BASE + "sensor_to_front: 180 mm\n");
        assertThat(number(answer, "free_space")).isCloseTo(number(answer, "from_sensor") - 180 - 33.1, within(1e-9));
    }

    @Test
    void lensInsideTheThing_fails() {
        Answer answer = answer("framing", BASE + "sensor_to_front: 2 m\n");
        assertThat(answer.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(answer.notes().because()).anyMatch(text -> text.startsWith("The lens would stand 959 mm inside"));
    }

    @Test
    void notAllSharp_saysWhichStopAndFocus() {
        Answer answer = answer("framing", BASE);
        assertThat(answer.notes().because())
                .contains("Front to edge of the thing needs 33 mm of sharp depth; f/8 gives 25 mm: not all is sharp.")
                .anyMatch(text -> text.contains("a tape starts at the sensor mark: 1074 mm"));
        // 11.05 is needed: an engraved 11 typed as 11 is a hair short.
        assertThat(answer.notes().attempts())
                .containsExactly(
                        "Stop down to f/13 and focus 16 mm behind the front face: front and edge are then sharp.");
    }

    @Test
    void sharpEnough_hasNothingToTry() {
        Answer answer = answer("framing", BASE + "f_number: 25\nsharp_to: 0.02 mm\n");
        assertThat(answer.notes().because()).anyMatch(text -> text.endsWith("the front is sharp."));
        assertThat(answer.notes().attempts()).allMatch(text -> text.startsWith("Open up"));
    }

    @Test
    void pastWorkingSixteen_isCautioned() {
        assertThat(answer("framing", BASE + "f_number: 14\n").notes().cautions())
                .isEmpty();
        Answer answer = answer("framing", BASE + "f_number: 16\n");
        assertThat(answer.notes().cautions())
                .containsExactly(
                        "Past a working f/16 (here f/17.9) diffraction softens the whole picture: the Airy disc is"
                                + " 2.6 px wide against a blur limit of 2 px.");
        assertThat(answer.notes().attempts()).contains("Open up to f/14 or wider to stay within a working f/16.");
    }

    @Test
    void widerThanTheFrame_saysHowMuchFits() {
        Answer answer = answer("framing", MACRO + "thing: {width: 300 mm, height: 100 mm}\nfills: {height: 80 %}\n");
        assertThat(answer.notes().attempts()).contains("To have all of it in the frame, let it fill 59 % at most.");
    }

    @Test
    void tank_addsTheParaxialShift_andLimitsAreTruePlaces() {
        Answer dry = answer("framing", FLACON);
        Answer wet = answer("framing", FLACON + "through: {air_gap: 50 mm, glass: 8 mm, water: 120 mm}\n");
        double shift = 8 * (1 - 1 / 1.52) + 120 * (1 - 1 / 1.333);
        assertThat(number(wet, "distance") - number(dry, "distance")).isCloseTo(shift, within(1e-9));
        assertThat(number(wet, "magnification")).isCloseTo(number(dry, "magnification"), within(1e-12));
        assertThat(number(wet, "depth_of_field")).isCloseTo(1.333 * number(dry, "depth_of_field"), within(1e-9));
        assertThat(number(wet, "far_limit") - number(wet, "distance"))
                .isCloseTo(1.333 * (number(dry, "far_limit") - number(dry, "distance")), within(1e-9));
        assertThat(wet.verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void airGapTooSmall_failsAndSaysWhatWouldDo() {
        String text = FLACON + "through: {air_gap: 1 m, glass: 8 mm, water: 120 mm}\n";
        Answer answer = answer("framing", text);
        assertThat(answer.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(answer.notes().because())
                .contains("Before the pane there are 976 mm of air from the principal plane; 1000 mm are wanted.");
        assertThat(answer.notes().attempts())
                .containsExactly(
                        "Bring the thing 33 mm nearer to the pane, 87 mm behind it.",
                        "Let it fill 58.5 % instead of 60 %.",
                        "Take a lens of 103 mm or longer.",
                        "Focus 10 mm behind the front face: at f/8 front and edge are then sharp.");
        String nearer = text.replace("water: 120 mm", "water: 87 mm");
        assertThat(answer("framing", nearer).verdict()).isEqualTo(Verdict.HOLDS);
        String smaller = text.replace("height: 60 %", "height: 58.5 %");
        assertThat(answer("framing", smaller).verdict()).isEqualTo(Verdict.HOLDS);
        String longer = text.replace("focal_length: 100 mm", "focal_length: 103 mm");
        assertThat(answer("framing", longer).verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void airGap_countsFromTheFrontWhereItIsKnown() {
        String text = FLACON + "through: {air_gap: 950 mm, glass: 8 mm, water: 120 mm}\n";
        assertThat(answer("framing", text).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(answer("framing", text + "sensor_to_front: 180 mm\n").verdict())
                .isEqualTo(Verdict.FAILS);
    }

    @Test
    void thingThatCutsThePane_fails() {
        Answer answer = answer("framing", FLACON + "through: {glass: 8 mm, water: 15 mm}\n");
        assertThat(answer.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(answer.notes().because()).contains("The thing would cut 6 mm into the pane.");
        assertThat(answer.notes().attempts()).contains("Hang it 6 mm farther from the pane.");
    }

    @Test
    void spread_isTheFormulasOwnSlope() {
        // By hand: distance = f (1 + h/(share·H)), so its slope in h is f/(share·H); 80 % is 0.6539 of a 95 %
        // half-width.
        Answer answer = answer("framing", BASE.replace("122.2 mm", "122.2 mm ± 1 mm"));
        Value.Spread distance = spread(answer, "distance");
        double half = 0.65386 * 100 / (0.7 * 20.25);
        assertThat(distance.high() - distance.value()).isCloseTo(half, within(1e-3 * half));
        assertThat(distance.value() - distance.low()).isCloseTo(half, within(1e-3 * half));
        assertThat(answer.getValue("hyperfocal")).isInstanceOf(Value.Number.class);
    }

    @Test
    void spreads_addAsSquares() {
        String one = BASE.replace("122.2 mm", "122.2 mm ± 1 mm");
        String two = BASE.replace("focal_length: 100 mm", "focal_length: 100 mm ± 2 %");
        String both = one.replace("focal_length: 100 mm", "focal_length: 100 mm ± 2 %");
        double first = half(one);
        double second = half(two);
        assertThat(half(both)).isCloseTo(Math.hypot(first, second), within(1e-6));
        assertThat(second).isGreaterThan(first);
    }

    /// Far lengths are said in metres or feet with three digits: nobody sets 66767 mm.
    @Test
    void farLengths_areInMetresOrFeet() {
        Answer answer =
                answer("framing", Questions.find("framing").orElseThrow().example());
        assertThat(number(answer, "hyperfocal")).isCloseTo(66_766.7, within(0.1));
        assertThat(answer.toText(PaperUnit.MILLIMETRES)).containsPattern("hyperfocal +66.8 m\n");
        assertThat(answer.toText(PaperUnit.INCHES)).containsPattern("hyperfocal +219 ft\n");
    }

    private static double half(String text) {
        Value.Spread distance = spread(answer("framing", text), "distance");
        return distance.high() - distance.value();
    }

    @Test
    void valuePassesButIntervalDoesNot_isTight() {
        String text = FLACON + "through: {air_gap: 970 mm, glass: 8 mm, water: 120 mm}\n";
        assertThat(answer("framing", text).verdict()).isEqualTo(Verdict.HOLDS);
        Answer answer = answer("framing", text.replace("water: 120 mm", "water: 120 mm ± 20 mm"));
        assertThat(answer.verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(answer.notes().because())
                .contains("Tight: the air before the pane is enough with the values as given, but not over all of its"
                        + " 80 % interval.");
    }

    @Test
    void text_isShort_inTheInputsUnit() {
        Outcome outcome =
                Asking.ask("framing", BASE.replace("66.2 mm", "2.6 in").replace("122.2 mm", "4 13/16 in"));
        String text = ((Outcome.Answered) outcome).toText();
        assertThat(text).contains("distance          37 7/8 in").contains("1/3 stops");
        assertThat(text.lines().count()).isLessThanOrEqualTo(30);
        assertThat(((Outcome.Answered) Asking.ask("framing", BASE)).toText()).contains("distance          962 mm");
    }

    @Test
    void problems_areAllFoundAndNamed() {
        String text = """
            sensor: {width: 36 mm, height: 20.25 kg, across: 3840 px}
            focal_lenght: 100 mm
            f_number: -8
            thing: {width: 66.2 mm, height: -122.2 mm}
            fills: {height: 70 %, width: 4}
            """;
        List<String> problems = problems("framing", text);
        assertThat(problems).hasSize(6);
        assertThat(problems.get(0)).startsWith("ask.yaml:1:32 sensor.height is 20.25 kg; must be a length in mm");
        assertThat(problems.get(1))
                .startsWith("ask.yaml:2:15 focal_lenght is not a known key; must be one of sensor, focal_length")
                .contains("Try focal_length.");
        assertThat(problems.get(2)).startsWith("ask.yaml:3:11 f_number is -8; must be from 0.5 to 128");
        assertThat(problems.get(3)).startsWith("ask.yaml:4:33 thing.height is -122.2 mm; must be from 0.01 mm");
        assertThat(problems.get(4))
                .startsWith("ask.yaml:5:8 fills is given height and width; must be given height, or");
        assertThat(problems.get(5)).startsWith("ask.yaml:5:30 fills.width is a bare number (4); must be a share in %");
    }

    @Test
    void missingLens_isNamed() {
        assertThat(problems("framing", SENSOR + CAN + "fills: {height: 70 %}\n"))
                .containsExactly(
                        "ask.yaml:1:1 focal_length is missing; must be a length in mm, cm, m, in, ft, µm or nm\n"
                                + "  Try the value engraved on the lens, such as 50 mm.   (P-KEY-02,"
                                + " docs/problems.md)");
    }

    @Test
    void spreadOfNothing_isTakenUpwards() {
        // Nothing can be less thick than 0: the slope is taken on the side that there is. 1 mm of glass adds 1 −
        // 1/1.52.
        Answer answer = answer("framing", FLACON + "through: {glass: 0 mm ± 1 mm, water: 120 mm}\n");
        Value.Spread distance = spread(answer, "distance");
        assertThat(distance.high() - distance.low()).isCloseTo(2 * 0.65386 * (1 - 1 / 1.52), within(1e-4));
        for (String wall : List.of("{glass: 8 mm, water: 0 mm ± 5 mm}", "{air_gap: 0 mm ± 3 mm, water: 9 cm}")) {
            assertThat(answer("framing", FLACON + "through: " + wall + "\n").verdict())
                    .isNotNull();
        }
    }

    @Test
    void openUp_isEnough() {
        for (String stop : List.of("14.6", "16", "20", "32")) {
            String text = BASE + "f_number: ";
            String attempt =
                    answer("framing", text + stop + "\n").notes().attempts().getLast();
            assertThat(attempt).startsWith("Open up to f/").endsWith(" or wider to stay within a working f/16.");
            String open = attempt.substring("Open up to f/".length(), attempt.indexOf(" or wider"));
            assertThat(answer("framing", text + open + "\n").notes().cautions()).isEmpty();
        }
    }

    @Test
    void triesInInches_areOnSixteenths_andHold() {
        String text = MACRO + "fills: {height: 60 %}\nthing: {width: 1.65 in, height: 4.65 in, depth: 1.65 in}\n"
                + "through: {air_gap: 40 in, glass: 5/16 in, water: 4 3/4 in}\n";
        String attempt = answer("framing", text).notes().attempts().getFirst();
        assertThat(attempt).startsWith("Bring the thing ").endsWith(" in behind it.");
        String water = attempt.substring(attempt.indexOf("pane, ") + 6, attempt.indexOf(" behind it"));
        assertThat(answer("framing", text.replace("water: 4 3/4 in", "water: " + water))
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
    }

    @Test
    void blurWiderThanThePupilCanTellApart_isRefused() {
        List<String> problems = problems("framing", BASE + "pupil_ratio: 0.2\nf_number: 128\nsharp_to: 1 mm\n");
        assertThat(problems)
                .containsExactly(
                        "ask.yaml:7:11 sharp_to is a blur disc of 1 mm; must be less than 0.1758 mm with this f-number"
                                + " and pupil ratio\n"
                                + "  Open up, or take a smaller blur disc: this one is wider than the lens's pupil can"
                                + " tell apart.   (P-ASK-02, docs/problems.md)");
    }

    @Test
    void wallWithoutGlassOrWater_isRefused() {
        assertThat(problems("framing", BASE + "through: {air_gap: 5 mm}\n"))
                .hasSize(1)
                .allMatch(text -> text.contains("through") && text.contains("glass") && text.contains("water"));
    }

    @Test
    void extremes_areAnsweredWithoutNonsense() {
        for (String fill : List.of("0.01 %", "10000 %")) {
            for (String f : List.of("1 mm", "5 m")) {
                for (String thing : List.of("{width: 0.01 mm, height: 1000 m}", "{width: 1 km, height: 0.01 mm}")) {
                    String text = SENSOR + "focal_length: " + f + "\nthing: " + thing.replace("1 km", "1000 m")
                            + "\nfills: {height: " + fill + "}\nf_number: 128\nsharp_to: 10 mm\n";
                    Answer answer = answer("framing", text);
                    assertThat(number(answer, "near_limit")).isFinite().isPositive();
                    assertThat(number(answer, "near_limit")).isLessThan(number(answer, "distance"));
                }
            }
        }
    }
}
