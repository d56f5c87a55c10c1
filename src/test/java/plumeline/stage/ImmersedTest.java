package plumeline.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.geom.Vec;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.plan.Thing;
import plumeline.water.Buoyancy;
import plumeline.water.Vessel;

/// A plan's thing in water: masses, volumes and centres by hand.
final class ImmersedTest {
    private static final double WATER = 998.207;

    private static Plan plan(String thing, String placed) {
        String text = """
            plumeline: 1
            film: {rate: 24 fps}
            things: {product: {THING}}
            kit:
              cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
              lenses: {fifty: {focal_length: 50 mm}}
              tanks: {glass: {inside: [600 mm, 400 mm, 400 mm], pane: 8 mm}}
            shots:
              one:
                camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 48 mm], aim: hero}
                tank: {tank: glass, at: [0 mm, 0 mm], water: 400 mm}
                place: {hero: {thing: product, at: [0 mm, 0 mm, 100 mm], PLACED}}
            """.replace("THING", thing).replace("PLACED", placed);
        var reading = Plans.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml");
        return reading.plan().orElseThrow(() -> new AssertionError(reading.problems()));
    }

    private static Thing thing(String written) {
        return plan(written, "lines: 1").things().getFirst();
    }

    private static Immersed known(String written) {
        return switch (Immersed.of(thing(written), WATER)) {
            case Immersed.Reading.Known(Immersed immersed) -> immersed;
            case Immersed.Reading.Missing(Immersed.Lack lack) -> throw new AssertionError(lack);
        };
    }

    private static Vessel vessel(String written) {
        return switch (known(written).body()) {
            case Immersed.Body.Of(Vessel vessel, var _) -> vessel;
            case Immersed.Body.Untold(Immersed.Lack lack) -> throw new AssertionError(lack);
        };
    }

    @Test
    void everyMaterialThatAPlanMayName_isKnown() {
        double usual = vessel(WALLED.formatted("glass")).shell().centreMetres();
        for (String name : plumeline.water.Material.listSpellings()) {
            assertThat(vessel(WALLED.formatted(name)).displacedMetres3())
                    .as(name)
                    .isEqualTo(360e-6, within(1e-12));
        }
        assertThat(vessel(WALLED.formatted("Aluminum")).shell().centreMetres())
                .isEqualTo(vessel(WALLED.formatted("aluminium")).shell().centreMetres())
                .isNotEqualTo(usual);
    }

    private static Immersed.Lack lack(String written) {
        return switch (Immersed.of(thing(written), WATER)) {
            case Immersed.Reading.Missing(Immersed.Lack lack) -> lack;
            case Immersed.Reading.Known(Immersed known) ->
                switch (known.body()) {
                    case Immersed.Body.Untold(Immersed.Lack lack) -> lack;
                    case Immersed.Body.Of(Vessel vessel, var _) -> throw new AssertionError(vessel);
                };
        };
    }

    /// Frusta: π h (R² + R r + r²)/3.
    @Test
    void volume_isTheFormsWhereItIsNotMeasured() {
        double flacon = Math.PI * (9 * 2.1 * 2.1 + 2.8 * 1.0);
        Immersed round =
                known("profile: [[0 mm, 21 mm], [90 mm, 21 mm], [90 mm, 10 mm], [118 mm, 10 mm]], mass: 197 g");
        assertThat(1e6 * round.displaced().value()).isEqualTo(flacon, within(1e-6));
        assertThat(1e6 * round.displaced().half()).isEqualTo(0.05 * flacon, within(1e-6));
        assertThat(round.basis()).isEqualTo(Immersed.Basis.FORM);
        assertThat(round.assumed()).containsExactly("its volume by its form, ± 5 %");
        Immersed box = known("width: 60 mm, depth: 40 mm, height: 100 mm, mass: 300 g");
        assertThat(1e6 * box.displaced().value()).isEqualTo(240, within(1e-9));
        Immersed pushed = known("width: 60 mm, depth: 40 mm, height: 100 mm, mass: 300 g, displaces: 231 ml ± 1 ml");
        assertThat(1e6 * pushed.displaced().value()).isEqualTo(231, within(1e-9));
        assertThat(pushed.basis()).isEqualTo(Immersed.Basis.DISPLACES);
    }

