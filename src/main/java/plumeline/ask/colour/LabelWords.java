package plumeline.ask.colour;

import java.util.ArrayList;
import java.util.List;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Words;
import plumeline.ask.colour.LabelColour.Found;
import plumeline.ask.colour.LabelColour.Inputs;
import plumeline.ask.colour.LabelColour.Known;
import plumeline.colour.Chromaticity;
import plumeline.colour.Srgb;
import plumeline.colour.Xyz;
import plumeline.quantity.Print;

/// What `label` says beside its numbers.
final class LabelWords {
    private LabelWords() {}

    static Notes notes(Inputs inputs, Found found) {
        List<String> because = new ArrayList<>();
        double share = found.colour().xyz().y();
        because.add("Of what a white card gives back under this light the label gives " + Words.share(share)
                + (share > 0 ? ", " + Print.stops(-Math.log(share) / Math.log(2)) + " less" : "") + "; a screen shows "
                + screen(found) + " where that card is full white.");
        because.add("The light is xy " + MixingWords.xy(inputs.light().colour()) + ": "
                + inputs.light().known().said() + ".");
        because.add(
                inputs.surface().known() == Known.SPECTRUM
                        ? "The label's own spectrum is used."
                        : "The label's spectrum isn't known: the smoothest of its colour stands for it.");
        because.add("l, a, b are CIELAB under what is taken for white; difference is CIEDE2000 to the label in daylight"
                + " (D65), rough from some 10 on.");
        if (!inputs.isExact()) {
            because.add(
                    "low and high: so near lay about four in five of fourteen measured paints (CIE 13.3) under coloured"
                            + " and white lights; every ± of the input is added.");
        }
        return new Notes(
                because,
                List.of(),
                cautions(inputs),
                List.of(
                        "CIE 15:2004, 7.1: light times reflectance times observer, summed in steps of 1 nm; daylight"
                                + " and Planck's law by the same; peaks as normal curves (common practice)",
                        "made-up spectra: a form by Jakob and Hanika (2019), solved for the colour"));
    }

    private static List<String> cautions(Inputs inputs) {
        List<String> cautions = new ArrayList<>();
        if (inputs.light().known() == SceneLight.Known.COLOUR) {
            cautions.add(
                    "Lights of one colour may show one label very differently: give the emitters' peak and width, or"
                            + " a spectrum, before anything is decided on this.");
        }
        cautions.add("Inks that glow, whitened paper, foil and gloss come out otherwise, and a camera isn't the eye of"
                + " these numbers: shoot the label with a grey card under the light.");
        return cautions;
    }

    /// As a screen whose white is what is taken for white.
    private static String screen(Found found) {
        Xyz white = found.colour().white().at(1);
        Xyz to = Chromaticity.D65.at(1);
        Xyz seen = new Xyz(
                found.colour().xyz().x() * to.x() / white.x(),
                found.colour().xyz().y(),
                found.colour().xyz().z() * to.z() / white.z());
        return Srgb.find(seen)
                .map(code -> "about " + code.toHex())
                .orElseGet(() -> "at best " + Srgb.clipped(seen).toHex());
    }
}
