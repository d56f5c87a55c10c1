package plumeline.resect;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import plumeline.quantity.PaperUnit;

final class ResectionTest {
    private static final double SIGMA = 2 / Normal.HALF_95;
    private static final Said SAID = new Said(PaperUnit.MILLIMETRES);

    private static double[] off(StillView view, Object... pairs) {
        List<Sought> sought = Unset.of(view, Allowance.USUAL).sought();
        double[] off = new double[sought.size()];
        for (int i = 0; i < pairs.length; i += 2) {
            off[Sets.index(sought, (String) pairs[i])] = (Double) pairs[i + 1];
        }
        return off;
    }

    private static double single(Findings findings, String mark) {
        return findings.singles().getFirst().offs().stream()
                .filter(one -> one.sought().name().equals(mark))
                .findFirst()
                .orElseThrow()
                .offSi();
    }

    private static String words(Findings findings) {
        return String.join("\n", SAID.of(findings));
    }

    @Test
    void exactClicks_tellTheCameraToATenthOfAMillimetre_andThroughATank() {
        for (String[] lines : List.of(Sets.THREE, Sets.TANK)) {
            StillView view = Sets.view(lines);
            double[] off = off(view, "camera.x", 0.012, "camera.z", -0.008);
            Findings found =
                    Sets.find(view, Sets.clicks(view, Sets.seen(view), off, 0, new Random(1)), Allowance.USUAL);
            assertThat(found.singles().getFirst().owner()).isEqualTo("camera");
            assertThat(single(found, "camera.x")).isCloseTo(0.012, within(1e-4));
            assertThat(single(found, "camera.y")).isCloseTo(0, within(1e-4));
            assertThat(single(found, "camera.z")).isCloseTo(-0.008, within(1e-4));
            assertThat(words(found)).contains("stands 12 mm too far right").contains("8.0 mm too low");
        }
    }

    @Test
    void exactClicks_tellAThingsPlaceAndTurn() {
        StillView view = Sets.view(Sets.THREE);
        double[] off = off(view, "second.x", 0.009, "second.y", -0.006, "second.turn", Math.toRadians(5));
        Findings found = Sets.find(view, Sets.clicks(view, Sets.seen(view), off, 0, new Random(1)), Allowance.USUAL);
        assertThat(found.singles().getFirst().owner()).isEqualTo("second");
        assertThat(single(found, "second.x")).isCloseTo(0.009, within(1e-4));
        assertThat(single(found, "second.y")).isCloseTo(-0.006, within(1e-4));
        assertThat(single(found, "second.turn")).isCloseTo(Math.toRadians(5), within(2e-3));
        assertThat(words(found))
                .contains("second alone is off")
                .contains("9.0 mm too far right")
                .contains("6.0 mm too far forward")
                .contains("turned 5.00 deg too far clockwise");
    }

    @Test
    void everythingOffByItsPlacingError_isWithinItsInterval_as95And80InAHundred() {
        for (String[] lines : List.of(Sets.THREE, Sets.TANK)) {
            for (int points : new int[] {3, 6, 14}) {
                StillView view = Sets.view(lines);
                int count = 0;
                int within95 = 0;
                int within80 = 0;
                for (int seed = 0; seed < 60; seed++) {
                    Random random = new Random(seed);
                    double[] off = off(view);
                    List<Sought> sought = Unset.of(view, Allowance.USUAL).sought();
                    for (int i = 0; i < off.length; i++) {
                        off[i] = random.nextGaussian() * sought.get(i).sigmaSi();
                    }
                    List<Landmark> places = shuffled(view, random).subList(0, points);
                    Findings found = Sets.find(view, Sets.clicks(view, places, off, SIGMA, random), Allowance.USUAL);
                    for (int i = 0; i < off.length; i++) {
                        Findings.Off one = found.offs().get(i);
                        count++;
                        within95 += Math.abs(one.offSi() - off[i]) <= one.halfSi() ? 1 : 0;
                        within80 += one.lowSi() <= off[i] && off[i] <= one.highSi() ? 1 : 0;
                    }
                }
                assertThat(within95 / (double) count).as(points + " points").isBetween(0.925, 0.985);
                assertThat(within80 / (double) count).as(points + " points").isBetween(0.76, 0.87);
            }
        }
    }

