package plumeline.want;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumeline.plan.Plan;
import plumeline.quantity.PaperUnit;
import plumeline.stage.Stage;

/// Wants on light of plans drawn by lot, with lamps in things, under the table, in and behind tanks: nothing breaks,
/// and no margin is NaN, wherever a search may set their marks.
final class LightFuzzTest {
    private static final int PLANS = 120;

    private static final List<String> WANTS = List.of(
            "lit: a",
            "lit: b, part: top",
            "lit: b, part: lid",
            "no_highlight: key, upon: b",
            "dark: b, by: 1 stops",
            "even: a",
            "ratio: a, by: 2 stops",
            "no_shadow: b, upon: a",
            "no_shadow: all",
            "no_shadow: key",
            "highlight: key, upon: a, from_left: 20 %, wide: 10 %",
            "highlight: fill, upon: b, from_left: 95 %",
            "no_highlight: camera",
            "no_highlight: crew, upon: a",
            "no_highlight: fill",
            "edges: a, rims: dark",
            "edges: b, rims: dark, part: base",
            "edges: b, rims: bright, wide: 2 %, within: 1 %",
            "edges: b, rims: bright, at: 60 mm");

    private final Random random = new Random(20261130);

    private String one(String... words) {
        return words[random.nextInt(words.length)];
    }

    private String mm(int from, int to) {
        return random.nextInt(from, to) + " mm";
    }

    private String thing(String name) {
        return name + ": {thing: " + one("tin", "bottle", "box") + ", at: [" + mm(-200, 200) + ", " + mm(-200, 400)
                + ", " + mm(0, 200) + "]" + one("", ", turn: 70 deg", ", tilt: 25 deg") + "}";
    }

    private String light(String name) {
        String at = one("free", "[" + mm(-900, 900) + ", " + mm(-900, 900) + ", " + mm(0, 1200) + "]");
        String kind = one("strip", "tube", "dot", "spot", "dish", "field", "paper", "black");
        boolean isLamp = !kind.equals("paper") && !kind.equals("black");
        return name + ": {light: " + kind + ", at: " + at + one("", ", aim: a", ", turn: 130 deg", ", tilt: free")
                + (isLamp ? one("", ", level: 0 %", ", level: free") : "") + "}";
    }

    private Plan plan() {
        String finish = one("", ", finish: gloss", ", finish: matte", ", finish: mirror");
        return Wanted.read("""
            plumeline: 1
            film: {rate: 24 fps}
            things:
              tin: {diameter: 60 mm, height: 120 mm%s, label: {width: %s, height: 40 mm}}
              bottle: {profile: [[0 mm, 21 mm], [90 mm, 21 mm], [90 mm, 10 mm], [118 mm, %s]], body: %s}
              box: {width: %s, depth: 60 mm, height: 150 mm%s}
            kit:
              cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}, iso: {base: 800}}}
              lenses: {macro: {focal_length: 100 mm, barrel: {diameter: 80 mm, length: 120 mm}}}
              lights:
                strip: {panel: [300 mm, 1200 mm], gives: %s}
                tube: {tube: [600 mm, 30 mm], gives: 2000 lm}
                dot: {point: yes, gives: 900 cd}
                spot: {point: yes, gives: 1200 lm, beam: 40 deg}
                dish: {disc: 200 mm, gives: 100 lx at 2 m, hot_centre: 2 stops, grid: 60 deg}
                field: {panel: [600 mm, 600 mm], window: [200 mm, 300 mm], field: bright, gives: 900 cd}
                paper: {card: [600 mm, 400 mm]}
                black: {flag: [300 mm, 300 mm]}
              tanks: {glass: {inside: [450 mm, 300 mm, 300 mm], pane: 8 mm}}
            shots:
              one:
                camera: {body: main, lens: macro, at: [%s, %s, %s], aim: %s, f_number: 11}
                %s
                place: {%s, %s}
                lights: {%s, %s}
                wants: [{%s}]
            """.formatted(
                        finish,
                        one("40 mm", "300 mm"),
                        one("10 mm", "1 mm"),
                        one("opaque", "clear"),
                        one("20 mm", "500 mm"),
                        finish,
                        one("900 cd", "4000 lx at 1 m", "4000 lx at 10 mm"),
                        mm(-200, 200),
                        mm(-1200, -100),
                        mm(0, 400),
                        one("ahead", "a", "b"),
                        one("", "tank: {tank: glass, at: [0 mm, 100 mm], water: " + mm(1, 300) + "}"),
                        thing("a"),
                        thing("b"),
                        light("key"),
                        light("fill"),
                        WANTS.get(random.nextInt(WANTS.size()))));
    }

    @Test
    void margins_areNumbers_andSentencesAreSaid() {
        int measured = 0;
        for (int i = 0; i < PLANS; i++) {
            Plan plan = plan();
            Want want = Wanted.want(plan);
            Stage stage = Wanted.stage(plan);
            double[] values = stage.startValues();
            for (int mark = 0; mark < values.length; mark++) {
                double low = stage.marks().get(mark).lowSi();
                double high = stage.marks().get(mark).highSi();
                values[mark] +=
                        stage.marks().get(mark).mark().isFree() ? random.nextDouble(-0.6, 0.6) * (high - low) : 0;
            }
            Moments moments = new Moments(stage, values, List.of(0.0), new Recall());
            if (want.findUnknown().isPresent()) {
                continue;
            }
            for (double part : want.parts(moments)) {
                assertThat(part).as("plan " + i).isNotNaN();
            }
            Optional<String> unknown = want.findUnknown(moments);
            if (unknown.isEmpty()) {
                measured++;
                assertThat(want.findStanding(moments, PaperUnit.MILLIMETRES).orElseThrow())
                        .as("plan " + i)
                        .doesNotContain("NaN", "Infinity")
                        .endsWith(".");
                want.findLack(moments);
                want.findTight(moments);
                want.listAttempts(moments);
                want.listRelaxed(0.1, moments);
            }
        }
        assertThat(measured).isGreaterThan(PLANS / 4);
    }
}
