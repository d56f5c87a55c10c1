package plumeline.ask.light;

import java.util.ArrayList;
import java.util.List;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Words;
import plumeline.flicker.CutFlashes;
import plumeline.flicker.FlashLimits;
import plumeline.quantity.Print;

/// The sentences of `cut-flash`.
final class CutFlashWords {
    private final CutFlash.Found found;
    private final CutFlash.Inputs inputs;

    CutFlashWords(CutFlash.Found found) {
        this.found = found;
        inputs = found.inputs();
    }

    Notes notes() {
        return new Notes(
                because(),
                attempts(),
                List.of(
                        "Flashes can bring on seizures, in people who don't know it of themselves too. These limits are"
                                + " guidance and no permission: the flash test of the broadcaster or client on the"
                                + " finished film decides.",
                        "Warn cast, crew and whoever watches the cut before looks alternate on lamps or screens;"
                                + " who feels unwell looks away and covers one eye.",
                        "Red looks are worse than others: say red: yes where one is saturated. Cuts into and out of the"
                                + " sequence, and flashes within a look, count too and aren't in this."),
                List.of(
                        "WCAG 2.2, success criterion 2.3.1: three flashes in any one second; 0.10 of full, darker"
                                + " side below 0.80; a quarter of any 10 deg of the eye's field; saturated red",
                        "Recommendation ITU-R BT.1702: the same count, a quarter of the picture; five seconds from"
                                + " memory"));
    }

    private static String changes(double count) {
        return Print.number(count, 0) + (count == 1 ? " change" : " changes");
    }

    private List<String> because() {
        List<String> because = new ArrayList<>();
        because.add("The worst second has " + changes(2 * found.pairs()) + " of look, " + pairs(found.pairs())
                + "; three are the most" + (found.isJust() ? ", and no more is left." : "."));
        if (inputs.isRed()) {
            because.add("A saturated red flashes whatever its luminance: every change counts.");
        } else if (found.countsByLuminance()) {
            because.add("Of them " + pairs(found.flashes()) + " count"
                    + ": a change of 10 % of full white or more, its darker side below 80 %.");
        }
        if (found.isSmall()) {
            because.add("What changes is " + Words.share(inputs.area()) + " of the picture; up to "
                    + Words.share(inputs.mostArea()) + " doesn't count.");
        }
        if (inputs.area() < 1 && inputs.mostArea() == FlashLimits.AREA) {
            because.add("WCAG's quarter is of 10 deg of the eye's field: 341 by 256 of a full screen of 1024 by 768, of"
                    + " which a quarter is 3 % of it. Give seen to count by that.");
        }
        if (found.isLong()) {
            because.add("Changes follow each other for "
                    + Print.seconds(found.sequenceSeconds().orElse(0), 1)
                    + ": more than 5 s may be a risk within all other limits.");
        } else if (inputs.ends() == CutFlash.Ends.UNTOLD) {
            because.add("How long it goes on isn't told: more than 5 s may be a risk within all other limits.");
        }
        return because;
    }

    private static String pairs(double count) {
        return Print.number(count, 1) + (count == 1 ? " pair" : " pairs");
    }

    private List<String> attempts() {
        List<String> attempts = new ArrayList<>();
        boolean fails = found.margin() < 0;
        if (fails || found.isJust()) {
            double least = (double) CutFlashes.leastFrames(inputs.rate());
            attempts.add(Print.number(least + 1, 0) + " frames a look (" + Print.number(least, 0)
                    + " are the least at this rate, and just at the limit or under it).");
        }
        if (fails && !inputs.isRed()) {
            attempts.add("Looks that differ by less than 10 % of full white: then no change counts.");
        }
        if (fails && inputs.isRed()) {
            attempts.add("Neither look a saturated red, and both alike to less than 10 % of full white.");
        }
        if (found.isLong()) {
            attempts.add("A rest of a second or more on one look before 5 s have passed.");
        }
        return attempts;
    }
}
