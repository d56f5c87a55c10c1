package plumeline.sound;

import java.util.List;

/// Makes one voice's samples, one after the other. Everything is plain arithmetic and [StrictMath], so that machines
/// agree bit for bit; noise comes from a seed that follows from the voice's place in the track.
final class VoiceSynth {
    /// Samples after which what changes slowly is set anew.
    static final int STEP = 32;

    private static final long SEED = 0x1F2E_3D4C_5B6A_7988L;
    private static final double CLICK_SECONDS = 0.05;
    private static final double TICK_SECONDS = 0.02;
    private static final double FADE_SECONDS = 0.01;
    private static final double FIRST_HERTZ = 1600;
    private static final double OTHER_HERTZ = 1000;
    private static final double TONE_HERTZ = 660;
    private static final double TICK_HERTZ = 4000;
    private static final double FASTEST_HERTZ = 1800;
    private static final double LEAST_HERTZ = 60;
    private static final double POUR_FROM_HERTZ = 1400;
    private static final double POUR_TO_HERTZ = 450;
    private static final double FIZZ_HERTZ = 8000;
    private static final double BUBBLES_PER_SECOND = 18;
    private static final double CRACKLES_PER_SECOND = 60;

    private final Place heard;
    private final int rate;
    private final long samples;
    private final Band band = new Band();
    private long noise;
    private long i;

    /// What a step sets: pitch, level of noise, and what the level moves by each sample.
    private double level;

    private double levelStep;
    private double bubble;
    private double sine;
    private double sineBefore;
    private double sineFactor;

    /// A voice with what is needed of its place.
    ///
    /// @param voice what it is
    /// @param levels of a whoosh: how fast it is against its fastest, at each frame, 0 to 1
    /// @param firstFrame its first
    /// @param grid frames to samples
    private record Place(Voice voice, List<Double> levels, long firstFrame, SampleGrid grid) {}

    private VoiceSynth(Place heard, long samples, long seed) {
        this.heard = heard;
        this.samples = samples;
        rate = heard.grid().samplesPerSecond();
        noise = seed;
        double hertz = pitch(heard.voice());
        sineFactor = 2 * StrictMath.cos(2 * Math.PI * hertz / rate);
        sineBefore = -StrictMath.sin(2 * Math.PI * hertz / rate);
    }

    static VoiceSynth of(Guide.Heard event, int index, SampleGrid grid) {
        long frame = grid.frameAt(event.sample());
        int rate = grid.samplesPerSecond();
        long samples = switch (event.voice()) {
            case Voice.Click _ -> (long) (CLICK_SECONDS * rate);
            case Voice.Tick _ -> (long) (TICK_SECONDS * rate);
            case Voice.Whoosh(List<Double> speeds) -> grid.sample(frame + speeds.size()) - event.sample();
            case Voice.Pour(long length) -> length;
            case Voice.Fizz(long length) -> length;
            case Voice.Tone(long length) -> length;
        };
        List<Double> levels = event.voice() instanceof Voice.Whoosh(List<Double> speeds) ? shares(speeds) : List.of();
        return new VoiceSynth(new Place(event.voice(), levels, frame, grid), samples, SEED * (2L * index + 1));
    }

    private static List<Double> shares(List<Double> speeds) {
        double fastest = 0;
        for (double each : speeds) {
            fastest = Math.max(fastest, Math.abs(each));
        }
        double most = fastest;
        return speeds.stream()
                .map(each -> most == 0 ? 0 : Math.abs(each) / most)
                .toList();
    }

    private static double pitch(Voice voice) {
        return switch (voice) {
            case Voice.Click(Voice.Beat beat) -> beat == Voice.Beat.FIRST ? FIRST_HERTZ : OTHER_HERTZ;
            case Voice.Tone _ -> TONE_HERTZ;
            case Voice.Tick _, Voice.Whoosh _, Voice.Pour _, Voice.Fizz _ -> TICK_HERTZ;
        };
    }

    long samples() {
        return samples;
    }

    /// Gives the next sample.
    double next() {
        double value = switch (heard.voice()) {
            case Voice.Click(Voice.Beat beat) ->
                (beat == Voice.Beat.FIRST ? 0.5 : 0.35) * sine() * dying(CLICK_SECONDS / 5);
            case Voice.Tick _ -> tick();
            case Voice.Whoosh _ -> whoosh();
            case Voice.Pour _ -> pour();
            case Voice.Fizz _ -> fizz();
            case Voice.Tone _ -> 0.15 * sine();
        };
        double faded = value * fade();
        i++;
        return faded;
    }

