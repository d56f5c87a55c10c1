package plumeline.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import plumeline.plan.Plan;
import plumeline.timeline.Timeline;

/// A film's cut laid out look by look.
final class CutLooksTest {
    private static Plan plan(String cut) {
        return LookPlan.plan(
                LookPlan.LOOKS.replace("WANT", "steady_light: key").replaceAll("(?s)\ncut:.*", "\ncut: " + cut));
    }

    private static Timeline looks(String cut) {
        return Timeline.of(plan(cut));
    }

    @Test
    void alternating_goesRound_andTheLastLookIsWhatIsLeft() {
        assertThat(CutLooks.of(looks("[{shot: one, frames: 14, alternate: [green, white], each: 6}]")))
                .containsExactly(
                        new CutLooks("one", "green", 6),
                        new CutLooks("one", "white", 6),
                        new CutLooks("one", "green", 2));
    }

    @Test
    void aLookThatGoesOn_isOne() {
        assertThat(CutLooks.of(looks("[{shot: one, pass: green, frames: 10}, {shot: one, frames: 12, alternate:"
                        + " [green, white], each: 6}, {shot: one, frames: 5}, {shot: one, frames: 5}]")))
                .containsExactly(
                        new CutLooks("one", "green", 16), new CutLooks("one", "white", 6), new CutLooks("one", "", 10));
    }

    @Test
    void between_areStretchesOfThoseLooksOnly() {
        Plan plan = plan("[{shot: one, frames: 12, alternate: [green, white], each: 6}, {shot: one, frames: 5},"
                + " {shot: one, pass: white, frames: 9}, {shot: one, pass: green, frames: 7}]");
        assertThat(CutLooks.between(plan, "one", Set.of("green", "white")))
                .containsExactly(
                        List.of(new CutLooks("one", "green", 6), new CutLooks("one", "white", 6)),
                        List.of(new CutLooks("one", "white", 9), new CutLooks("one", "green", 7)));
        assertThat(CutLooks.between(plan, "one", Set.of("green"))).isEmpty();
        assertThat(CutLooks.between(plan, "two", Set.of("green", "white"))).isEmpty();
    }
}
