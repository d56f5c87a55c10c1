package plumeline.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
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
