package plumeline.cut.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.cut.StrictJson;
import plumeline.geom.Aim;
import plumeline.geom.Pose;
import plumeline.geom.Vec;
import plumeline.optics.LensModel;
import plumeline.stage.Picture;
import plumeline.tidy.Outside;

/// Figures of the standard: axes, angles of lenses, turns, in-betweens, and the form of the file.
@Outside(
        source = "glTF 2.0, Khronos Group, specification text and schemas; values worked out from it by hand",
        place = "reference/time.md, rows GL-01 to GL-08 and GL-10",
        kind = "standard",
        printedDigits = 7)
final class MovesGlbOutsideTest {
    /// A lens focused so far away that its picture is at its focal length.
    private static double heightRadians(double focalMillimetres, double wideMillimetres, double highMillimetres) {
        LensModel lens = new LensModel(focalMillimetres / 1000, 1);
        return SceneJson.heightRadians(
                new Picture(lens, wideMillimetres / 1000, highMillimetres / 1000, 5e-6, 8, 1e9, 1e9));
    }

    /// GL-06.
    @Test
    void angleOfThePicturesHeight() {
        double[][] rows = {
            {50, 36, 20.25, 0.3995965, 1.777778},
            {100, 36, 20.25, 0.2018122, 1.777778},
            {100, 36, 24, 0.2388579, 1.5}
        };
        int compared = 0;
        for (double[] row : rows) {
            assertThat(heightRadians(row[0], row[1], row[2])).isCloseTo(row[3], within(1e-7));
            assertThat(row[1] / row[2]).isCloseTo(row[4], within(1e-6));
            compared++;
        }
        assertThat(compared).isEqualTo(3);
    }

    /// GL-07: counter-clockwise about the upright is a turn to the left, which ours count as negative.
    @Test
    void turnsAboutTheUpright() {
        double[][] rows = {
            {30, 0, 0.2588190, 0, 0.9659258}, {90, 0, 0.7071068, 0, 0.7071068}, {-45, 0, -0.3826834, 0, 0.9238795}
        };
        int compared = 0;
        for (double[] row : rows) {
            Turn camera = Turn.of(new Aim(Vec.ZERO, -Math.toRadians(row[0]), 0));
            Turn thing = Turn.of(new Pose(Vec.ZERO, -Math.toRadians(row[0]), 0));
            for (Turn turn : List.of(camera, thing)) {
                assertThat(new double[] {turn.x(), turn.y(), turn.z(), turn.w()})
                        .containsExactly(new double[] {row[1], row[2], row[3], row[4]}, within(1e-7));
                compared++;
            }
        }
        assertThat(compared).isEqualTo(6);
    }

    /// GL-08: the reader's own in-between.
    @Test
    void inBetween_isHalfTheTurn() {
        double half = Math.sqrt(0.5);
        assertThat(GlbReader.slerp(new double[] {0, 0, 0, 1}, new double[] {0, half, 0, half}, 0.5))
                .containsExactly(new double[] {0, 0.3826834, 0, 0.9238795}, within(1e-7));
        assertThat(GlbReader.slerp(new double[] {0, 0, 0, 1}, new double[] {0, -half, 0, -half}, 0.5))
                .containsExactly(new double[] {0, 0.3826834, 0, 0.9238795}, within(1e-7));
    }

    /// GL-04 and GL-05: the reader plays what others may write, too.
    @Test
    void cubicInBetween() {
        double[] at = {0.25, 0.5, 0.75};
        double[] level = {0.09375, 0.3, 0.50625};
        double[] straight = {0.15, 0.3, 0.45};
        for (int i = 0; i < 3; i++) {
            assertThat(GlbReader.cubic(0, 0, 0.6, 0, 4, at[i])).isCloseTo(level[i], within(1e-12));
            assertThat(GlbReader.cubic(0, 0.15, 0.6, 0.15, 4, at[i])).isCloseTo(straight[i], within(1e-12));
        }
        assertThat(GlbReader.cubic(0, 0.3, 0.6, 0, 4, 0.5)).isCloseTo(0.45, within(1e-12));
    }

    /// GL-01: right is +x, up is +y, a camera looks along its own −z, so at a turn of 0 away from whoever holds it.
    @Test
    void axes() {
        assertThat(Turn.place(new Vec(1, 0, 0))).isEqualTo(new Vec(1, 0, 0));
        assertThat(Turn.place(new Vec(0, 0, 1))).isEqualTo(new Vec(0, 1, 0));
        assertThat(Turn.place(new Vec(0, 1, 0))).isEqualTo(new Vec(0, 0, -1));
        Turn ahead = Turn.of(new Aim(Vec.ZERO, 0, 0));
        double[] looks =
                GlbReader.turned(new double[] {ahead.x(), ahead.y(), ahead.z(), ahead.w()}, new double[] {0, 0, -1});
        assertThat(looks).containsExactly(new double[] {0, 0, -1}, within(1e-12));
    }

    /// GL-02, GL-03 and GL-10.
    @Test
    void formOfTheFile() {
        byte[] file = MovesGlb.listAll(MovedPlans.solved(MovedPlans.ALL_AXES))
                .getFirst()
                .bytes();
        ByteBuffer bytes = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
        assertThat(bytes.getInt(0)).isEqualTo(0x46546C67);
        assertThat(bytes.getInt(4)).isEqualTo(2);
        assertThat(bytes.getInt(8)).isEqualTo(file.length);
        assertThat(bytes.getInt(12) % 4).isZero();
        assertThat(bytes.getInt(16)).isEqualTo(0x4E4F534A);
        int second = 20 + bytes.getInt(12);
        assertThat(bytes.getInt(second) % 4).isZero();
        assertThat(bytes.getInt(second + 4)).isEqualTo(0x004E4942);
        GlbReader glb = new GlbReader(file);
        Object camera = StrictJson.at(glb.json, "cameras", 0);
        assertThat(StrictJson.text(camera, "type")).isEqualTo("perspective");
        assertThat(StrictJson.number(camera, "perspective", "zfar"))
                .isGreaterThan(StrictJson.number(camera, "perspective", "znear"));
        List<double[]> times = glb.figures((int) StrictJson.number(glb.json, "animations", 0, "samplers", 0, "input"));
        for (int i = 1; i < times.size(); i++) {
            assertThat(times.get(i)[0]).isGreaterThan(times.get(i - 1)[0]);
        }
    }
}
