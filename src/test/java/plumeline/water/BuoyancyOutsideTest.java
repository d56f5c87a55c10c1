package plumeline.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.geom.Vec;
import plumeline.tidy.Outside;

/// Floating and hanging against published examples and what the trade knows.
final class BuoyancyOutsideTest {
    private static final double WATER = 998.207;
    private static final double NEWTONS_PER_GRAM = 9.80665e-3;
    private static final Hold FREE = new Hold.Free();

    private static double metacentricMetres(Form form, double massKilograms, double centreMetres, double water) {
        Vessel vessel = new Vessel(form, new Vessel.Shell(massKilograms, centreMetres), new Vessel.Inside.Solid());
        return Attitudes.uprightStiffness(vessel, water, FREE) / (massKilograms * 9.80665);
    }

    private static void checkCylinder(double diameter, double height, double specific, double metres, double within) {
        Turned form = Turned.cylinder(diameter / 2, height);
        double mass = form.whole().volumeMetres3() * specific * 1000;
        assertThat(metacentricMetres(form, mass, height / 2, 1000)).isCloseTo(metres, within(within));
    }

    @Test
    @Outside(
            source = "worked examples of the metacentric height of solid cylinders, three teaching pages for civil"
                    + " engineers (D 3 m, H 2 m, 0.7; D 4, H 4, 0.6; D 0.80, L 1.0, 0.65)",
            place = "GM",
            kind = "worked example",
            printedDigits = 3)
    void cylinders_haveThePrintedMetacentricHeights() {
        checkCylinder(3, 2, 0.7, 0.1017, 0.0002);
        checkCylinder(4, 4, 0.6, -0.383, 0.0005);
        checkCylinder(0.80, 1.0, 0.65, -0.114, 0.001);
    }

    @Test
    @Outside(
            source = "hydraulics board-exam page: greatest L/D of a cylinder that floats upright, 0.65",
            place = "answer 0.741",
            kind = "worked example",
            printedDigits = 3)
    void cylinder_greatestSlenderness_isWhereItBeginsToFall() {
        assertThat(list(Turned.cylinder(0.5, 0.740), 0.65).getFirst().tiltRadians())
                .isZero();
        assertThat(list(Turned.cylinder(0.5, 0.742), 0.65).getFirst().tiltRadians())
                .isGreaterThan(0.001);
    }

    private static List<Attitudes.Attitude> list(Turned form, double specific) {
        Portion whole = form.whole();
        Vessel.Shell shell = new Vessel.Shell(
                whole.volumeMetres3() * specific * 1000, whole.centroid().z());
        return Attitudes.list(new Vessel(form, shell, new Vessel.Inside.Solid()), 1000, FREE);
    }

    @Test
    @Outside(
            source = "I/V − BG for a box 4 × 2 × 1 m at 0.6 m draught, rolled about its length (a public page that"
                    + " divides by the whole volume prints 0.1333)",
            place = "0.3556 m",
            kind = "closed form",
            printedDigits = 4)
    void box_hasItsMetacentricHeight() {
        Block box = new Block(2, 4, 1);
        assertThat(metacentricMetres(box, 4 * 2 * 0.6 * 1000, 0.5, 1000)).isCloseTo(0.3556, within(0.0005));
    }

    @Test
    @Outside(
            source = "Ship Stability for Masters and Mates, ch. 20: virtual loss of GM = (i/V)(ρ1/ρ2)",
            place = "loss by a free surface",
            kind = "closed form")
    void freeSurface_takesItsShareOfTheStiffness() {
        double r = 0.05;
        Turned hull = Turned.cylinder(r, 0.10);
        Turned cavity = Turned.cylinder(0.04, 0.08);
        double liquid = cavity.whole().volumeMetres3() / 2;
        Vessel with = new Vessel(hull, new Vessel.Shell(0.2, 0.02), new Vessel.Inside.Filled(cavity, liquid, 900));
        double mass = 0.2 + liquid * 900;
        double centre = (0.2 * 0.02 + liquid * 900 * 0.02) / mass;
        double frozen = metacentricMetres(hull, mass, centre, WATER) * mass * 9.80665;
        double loss = 900 * 9.80665 * Math.PI * Math.pow(0.04, 4) / 4;
        assertThat(Attitudes.uprightStiffness(with, WATER, FREE)).isCloseTo(frozen - loss, within(1e-5));
    }

