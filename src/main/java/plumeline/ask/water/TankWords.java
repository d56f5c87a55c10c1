package plumeline.ask.water;

import java.util.ArrayList;
import java.util.List;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Verdict;
import plumeline.answer.Words;
import plumeline.quantity.Print;
import plumeline.water.GlassTank;
import plumeline.water.Pane;
import plumeline.water.PaneBending;
import plumeline.water.TankCheck;
import plumeline.water.TankLoad;
import plumeline.water.TankTimes;

/// What `tank` says beside its numbers; whatever it tells to try, it has tried.
final class TankWords {
    /// Thicknesses that panes are sold in, metres (common practice).
    private static final double[] SOLD_METRES = {0.004, 0.005, 0.006, 0.008, 0.010, 0.012, 0.015, 0.019, 0.025};

    private static final double TWO_PEOPLE_KILOGRAMS = 20;
    private static final TankTimes.Hose HOSE = new TankTimes.Hose(0.012, 2, 0.7);

    private final TankCheck.Found found;
    private final TankLoad load;
    private final Words words;
    private final List<String> because = new ArrayList<>();
    private final List<String> attempts = new ArrayList<>();

    TankWords(TankCheck.Found found, Words words) {
        this.found = found;
        this.load = found.load();
        this.words = words;
    }

    Notes notes() {
        switch (found.validity()) {
            case NO_THIN_PLATE ->
                because.add("A pane here is thicker than a tenth of its shorter side, or longer than 20 times it:"
                        + " no thin plate, so nothing is said of its stress.");
            case MEMBRANE -> {
                TankCheck.Finding bent = found.mostBent();
                because.add("By the theory of small bows the " + name(bent.place()) + " would bow farther than the"
                        + " glass is thick, where that theory has ended: stress, bow and factor are unknown."
                        + (found.safetyFactor() < TankCheck.LEAST_FACTOR
                                ? " It would leave less than the factor 3.8, and nothing here speaks for more:"
                                        + " don't fill it so."
                                : " Nothing here speaks for it."));
            }
            case GOOD, MEMBRANE_BEGINS -> {
                sayStress();
                sayBow();
                sayOwnWeight();
            }
        }
        sayTable();
        sayTimes();
        if (found.validity() != PaneBending.Validity.NO_THIN_PLATE && !passes(found)) {
            tryOthers();
        }
        return new Notes(
                because,
                attempts,
                cautions(),
                List.of(
                        "thin plates by Lévy's series (docs/derivations/panes.md), 70 GPa, Poisson 0.23,"
                                + " clear spans",
                        "19.2 MPa and the factor 3.8: aquarium trade (Stilwell, Aquarium World, February 2001)"));
    }

    private void sayStress() {
        List<String> all = new ArrayList<>();
        for (TankCheck.Finding each : found.panes()) {
            all.add(name(each.place()) + " " + megapascals(each));
        }
        TankCheck.Finding worst = found.mostStressed();
        because.add("Stress: " + String.join(", ", all) + " MPa; 5.05 is left of 19.2 by the factor 3.8. Worst "
                + where(worst) + " of the " + name(worst.place()) + ".");
    }

    private static String megapascals(TankCheck.Finding finding) {
        return Print.number(finding.bending().stressPascals() / 1e6, 2);
    }

    private static String name(TankCheck.Place place) {
        return switch (place) {
            case LONG_WALL -> "long walls";
            case SHORT_WALL -> "short walls";
            case FLOOR -> "floor";
        };
    }

    private String where(TankCheck.Finding finding) {
        Pane pane = finding.pane();
        PaneBending bending = finding.bending();
        boolean middle = Math.abs(bending.xMetres() - pane.widthMetres() / 2) < 0.02 * pane.widthMetres();
        if (finding.place() == TankCheck.Place.FLOOR) {
            return middle ? "in the middle" : "beside the middle";
        }
        if (!middle) {
            return "by twist near the lower corners";
        }
        return bending.yMetres() > 0.98 * pane.heightMetres()
                ? "in the middle of the upper edge"
                : "in the middle, " + words.length(bending.yMetres()) + " up,";
    }

    private void sayBow() {
        TankCheck.Finding bent = found.mostBent();
        double bow = bent.bending().deflectionMetres();
        String much = "The " + name(bent.place()) + " bow" + (bent.place() == TankCheck.Place.FLOOR ? "s" : "")
                + " " + words.length(bow) + ", "
                + Words.share(bow / load.tank().glassMetres()) + " of the glass";
        because.add(much
                + switch (found.validity()) {
                    case GOOD -> ".";
                    case MEMBRANE_BEGINS ->
                        ": over half of it a pane begins to carry as a membrane. low and high go from edges that"
                                + " can't draw in to the linear theory, whose figure is the answer.";
                    case MEMBRANE, NO_THIN_PLATE -> throw new IllegalStateException("has no bow to tell");
                });
    }

    private void sayOwnWeight() {
        if (load.tank().support() == GlassTank.Support.EDGES) {
            because.add("The floor pane's own weight adds " + Words.share(TankCheck.floorOwnShare(load))
                    + " to its stress, not counted above: with it the factor is "
                    + Print.number(found.safetyFactorWithOwnWeight(), 2)
                    + (TankInquiry.best(found) == Verdict.TIGHT && found.safetyFactor() >= TankCheck.LEAST_FACTOR
                            ? ", under 3.8: tight."
                            : "."));
        }
    }

