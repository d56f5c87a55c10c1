package plumeline.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumeline.geom.Vec;

/// Where lines and rigs leave their things, where they end, and what moves take along. The flacon is 42 mm wide to 90
/// mm and has a neck of 20 mm to 118 mm.
final class StrandTest {
    private static Strand.Ends ends(int strand, double frame, String... lines) {
        Stage stage = Staged.stage(lines);
        double[] values = stage.startValues();
        return Strand.listAll(stage).get(strand).at(stage, values, stage.scene(values, frame));
    }

    private static Strand.Ends hung(String keys) {
        return ends(0, 0, Staged.CAMERA, "place: {hero: {thing: flacon, at: [0 mm, 0 mm, 100 mm], " + keys + "}}");
    }

    private static void check(Vec place, double x, double y, double z) {
        assertThat(place.x() * 1000).isEqualTo(x, within(1e-6));
        assertThat(place.y() * 1000).isEqualTo(y, within(1e-6));
        assertThat(place.z() * 1000).isEqualTo(z, within(1e-6));
    }

    @Test
    void aLine_leavesTheTop_andIsFollowedTwoMetres() {
        check(hung("lines: 1").foot(), 0, 0, 218);
        check(hung("lines: 1").far(), 0, 0, 2218);
        check(hung("tied: [30 mm]").foot(), 0, 0, 218);
        check(hung("lines: 1, line: {to: 900 mm}").far(), 0, 0, 900);
        check(hung("lines: 1, line: {to: [10 mm, 20 mm, 900 mm]}").far(), 10, 20, 900);
    }

    /// Lying, its side is 21 mm over its axis; upside down its base is on top.
    @Test
    void aLine_leavesAThingThatLies_throughItsSide() {
        check(hung("tilt: 90 deg, tied: [30 mm]").foot(), 30 - 59, 0, 159 + 21);
        check(hung("tilt: 90 deg, tied: [100 mm]").foot(), 100 - 59, 0, 159 + 10);
        check(hung("tilt: 180 deg, tied: [30 mm]").foot(), 0, 0, 218);
    }

    /// At 45 deg from 80 mm it comes to the shoulder, 10 mm on and 10 mm off the axis, as it leaves the neck's radius.
    @Test
    void aSlantingLine_leavesWhereItIsOutside() {
        Strand.Ends neck = hung("tied: [85 mm], line: {to: [815 mm, 0 mm, 1000 mm]}");
        check(neck.foot(), 10, 0, 195);
        Strand.Ends shoulder = hung("tied: [75 mm], line: {to: [825 mm, 0 mm, 1000 mm]}");
        check(shoulder.foot(), 15, 0, 190);
        Strand.Ends side = hung("tied: [60 mm], line: {to: [840 mm, 0 mm, 1000 mm]}");
        check(side.foot(), 21, 0, 181);
    }

    /// Held down to the floor: straight down through its base.
    @Test
    void aLine_mayGoDown() {
        Strand.Ends down = hung("lines: 1, line: {to: 8 mm}");
        check(down.foot(), 0, 0, 100);
        check(down.far(), 0, 0, 8);
    }

    @Test
    void aRig_comesFromTheMiddle_orFromWhereItIsWritten() {
        String rig = "rig: {diameter: 6 mm, to: [0 mm, 300 mm, 159 mm]}";
        check(hung(rig).foot(), 0, 21, 159);
        check(hung(rig).far(), 0, 300, 159);
        String high = "rig: {diameter: 6 mm, from: 100 mm, to: [0 mm, 300 mm, 200 mm]}";
        check(hung(high).foot(), 0, 10, 200);
    }

    /// Half a turn on its plate brings a rod behind it before it; a slide takes line and rod along.
    @Test
    void whatCarriesTheThing_carriesTheOtherEnds() {
        String place =
                "place: {hero: {thing: flacon, at: [0 mm, 0 mm, 100 mm], lines: 1, line: {to: [5 mm, 0 mm, 900 mm]},"
                        + " rig: {diameter: 6 mm, to: [0 mm, 300 mm, 159 mm]}}}";
        String spin = "moves: {spin: {machine: plate, carries: hero, by: 180 deg, in: 1 s, profile: even}}";
        check(ends(0, 24, Staged.CAMERA, place, spin, "frames: 48").far(), -5, 0, 900);
        check(ends(1, 24, Staged.CAMERA, place, spin, "frames: 48").far(), 0, -300, 159);
        check(ends(1, 24, Staged.CAMERA, place, spin, "frames: 48").foot(), 0, -21, 159);
        String slide = "moves: {carry: {machine: slider, carries: hero, by: [40 mm, 0 mm], in: 1 s, profile: even}}";
        check(ends(0, 12, Staged.CAMERA, place, slide, "frames: 48").far(), 25, 0, 900);
        String camera = "moves: {slide: {machine: slider, by: [40 mm, 0 mm], in: 1 s, profile: even}}";
        check(ends(0, 12, Staged.CAMERA, place, camera, "frames: 48").far(), 5, 0, 900);
    }

    @Test
    void everyTie_isALine() {
        Stage stage = Staged.stage(
                Staged.CAMERA,
                "place: {hero: {thing: flacon, at: [0 mm, 0 mm, 100 mm], tied: [30 mm, 100 mm],"
                        + " rig: {diameter: 6 mm, to: [0 mm, 300 mm, 159 mm]}}}");
        assertThat(Strand.listAll(stage).stream().map(Strand::name))
                .containsExactly("hero-line", "hero-line-2", "hero-rig");
    }
}
