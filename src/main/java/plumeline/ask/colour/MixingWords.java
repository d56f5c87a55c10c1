package plumeline.ask.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Words;
import plumeline.ask.colour.Mixing.Emitter;
import plumeline.ask.colour.Mixing.Want;
import plumeline.colour.Chromaticity;
import plumeline.colour.Lab;
import plumeline.colour.Mixture;
import plumeline.colour.SpectralLocus;
import plumeline.colour.Srgb;
import plumeline.quantity.Print;

/// What `colour` says beside its numbers; whatever it tells to try, it has tried.
final class MixingWords {
    /// What an eye tells apart side by side, u'v' (common practice).
    private static final double SEEN = 0.004;

    private final Mixing.Found found;
    private final Mixture mixture;
    private final List<String> because = new ArrayList<>();
    private final List<String> attempts = new ArrayList<>();

    MixingWords(Mixing.Found found) {
        this.found = found;
        mixture = found.mixture();
    }

    /// Emitters in a line: name, x, y, lumens.
    static String listed(List<Emitter> emitters) {
        return emitters.stream()
                .map(each -> each.name() + " " + xy(each.primary().colour()) + " "
                        + Print.number(each.primary().lumens(), 0) + " lm")
                .collect(Collectors.joining(", "));
    }

    static String xy(Chromaticity colour) {
        return "[" + Print.number(colour.x(), 3) + ", " + Print.number(colour.y(), 3) + "]";
    }

    Notes notes() {
        sayComplement();
        sayReach();
        sayDrives();
        sayWhite();
        return new Notes(
                because,
                attempts,
                List.of(
                        "Saturated and blue light is stronger than it looks: nobody looks into the lamp, and heat and"
                                + " plugs are minded as with any lamp.",
                        "A camera isn't the eye that these coordinates are of, and a print under coloured light changes"
                                + " its colours: ask label and white-balance, and shoot label and grey card under it"
                                + " before the take."),
                List.of(
                        "CIE 15:2004 (1931 and 1976 diagrams, CIELAB, CIELUV, Planck's locus); lights add by Grassmann;"
                                + " most lumens at the colour by a linear programme solved exactly",
                        "0.004 in u'v' as what is seen side by side: common practice"));
    }

    private void sayComplement() {
        Mixing.Inputs inputs = found.inputs();
        if (inputs.want() != Want.COMPLEMENT) {
            return;
        }
        Lab lab = inputs.asked().lab();
        if (lab.chroma() < 1) {
            because.add("The colour is as good as grey, which has no opposite hue: its complement is grey too.");
            return;
        }
        because.add(
                switch (inputs.by()) {
                    case LAB ->
                        "The opposite hue is " + degrees(lab.complement()) + " deg in CIE LCh under D65, across from "
                                + degrees(lab) + " deg, at the same lightness and chroma: xy " + xy(inputs.wanted())
                                + "." + onScreen(Srgb.find(lab.complement().toXyz(Chromaticity.D65)));
                    case LUV ->
                        "The opposite hue in CIE LCh(uv) lies across D65 in u'v', as far: xy " + xy(inputs.wanted())
                                + "." + onScreen(Srgb.findBrightest(inputs.wanted()));
                    case RGB ->
                        "The opposite hue of a screen's red, green and blue (HSL, HSV): xy " + xy(inputs.wanted()) + "."
                                + onScreen(inputs.asked().findScreen().map(Srgb::opposite));
                    case WAVELENGTH -> acrossWhite();
                });
        if (SpectralLocus.purity(inputs.wanted(), Chromaticity.D65) > 1 + 1e-9) {
            because.add("No light has just that colour: it lies beyond all of them.");
        }
    }

    private static String onScreen(Optional<Srgb> code) {
        return code.map(each -> " On a screen " + each.toHex() + ".").orElse(" No screen shows it.");
    }

