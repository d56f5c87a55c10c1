package plumeline.wet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.plan.Kit;
import plumeline.plan.Plan;
import plumeline.plan.TankPlace;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.TankFill;
import plumeline.water.TankCheck;
import plumeline.water.TankLoad;
import plumeline.water.Water;

/// What a tank's panes bear and its table carries: what `tank_carries` judges, for papers too.
public sealed interface CarriedTank {
    /// It is computed.
    ///
    /// @param name the tank's name
    /// @param found what the panes bear
    /// @param table the table
    /// @param assumed what was taken for what isn't written, each in a few words
    record Computed(String name, TankCheck.Found found, Table table, List<String> assumed) implements CarriedTank {
        /// Copies the list.
        public Computed {
            assumed = List.copyOf(assumed);
        }

        /// Gives the factor between strength and largest stress.
        ///
        /// @return the figure, rounded down to a hundredth
        public String factor() {
            return factor(found.safetyFactor());
        }

        private static String factor(double factor) {
            return Print.number(Math.floor(factor * 100) / 100, 2);
        }

        /// Gives which panes are pressed most, and how much.
        ///
        /// @return such as `long walls bear 0.93 MPa`
        public String pressed() {
            TankCheck.Finding most = found.mostStressed();
            return panes(most.place()) + (most.place() == TankCheck.Place.FLOOR ? " bears " : " bear ")
                    + Print.number(most.bending().stressPascals() / 1e6, 2) + " MPa";
        }

        /// Names panes.
        ///
        /// @param place which
        /// @return their name
        public static String panes(TankCheck.Place place) {
            return switch (place) {
                case LONG_WALL -> "long walls";
                case SHORT_WALL -> "short walls";
                case FLOOR -> "floor";
            };
        }

        /// Finds what of the table doesn't do, whatever the panes bear.
        ///
        /// @return a sentence and what to do; empty where nothing is known against it
        public Optional<String> findLack() {
            return table.findLack(found.load());
        }

        /// Finds why it may fail all the same.
        ///
        /// @return a sentence; empty where the floor pane's own weight leaves enough
        public Optional<String> findTight() {
            double all = found.safetyFactorWithOwnWeight();
            return all < TankCheck.LEAST_FACTOR
                    ? Optional.of("With the floor pane's own weight the factor is " + factor(all) + ".")
                    : Optional.empty();
        }

        /// Finds what the bow says against the figures.
        ///
        /// @return a sentence; empty where the panes bend as computed
        public Optional<String> findMembrane() {
            return switch (found.validity()) {
                case MEMBRANE_BEGINS ->
                    Optional.of("A pane bows by over half its thickness: it bends less than computed.");
                case MEMBRANE ->
                    Optional.of("A pane bows by more than its thickness: the figures are rough, the finding stands.");
                case GOOD, NO_THIN_PLATE -> Optional.empty();
            };
        }

        /// Tells whether its panes bear the water as computed.
        ///
        /// @return false where the safety factor is under 3.8
        public boolean isStrong() {
            return found.safetyFactor() >= TankCheck.LEAST_FACTOR;
        }

        /// Says what would mend panes that don't bear it.
        ///
        /// @return a sentence
        public static String remedy() {
            return "Less water, a rim all round, a level bed under all of the floor, or thicker glass.";
        }
    }

    /// Tank and water are known, but its panes aren't computed.
    ///
    /// @param load tank and water
    /// @param table the table
    /// @param reason why, and what to do
    record Unjudged(TankLoad load, Table table, String reason) implements CarriedTank {}

    /// Something is missing without which nothing is known.
    ///
    /// @param reason what to measure
    record Unread(String reason) implements CarriedTank {}

    /// Says what is done with the tank where it stands.
    ///
    /// @return a sentence; it forbids filling wherever something is known against it, or nothing for it
    default String filling() {
        return switch (this) {
            case Computed computed ->
                isToBeFilled()
                        ? computed.findTight().isPresent()
                                ? "Level it; see its card before it is filled."
                                : "Level it, fill it where it stands."
                        : "DON'T FILL IT: "
                                + (computed.isStrong() ? "see table" : "its panes don't bear the water, see panes")
                                + " on its card.";
            case Unjudged _ -> "DON'T FILL IT before its maker says that its panes bear so much water: see its card.";
            case Unread _ -> "Level it; don't fill it before its card has a figure for its panes.";
        };
    }

    /// Tells whether nothing is known against filling it, and something for it.
    ///
    /// @return true where it is computed and nothing fails
    default boolean isToBeFilled() {
        return this instanceof Computed computed
                && computed.isStrong()
                && computed.findLack().isEmpty();
    }

    /// What is known of the table.
    ///
    /// @param carriesKilograms the load it may carry; endless where it isn't written
    /// @param widthMetres along x; endless where its size isn't written
    /// @param depthMetres along y, likewise
    record Table(double carriesKilograms, double widthMetres, double depthMetres) {
        private static Table of(Plan plan) {
            Optional<Kit.Table> table = plan.kit().table();
            double carries = table.flatMap(kit -> kit.written().findQuantity("carries"))
                    .map(Table::rating)
                    .orElse(Double.POSITIVE_INFINITY);
            List<Quantity> size =
                    table.map(kit -> kit.written().listQuantities("size")).orElse(List.of());
            return size.size() < 2
                    ? new Table(carries, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY)
                    : new Table(carries, size.get(0).si(), size.get(1).si());
        }

