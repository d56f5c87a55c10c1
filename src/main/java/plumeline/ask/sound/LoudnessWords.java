package plumeline.ask.sound;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.answer.Answer.Notes;
import plumeline.ask.sound.Mixing.Found;
import plumeline.ask.sound.Mixing.Inputs;
import plumeline.quantity.Print;
import plumeline.sound.Level;
import plumeline.sound.Loudness;
import plumeline.sound.Speaker;

/// The sentences of the question `loudness`.
final class LoudnessWords {
    private static final double SHORT_SECONDS = 60;

    /// Below it the absolute gate, which a gain doesn't move, may hold back more or less of the mix afterwards.
    private static final double FAINT_LUFS = -50;

    /// What a hand sets a fader by, dB.
    private static final double STEP_DECIBELS = 0.1;

    private static final List<String> SOURCES = List.of(
            "Loudness: ITU-R BS.1770-5; momentary, short-term and range: EBU Tech 3341 and 3342",
            "True peak: at eight places a sample, up to 0.14 dB under what is there, to 0.45 of the rate;"
                    + " BS.1770-5, Annex 2");

    private final Inputs inputs;
    private final Optional<Found> found;

    LoudnessWords(Inputs inputs, Optional<Found> found) {
        this.inputs = inputs;
        this.found = found;
    }

    Notes notes() {
        List<String> because = new ArrayList<>();
        List<String> attempts = new ArrayList<>();
        if (found.isPresent()) {
            explain(found.get(), because);
            propose(found.get(), attempts);
        } else {
            tellMissing(because, attempts);
        }
        because.add(channels());
        return new Notes(because, attempts, List.of(), SOURCES);
    }

    private void explain(Found mix, List<String> because) {
        double over = -mix.gainDecibels();
        because.add(inputs.mix().name() + " reads " + Print.number(mix.integratedLufs(), 1) + " LUFS over "
                + Print.seconds(inputs.mix().sound().seconds(), 2) + ", "
                + (Math.abs(over) < STEP_DECIBELS / 2
                        ? "which is its target."
                        : gap(over) + " LU " + (over > 0 ? "over" : "under") + " its target of "
                                + Print.number(inputs.targetLufs(), 1) + " LUFS; "
                                + (Math.abs(over) <= inputs.withinLu() ? "" : "only ")
                                + Print.number(inputs.withinLu(), 2) + " LU are allowed."));
        double room = inputs.mostDbtp() - mix.truePeakDbtp();
        because.add("Its highest peak, between samples too, is " + Print.number(mix.truePeakDbtp(), 1) + " dBTP, "
                + gap(room) + " dB " + (room >= 0 ? "under" : "over") + " the "
                + Print.number(inputs.mostDbtp(), 1) + " dBTP allowed.");
        if (inputs.mix().loudness().range() instanceof Level.At
                && inputs.mix().sound().seconds() < SHORT_SECONDS) {
            because.add("Of a film under a minute the range tells little.");
        }
    }

    private void propose(Found mix, List<String> attempts) {
        boolean isOff = Math.abs(mix.gainDecibels()) > inputs.withinLu();
        double gain = isOff ? mix.gainDecibels() : 0;
        double after = mix.truePeakDbtp() + gain;
        boolean passes = after <= inputs.mostDbtp();
        if (isOff) {
            String set = "Set the gain of all of it to " + signed(gain) + " dB: it then reads "
                    + Print.number(inputs.targetLufs(), 1) + " LUFS, its highest peak " + Print.number(after, 1)
                    + " dBTP";
            attempts.add(set + (passes ? "." : ", too high by " + over(after) + " dB."));
            if (mix.integratedLufs() < FAINT_LUFS) {
                attempts.add("Ask again then: of so faint a mix more or less is counted after a gain.");
            }
        }
        if (!passes) {
            attempts.add("Have a true-peak limiter at " + Print.number(inputs.mostDbtp(), 1)
                    + " dBTP take the peaks down by " + over(after)
                    + " dB, and ask again: what it takes is missing from the loudness.");
            attempts.add("Without a limiter the loudest that keeps its peaks is "
                    + Print.number(
                            Math.floor((mix.integratedLufs() + inputs.mostDbtp() - mix.truePeakDbtp()) * 10) / 10, 1)
                    + " LUFS: ask the client.");
        }
    }

    /// How far a peak is over the limit, never said too low.
    private String over(double peakDbtp) {
        return Print.number(Math.ceil((peakDbtp - inputs.mostDbtp()) / STEP_DECIBELS - 1e-9) * STEP_DECIBELS, 1);
    }

    /// A difference as it is read, finer where a tenth would say that there is none.
    private static String gap(double decibels) {
        double size = Math.abs(decibels);
        return Print.number(size, size < STEP_DECIBELS ? 3 : 1);
    }

    private static String signed(double decibels) {
        return (decibels > 0 ? "+" : "") + Print.number(decibels, 1);
    }

    private void tellMissing(List<String> because, List<String> attempts) {
        String name = inputs.mix().name();
        boolean isShort = inputs.mix().loudness().integrated() instanceof Level.None(Level.Missing why)
                && why == Level.Missing.LENGTH;
        if (isShort) {
            because.add(name + " lasts " + Print.seconds(inputs.mix().sound().seconds(), 3)
                    + ". Loudness is measured over " + Print.seconds(Loudness.BLOCK_SECONDS, 1) + " at least.");
            attempts.add("Name the whole mix.");
        } else {
            because.add("There is nothing to measure in " + name + ": all of it is silent, or under -70 LUFS.");
            attempts.add("See whether the right track was written into it.");
        }
    }

    private String channels() {
        List<Speaker> speakers = inputs.mix().sound().speakers();
        String rate = Print.number(inputs.mix().sound().samplesPerSecond() / 1000.0, 2) + " kHz";
        if (speakers.size() == 1) {
            return "One channel, " + rate + ", counted once: the same in two channels reads 3 LU more.";
        }
        return speakers.size() + " channels, " + rate + ": " + places(speakers) + "."
                + (speakers.contains(Speaker.LOW) ? " LFE isn't counted." : "");
    }

    static String places(List<Speaker> speakers) {
        return String.join(" ", speakers.stream().map(Speaker::brief).toList());
    }
}
