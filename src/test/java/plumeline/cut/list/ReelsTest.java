package plumeline.cut.list;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

final class ReelsTest {
    private static List<String> named(String... reels) {
        List<Reels.Reel> each =
                Stream.of(reels).map(name -> new Reels.Reel(name, "")).toList();
        Reels all = Reels.of(each);
        return each.stream().map(all::name).toList();
    }

    @Test
    void names_areEightLettersAndDigits_eachAnother() {
        assertThat(named("A003", "looks-green", "looks-grey", "looksgreat", "a003", "LOOKSGRE", "A003"))
                .containsExactly("A003", "LOOKSGR2", "LOOKSGR3", "LOOKSGR4", "A0032", "LOOKSGRE", "A003");
    }

    @Test
    void namesThatMeanSomething_areKeptFree() {
        assertThat(named("black", "BL", "ax", "-", "_", "größe"))
                .containsExactly("BLACK2", "BL2", "AX2", "REEL", "REEL2", "GROSSE");
    }
}
