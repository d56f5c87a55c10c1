package plumeline.rim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
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

    /// An empty glass: up to where sight would graze its inside (a ray keeps `n r sin`, so at the bore's share of the
    /// width) it is totally reflected there, past that it goes through; beside that border it swings aside so fast
    /// that it passes a lamp within less than half a hundredth of the width. Looked at in 60,000 places by angles.
    @ParameterizedTest
    @CsvSource({"0.110", "0.103", "0.096", "0.086", "0.05"})
    void lamp_beforeAndBehindTheBoresBorder_isSeenInTwo(double wide) {
        double bore = 0.02743;
        ClearRound glass = new ClearRound(ROD, R - bore, new Indices(1, INDEX, 1.333), -1);
        Vec eye = new Vec(0, -DISTANCE, 0.5);
        GlassView view = new GlassView(
                new Body(ROD, Pose.at(0, 0)), glass, Aim.toward(eye, new Vec(0, 0, 0.5)), 0.5, (_, _) -> true);
        Vec middle = new Vec(-0.244, 0.323, 0.5);
        Vec facing = new Vec(0.603, -0.798, 0).unit();
        Panel lamp = new Panel(middle, facing, new Vec(facing.y(), -facing.x(), 0), wide, 0.5, 100);
        List<Span> expected = new ArrayList<>();
        double begins = -1;
        for (double share = 1e-5; share < 0.12; share += 2e-6) {
            double across = met(share, bore, middle, facing);
            boolean isLit = Math.abs(across) < wide / 2;
            if (isLit != begins >= 0) {
                if (!isLit) {
                    expected.add(new Span(begins, share));
                }
                begins = isLit ? share : -1;
            }
        }
        List<Span> seen = view.listStretches(lamp, 0, 0, 1).stream()
                .filter(span -> span.to() < 0.12)
                .toList();
        assertThat(seen).hasSameSizeAs(expected);
        for (int i = 0; i < seen.size(); i++) {
            assertThat(seen.get(i).from()).isCloseTo(expected.get(i).from(), within(5e-6));
            assertThat(seen.get(i).to()).isCloseTo(expected.get(i).to(), within(5e-6));
        }
    }

    /// How far beside a lamp's middle sight meets its plane, m; far beside it where it goes the other way.
    private static double met(double share, double bore, Vec middle, Vec facing) {
        double half = Math.tan(Math.asin(R / DISTANCE));
        double aside = Math.atan((2 * share - 1) * half);
        double keeps = DISTANCE * Math.sin(aside);
        double in = Math.asin(keeps / R);
        double bent = Math.asin(keeps / R / INDEX);
        double within = Math.asin(Math.max(-1, keeps / bore / INDEX));
        boolean passesBy = Math.abs(keeps) > bore * INDEX;
        boolean isThrough = Math.abs(keeps) < bore;
        double there = isThrough ? Math.asin(keeps / bore) : 0;
        double round = passesBy ? Math.PI - 2 * bent : 2 * (within - bent) + (isThrough ? Math.PI - 2 * there : 0);
        double heading = passesBy
                ? aside - 2 * (in - bent)
                : aside - 2 * (in - bent) + (isThrough ? 2 * (there - within) : Math.PI - 2 * within);
        double exit = -Math.PI / 2 + (in - aside) + round;
        Vec place = new Vec(R * Math.cos(exit), R * Math.sin(exit), 0.5);
        Vec way = new Vec(Math.sin(heading), Math.cos(heading), 0);
        double far = middle.minus(place).dot(facing) / way.dot(facing);
        Vec at = place.plus(way.times(far)).minus(middle);
        return far > 0 && way.dot(facing) < 0 ? at.dot(new Vec(facing.y(), -facing.x(), 0)) : 1e9;
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
