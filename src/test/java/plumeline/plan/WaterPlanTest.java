package plumeline.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.text.Problem;
import plumeline.water.Material;

/// What a plan may say of things in water, and how it is refused.
final class WaterPlanTest {
    private static List<Problem> problems(String thing, String placed, String tank) {
        String text = """
            plumeline: 1
            film: {rate: 24 fps}
            things: {product: {diameter: 42 mm, height: 122 mm, THING}}
            kit:
              cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
              lenses: {fifty: {focal_length: 50 mm}}
              tanks: {glass: {inside: [600 mm, 400 mm, 400 mm], pane: 8 mm, TANK}}
            shots:
              one:
                camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 48 mm], aim: hero}
                tank: {tank: glass, at: [0 mm, 0 mm], water: 400 mm}
                place: {hero: {at: [0 mm, 0 mm, 100 mm], PLACED}}
            """.replace("THING", thing)
                .replace("PLACED", placed.startsWith("thing") ? placed : "thing: product, " + placed)
                .replace("TANK", tank);
        return Plans.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml").problems();
    }

    private static String only(String thing, String placed, String tank) {
        List<Problem> problems = problems(thing, placed, tank);
        assertThat(problems).hasSize(1);
        Problem problem = problems.getFirst();
        return problem.code() + " " + problem.given() + "; " + problem.allowed() + ". " + problem.attempt();
    }

    private static String ofThing(String thing) {
        return only(thing, "lines: 1", "rim: yes");
    }

    @Test
    void materials_areThoseThatWaterKnows() {
        assertThat(KitGrammar.MATERIALS).containsExactlyElementsOf(Material.listSpellings());
        assertThat(problems("material: aluminum", "lines: 1", "rim: yes")).isEmpty();
        assertThat(problems("material: Can_Aluminium", "lines: 1", "rim: yes")).isEmpty();
        assertThat(ofThing("material: cheese")).startsWith("P-WORD-01 cheese; aluminium, can aluminium, tinplate");
        assertThat(ofThing("material: alumnium")).endsWith(". Try aluminium.");
    }

    @Test
    void hints_nameWhatToMeasure() {
        assertThat(ofThing("air: -3 ml"))
                .isEqualTo("P-RANGE-01 -3 ml; 0 ml or more. Try the water that fills its headspace up, from a weighed"
                        + " jug: 1 g is 1 ml.");
        assertThat(ofThing("displaces: -3 ml"))
                .endsWith("Try what a kitchen scale gains when it is held just under in a jug: 1 g is 1 ml.");
        assertThat(ofThing("contents: {volume: -3 ml}"))
                .endsWith("Try what its label says, or pour it into a weighed jug.");
        assertThat(ofThing("displaces: 355 g")).endsWith(". Try 355 ml.");
        assertThat(ofThing("mass: 0 g")).endsWith("Try what a kitchen scale says of it, full.");
        assertThat(ofThing("base: {diameter: 40 mm, depth: 8 mm, air: -1 ml}"))
                .endsWith("Try 0 ml once it was tilted clear, or what its hollow holds.");
    }

    @Test
    void rigs_pointAtTheThing() {
        assertThat(only("mass: 200 g", "rig: {diameter: 6 mm, from: 123 mm, to: [0 mm, 0 mm, 900 mm]}", "rim: yes"))
                .isEqualTo("P-RIG-01 123 mm; at most 122 mm, the height of product. Measure from its base to where the"
                        + " rod points at its axis; leave it out for the middle.");
        assertThat(only("mass: 200 g", "rig: {diameter: 6 mm}", "rim: yes")).contains("to");
        assertThat(only("mass: 200 g", "lines: 1, line: {to: [0 mm, 0 mm]}", "rim: yes"))
                .contains("[0 mm, 0 mm, 900 mm]");
    }

    @Test
    void ties_areOnTheThing() {
        assertThat(only("mass: 200 g", "tied: [140 mm]", "rim: yes"))
                .isEqualTo("P-TIE-02 140 mm; at most 122 mm, the height of product. Measure from its base to where the"
                        + " line leaves it; count a wire fixed to it as part of it.");
        assertThat(only("mass: 200 g", "tied: [30 mm, free between 20 mm and 123 mm]", "rim: yes"))
                .startsWith("P-TIE-02 123 mm;");
        String variants = "variants: {tall: {height: 130 mm}, short: {height: 60 mm}}";
        assertThat(only(variants, "tied: [125 mm]", "rim: yes")).startsWith("P-TIE-02 125 mm;");
        assertThat(only(variants, "thing: product.short, tied: [61 mm]", "rim: yes"))
                .contains("at most 60 mm, the height of product.short");
        assertThat(problems(variants, "thing: product.tall, tied: [125 mm]", "rim: yes"))
                .isEmpty();
        assertThat(problems("mass: 200 g", "tied: [122 mm, free]", "rim: yes")).isEmpty();
    }

    private static String ofTank(String tank) {
        return only("mass: 200 g", "lines: 1", tank);
    }

    @Test
    void saltInTheTank_isRefusedPastWhatIsKnown_namingWhatToMeasure() {
        assertThat(problems("mass: 200 g", "lines: 1", "salt: 3 %")).isEmpty();
        assertThat(problems("mass: 200 g", "lines: 1", "sea_salt: 3.5 %")).isEmpty();
        assertThat(problems("mass: 200 g", "lines: 1", "density: 1.02 g/ml")).isEmpty();
        assertThat(ofTank("salt: 30 %"))
                .isEqualTo("P-RANGE-01 30 %; from 0 % to 26 %. Try what was weighed in over the whole; or weigh a litre"
                        + " of the water, and write its density.");
        assertThat(ofTank("sea_salt: 5 %")).contains("from 0 % to 4.2 %").contains("weigh a litre");
        assertThat(ofTank("density: 2 g/ml"))
                .contains("from 0.9 g/ml to 1.3 g/ml")
                .contains("hydrometer");
        assertThat(ofTank("salt: 3 %, temperature: 4 degC"))
                .isEqualTo("P-TANK-01 4 degC, with table salt in the water; 5 degC or more: colder brine isn't known"
                        + " here. Weigh a litre of the water, and write its density.");
        assertThat(problems("mass: 200 g", "lines: 1", "salt: 3 %, temperature: 5 degC"))
                .isEmpty();
        assertThat(problems("mass: 200 g", "lines: 1", "salt: 3 %, sea_salt: 3 %"))
                .hasSize(1);
    }
}
