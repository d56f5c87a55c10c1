package plumeline.ask.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumeline.ask.Asking.answer;
import static plumeline.ask.Asking.number;
import static plumeline.ask.Asking.problems;
import static plumeline.ask.Asking.spread;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;
import plumeline.answer.Value;
import plumeline.answer.Verdict;

/// How `colour` and `gel` are asked and what they say.
final class ColourTest {
    private static final String PAIR =
            "emitters: [{x: 0.45, y: 0.41, lumens: 100 lm}, {name: cool white, x: 0.31, y: 0.33, lumens: 100 lm}]\n";

    @Test
    void typicalEmitters_areListedAsAssumed() {
        Answer answer = answer("colour", "colour: 4000 K\n");
        assertThat(answer.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(answer.assumed().stream().map(Answer.Assumed::name))
                .containsExactly("primaries", "emitters", "want");
        assertThat(((Value.Word) answer.assumed().get(1).value()).text()).contains("green [0.17, 0.7] 600 lm");
        assertThat(answer("colour", "colour: 4000 K\nwant: white\nprimaries: typical\n")
                        .assumed())
                .hasSize(1);
        assertThat(answer.notes().cautions()).anyMatch(text -> text.contains("nobody looks into the lamp"));
    }

    @Test
    void names_mayHaveSpacesOrBeLeftOut() {
        Answer answer = answer("colour", PAIR + "colour: [0.31, 0.33]\n");
        assertThat(number(answer, "drive_1")).isZero();
        assertThat(number(answer, "drive_cool_white")).isEqualTo(100);
        assertThat(problems("colour", PAIR.replace("x: 0.45", "name: cool_white, x: 0.45") + "colour: 4000 K\n"))
                .hasSize(1)
                .allSatisfy(text -> assertThat(text)
                        .contains("emitters[2].name is cool_white again; must be a name of its own")
                        .contains("P-ASK-94"));
    }

    /// What is told to try was tried: it is reached.
    @Test
    void palerColour_isReached() {
        Answer far = answer("colour", "colour: \"#0000ff\"\nwant: complement\n");
        assertThat(far.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(number(far, "distance_uv")).isPositive();
        assertThat(far.notes().because()).anyMatch(text -> text.contains("No light has just that colour"));
        Matcher paler = Pattern.compile("colour: (\\[.*?])")
                .matcher(far.notes().attempts().getFirst());
        assertThat(paler.find()).isTrue();
        assertThat(answer("colour", "colour: " + paler.group(1) + "\n").verdict())
                .isEqualTo(Verdict.HOLDS);
    }

    /// A colour that is reached as given, but not over all of its ±, is tight.
    @Test
    void spread_nearTheReach_isTight() {
        String text = "colour: [0.6, 0.36 ± 0.005]\n";
        assertThat(answer("colour", text).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(answer("colour", "colour: [0.6, 0.372 ± 0.01]\n").verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(spread(answer("colour", text), "y").low()).isLessThan(0.36);
    }

    @Test
    void noWhite_hasNoTemperature() {
        Answer answer = answer("colour", "colour: [0.17, 0.6]\nagainst: 5600 K\n");
        assertThat(answer.getValue("kelvin")).isEqualTo(new Value.Word("unknown"));
        assertThat(answer.getValue("duv")).isEqualTo(new Value.Word("unknown"));
        assertThat(answer.getValue("mired_shift")).isEqualTo(new Value.Word("unknown"));
        assertThat(answer.verdict()).isEqualTo(Verdict.UNKNOWN);
        Answer gel = answer("gel", "from: 3200 K\nto: [0.17, 0.6]\n");
        assertThat(gel.verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(gel.notes().because()).anyMatch(text -> text.startsWith("to isn't a white"));
    }

    @Test
    void grey_isItsOwnComplement() {
        Answer answer = answer("colour", "colour: \"#808080\"\nwant: complement\n");
        assertThat(number(answer, "x")).isCloseTo(0.3127, within(1e-6));
        assertThat(answer.notes().because()).anyMatch(text -> text.contains("as good as grey"));
    }

    @Test
    void whatCannotBe_isRefusedWithWhatIsAccepted() {
        check("colour: \"#000000\"\n", "colour is black; must be a colour that a light can have", "P-ASK-92");
        check("colour: [0.7, 0.5]\n", "colour is [0.7, 0.5], together 1.2; must be x and y", "P-ASK-90");
        check("colour: [0.3, 0.3]\nwant: white\n", "must be a temperature in kelvin where white is wanted", "P-ASK-91");
        check(
                "colour: \"#000020\"\nwant: complement\n",
                "try the same hue as bright as it gets, \"#0000ff\"",
                "P-ASK-93");
        check("colour: 4000 K\nby: luv\n", "by is luv; must be left out where no complement is wanted", "P-ASK-95");
        check("colour: [0.17, 0.75]\nwant: complement\nby: rgb\n", "a colour that a screen has", "P-ASK-96");
        check("colour: 5600\n", "must be a colour temperature in K", "P-UNIT-01");
        check("colour: 900 K\n", "must be from 1000 K to 100000 K", "P-RANGE-01");
        check("colour: #2a9d8f\n", "in quotes where it begins with #", "P-TEXT-08");
        assertThat(answer("colour", "colour: \"#0000ff\"\nwant: complement\n").answers())
                .isNotEmpty();
    }

    private static void check(String text, String said, String code) {
        assertThat(problems("colour", text))
                .as(text)
                .hasSize(1)
                .allSatisfy(problem -> assertThat(problem).contains(said).contains(code));
    }

    @Test
    void gel_saysWhichKind() {
        Answer warm = answer("gel", "from: 5600 K\nto: 3200 K ± 100 K\n");
        assertThat(warm.notes().because()).anyMatch(text -> text.contains("warming (orange, +) gel of +134 mireds"));
        assertThat(spread(warm, "mired_shift").low())
                .isLessThan(spread(warm, "mired_shift").value());
        assertThat(answer("gel", "from: 3200 K\nto: [0.33, 0.36]\n").notes().because())
                .anyMatch(text -> text.contains("plus green gel"));
        assertThat(answer("gel", "from: 5600 K\nto: 5500 K\n").notes().because())
                .anyMatch(text -> text.contains("hardly seen"));
    }
}
