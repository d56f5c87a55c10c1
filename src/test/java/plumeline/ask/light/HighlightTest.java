package plumeline.ask.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumeline.ask.Asking.answer;
import static plumeline.ask.Asking.number;
import static plumeline.ask.Asking.problems;
import static plumeline.ask.Asking.spread;

import java.util.Random;
import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;
import plumeline.answer.Value;
import plumeline.answer.Verdict;

/// The question `highlight`.
final class HighlightTest {
    private static final String CAN = "thing: {diameter: 66 mm}\ncamera: {x: 0 mm, y: -961 mm}\n";

    /// A stripe from 75 to 90 % of the half-width wants a strip of 271 mm at 500 mm, 108 deg round (worked by a crew's
    /// sheet from the law of reflection).
    @Test
    void stripe_getsItsLight() {
        Answer answer = answer("highlight", CAN + "want: {from_left: 91.25 %, wide: 7.5 %}\nlight: {distance: 500 mm}");
        assertThat(number(answer, "width")).isCloseTo(271, within(1.0));
        assertThat(number(answer, "bearing")).isCloseTo(108, within(0.6));
        assertThat(number(answer, "left_edge")).isCloseTo(87.5, within(1e-6));
        assertThat(number(answer, "right_edge")).isCloseTo(95, within(1e-6));
        assertThat(answer.verdict()).isEqualTo(Verdict.HOLDS);
    }

    /// 70 to 85 % of the half-width, 600 mm off, camera far: about 289 mm wide, about 100 deg round.
    @Test
    void stripe_ofAFarCamera() {
        Answer answer = answer(
                "highlight",
                "thing: {diameter: 80 mm}\ncamera: {x: 0 mm, y: -50 m}\n"
                        + "want: {from_left: 88.75 %, wide: 7.5 %}\nlight: {distance: 600 mm}");
        assertThat(number(answer, "bearing")).isCloseTo(100, within(1.5));
        assertThat(number(answer, "width")).isCloseTo(289, within(6.0));
    }

    /// The inverse closes on the forward, by distance and by width, to either side.
    @Test
    void inverse_closesOnTheForward() {
        Random random = new Random(11);
        int closed = 0;
        for (int i = 0; i < 200; i++) {
            double x = 400 - 800 * random.nextDouble();
            double middle = 5 + 90 * random.nextDouble();
            double wide = Math.min(20 * random.nextDouble() + 0.5, 1.8 * Math.min(middle, 100 - middle));
            String camera = "thing: {diameter: 70 mm}\ncamera: {x: " + x + " mm, y: -700 mm}\n";
            String want = "want: {from_left: " + middle + " %, wide: " + wide + " %}\n";
            Answer placed = answer("highlight", camera + want + "light: {distance: 450 mm}");
            if (placed.getValue("width") instanceof Value.Word) {
                continue;
            }
            closed++;
            double from = Math.atan2(-700, x) + Math.toRadians(number(placed, "bearing"));
            Answer again = answer(
                    "highlight",
                    camera + "light: {x: " + 450 * Math.cos(from) + " mm, y: " + 450 * Math.sin(from) + " mm, width: "
                            + number(placed, "width") + " mm}");
            assertThat(number(again, "from_left")).isCloseTo(middle, within(1e-6));
            assertThat(number(again, "wide")).isCloseTo(wide, within(1e-6));
            Answer byWidth = answer("highlight", camera + want + "light: {width: " + number(placed, "width") + " mm}");
            assertThat(number(byWidth, "distance")).isCloseTo(450, within(1e-3));
        }
        assertThat(closed).isGreaterThan(150);
    }

    /// The inverse closes for stripes as wide as a flat light can give; wider ones have none.
    @Test
    void wideStripes_closeOrHaveNone() {
        int closed = 0;
        int none = 0;
        for (double wide = 25; wide < 99; wide += 1) {
            for (double middle : new double[] {50, 40, 65}) {
                if (middle - wide / 2 < 0 || middle + wide / 2 > 100) {
                    continue;
                }
                Answer placed = answer(
                        "highlight",
                        CAN + "want: {from_left: " + middle + " %, wide: " + wide + " %}\nlight: {distance: 300 mm}");
                if (placed.getValue("width") instanceof Value.Word) {
                    none++;
                    continue;
                }
                closed++;
                double from = Math.atan2(-961, 0) + Math.toRadians(number(placed, "bearing"));
                Answer again = answer(
                        "highlight",
                        CAN + "light: {x: " + 300 * Math.cos(from) + " mm, y: " + 300 * Math.sin(from) + " mm, width: "
                                + number(placed, "width") + " mm}");
                assertThat(number(again, "left_edge")).isCloseTo(middle - wide / 2, within(1e-4));
                assertThat(number(again, "right_edge")).isCloseTo(middle + wide / 2, within(1e-4));
            }
        }
        assertThat(closed).isGreaterThan(60);
        assertThat(none).isGreaterThan(20);
    }

