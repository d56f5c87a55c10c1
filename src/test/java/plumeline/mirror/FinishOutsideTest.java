package plumeline.mirror;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.light.Panel;
import plumeline.light.Patch;
import plumeline.tidy.Outside;

/// How bright and how wide highlights are by finish.
@Outside(
        source = "error function, facets drawn by lot, Schlick 1994 from memory; each test names its own",
        kind = "closed form")
final class FinishOutsideTest {
    private static final Body CAN = new Body(Solid.cylinder(0.066, 1), Pose.at(0, 0));

    private static final Vec CAMERA = StripesOutsideTest.at(3000, 0, 500);

    private static final GlossyBody SEEN = GlossyBody.alone(CAN, Aim.toward(CAMERA, new Vec(0, 0, 0.5)));

    private static Panel panel(double degrees, double width) {
        return StripesOutsideTest.panel(StripesOutsideTest.at(3000, degrees, 500), new Vec(0, 0, 0.5), width, 30);
    }

    /// Over a square round its middle the bell is erf(a)²: erf 0.5 = 0.5204998778, erf 1 = 0.8427007929, erf 2 =
    /// 0.9953222650; over its corner quarter a quarter of erf(a)².
    @ParameterizedTest
    @CsvSource({"0.5, 0.5204998778", "1, 0.8427007929", "2, 0.9953222650"})
    @Outside(
            source = "Abramowitz and Stegun, Handbook of Mathematical Functions, table 7.1",
            kind = "table",
            printedDigits = 10)
    void bell_overSquares(double a, double erf) {
        assertThat(Lobe.share(new double[] {a, a, a, -a, -a, -a, -a, a})).isCloseTo(erf * erf, within(2e-6));
        assertThat(Lobe.share(new double[] {0, 0, 0, a, a, a, a, 0})).isCloseTo(erf * erf / 4, within(2e-6));
        double wide = Lobe.share(new double[] {a, -50, a, 50, 50, 50, 50, -50});
        assertThat(wide).isCloseTo((1 - erf) / 2, within(2e-6));
    }

    /// Facets drawn by lot, each a small mirror: as many show the panel as the bell says.
    @Test
    @Outside(source = "law of reflection on facets drawn by lot", kind = "closed form")
    void satin_isAsFacetsDrawnByLot() {
        Random random = new Random(4);
        Finish.Satin satin = new Finish.Satin(1.5, 0.15);
        Patch patch = new Patch(Vec.ZERO, new Vec(0, 0, 1));
        Vec camera = new Vec(0.3, -0.4, 0.8);
        Panel panel = StripesOutsideTest.panel(new Vec(-0.2, 0.5, 0.7), Vec.ZERO, 0.3, 0.2);
        int draws = 200_000;
        int shown = 0;
        for (int i = 0; i < draws; i++) {
            double deviation = 0.15 / Math.sqrt(2);
            Vec facet = new Vec(deviation * random.nextGaussian(), deviation * random.nextGaussian(), 1).unit();
            Vec toward = camera.unit();
            Vec onward = facet.times(2 * toward.dot(facet)).minus(toward);
            double on = panel.middle().dot(panel.facing()) / onward.dot(panel.facing());
            Vec met = onward.times(on).minus(panel.middle());
            boolean meets = on > 0 && Math.abs(met.dot(panel.right())) < 0.15 && Math.abs(met.dot(panel.up())) < 0.1;
            shown += meets ? 1 : 0;
        }
        assertThat(satin.share(panel, patch, camera)).isCloseTo((double) shown / draws, within(0.003));
    }

    /// On a can a thin line of light, far off, is half as bright where the surface has turned by m √(ln 2); a broad
    /// light ends where it does on gloss, and is as bright in its middle.
    @Test
    @Outside(source = "half-width of the Gaussian bell", kind = "closed form")
    void satinStripes() {
        Finish.Satin satin = new Finish.Satin(1.5, 0.1);
        Stripe thin = SEEN.listSatinStripes(0.5, panel(60, 0.002), satin).getFirst();
        double turned = Math.toRadians(azimuth(thin.right()) - azimuth(thin.left()));
        assertThat(turned / 2).isCloseTo(satin.halfWidthRadians(), within(0.02 * satin.halfWidthRadians()));
        Stripe blurred = SEEN.listSatinStripes(0.5, panel(60, 3), satin).getFirst();
        Stripe sharp = SEEN.listStripes(0.5, panel(60, 3)).getFirst();
        assertThat(blurred.leftShare()).isCloseTo(sharp.leftShare(), within(0.002));
        assertThat(blurred.rightShare()).isCloseTo(sharp.rightShare(), within(0.002));
        double bright = SEEN.findLuminance(sharp.middle(), panel(60, 3), satin).orElseThrow();
        double clear = SEEN.findLuminance(sharp.middle(), panel(60, 3), new Finish.Gloss(1.5))
                .orElseThrow();
        assertThat(bright / clear).isBetween(0.98, 1.0);
    }

    private static double azimuth(Spot spot) {
        return Math.toDegrees(Math.atan2(spot.place().y(), spot.place().x()));
    }

    /// A panel of 1000 cd/m² at 60 deg to gloss of index 1.5: 0.08919 of it (Smith eq. 11.1); on a mirror of 0.9 nearly
    /// all; on matte none. A highlight as bright as the body about it is one stop over it.
    @Test
    @Outside(source = "Smith, Modern Optical Engineering, 4th ed., eq. 11.1", kind = "closed form", printedDigits = 4)
    void brightness() {
        Spot spot = new Spot(Vec.ZERO, Vec.UP, Math.toRadians(60), 0);
        Panel panel = panel(60, 1);
        assertThat(SEEN.findLuminance(spot, panel, new Finish.Gloss(1.5)).orElseThrow())
                .isCloseTo(89.19, within(0.006));
        assertThat(SEEN.findLuminance(spot, panel, new Finish.Metal(0.9)).orElseThrow())
                .isCloseTo(900 + 100 / 32.0, within(1e-9));
        assertThat(SEEN.findLuminance(spot, panel, new Finish.Matte())).isEmpty();
        assertThat(Finish.stopsOver(0.5 * 1000 / Math.PI, 0.5, 1000)).isCloseTo(1, within(1e-12));
        assertThat(Finish.stopsOver(0, 0.5, 1000)).isZero();
    }

    @Test
    void outsideTheRanges_isRefused() {
        for (Runnable one : List.<Runnable>of(
                () -> new Finish.Satin(1.5, 0.6),
                () -> new Finish.Gloss(0.9),
                () -> new Finish.Metal(1.1),
                () -> Finish.stopsOver(1, 0, 100))) {
            assertThatThrownBy(one::run).isInstanceOf(IllegalArgumentException.class);
        }
    }
}
