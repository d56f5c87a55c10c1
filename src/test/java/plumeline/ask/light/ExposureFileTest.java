package plumeline.ask.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumeline.ask.Asking.number;
import static plumeline.ask.Asking.spread;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;
import plumeline.answer.Beside;
import plumeline.answer.Value;
import plumeline.answer.Verdict;
import plumeline.ask.Asking;
import plumeline.light.LampFile;
import plumeline.light.WrittenLamp;

/// The question `exposure` with a photometric file: 1000 cd along its axis, a tenth of them less every 10 deg, nothing
/// past 90 deg, a disc of 200 mm.
final class ExposureFileTest {
    private static final String ROUND = WrittenLamp.round().lm63(List.of(0.0));
    private static final String QUARTERS = WrittenLamp.twiceMirrored().lm63(List.of(0.0, 45.0, 90.0));

    private static String question(String light) {
        return "light: {" + light + "}\ndistance: 2 m\niso: 800\nf_number: 4\nrate: 25 fps\n";
    }

    private static Beside holding(String lamp) {
        return (_, _) -> new Beside.File.There(WrittenLamp.bytes(lamp));
    }

    private static Answer answer(String light, String lamp) {
        return Asking.answer(Asking.ask("exposure", question(light), holding(lamp)));
    }

    private static List<String> problems(String light, Beside beside) {
        return Asking.problems(Asking.ask("exposure", question(light), beside));
    }

    /// 1000 cd at 2 m are 250 lx, which f/4, 1/50 s and ISO 800 just need.
    @Test
    void alongTheAxis_isTheFilesIntensityOverTheDistanceSquared() {
        Answer answer = answer("file: lamp.ies", ROUND);
        assertThat(number(answer, "illuminance")).isCloseTo(250, within(1e-9));
        assertThat(number(answer, "margin")).isCloseTo(0, within(1e-9));
        assertThat(number(answer, "distance_for_exact")).isCloseTo(2000, within(1e-4));
        assertThat(answer.assumed())
                .anyMatch(each -> each.name().equals("light.off_axis"))
                .noneMatch(each -> each.name().equals("light.plane"));
        assertThat(answer.notes().because())
                .anyMatch(text -> text.startsWith("lamp.ies (40 W filament clear) gives 1000 cd along its axis"))
                .anyMatch(
                        text -> text.equals("Counted as from a point, right from 1000 mm on, five times the 200 mm over"
                                + " which it glows."));
    }

    @Test
    void bothForms_ofOneLamp_answerTheSame() {
        String eulumdat = WrittenLamp.round().eulumdat(1, List.of(0.0), List.of(0.0));
        Answer answer = answer("file: lamp.ldt, off_axis: 30 deg", eulumdat);
        assertThat(number(answer, "illuminance")).isCloseTo(175, within(1e-9));
        assertThat(number(answer("file: lamp.ies, off_axis: 30 deg", ROUND), "illuminance"))
                .isCloseTo(175, within(1e-9));
    }

    /// At 35 deg half of 700 and 600 cd; its ± of 4 deg is 2.615 deg for 80 %, by 10 cd a degree over 4 m².
    @Test
    void offTheAxis_isBetweenTheFilesAngles() {
        Answer answer = answer("file: lamp.ies, off_axis: 35 deg ± 4 deg", ROUND);
        assertThat(number(answer, "illuminance")).isCloseTo(650 / 4.0, within(1e-9));
        double half = 4 * 1.2815516 / 1.9599640 * 10 / 4;
        assertThat(spread(answer, "illuminance").low()).isCloseTo(650 / 4.0 - half, within(1e-4));
        assertThat(answer.assumed()).anyMatch(each -> each.name().equals("light.plane"));
    }

    /// The lamp of four like quarters has 1000 cd in C 0, 900 in C 45, 800 in C 90, each less by a fifth at 20 deg.
    @Test
    void planes_areToldApart() {
        checkCandela(800, "plane: 0 deg");
        checkCandela(720, "plane: 45 deg");
        checkCandela(640, "plane: 90 deg");
        checkCandela(640, "plane: 270 deg");
        checkCandela(800, "plane: 360 deg");
        checkCandela(760, "plane: 157.5 deg");
    }

    private static void checkCandela(double candela, String plane) {
        assertThat(number(answer("file: lamp.ies, off_axis: 20 deg, " + plane, QUARTERS), "illuminance"))
                .as(plane)
                .isCloseTo(candela / 4, within(1e-9));
    }