    /// 300 ± 3 g less 231 ± 4 ml of water: 69.4 g ± √(3² + 3.99²).
    @Test
    void net_isMassLessWater_withBothSpreads() {
        Immersed thing = known("diameter: 60 mm, height: 100 mm, mass: 300 g ± 3 g, displaces: 231 ml ± 4 ml");
        assertThat(1e3 * thing.net().value()).isEqualTo(300 - 0.998207 * 231, within(1e-6));
        assertThat(1e3 * thing.net().half()).isEqualTo(Math.hypot(3, 0.998207 * 4), within(1e-6));
    }

    @Test
    void emptyMassAndContents_makeTheWhole() {
        Immersed thing = known("diameter: 66 mm, height: 115 mm, displaces: 360 ml, empty_mass: 13 g ± 1 g, contents:"
                + " {volume: 330 ml ± 2 ml, density: 1.04 g/ml}");
        assertThat(1e3 * thing.mass().value()).isEqualTo(13 + 330 * 1.04, within(1e-9));
        assertThat(1e3 * thing.mass().half()).isEqualTo(Math.hypot(1, 2 * 1.04), within(1e-9));
        assertThat(known("diameter: 66 mm, height: 115 mm, displaces: 360 ml, empty_mass: 13 g,"
                                + " contents: {volume: 330 ml}")
                        .assumed())
                .containsExactly("contents as heavy as water", "a wall of aluminium, 2.7 g/ml");
    }

    /// Weighed full and empty, the contents weigh the rest, whatever they are.
    @Test
    void weighedFullAndEmpty_theVesselWeighsTheWhole() {
        Vessel vessel =
                vessel("diameter: 66 mm, height: 115 mm, displaces: 360 ml, mass: 353 g, empty_mass: 13 g, contents:"
                        + " {volume: 330 ml, density: 1.2 g/ml}");
        assertThat(1e3 * vessel.massKilograms()).isEqualTo(353, within(1e-9));
        assertThat(1e6 * vessel.displacedMetres3()).isEqualTo(360, within(1e-6));
    }

    /// An open glass bottle of 200 g: wall 80 ml; of 500 ml outside 100 ml are air: 320 ml of water run in.
    @Test
    void anOpenOne_holdsTankWaterWhereNothingElseIs() {
        String bottle =
                "diameter: 80 mm, height: 140 mm, displaces: 500 ml, empty_mass: 200 g, material: glass, closed: no,"
                        + " air: 100 ml";
        Immersed open = known(bottle);
        assertThat(1e3 * open.mass().value()).isEqualTo(200 + 320 * 0.998207, within(1e-6));
        assertThat(1e3 * open.net().value()).isEqualTo(200 - 0.998207 * 180, within(1e-6));
        Vessel vessel = vessel(bottle);
        assertThat(-Buoyancy.netLiftNewtons(vessel, WATER)).isEqualTo(open.net().value() * 9.80665, within(1e-9));
    }

    @Test
    void centres_areThoseWritten_andElseTheForms() {
        Vessel given =
                vessel("diameter: 42 mm, height: 118 mm, mass: 197 g, displaces: 133.5 ml, centre_of_mass: 48 mm,"
                        + " centre_of_volume: 56 mm");
        assertThat(given.outer().whole().centroid().z()).isEqualTo(0.056, within(1e-9));
        assertThat(given.shell().centreMetres()).isEqualTo(0.048, within(1e-12));
        assertThat(1e6 * given.outer().whole().volumeMetres3()).isEqualTo(133.5, within(1e-6));
        Vessel plain = vessel("diameter: 42 mm, height: 118 mm, mass: 197 g, centre_of_mass: 48 mm");
        assertThat(plain.outer().whole().centroid().z()).isEqualTo(0.059, within(1e-9));
        assertThat(plain.outer().highestMetres(Vec.UP)).isEqualTo(0.118, within(1e-9));
    }