    /// Places that stay in the still however the set is off.
    private static List<Landmark> shuffled(StillView view, Random random) {
        List<Landmark> places = new ArrayList<>(Sets.seen(view));
        places.removeIf(place -> place.name().startsWith("tank.foot"));
        Collections.shuffle(places, random);
        return places;
    }

    @Test
    void misclick_isNamedAndLeftOut() {
        StillView view = Sets.view(Sets.THREE);
        int named = 0;
        int others = 0;
        for (int seed = 0; seed < 20; seed++) {
            Random random = new Random(seed);
            List<Landmark> places = shuffled(view, random).subList(0, 10);
            List<Resection.Click> clicks = new ArrayList<>(Sets.clicks(view, places, off(view), SIGMA, random));
            Resection.Click wrong = clicks.get(4);
            clicks.set(4, new Resection.Click(wrong.name(), wrong.xPixels() + 25, wrong.yPixels() - 15));
            Findings found = Sets.find(view, clicks, Allowance.USUAL);
            for (Findings.Place place : found.places()) {
                named += place.isMisclick() && place.name().equals(wrong.name()) ? 1 : 0;
                others += place.isMisclick() && !place.name().equals(wrong.name()) ? 1 : 0;
            }
            if (found.places().get(4).isMisclick()) {
                assertThat(words(found)).contains("beside its place").contains(wrong.name());
            }
        }
        assertThat(named).isGreaterThanOrEqualTo(19);
        assertThat(others).isZero();
    }

    @Test
    void fewPoints_leaveOpenWhichItIs_andSaySo() {
        StillView view = Sets.view(Sets.THREE);
        List<Landmark> places = Sets.seen(view).stream()
                .filter(place -> List.of("first.top.left", "first.base.right", "third.base.right")
                        .contains(place.name()))
                .toList();
        Findings found = Sets.find(
                view, Sets.clicks(view, places, off(view, "camera.x", 0.04), 0, new Random(1)), Allowance.USUAL);
        assertThat(found.singles().stream().map(Findings.Single::owner).collect(Collectors.toSet()))
                .contains("camera", "third");
        assertThat(words(found)).contains("These points don't tell which").contains("Not told by these points");
        Findings.Off untouched = found.offs().stream()
                .filter(one -> one.sought().name().equals("second.x"))
                .findFirst()
                .orElseThrow();
        assertThat(untouched.offSi()).isCloseTo(0, within(1e-9));
        assertThat(untouched.halfSi()).isCloseTo(0.002, within(1e-6));
        assertThat(untouched.told()).isEqualTo(Findings.Told.NOT);
    }

    private static List<Landmark> named(StillView view, String... names) {
        return Sets.seen(view).stream()
                .filter(place -> List.of(names).contains(place.name()))
                .toList();
    }

    private static Findings.Off off(Findings found, String mark) {
        return found.offs().stream()
                .filter(one -> one.sought().name().equals(mark))
                .findFirst()
                .orElseThrow();
    }

    /// All that is clicked is as far away: a shift is a turn, whichever it was, and neither has a ±.
    @Test
    void oneDepth_shiftOrTurn_isSaidAsEither() {
        StillView view = Sets.view(Sets.ROW);
        List<Landmark> places = named(view, "left.top.front_left", "right.top.front_right", "right.base.front_left");
        double turn = Math.atan(0.012 / 0.9);
        for (double[] off : List.of(off(view, "camera.x", 0.012), off(view, "camera.turn", turn))) {
            Findings found = Sets.find(view, Sets.clicks(view, places, off, 0, new Random(1)), Allowance.USUAL);
            assertThat(found.singles().stream().map(Findings.Single::what))
                    .containsExactlyInAnyOrder(Findings.What.AIM, Findings.What.PLACE);
            assertThat(words(found))
                    .contains("looks 0.7")
                    .contains("stands 12 mm too far right")
                    .contains("These points don't tell which: click places at other depths.");
            assertThat(off(found, "camera.x").told()).isEqualTo(Findings.Told.EITHER);
            assertThat(off(found, "camera.x").offSi()).isCloseTo(0.012, within(5e-4));
            assertThat(off(found, "camera.turn").told()).isEqualTo(Findings.Told.EITHER);
            assertThat(off(found, "camera.turn").offSi()).isCloseTo(turn, within(1e-3));
        }
    }

