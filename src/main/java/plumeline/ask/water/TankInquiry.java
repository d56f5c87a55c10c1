package plumeline.ask.water;

import java.util.ArrayList;
import java.util.List;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Draft;
import plumeline.answer.Draft.Criterion;
import plumeline.answer.Given;
import plumeline.answer.Inquiry;
import plumeline.answer.Item;
import plumeline.answer.Value;
import plumeline.answer.Verdict;
import plumeline.answer.Words;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;
import plumeline.water.GlassTank;
import plumeline.water.PaneBending;
import plumeline.water.TankCheck;
import plumeline.water.TankLoad;
import plumeline.water.Water;

/// The question `tank` in text. Typed: [plumeline.water.TankCheck].
final class TankInquiry implements Inquiry<TankInquiry.Asked> {
    private static final double GRAVITY = Water.GRAVITY_METRES_PER_SECOND2;

    private static final String EXAMPLE = """
        # tank: can this tank and table carry it. Panes of annealed float glass, one thickness all round.
        inside: {length: 600 mm, width: 400 mm, water: 400 mm}   # water: its depth
        glass: 10 mm
        walls_height: 420 mm       # over the inside floor; default the water's depth
        rim: no                    # yes: the upper edges are held all round; default no
        floor_support: edges       # or full: a level bed under all of it; default edges
        # empty_mass: 25 kg        # default: the panes' own
        # water: {sea_salt: 3.5 %} # or temperature, density, as in float; default fresh at 20 degC
        flawed: no                 # yes: a pane is scratched, chipped or pieced together; default no
        """;

    /// What is asked.
    ///
    /// @param load tank and water
    /// @param flawed whether a pane is scratched, chipped or pieced together
    record Asked(TankLoad load, boolean flawed) {}

    @Override
    public String name() {
        return "tank";
    }

    @Override
    public String asks() {
        return "whether this tank and its table can carry the water";
    }

    @Override
    public String example() {
        return EXAMPLE;
    }

    @Override
    public Shape shape() {
        Shape side = amount(Kind.LENGTH, "10 mm", "10 m");
        Shape inside = Shape.Keys.of(
                Key.required("length", "inside length", side),
                Key.required("width", "inside width", side),
                Key.required("water", "the water's depth", side));
        return Shape.Keys.of(
                Key.required("inside", "the tank's inside", inside),
                Key.required("glass", "thickness of its panes", amount(Kind.LENGTH, "1 mm", "100 mm")),
                Key.optional("walls_height", "height of the walls over the inside floor", side),
                Key.optional("rim", "whether the upper edges are held all round", new Shape.YesNo()),
                Key.optional("floor_support", "what bears the floor", new Shape.Choice(List.of("full", "edges"))),
                Key.optional("empty_mass", "the tank's own mass", amount(Kind.MASS, "0 kg", "10000 kg")),
                Key.optional("water", "what is in it", FloatLiquid.water()).hint("{temperature: 20 degC}", ""),
                Key.optional("flawed", "whether a pane is scratched, chipped or pieced together", new Shape.YesNo()));
    }

    private static Shape amount(Kind kind, String low, String high) {
        return new Shape.Amount(kind, Range.between(low, high), Shape.Mark.FIXED);
    }

    @Override
    public Asked read(Given given) {
        Given inside = given.map("inside");
        double depth = inside.si("water");
        double walls = given.findSi("walls_height").orElse(depth);
        if (!given.has("walls_height")) {
            given.assume("walls_height", Print.number(depth * 1e3, 4) + " mm", "as high as the water is deep");
        } else if (walls < depth * (1 - 1e-9)) {
            given.refuse(
                    "walls_height",
                    "P-ASK-20",
                    Words.MILLIMETRES.length(walls),
                    "at least the water's depth, " + Words.MILLIMETRES.length(depth),
                    "Measure the walls from the inside floor, or fill in less water.");
            walls = depth;
        }
        boolean rim = given.text("rim", "no", "the worse case: nothing holds the upper edges")
                .equals("yes");
        boolean full = given.text("floor_support", "edges", "the worse case: nothing under the floor's middle")
                .equals("full");
        double density = FloatLiquid.readWater(given);
        GlassTank tank = new GlassTank(
                inside.si("length"),
                inside.si("width"),
                Math.max(walls, depth),
                given.si("glass"),
                rim ? GlassTank.Rim.ALL_ROUND : GlassTank.Rim.NONE,
                full ? GlassTank.Support.FULL : GlassTank.Support.EDGES);
        double empty = given.findSi("empty_mass").orElse(tank.glassKilograms());
        if (!given.has("empty_mass")) {
            given.assume("empty_mass", kilograms(empty), "the panes alone, 2.5 g/ml; rim and stones add to it");
        }
        boolean flawed = given.text("flawed", "no", "every pane looked over, against the light, edges felt")
                .equals("yes");
        return new Asked(new TankLoad(tank, depth, empty, density, GRAVITY), flawed);
    }