        private static double rating(Quantity carries) {
            return carries.kind() == Kind.FORCE ? carries.si() / Water.GRAVITY_METRES_PER_SECOND2 : carries.si();
        }

        /// Finds what of it doesn't do for a tank with its water.
        ///
        /// @param load tank and water
        /// @return a sentence and what to do; empty where nothing is known against it
        public Optional<String> findLack(TankLoad load) {
            double kilograms = load.totalKilograms();
            double pane = load.tank().glassMetres();
            double width = load.tank().lengthMetres() + 2 * pane;
            double depth = load.tank().widthMetres() + 2 * pane;
            if (kilograms > carriesKilograms) {
                return Optional.of(
                        "The table carries " + CarriedTank.kilograms(carriesKilograms) + "; tank and water weigh "
                                + CarriedTank.kilograms(kilograms) + ". Take a stronger table, or less water.");
            }
            return width > widthMetres || depth > depthMetres
                    ? Optional.of("The tank's outer base is larger than the table.")
                    : Optional.empty();
        }

        /// Tells whether its rating is written.
        ///
        /// @return true where it is
        public boolean isRated() {
            return Double.isFinite(carriesKilograms);
        }
    }

    /// Judges a shot's tank.
    ///
    /// @param plan the plan
    /// @param place the tank as placed
    /// @return what it bears, or what is missing
    static CarriedTank of(Plan plan, TankPlace place) {
        String name = place.tank().name();
        return switch (TankFill.of(place)) {
            case TankFill.NoDepth() ->
                new Unread("Measure how deep the water in " + name + " is: write the tank's water.");
            case TankFill.TooHotOrCold() -> new Unread(Lacks.water(place));
            case TankFill.TooDeep(Quantity depth, Quantity height) ->
                new Unread(depth.valueText() + " of water don't go into " + name + ", which is " + height.valueText()
                        + " high inside. Measure both.");
            case TankFill.Known(TankLoad load, List<String> assumed) -> judged(name, load, Table.of(plan), assumed);
        };
    }

    private static CarriedTank judged(String name, TankLoad load, Table table, List<String> assumed) {
        TankCheck.Found found = TankCheck.of(load);
        Computed computed = new Computed(name, found, table, assumed);
        return switch (found.validity()) {
            case GOOD, MEMBRANE_BEGINS -> computed;
            case NO_THIN_PLATE ->
                new Unjudged(
                        load,
                        table,
                        "A pane of " + name
                                + " is thicker than a tenth of its shorter side, or longer than 20 times it: no"
                                + " thin plate, so nothing is said of its stress. Ask the tank's maker.");
            case MEMBRANE ->
                computed.isStrong()
                        ? new Unjudged(
                                load,
                                table,
                                "A pane of " + name + " bows by more than its thickness: past what is computed. Don't"
                                        + " fill it so: take thicker glass, a rim all round, or less water.")
                        : computed;
        };
    }

    /// Lists the usual cautions on a glass tank, with its figures.
    ///
    /// **Source:** common practice.
    ///
    /// @param load tank and water
    /// @return sentences: glass, mains, lifting, floor, whose word counts
    static List<String> listCautions(TankLoad load) {
        String litres = Print.number(load.volumeMetres3() * 1000, 0);
        return cautions(
                "; if one breaks, " + litres + " l run out at once",
                " (empty: " + kilograms(load.emptyKilograms()) + "); " + buckets(load) + " times a 10 l bucket");
    }

    /// Lists the usual cautions on a glass tank of which no figure is known.
    ///
    /// @return the sentences of [#listCautions(TankLoad)] without figures
    static List<String> listCautions() {
        return cautions("; if one breaks, all the water runs out at once", "; fill it with 10 l buckets or a hose");
    }

    private static List<String> cautions(String breaks, String carried) {
        List<String> all = new ArrayList<>();
        all.add("Glass: no scratched, chipped, seamed or twisted pane, and nothing here speaks for the seams" + breaks
                + ".");
        all.add("Water near mains: residual-current protection tested that day, drip loops, low voltage within"
                + " reach of the water, unplug before hands go in.");
        all.add("Lifting: two people from about 20 kg" + carried + "; never move it with water in it.");
        all.add("Slippery floor: wipe at once, keep cables off it.");
        all.add("Local codes, the house and the tank's maker have the last word.");
        return all;
    }

    /// Counts the ways to the tap.
    ///
    /// @param load tank and water
    /// @return how many buckets of 10 l
    static int buckets(TankLoad load) {
        return (int) Math.ceil(load.volumeMetres3() * 100 - 1e-9);
    }

    /// Prints a large mass.
    ///
    /// @param kilograms the mass
    /// @return to the kilogram, below 10 to a tenth
    static String kilograms(double kilograms) {
        return Print.number(kilograms, kilograms < 10 ? 1 : 0) + " kg";
    }
}
