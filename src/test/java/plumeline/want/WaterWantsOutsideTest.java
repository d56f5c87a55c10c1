package plumeline.want;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;

/// Wants on water against figures that aren't ours.
final class WaterWantsOutsideTest {
    /// 355 ml of drink, 13.0 ml of vapour space by the can's sheet, 13 g of aluminium of 2.71 g/ml.
    private static String can(double gramsAMillilitre) {
        return "diameter: 66.09 mm, height: 122.22 mm, displaces: 372.8 ml, empty_mass: 13 g, contents:"
                + " {volume: 355 ml,"
                + " density: " + gramsAMillilitre + " g/ml}";
    }

    @Test
    @Outside(
            source = "Can Manufacturers Institute, 202 beverage can and end specifications; sugar: CRC Handbook,"
                    + " 102nd ed.,"
                    + " 11 % sucrose 1.0423 g/ml; empty can 13 g: International Aluminium Institute",
            place = "sheet; table of concentrative properties",
            kind = "measurement",
            printedDigits = 4)
    void aSealedCan_floatsWithoutSugar_andSinksWithIt() {
        assertThat(Wet.of(can(0.999), "", "{stays_under: hero}").margin()).isEqualTo(-4.5, within(0.1));
        assertThat(Wet.of(can(1.0423), "", "{stays_under: hero}").margin()).isEqualTo(10.9, within(0.1));
    }

    /// Opened, drained and flooded: 13 g less the water that its wall displaces.
    @Test
    @Outside(
            source = "Archimedes; aluminium can of 13 g: International Aluminium Institute, packaging page",
            kind = "closed form")
    void anOpenedCan_sinksFlooded_andFloatsOnAFewMillilitresOfAir() {
        String open = "diameter: 66.09 mm, height: 122.22 mm, displaces: 372.8 ml, empty_mass: 13 g, closed: no, wall:"
                + " {density: 2.71 g/ml}, air: ";
        assertThat(Wet.of(open + "0 ml", "", "{stays_under: hero}").margin()).isEqualTo(8.21, within(0.01));
        assertThat(Wet.of(open + "8.2 ml", "", "{stays_under: hero}").margin()).isPositive();
        assertThat(Wet.of(open + "8.3 ml", "", "{stays_under: hero}").margin()).isNegative();
    }

    /// A cylinder of 0.65 of the water's density and 100 mm across.
    private static Wet cylinder(double millimetres) {
        double grams = 0.65 * 0.998207 * Math.PI * 25 * millimetres / 10;
        return Wet.of(
                "diameter: 100 mm, height: " + millimetres + " mm, mass: " + grams + " g, centre_of_mass: "
                        + millimetres / 2 + " mm",
                "",
                "{upright: hero}");
    }

    @Test
    @Outside(
            source = "worked example of a hydraulics board-exam page: a solid cylinder of specific gravity 0.65 floats"
                    + " upright up to L/D = 0.741",
            kind = "worked example",
            printedDigits = 3)
    void aFloatingCylinder_staysUprightUpToItsGreatestLength() {
        assertThat(cylinder(73.5).margin()).isEqualTo(3, within(1e-9));
        assertThat(cylinder(75.5).margin()).isNegative();
    }

    @Test
    @Outside(
            source = "Stilwell, Calculating Glass Thickness for Aquariums, Aquarium World, February 2001, spreadsheet"
                    + " example: 3000 x 1000 mm held on four edges, 19 mm, water of 1e-5 H N/mm2, safety 1.873",
            kind = "worked example",
            printedDigits = 4)
    void aRimmedTank_hasTheAquariumTradesFactor() {
        String place = "inside: [450 mm, 300 mm, 300 mm], pane: 8 mm";
        String large = "inside: [3000 mm, 900 mm, 1000 mm], pane: 19 mm, rim: yes, floor_support: full";
        String text = "diameter: 42 mm, height: 118 mm";
        Wet wet = Wet.changed(text, "", "{tank_carries: glass}", place, large);
        // The page takes 10 kN/m3 for water of 9.789 kN/m3; its table of coefficients is good to 2 %.
        double full = 1.873 * 10 / 9.789;
        Wet brimful = new Wet(Wanted.read(wet.plan().source().text().replace("water: 260 mm", "water: 1000 mm")));
        assertThat(brimful.margin() + 3.8).isEqualTo(full, within(0.02 * full));
    }

    @Test
    @Outside(
            source =
                    "ASHRAE Handbook Fundamentals 2017, chapter 1, table 3: saturation 872.6 Pa at 5 degC, 3169.7 Pa at"
                            + " 25 degC, so that air of 25 degC and 27.53 % has its dew point at 5 degC",
            kind = "standard",
            printedDigits = 4)
    void dew_beginsAtTheTablesDewPoint() {
        String air = "temperature: 20 degC, humidity: 50 %";
        String damp = "temperature: 25 degC, humidity: " + 100 * 872.6 / 3169.7 + " %";
        String thing = "diameter: 66 mm, height: 122 mm, temperature: 3 degC";
        assertThat(Wet.changed(thing, "", "{sweats: hero}", air, damp).margin()).isEqualTo(2, within(0.02));
        assertThat(Wet.changed(thing, "", "{stays_dry: hero}", air, damp).margin())
                .isEqualTo(-2, within(0.02));
    }

    /// Half-angle sums of a cap, and 24/π³ of σ d hysteresis: 4.36 mm on a lacquered can, 1.99 mm on a waxed one.
    @Test
    @Outside(
            source = "Furmidge 1962 with ElSherbini and Jacobi's factor 24/pi^3 (2006, from memory), summed"
                    + " apart from this"
                    + " program: 4.36 mm at 80/50 deg, 1.99 mm at 110/95 deg",
            kind = "closed form",
            printedDigits = 3)
    void drops_stayUpToFurmidgesSize() {
        String can = "diameter: 66 mm, height: 122 mm, surface: ";
        String want = "{beads_stay: hero, size: 1 mm}";
        assertThat(Wet.of(can + "{advancing: 80 deg, receding: 50 deg}", "", want)
                                .margin()
                        + 1)
                .isEqualTo(4.36, within(0.05));
        assertThat(Wet.of(can + "{advancing: 110 deg, receding: 95 deg}", "", want)
                                .margin()
                        + 1)
                .isEqualTo(1.99, within(0.03));
    }

    @Test
    @Outside(
            source = "similar triangles: 0.25 mm where the picture is 200 mm wide and 3840 px across show 4.80 px",
            kind = "closed form",
            printedDigits = 3)
    void aLine_showsItsShareOfThePicturesWidth() {
        // A 100 mm lens has a field of 200 mm on 36 mm from 100 (1 + 200/36) mm.
        double distance = 100 * (1 + 200 / 36.0);
        Wet wet = Wet.changed(
                "diameter: 42 mm, height: 118 mm",
                "lines: 1, line: {diameter: 0.25 mm}",
                "{line_hidden: hero}",
                "at: [0 mm, -1100 mm, 139 mm], aim: ahead, focus: hero}\n    tank: {tank: glass, at: [0 mm, 30 mm]",
                "at: [0 mm, -" + distance
                        + " mm, 180 mm], aim: ahead, focus: hero}\n    tank: {tank: glass, at: [900 mm," + " 30 mm]");
        assertThat(1 - wet.margin()).isEqualTo(4.80, within(0.005));
    }
}
