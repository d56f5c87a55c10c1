package plumeline.cut.list;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import plumeline.plan.Plan;
import plumeline.plan.Plans;

/// Plans with cuts, and plans by chance.
final class CutPlans {
    /// All rates that have timecode, as a plan writes them with how labels are counted, and how many labels a second
    /// has.
    record Rate(String film, int labels, double framesPerSecond) {}

    static final List<Rate> RATES = List.of(
            new Rate("23.976 fps", 24, 24_000 / 1001.0),
            new Rate("24 fps", 24, 24),
            new Rate("25 fps", 25, 25),
            new Rate("29.97 fps", 30, 30_000 / 1001.0),
            new Rate("29.97 fps, timecode: drop", 30, 30_000 / 1001.0),
            new Rate("30 fps", 30, 30),
            new Rate("47.952 fps", 48, 48_000 / 1001.0),
            new Rate("48 fps", 48, 48),
            new Rate("50 fps", 50, 50),
            new Rate("59.94 fps", 60, 60_000 / 1001.0),
            new Rate("59.94 fps, timecode: drop", 60, 60_000 / 1001.0),
            new Rate("60 fps", 60, 60));

    private CutPlans() {}

    static Plan read(String text) {
        Plans.Reading reading = Plans.read(text.getBytes(UTF_8), "p.yaml");
        if (!reading.problems().isEmpty()) {
            throw new AssertionError(text + "\n" + reading.problems().getFirst().toText());
        }
        return reading.plan().orElseThrow();
    }

    /// @param film the film's facts behind its rate, such as `, handles: 8`
    /// @param shots indented by two
    /// @param cut and what follows it, as it stands
    static Plan of(String film, String shots, String cut) {
        return read("""
                plumeline: 1
                film: {title: "Größe, three tins", rate: %s}
                deliver: {wide: {ratio: "16:9"}, square: {ratio: "1:1"}}
                kit:
                  cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
                  lenses: {fifty: {focal_length: 50 mm}}
                shots:
                """.formatted(film) + shots + "cut:\n" + cut);
    }

    static String shot(String name, String captured, String rest) {
        return "  " + name + ":\n    camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], rate: " + captured
                + "}\n" + rest.indent(4);
    }

    /// A film of shots with all kinds of speed, cut as it comes.
    static Plan byChance(Random chance, Rate rate) {
        StringBuilder shots = new StringBuilder();
        List<String> names = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            names.add("shot-" + i);
            String rest = "speed: " + speed(chance) + "\n";
            if (chance.nextBoolean()) {
                rest += "ease: smooth\n".repeat(rest.startsWith("speed: [") ? 1 : 0);
            }
            if (chance.nextBoolean()) {
                rest += "clip: {file: takes/A00" + i + ".mov, reel: A00" + i + ", starts: \"10:00:10:00\", go: "
                        + chance.nextInt(50) + "}\n";
            }
            String captured = List.of("24 fps", "25 fps", "60 fps", "119.88 fps", "240 fps", "1000 fps")
                    .get(chance.nextInt(6));
            shots.append(shot(names.getLast(), captured, rest));
        }
        StringBuilder cut = new StringBuilder();
        for (int i = 0; i <= chance.nextInt(12); i++) {
            cut.append("  - {shot: ")
                    .append(names.get(chance.nextInt(4)))
                    .append(", frames: ")
                    .append(1 + chance.nextInt(90))
                    .append(", from: ")
                    .append(chance.nextInt(40))
                    .append("}\n");
        }
        return of(rate.film(), shots.toString(), cut.toString());
    }

    private static String speed(Random chance) {
        if (chance.nextInt(3) == 0) {
            return List.of("100 %", "20 %", "-100 %", "0 %", "250 %", "37.3 %", "-8 %")
                    .get(chance.nextInt(7));
        }
        List<String> keys = new ArrayList<>();
        int frame = 0;
        for (int i = 0; i < 1 + chance.nextInt(5); i++) {
            keys.add("[" + frame + " frames, " + (chance.nextInt(4) == 0 ? 0 : chance.nextInt(300) - 100) + " %]");
            frame += chance.nextInt(4) == 0 ? 1 : 1 + chance.nextInt(40);
        }
        return "[" + String.join(", ", keys) + "]";
    }
}
