package plumeline.ask.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Words;
import plumeline.ink.Arrival;
import plumeline.ink.Descent;
import plumeline.ink.Estimate;
import plumeline.ink.FrontFit;
import plumeline.ink.Ink;
import plumeline.ink.Prediction;
import plumeline.ink.Release;
import plumeline.quantity.Print;
import plumeline.roots.Roots;

/// What `ink` says beside its numbers; whatever it tells to try, it has tried.
final class InkWords {
    /// What is left between ink and front glass (common practice).
    private static final double GLASS_METRES = 0.01;

    private final InkTake.Found found;
    private final InkTake.Inputs inputs;
    private final Descent descent;
    private final Release release;
    private final Words words;
    private final List<String> because = new ArrayList<>();
    private final List<String> cautions = new ArrayList<>();

    InkWords(InkTake.Found found, Words words) {
        this.found = found;
        this.inputs = found.inputs();
        this.descent = inputs.descent();
        this.release = descent.release();
        this.words = words;
    }

    Notes notes() {
        sayRegime();
        sayInterval();
        sayTouch();
        sayAhead();
        sayGlass();
        sayEarly();
        sayCautions();
        return new Notes(
                because,
                new InkTries(found, words).list(),
                cautions,
                List.of(
                        "Puff: Morton, Taylor and Turner 1956 in closed form (docs/derivations/ink.md); stream's front:"
                                + " Bhamidipati and Woods 2017",
                        "Coefficients' ranges, laminar thread and fountain from memory of published work"));
    }

    private void sayRegime() {
        String flows = release.seconds() == 0
                ? "It is let go at once"
                : "It flows for " + InkInquiry.seconds(release.seconds()) + " at "
                        + words.length(release.speedMetresPerSecond()) + "/s";
        because.add(
                switch (found.regime()) {
                    case PUFF ->
                        flows + (found.top() instanceof Arrival.Never ? "" : ", no more than half the time of its way")
                                + ": a puff, "
                                + (release.rowMetres() > 0 ? "a roll as long as the slot, " : "")
                                + "radius 1/4 of its way.";
                    case STREAM -> flows + ", more than half the time of its way: a stream" + pushed() + ".";
                    case LAMINAR ->
                        flows + ", a Reynolds number of " + Print.number(release.reynolds(), 0)
                                + ": a smooth thread that a touch sets coiling; its law is good to a factor of two.";
                });
        found.findAside()
                .filter(_ -> descent.tiltRadians() > 0)
                .ifPresent(aside -> because.add("It points "
                        + Print.number(Math.toDegrees(descent.tiltRadians()), 0)
                        + " deg to the thing's side: at the thing's top it"
                        + " is " + words.length(aside.value())
                        + " nearer to the thing than the nozzle; nozzle_ahead counts that."));
        if (descent.heightMetres() > 0) {
            because.add("From above the surface a quarter to all of its push is left in the water (half is counted),"
                    + " and it takes bubbles along.");
        }
        Optional<Prediction.Unknown> unknown = findUnknown();
        if (unknown.isPresent()) {
            double given = unknown.get().given();
            double bound = unknown.get().bound();
            because.add(
                    switch (unknown.get().limit()) {
                        case EXPONENT ->
                            "The readings' depths grow as time to the power " + Print.number(given, 2)
                                    + "; a front's as 0.5 to 0.75. They are of different takes, or misread: read one"
                                    + " front again.";
                        case READING ->
                            "The reading shows the front at " + words.length(given) + ", and by the laws such light ink"
                                    + " turns at " + words.length(bound)
                                    + ": one of them is wrong. Weigh the ink again, or read a second depth.";
                        case HEIGHT ->
                            "From " + words.length(given) + " up the ink breaks into drops; laws are known to "
                                    + words.length(bound) + ".";
                        case ROW_SECONDS ->
                            "From a slot it flows on behind its front; laws are known of slots squeezed out within "
                                    + InkInquiry.seconds(bound) + ".";
                        case PUFF_REYNOLDS ->
                            "So little ink, or ink so near to the water's density, falls as a smooth ring, Reynolds"
                                    + " number " + Print.number(given, 0)
                                    + "; laws are known from " + Print.number(bound, 0) + " on.";
                    });
        }
        if (release.reducedGravityMetresPerSecond2() < 0) {
            sayFountain();
        }
    }

    private Optional<Prediction.Unknown> findUnknown() {
        if (found.top() instanceof Arrival.Unknown(Prediction.Unknown reason)) {
            return Optional.of(reason);
        }
        return found.law() instanceof Prediction.Unknown law ? Optional.of(law) : Optional.empty();
    }

