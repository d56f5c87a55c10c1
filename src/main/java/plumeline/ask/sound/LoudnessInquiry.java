package plumeline.ask.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.answer.Answer.Assumed;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Beside;
import plumeline.answer.Draft;
import plumeline.answer.Draft.Criterion;
import plumeline.answer.Given;
import plumeline.answer.Inquiry;
import plumeline.answer.Item;
import plumeline.answer.Value;
import plumeline.answer.Verdict;
import plumeline.answer.Words;
import plumeline.ask.sound.Mixing.Found;
import plumeline.ask.sound.Mixing.Inputs;
import plumeline.ask.sound.Mixing.Mix;
import plumeline.quantity.Kind;
import plumeline.sound.HeldSound;
import plumeline.sound.Level;
import plumeline.sound.Loudness;
import plumeline.sound.Sound;
import plumeline.sound.Speaker;
import plumeline.sound.Wav;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;

/// The question `loudness` in text.
final class LoudnessInquiry implements Inquiry<Inputs> {
    private static final int LONGEST_NAME = 1000;

    /// The most that is metered at once: a quarter of an hour of 24-bit stereo at 48 kHz.
    private static final int MOST_BYTES = 256 << 20;

    private static final String ALLOWED = "a WAV file, or a clip with one track of sound";

    /// What meters may differ by, LU and dB: within it of a limit, another may say otherwise.
    private static final double METERS_LU = 0.1;

    private static final double METERS_DECIBELS = 0.2;

    private static final String EXAMPLE = """
        # loudness: is the mix at its target? Name your own file in place of this tone, which comes with the question:
        # a WAV file or a clip (mix.wav, mix.mov, mix.mp4); it is looked for beside this file.
        file: example-tone.wav
        # target: -23 LUFS         # default -14 LUFS, as web platforms play; broadcast: -23 in Europe, -24 in America
        # true_peak: -1 dBTP       # no peak may be over it; default -1 dBTP
        # within: 0.2 LU           # how far off it may be; default 0.2 LU; live: 1 LU
        """;

    @Override
    public String name() {
        return "loudness";
    }

    @Override
    public String asks() {
        return "whether the mix is at its target, and which gain brings it there";
    }

    @Override
    public String example() {
        return EXAMPLE;
    }

    @Override
    public Beside files() {
        return new ExampleTone();
    }

    @Override
    public Shape shape() {
        return Shape.Keys.of(
                Key.required("file", "the mix: a WAV file, or a clip", new Shape.Free(LONGEST_NAME)),
                Key.optional("target", "the loudness it is delivered at", amount(Kind.LOUDNESS, "-60 LUFS", "0 LUFS")),
                Key.optional("true_peak", "what no peak may be over", amount(Kind.TRUE_PEAK, "-20 dBTP", "3 dBTP")),
                Key.optional(
                        "within", "how far from the target it may be", amount(Kind.LOUDNESS_RANGE, "0 LU", "10 LU")));
    }

    private static Shape amount(Kind kind, String low, String high) {
        return new Shape.Amount(kind, Range.between(low, high), Shape.Mark.FIXED);
    }

    @Override
    public Inputs read(Given given) {
        return new Inputs(
                mix(given),
                given.si("target", "-14 LUFS", "about what web platforms play at; no standard: ask the client"),
                Math.max(0, given.si("within", "0.2 LU", "what EBU R 128 allows a file")),
                given.si("true_peak", "-1 dBTP", "broadcast's (EBU R 128) and most platforms'; ask the client"));
    }

    private static Mix mix(Given given) {
        String name = given.text("file");
        switch (given.sound("file", MOST_BYTES + 1)) {
            case Beside.File.Absent(String found, String attempt) ->
                given.refuse("file", "P-ASK-48", found, ALLOWED, attempt);
            case Beside.File.There there -> {
                if (there.view().remaining() > MOST_BYTES) {
                    given.refuse(
                            "file",
                            "P-ASK-48",
                            name + ", which is larger than 256 MiB",
                            ALLOWED + " of 256 MiB at most, a quarter of an hour of 24-bit stereo",
                            "Cut it into parts and ask for each.");
                } else {
                    return meter(given, name, Wav.read(there.view()));
                }
            }
        }
        return nothing(name);
    }

