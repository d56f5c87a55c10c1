package plumeline.card;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import plumeline.plan.Plans;
import plumeline.quantity.PaperUnit;
import plumeline.solve.FilmAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.solve.Solve;
import plumeline.solve.WantAnswer;

/// What stands on the cards of a solved plan, against sums by hand and against the findings on the same things.
final class CardsTest {
    static final String PLAN = """
        plumeline: 1
        film: {rate: 24 fps, papers: mm}
        things:
          can:
            profile: [[0 mm, 23 mm], [12 mm, 33 mm], [95 mm, 33 mm], [112 mm, 26.5 mm], [118 mm, 26.5 mm]]
            empty_mass: 13 g measured
            contents: {volume: 330 ml, density: 1.0 g/ml}
            displaces: 355 ml ± 2 ml measured
          tin:
            {diameter: 42 mm, height: 118 mm, mass: 197 g ± 1 g measured, displaces: 133.5 ml ± 0.5 ml measured,
             centre_of_mass: 48 mm measured, centre_of_volume: 56 mm}
          box: {width: 60 mm, depth: 10 mm, height: 90 mm}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
          lenses: {macro: {focal_length: 100 mm}}
          tanks:
            glass:
              {inside: [450 mm, 300 mm, 300 mm], pane: 8 mm, rim: yes, floor_support: full, empty_mass: 12 kg measured}
          table: {size: [1200 mm, 800 mm], carries: 60 kg}
        shots:
          one:
            camera: {body: main, lens: macro, at: [0 mm, -1100 mm, 139 mm], aim: ahead, focus: hero}
            tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}
            place:
              hero: {thing: tin, at: [0 mm, 0 mm, 80 mm], tied: [10 mm, 95 mm], tilt: 90 deg, line: {strength: 75 N}}
              left: {thing: can, at: [-120 mm, 0 mm, 60 mm], tied: [110 mm]}
              right: {thing: can, at: [120 mm, 0 mm, 60 mm], lines: 2}
              back: {thing: box, at: [0 mm, 100 mm, 8 mm]}
              outside: {thing: box, at: [400 mm, 0 mm]}
            frames: 24
            wants: [{stays_under: hero, by: 30 g}, {hangs: hero}, {tank_carries: glass}, {stays_under: left}]
        """;

    private static final FilmAnswer FILM = solve(PLAN);

    static FilmAnswer solve(String text) {
        var reading = Plans.read(text.getBytes(UTF_8), "wet.yaml");
        return Solve.film(reading.plan()
                .orElseThrow(() -> new AssertionError(reading.problems().toString())));
    }

    static List<Card> cards(FilmAnswer film, PaperUnit unit) {
        ShotAnswer shot = film.shots().getFirst();
        return Cards.of(film.plan(), shot, unit);
    }

    static List<Card> cards(String text) {
        return cards(solve(text), PaperUnit.MILLIMETRES);
    }

    private static String changed(String part, String by) {
        assertThat(PLAN).contains(part);
        return PLAN.replace(part, by);
    }

    static Card card(List<Card> cards, String title) {
        return cards.stream()
                .filter(card -> card.title().equals(title))
                .findFirst()
                .orElseThrow(
                        () -> new AssertionError(cards.stream().map(Card::title).toList() + " without " + title));
    }

    private static Card card(String title) {
        return card(cards(FILM, PaperUnit.MILLIMETRES), title);
    }

    /// A fact's text; one with a box ends in `[box]`.
    static String fact(Card card, String name) {
        for (Card.Part part : card.parts()) {
            if (part instanceof Card.Part.Fact fact && fact.name().equals(name)) {
                return fact.text();
            }
            if (part instanceof Card.Part.Ask ask && ask.name().equals(name)) {
                return ask.text() + " [box]";
            }
        }
        throw new AssertionError(card.title() + " has no " + name + ": " + card.parts());
    }

