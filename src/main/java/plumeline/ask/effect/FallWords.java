package plumeline.ask.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Words;
import plumeline.ask.effect.FallTake.Pass;
import plumeline.fall.Fall;
import plumeline.fall.Medium;
import plumeline.fall.Packing;
import plumeline.quantity.Print;
import plumeline.water.Water;

/// What `fall` says beside its numbers; whatever it tells to try, it has tried.
final class FallWords {
    /// A smear that just doesn't show (common practice).
    private static final double SHARP_PIXELS = 2;

    /// The shortest exposure that cameras and lamps of a table bear (common practice).
    private static final double SHORTEST_SECONDS = 1.0 / 16_000;

    /// So much of what it takes the room of it weighs in order to sink for sure: a tenth more.
    private static final double SINKING_SHARE = 1.1;

    /// Less, kg, is told in milligrams.
    private static final double TENTH_OF_A_GRAM = 1e-4;

    private final FallTake.Found found;
    private final FallTake.Inputs inputs;
    private final Words words;
    private final List<String> because = new ArrayList<>();
    private final List<String> attempts = new ArrayList<>();

    FallWords(FallTake.Found found, Words words) {
        this.found = found;
        this.inputs = found.inputs();
        this.words = words;
    }

    Notes notes() {
        switch (found.usual()) {
            case Pass.Through pass -> {
                sayDrag(pass);
                sayBlur(pass);
                tryFrames(pass);
                tryBlur(pass);
            }
            case Pass.Floats() -> sayFloats();
            case Pass.Unknown() ->
                because.add(
                        "So large and fast a piece lies past what its drag is known for: film a trial fall and count"
                                + " frames.");
        }
        if (!isInAir()) {
            because.add("The water is taken as fresh, at 20 degC.");
        }
        sayPacking();
        sayLacking();
        return new Notes(
                because,
                attempts,
                List.of(
                        "Falling pieces bounce and scatter: eyes away, nothing hard or heavy from a height, no glass"
                                + " beneath.",
                        "Pieces and drops underfoot are slippery: sweep at once. What fell is no food any more."),
                List.of(
                        "Balls: Clift, Grace and Weber 1978; cubes and discs: Hoerner 1965, from memory",
                        "Packing: Onoda and Liniger, Berryman, Baker and Kudrolli; discs are our guess"));
    }

    private boolean isInAir() {
        return inputs.medium().equals(Medium.AIR);
    }

    private void sayDrag(Pass.Through pass) {
        double bare = Math.sqrt(2 * Water.GRAVITY_METRES_PER_SECOND2 * inputs.heightMetres());
        OptionalDouble steady = new Fall(inputs.piece(), inputs.medium(), 1).findTerminalMetresPerSecond();
        String most = steady.isPresent()
                ? "; it would never go faster than " + Print.number(steady.getAsDouble(), 2) + " m/s"
                : "";
        because.add("speed is at the frame's top edge: without drag and lift " + Print.number(bare, 2) + " m/s" + most
                + ". At the bottom edge it is " + Print.number(pass.bottomMetresPerSecond(), 2) + " m/s.");
        because.add("Times are of the piece's middle, let go at rest. low and high bound 80 %: "
                + switch (inputs.piece().shape()) {
                    case BALL -> "a smooth ball's drag.";
                    case CUBE -> "a cube's drag, face on or tumbling.";
                    case DISC -> "a disc's drag, broadside or on edge; one that flutters takes longer and drifts.";
                });
    }

    private void sayBlur(Pass.Through pass) {
        double scale = inputs.camera().exposureSeconds()
                * inputs.field().pixels()
                / inputs.field().heightMetres();
        because.add("blur is at its fastest in the frame, " + Print.number(pass.fastest(), 2) + " m/s; at the top edge "
                + Words.pixels(pass.topMetresPerSecond() * scale) + ".");
        because.add("Let go all at once, a handful is gone in " + Print.seconds(pass.seconds(), 2)
                + ": for a longer shower let it go over that much more time.");
    }