    /// A light as wide as the thing is too wide for a third of its outline however near it stands: told, not put at the
    /// surface with a narrower stripe.
    @Test
    void widthsTooLargeForTheStripe_haveNone() {
        Answer answer = answer(
                "highlight",
                "thing: {diameter: 151.98 mm}\ncamera: {x: 1679 mm, y: 539 mm}\n"
                        + "want: {from_left: 17.3 %, wide: 34.3 %}\nlight: {width: 151.97 mm}");
        assertThat(answer.verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(answer.getValue("distance")).isEqualTo(new Value.Word("unknown"));
        assertThat(answer.notes().attempts()).anyMatch(text -> text.startsWith("No distance from the thing"));
    }

    /// Things within 9 deg of the lens fill the middle 8 % (common practice).
    @Test
    void whatStandsByTheLens_isTold() {
        assertThat(answer("highlight", CAN + "light: {x: 500 mm, y: 0 mm, width: 300 mm}")
                        .notes()
                        .because())
                .anyMatch(text -> text.startsWith("What stands within 9 deg of the lens") && text.contains(" 8 % "));
    }

    /// Turned away from the thing, or hidden behind it, a light has no mirror image; + bearings are to the camera's
    /// right, where the stripe then is.
    @Test
    void unseen_isUnknown_andSidesAgree() {
        Answer hidden = answer("highlight", CAN + "light: {x: 0 mm, y: 600 mm, width: 30 mm}");
        assertThat(hidden.verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(hidden.getValue("from_left")).isEqualTo(new Value.Word("unknown"));
        Answer away = answer("highlight", CAN + "light: {x: 500 mm, y: 0 mm, width: 300 mm, yaw: 90 deg}");
        assertThat(away.verdict()).isEqualTo(Verdict.UNKNOWN);
        Answer toward = answer("highlight", CAN + "light: {x: 500 mm, y: 0 mm, width: 300 mm, yaw: -90 deg}");
        assertThat(number(toward, "from_left")).isGreaterThan(50);
        assertThat(number(toward, "bearing")).isCloseTo(90, within(1e-9));
    }

    /// A wall of light behind the thing shows at both edges of the outline and not between: own rays from the camera,
    /// mirrored in the circle, tell which of them come to its front.
    @Test
    void lightFromBehind_showsAtBothEdges() {
        String wall = CAN + "light: {x: 100 mm, y: 400 mm, width: 1200 mm, yaw: 180 deg}";
        Answer answer = answer("highlight", wall);
        double right = -1;
        double left = 1;
        int dark = 0;
        for (int i = 1; i < 20000; i++) {
            double across = (i - 10000) / 10000.0;
            if (seesTheWall(across)) {
                left = across < 0 ? Math.max(left == 1 ? -1 : left, across) : left;
                right = across > 0 && right == -1 ? across : right;
            } else {
                dark++;
            }
        }
        assertThat(dark).isGreaterThan(10000);
        assertThat(number(answer, "left_edge")).isCloseTo(50 * (1 + right), within(0.01));
        assertThat(number(answer, "right_edge")).isEqualTo(100);
        String other = "another from 0 % to " + Math.rint(500 * (1 + left)) / 10 + " %;";
        assertThat(answer.notes().because()).anyMatch(text -> text.contains(other));
        Answer mirrored = answer("highlight", wall.replace("x: 100", "x: -100"));
        assertThat(number(mirrored, "left_edge")).isZero();
        assertThat(number(mirrored, "right_edge")).isCloseTo(100 - number(answer, "left_edge"), within(1e-6));
    }

    /// Whether a ray that the camera sends to a place across the outline goes on to y 400 mm, from x −500 to 700 mm.
    private static boolean seesTheWall(double across) {
        double aside = Math.atan(across * Math.tan(Math.asin(33.0 / 961)));
        double dx = Math.sin(aside);
        double dy = Math.cos(aside);
        double on = 961 * dy - Math.sqrt(33.0 * 33 - Math.pow(961 * dx, 2));
        double nx = on * dx / 33;
        double ny = (on * dy - 961) / 33;
        double into = dx * nx + dy * ny;
        double rx = dx - 2 * into * nx;
        double ry = dy - 2 * into * ny;
        double x = 33 * nx + rx * (400 - 33 * ny) / ry;
        return ry > 0 && x >= -500 && x <= 700;
    }

    /// A light that goes out of sight behind the thing past its right shows as a stripe to the right edge, though its
    /// other end is seen left of the middle.
    @Test
    void lightRoundOneSide_showsToThatEdge() {
        Answer answer = answer(
                "highlight",
                "thing: {diameter: 66 mm}\ncamera: {x: 0 mm, y: -70 mm}\n"
                        + "light: {x: 36.2 mm, y: -10 mm, width: 238.6 mm, yaw: -67.2 deg}");
        assertThat(number(answer, "left_edge")).isBetween(20.0, 50.0);
        assertThat(number(answer, "right_edge")).isEqualTo(100);
    }

    /// What is ± far more than the stripe is wide leaves neither the outline nor less than nothing.
    @Test
    void intervals_stayOnTheOutline() {
        Answer answer = answer(
                "highlight", CAN + "light: {x: 100 mm ± 300 mm, y: 400 mm ± 100 mm, width: 300 mm, yaw: 180 deg}");
        assertThat(spread(answer, "left_edge").high()).isEqualTo(100);
        assertThat(spread(answer, "wide").low()).isZero();
    }

    @Test
    void whatCannotBe_isRefused() {
        assertThat(problems("highlight", CAN + "light: {x: 10 mm, y: 0 mm, width: 30 mm}"))
                .hasSize(1);
        assertThat(problems("highlight", CAN + "light: {x: 500 mm, y: 0 mm}")).hasSize(1);
        assertThat(problems("highlight", CAN + "want: {from_left: 99 %, wide: 10 %}\nlight: {distance: 500 mm}"))
                .hasSize(1);
        assertThat(problems(
                        "highlight",
                        CAN + "want: {from_left: 60 %, wide: 10 %}\nlight: {distance: 500 mm, width: 300 mm}"))
                .hasSize(1);
    }
}
