package plumeline.ask.light;

import static org.assertj.core.api.Assertions.assertThat;
import static plumeline.ask.Asking.answer;
import static plumeline.ask.Asking.number;
import static plumeline.ask.Asking.problems;

import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;
import plumeline.answer.Verdict;
import plumeline.quantity.PaperUnit;

/// The question `cut-flash`.
final class CutFlashTest {
    private static Answer ask(String rate, String frames, String more) {
        return answer("cut-flash", "rate: " + rate + "\nframes_per_look: " + frames + "\n" + more);
    }

    private static Verdict verdict(String frames, String more) {
        return ask("24 fps", frames, more).verdict();
    }

    /// Three pairs in a second at most, and no more than just (WCAG 2.2, 2.3.1): four frames at 24 fps.
    @Test
    void framesALook_decide() {
        assertThat(verdict("3", "")).isEqualTo(Verdict.FAILS);
        assertThat(verdict("4", "")).isEqualTo(Verdict.TIGHT);
        assertThat(verdict("5", "")).isEqualTo(Verdict.NO_OBJECTION_FOUND);
        assertThat(number(ask("25 fps", "4", ""), "pairs_per_second")).isEqualTo(3.5);
        assertThat(ask("25 fps", "4", "").verdict()).isEqualTo(Verdict.FAILS);
        Answer broadcast = ask("23.976 fps", "4", "");
        assertThat(number(broadcast, "pairs_per_second")).isEqualTo(3);
        assertThat(number(broadcast, "least_frames")).isEqualTo(4);
        assertThat(number(broadcast, "advised_frames")).isEqualTo(5);
    }

    @Test
    void caution_alwaysComesFirst() {
        for (String frames : new String[] {"2", "4", "100"}) {
            Answer answer = ask("24 fps", frames, "");
            assertThat(answer.notes().cautions()).anyMatch(text -> text.contains("seizures"));
            assertThat(answer.toText(PaperUnit.MILLIMETRES)).containsPattern("^cut-flash: [a-z ]+\nCaution  Flashes");
            assertThat(answer.toText(PaperUnit.MILLIMETRES)).doesNotContain("safe");
        }
    }

    /// A list is the looks as cut; only what lies within one second counts together.
    @Test
    void list_isCountedAsCut() {
        assertThat(number(ask("24 fps", "[24, 4, 4, 4, 24]", ""), "pairs_per_second"))
                .isEqualTo(2);
        assertThat(verdict("[24, 2, 2, 2, 2, 2, 2, 24]", "")).isEqualTo(Verdict.FAILS);
        assertThat(verdict("[4, 4, 4, 4, 4, 4, 4]", "")).isEqualTo(Verdict.TIGHT);
        assertThat(number(ask("24 fps", "[8, 4]", "times: 10\n"), "pairs_per_second"))
                .isEqualTo(2);
    }

    /// Alike within 10 % of full, or darker side from 80 % on (WCAG 2.2): no change counts, but those of a saturated
    /// red.
    @Test
    void luminances_decideWhatCounts() {
        assertThat(verdict("2", "luminances: [50 %, 41 %]\n")).isEqualTo(Verdict.NO_OBJECTION_FOUND);
        assertThat(verdict("2", "luminances: [50 %, 40 %]\n")).isEqualTo(Verdict.FAILS);
        assertThat(verdict("2", "luminances: [1, 0.8]\n")).isEqualTo(Verdict.NO_OBJECTION_FOUND);
        assertThat(verdict("2", "luminances: [50 %, 41 %]\nred: yes\n")).isEqualTo(Verdict.FAILS);
        assertThat(verdict("2", "luminances: [50 % ± 3 %, 41 %]\n")).isEqualTo(Verdict.TIGHT);
        assertThat(verdict("4", "luminances: [50 %, 20 %]\n")).isEqualTo(Verdict.TIGHT);
        assertThat(number(ask("24 fps", "2", "luminances: [50 %, 41 %]\n"), "pairs_per_second"))
                .isEqualTo(6);
        assertThat(number(ask("24 fps", "2", "luminances: [50 %, 41 %]\n"), "flashes_per_second"))
                .isZero();
    }

    /// Up to a quarter of the picture doesn't count (BT.1702); seen large, less (WCAG: .006 sr).
    @Test
    void area_decidesWhatCounts() {
        assertThat(verdict("2", "area_of_the_picture: 25 %\n")).isEqualTo(Verdict.NO_OBJECTION_FOUND);
        assertThat(verdict("2", "area: 26 %\n")).isEqualTo(Verdict.FAILS);
        assertThat(verdict("2", "area: 20 %\nseen: 30 deg\n")).isEqualTo(Verdict.FAILS);
        assertThat(verdict("2", "area: 3 %\nseen: 30 deg\n")).isEqualTo(Verdict.NO_OBJECTION_FOUND);
        assertThat(verdict("2", "area: 24 % ± 4 %\n")).isEqualTo(Verdict.TIGHT);
        assertThat(problems("cut-flash", "rate: 24 fps\nframes_per_look: 4\narea: 3 %\narea_of_the_picture: 3 %\n"))
                .isNotEmpty();
    }

    /// Over five seconds there is a risk within all other limits (BT.1702).
    @Test
    void length_isCountedWhereItIsTold() {
        assertThat(verdict("8", "lasts: 4 s\n")).isEqualTo(Verdict.NO_OBJECTION_FOUND);
        Answer longer = ask("24 fps", "8", "lasts: 6 s\n");
        assertThat(longer.verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(number(longer, "sequence")).isEqualTo(6);
        assertThat(longer.notes().attempts()).anyMatch(text -> text.contains("before 5 s"));
        assertThat(verdict("24", "lasts: 60 s\n")).isEqualTo(Verdict.NO_OBJECTION_FOUND);
        assertThat(ask("24 fps", "8", "").notes().because()).anyMatch(text -> text.contains("isn't told"));
    }

    @Test
    void whatCantBe_isRefused() {
        assertThat(problems("cut-flash", "rate: 24 fps\nframes_per_look: 4.5\n"))
                .singleElement()
                .satisfies(said -> assertThat(said).contains("frames_per_look is 4.5; must be a whole number"));
        assertThat(problems("cut-flash", "rate: 24 fps\nframes_per_look: [4, 4]\nlasts: 3 s\n"))
                .hasSize(1);
        assertThat(problems("cut-flash", "rate: 24 fps\nframes_per_look: 4\ntimes: 3\n"))
                .hasSize(1);
        assertThat(problems("cut-flash", "rate: 24 fps\nframes_per_look: 0\n")).hasSize(1);
        assertThat(problems("cut-flash", "rate: 24 fps\nframes_per_look: 4\nluminances: [120 %, 3 %]\n"))
                .hasSize(1);
    }

    @Test
    void rateWithPlusMinus_isAnswered() {
        assertThat(number(ask("24 fps ± 0.1 fps", "5", ""), "least_frames")).isEqualTo(4);
    }
}