    private void sayFountain() {
        if (release.speedMetresPerSecond() == 0) {
            because.add("The ink is lighter than the water and has no push: it rises from the nozzle's tip.");
            return;
        }
        if (FrontFit.isPossible(inputs.readings())) {
            return;
        }
        Estimate deepest = Ink.deepestMetres(descent, found.regime());
        because.add("The ink is lighter than the water: its push carries it down to about "
                + words.length(deepest.value()) + " (four takes in five: " + words.length(deepest.low()) + " to "
                + words.length(deepest.high()) + "), then it rises as a fountain.");
        double share = found.comingShare();
        if (share > 1 - Ink.SURE_SHARE && share < Ink.SURE_SHARE) {
            long tenths = Math.round(share * 10);
            because.add("About " + tenths + (tenths == 1 ? " take in 10 comes" : " takes in 10 come")
                    + " to the thing's top at all.");
        }
    }

    private String pushed() {
        double jet = release.jetMetres();
        if (release.reducedGravityMetresPerSecond2() < 0) {
            return ", driven by its push against its weight";
        }
        return jet > inputs.topMetres() - descent.startMetres()
                ? ", driven by its push all the way"
                : ", driven by its push for about " + words.length(jet) + ", then by its weight";
    }

    private void sayInterval() {
        if (found.top() instanceof Arrival.Unknown) {
            return;
        }
        if (FrontFit.isPossible(inputs.readings())) {
            FrontFit fit = FrontFit.of(inputs.readings());
            because.add("Times follow your " + inputs.readings().size() + " readings, z = "
                    + Print.number(fit.factor() * 1e3, 0) + " mm · (t/s)^" + Print.number(fit.exponent(), 2)
                    + " (0.5 is a puff's, 0.75 a stream's); radius and dilution are the law's.");
        } else if (inputs.readings().size() == 1 && found.law() instanceof Prediction.Reached) {
            because.add("Your reading makes every time " + Print.number(found.scale(), 2)
                    + " times the law's; a second one, deeper, gives the curve.");
        }
        if (found.top() instanceof Arrival.At && !FrontFit.isPossible(inputs.readings())) {
            because.add("The laws' own interval bounds 80 %: published ranges of the coefficients, and what one take is"
                    + " off the next; one take's time is never surer than about ± 20 %.");
        }
    }

    private void sayTouch() {
        switch (found.touch()) {
            case InkTake.Touch.At at ->
                because.add("With the nozzle nozzle_ahead before the thing's face the front touches it at "
                        + InkInquiry.seconds(found.findTouchSeconds().orElse(0)) + ", " + words.length(at.depthMetres())
                        + " down; farther ahead the thing stays clear until then.");
            case InkTake.Touch.TooEarly() ->
                because.add("At the wanted time the front is still above the thing's top, so no gap makes it touch.");
            case InkTake.Touch.TooLate() -> because.add("At the wanted time the ink runs along the floor already.");
            case InkTake.Touch.Unknown() -> {}
        }
    }

    private void sayAhead() {
        if (inputs.aheadMetres().isEmpty() || !(found.law() instanceof Prediction.Reached)) {
            return;
        }
        double ahead = inputs.aheadMetres().getAsDouble();
        String at = "At " + words.length(ahead) + " ahead the ink ";
        if (ahead <= reach(inputs.topMetres())) {
            because.add(at + "is as wide as the gap before it is down at the thing's top: it falls onto it.");
            return;
        }
        double floor = reach(inputs.floorMetres());
        if (floor < ahead) {
            because.add(at + "passes without touching the thing, by the usual width.");
            return;
        }
        double touches = Roots.end(depth -> reach(depth) < ahead, inputs.topMetres(), inputs.floorMetres());
        because.add(at + "touches it " + words.length(touches) + " down, if it is so tall.");
    }

    /// How far it comes toward the thing at a depth.
    private double reach(double depth) {
        return descent.radiusMetres(depth) + descent.asideMetres(depth);
    }

    private void sayGlass() {
        if (found.law() instanceof Prediction.Reached && found.floor() instanceof Arrival.At) {
            double radius = descent.radiusMetres(inputs.floorMetres());
            because.add("At the floor it is " + words.length(radius) + " to each side: keep the front glass "
                    + words.length(radius + GLASS_METRES) + " or more before the nozzle.");
        }
    }

    private void sayEarly() {
        if (inputs.wantedSeconds().isPresent()
                && found.top() instanceof Arrival.At(Estimate seconds)
                && seconds.value() < inputs.wantedSeconds().getAsDouble() * (1 - InkTries.NEAR_SHARE)) {
            because.add("The front is at the thing's top before the wanted time, at "
                    + InkInquiry.seconds(seconds.value()) + ".");
        }
    }

    private void sayCautions() {
        cautions.add("Glass and water: ask tank first; no mains plug, lead or lamp where water can reach it.");
        cautions.add("Ink and water on the floor are slippery, and ink stains: mat down, wipe at once, gloves.");
        if (descent.heightMetres() > 0) {
            cautions.add("Bubbles that it takes along cloud the picture; a tip in the water makes none.");
        }
    }
}