    /// The 355 ml can of the can makers' sheet (202/211): body 66.09 mm, 13 g of metal, 13.0 ml of vapour space.
    private static Vessel can(double liquidDensity, Vessel.Hollow hollow) {
        double wall = 0.013 / 2710;
        double outside = 355e-6 + 13.0e-6 + wall;
        Turned hull = Turned.cylinder(Math.sqrt(outside / 0.115 / Math.PI), 0.115);
        Turned cavity = hull.scaled(Math.cbrt(1 - wall / outside), 0.0575);
        return new Vessel(
                hull,
                new Vessel.Shell(0.013, 0.0575),
                new Vessel.Inside.Filled(cavity, 355e-6, liquidDensity),
                hollow,
                List.of());
    }

    @Test
    @Outside(
            source = "Can Manufacturers Institute sheet 202/211, CRC Handbook 102nd ed. (sucrose 11 mass %: 1.0423),"
                    + " CRC aluminium; what classroom pages show: the sugar-free can floats, the sugared one sinks",
            place = "4.5 gf and -10.9 gf, ± 3",
            kind = "standard",
            printedDigits = 2)
    void sealedCan_sugarFreeFloats_sugaredSinks() {
        Vessel free = can(999, new Vessel.Hollow.Flat());
        Vessel sugared = can(1042.3, new Vessel.Hollow.Flat());
        assertThat(Buoyancy.netLiftNewtons(free, WATER) / NEWTONS_PER_GRAM).isCloseTo(4.5, within(0.1));
        assertThat(Buoyancy.netLiftNewtons(sugared, WATER) / NEWTONS_PER_GRAM).isCloseTo(-10.9, within(0.1));
        assertThat(Buoyancy.shareUnder(free, WATER)).isBetween(0.98, 0.995);
        double wall = 0.013 / 2710;
        double most = Buoyancy.mostAirMetres3(368e-6, 368e-6 + wall, 0.013, 999, WATER);
        assertThat(most * 1e6).isCloseTo(13.0 - 4.5 / 0.999, within(0.1));
    }

    @Test
    @Outside(
            source = "Archimedes on 13 g of aluminium at 2710: 8.21 gf, 8.23 ml of air lift it again",
            place = "arithmetic",
            kind = "closed form",
            printedDigits = 3)
    void floodedCan_sinks_andALittleAirLiftsItByItsTop() {
        Vessel flooded = Buoyancy.flooded(can(999, new Vessel.Hollow.Flat()), WATER);
        assertThat(Buoyancy.netLiftNewtons(flooded, WATER)).isCloseTo(-0.0805, within(0.0005));
        double room = ((Vessel.Inside.Filled) flooded.inside()).cavity().whole().volumeMetres3();
        assertThat(Buoyancy.mostAirMetres3(room, room + 0.013 / 2710, 0.013, WATER, WATER) * 1e6)
                .isCloseTo(8.23, within(0.02));
        for (double air : new double[] {7e-6, 10e-6}) {
            Vessel.Inside inside = new Vessel.Inside.Filled(Turned.cylinder(0.032, 0.114), 0, WATER);
            double all = inside instanceof Vessel.Inside.Filled filled ? filled.airMetres3() : 0;
            Vessel nearly = flooded.holding(new Vessel.Inside.Filled(Turned.cylinder(0.032, 0.114), all - air, WATER));
            Vessel same = new Vessel(
                    Turned.cylinder(0.032 * Math.sqrt((all + 0.013 / 2710) / all * 114 / 115), 0.115),
                    nearly.shell(),
                    nearly.inside());
            assertThat(Buoyancy.netLiftNewtons(same, WATER) > 0).isEqualTo(air > 8.23e-6);
            // A thin layer runs to the rim, so what is under leans; afloat the flat top steadies it. Top up either way.
            Attitudes.Rest rest = Attitudes.settle(same, WATER, FREE, 0);
            assertThat(rest).isInstanceOfSatisfying(Attitudes.Rest.At.class, at -> {
                assertThat(at.attitude().end()).isEqualTo(Attitudes.End.TOP);
                assertThat(Math.toDegrees(at.attitude().tiltRadians())).isBetween(air > 8.23e-6 ? 0.0 : 1.0, 20.0);
            });
        }
    }