    private String acrossWhite() {
        Chromaticity colour = found.inputs().asked().findColour().orElse(Chromaticity.D65);
        String here = wavelength(SpectralLocus.find(colour, Chromaticity.D65));
        String there = wavelength(SpectralLocus.findOpposite(colour, Chromaticity.D65));
        double purity = SpectralLocus.purity(colour, Chromaticity.D65);
        return "Its hue is " + here + ", " + Words.share(Math.min(1, purity)) + " pure; across D65 in the CIE 1931"
                + " diagram lies " + there + ", as pure: xy "
                + xy(found.inputs().wanted()) + ". Both mix to D65.";
    }

    private static String wavelength(Optional<SpectralLocus.Edge> edge) {
        return switch (edge.orElse(null)) {
            case SpectralLocus.Edge.Wavelength(var _, double metres) -> Print.number(metres * 1e9, 0) + " nm";
            case SpectralLocus.Edge.Purple _ -> "a purple, which is no single wavelength";
            case null -> "none";
        };
    }

    private static String degrees(Lab lab) {
        return Print.number((Math.toDegrees(lab.hueRadians()) + 360) % 360, 0);
    }

    private void sayReach() {
        double off = mixture.distance();
        if (off == 0) {
            return;
        }
        because.add("The lamp doesn't reach it. The nearest colour that it has is " + Print.number(off, 3)
                + " off in CIE 1976 u'v'; "
                + (off < SEEN
                        ? "less than an eye tells apart side by side, some 0.004."
                        : "an eye tells some 0.004 apart side by side."));
        Optional<Chromaticity> paler = findPaler();
        if (paler.isPresent()) {
            attempts.add(
                    "A paler colour toward white of D65 is reached: colour: " + xy(paler.get()) + " with want: match.");
        }
    }

    /// The most saturated colour between the wanted one and D65 that is reached, in steps of a hundredth.
    private Optional<Chromaticity> findPaler() {
        Chromaticity wanted = found.inputs().wanted();
        Chromaticity white = Chromaticity.D65;
        for (int percent = 99; percent > 0; percent--) {
            double share = percent / 100.0;
            Chromaticity there = new Chromaticity(
                    white.u() + share * (wanted.u() - white.u()), white.v() + share * (wanted.v() - white.v()));
            double x = Math.rint(there.x() * 1000) / 1000;
            double y = Math.rint(there.y() * 1000) / 1000;
            boolean real = x >= 0 && y >= Asked.LEAST_Y && x + y <= 1;
            if (real
                    && Mixture.brightest(found.inputs().primaries(), Chromaticity.ofXy(x, y))
                                    .distance()
                            == 0) {
                return Optional.of(Chromaticity.ofXy(x, y));
            }
        }
        return Optional.empty();
    }

    private void sayDrives() {
        List<String> full = new ArrayList<>();
        double all = 0;
        for (int i = 0; i < mixture.drives().size(); i++) {
            Emitter each = found.inputs().emitters().get(i);
            all += each.primary().lumens();
            if (mixture.drives().get(i) == 1) {
                full.add(each.name());
            }
        }
        because.add("Fully on: " + String.join(", ", full) + ". That gives " + Words.share(mixture.lumens() / all)
                + " of the lumens of all emitters together; for less light scale all drives alike.");
        because.add("A drive is a share of the emitter's light; where a dimmer's scale is another, set it by a meter.");
    }

    private void sayWhite() {
        if (found.white().isEmpty()) {
            because.add("It is no white: a colour temperature would say nothing.");
            return;
        }
        double duv = found.white().get().duv();
        if (Math.abs(duv) > 0.006) {
            because.add("duv " + Print.number(duv, 3) + ": " + (duv > 0 ? "greenish" : "pinkish") + " as a white.");
        }
        found.inputs().againstKelvin().ifPresent(kelvin -> {
            double shift = found.findMiredShift().orElse(0);
            because.add("mired_shift is from " + Print.number(kelvin, 0) + " K to this light: it is "
                    + (Math.abs(shift) < 0.5 ? "as warm." : shift > 0 ? "warmer." : "cooler."));
        });
    }
}
