package plumeline.solve;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.plan.Plans;

/// What is wanted of all cuts together, of the film's own and of its cut-downs.
final class FilmCutsTest {
    private static WantAnswer answer(String want, String square, String cut) {
        String text = """
                plumeline: 1
                film: {rate: 24 fps, tempo: 120 bpm}
                deliver: {square: {ratio: "1:1"%s}}
                kit:
                  cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
                  lenses: {fifty: {focal_length: 50 mm}}
                shots:
                  one:
                    camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm]}
                    passes: {a: {}, b: {camera.f_number: 4}}
                  two: {camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm]}}
                cut: [%s]
                wants: [{%s}]
                """.formatted(square, cut, want);
        Plans.Reading reading = Plans.read(text.getBytes(UTF_8), "p.yaml");
        assertThat(reading.problems()).isEmpty();
        return Solve.film(reading.plan().orElseThrow()).wants().getFirst();
    }

    @Test
    void onBeat_isTheWorstOfAllCuts() {
        String good = "{shot: one, frames: 24}, {shot: two, frames: 24}";
        WantAnswer both = answer("on_beat: cuts", ", cut: [" + good + "]", good);
        assertThat(both.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(both.margin()).isEqualTo(new WantAnswer.Margin.Of(0, "frames"));
        WantAnswer off = answer("on_beat: cuts", ", cut: [{shot: one, frames: 29}, {shot: two, frames: 24}]", good);
        assertThat(off.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(off.margin()).isEqualTo(new WantAnswer.Margin.Of(-5, "frames"));
        assertThat(off.because().getFirst()).startsWith("In square's own cut: 1 of 1 cut is off the beat");
        assertThat(off.attempts()).hasSize(1);
    }

    @Test
    void flashSafe_countsCutDownsToo() {
        String slow = "{shot: one, frames: 96, alternate: [a, b], each: 24}";
        assertThat(answer("flash_safe: cuts", "", slow).verdict()).isEqualTo(Verdict.NO_OBJECTION_FOUND);
        WantAnswer fast =
                answer("flash_safe: cuts", ", cut: [{shot: one, frames: 48, alternate: [a, b], each: 2}]", slow);
        assertThat(fast.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(fast.because().getFirst()).startsWith("In square's own cut: The worst second has");
    }

    @Test
    void flashSafe_ofOneLook_hasNothingToObject() {
        WantAnswer one = answer("flash_safe: cuts", "", "{shot: two, frames: 48}");
        assertThat(one.verdict()).isEqualTo(Verdict.NO_OBJECTION_FOUND);
        assertThat(one.because())
                .isEqualTo(List.of(
                        "One look throughout: no cut changes it.", one.because().get(1)));
    }
}
