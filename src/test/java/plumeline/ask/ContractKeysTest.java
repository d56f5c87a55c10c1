package plumeline.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;
import plumeline.answer.Answer.Assumed;
import plumeline.answer.Beside;
import plumeline.answer.Question;
import plumeline.light.WrittenLamp;
import plumeline.text.Shape;

/// Every key of the contract's rows is taken as the row names it; whatever the questions on water and effects assume
/// can be given.
final class ContractKeysTest {
    /// Each question with all keys of its row that go together; further forms after a line of dashes.
    private static final Map<String, String> ROWS = Map.ofEntries(
            Map.entry("framing", """
            sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}
            focal_length: 100 mm
            f_number: 8
            thing: {width: 66 mm, height: 122 mm, depth: 66 mm}
            fills: {height: 70 %}
            sharp_to: 2 px
            pupil_ratio: 1
            sensor_to_front: 150 mm
            through: {air_gap: 20 mm, glass: 8 mm, water: 100 mm}
            """),
            Map.entry("reveal", """
            sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}
            focal_length: 50 mm
            camera: {distance: 600 mm, height: 59 mm}
            things:
            - {name: a, diameter: 42 mm, height: 118 mm}
            - {name: b, diameter: 42 mm, height: 118 mm}
            slide: {travel: 600 mm, toward: camera left}
            keeps: all
            gap: 2 %
            hide_by: 0 mm
            """),
            Map.entry("float", """
            outside: 372 ml
            empty_mass: 14 g
            contents: {volume: 355 ml, density: 1.04 g/ml}
            air: 5 ml
            wall: {density: 2.7 g/ml}
            closed: yes
            water: {temperature: 20 degC, density: 1.025 g/ml}
            ballast: {density: 7.85 g/ml}
            ---
            gained: 372 g
            whole_mass: 380 g
            water: {density: 1.025 g/ml}
            ---
            profile: [[0 mm, 33 mm], [115 mm, 33 mm]]
            empty_mass: 14 g
            closed: no
            water: {temperature: 15 degC}
            ---
            diameter: 66 mm
            height: 121 mm
            shape_factor: 0.9
            whole_mass: 380 g
            """),
            Map.entry("hang", """
            whole_mass: 500 g
            outside: 420 ml
            centre_of_mass: 62 mm
            centre_of_volume: 66 mm
            points: [25 mm, 95 mm]
            attitude: upside down
            water: {temperature: 20 degC, density: 1 g/ml}
            """),
            Map.entry("tank", """
            inside: {length: 600 mm, width: 400 mm, water: 400 mm}
            glass: 10 mm
            walls_height: 420 mm
            rim: no
            floor_support: full
            empty_mass: 25 kg
            ---
            inside: {length: 600 mm, width: 400 mm, water: 400 mm}
            glass: 10 mm
            """),
            Map.entry("line", """
            load: 0.55 kg
            diameter: 0.4 mm
            strength: 75 N
            knot: 50 %
            between: water
            view:
              distance: 962 mm
              focal_length: 100 mm
              sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}
              rate: 24 fps
              shutter: 180 deg
            ---
            load: 5.4 N
            strength: 75 N
            """),
            Map.entry("sweat", """
            product: {temperature: 4 degC}
            air: {temperature: 20 degC, humidity: 50 %}
            """),
            Map.entry("beads", """
            surface: lacquer
            tilt: 90 deg
            liquid: {glycerine: 0 %}
            air: {temperature: 20 degC, humidity: 50 %}
            ---
            surface: {advancing: 80 deg, receding: 50 deg}
            """),
            Map.entry("ink", """
            ink: {volume: 10 ml, density: 1.05 g/ml}
            nozzle: {bore: 6 mm, height: -10 mm, squeeze_time: 1 s}
            water: {depth: 300 mm, temperature: 20 degC}
            thing: {top_depth: 90 mm, ahead: 40 mm}
            wanted: 1.5 s
            front: [[0.4 s, 60 mm], [1.9 s, 188 mm]]
            ---
            ink: {volume: 10 ml, recipe: {sea_salt: 3.5 %}}
            nozzle: {bore: 6 mm, height: 20 mm, speed: 350 mm/s}
            water: {depth: 300 mm}
            thing: {top_depth: 90 mm}
            """),
            Map.entry("clear-water", """
            tank_volume: 60 l
            ink_per_take: 5 ml
            strength: 30 /cm
            sight_path: 150 mm
            least_clear: 95 %
            """),
            Map.entry("fall", """
            piece: {size: 16 mm, mass: 2.6 g, shape: cube}
            height: 100 mm
            field: {height: 175 mm, pixels: 2160 px}
            rate: 240 fps
            shutter: 1/2000 s
            wanted_frames: 20
            through: water
            count: 300
            vessel: 0.5 l
            """),
            Map.entry("highlight", """
            thing: {diameter: 66 mm}
            camera: {x: 0 mm, y: -961 mm}
            light: {x: 500 mm, y: 100 mm, width: 300 mm, yaw: -100 deg}
            ---
            thing: {diameter: 66 mm}
            camera: {x: 0 mm, y: -961 mm}
            want: {from_left: 80 %, wide: 10 %}
            light: {distance: 500 mm}
            ---
            thing: {diameter: 66 mm}
            camera: {x: 0 mm, y: -961 mm}
            want: {from_left: 80 %, wide: 10 %}
            light: {width: 300 mm}
            """),
            Map.entry("power", """
            devices:
            - {name: key, watts: 300 W, power_factor: 0.95}
            - {name: wash, watts: 40 W}
            volts: 230 V
            breaker: 16 A
            region: europe
            continuous: no
            """),
            Map.entry("colour", """
            emitters:
            - {name: red, x: 0.70, y: 0.30, lumens: 300 lm}
            - {name: green, x: 0.17, y: 0.70, lumens: 600 lm}
            - {x: 0.14, y: 0.05, lumens: 90 lm}
            colour: "#2A9d8f"
            want: complement
            against: 5600 K
            ---
            primaries: typical
            colour: [0.31, 0.33]
            want: match
            ---
            colour: 3200 K
            want: white
            ---
            emitters:
            - {name: red, peak: 625 nm, width: 20 nm, lumens: 300 lm}
            - {name: green, peak: 525 nm, lumens: 600 lm}
            - {name: blue, spectrum: [[440 nm, 0], [460 nm, 1], [480 nm, 0]], lumens: 90 lm}
            colour: "#2A9d8f"
            want: complement
            by: wavelength
            """),
            Map.entry("label", """
            label: "#2a9d8f"
            light:
              emitters:
              - {name: red, peak: 625 nm, width: 20 nm, lumens: 300 lm, drive: 50 %}
              - {x: 0.17, y: 0.70, lumens: 600 lm}
              - {spectrum: [[440 nm, 0], [460 nm, 1], [480 nm, 0]], lumens: 90 lm, drive: 5 %}
            white: light
            ---
            label: {lab: [58, -33, -2], under: D65}
            light: {daylight: 6500 K}
            white: [0.33, 0.34]
            ---
            label: {lab: [58, -33, -2]}
            light: {spectrum: [[400 nm, 0.2], [560 nm, 1], [700 nm, 0.4]]}
            white: 5600 K
            ---
            label: {reflectance: [[400 nm, 12 %], [500 nm, 41 %], [700 nm, 9 %]]}
            light: {emitters: [{peak: 525 nm, lumens: 1 lm}, {peak: 625 nm, lumens: 2 lm}], mixed_to: "#ffff00"}
            white: D65
            ---
            label: "#2a9d8f"
            light: 3200 K
            """),
            Map.entry("white-balance", """
            light: [0.40, 0.39]
            balance: 5600 K
            tint: 0.002
            primaries: P3
            grey: 18 %
            headroom: 2.5 stops
            ---
            light: "#ffcc88"
            balance: [0.33, 0.34]
            primaries: {red: [0.7, 0.3], green: [0.2, 0.7], blue: [0.14, 0.05]}
            ---
            light: {daylight: 7500 K}
            """),
            Map.entry("ramp", """
            timeline_rate: 24 fps
            speeds:
            - {at: 0 s, speed: 100 %}
            - {at: 24 frames, speed: 20 %}
            - {at: 4 s, speed: -50 %}
            ease: smooth
            capture_rate: 120 fps
            modes: [24 fps, 120 fps, {rate: 240 fps, across: 1920 px, readout: 6 ms}]
            ---
            timeline_rate: 23.976 fps
            speeds: [{at: 2 s, speed: 0 %}]
            """),
            Map.entry("beat", """
            tempo: 128 bpm
            rate: 24 fps
            first: 0.5 s
            bars: 8
            beats_per_bar: 3
            ---
            tempo: 97.5 bpm
            rate: 29.97 fps
            """),
            Map.entry("loudness", """
            file: example-tone.wav
            target: -23 LUFS
            true_peak: -1 dBTP
            within: 0.5 LU
            ---
            file: example-tone.wav
            """),
            Map.entry("media", """
            bit_rate: 400 Mb/s
            takes: [{seconds: 30 s, count: 40}, {seconds: 8}]
            copies: 2
            card: 256 GB
            ---
            size: [1920 px, 1080 px]
            depth: 12
            rate: 1000 fps
            ratio: "5:1"
            samples: 1
            takes: [{seconds: 2 s, count: 6}]
            ---
            size: [1920 px, 1080 px]
            depth: 10
            rate: 24 fps
            takes: [{seconds: 2 s}]
            """),
            Map.entry("gel", """
            from: 3200 K
            to: [0.33, 0.34]
            """),
            Map.entry("move", """
            by: 600 mm
            in: 8 s
            profile: trapezoid
            limits: {speed: 80 mm/s, acceleration: 200 mm/s2, jerk: 900 mm/s3}
            repeats: 0.1 mm
            triggered: no
            view:
              distance: 962 mm
              focal_length: 100 mm
              sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}
              rate: 24 fps
              shutter: 180 deg
            ---
            by: 30 deg
            in: 4 s
            limits: {speed: 20 deg/s, acceleration: 40 deg/s2, jerk: 90 deg/s3}
            view:
              distance: 962 mm
              focal_length: 100 mm
              sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}
            """),
            Map.entry("turntable", """
            speed: 10 rpm
            seen_from_above: counter-clockwise
            label: {arc: 82 deg, facing_at_start: 30 deg}
            within: 30 deg
            rate: 24 fps
            frames: 24
            diameter: 42 mm
            view:
              distance: 962 mm
              focal_length: 100 mm
              sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}
              rate: 24 fps
              shutter: 180 deg
            ---
            time: 6 s
            label: {arc: 82 deg}
            rate: 24 fps
            frames: 24
            """),
            Map.entry("lamp-flicker", """
            pulse_rate: 100 Hz
            rate: 24 fps
            shutter: 172.8 deg
            depth: 80 %
            modes: [23.976 fps, 24 fps, 25 fps]
            readout: 16 ms
            waveform: square
            duty: 30 %
            ---
            pulse_rate: 120 Hz
            rate: 24 fps
            shutter: 1/60 s
            ---
            pulse_rate: 25 kHz
            rate: 240 fps
            shutter: 1/500 s
            waveform: square
            """),
            Map.entry("cut-flash", """
            rate: 23.976 fps
            frames_per_look: 4
            luminances: [70 %, 20 %]
            area_of_the_picture: 60 %
            red: no
            lasts: 3 s
            seen: 30 deg
            ---
            rate: 25 fps
            frames_per_look: [5, 5, 6, 12]
            luminances: [0.7, 0.2, 0.7, 0.3]
            area: 30 %
            red: yes
            times: 3
            ---
            rate: 30 fps
            frames_per_look: 8 frames
            """),
            Map.entry("exposure", """
            light: {lux: 4000 lx, at: 1 m}
            distance: 1 m
            incidence: 30 deg
            iso: 800
            f_number: 8
            rate: 120 fps
            shutter: 180 deg
            magnification: 0.116
            loss: 1 stops
            constant: 340
            ---
            light: {candela: 900 cd}
            distance: 1 m
            iso: 800
            t_number: 8
            rate: 120 fps
            shutter: 1/500 s
            ---
            light: {panel: [300 mm, 1200 mm], lumens: 9000 lm}
            distance: 1 m
            iso: 800
            f_number: 8
            rate: 120 fps
            ---
            light: {file: lamp.ies, off_axis: 20 deg, plane: 90 deg}
            distance: 1 m
            iso: 800
            f_number: 8
            rate: 120 fps
            ---
            light: {file: lamp.ies}
            distance: 1 m
            iso: 800
            f_number: 8
            rate: 120 fps
            """));

