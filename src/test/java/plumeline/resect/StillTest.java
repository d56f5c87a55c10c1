package plumeline.resect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.ByteBuffer;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.geom.Point;
import plumeline.plan.Plan;
import plumeline.sight.Extent;
import plumeline.sight.Sight;

final class StillTest {
    private static Still.Judged judge(int across, int down) {
        Plan plan = Sets.plan(Sets.THREE);
        return Still.judge(
                across,
                down,
                Sets.view(Sets.THREE).scene().picture(),
                plan.shots().getFirst(),
                plan.deliveries());
    }

    @Test
    void ratio_saysWhatAStillShows() {
        assertThat(judge(1920, 1080))
                .isInstanceOfSatisfying(
                        Still.Judged.Fits.class,
                        fits -> assertThat(fits.still().shows()).isEmpty());
        assertThat(judge(1080, 1920))
                .isInstanceOfSatisfying(
                        Still.Judged.Fits.class,
                        fits -> assertThat(fits.still().shows()).isEqualTo("tall"));
        assertThat(judge(1000, 1000))
                .isEqualTo(new Still.Judged.Unfit(List.of("16:9 (the whole picture)", "16:9 (wide)", "9:16 (tall)")));
    }

    @Test
    void pixels_countFromTheUpperLeft_ofTheCropToo() {
        var picture = Sets.view(Sets.THREE).scene().picture();
        Point corner = new Point(-picture.widthTangent() / 2, picture.heightTangent() / 2);
        assertThat(Sets.WHOLE.pixel(picture, corner).x()).isCloseTo(0, within(1e-9));
        assertThat(Sets.WHOLE.pixel(picture, corner).y()).isCloseTo(0, within(1e-9));
        Still tall = ((Still.Judged.Fits) judge(1080, 1920)).still();
        Point middle = tall.pixel(picture, new Point(0, 0));
        assertThat(middle.x()).isCloseTo(540, within(1e-9));
        assertThat(tall.pixel(picture, corner).x()).isCloseTo(540 - 1920 / 2.0 * 16 / 9, within(1e-6));
    }

    /// Of an upright cylinder its outline's sides are straight: no picture point of it is farther out than its rims'
    /// ends, by the outline room.
    @Test
    void rimsEnds_areTheOutlinesSides_throughATankToo() {
        for (String[] lines : List.of(Sets.THREE, Sets.TANK)) {
            StillView view = Sets.view(lines);
            Extent extent = Sight.extent(
                    view.scene().view(view.scene().things().getFirst()),
                    view.scene().things().getFirst());
            double left = view.still()
                    .pixel(view.scene().picture(), new Point(extent.left(), 0))
                    .x();
            double right = view.still()
                    .pixel(view.scene().picture(), new Point(extent.right(), 0))
                    .x();
            assertThat(Math.min(x(view, "first.top.left"), x(view, "first.base.left")))
                    .isCloseTo(left, within(0.3));
            assertThat(Math.max(x(view, "first.top.right"), x(view, "first.base.right")))
                    .isCloseTo(right, within(0.3));
        }
    }

    private static double x(StillView view, String name) {
        return ((Spotted.Seen) view.spot(view.find(name).orElseThrow())).pixel().x();
    }

    @Test
    void whatIsNotSeen_saysWhy() {
        StillView view = Sets.view(
                "camera: {body: main, lens: fifty, at: [0 mm, -900 mm, 60 mm], aim: first}",
                "place:",
                "  first: {thing: can, at: [0 mm, 0 mm], turn: 180 deg}",
                "  second: {thing: flacon, at: [0 mm, 100 mm]}");
        assertThat(why(view, "second.base.left")).isEqualTo("behind first");
        assertThat(why(view, "first.label.top_left")).isEqualTo("turned away");
        assertThat(Sets.seen(view)).hasSize(4);
    }

    private static String why(StillView view, String name) {
        return ((Spotted.Covered) view.spot(view.find(name).orElseThrow())).why();
    }

    @Test
    void jpeg_turnedByItsCamera_isReadAsLookedAt() {
        assertThat(StillFile.of(jpeg(6))).isEqualTo(new StillFile.Read("image/jpeg", 1080, 1920));
        assertThat(StillFile.of(jpeg(1))).isEqualTo(new StillFile.Read("image/jpeg", 1920, 1080));
        assertThat(StillFile.of(new byte[] {(byte) 0xff, (byte) 0xd8, (byte) 0xff}))
                .isEqualTo(new StillFile.Refused("a picture that ends in its head"));
        assertThat(StillFile.of("plumeline: 1".getBytes(java.nio.charset.StandardCharsets.UTF_8)))
                .isEqualTo(new StillFile.Refused("neither a JPEG nor a PNG file"));
    }

    private static byte[] jpeg(int orientation) {
        ByteBuffer out = ByteBuffer.allocate(80);
        out.putShort((short) 0xffd8).putShort((short) 0xffe1).putShort((short) 34);
        out.put("Exif\0\0MM\0*".getBytes(java.nio.charset.StandardCharsets.US_ASCII))
                .putInt(8);
        out.putShort((short) 1).putShort((short) 274).putShort((short) 3).putInt(1);
        out.putShort((short) orientation).putShort((short) 0).putInt(0);
        out.putShort((short) 0xffc0).putShort((short) 17).put((byte) 8);
        out.putShort((short) 1080).putShort((short) 1920).put((byte) 3);
        return out.array();
    }
}
