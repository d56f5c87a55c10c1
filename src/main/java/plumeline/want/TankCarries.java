package plumeline.want;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.plan.Kit;
import plumeline.plan.Plan;
import plumeline.plan.TankPlace;
import plumeline.plan.WantLine;
import plumeline.quantity.Kind;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.TankFill;
import plumeline.water.PaneBending;
import plumeline.water.TankCheck;
import plumeline.water.TankLoad;
import plumeline.water.Water;

/// A tank's panes carry its water, and the table the tank. The best that is said is that no objection was found.
///
/// Margin: the safety factor over 3.8. No mark bears on it. Where the floor pane's own weight would use it up it is
/// tight; where a pane is no thin plate, unknown; a table that is too small or too weak fails whatever the margin.
///
/// @param line as written
/// @param found what the panes bear
/// @param table the table
/// @param assumed what was assumed, as a sentence
record TankCarries(WantLine line, TankCheck.Found found, Table table, String assumed) implements Want {
    private static final double TWO_PEOPLE_KILOGRAMS = 20;
    private static final double BUCKET_METRES3 = 0.010;
    private static final double LITRES = 1000;

    /// What is known of the table.
    ///
    /// @param carriesKilograms the load it may carry; endless where it isn't written
    /// @param widthMetres along x; endless where its size isn't written
    /// @param depthMetres along y, likewise
    record Table(double carriesKilograms, double widthMetres, double depthMetres) {
        static Table of(Plan plan) {
            Optional<Kit.Table> table = plan.kit().table();
            double carries = table.flatMap(kit -> kit.written().findQuantity("carries"))
                    .map(Table::kilograms)
                    .orElse(Double.POSITIVE_INFINITY);
            List<Quantity> size =
                    table.map(kit -> kit.written().listQuantities("size")).orElse(List.of());
            return size.size() < 2
                    ? new Table(carries, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY)
                    : new Table(carries, size.get(0).si(), size.get(1).si());
        }

        private static double kilograms(Quantity carries) {
            return carries.kind() == Kind.FORCE ? carries.si() / Water.GRAVITY_METRES_PER_SECOND2 : carries.si();
        }
    }

    /// Makes the want, or one that says what is missing.
    static Want of(WantLine line, Plan plan, Optional<TankPlace> place) {
        String name = line.subjects().getFirst().name();
        if (place.filter(tank -> tank.tank().name().equals(name)).isEmpty()) {
            return new NotComputed(line, name + " isn't the shot's tank.");
        }
        return switch (TankFill.of(place.get())) {
            case TankFill.NoDepth() ->
                new NotComputed(line, "Measure how deep the water in " + name + " is: write the tank's water.");
            case TankFill.TooHotOrCold() -> new NotComputed(line, "The water's temperature is past 0 to 40 degC.");
            case TankFill.TooDeep(Quantity depth, Quantity height) ->
                new NotComputed(
                        line,
                        depth.valueText() + " of water don't go into " + name + ", which is " + height.valueText()
                                + " high inside. Measure both.");
            case TankFill.Known(TankLoad load, List<String> assumed) ->
                judged(new TankCarries(line, TankCheck.of(load), Table.of(plan), Lacks.assumed(assumed)), name);
        };
    }

    private static Want judged(TankCarries want, String name) {
        return switch (want.found.validity()) {
            case GOOD, MEMBRANE_BEGINS -> want;
            case NO_THIN_PLATE ->
                new NotComputed(
                        want.line,
                        "A pane of " + name
                                + " is thicker than a tenth of its shorter side, or longer than 20 times it: no"
                                + " thin plate, so nothing is said of its stress. Ask the tank's maker.");
            case MEMBRANE ->
                new NotComputed(
                        want.line,
                        "A pane of " + name + " bows by more than its thickness: past what is computed. Take thicker"
                                + " glass, a rim all round, or less water.");
        };
    }

    @Override
    public String unit() {
        return "1";
    }

    @Override
    public double[] parts(Moments moments) {
        return new double[] {found.safetyFactor() - TankCheck.LEAST_FACTOR};
    }

    @Override
    public boolean restsOnMarks() {
        return false;
    }

    @Override
    public boolean isSafety() {
        return true;
    }

    @Override
    public Optional<String> findLack(Moments moments) {
        double kilograms = found.load().totalKilograms();
        double width =
                found.load().tank().lengthMetres() + 2 * found.load().tank().glassMetres();
        double depth =
                found.load().tank().widthMetres() + 2 * found.load().tank().glassMetres();
        if (kilograms > table.carriesKilograms) {
            return Optional.of("The table carries " + kilograms(table.carriesKilograms) + "; tank and water weigh "
                    + kilograms(kilograms) + ". Take a stronger table, or less water. " + cautions());
        }
        return width > table.widthMetres || depth > table.depthMetres
                ? Optional.of("The tank's outer base is larger than the table. " + cautions())
                : Optional.empty();
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        String name = line.subjects().getFirst().name();
        String factor = Print.number(Math.floor(found.safetyFactor() * 100) / 100, 2);
        String stress = Print.number(found.mostStressed().bending().stressPascals() / 1e6, 2);
        String panes = switch (found.mostStressed().place()) {
            case LONG_WALL -> "long walls bear ";
            case SHORT_WALL -> "short walls bear ";
            case FLOOR -> "floor bears ";
        };
        String stands = name + "'s " + panes + stress + " MPa: a safety factor of " + factor + "; 3.8 is asked for";
        return Optional.of(
                found.safetyFactor() >= TankCheck.LEAST_FACTOR
                        ? stands + ", and no objection was found."
                        : stands
                                + ". Less water, a rim all round, a level bed under all of the floor, or"
                                + " thicker glass.");
    }

    @Override
    public Optional<String> findTight(Moments moments) {
        double all = found.safetyFactorWithOwnWeight();
        return all < TankCheck.LEAST_FACTOR
                ? Optional.of("With the floor pane's own weight the factor is "
                        + Print.number(Math.floor(all * 100) / 100, 2) + ".")
                : Optional.empty();
    }

    @Override
    public Optional<String> findCaution(Moments moments) {
        return Optional.of(cautions());
    }

    private String cautions() {
        TankLoad load = found.load();
        List<String> all = new ArrayList<>();
        if (Double.isInfinite(table.carriesKilograms)) {
            all.add("Hold " + kilograms(load.totalKilograms())
                    + " against the table's own rating: write what it carries.");
        }
        if (found.validity() == PaneBending.Validity.MEMBRANE_BEGINS) {
            all.add("A pane bows by over half its thickness: it bends less than computed.");
        }
        all.add("Glass: no scratched, chipped, seamed or twisted pane, and nothing here speaks for the seams;"
                + " if one breaks, "
                + Print.number(load.volumeMetres3() * LITRES, 0) + " l run out at once.");
        all.add("Water near mains: residual-current protection tested that day, drip loops, low voltage within"
                + " reach of the"
                + " water, unplug before hands go in.");
        all.add("Lifting: two people from about " + kilograms(TWO_PEOPLE_KILOGRAMS) + " (empty: "
                + kilograms(load.emptyKilograms()) + "); "
                + (int) Math.ceil(load.volumeMetres3() / BUCKET_METRES3 - 1e-9)
                + " times a 10 l bucket; never move it with water in it.");
        all.add("Slippery floor: wipe at once, keep cables off it.");
        all.add("Local codes, the house and the tank's maker have the last word.");
        all.add(assumed);
        return String.join(" ", all).strip();
    }

    private static String kilograms(double kilograms) {
        return Print.number(kilograms, kilograms < 10 ? 1 : 0) + " kg";
    }
}