    @Test
    @Outside(
            source = "moments about the tie, k = W(zA − zG) − F(zA − zB) − ρ·g·i; can of H 115 mm, r 32.6 mm, 13 g",
            place = "hung from its rim 0.00463; with 7 ml under the base -0.00298; 105 mm of water and 40 g of lead"
                    + " 0.0375; held at its base with 110 mm of water 0.0051",
            kind = "closed form",
            printedDigits = 2)
    void hungCan_isAsStiffAsTheMomentsSay() {
        double r = 0.0326;
        Turned cavity = Turned.cylinder(r, 0.115);
        // The metal's own volume is spread over the skin: a hull a little longer at both ends.
        double skin = 0.013 / 2710 / (Math.PI * r * r);
        Turned hull = FormTest.turned(-skin / 2, r, 0.115 + skin / 2, r);
        Vessel.Shell shell = new Vessel.Shell(0.013, 0.0575);
        Hold top = new Hold.Tied(0.115);
        Vessel flooded = new Vessel(
                hull, shell, new Vessel.Inside.Filled(cavity, cavity.whole().volumeMetres3(), WATER));
        assertThat(Attitudes.uprightStiffness(flooded, WATER, top)).isCloseTo(0.00463, within(0.00005));

        // 7 ml under the base, its centre at 4 mm: a pocket that can't shift is a ball of air there.
        Vessel.Ballast bubble = new Vessel.Ballast(7e-6 * 1.2, 1.2, 0.004, Vessel.Ballast.Where.OUTSIDE);
        assertThat(Attitudes.uprightStiffness(flooded.with(bubble), WATER, top)).isCloseTo(-0.00298, within(0.0001));

        // The lead's middle is 5 mm up: a lump on the base.
        Vessel lead = new Vessel(hull, shell, new Vessel.Inside.Filled(cavity, Math.PI * r * r * 0.105, WATER))
                .with(new Vessel.Ballast(0.040, 1e9, 0.005, Vessel.Ballast.Where.INSIDE));
        assertThat(-Buoyancy.netLiftNewtons(lead, WATER)).isCloseTo(0.146, within(0.005));
        assertThat(Attitudes.uprightStiffness(lead, WATER, top)).isCloseTo(0.0375, within(0.0012));

        Vessel held = new Vessel(hull, shell, new Vessel.Inside.Filled(cavity, Math.PI * r * r * 0.110, WATER));
        assertThat(-Buoyancy.netLiftNewtons(held, WATER)).isCloseTo(-0.083, within(0.004));
        assertThat(Attitudes.uprightStiffness(held, WATER, new Hold.Tied(0))).isCloseTo(0.0051, within(0.0003));
    }

    @Test
    @Outside(
            source = "what the trade knows: air under a hollow base turns a can over",
            place = "",
            kind = "common practice")
    void airUnderAHollowBase_turnsTheHungCanOver() {
        Turned recess = FormTest.turned(0, 0.024, 0.005, 0.018, 0.010, 0);
        double room = recess.whole().volumeMetres3();
        assertThat(room).isGreaterThan(7e-6);
        double r = 0.0326;
        double skin = 0.013 / 2710 / (Math.PI * r * r);
        double floor = room / (Math.PI * r * r);
        Turned hull = FormTest.turned(-skin / 2, r, 0.115 + skin / 2, r);
        Turned cavity = FormTest.turned(floor, r, 0.115, r);
        Vessel airy = new Vessel(
                hull,
                new Vessel.Shell(0.013, 0.0575),
                new Vessel.Inside.Filled(cavity, cavity.whole().volumeMetres3(), WATER),
                new Vessel.Hollow.Under(recess, 7e-6),
                List.of());
        Vessel wet = Buoyancy.flooded(airy, WATER);
        assertThat(Buoyancy.netLiftNewtons(wet, WATER)).isCloseTo(-0.0805, within(0.0005));
        assertThat(Attitudes.uprightStiffness(wet, WATER, new Hold.Tied(0.115))).isPositive();
        Hold top = new Hold.Tied(0.115);
        assertThat(Attitudes.uprightStiffness(airy, WATER, top)).isNegative();
        assertThat(Attitudes.list(airy, WATER, top).getFirst().tiltRadians()).isGreaterThan(Math.toRadians(5));
    }

    @Test
    @Outside(
            source = "weights under water: 200 g of glass 1.178 N; 10 gf needs 10.97 g of lead, 11.46 g of steel",
            place = "arithmetic with densities of EN 572-1 and handbooks",
            kind = "closed form",
            printedDigits = 4)
    void weightsUnderWater() {
        double tenGrams = 10 * NEWTONS_PER_GRAM;
        assertThat(Buoyancy.ballastKilograms(tenGrams, 11340, WATER) * 1e3).isCloseTo(10.97, within(0.05));
        assertThat(Buoyancy.ballastKilograms(tenGrams, 7850, WATER) * 1e3).isCloseTo(11.46, within(0.05));
        double volume = 0.2 / 2500;
        Vessel glass = new Vessel(
                Turned.cylinder(Math.sqrt(volume / 0.1 / Math.PI), 0.1),
                new Vessel.Shell(0.2, 0.05),
                new Vessel.Inside.Solid());
        assertThat(-Buoyancy.netLiftNewtons(glass, 998.2)).isCloseTo(1.178, within(0.005));
    }