    private static Card.Part.Grid grid(Card card) {
        return card.parts().stream()
                .filter(Card.Part.Grid.class::isInstance)
                .map(Card.Part.Grid.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static String finding(int number) {
        WantAnswer want = FILM.shots().getFirst().wants().get(number - 1);
        return want.verdict().word() + " " + String.join(" ", want.because());
    }

    /// The two cans share a float card; what stands outside the tank has none.
    @Test
    void eachCard_isThereOnce_theTanksFirst() {
        List<Card> cards = cards(FILM, PaperUnit.MILLIMETRES);
        assertThat(cards.stream().map(Card::title))
                .containsExactly(
                        "Tank card: glass",
                        "Float card: tin",
                        "Float card: can",
                        "Float card: box",
                        "Hang card: hero (tin)",
                        "Hang card: left (can)",
                        "Hang card: right (can)");
        assertThat(new HashSet<>(cards.stream().map(Card::id).toList())).hasSize(7);
        assertThat(grid(card("Float card: can")).rows().stream().map(List::getFirst))
                .containsExactly("left", "right");
        assertThat(grid(card("Float card: box")).rows().stream().map(List::getFirst))
                .containsExactly("back");
    }

    @Test
    void shotWithoutWaterOrLines_hasNoCards() {
        String dry = changed("    tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}\n", "")
                .replace("tied: [10 mm, 95 mm], tilt: 90 deg, line: {strength: 75 N}", "tilt: 0 deg")
                .replace(", tied: [110 mm]", "")
                .replace(", lines: 2", "");
        assertThat(cards(dry)).isEmpty();
    }

    /// 450 × 300 × 260 mm are 35.1 l; at 998.2 g a litre (fresh water at 20 degC) 35.04 kg, with the tank 47.04 kg on
    /// 466 × 316 mm: 319 kg a square metre; 35.1 l at 10 l/min take 3.5 min.
    @Test
    void tank_saysLitresMassesTableAndFill() {
        Card tank = card("Tank card: glass");
        assertThat(fact(tank, "Water"))
                .isEqualTo("fill to 260 mm over its floor of 450 × 300 mm: 35.1 l, 35 kg; 4 times a 10 l bucket.");
        assertThat(fact(tank, "In all")).isEqualTo("47 kg, of that the empty tank 12 kg.");
        assertThat(fact(tank, "Table"))
                .isEqualTo("bears 47 kg, as much as 319 kg on a square metre; it may carry 60 kg.");
        assertThat(fact(tank, "Fill")).startsWith("about 4 min at 10 l/min.").endsWith("[box]");
        assertThat(fact(tank, "Reset")).isEqualTo("3 to 5 min, typical. Yours [box]");
    }

    /// 35.1 l through 113 mm² at no more than √(2 · 9.81 · 0.96) = 4.3 m/s take 72 s at least (Torricelli); a pipe 167
    /// bores long with friction 0.02 to 0.04 and its ends' losses takes √(1 + 1.5 + 167 · 0.03) = 2.7 times that.
    @Test
    void drain_takesAsLongAsFrictionAsks() {
        String drain = fact(card("Tank card: glass"), "Drain");
        assertThat(drain).endsWith(" min by 12 mm hose, 2000 mm long, ending 700 mm lower.");
        double minutes = Double.parseDouble(drain.replaceAll("about (\\d+) min.*", "$1"));
        assertThat(minutes * 60).isBetween(1.8 * 72, 3.2 * 72);
    }

    @Test
    void panes_haveTheFindingsFigures() {
        String panes = fact(card("Tank card: glass"), "Panes");
        assertThat(panes)
                .startsWith("no objection found: factor 24.08, 3.8 is asked for; the long walls bear 0.8 MPa.");
        assertThat(finding(3)).startsWith("no objection found").contains("factor of 24.08", "long walls bear 0.8 MPa");
    }

    @Test
    void panesThatAreTooThin_fail_andWhatIsTooThick_isNotKnown() {
        String thin = changed("[450 mm, 300 mm, 300 mm], pane: 8 mm, rim: yes", "[600 mm, 400 mm, 300 mm], pane: 4 mm")
                .replace("floor_support: full", "floor_support: edges");
        Card failing = card(cards(thin), "Tank card: glass");
        assertThat(fact(failing, "Panes")).startsWith("fails: factor 1.58");
        assertThat(fact(failing, "Assumed")).isEqualTo("no rim: look.");
        Card thick = card(cards(changed("pane: 8 mm", "pane: 40 mm")), "Tank card: glass");
        assertThat(fact(thick, "Panes")).startsWith("not known. A pane of glass is thicker than a tenth");
        assertThat(fact(thick, "Water")).contains("35.1 l");
    }

    @Test
    void tableThatIsTooWeak_isToldWithItsFinding() {
        Card weak = card(cards(changed("carries: 60 kg", "carries: 40 kg")), "Tank card: glass");
        assertThat(fact(weak, "Table"))
                .endsWith(" on a square metre. The table carries 40 kg; tank and water weigh 47 kg. Take a stronger"
                        + " table, or less water.");
        Card unrated = card(cards(changed(", carries: 60 kg", "")), "Tank card: glass");
        assertThat(fact(unrated, "Table")).endsWith("What it may carry is not known: read its rating [box]");
    }

    /// Without the water's depth nothing is known of panes and times, but the cautions stand.
    @Test
    void tankWithoutDepth_asksForIt_andKeepsItsCautions() {
        Card tank = card(cards(changed(", water: 260 mm", "")), "Tank card: glass");
        assertThat(fact(tank, "Water"))
                .isEqualTo("not known. Measure how deep the water in glass is: write the tank's water. [box]");
        assertThat(tank.cautions()).hasSameSizeAs(card("Tank card: glass").cautions());
        assertThat(cards(changed(", water: 260 mm", "")).stream().map(Card::title))
                .contains("Float card: tin", "Float card: can");
    }

    @Test
    void cautions_nameGlassMainsLiftingFloorAndWhoseWordCounts() {
        assertThat(String.join(" ", card("Tank card: glass").cautions()))
                .contains(
                        "no scratched, chipped, seamed or twisted pane",
                        "35 l run out at once",
                        "residual-current protection tested that day, drip loops, low voltage within reach of the"
                                + " water,"
                                + " unplug before hands go in",
                        "two people from about 20 kg (empty: 12 kg); 4 times a 10 l bucket",
                        "Slippery floor",
                        "Local codes")
                .endsWith("the tank's maker have the last word.");
        assertThat(String.join(" ", card("Hang card: hero (tin)").cautions()))
                .contains("Nobody's hand or head under it", "a hand goes beneath it", "local codes");
    }

    /// A middle 120 mm deep in water (1.333) behind 8 mm of glass (1.52) looks 120 · 0.25 + 8 · 0.342 = 32.7 mm nearer,
    /// at 1067 mm. Focused there, 100 mm focal length gives 100/967: 20.25 mm are 196 mm there, and 100 mm 51 % of
    /// it.
    @Test
    void ruler_showsTheApparentPlace() {
        Card tank = card("Tank card: glass");
        assertThat(fact(tank, "Ruler at hero, left, right"))
                .isEqualTo("middle 120 mm behind the glass, looks 33 mm nearer; 100 mm of ruler upright there: 51 % of"
                        + " the picture's height.");
        assertThat(fact(tank, "Ruler at back")).startsWith("middle 220 mm behind the glass, looks 58 mm nearer");
        Card cut = card(cards(changed("[0 mm, 100 mm, 8 mm]", "[0 mm, 100 mm, 230 mm]")), "Tank card: glass");
        assertThat(fact(cut, "Ruler at back"))
                .isEqualTo("not known, as the water line cuts it: its share of the picture's height [box]");
    }

    @Test
    void floatCard_hasBoxesForEach_andTheFindingsFigures() {
        Card tin = card("Float card: tin");
        assertThat(grid(tin).heads()).containsExactly("Which", "Weight g", "Gain g = ml", "Difference g");
        assertThat(grid(tin).rows()).containsExactly(List.of("hero", "", "", ""));
        assertThat(fact(tin, "Weight")).isEqualTo("197 g ± 1 g (measured)");
        assertThat(fact(tin, "Displaces")).isEqualTo("133.5 ml ± 0.5 ml (measured)");
        // 197 − 133.5 · 0.9982 = 63.7; √(1² + 0.5²) = 1.1.
        assertThat(fact(tin, "Comes to")).isEqualTo("Sinks by 64 g ± 1.1 g.");
        assertThat(finding(1)).isEqualTo("holds hero sinks by 64 g ± 1.1 g.");
        assertThat(tin.parts().toString()).contains("30 g or more are wanted", "in a bucket");
    }

    /// 13 + 330 g against 355 · 0.9982 = 354.4 g.
    @Test
    void whatFloats_isToldWithRemediesThatWereTried() {
        Card can = card("Float card: can");
        assertThat(fact(can, "Comes to")).isEqualTo("Floats: it lacks 11 g ± 2 g of weight.");
        assertThat(finding(4)).startsWith("fails left floats: it lacks 11 g ± 2 g of weight.");
        // Flooded only the wall is left: 13 g of aluminium less 13 / 2.7 g.
        assertThat(fact(can, "What helps"))
                .startsWith("First: Open, drain, fill it with tank water to the last bubble: 8.2 g down,")
                // 11.4 + 20 g in its air, up to the gram; outside over 1 − 0.9982/7.85.
                .contains(
                        "Or: 32 g of steel inside, on its floor (ballast: {mass: 32 g, place: inside})",
                        "Or: 36 g of steel under its base (ballast: {mass: 36 g, place: under})");
        assertThat(can.parts().toString()).contains("under pressure");
    }

    @Test
    void missingMass_leavesTheCardStanding() {
        Card box = card("Float card: box");
        assertThat(fact(box, "Weight")).isEqualTo("not known: weigh it [box]");
        assertThat(fact(box, "Comes to")).isEqualTo("not known. Weigh back, whole and filled: write its mass.");
        assertThat(fact(box, "If it floats")).contains("Open, drain and flood it");
    }

    /// 60 × 10 × 90 mm are 54 ml, ± 5 %: 2.7 ml.
    @Test
    void volumeFromTheForm_isSaidToBe() {
        Card heavy = card(cards(changed("height: 90 mm}", "height: 90 mm, mass: 100 g typical}")), "Float card: box");
        assertThat(fact(heavy, "Weight")).isEqualTo("100 g (typical: measure yours)");
        assertThat(fact(heavy, "Displaces")).isEqualTo("54 ml ± 2.7 ml, from its form (typical: measure yours)");
        assertThat(fact(heavy, "Comes to")).isEqualTo("Sinks by 46 g ± 2.7 g.");
        Card near = card(cards(changed("height: 90 mm}", "height: 90 mm, mass: 55 g}")), "Float card: box");
        assertThat(fact(near, "Comes to")).startsWith("back sinks by 1.1 g, but that may be off by 2.7 g");
    }

    /// What is filled in the jug displaces its wall only.
    @Test
    void openThing_isFilledInTheJug() {
        String open = changed("contents: {volume: 330 ml, density: 1.0 g/ml}", "closed: no\n    air: 0 ml")
                .replace("    displaces: 355 ml ± 2 ml measured\n", "");
        Card can = card(cards(open), "Float card: can");
        assertThat(can.parts().toString()).contains("filled to the last bubble").doesNotContain("under pressure");
        assertThat(fact(can, "Displaces")).endsWith("[box]");
        assertThat(fact(can, "Comes to"))
                .startsWith("Sinks by 8.2 g")
                .endsWith("; 12 g more would keep it from bubbles and nudges.");
    }

    /// 30 g in 54 · 0.998207 = 53.9 g of water: 56 % of it is under, and nothing is told to sink it.
    @Test
    void whatIsToFloat_isNotToldToSink() {
        String raft = changed(
                        "box: {width: 60 mm, depth: 10 mm, height: 90 mm}",
                        "box: {width: 60 mm, depth: 10 mm, height: 90 mm, mass: 30 g}")
                .replace("{stays_under: left}]", "{stays_under: left}, {upright: back}]");
        Card box = card(cards(raft), "Float card: box");
        assertThat(fact(box, "Comes to")).startsWith("Floats by 24 g").endsWith(", 56 % of it under water.");
        assertThat(box.parts().toString())
                .contains("It is to float: more gain than weight", "as it will float, for an hour")
                .doesNotContain("What helps", "are wanted");
    }

    /// By the lever: it balances 31.27 mm from its base, so 63.7 g share as 63.7 : 21.3.
    @Test
    void hangCard_saysTiesLoadsAndLine() {
        Card hero = card("Hang card: hero (tin)");
        assertThat(grid(hero).rows())
                .containsExactly(
                        List.of("1", "10 mm", "48 g (0.47 N)", ""), List.of("2", "95 mm", "16 g (0.16 N)", ""));
        assertThat(fact(hero, "Hangs"))
                .isEqualTo("hero hangs at 90 deg; 90 deg ± 3 deg is wanted. In water its lines pull 0.47 N"
                        + " and 0.16 N.");
        assertThat(finding(2)).contains(fact(hero, "Hangs"), "One line alone bears 19.4 times");
        assertThat(fact(hero, "In water")).isEqualTo("64 g (0.63 N), all lines together.");
        assertThat(fact(hero, "Lifted out")).startsWith("197 g (1.9 N), all of it");
        // 5/0.5 times 197 g: 1.97 kg, 19.3 N.
        assertThat(fact(hero, "Line needed"))
                .startsWith("labelled 20 N (2 kg) or more, of nylon about 0.25 mm thick (typical): a knot leaves 50 %");
        // 75 · 0.5 / 1.932.
        assertThat(fact(hero, "Line taken"))
                .startsWith("75 N unknotted: one alone bears 19.4 times its weight lifted out at the knot")
                .contains("Assumed: the diameter usual of nylon; a knot that leaves 50 %.");
        Card weak = card(cards(changed("strength: 75 N", "strength: 15 N")), "Hang card: hero (tin)");
        assertThat(fact(weak, "Line taken")).contains("bears 3.8 times").contains("too weak");
    }

    /// 2π√(l/g): 1.42 s on 0.5 m in air; in water times √((m + m_water)/(m − m_water)), the added mass of a cylinder
    /// across itself being the water it displaces (Lamb, Hydrodynamics, art. 68, from memory).
    @Test
    void swing_isThatOfAPendulum_slowedByWater() {
        double water = 133.5 * 0.9982;
        double slower = Math.sqrt((197 + water) / (197 - water));
        String half = String.format(Locale.ROOT, "%.1f", 2 * Math.PI * Math.sqrt(0.5 / 9.80665) * slower);
        String whole = String.format(Locale.ROOT, "%.1f", 2 * Math.PI * Math.sqrt(1 / 9.80665) * slower);
        assertThat(fact(card("Hang card: hero (tin)"), "Swings"))
                .startsWith("in water " + half + " s on 500 mm, " + whole + " s on 1000 mm, there and back");
        String dry = changed("    tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}\n", "");
        Card inAir = card(cards(dry), "Hang card: hero (tin)");
        assertThat(fact(inAir, "Swings")).startsWith("in air 1.4 s on 500 mm, 2 s on 1000 mm");
        assertThat(inAir.parts().toString()).doesNotContain("In water");
    }

    @Test
    void whatFloats_carriesNothing_andUnknownTies_haveBoxes() {
        Card left = card("Hang card: left (can)");
        assertThat(grid(left).rows()).containsExactly(List.of("1", "110 mm", "nothing: it floats", ""));
        assertThat(fact(left, "Hangs")).isEqualTo("not while it floats: its float card comes first.");
        assertThat(fact(left, "In water")).isEqualTo("floats by 11 g.");
        assertThat(fact(left, "Line taken")).endsWith("[box]");
        assertThat(fact(left, "Twist")).startsWith("One line lets it turn");
        Card box = card(cards(changed("back: {thing: box,", "back: {thing: box, lines: 2,")), "Hang card: back (box)");
        assertThat(grid(box).rows())
                .containsExactly(List.of("1", "", "not known", ""), List.of("2", "", "not known", ""));
        assertThat(fact(box, "Lifted out")).isEqualTo("not known: weigh it, with all that is in it [box]");
        assertThat(fact(box, "Line needed")).startsWith("labelled ten times what it weighs");
        assertThat(fact(box, "Swings")).startsWith("in air 1.4 s on 500 mm");
    }

    @Test
    void tiesThatAreStillFree_areNotPrinted() {
        String free = changed("tied: [10 mm, 95 mm], tilt: 90 deg", "tied: [10 mm, free], tilt: 90 deg")
                .replace("{hangs: hero}, ", "");
        Card hero = card(cards(free), "Hang card: hero (tin)");
        assertThat(grid(hero).rows())
                .containsExactly(List.of("1", "10 mm", "not known", ""), List.of("2", "", "not known", ""));
        assertThat(fact(hero, "Hangs")).startsWith("not known. Its place or its ties are still free");
    }

    /// A pass that puts another thing in the water has it weighed too.
    @Test
    void passes_haveTheirOwnThings() {
        String passes =
                changed("    frames: 24\n", "    frames: 24\n    passes: {a: {}, b: {place.back.thing: can}}\n");
        assertThat(grid(card(cards(passes), "Float card: can")).rows().stream().map(List::getFirst))
                .containsExactly("left", "right", "back");
        assertThat(cards(passes).stream().map(Card::title)).contains("Float card: box");
    }

    @Test
    void inchPapers_haveNoMillimetres() {
        List<Card> cards = cards(FILM, PaperUnit.INCHES);
        assertThat(cards.toString()).doesNotContain(" mm").contains("197 g", "35.1 l");
        Card tank = card(cards, "Tank card: glass");
        assertThat(fact(tank, "Water")).startsWith("fill to 10 1/4 in over its floor of 17 11/16 × 11 13/16 in");
        // 319 kg a square metre over 10.76 square feet.
        assertThat(fact(tank, "Table")).contains("30 kg on a square foot");
        assertThat(fact(card(cards, "Hang card: hero (tin)"), "Swings")).contains(" s on 20 in");
        assertThat(grid(card(cards, "Hang card: hero (tin)")).rows().getFirst()).contains("3/8 in");
    }

    @Test
    void noCard_callsAnythingSafeOrSpeaksOfErrors() {
        for (PaperUnit unit : PaperUnit.values()) {
            assertThat(cards(FILM, unit).toString().toLowerCase(Locale.ROOT)).doesNotContain("safe", "error");
        }
    }

    /// Nobody wrote where its lines leave it: at its top, as most tie them, and that is asked for.
    @Test
    void tiesThatArentWritten_areTakenAtTheTop_andAskedFor() {
        String sinks = changed("right: {thing: can,", "right: {thing: tin,");
        Card hung = card(cards(sinks), "Hang card: right (tin)");
        assertThat(hung.parts().toString())
                .contains("Assumed: its lines leave it at its top; measure, and write them as tied.");
    }

    @Test
    void aFloatingThingThatShallBeUpright_hasItsCards() {
        String text = changed("{stays_under: left}", "{stays_under: left}, {upright: right}");
        assertThat(card(cards(text), "Hang card: right (can)").parts().toString())
                .contains("not while it floats");
    }
}
