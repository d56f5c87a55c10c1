package plumeline.ask.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Words;
import plumeline.colour.Rgb;
import plumeline.colour.White;
import plumeline.quantity.Print;

/// What `white-balance` says beside its numbers.
final class BalanceWords {
    /// What of a shift nobody sees, 1/MK and Duv (common practice).
    private static final double UNSEEN_MIREDS = 5;

    private static final double UNSEEN_DUV = 0.002;

    /// Less than this nobody sets, stops.
    private static final double UNSET_STOPS = 1.0 / 6;

    /// Rounding, no more, in thirds of a stop.
    private static final double NEXT = 1e-6;

    private final Balancing.Found found;
    private final List<String> because = new ArrayList<>();
    private final List<String> attempts = new ArrayList<>();
    private final List<String> cautions = new ArrayList<>();

    BalanceWords(Balancing.Found found) {
        this.found = found;
    }

    Notes notes() {
        sayWhite();
        sayChannels();
        sayEmpty();
        cautions.add(
                "A sensor's own channels overlap more than any picture's and fill before the balance is put on: these"
                        + " stops are of the picture. Shoot a white card under the light and look at each channel.");
        return new Notes(
                because,
                attempts,
                cautions,
                List.of(
                        "channels by the primaries' matrix (SMPTE RP 177), balanced by one gain each (von Kries);"
                                + " Duv and CIELAB by CIE 15:2004; CIEDE2000",
                        "that a meter reads luminance, and what isn't seen: common practice"));
    }

    private void sayWhite() {
        if (found.light().isEmpty()) {
            because.add("The light is no white: no balance makes it one, and none should. Balance for the key that is"
                    + " white, and let it stand.");
        } else {
            White white = found.light().get();
            because.add("For a grey that stays grey set " + Print.number(white.kelvin(), 0) + " K and a tint of "
                    + Print.number(white.duv(), 4) + " Duv (" + side(white.duv()) + ").");
        }
        if (found.areWhites()) {
            double mireds = found.miredShift();
            double duv = found.duvChange();
            because.add("With the balance as set the light looks "
                    + (Math.abs(mireds) < UNSEEN_MIREDS ? "as warm" : mireds > 0 ? "warmer" : "cooler")
                    + (Math.abs(duv) < UNSEEN_DUV ? "" : duv > 0 ? " and greener" : " and pinker") + " by "
                    + Print.number(Math.abs(mireds), 0) + " mireds; x, y, a, b and difference are a grey"
                    + " surface's of " + Words.share(found.inputs().grey()) + ", on a screen.");
        }
    }

    private static String side(double duv) {
        return Math.abs(duv) < UNSEEN_DUV ? "as good as none" : duv > 0 ? "greenish light" : "pinkish light";
    }

    private void sayChannels() {
        Rgb channels = found.channels();
        double most = channels.most();
        String fullest = most == channels.red() ? "Red" : most == channels.green() ? "Green" : "Blue";
        double stops = found.fullestStops();
        because.add(
                stops < UNSET_STOPS
                        ? "No channel stands higher than a reading of luminance says: expose by the meter."
                        : fullest + " stands " + Print.stops(stops) + " above what a reading of luminance says, and"
                                + " fills first: expose for " + fullest.toLowerCase(Locale.ROOT) + ".");
        double down = found.stopDown();
        if (down >= UNSET_STOPS) {
            attempts.add("Stop down by " + Print.stops(Math.ceil(3 * down - NEXT) / 3) + " from the reading"
                    + (found.inputs().headroomStops().isPresent()
                            ? ": no channel is then more than full."
                            : ": no channel then stands higher than the reading says."));
        }
    }

    private void sayEmpty() {
        List<String> empty = new ArrayList<>();
        if (found.channels().red() <= 0) {
            empty.add("red");
        }
        if (found.channels().green() <= 0) {
            empty.add("green");
        }
        if (found.channels().blue() <= 0) {
            empty.add("blue");
        }
        if (!empty.isEmpty()) {
            because.add("Below zero: " + String.join(" and ", empty) + ". The primaries don't reach the light's colour;"
                    + " cut off at 0 it comes out of another hue and paler.");
        }
    }
}
