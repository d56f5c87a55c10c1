package plumeline.sketch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import plumeline.draw.SvgReader;

final class MarkupTest {
    @Test
    void textAndAttributes_comeBackAsTheyWentIn() {
        String hostile = "</g><script>alert(\"1\" & '2')</script> ]]> שלום 商品";
        String xml = Markup.of("g", hostile).with("title", hostile).toText();
        var root = SvgReader.parse(xml).getDocumentElement();
        assertThat(root.getTextContent()).isEqualTo(hostile);
        assertThat(root.getAttribute("title")).isEqualTo(hostile);
        assertThat(root.getElementsByTagName("*").getLength()).isZero();
    }

    @Test
    void whatXmlCannotHold_isReplaced() {
        assertThat(Markup.escaped("a\u0000b\u001b\uD800c\uFFFF")).isEqualTo("a\uFFFDb\uFFFD\uFFFDc\uFFFD");
    }

    @Test
    void numbers_haveNeitherExponentNorNegativeZero() {
        assertThat(Markup.number(-0.001)).isEqualTo("0");
        assertThat(Markup.number(1e7)).isEqualTo("10000000");
        assertThat(Markup.number(2.005)).isEqualTo("2.01");
    }

    @Test
    void styleSheet_cannotEndItsElement() {
        assertThatThrownBy(() -> Markup.style("a</style>")).isInstanceOf(IllegalArgumentException.class);
    }
}
