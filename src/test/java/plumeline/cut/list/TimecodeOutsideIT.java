package plumeline.cut.list;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import plumeline.cut.NodeProgram;
import plumeline.cut.StrictJson;
import plumeline.plan.Plan;
import plumeline.tidy.Outside;
import plumeline.timeline.Timeline;

/// Record labels of lists at every rate, counted by a library that isn't ours. It knows no 48000/1001 and 48.
@Outside(source = "smpte-timecode 1.3.6 (npm, MIT)", place = "reference/time.md, section 0", kind = "program")
final class TimecodeOutsideIT {
    private static final String SCRIPT = """
        const Timecode = require('smpte-timecode');
        const rows = JSON.parse(require('fs').readFileSync(0));
        console.log(JSON.stringify(rows.map(([label, rate, drop]) => new Timecode(label, rate, drop).frameCount)));
        """;

    private static final Pattern EVENT = Pattern.compile("\\d+ .* C .* (\\S+) (\\S+)");

    @Test
    void recordLabels_areTheFramesOfTheFilm() {
        StringBuilder rows = new StringBuilder("[");
        List<Long> frames = new ArrayList<>();
        for (CutPlans.Rate rate : CutPlans.RATES) {
            if (rate.labels() == 48) {
                continue;
            }
            StringBuilder cut = new StringBuilder();
            for (int i = 0; i < 70; i++) {
                cut.append("  - {shot: one, frames: ").append(97 + 13 * i).append("}\n");
            }
            Plan plan = CutPlans.of(
                    rate.film() + ", starts: \"00:58:30:10\"", CutPlans.shot("one", "24 fps", ""), cut + "");
            String text = ((EditList.Result.Listed) EditList.of(plan, Timeline.of(plan))).text();
            boolean drops = rate.film().contains("drop");
            long first = rate.labels() * (58 * 60 + 30) + 10 - (drops ? (58 - 5) * rate.labels() / 15 : 0);
            for (String line : text.lines().toList()) {
                Matcher event = EVENT.matcher(line);
                if (event.matches()) {
                    rows.append(rows.length() > 1 ? "," : "");
                    rows.append("[\"%s\",%s,%s]".formatted(event.group(1), js(rate), drops));
                    frames.add(first);
                    first += 97 + 13L * (frames.size() - 1) % (13 * 70);
                }
            }
        }
        List<Object> counted = StrictJson.list(StrictJson.read(
                NodeProgram.run(SCRIPT, rows.append("]").toString().getBytes(UTF_8))));
        assertThat(counted).hasSize(10 * 70);
        for (int i = 0; i < counted.size(); i++) {
            assertThat(counted.get(i)).as("event %s", i).isEqualTo((double) frames.get(i));
        }
    }

    private static String js(CutPlans.Rate rate) {
        return switch (rate.labels()) {
            case 24 -> rate.framesPerSecond() < 24 ? "23.976" : "24";
            case 30 -> rate.framesPerSecond() < 30 ? "29.97" : "30";
            case 60 -> rate.framesPerSecond() < 60 ? "59.94" : "60";
            default -> Integer.toString(rate.labels());
        };
    }
}
