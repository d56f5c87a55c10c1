package plumeline.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.text.Node;
import plumeline.text.Place;

/// What is offered where there is too much or too little light, and that it holds once it is written into the plan.
final class LightRemediesTest {
    private static final String PLAN = """
        plumeline: 1
        film: {rate: 24 fps}
        things:
          tin: {diameter: 60 mm, height: 120 mm, body: opaque, label: {width: 40 mm, height: 40 mm, bottom: 40 mm}}
        kit:
          cameras:
            main:
              sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}
              modes: [{rate: 24 fps}, {rate: 60 fps}, {rate: 120 fps}]
              iso: {base: 800, highest: 3200}
          lenses: {macro: {focal_length: 100 mm, nearest: 300 mm, f_numbers: [2.8, 32]}}
          lights:
            strip: {panel: [300 mm, 1200 mm], gives: 4000 lx at 1 m %s}
            %s
        shots:
          one:
            camera:
              {body: main, lens: macro, at: [0 mm, -900 mm, 60 mm], aim: tin, f_number: %s, rate: %s, shutter: %s}
            place: {tin: {thing: tin, at: [0 mm, 0 mm]}}
            lights: {key: {light: strip, at: [-700 mm, -700 mm, 300 mm], level: 60 %%}}
            %s
            wants:
              - {lit: tin}
              - {off_picture: key}
              %s
        """;

    private static final String SPOT = "spot: {disc: 200 mm, gives: 20000 lx at 1 m measured}";

    private record Case(
            String origin, String more, String stop, String rate, String shutter, String moves, String want) {
        static final Case USUAL = new Case("measured", "", "8", "24 fps", "180 deg", "", "");

        Case stop(String other) {
            return new Case(origin, more, other, rate, shutter, moves, want);
        }

        Case rate(String other) {
            return new Case(origin, more, stop, other, shutter, moves, want);
        }

        Case shutter(String other) {
            return new Case(origin, more, stop, rate, other, moves, want);
        }

        Case want(String other) {
            return new Case(origin, more, stop, rate, shutter, moves, "- {" + other + "}");
        }

        Case moves(String other) {
            return new Case(origin, more, stop, rate, shutter, other, want);
        }

        Case typical() {
            return new Case("typical", more, stop, rate, shutter, moves, want);
        }

        Case spot() {
            return new Case(origin, SPOT, stop, rate, shutter, moves, want);
        }

        Plan plan() {
            String text = PLAN.formatted(origin, more, stop, rate, shutter, moves, want);
            return Plans.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml")
                    .plan()
                    .orElseThrow();
        }
    }

    private static WantAnswer lit(Plan plan) {
        return Solve.film(plan).shots().getFirst().wants().getFirst();
    }

    /// The attempts that name a key of the shot.
    private static List<String> attempts(Case given) {
        return lit(given.plan()).attempts().stream()
                .filter(attempt -> !keys(attempt).isEmpty())
                .toList();
    }

    private static final Place NOWHERE = Place.ofFile("remedy");

    private static final Pattern SET = Pattern.compile(
            "(camera|key|key_2)\\.(f_number|iso|shutter|rate|loss|level|x|y|z) (f/)?([-0-9./]+( [a-z%]+)?)");

    /// The keys of a sentence as a crew would write them into the shot.
    private static Map<String, String> keys(String sentence) {
        Map<String, String> keys = new LinkedHashMap<>();
        Matcher set = SET.matcher(sentence);
        while (set.find()) {
            String value = set.group(4).replaceAll(" instead$| at$", "").replaceAll("[.]$", "");
            boolean isLamp = !set.group(1).equals("camera");
            String owner = (isLamp ? "lights." : "") + set.group(1);
            boolean isPlace = "xyz".contains(set.group(2));
            keys.put(owner + (isPlace ? ".at." : ".") + set.group(2), value);
        }
        Matcher other = Pattern.compile("[Ll]ight key with ([a-z]+) instead of .* at level ([0-9]+ %)")
                .matcher(sentence);
        if (other.find()) {
            keys.put("lights.key.light", other.group(1));
            keys.put("lights.key.level", other.group(2));
        }
        return keys;
    }

    private static Node scalar(String text) {
        return new Node.Scalar(text, false, NOWHERE);
    }

    private static Node mapping(Map<String, String> keys) {
        return new Node.Mapping(
                keys.entrySet().stream()
                        .map(key -> new Node.Entry(key.getKey(), NOWHERE, scalar(key.getValue())))
                        .toList(),
                NOWHERE);
    }

    private static Plan with(Plan plan, String sentence) {
        Map<String, String> keys = new LinkedHashMap<>(keys(sentence));
        List<Node.Entry> entries = new ArrayList<>();
        Matcher second =
                Pattern.compile("second ([a-z]+) beside .* at level ([0-9]+ %)").matcher(sentence);
        if (second.find()) {
            Node at = new Node.Sequence(
                    List.of("x", "y", "z").stream()
                            .map(axis -> scalar(keys.remove("lights.key_2.at." + axis)))
                            .toList(),
                    NOWHERE);
            Node.Mapping lamp = (Node.Mapping) mapping(Map.of("light", second.group(1), "level", second.group(2)));
            List<Node.Entry> all = new ArrayList<>(lamp.entries());
            all.add(new Node.Entry("at", NOWHERE, at));
            entries.add(new Node.Entry("shots.one.lights.key_2", NOWHERE, new Node.Mapping(all, NOWHERE)));
        }
        keys.forEach((key, value) -> entries.add(new Node.Entry("shots.one." + key, NOWHERE, scalar(value))));
        return Plans.with(plan, entries).plan().orElseThrow();
    }