    private void sayTable() {
        double perSquare = load.totalKilograms() / load.tank().footprintMetres2();
        because.add(TankInquiry.kilograms(load.totalKilograms()) + " stand on the table, "
                + TankInquiry.kilograms(perSquare)
                + " on a square metre: hold it against the table's own rating; floors"
                + " of homes are built for about 200, of offices 300, spread (EN 1991-1-1, from memory).");
    }

    private void sayTimes() {
        double fill = TankTimes.fillSeconds(load.volumeMetres3(), TankTimes.TAP_METRES3_PER_SECOND);
        double drain = TankTimes.drainSeconds(load, HOSE, TankTimes.TAP_WATER_METRES2_PER_SECOND);
        because.add(litres() + ": in about " + minutes(fill) + " at 10 l/min; out about " + minutes(drain)
                + " by 2 m of 12 mm hose that ends 0.7 m lower.");
        double period = TankTimes.wavePeriodSeconds(
                load.tank().lengthMetres(), load.depthMetres(), load.gravityMetresPerSecond2());
        TankTimes.Stillness still = TankTimes.stillness(load);
        because.add("Still: waves (period " + Print.seconds(period, 1) + ") are down to a hundredth in "
                + minutes(still.waveSeconds())
                + " at most; currents under 1 mm/s after " + minutes(still.eddySeconds()) + " (churned) to "
                + minutes(still.swirlSeconds())
                + " (a clean swirl), roughly: look with a drop of dye.");
    }

    private static String minutes(double seconds) {
        double minutes = seconds / 60;
        if (minutes < 1) {
            return "a minute";
        }
        return minutes < 100 ? Print.number(minutes, 0) + " min" : Print.number(minutes / 60, 0) + " h";
    }

    private String litres() {
        double litres = load.volumeMetres3() * 1e3;
        return Print.number(litres, litres < 10 ? 1 : 0) + " l";
    }

    private List<String> cautions() {
        double empty = load.emptyKilograms();
        int trips = (int) Math.ceil(load.volumeMetres3() * 100 - 1e-9);
        return List.of(
                "Glass: no scratched, chipped, seamed or twisted pane; nothing here speaks for them or for"
                        + " the seams."
                        + " If one breaks, " + litres() + " run out at once.",
                "Water near mains: residual-current protection tested that day, drip loops, low voltage"
                        + " within reach of the water, unplug before hands go in.",
                "Lifting: two people from about 20 kg (empty: " + TankInquiry.kilograms(empty)
                        + (empty >= TWO_PEOPLE_KILOGRAMS ? ", so two at least" : "") + "); " + trips
                        + (trips == 1 ? " trip" : " trips")
                        + " with a 10 l bucket; never move it with water in it.",
                "Slippery floor: wipe at once, lay cloths, keep cables off the floor.",
                "Local codes, the house and the tank's maker have the last word.");
    }

    private void tryOthers() {
        GlassTank tank = load.tank();
        boolean edges = tank.support() == GlassTank.Support.EDGES;
        boolean open = tank.rim() == GlassTank.Rim.NONE;
        GlassTank bedded = tank.withSupport(GlassTank.Support.FULL);
        if (edges) {
            attempt(load.withTank(bedded), "Bear the floor all over on a level bed, if the tank is made for it");
        }
        if (open) {
            attempt(load.withTank(tank.withRim(GlassTank.Rim.ALL_ROUND)), "Hold the upper edges by a rim all round");
        }
        if (edges && open && attempts.isEmpty()) {
            attempt(
                    load.withTank(bedded.withRim(GlassTank.Rim.ALL_ROUND)),
                    "Hold the upper edges by a rim all round and bear the floor all over");
        }
        // Stress goes with one over the thickness squared.
        double least = tank.glassMetres() * Math.sqrt(TankCheck.LEAST_FACTOR / found.safetyFactor());
        for (double metres : SOLD_METRES) {
            if (metres > Math.max(tank.glassMetres(), least * (1 - 1e-9))
                    && attempt(
                            load.withTank(tank.withGlass(metres)),
                            "Take glass of " + Print.number(metres * 1e3, 0) + " mm")) {
                break;
            }
        }
        tryLessWater();
    }

    /// The deepest water, on whole steps of a hundredth of what is asked, that nothing is objected to.
    private void tryLessWater() {
        int good = 0;
        int bad = 20;
        while (bad - good > 1) {
            int middle = (good + bad) / 2;
            if (passes(TankCheck.of(load.withDepth(depth(middle))))) {
                good = middle;
            } else {
                bad = middle;
            }
        }
        if (good > 0) {
            attempt(load.withDepth(depth(good)), "Fill in " + words.tape(depth(good)) + " of water");
        }
    }

    private double depth(int twentieths) {
        double step = words.stepMetres();
        return Math.max(step, Math.floor(load.depthMetres() * twentieths / 20 / step + 1e-6) * step);
    }

    private boolean attempt(TankLoad other, String what) {
        TankCheck.Found there = TankCheck.of(other);
        if (!passes(there)) {
            return false;
        }
        attempts.add(what + ": factor " + Print.number(Math.floor(there.safetyFactor() * 10) / 10, 1) + ".");
        return true;
    }

    private static boolean passes(TankCheck.Found there) {
        return there.safetyFactor() >= TankCheck.LEAST_FACTOR && TankInquiry.best(there) == Verdict.NO_OBJECTION_FOUND;
    }
}