    @Test
    void whatIsMissingOrCantBe_isNamed() {
        assertThat(lack("diameter: 42 mm, height: 118 mm")).isEqualTo(Immersed.Lack.MASS);
        assertThat(lack("diameter: 42 mm, height: 118 mm, mass: 50 g, contents: {volume: 60 ml}"))
                .isEqualTo(Immersed.Lack.TOO_LIGHT);
        assertThat(lack("diameter: 42 mm, height: 118 mm, mass: 50 g, closed: no"))
                .isEqualTo(Immersed.Lack.AIR);
        assertThat(lack("diameter: 42 mm, height: 118 mm, mass: 50 g, closed: no, air: 160 ml"))
                .isEqualTo(Immersed.Lack.TOO_FULL);
        assertThat(lack("diameter: 42 mm, height: 118 mm, empty_mass: 50 g, contents: {volume: 160 ml}"))
                .isEqualTo(Immersed.Lack.TOO_FULL);
        assertThat(lack("profile: [[0 mm, 21 mm], [50 mm, 0 mm], [118 mm, 10 mm]], mass: 197 g"))
                .isEqualTo(Immersed.Lack.PROFILE);
    }

    private static final String WALLED =
            "diameter: 66 mm, height: 115 mm, displaces: 360 ml, empty_mass: 13 g, contents: {volume: 300 ml},"
                    + " material: %s";
    private static final String CAN = "diameter: 66 mm, height: 115 mm, empty_mass: 13 g, ";
    private static final String POT = "diameter: 42 mm, height: 118 mm, ";

    /// Can: π · 3.3² · 11.5 = 393.4 ml, less 13/2.7 ml of wall 388.6 ml, with 5 % of the form more 408.3 ml.
    @Test
    void moreInItThanItHolds_cantBe() {
        assertThat(lack(CAN + "contents: {volume: 420 ml, density: 0.998 g/ml}"))
                .isEqualTo(Immersed.Lack.TOO_FULL);
        assertThat(known(CAN + "contents: {volume: 405 ml, density: 0.998 g/ml}")
                        .basis())
                .isEqualTo(Immersed.Basis.FORM);
        assertThat(lack(CAN + "displaces: 372 ml, contents: {volume: 420 ml}")).isEqualTo(Immersed.Lack.TOO_FULL);
        assertThat(lack(CAN + "displaces: 372 ml, contents: {volume: 368 ml}")).isEqualTo(Immersed.Lack.TOO_FULL);
        assertThat(known(CAN + "displaces: 372 ml, contents: {volume: 366 ml}").body())
                .isInstanceOf(Immersed.Body.Of.class);
        assertThat(lack(POT + "empty_mass: 60 g, contents: {volume: 300 ml}")).isEqualTo(Immersed.Lack.TOO_FULL);
        String glass = POT + "displaces: 133.5 ml, empty_mass: 100 g, wall: {density: 2.5 g/ml},"
                + " contents: {volume: 60 ml}, air: ";
        assertThat(lack(glass + "90 ml")).isEqualTo(Immersed.Lack.TOO_FULL);
        assertThat(lack(glass + "34 ml")).isEqualTo(Immersed.Lack.TOO_FULL);
        assertThat(known(glass + "33.5 ml").net().half()).isZero();
        assertThat(lack(POT + "mass: 197 g, displaces: 133.5 ml, air: 140 ml")).isEqualTo(Immersed.Lack.TOO_FULL);
    }

    /// π · 2.1² · 11.8 = 163.5 ml: 133.5 ml take √(133.5/163.5) = 0.904 of its width, 180 ml 1.049 of it.
    @Test
    void whatWasMeasured_isHeldAgainstTheForm() {
        assertThat(lack(POT + "mass: 600 g, displaces: 533.5 ml")).isEqualTo(Immersed.Lack.OUTLINE);
        assertThat(lack(POT + "mass: 600 g, displaces: 205 ml")).isEqualTo(Immersed.Lack.OUTLINE);
        assertThat(known(POT + "mass: 600 g, displaces: 205 ml ± 2 ml").assumed())
                .containsExactly("its form drawn 12 % wider, to hold the 205 ml it displaces");
        assertThat(known(POT + "mass: 197 g, displaces: 170 ml").assumed()).isEmpty();
        assertThat(known(POT + "mass: 197 g, displaces: 33.5 ml").assumed())
                .containsExactly("its form drawn 55 % narrower, to hold the 34 ml it displaces");
        String narrow = POT + "mass: 197 g, displaces: 133.5 ml, centre_of_mass: 48 mm";
        assertThat(known(narrow).assumed()).isEmpty();
        assertThat(((Immersed.Body.Of) known(narrow).body()).assumed())
                .containsExactly("its form drawn 10 % narrower, to hold the 134 ml it displaces");
        assertThat(((Immersed.Body.Of)
                                known(narrow + ", centre_of_volume: 56 mm").body())
                        .assumed())
                .isEmpty();
    }