    @Test
    @Outside(
            source = "IAPWS releases R10-06 (ice 916.721463) and G12-15 (water at 0 degC 999.84229)",
            place = "Tables 6 and 5",
            kind = "standard",
            printedDigits = 6)
    void ice_floatsWithATwelfthAbove() {
        Block ice = new Block(0.03, 0.03, 0.03);
        Vessel cube = new Vessel(ice, new Vessel.Shell(916.721463 * 27e-6, 0.015), new Vessel.Inside.Solid());
        assertThat(1 - Buoyancy.shareUnder(cube, 999.84229)).isCloseTo(0.0831, within(0.0005));
    }

    @Test
    @Outside(
            source = "thin can of neutral density under water stands where h(H − h) ≥ r²/2 (free surface against"
                    + " centre of mass): 4.82 mm for H 115 mm, r 32.6 mm",
            place = "own derivation of the reference",
            kind = "closed form",
            printedDigits = 3)
    void headspace_fromWhichANeutralCanStands() {
        assertThat(neutralStiffness(0.0047)).isNegative();
        assertThat(neutralStiffness(0.0050)).isPositive();
    }

    private static double neutralStiffness(double headspaceMetres) {
        double r = 0.0326;
        Turned form = Turned.cylinder(r, 0.115);
        double liquid = Math.PI * r * r * (0.115 - headspaceMetres);
        Vessel can = new Vessel(form, new Vessel.Shell(1e-9, 0.0575), new Vessel.Inside.Filled(form, liquid, 1000));
        double neutral = can.massKilograms() / form.whole().volumeMetres3();
        return Attitudes.uprightStiffness(can, neutral * (1 - 1e-9), FREE);
    }

    @Test
    @Outside(
            source = "normal distribution tables: Φ(1) 0.8413, Φ(1.96) 0.9750, Φ(-2.5) 0.0062",
            place = "any table; from memory",
            kind = "standard",
            printedDigits = 4)
    void odds_areNormal() {
        double sigma = 1.959963984540054;
        assertThat(Buoyancy.oddsOfSinking(-1, sigma)).isCloseTo(0.8413, within(0.00005));
        assertThat(Buoyancy.oddsOfSinking(-1.96, sigma)).isCloseTo(0.9750, within(0.00005));
        assertThat(Buoyancy.oddsOfSinking(2.5, sigma)).isCloseTo(0.0062, within(0.00005));
        assertThat(Buoyancy.oddsOfSinking(-30, sigma)).isEqualTo(1);
        assertThat(Buoyancy.oddsOfSinking(30, sigma)).isZero();
    }

    @Test
    @Outside(
            source = "energy by summing 3 mm dice of a floating leaning can, in space, not through cut forms",
            place = "this test",
            kind = "other method")
    void floatingTilt_isWhereADicedBodysEnergyIsLeast() {
        Turned form = Turned.cylinder(0.03, 0.10);
        Vessel vessel = new Vessel(form, new Vessel.Shell(0.150, 0.03), new Vessel.Inside.Solid());
        List<Attitudes.Attitude> all = Attitudes.list(vessel, 1000, FREE);
        assertThat(all).isNotEmpty();
        double best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (double degrees = 0; degrees <= 180; degrees += 0.5) {
            double energy = dicedEnergy(degrees);
            if (energy < least) {
                least = energy;
                best = degrees;
            }
        }
        double lowest = Double.POSITIVE_INFINITY;
        double tilt = 0;
        for (Attitudes.Attitude each : all) {
            if (each.energyJoules() < lowest) {
                lowest = each.energyJoules();
                tilt = Math.toDegrees(each.tiltRadians());
            }
        }
        assertThat(tilt).isCloseTo(best, within(1.0));
        assertThat(lowest).isCloseTo(least, within(0.002));
    }

    /// Draught by sorting dice by height, energy by their sums.
    private static double dicedEnergy(double degrees) {
        double side = 0.0015;
        Vec up = FormTest.up(degrees);
        int across = 40;
        java.util.List<Double> heights = new java.util.ArrayList<>();
        for (int i = 0; i < across; i++) {
            for (int j = 0; j < across; j++) {
                double x = (i + 0.5) * side - 0.03;
                double y = (j + 0.5) * side - 0.03;
                if (x * x + y * y < 0.0009) {
                    for (double z = side / 2; z < 0.0999; z += side) {
                        heights.add(up.x() * x + up.z() * z);
                    }
                }
            }
        }
        heights.sort(null);
        double whole = Math.PI * 0.0009 * 0.1;
        int wet = (int) Math.round(0.150 / 1000 / whole * heights.size());
        double sum = 0;
        for (int i = 0; i < wet; i++) {
            sum += heights.get(i);
        }
        return 0.150 * 9.80665 * (up.z() * 0.03 - sum / wet);
    }
}
