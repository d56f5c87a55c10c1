package plumeline.ask.motion;

import java.util.ArrayList;
import java.util.List;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Words;
import plumeline.motion.LabelWindow;
import plumeline.quantity.Print;

/// The sentences of `turntable`.
final class TurntableWords {
    private static final double TURN = 2 * Math.PI;
    private static final double NEAR = 1e-6;
    private static final double SHORTER_SECONDS = 1e-3;

    private final Turning.Inputs inputs;
    private final Words words;

    TurntableWords(Turning.Inputs inputs, Words words) {
        this.inputs = inputs;
        this.words = words;
    }

    Notes notes() {
        List<String> because = new ArrayList<>();
        because.add(turns());
        because.add(reads());
        because.add(seenWhole());
        because.add(blurs());
        return new Notes(
                because,
                attempts(),
                Told.CAUTIONS,
                List.of(
                        "Degrees a frame: 6 times rpm over fps; scale f/(distance - f), thin lens",
                        "A logo reads to 30 deg from the lens: common practice"));
    }

    private String turns() {
        double turns = inputs.sweep() / TURN;
        boolean isWhole = turns > 0.5 && Math.abs(turns - Math.rint(turns)) < NEAR;
        return Print.number(Math.toDegrees(inputs.turn().radiansPerSecond()), 2) + " deg/s, "
                + Print.number(inputs.turn().radiansPerSecond() * 60 / TURN, 2) + " rpm, for "
                + Print.seconds(inputs.seconds(), 2) + " of real time; a frame is "
                + fine(inputs.sweep() / inputs.frames()) + "."
                + (isWhole
                        ? " Whole turns: the frame after the last would be the first again, so they loop as they are."
                        : "");
    }

    private String reads() {
        List<LabelWindow> windows = inputs.windows();
        String from = "The label's middle goes from " + signed(inputs.label().startRadians()) + " to "
                + signed(inputs.endRadians()) + ", + clockwise seen from above";
        if (windows.isEmpty()) {
            return from + ", and is never within " + fine(inputs.label().withinRadians()) + " of the lens.";
        }
        LabelWindow first = windows.getFirst();
        return from + "; it reads from " + Print.seconds(first.fromSeconds(), 2) + " to "
                + Print.seconds(first.toSeconds(), 2) + " (frames "
                + frame(Math.ceil(first.fromSeconds() * inputs.rate() - NEAR))
                + " to " + frame(Math.min(inputs.frames() - 1, Math.floor(first.toSeconds() * inputs.rate() + NEAR)))
                + ")"
                + (windows.size() > 1 ? ", and " + (windows.size() - 1) + " more times" : "") + ".";
    }

    private static String frame(double fromNothing) {
        return Print.number(fromNothing + 1, 0);
    }

    private String seenWhole() {
        double limit = inputs.front().map(Turning.Front::seenRadians).orElse(Math.PI / 2);
        double whole = limit - inputs.label().arcRadians() / 2;
        return whole > 0
                ? "Its whole arc is in sight while its middle is within " + Print.number(Math.toDegrees(whole), 0)
                        + " deg of the lens."
                : "Its arc is too long to be in sight whole.";
    }

    private String blurs() {
        return inputs.front()
                .map(front -> "Its front goes "
                        + Words.fineMillimetres(inputs.turn().radiansPerSecond()
                                * front.diameterMetres()
                                / 2
                                * front.view().exposureSeconds())
                        + " in an exposure of " + Print.number(front.view().exposureSeconds() * 1e3, 2)
                        + " ms; 1 px is "
                        + Words.fineMillimetres(1 / front.view().pixelsPerMetre())
                        + " there, distance taken to the front, at "
                        + words.length(front.view().distanceMetres())
                        + ".")
                .orElse("Blur isn't known without view and diameter.");
    }

    private List<String> attempts() {
        List<String> attempts = new ArrayList<>();
        double now = Turning.Inputs.readable(inputs.windows());
        double centred = Turning.Inputs.readable(inputs.windows(inputs.centredStart()));
        if (centred > now + SHORTER_SECONDS) {
            attempts.add("Start with the label at " + signed(inputs.centredStart()) + ": it reads for "
                    + Print.seconds(centred, 2) + ".");
        }
        double window = 2 * inputs.label().withinRadians();
        if (window < inputs.sweep() - NEAR && inputs.sweep() < TURN) {
            attempts.add("At " + Print.number(Math.floor(window / inputs.seconds() * 60 / TURN * 10 + NEAR) / 10, 1)
                    + " rpm and centred it would read throughout.");
        }
        return attempts;
    }

    private static String fine(double radians) {
        return Print.number(Math.toDegrees(radians), 3) + " deg";
    }

    private static String signed(double radians) {
        String text = Print.number(Math.toDegrees(radians), 1) + " deg";
        return radians > 0 && !text.startsWith("0 ") ? "+" + text : text;
    }
}