    /// The same where things are off by what a hand places them, so that no one explains it all.
    @Test
    void oneDepth_thingsOffToo_shiftOrTurn_isSaidAsEither() {
        StillView view = Sets.view(Sets.ROW);
        double[] off = off(view, "camera.x", 0.012, "left.x", -0.0012, "right.x", 0.0011, "left.y", 0.001);
        Findings found = Sets.find(view, Sets.clicks(view, Sets.seen(view), off, 0, new Random(1)), Allowance.USUAL);
        assertThat(words(found)).containsPattern("camera (looks|stands) .*, or the camera (looks|stands) ");
        assertThat(words(found)).contains("Click places at other depths.");
        assertThat(off(found, "camera.x").offSi()).isCloseTo(0.012, within(2e-3));
        assertThat(off(found, "camera.x").isTold()).isFalse();
        assertThat(off(found, "camera.turn").isTold()).isFalse();
    }

    /// Three places at three depths tell a shift from a turn.
    @Test
    void threeDepths_shiftAndTurn_areTold() {
        StillView view = Sets.view(Sets.THREE);
        List<Landmark> places = named(view, "first.top.left", "second.top.front_left", "third.base.right");
        Findings shifted = Sets.find(
                view, Sets.clicks(view, places, off(view, "camera.x", 0.03), 0, new Random(1)), Allowance.USUAL);
        assertThat(shifted.singles().getFirst().what()).isEqualTo(Findings.What.PLACE);
        assertThat(single(shifted, "camera.x")).isCloseTo(0.03, within(5e-4));
        Findings turned = Sets.find(
                view, Sets.clicks(view, places, off(view, "camera.turn", 0.02), 0, new Random(1)), Allowance.USUAL);
        assertThat(turned.singles()).hasSize(1);
        assertThat(turned.singles().getFirst().what()).isEqualTo(Findings.What.AIM);
        assertThat(single(turned, "camera.turn")).isCloseTo(0.02, within(1e-4));
        assertThat(words(turned)).contains("looks 1.15 deg too far right");
    }

    @Test
    void nothingOff_isSaid() {
        StillView view = Sets.view(Sets.THREE);
        Findings found =
                Sets.find(view, Sets.clicks(view, Sets.seen(view), off(view), 0, new Random(1)), Allowance.USUAL);
        assertThat(words(found)).startsWith("Nothing seems off beyond what these clicks can tell.");
    }

    @Test
    void whatCannotBeUsed_isRefusedWithWhatIsAccepted() {
        StillView view = Sets.view(Sets.THREE);
        var one = new Resection.Click("first.top.left", 10, 10);
        assertThat(refused(view, List.of(one)).why()).isEqualTo("1 place is clicked; three at least are wanted");
        assertThat(refused(view, List.of(new Resection.Click("first.top.lefd", 10, 10)))
                        .attempt())
                .isEqualTo("Try first.top.left; without points, compare lists them all.");
        assertThat(refused(view, List.of(new Resection.Click("secnd", 10, 10))).why())
                .isEqualTo("the shot has no place secnd that can be clicked; the nearest of "
                        + view.landmarks().size()
                        + " are second.top.front_left, second.top.front_right, second.top.back_left,"
                        + " second.top.back_right");
        assertThat(refused(view, List.of(one, one)).why()).contains("clicked twice");
        assertThat(refused(view, List.of(new Resection.Click("first.top.left", -1, 10)))
                        .why())
                .isEqualTo("first.top.left is clicked at -1, 10 px, outside the still; it has 3840 by 2160 px");
    }

    private static Resection.Outcome.Refused refused(StillView view, List<Resection.Click> clicks) {
        return (Resection.Outcome.Refused) Resection.of(view, clicks, Allowance.USUAL);
    }

    @Test
    void inches_areSaidWhereThePapersSpeakThem() {
        Sought sought = new Sought("camera.x", Sought.Kind.LENGTH, 0.002, new Sought.Of.AMark(0));
        assertThat(new Said(PaperUnit.INCHES).stands(sought, -0.0127)).isEqualTo("stands 0.50 in too far left");
        assertThat(SAID.stands(sought, -0.0127)).isEqualTo("stands 13 mm too far left");
    }
}