    @Test
    void noLightThatWay_failsWithoutNumbers() {
        Answer answer = answer("file: lamp.ies, off_axis: 120 deg", ROUND);
        assertThat(answer.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(number(answer, "illuminance")).isZero();
        assertThat(answer.getValue("margin")).isEqualTo(new Value.Word("none"));
        assertThat(answer.getValue("distance_for_exact")).isEqualTo(new Value.Word("none"));
        assertThat(answer.toJson()).doesNotContain("Infinity").doesNotContain("NaN");
        Answer edge = answer("file: lamp.ies, off_axis: 180 deg ± 5 deg", ROUND);
        assertThat(edge.verdict()).isEqualTo(Verdict.FAILS);
    }

    @Test
    void tiltFactors_countUntilted() {
        Answer told =
                answer("file: a.ies", ROUND.replace("TILT=NONE", "TILT=INCLUDE\r\n1\r\n3\r\n0 45 90\r\n0.8 0.7 0.6"));
        assertThat(number(told, "illuminance")).isCloseTo(200, within(1e-9));
        assertThat(told.notes().because()).anyMatch(text -> text.contains("isn't tilted, 0.8;"));
        Answer untold = answer("file: a.ies", ROUND.replace("TILT=NONE", "TILT=INCLUDE\r\n1\r\n2\r\n45 90\r\n0.7 0.6"));
        assertThat(number(untold, "illuminance")).isCloseTo(250, within(1e-9));
        assertThat(untold.notes().because()).anyMatch(text -> text.contains("none for a lamp that isn't tilted"));
    }

    @Test
    void measuredTilted_isSaid() {
        String eulumdat = WrittenLamp.round().eulumdat(1, List.of(0.0), List.of(0.0));
        String tilted = eulumdat.replace("\n100\n90\n1\n0\n1\n1\n", "\n100\n90\n1\n15\n1\n1\n");
        assertThat(answer("file: a.ldt", tilted).notes().because())
                .anyMatch(text -> text.contains("measured tilted by 15 deg"));
    }

    /// A disc of 200 mm, seen from 500 mm on its axis, gives 1/(1 + 0.2²) of a point's: 3.8 % less (Lambert's disc).
    @Test
    void nearIt_theSizeIsSaid() {
        String near = question("file: lamp.ies").replace("2 m", "500 mm");
        assertThat(Asking.answer(Asking.ask("exposure", near, holding(ROUND)))
                        .notes()
                        .because())
                .anyMatch(text -> text.contains("five times the 200 mm")
                        && text.contains("at 500 mm an even one gives about 3.8 % less"));
        assertThat(answer("file: a.ies", ROUND.replace("-0.2 -0.2 0", "0 0 0"))
                        .notes()
                        .because())
                .anyMatch(text -> text.contains("the file tells no size"));
    }

    @Test
    void filesThatAreNotThere_areRefusedWithPlaceAndWay() {
        Beside gone = (name, _) -> new Beside.File.Absent(name + ", which is not there", "See how it is spelled.");
        assertThat(problems("file: lamp.ies", gone))
                .containsExactly(
                        "ask.yaml:1:15 light.file is lamp.ies, which is not there; must be an LM-63 or EULUMDAT"
                                + " file that can be read\n  See how it is spelled.   (P-ASK-88, docs/problems.md)");
        assertThat(Asking.problems("exposure", question("file: lamp.ies")))
                .singleElement()
                .asString()
                .contains("a file that nobody handed in");
    }

    @Test
    void damagedFiles_areRefusedWithTheirLine() {
        checkDamaged(ROUND.replace("900.0", "NaN"), "in whose line 10 is: intensity is \"NaN\"");
        checkDamaged(ROUND.substring(0, ROUND.length() - 20), "in whose line 10 is: the file's end");
        checkDamaged(ROUND.replace("1 10 1 1 2", "1 11 1 1 2"), "in whose line 9 is: ");
        checkDamaged(ROUND.replace("1 10 1 1 2", "1 9 1 1 2"), "in whose line 8 is: ");
        checkDamaged(ROUND.replace("1 10 1 1 2", "1 10000000 1 1 2"), "in whose line 6 is: ");
        checkDamaged("", "in whose line 1 is: nothing");
        checkDamaged("a letter\nof two lines\n", "in whose line 2 is: the file's end");
        checkDamaged("1".repeat(LampFile.MOST_BYTES + 1), "in whose line 1 is: 4194305 bytes");
    }

    private static void checkDamaged(String lamp, String said) {
        assertThat(problems("file: lamp.ies", holding(lamp)))
                .singleElement()
                .asString()
                .startsWith("ask.yaml:1:15 light.file is lamp.ies, ")
                .contains(said)
                .contains("in its place would be: ")
                .contains("\n  Get the file anew")
                .endsWith("(P-ASK-89, docs/problems.md)");
    }

    @Test
    void anglesWithoutAFile_andTwoLights_areRefused() {
        assertThat(problems("candela: 5 cd, off_axis: 5 deg", holding(ROUND))).hasSize(1);
        assertThat(problems("lux: 5 lx, at: 1 m, plane: 5 deg", holding(ROUND))).hasSize(1);
        assertThat(problems("candela: 5 cd, file: a.ies", holding(ROUND))).hasSize(1);
        assertThat(problems("file: a.ies, off_axis: 181 deg", holding(ROUND))).hasSize(1);
    }

    @Test
    void aFile_isReadOnce_andNoMoreOfItThanCanBeUsed() {
        List<String> asked = new ArrayList<>();
        Beside counting = (name, mostBytes) -> {
            asked.add(name + " " + mostBytes);
            return new Beside.File.There(WrittenLamp.bytes(ROUND));
        };
        String text = question("file: lamp.ies, off_axis: 35 deg ± 4 deg").replace("2 m", "2 m ± 20 mm");
        Asking.answer(Asking.ask("exposure", text, counting));
        assertThat(asked).containsExactly("lamp.ies " + (LampFile.MOST_BYTES + 1));
    }
}