    @Test
    void aHoleInTheProfile_leavesItsVolumeUntold_unlessThatWasMeasured() {
        String holed = "profile: [[0 mm, 20 mm], [30 mm, 0 mm], [40 mm, 0 mm], [80 mm, 20 mm]], mass: 100 g";
        assertThat(Immersed.of(thing(holed), WATER)).isEqualTo(new Immersed.Reading.Missing(Immersed.Lack.PROFILE));
        assertThat(known(holed + ", displaces: 30 ml").body())
                .isEqualTo(new Immersed.Body.Untold(Immersed.Lack.PROFILE));
    }

    /// A cap of a ball 10 mm high on 24 mm: π · 10 (3 · 24² + 10²)/6 = 9.571 ml.
    @Test
    void aHollowBase_holdsAirThatLifts() {
        String can = "diameter: 66 mm, height: 115 mm, mass: 390 g, base: {diameter: 48 mm, depth: 10 mm";
        Immersed all = known(can + "}");
        assertThat(1e6 * all.displaced().value()).isEqualTo(393.437, within(0.001));
        assertThat(all.assumed())
                .containsExactly(
                        "its volume by its form, ± 5 %", "9.6 ml of air under its base, all that its hollow holds");
        Immersed some = known(can + ", air: 7 ml ± 1 ml}");
        assertThat(1e6 * some.displaced().value()).isEqualTo(393.437 - 9.571 + 7, within(0.001));
        assertThat(1e3 * some.net().value()).isEqualTo(390 - 0.998207 * 390.866, within(0.001));
        Immersed pushed = known(can + ", air: 7 ml}, displaces: 372 ml ± 1 ml");
        assertThat(1e6 * pushed.displaced().value()).isEqualTo(379, within(1e-9));
        Vessel vessel = vessel(can + ", air: 7 ml}, displaces: 372 ml, centre_of_volume: 60 mm");
        assertThat(1e6 * vessel.displacedMetres3()).isEqualTo(379, within(1e-6));
        assertThat(1e6 * vessel.airUnderMetres3(0)).isEqualTo(7, within(1e-9));
        assertThat(lack(can + ", air: 12 ml}")).isEqualTo(Immersed.Lack.BASE);
        assertThat(lack(can.replace("48 mm", "68 mm") + "}")).isEqualTo(Immersed.Lack.BASE);
        assertThat(lack(can + ", volume: 30 ml}")).isEqualTo(Immersed.Lack.BASE);
    }

    @Test
    void ends_areThoseOfEachMeasureThatMayBeOff() {
        List<Immersed.Moved> moved = Immersed.listMoved(
                thing(POT + "mass: 197 g ± 2 g, displaces: 133.5 ml ± 3 ml, centre_of_mass: 48 mm ± 4 mm"), WATER);
        assertThat(moved)
                .extracting(Immersed.Moved::measure)
                .containsExactly(Immersed.Measure.MASS, Immersed.Measure.DISPLACES, Immersed.Measure.CENTRE_OF_MASS);
        assertThat(moved.getFirst().ends())
                .extracting(end -> 1e3 * end.mass().value())
                .containsExactly(195.0, 199.0);
        assertThat(Immersed.listMoved(thing(POT + "mass: 197 g, displaces: 133.5 ml"), WATER))
                .isEmpty();
        assertThat(Immersed.listMoved(thing(POT + "mass: 197 g"), WATER))
                .extracting(Immersed.Moved::measure)
                .containsExactly(Immersed.Measure.FORM);
    }