    /// A lamp, whatever file is named but a sound.
    private static final Beside LAMP = (name, _) -> name.endsWith(".wav")
            ? new Beside.File.Absent(name, "")
            : new Beside.File.There(WrittenLamp.bytes(WrittenLamp.round().lm63(List.of(0.0))));

    private static List<String> rows(String question) {
        return List.of(ROWS.get(question).split("---\n"));
    }

    private static Answer answer(String question, String text) {
        return Asking.answer(Asking.ask(question, text, LAMP));
    }

    @Test
    void everyKeyOfARow_isTaken() {
        for (Question question : Questions.listAll()) {
            assertThat(ROWS).containsKey(question.name());
            for (String text : rows(question.name())) {
                assertThat(answer(question.name(), text).question()).isEqualTo(question.name());
            }
        }
    }

    @Test
    void whateverIsAssumed_canBeGiven() {
        int assumed = 0;
        List<String> names = Questions.listAll().stream()
                .map(Question::name)
                .filter(name -> !List.of("framing", "reveal").contains(name))
                .toList();
        for (String name : names) {
            for (String text : rows(name)) {
                for (Assumed each : answer(name, text).assumed()) {
                    Shape shape = Questions.find(name).orElseThrow().shape();
                    assertThat(takes(shape, List.of(each.name().split("\\."))))
                            .as(name + " " + each.name())
                            .isTrue();
                    assumed++;
                }
            }
        }
        assertThat(assumed).isGreaterThan(20);
    }

