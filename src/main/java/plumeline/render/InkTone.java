package plumeline.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.colour.Rgb;
import plumeline.plan.Kit;
import plumeline.plume.Strength;
import plumeline.quantity.Quantity;

/// What neat ink does to light, channel by channel.
///
/// Its worst channel takes as much as its strength says. Ink of a colour takes of each channel by the logarithm of what
/// that colour lets through, so that thin ink has its hue; and it scatters the same in all channels.
///
/// @param extinction of neat ink, natural, 1/m a channel
/// @param albedo what of that it scatters, shares of one a channel
/// @param assumed what was taken for what isn't written
record InkTone(Rgb extinction, Rgb albedo, List<String> assumed) {
    /// Coloured ink of a guessed strength, as `plume` takes it, decadic 1/m.
    private static final double GUESS = 1e4;

    /// What of its worst channel coloured ink scatters: next to nothing of clear dye, most of paint or of dye in milk;
    /// a guess between them.
    private static final double COLOURED = 0.2;

    /// The same of ink without a colour: near black.
    private static final double NEUTRAL = 0.05;

    /// No colour lets less through of a channel.
    private static final double LEAST = 0.01;

    /// Of no ink at all.
    static final InkTone NONE = new InkTone(new Rgb(0, 0, 0), new Rgb(0, 0, 0), List.of());

    InkTone {
        assumed = List.copyOf(assumed);
    }

    /// Reads an ink.
    static InkTone of(Kit.Ink ink) {
        List<String> assumed = new ArrayList<>();
        Optional<Quantity> written = ink.written().findQuantity("strength");
        Strength strength = written.map(found -> new Strength(found.si(), true)).orElse(new Strength(GUESS, false));
        if (!strength.measured()) {
            assumed.add(
                    "The strength of " + ink.name() + " isn't written: drawn as dark as coloured ink may be, 100 /cm.");
        }
        Optional<Rgb> colour = Paints.findColour(ink.written());
        assumed.add(
                colour.isPresent()
                        ? "How much light " + ink.name()
                                + " scatters isn't known: a fifth of what its worst channel takes."
                        : "The colour of " + ink.name() + " isn't written: drawn near black.");
        double worst = Math.log(10) * strength.perMetre();
        return of(worst, colour, assumed);
    }

    private static InkTone of(double worst, Optional<Rgb> colour, List<String> assumed) {
        double scattered = colour.isPresent() ? COLOURED : NEUTRAL;
        double[] takes = colour.map(InkTone::takes).orElse(new double[] {1, 1, 1});
        double[] extinction = new double[3];
        double[] albedo = new double[3];
        for (int i = 0; i < 3; i++) {
            double share = scattered + (1 - scattered) * takes[i];
            extinction[i] = worst * share;
            albedo[i] = scattered / share;
        }
        return new InkTone(
                new Rgb(extinction[0], extinction[1], extinction[2]),
                new Rgb(albedo[0], albedo[1], albedo[2]),
                assumed);
    }

    /// Each channel's logarithm over the worst one's; all alike for a grey.
    private static double[] takes(Rgb colour) {
        double[] logs = {log(colour.red()), log(colour.green()), log(colour.blue())};
        double most = Math.max(logs[0], Math.max(logs[1], logs[2]));
        return most > 0 ? new double[] {logs[0] / most, logs[1] / most, logs[2] / most} : new double[] {1, 1, 1};
    }

    private static double log(double share) {
        return -Math.log(Math.clamp(share, LEAST, 1));
    }
}