    private double fade() {
        double edge = heard.voice() instanceof Voice.Click || heard.voice() instanceof Voice.Tick
                ? 0.001 * rate
                : FADE_SECONDS * rate;
        return Math.min(1, Math.min(i, samples - 1 - i) / edge);
    }

    private double dying(double seconds) {
        if (i % STEP == 0) {
            level = StrictMath.exp(-i / (seconds * rate));
            levelStep = (StrictMath.exp(-(i + STEP) / (seconds * rate)) - level) / STEP;
        }
        double now = level;
        level += levelStep;
        return now;
    }

    private double sine() {
        double now = sine;
        sine = sineFactor * now - sineBefore;
        sineBefore = now;
        return now;
    }

    private double tick() {
        if (i == 0) {
            band.set(TICK_HERTZ, 1.5, rate);
        }
        return 0.12 * band.next(random()) * dying(TICK_SECONDS / 5);
    }

    private double whoosh() {
        if (i % STEP == 0) {
            double now = share(i);
            double then = share(i + STEP);
            band.set(Math.max(LEAST_HERTZ, FASTEST_HERTZ * now), 1.2, rate);
            level = 0.09 * now;
            levelStep = 0.09 * (then - now) / STEP;
        }
        double value = level * band.next(random());
        level += levelStep;
        return value;
    }

    /// How fast it is against its fastest: straight from one frame's middle to the next one's.
    private double share(long sample) {
        SampleGrid grid = heard.grid();
        List<Double> levels = heard.levels();
        long start = grid.sample(heard.firstFrame());
        double at = sample * (double) levels.size() / (grid.sample(heard.firstFrame() + levels.size()) - start) - 0.5;
        int before = (int) Math.floor(at);
        double first = levels.get(Math.clamp(before, 0, levels.size() - 1));
        double second = levels.get(Math.clamp(before + 1, 0, levels.size() - 1));
        return first + (second - first) * (at - before);
    }

    private double pour() {
        if (i % STEP == 0) {
            double gone = (double) i / samples;
            double hertz = POUR_FROM_HERTZ * StrictMath.pow(POUR_TO_HERTZ / POUR_FROM_HERTZ, gone);
            if (random() * 0.5 + 0.5 < BUBBLES_PER_SECOND * STEP / rate) {
                bubble = 1;
            }
            band.set(hertz * (1 + 0.25 * bubble), 3, rate);
        }
        bubble *= 1 - 25.0 / rate;
        return 0.05 * (0.5 + bubble) * band.next(random());
    }

    private double fizz() {
        if (i % STEP == 0) {
            band.set(FIZZ_HERTZ, 0.8, rate);
            if (random() * 0.5 + 0.5 < CRACKLES_PER_SECOND * STEP / rate) {
                bubble = 1;
            }
        }
        bubble *= 1 - 300.0 / rate;
        return 0.035 * (0.7 + bubble) * band.next(random());
    }

    /// A number from −1 to 1, evenly (the mixing step of SplitMix64: G. Steele, D. Lea and C. Flood, 2014).
    private double random() {
        noise += 0x9E37_79B9_7F4A_7C15L;
        long mixed = (noise ^ noise >>> 30) * 0xBF58_476D_1CE4_E5B9L;
        mixed = (mixed ^ mixed >>> 27) * 0x94D0_49BB_1331_11EBL;
        return ((mixed ^ mixed >>> 31) >> 11) * 0x1p-52;
    }

    /// A band pass of second order by the bilinear transform of its two integrators, whose noise is as strong at every
    /// pitch: white noise from −1 to 1 leaves it with a mean square of 1.
    private static final class Band {
        private double first;
        private double second;
        private double a1;
        private double a2;
        private double gain;

        void set(double hertz, double q, int rate) {
            double g = StrictMath.tan(Math.PI * Math.min(hertz, 0.45 * rate) / rate);
            double k = 1 / q;
            a1 = 1 / (1 + g * (g + k));
            a2 = g * a1;
            // Of white noise of a mean square of 1/3 a share of π/2 · bandwidth over half the rate is left.
            gain = k / StrictMath.sqrt(Math.PI * hertz / (q * rate) / 3);
        }

        double next(double x) {
            double up = x - second;
            double band = a1 * first + a2 * up;
            double low = second + a2 * first + a2 * (a2 / a1) * up;
            first = 2 * band - first;
            second = 2 * low - second;
            return gain * band;
        }
    }
}
