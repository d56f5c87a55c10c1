package plumeline.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumeline.plan.Plans;

/// Any lamps, looks and cuts have findings in figures, or say what is missing.
final class LookFuzzTest {
    private static final String PLAN = """
        plumeline: 1
        film: {rate: %s fps}
        things: {can: {diameter: 60 mm, height: 100 mm, body: opaque, hue: %s deg, colour: "#%06x"}}
        kit:
          cameras:
            main:
              {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px},
              modes: [{rate: 25 fps, readout: %s ms}, {rate: 50 fps}]%s}
          lenses: {fifty: {focal_length: 50 mm}}
          lights:
            one: {point: yes, gives: %s cd, primaries: typical, pulse_rate: %s Hz, depth: %s %%}
            two: {panel: [300 mm, 300 mm], gives: 900 lx at 1 m, %s}
        shots:
          a:
            camera:
              {body: main, lens: fifty, at: [0 mm, -700 mm, 60 mm], aim: hero, f_number: 8,
              rate: 25 fps, shutter: %s deg}
            place: {hero: {thing: can, at: [0 mm, 0 mm]}}
            lights:
              key: {light: one, at: [%s mm, -600 mm, 300 mm], %s}
              wash: {light: two, at: [%s mm, -600 mm, 300 mm], level: %s %%}
            frames: 50
            passes: {one: {lights.wash.level: 0 %%}, two: {lights.key.level: %s %%}, three: {}}
            wants:
              - {matched: [one, two, three], by: %s stops}
              - {steady_light: key}
              - {flash_safe: [one, three]}
              - {look: [one, two], light: key, colour: %s K}
              - {look: [two, three], upon: hero, colour: "#%06x"}
        cut:
          - {shot: a, frames: %s, alternate: [one, three, two], each: %s}
          - {shot: a, pass: one, frames: 9}
          - {shot: a, pass: three, frames: 7}
        wants: [{flash_safe: cuts}]
        """;

    private final Random random = new Random(41);

    private String of(String... choices) {
        return choices[random.nextInt(choices.length)];
    }

    private int under(int bound) {
        return random.nextInt(bound);
    }

    private String plan() {
        return PLAN.formatted(
                of("24", "25", "29.97"),
                under(720) - 360,
                under(0x1000000),
                1 + under(20),
                of("", ", iso: {base: 800}"),
                1 + under(3000),
                of("100", "120", "7", "999.5", "20000"),
                under(101),
                of(
                        "white: 5600 K",
                        "white: [2700 K, 6500 K]",
                        "primaries: typical, gives_with: set",
                        "pulse_rate: 9 Hz"),
                of("180", "360", "5", "172.8"),
                under(900) - 450,
                of(
                        "hue: complement",
                        "hue: " + under(360) + " deg",
                        "white: " + (900 + under(9000)) + " K",
                        "level: 40 %"),
                under(900) - 450,
                under(101),
                under(101),
                under(7) - 3,
                of("1500", "5600", "20000"),
                under(0x1000000),
                1 + under(300),
                1 + under(30));
    }

    @Test
    void findings_areFigures_orSayWhatIsMissing() {
        int figures = 0;
        for (int i = 0; i < 25; i++) {
            String text = plan();
            var reading = Plans.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml");
            assertThat(reading.problems()).as(text).isEmpty();
            FilmAnswer film = Solve.film(reading.plan().orElseThrow());
            List<WantAnswer> wants = film.shots().getFirst().wants();
            for (WantAnswer want : wants) {
                String said = want.want() + want.because() + want.attempts();
                assertThat(said).as(text).doesNotContain("NaN", "Infinity", "null", "  ");
                assertThat(want.because()).as(text).isNotEmpty();
                if (want.margin() instanceof WantAnswer.Margin.Of(double value, String _)) {
                    assertThat(value).as(text).isFinite();
                    figures++;
                } else {
                    assertThat(want.verdict()).as(text).isIn(Verdict.UNKNOWN, Verdict.FAILS);
                }
            }
            assertThat(wants.get(2).verdict()).as(text).isNotEqualTo(Verdict.HOLDS);
            assertThat(film.wants().getFirst().verdict()).as(text).isNotEqualTo(Verdict.HOLDS);
        }
        assertThat(figures).isGreaterThan(60);
    }
}