    static String kilograms(double kilograms) {
        return Print.number(kilograms, kilograms < 1 ? 2 : kilograms < 10 ? 1 : 0) + " kg";
    }

    @Override
    public Draft answer(Asked inputs, double[] settled, Words words) {
        TankCheck.Found found = TankCheck.of(inputs.load());
        Notes notes = new TankWords(found, words).notes();
        return inputs.flawed() ? flawed(found, notes) : draft(found, notes);
    }

    /// Of a flawed pane nothing is said but what the water weighs.
    private static Draft flawed(TankCheck.Found found, Notes notes) {
        List<Item> items = new ArrayList<>();
        for (Item each : draft(found, notes).items()) {
            boolean pane = List.of("peak_stress", "deflection", "safety_factor").contains(each.name());
            items.add(pane ? Item.word(each.name(), "unknown") : each);
        }
        Notes said = new Notes(
                List.of("A scratch, a chip or a seam in a pane takes a share of its strength that nobody knows: don't"
                        + " fill it. Whole panes of these measures: see flawed: no."),
                List.of("Have the pane replaced, or take another tank."),
                notes.cautions(),
                notes.sources());
        return new Draft(items, List.of(new Criterion("the safety factor", 0)), Verdict.UNKNOWN, said);
    }

    @Override
    public Draft vary(Asked moved, double[] settled) {
        TankCheck.Found found = TankCheck.of(moved.load());
        return moved.flawed() ? flawed(found, Notes.NONE) : draft(found, Notes.NONE);
    }

    private static Draft draft(TankCheck.Found found, Notes notes) {
        TankLoad load = found.load();
        boolean said = isSaid(found);
        List<Item> items = new ArrayList<>();
        items.add(Item.of("water_mass", load.liquidKilograms(), "kg"));
        items.add(Item.of("total_mass", load.totalKilograms(), "kg"));
        items.add(Item.of("bottom_pressure", load.bottomPascals(), "Pa"));
        if (said) {
            items.add(between("peak_stress", found.leastStressPascals() / 1e6, stress(found) / 1e6, "MPa"));
            double bow = found.mostBent().bending().deflectionMetres();
            items.add(between("deflection", found.leastDeflectionMetres() * 1e3, bow * 1e3, "mm"));
            double least = found.safetyFactor();
            double most = TankCheck.STRENGTH_PASCALS / found.leastStressPascals();
            Value factor = most > least ? new Value.Spread(least, "1", least, most) : new Value.Number(least, "1");
            items.add(new Item("safety_factor", factor).atLeast(0));
        } else {
            for (String name : List.of("peak_stress", "deflection", "safety_factor")) {
                items.add(Item.word(name, "unknown"));
            }
        }
        items.add(Item.of("floor_pressure", load.floorPascals() / 1e3, "kPa"));
        boolean thin = found.validity() != PaneBending.Validity.NO_THIN_PLATE;
        double margin = thin ? found.safetyFactor() - TankCheck.LEAST_FACTOR : 0;
        return new Draft(items, List.of(new Criterion("the safety factor", margin)), best(found), notes);
    }

    /// Whether the theory bears figures of the panes.
    private static boolean isSaid(TankCheck.Found found) {
        return switch (found.validity()) {
            case GOOD, MEMBRANE_BEGINS -> true;
            case MEMBRANE, NO_THIN_PLATE -> false;
        };
    }

    private static double stress(TankCheck.Found found) {
        return found.mostStressed().bending().stressPascals();
    }

    /// The linear theory's figure, which is the most that it can be, with the least.
    private static Item between(String name, double least, double most, String unit) {
        Value value = least < most ? new Value.Spread(most, unit, least, most) : new Value.Number(most, unit);
        return new Item(name, value).atLeast(0);
    }

    /// The best that can be said: nothing where the theory has ended, tight where the floor's own weight would use up
    /// what is left.
    static Verdict best(TankCheck.Found found) {
        return switch (found.validity()) {
            case NO_THIN_PLATE, MEMBRANE -> Verdict.UNKNOWN;
            case GOOD, MEMBRANE_BEGINS ->
                found.safetyFactorWithOwnWeight() < TankCheck.LEAST_FACTOR ? Verdict.TIGHT : Verdict.NO_OBJECTION_FOUND;
        };
    }
}
