package plumeline.want;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.plan.Plan;

/// `inside` where a picture is scaled, placed and turned in the finished one, against the rim of a can put through the
/// finished picture point by point.
final class ReframedTest {
    private static final String CAMERA =
            "camera: {body: main, lens: macro, at: [20 mm, -900 mm, 66 mm], aim: ahead, focus: 900 mm}";
    private static final String CAN = "place: {hero: {thing: can, at: [0 mm, 0 mm]}}";

    private static double margin(double frame, String delivery, String keys) {
        Plan plan = Wanted.plan(CAMERA, CAN, "wants: [{inside: " + delivery + ", when: " + (int) frame + " frames}]");
        String text = plan.source().text() + "cut: [{shot: one, frames: 40, reframe: [" + keys + "]}]\n";
        Plan cut = Wanted.read(text);
        return Wanted.least(cut, Wanted.want(cut), List.of(frame));
    }

    /// Per cent of the camera picture's width or height; free of keep-outs. Angles as seen, clockwise.
    private static double byPoints(double aspect, double scale, double placeX, double placeY, double degrees) {
        double image = Plain.image(100, 900);
        double height = Math.min(20.25, 36 / aspect);
        double width = height * aspect;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 20_000; i++) {
            double round = 2 * Math.PI * i / 20_000;
            for (double z : new double[] {0, 122}) {
                double deep = 900 + 33 * Math.sin(round);
                double x = image * (33 * Math.cos(round) - 20) / deep;
                double y = image * (z - 66) / deep;
                double turn = Math.toRadians(degrees);
                double across = (x * Math.cos(turn) + y * Math.sin(turn)) * scale + placeX * width;
                double up = (y * Math.cos(turn) - x * Math.sin(turn)) * scale + placeY * height;
                least = Math.min(least, 100 * (36 / 2.0 - Math.abs(x)) / 36);
                least = Math.min(least, 100 * (20.25 / 2 - Math.abs(y)) / 20.25);
                least = Math.min(least, 100 * (width / 2 - Math.abs(across)) / scale / 36);
                least = Math.min(least, 100 * (height / 2 - Math.abs(up)) / scale / 20.25);
            }
        }
        return least;
    }

    private static void check(double aspect, double scale, double placeX, double placeY, double degrees) {
        String delivery = aspect > 1 ? "wide" : "square";
        String keys = "{at: 0 frames, scale: " + 100 * scale + " %, place: [" + 100 * placeX + " %, " + 100 * placeY
                + " %], turn: " + degrees + " deg}";
        assertThat(margin(12, delivery, keys))
                .isCloseTo(byPoints(aspect, scale, placeX, placeY, degrees), within(1e-5));
    }

    @Test
    void scaledPlacedAndTurned_isAsPointByPoint() {
        check(16 / 9.0, 1, 0, 0, 0);
        check(16 / 9.0, 1.2, 0, 0, 0);
        check(16 / 9.0, 1.2, 0.12, 0.05, 0);
        check(1, 1.1, -0.08, 0.1, 0);
        check(16 / 9.0, 1, 0, 0, 9);
        check(16 / 9.0, 1.15, 0.03, 0.04, -14);
        check(1, 1.05, 0.02, 0.06, 30);
    }

    @Test
    void aStillShotThatIsReframed_isJudgedAtItsWorstFrame() {
        String keys = "{at: 0}, {at: 20, scale: 130 %}, {at: 39, scale: 100 %}";
        Plan plan = Wanted.plan(CAMERA, CAN, "wants: [{inside: wide}]");
        Plan cut = Wanted.read(plan.source().text() + "cut: [{shot: one, frames: 40, reframe: [" + keys + "]}]\n");
        assertThat(Wanted.stage(cut).isSteady()).isFalse();
        assertThat(Wanted.stage(plan).isSteady()).isTrue();
        double worst = Wanted.least(cut, Wanted.want(cut), List.of(0.0, 10.0, 20.0, 39.0));
        assertThat(worst).isCloseTo(byPoints(16 / 9.0, 1.3, 0, 0, 0), within(1e-5));
    }

    @Test
    void keysOfOneDelivery_leaveTheOthers() {
        Plan plan = Wanted.plan(CAMERA, CAN, "wants: [{inside: wide}]");
        Plan other = Wanted.read(
                plan.source().text() + "cut: [{shot: one, frames: 40, reframe: {square: [{at: 0, scale: 300 %}]}}]\n");
        assertThat(Wanted.least(other, Wanted.want(other), List.of(0.0)))
                .isEqualTo(Wanted.least(plan, Wanted.want(plan), List.of(0.0)));
    }
}