    private static boolean takes(Shape shape, List<String> path) {
        if (path.isEmpty()) {
            return true;
        }
        return switch (shape) {
            case Shape.Keys keys ->
                keys.keys().stream()
                        .filter(key -> key.name().equals(path.getFirst().replaceFirst("\\[.*", "")))
                        .anyMatch(key -> takes(key.shape(), path.subList(1, path.size())));
            case Shape.Items items -> takes(items.item(), path);
            case Shape.AnyOf any -> any.shapes().stream().anyMatch(each -> takes(each, path));
            default -> false;
        };
    }

    @Test
    void unknownKey_pointsToTheQuestionsExample() {
        for (Question question : Questions.listAll()) {
            String text = rows(question.name()).getFirst() + "zzzzzz: 3\n";
            assertThat(Asking.problems(question.name(), text))
                    .hasSize(1)
                    .allSatisfy(said -> assertThat(said)
                            .contains("zzzzzz is not a known key")
                            .contains("see `./plumeline ask " + question.name() + " --example`")
                            .doesNotContain("schema"));
        }
    }

    @Test
    void aFormThatWasBegun_saysWhatToAdd() {
        assertThat(Asking.problems("float", "diameter: 66 mm\nheight: 121 mm\nempty_mass: 14 g\n"))
                .hasSize(1)
                .allSatisfy(said -> assertThat(said).contains("Add shape_factor."));
        assertThat(Asking.problems("float", "profile: [[0 mm, 20 mm], [30 mm, -5 mm]]\nempty_mass: 14 g\n"))
                .hasSize(1)
                .allSatisfy(said -> assertThat(said).contains("Leave out the minus sign: try 5 mm."));
    }
}