    private void tryFrames(Pass.Through pass) {
        FallTake.Camera camera = inputs.camera();
        if (camera.wantedFrames().isEmpty()) {
            return;
        }
        double wanted = camera.wantedFrames().getAsDouble();
        if (pass.seconds() * camera.rate() >= wanted) {
            return;
        }
        attempts.add("Shoot at " + Print.number(Math.ceil(wanted / pass.seconds()), 0) + " fps or more.");
        double step = words.stepMetres();
        for (double height = Math.floor(inputs.heightMetres() / step) * step; height >= 0; height -= step) {
            FallTake.Found lower = FallTake.answer(inputs.withHeight(height));
            if (lower.usual() instanceof Pass.Through there && there.seconds() * camera.rate() >= wanted) {
                attempts.add("Let it go " + words.length(height) + " above the frame: "
                        + Print.number(there.seconds() * camera.rate(), 1) + " frames.");
                return;
            }
        }
    }

    private void tryBlur(Pass.Through pass) {
        double blur = FallTake.blurPixels(inputs, pass);
        if (blur <= SHARP_PIXELS) {
            return;
        }
        double exposure = inputs.camera().exposureSeconds() * SHARP_PIXELS / blur;
        String stops = Print.stops(Math.log(blur / SHARP_PIXELS) / Math.log(2));
        if (exposure >= SHORTEST_SECONDS) {
            attempts.add("For " + Words.pixels(SHARP_PIXELS) + " of blur expose " + shutter(exposure) + ", which costs "
                    + stops + " of light.");
        } else {
            attempts.add("For " + Words.pixels(SHARP_PIXELS) + " of blur only a flash is short enough: "
                    + shutter(exposure) + ".");
        }
    }

    /// As a shutter or a flash is told: the fraction in two digits, no longer than asked.
    private static String shutter(double seconds) {
        double step = Math.max(1, Math.pow(10, Math.floor(Math.log10(1 / seconds)) - 1));
        return "1/" + Print.number(Math.ceil(1 / (seconds * step) - 1e-9) * step, 0) + " s";
    }

    private void sayFloats() {
        Fall fall = new Fall(inputs.piece(), inputs.medium(), 1);
        OptionalDouble rises = fall.moves() ? fall.findTerminalMetresPerSecond() : OptionalDouble.empty();
        boolean inAir = isInAir();
        because.add("It floats: the piece is no heavier than the " + (inAir ? "air" : "water")
                + " it takes the room of"
                + (rises.isPresent()
                        ? "; let go" + (inAir ? "" : " under water") + " it rises, at "
                                + Print.number(rises.getAsDouble(), 2) + " m/s before long"
                                + (fall.zigzags() ? ", in a zigzag." : ".")
                        : "."));
        double needed = SINKING_SHARE
                * inputs.medium().densityKilogramsPerMetre3()
                * inputs.piece().volumeMetres3();
        attempts.add("To make it " + (inAir ? "fall" : "sink") + " put in weight, to " + grams(needed)
                + " in all, or let it rise.");
    }

    private static String grams(double kilograms) {
        return kilograms < TENTH_OF_A_GRAM
                ? Print.number(kilograms * 1e6, 2) + " mg"
                : Print.number(kilograms * 1e3, kilograms < 0.01 ? 2 : 1) + " g";
    }

    private void sayLacking() {
        boolean frames = inputs.camera().wantedFrames().isEmpty();
        boolean room = inputs.vessel().metres3().isEmpty();
        if (frames || room) {
            because.add("Not known without "
                    + (frames ? "wanted_frames: least_rate" : "")
                    + (frames && room ? "; without " : "")
                    + (room ? "vessel: pieces_to_fill" : "")
                    + ".");
        }
    }

    private void sayPacking() {
        if (inputs.vessel().metres3().isEmpty()) {
            return;
        }
        double vessel = inputs.vessel().metres3().getAsDouble();
        Packing packing = Packing.of(inputs.piece().shape());
        double close = FallTake.pieces(inputs, vessel, packing.closeShare());
        because.add("Poured in, " + inputs.piece().shape().name().toLowerCase(Locale.ROOT) + "s fill "
                + Print.share(packing.usualShare(), 0) + " of the room (" + Print.share(packing.looseShare(), 0)
                + " gently, " + Print.share(packing.closeShare(), 0)
                + " shaken: low and high); fewer in a vessel under ten pieces wide.");
        if (inputs.vessel().count().orElse(Double.POSITIVE_INFINITY) < close) {
            attempts.add("Have " + Print.number(Math.ceil(close), 0)
                    + " pieces at hand, or fill the bottom with a smaller vessel turned over.");
        }
    }
}
