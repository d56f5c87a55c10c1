package plumeline.ask.light;

import java.util.ArrayList;
import java.util.List;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Words;
import plumeline.light.Exposure;
import plumeline.quantity.Print;

/// What `exposure` says beside its numbers.
final class ExposureWords {
    /// As a pair of eyes tells two pictures apart.
    private static final double WORTH_SAYING_STOPS = 1.0 / 6;

    private final Exposing.Found found;
    private final Exposure exposure;
    private final Words words;

    ExposureWords(Exposing.Found found, Words words) {
        this.found = found;
        this.exposure = found.inputs().exposure();
        this.words = words;
    }

    Notes notes() {
        return new Notes(
                because(),
                attempts(),
                List.of(
                        "Hot lamps, stands and leads: sandbag, keep from cloth and water, and leave mains to who is"
                                + " licensed for it.",
                        "Nobody looks into a lamp at close range."),
                sources());
    }

    private List<String> sources() {
        String needed =
                "Needed lux: C N^2/(t S), the incident-light form of ISO 2720, from memory; close focus (1 + m)^2";
        String square =
                "Inverse square of the distance, within 1 % from five times the light's size on (lighting engineers'"
                        + " rule)";
        return switch (found.inputs().source()) {
            case Exposing.Source.Flat _ ->
                List.of(needed, "Panel: Lambert's formula for rectangles, exact near and far");
            case Exposing.Source.Point _ -> List.of(needed, square);
            case Exposing.Source.Lamp lamp -> List.of(needed, square, "Intensity: the photometric file " + lamp.file());
        };
    }

    private List<String> because() {
        List<String> because = new ArrayList<>();
        because.add("The thing gets " + lux(found.lux()) + "; the setting needs " + lux(exposure.neededLux()) + ": "
                + surplus());
        double close = 2 * Math.log(1 + exposure.magnification()) / Math.log(2);
        if (close >= WORTH_SAYING_STOPS) {
            because.add("Close focus takes " + stops(close) + " of it.");
        }
        switch (found.inputs().source()) {
            case Exposing.Source.Flat _ -> {}
            case Exposing.Source.Point _ ->
                because.add("Counted as from a point: nearer than five times its longest side a wide light gives less"
                        + " than that; measure there, or give it as a panel.");
            case Exposing.Source.Lamp lamp ->
                because.addAll(new LampWords(lamp, words).because(found.inputs().metres()));
        }
        return because;
    }

    private String surplus() {
        double margin = found.marginStops();
        if (found.lux() <= 0) {
            return "no light comes there.";
        }
        if (Math.abs(margin) < WORTH_SAYING_STOPS) {
            return margin < 0 ? "a little less than that, which hardly an eye tells." : "just right.";
        }
        return stops(margin) + (margin < 0 ? " too little." : " more than needed.");
    }

    private List<String> attempts() {
        List<String> attempts = new ArrayList<>();
        double margin = found.marginStops();
        if (found.lux() <= 0) {
            attempts.add("Turn light or thing until the one shines on the other.");
            return attempts;
        }
        if (Math.abs(margin) < WORTH_SAYING_STOPS) {
            if (margin < 0) {
                found.exactMetres()
                        .ifPresent(metres -> attempts.add(
                                "Set the light " + words.length(metres) + " from the thing: just enough."));
            }
            return attempts;
        }
        double ratio = Math.pow(2, margin);
        attempts.add("Set f/" + Print.number(exposure.number() * Math.sqrt(ratio), 1) + " instead of f/"
                + Print.number(exposure.number(), 1) + ": ask framing what that does to the sharp zone.");
        attempts.add("Set ISO " + Print.number(exposure.sensitivity() / ratio, 0)
                + (margin < 0 ? ": more noise; see whether the camera goes so far." : "."));
        if (found.exactMetres().isPresent()) {
            attempts.add(
                    "Set the light " + words.length(found.exactMetres().getAsDouble()) + " from the thing instead of "
                            + words.length(found.inputs().metres()) + "; its reflection then changes its size.");
        } else if (margin < 0) {
            attempts.add("No distance gives so much: a brighter light, or " + Print.number(Math.ceil(1 / ratio), 0)
                    + " of them.");
        }
        if (margin < 0 && margin >= -1) {
            attempts.add("Add a second such light: one stop.");
        }
        if (margin < 0) {
            attempts.add("Shoot at a lower rate or with a longer shutter, " + Print.number(1 / ratio, 1)
                    + " times the time: more blur; ask framing and fall first.");
        } else {
            attempts.add("Put " + stops(margin) + " of grey filter before the lens, or dim the light.");
        }
        return attempts;
    }

    private static String stops(double stops) {
        return Print.stops(Math.abs(stops));
    }

    /// Three digits that count: no meter is surer.
    private static String lux(double lux) {
        if (lux < 100) {
            return Print.number(lux, 1) + " lx";
        }
        double unit = Math.pow(10, Math.floor(Math.log10(lux)) - 2);
        return Print.number(Math.floor(lux / unit + 0.5) * unit, 0) + " lx";
    }
}
