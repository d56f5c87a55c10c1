package plumeline.ask.light;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Words;
import plumeline.light.Exposure;
import plumeline.light.Latitude;
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
                "Needed lux: C N^2/(t S), the incident-light form of ISO 2720, from memory; close focus (1 + m)^2"
                        + (found.findLandsStops().isPresent()
                                ? "; mid grey pi K/C with K 12.5; an ISO over base leaves that much more over mid grey"
                                        + " and less under it, of raw and log pictures"
                                : "");
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
        because.addAll(surface());
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

    /// Where a surface lands, and what becomes of it.
    private List<String> surface() {
        List<String> sentences = new ArrayList<>();
        Exposing.Surface surface = found.inputs().surface();
        OptionalDouble lands = found.findLandsStops();
        if (lands.isPresent()) {
            String grey = Print.share(Latitude.midGrey(exposure.constant()), 1);
            String end = surface.latitude()
                    .map(latitude -> "; " + becomes(latitude, lands.getAsDouble()))
                    .orElse("");
            sentences.add("A surface of " + Print.share(surface.reflectance().orElseThrow(), 1) + " lands "
                    + tenths(lands.getAsDouble()) + (lands.getAsDouble() < 0 ? " under" : " over")
                    + " mid grey, which is " + grey + end + ".");
        }
        surface.latitude()
                .ifPresent(latitude -> sentences.add("At this ISO the camera holds " + tenths(latitude.overStops())
                        + " over and " + tenths(latitude.underStops()) + " under mid grey."));
        return sentences;
    }

    private static String becomes(Latitude latitude, double lands) {
        double clipping = latitude.toClippingStops(lands);
        double noise = latitude.toNoiseStops(lands);
        if (clipping < 0) {
            return "it clips, by " + tenths(clipping);
        }
        return noise < 0
                ? "it drowns in noise, by " + tenths(noise)
                : tenths(clipping) + " are left to clipping, " + tenths(noise) + " to noise";
    }

    private static String tenths(double stops) {
        return Print.number(Math.abs(stops), 1) + " stops";
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
        String stop = found.inputs().frame().stop();
        found.findNumber()
                .ifPresent(number -> attempts.add("Set " + stop + Print.number(number, 1) + " instead of " + stop
                        + Print.number(exposure.number(), 1) + ": ask framing what that does to the sharp zone."));
        found.findSensitivity()
                .ifPresent(iso -> attempts.add("Set ISO " + Print.number(iso, 0)
                        + (margin < 0 ? ": more noise; see whether the camera goes so far." : ".")));
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
        found.findShutterSeconds()
                .ifPresent(seconds -> attempts.add("Set the shutter to " + shutter(seconds)
                        + (margin < 0 ? ": what moves smears more; ask fall." : ".")));
        if (margin < 0) {
            attempts.add("Shoot at a lower rate or with a longer shutter, " + Print.number(1 / ratio, 1)
                    + " times the time: more blur; ask framing and fall first.");
        } else {
            attempts.add("Put " + stops(margin) + " of grey filter before the lens, or dim the light.");
        }
        return attempts;
    }

    private String shutter(double seconds) {
        Exposing.Frame frame = found.inputs().frame();
        return switch (frame.shutter()) {
            case ANGLE -> Print.number(seconds / frame.seconds() * 360, 1) + " deg";
            case TIME -> "1/" + Print.number(1 / seconds, 1) + " s";
        };
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
