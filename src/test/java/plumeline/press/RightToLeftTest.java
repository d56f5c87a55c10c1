package plumeline.press;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class RightToLeftTest {
    /// Forms as the Unicode Standard's chart of Arabic Presentation Forms-B has them.
    @Test
    void arabic_isJoined_latinStays() {
        RightToLeft.Turner turner = new RightToLeft.Turner();
        assertThat(turner.shapeText("\u0634\u062A\u0627")).isEqualTo("\uFEB7\uFE98\uFE8E");
        assertThat(turner.shapeText("\u0633\u0644\u0627\u0645")).isEqualTo("\uFEB3\uFEE0\uFE8E\uFEE1");
        assertThat(turner.shapeText("Winter 24")).isEqualTo("Winter 24");
    }

    /// Brackets are mirrored, as the Unicode Bidirectional Algorithm's rule L4 has it.
    @Test
    void turned_isReadFromTheOtherEnd_withBracketsMirrored() {
        assertThat(RightToLeft.reversed("(\u05D0\u05D1)")).isEqualTo("(\u05D1\u05D0)");
    }
}