    /// The contract's default: from the profile. A cone's centroid is at a quarter of its height.
    @Test
    void weight_isSpreadThroughTheForm_whereNothingElseIsWritten_andThatIsSaid() {
        String cone = "profile: [[0 mm, 40 mm], [120 mm, 0 mm]], mass: 300 g";
        assertThat(vessel(cone).shell().centreMetres()).isEqualTo(0.030, within(1e-9));
        Immersed.Body.Of body = (Immersed.Body.Of) known(cone).body();
        assertThat(body.assumed()).containsExactly("its weight spread evenly through its form: balance it on a ruler");
        assertThat(vessel(cone + ", centre_of_mass: 20 mm").shell().centreMetres())
                .isEqualTo(0.020, within(1e-12));
    }

    /// 600 · 400 · 400 mm of water at 20 degC: 95.83 kg, as the reference of the trade counts it.
    @Test
    void tank_isReadWithWhatIsAssumed() {
        Plan plan = plan("diameter: 42 mm, height: 118 mm", "lines: 1");
        var place = plan.shots().getFirst().findTank().orElseThrow();
        TankFill.Known fill = (TankFill.Known) TankFill.of(place);
        assertThat(fill.load().liquidKilograms()).isEqualTo(95.83, within(0.005));
        assertThat(fill.assumed())
                .containsExactly("no rim", "the floor carried by its edges only", "the tank as heavy as its panes");
    }

    /// Salt by the CRC Handbook (102nd ed., concentrative properties, NaCl at 20 degC): 3 % by mass 1.0196 g/ml, 10 %
    /// 1.0707 g/ml. Sea water of practical salinity 35, which is 35.165 g/kg, at 25 degC: 1023.343 kg/m3, a check
    /// value of UNESCO's (Technical Papers in Marine Science 44, 1983).
    @Test
    void saltWater_isAsDenseAsTablesSay_everywhere() {
        assertThat(density("salt: 3 %")).isEqualTo(1019.6, within(0.5));
        assertThat(density("salt: 10 %, temperature: 20 degC")).isEqualTo(1070.7, within(0.5));
        assertThat(density("sea_salt: 3.5165 %, temperature: 25 degC")).isEqualTo(1023.343, within(0.02));
        assertThat(density("density: 1.023 g/ml, temperature: 15 degC")).isEqualTo(1023, within(1e-9));
        assertThat(density("rim: no")).isEqualTo(WATER, within(1e-3));
        TankFill.Known brine = (TankFill.Known) TankFill.of(tank("salt: 10 %"));
        assertThat(brine.load().liquidKilograms()).isEqualTo(96 * density("salt: 10 %") / 1000, within(1e-9));
    }

    private static plumeline.plan.TankPlace tank(String keys) {
        String text = plan("diameter: 42 mm, height: 118 mm", "lines: 1")
                .source()
                .text()
                .replace("pane: 8 mm", "pane: 8 mm, " + keys);
        return Plans.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml")
                .plan()
                .orElseThrow()
                .shots()
                .getFirst()
                .findTank()
                .orElseThrow();
    }

    private static double density(String keys) {
        return TankFill.findDensity(tank(keys)).orElseThrow();
    }

    /// 600 N/mm² · π/4 · 0.25² = 29.5 N; 75 N take 0.399 mm.
    @Test
    void line_hasTheUsualStrengthOfItsDiameter_andTheOtherWayRound() {
        HangingLine thick = line("line: {diameter: 0.25 mm}");
        assertThat(thick.strengthNewtons()).isEqualTo(29.45, within(0.01));
        assertThat(thick.knotShare()).isEqualTo(0.5);
        HangingLine strong = line("line: {strength: 75 N, knot: 80 %}");
        assertThat(1e3 * strong.diameterMetres()).isEqualTo(0.399, within(0.001));
        assertThat(strong.safetyFactor(6)).isEqualTo(10, within(1e-12));
        assertThat(line("line: {strength: 75 N, diameter: 0.5 mm, knot: 80 %}").assumed())
                .isEmpty();
        assertThat(HangingLine.find(placed("lines: 1"))).isEmpty();
        assertThat(HangingLine.find(placed("lines: 1, line: {knot: 80 %}"))).isEmpty();
    }

    private static plumeline.plan.Placed placed(String placed) {
        return plan("diameter: 42 mm, height: 118 mm", placed)
                .shots()
                .getFirst()
                .placed()
                .getFirst();
    }

    private static HangingLine line(String line) {
        return HangingLine.find(placed("lines: 1, " + line)).orElseThrow();
    }
}
