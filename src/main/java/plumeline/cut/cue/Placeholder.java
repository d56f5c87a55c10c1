package plumeline.cut.cue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import plumeline.sound.Guide;
import plumeline.sound.Pan;
import plumeline.sound.SampleGrid;
import plumeline.sound.Voice;
import plumeline.timeline.Timeline;

/// What stands in a guide track for a sound of the cue sheet.
final class Placeholder {
    private static final List<String> POURS = List.of("pour", "fill", "splash", "bubbl", "drip", "gurgl");
    private static final List<String> FIZZES = List.of("fizz", "hiss", "sparkl", "spray", "sizzl");
    private static final List<String> WHOOSHES = List.of("whoosh", "swoosh", "swish", "woosh");
    private static final double TONE_SECONDS = 0.25;

    private Placeholder() {}

    static Guide.Heard of(CueRow row, Timeline timeline, SampleGrid grid) {
        double way = Math.clamp((double) (row.sync().sample() - row.in().sample()) / row.samples(), 0.0, 1.0);
        Pan pan = new Pan(row.in().pan(), row.sync().pan(), row.out().pan(), way);
        String name = row.sound().toLowerCase(Locale.ROOT);
        if (has(name, WHOOSHES)) {
            return new Guide.Heard(row.in().sample(), new Voice.Whoosh(speeds(row, timeline)), pan, 0);
        }
        if (has(name, POURS)) {
            return new Guide.Heard(row.in().sample(), new Voice.Pour(row.samples()), pan, 0);
        }
        if (has(name, FIZZES)) {
            return new Guide.Heard(row.in().sample(), new Voice.Fizz(row.samples()), pan, 0);
        }
        double at = row.sync().pan();
        long length = (long) (TONE_SECONDS * grid.samplesPerSecond());
        return new Guide.Heard(row.sync().sample(), new Voice.Tone(length), new Pan(at, at, at, 0.5), 0);
    }

    private static boolean has(String name, List<String> words) {
        return words.stream().anyMatch(name::contains);
    }

    /// The speed that is seen; where that is steady a swell to the sync point, even if it is the first frame or the
    /// last.
    private static List<Double> speeds(CueRow row, Timeline timeline) {
        long first = row.in().frame();
        long past = row.out().frame();
        if (GuideTrack.isRamped(timeline, Math.max(0, first), Math.min(past, timeline.frames()))) {
            return GuideTrack.speeds(timeline, first, past);
        }
        List<Double> speeds = new ArrayList<>();
        double sync = (double) row.sync().frame();
        double longest = Math.max(1, Math.max(sync - (double) first, (double) past - sync));
        for (long frame = first; frame < past; frame++) {
            speeds.add(Math.max(0.1, 1 - Math.abs((double) frame - sync) / longest));
        }
        return speeds;
    }
}
