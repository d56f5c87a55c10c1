package plumeline.ask.water;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Words;
import plumeline.quantity.Print;
import plumeline.water.ContactAngles;
import plumeline.water.Drops;
import plumeline.water.Glycerine;
import plumeline.water.Solution;
import plumeline.water.Surface;

/// What `beads` says beside its numbers; whatever figure it tells to try, it has computed.
final class BeadsWords {
    private static final double HALF_GLYCERINE = 0.5;

    /// A drop is set no larger than this share of the low end of what stays.
    private static final double SAFE_SHARE = 0.8;

    private final Beads.Found found;
    private final Beads.Inputs inputs;
    private final Words words;
    private final List<String> because = new ArrayList<>();
    private final List<String> attempts = new ArrayList<>();
    private final List<String> cautions = new ArrayList<>();

    BeadsWords(Beads.Found found, Words words) {
        this.found = found;
        this.inputs = found.inputs();
        this.words = words;
    }

    Notes notes() {
        saySize();
        sayDrying();
        tryRecipe();
        sayCautions();
        return new Notes(
                because,
                attempts,
                cautions,
                List.of(
                        "Furmidge's balance with 0.77 to 0.79 per diameter (24/π³ measured, π/4 of a round base);"
                                + " drying of a cap by Popov's shape factor",
                        "Water by Tanaka and IAPWS, glycerine by Volk and Zhang; typical angles from memory of"
                                + " published tables"));
    }

    private void saySize() {
        double mean =
                (inputs.advancingRadians().value() + inputs.recedingRadians().value()) / 2;
        String angles = Print.degrees(inputs.advancingRadians().value()) + " advancing and "
                + Print.degrees(inputs.recedingRadians().value()) + " receding";
        switch (found.stay()) {
            case Drops.Stay.UpTo(double metres) -> {
                double microlitres = Drops.capMetres3(metres, mean) * 1e9;
                because.add("Diameters are of the wetted base, the drop a cap at " + Print.degrees(mean) + " (" + angles
                        + "); the largest that stays holds " + Print.number(microlitres, microlitres < 10 ? 1 : 0)
                        + " µl. Knocks, dust and drops that run together bring down smaller ones.");
                because.add("low and high of largest_staying bound 80 %: the law's factor" + byInputs() + ".");
            }
            case Drops.Stay.Every() -> because.add("On a level surface every drop stays.");
            case Drops.Stay.PastCaps(double metres) ->
                because.add("Every drop that is a cap stays, up to " + words.length(metres)
                        + "; larger ones are puddles flattened by their weight, which this law doesn't know.");
            case Drops.Stay.NoBeads(double radians) ->
                because.add("At a mean angle of " + Print.degrees(radians) + " (" + angles + ") "
                        + (radians < 1
                                ? "the liquid spreads to a film: there are no beads."
                                : "a drop hardly touches and rolls off: this law doesn't know such drops."));
        }
    }

    private String byInputs() {
        boolean wide = inputs.advancingRadians().high()
                        > inputs.advancingRadians().low()
                || inputs.recedingRadians().high() > inputs.recedingRadians().low();
        return wide ? " and the angles' range" : "";
    }

    private void sayDrying() {
        if (found.stay() instanceof Drops.Stay.NoBeads) {
            return;
        }
        boolean water = inputs.glycerineShare().value() == 0;
        if (water && found.drying().find().isPresent()) {
            because.add(
                    "dries_in is for a base of 2 mm in still air at its own temperature; a draught or warm lamps halve"
                            + " it, its own cooling can double it (low and high); it goes with the diameter squared.");
        } else if (water) {
            because.add("In air that is full of vapour water doesn't dry.");
        } else {
            because.add(kept(mix()));
            because.add("Contact angles named for a surface are water's; a mix creeps a little more: measure its own.");
        }
    }

    private Solution mix() {
        return Solution.ofGlycerineByVolume(inputs.glycerineShare().value());
    }

    /// What a drop of a mix does in this air.
    private String kept(Solution mix) {
        OptionalDouble share = Glycerine.keptVolumeShare(
                        mix, inputs.humidityShare().value(), inputs.airKelvin().value())
                .find();
        if (share.isEmpty()) {
            return "Glycerine never dries; how far it shrinks or grows isn't known for air so dry, damp, warm or cold.";
        }
        double kept = share.getAsDouble();
        return kept <= 1
                ? "Glycerine never dries: such a drop shrinks to " + Print.share(kept, 0)
                        + " of its volume in this air and stays so."
                : "Glycerine never dries: in this air such a drop draws water and grows to " + Print.share(kept, 0)
                        + " of its volume.";
    }

    private void tryRecipe() {
        switch (found.stay()) {
            case Drops.Stay.NoBeads(double radians) -> {
                if (radians < 1) {
                    tryCoat("Coat it");
                }
            }
            case Drops.Stay.UpTo(double _) -> {
                double safe = Math.floor(found.lowMetres() * SAFE_SHARE * 1e4) / 1e4;
                if (safe >= 2e-4) {
                    attempts.add(
                            "Clean and dry it, then spray a fine mist from arm's length in short bursts; stop before"
                                    + " drops grow past " + words.length(safe)
                                    + "; set larger single ones by syringe last.");
                }
                tryCoat("For smaller, rounder beads coat it");
            }
            case Drops.Stay.PastCaps(double _), Drops.Stay.Every() -> {}
        }
        boolean beads = !(found.stay() instanceof Drops.Stay.NoBeads);
        if (beads
                && inputs.glycerineShare().value() == 0
                && found.drying().find().isPresent()) {
            OptionalDouble share = Glycerine.keptVolumeShare(
                            Solution.ofGlycerineByVolume(HALF_GLYCERINE),
                            inputs.humidityShare().value(),
                            inputs.airKelvin().value())
                    .find();
            if (share.isPresent() && share.getAsDouble() <= 1) {
                attempts.add("For a long set-up mix glycerine and water 1 to 1 by volume: a drop then keeps "
                        + Print.share(share.getAsDouble(), 0) + " of its volume in this air.");
            }
        }
    }

    /// What wax would do, where it makes smaller drops stay than the surface itself.
    private void tryCoat(String begin) {
        ContactAngles wax = Surface.WAX.usual();
        Beads.Inputs waxed = new Beads.Inputs(
                Beads.Span.of(wax.advancingRadians()),
                Beads.Span.of(wax.recedingRadians()),
                inputs.tiltRadians(),
                inputs.glycerineShare(),
                inputs.airKelvin(),
                inputs.humidityShare());
        Beads.Found there = Beads.answer(waxed);
        boolean smaller = !(found.stay() instanceof Drops.Stay.UpTo(double metres)) || there.highMetres() < metres;
        if (there.stay() instanceof Drops.Stay.UpTo(double metres) && smaller) {
            attempts.add(
                    begin + " with wax or polish: up to " + words.length(metres) + " stay there, larger ones run.");
        }
    }

    private void sayCautions() {
        cautions.add("Angles differ from piece to piece: try on a spare first, in the light of the shot.");
        if (inputs.glycerineShare().value() > 0) {
            cautions.add(
                    "Reset: wipe, wash with warm water and a drop of soap, rinse the soap off, dry, spray anew; what is"
                            + " left changes how the next drops sit.");
            cautions.add("Glycerine makes floors slippery: wipe at once. Keep the mist off lenses, hot lamps and mains"
                    + " plugs, and don't breathe it.");
        } else {
            cautions.add("Keep the mist off hot lamps, mains plugs and lenses; wipe the floor.");
        }
    }
}