    /// Every sentence, written into the plan, makes the want hold, and breaks none of the others.
    private static List<String> checkAll(Case given) {
        List<String> attempts = attempts(given);
        for (String attempt : attempts) {
            FilmAnswer film = Solve.film(with(given.plan(), attempt));
            assertThat(film.shots().getFirst().wants())
                    .as(attempt)
                    .allSatisfy(want -> assertThat(want.verdict()).isNotEqualTo(Verdict.FAILS));
            assertThat(film.shots().getFirst().wants().getFirst().verdict())
                    .as(attempt)
                    .isIn(Verdict.HOLDS, Verdict.UNKNOWN);
        }
        return attempts;
    }

    @Test
    void tooLittle_offersEachKnobThatCloses() {
        List<String> attempts = checkAll(Case.USUAL.stop("16").spot());
        assertThat(attempts).anyMatch(attempt -> attempt.startsWith("Set camera.f_number f/9 instead of f/16"));
        assertThat(attempts).anyMatch(attempt -> attempt.startsWith("Set camera.iso 2500 instead of 800. More noise"));
        assertThat(attempts).anyMatch(attempt -> attempt.matches("Set key [0-9]+ mm nearer along .*"));
        assertThat(attempts).anyMatch(attempt -> attempt.startsWith("Light key with spot instead of strip"));
        assertThat(attempts).noneMatch(attempt -> attempt.contains("camera.rate") || attempt.contains("camera.loss"));
    }

    @Test
    void aLittleTooLittle_offersLevelSecondAndShutter() {
        List<String> attempts = checkAll(Case.USUAL.stop("11"));
        assertThat(attempts).anyMatch(attempt -> attempt.startsWith("Set key.level 85 % instead of 60 %"));
        assertThat(attempts)
                .anyMatch(attempt -> attempt.startsWith("Add a second strip beside key, facing as it does"));
        assertThat(attempts)
                .contains("Set camera.shutter 286 deg instead of 180 deg. Nothing moves in this shot,"
                        + " so nothing smears.");
    }

    @Test
    void tooMuch_offersToStopDownDimAndFilter() {
        List<String> attempts = checkAll(Case.USUAL.stop("4"));
        assertThat(attempts).anyMatch(attempt -> attempt.startsWith("Set camera.f_number f/9 instead of f/4"));
        assertThat(attempts).anyMatch(attempt -> attempt.startsWith("Set camera.loss 2 stops instead of 0, by a grey"));
        assertThat(attempts).anyMatch(attempt -> attempt.startsWith("Set key.level 1"));
        assertThat(attempts).noneMatch(attempt -> attempt.startsWith("Set camera.iso"));
    }

    /// A want that a wider aperture would break keeps it away, and what is left needs two.
    @Test
    void sharpness_isNotBroken_andTwoDoIt() {
        Case given = Case.USUAL.stop("11").rate("120 fps").want("sharp: tin, sharp_to: 6 px");
        List<String> attempts = checkAll(given);
        assertThat(attempts).isNotEmpty().allMatch(attempt -> attempt.contains(", and "));
    }

    @Test
    void rate_onlyAsSlowAsTheSpeedAllows() {
        Case fast = Case.USUAL.stop("8").rate("120 fps");
        assertThat(checkAll(fast)).anyMatch(attempt -> attempt.startsWith("Set camera.rate 24 fps instead of 120 fps"));
        assertThat(checkAll(fast.moves("speed: 40 %"))).noneMatch(attempt -> attempt.contains("camera.rate 24 fps"));
        assertThat(checkAll(fast.moves("speed: 20 %"))).noneMatch(attempt -> attempt.contains("camera.rate"));
    }

    /// A longer shutter isn't offered beside a want on smear that it would break. A thing that goes across says how
    /// far.
    @Test
    void smear_isMinded() {
        Case little = Case.USUAL.stop("11").moves("moves: {slide: {by: [100 mm, 0 mm], in: 2 s}}");
        assertThat(checkAll(little))
                .anyMatch(attempt -> attempt.matches("Set camera.shutter 286 deg .* What moves smears 1.6 times as far,"
                        + " a thing over [0-9.]+ px."));
        assertThat(checkAll(little.want("smear: tin, under: 15 px"))).noneMatch(attempt -> attempt.contains("shutter"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"1/125 s", "1/50 s", "1/1000 s", "0.02 s"})
    void shutterTime_staysATimeWithinTheFrame(String shutter) {
        assertThat(checkAll(Case.USUAL.stop("5.6").shutter(shutter)))
                .filteredOn(attempt -> attempt.contains("camera.shutter"))
                .allMatch(attempt -> attempt.matches("(?s).*camera.shutter 1/[0-9]+ s instead of.*"));
    }

    /// A lamp that nobody measured makes a want tight that is near its limit; nearer the middle it holds.
    @Test
    void tight_offersWhatCentresIt() {
        WantAnswer answer = lit(Case.USUAL.typical().plan());
        assertThat(answer.verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(checkAll(Case.USUAL.typical()))
                .anyMatch(attempt -> attempt.startsWith("Set camera.f_number f/9 instead of f/8"));
    }
}