    private static Mix meter(Given given, String name, Wav.Reading reading) {
        switch (reading) {
            case Wav.Reading.Refused(Wav.Kind kind, String found) ->
                given.refuse("file", "P-ASK-49", name + ", in which is " + found, ALLOWED, attempt(kind));
            case Wav.Reading.Read(Sound sound, Wav.Places places) -> {
                if (sound.samplesPerSecond() >= Loudness.LEAST_SAMPLES_PER_SECOND) {
                    return new Mix(name, sound, places, Loudness.of(sound));
                }
                given.refuse(
                        "file",
                        "P-ASK-49",
                        name + ", with " + sound.samplesPerSecond() + " samples a second",
                        ALLOWED + " of 8000 samples a second at least",
                        "Export it at 48 kHz.");
            }
        }
        return nothing(name);
    }

    private static String attempt(Wav.Kind kind) {
        return switch (kind) {
            case OTHER_FILE -> "Name the file of the mix.";
            case CUT_SHORT -> "Export or copy it anew and whole.";
            case COMPRESSED -> "Export it as samples of 24 bits.";
            case DAMAGED -> "Export it anew.";
        };
    }

    /// What is worked with where a file was refused.
    private static Mix nothing(String name) {
        Sound silence = new HeldSound(48_000, List.of(Speaker.CENTRE), new float[0]);
        return new Mix(name, silence, Wav.Places.TOLD, Loudness.of(silence));
    }

    @Override
    public Draft answer(Inputs inputs, double[] settled, Words words) {
        Draft draft = draft(inputs, new LoudnessWords(inputs, Mixing.find(inputs)).notes());
        if (inputs.mix().places() == Wav.Places.TOLD) {
            return draft;
        }
        return draft.assuming(new Assumed(
                "channels",
                new Value.Word(LoudnessWords.places(inputs.mix().sound().speakers())),
                "the file doesn't say where they are heard from; the usual order"));
    }

    @Override
    public Draft vary(Inputs moved, double[] settled) {
        return draft(moved, Notes.NONE);
    }

    private static Draft draft(Inputs inputs, Notes notes) {
        Loudness loudness = inputs.mix().loudness();
        Optional<Found> found = Mixing.find(inputs);
        List<Item> items = new ArrayList<>();
        items.add(item("integrated", loudness.integrated(), "LUFS"));
        items.add(item("true_peak", loudness.truePeak(), "dBTP"));
        items.add(item("range", loudness.range(), "LU"));
        items.add(found.map(each -> Item.of("gain_to_target", each.gainDecibels(), "dB"))
                .orElse(Item.word("gain_to_target", "none")));
        items.add(found.map(each -> Item.of("true_peak_after", each.peakAfterDbtp(), "dBTP"))
                .orElse(Item.word("true_peak_after", "none")));
        items.add(item("momentary", loudness.momentary(), "LUFS"));
        items.add(item("short_term", loudness.shortTerm(), "LUFS"));
        if (found.isEmpty()) {
            return new Draft(items, List.of(), Verdict.UNKNOWN, notes);
        }
        double off = inputs.withinLu() - Math.abs(found.get().gainDecibels());
        double room = inputs.mostDbtp() - found.get().truePeakDbtp();
        boolean isNear = off < METERS_LU || room < METERS_DECIBELS;
        return new Draft(
                items,
                List.of(new Criterion("the loudness", off), new Criterion("the true peak", room)),
                isNear ? Verdict.TIGHT : Verdict.HOLDS,
                notes);
    }

    private static Item item(String name, Level level, String unit) {
        return switch (level) {
            case Level.At(double decibels) -> Item.of(name, decibels, unit);
            case Level.None _ -> Item.word(name, "none");
        };
    }
}
