package plumeline.rim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.light.Panel;
import plumeline.mirror.Spans.Span;
import plumeline.tidy.Outside;

/// Panels seen through a glass rod by a camera straight before it.
@Outside(source = "refraction twice at a round rod, any text on the rainbow; Fresnel straight on", kind = "closed form")
final class GlassViewOutsideTest {
    private static final double R = 0.03;
    private static final double INDEX = 1.52;
    private static final double DISTANCE = 0.8;
    private static final double BEHIND = 0.4;
    private static final Solid.Revolved ROD = Solid.cylinder(2 * R, 1);

    private static GlassView view(Vec eye) {
        ClearRound glass = new ClearRound(ROD, 2 * R, new Indices(1, INDEX, 1), -1);
        return new GlassView(
                new Body(ROD, Pose.at(0, 0)), glass, Aim.toward(eye, new Vec(0, 0, 0.5)), 0.5, (_, _) -> true);
    }

    private static GlassView front() {
        return view(new Vec(0, -DISTANCE, 0.5));
    }

    private static Panel panel(double low, double high) {
        return new Panel(
                new Vec((low + high) / 2, BEHIND, 0.5), new Vec(0, -1, 0), new Vec(-1, 0, 0), high - low, 0.5, 100);
    }

    /// Where on a plane behind the rod sight meets that passes the axis at h, by angles: in, bent, round by π − 2 r,
    /// out.
    private static double behind(double share) {
        double half = Math.tan(Math.asin(R / DISTANCE));
        double aside = Math.atan((2 * share - 1) * half);
        double in = Math.asin(DISTANCE * Math.sin(aside) / R);
        double bent = Math.asin(Math.sin(in) / INDEX);
        double entry = -Math.PI / 2 + (in - aside);
        double exit = entry + Math.PI - 2 * bent;
        double heading = aside - 2 * (in - bent);
        return R * Math.cos(exit) + (BEHIND - R * Math.sin(exit)) * Math.tan(heading);
    }

    @ParameterizedTest
    @CsvSource({"0.55, 0.62", "0.3, 0.45", "0.65, 0.8", "0.21, 0.79"})
    void panel_isSeenFromWhereToWhereTheLawSays(double from, double to) {
        // The rod turns sight over: what is at the left in the picture is at the right behind it.
        List<Span> seen = front().listStretches(panel(behind(to), behind(from)), 0, 0, 1);
        assertThat(seen).hasSize(1);
        assertThat(seen.getFirst().from()).isCloseTo(from, within(1e-6));
        assertThat(seen.getFirst().to()).isCloseTo(to, within(1e-6));
    }

    @Test
    void brightness_isTheLampsLessTwoFaces() {
        double face = Math.pow((INDEX - 1) / (INDEX + 1), 2);
        assertThat(front().brightness(panel(-1, 1), 0.499, 0.501))
                .isCloseTo(0.002 * 100 * Math.pow(1 - face, 2), within(1e-7));
    }

    @Test
    void rimsAreDimmed_byTheirTransmittance() {
        Panel all = new Panel(new Vec(0, BEHIND, 0.5), new Vec(0, -1, 0), new Vec(-1, 0, 0), 100, 100, 1);
        Span bright = front().listStretches(all, 0.25, 0, 1).getFirst();
        Passage.Out there = (Passage.Out) front().follow(bright.from());
        double in = Math.asin(
                DISTANCE * Math.sin(Math.atan((1 - 2 * bright.from()) * Math.tan(Math.asin(R / DISTANCE)))) / R);
        double bent = Math.asin(Math.sin(in) / INDEX);
        double s = Math.pow(Math.sin(in - bent) / Math.sin(in + bent), 2);
        double p = Math.pow(Math.tan(in - bent) / Math.tan(in + bent), 2);
        double passes = (Math.pow(1 - s, 2) + Math.pow(1 - p, 2)) / 2;
        assertThat(there.transmittance()).isCloseTo(passes, within(1e-9));
        boolean isByPanel = Math.abs(behind(bright.from())) > 49;
        assertThat(isByPanel || Math.abs(passes - 0.25) < 1e-6).isTrue();
    }

    @Test
    void lensOverTheGlass_orInIt_seesNothingKnown() {
        assertThat(front().isBefore()).isTrue();
        assertThat(view(new Vec(0.01, 0, 3)).isBefore()).isFalse();
    }
}
