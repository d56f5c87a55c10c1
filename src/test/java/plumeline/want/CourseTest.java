package plumeline.want;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Set;
import org.junit.jupiter.api.Test;
import plumeline.stage.Stage;

/// What a mark's way meets, against sums of widths and places by hand, in millimetres.
final class CourseTest {
    private static final String CAMERA = "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 61 mm], aim: hero}";
    private static final String TANK = "tank: {tank: glass, at: [0 mm, 30 mm], water: 200 mm}";

    private static Course course(String path, String... lines) {
        return course(path, Set.of(), lines);
    }

    private static Course course(String path, Set<String> unplaced, String... lines) {
        Stage stage = Wanted.stage(Wanted.plan(lines));
        return new Course(stage, Arrays.stream(stage.startValues()).boxed().toList(), path, unplaced);
    }

    private static void check(Course course, int way, double millimetres, String name) {
        var met = course.findMet(way, 20).orElseThrow();
        assertThat(met.metres() * 1000).isCloseTo(millimetres, within(0.01));
        assertThat(met.name()).isEqualTo(name);
    }

    @Test
    void hungThing_meetsTheTanksWallsAndFloor() {
        String[] lines = {CAMERA, TANK, "place: {hero: {thing: can, at: [0 mm, 0 mm, 80 mm], lines: 2}}"};
        // Inside 450 mm wide, 300 mm deep about y 30 mm, its floor 8 mm up; the can is 66 mm across.
        check(course("hero.x", lines), 1, 225 - 33, "the tank's wall");
        check(course("hero.x", lines), -1, 225 - 33, "the tank's wall");
        check(course("hero.y", lines), 1, 180 - 33, "the tank's wall");
        check(course("hero.y", lines), -1, 120 - 33, "the tank's wall");
        check(course("hero.z", lines), -1, 80 - 8, "the tank's floor");
        assertThat(course("hero.z", lines).findMet(1, 20)).isEmpty();
        assertThat(course("hero.z", lines).findRest()).isEmpty();
        assertThat(course("hero.x", lines).findMet(1, 0.19)).isEmpty();
    }

    @Test
    void lens_meetsTheThingThatItLooksAt() {
        check(course("camera.y", CAMERA, "place: {hero: {thing: can, at: [0 mm, 0 mm]}}"), 1, 600 - 33, "hero");
        assertThat(course("camera.y", CAMERA, "place: {hero: {thing: can, at: [0 mm, 0 mm]}}")
                        .findMet(-1, 20))
                .isEmpty();
        check(
                course("camera.y", CAMERA, TANK, "place: {hero: {thing: can, at: [0 mm, 0 mm, 8 mm]}}"),
                1,
                600 - 128,
                "the tank's wall");
    }

    @Test
    void barrelMeetsBesideItsAxis() {
        String thick = CAMERA.replace("fifty", "thick");
        String place = "place: {hero: {thing: box, at: [0 mm, 400 mm]}, side: {thing: can, at: [60 mm, 0 mm]}}";
        // The lens is level but for 61 against the box's middle at 50 mm: 0.6 deg. The barrel is 80 mm across, the
        // can's
        // nearest point to the barrel's rim lies 33 mm round 60 mm: rim and can meet where their widths do.
        var met = course("camera.y", thick, place).findMet(1, 20).orElseThrow();
        double forward = 600 - Math.sqrt(33 * 33 - 20 * 20);
        assertThat(met.metres() * 1000).isCloseTo(forward, within(1.0));
        assertThat(met.name()).isEqualTo("side");
    }

    @Test
    void thingsMeetEachOtherAndTheLamp() {
        String place = "place: {hero: {thing: can, at: [0 mm, 0 mm]}, back: {thing: tall, at: [20 mm, 200 mm]}}";
        // Two circles of 33 and 21 mm radius, 20 mm aside: they touch at sqrt(54² − 20²) of depth.
        check(course("hero.y", CAMERA, place), 1, 200 - Math.sqrt(54 * 54 - 20 * 20), "back");
        check(course("back.y", CAMERA, place), -1, 200 - Math.sqrt(54 * 54 - 20 * 20), "hero");
        assertThat(course("hero.x", CAMERA, place).findMet(1, 20)).isEmpty();
        String lamp = "lights: {key: {light: tubes, at: [500 mm, 0 mm, 60 mm], turn: 0 deg}}";
        // A tube of 600 mm across lies 300 mm to either side of its middle.
        check(course("hero.x", CAMERA, place, lamp), 1, 500 - 300 - 33, "key");
        check(course("key.x", CAMERA, place, lamp), -1, 500 - 300 - 33, "hero");
        assertThat(course("hero.x", Set.of("key"), CAMERA, place, lamp).findMet(1, 20))
                .isEmpty();
    }

    @Test
    void whatIsMetAlready_isntMet() {
        String place = "place: {hero: {thing: can, at: [0 mm, 0 mm]}, back: {thing: tall, at: [0 mm, 40 mm]}}";
        assertThat(course("hero.y", CAMERA, place).findMet(1, 20)).isEmpty();
        assertThat(course("camera.f_number", CAMERA, place).findMet(1, 20)).isEmpty();
    }

    @Test
    void whatStands_restsOnFloorTableOrThing() {
        String table = "place: {hero: {thing: can, at: [0 mm, 0 mm, 0 mm]}}";
        assertThat(course("hero.z", CAMERA, table).findRest()).contains("the table");
        assertThat(course("hero.x", CAMERA, table).findRest()).isEmpty();
        assertThat(course("camera.z", CAMERA, table).findRest()).isEmpty();
        String floor = "place: {hero: {thing: can, at: [0 mm, 0 mm, 8 mm]}}";
        assertThat(course("hero.z", CAMERA, TANK, floor).findRest()).contains("the tank's floor");
        assertThat(course("hero.z", CAMERA, floor).findRest()).isEmpty();
        String pile = "place: {hero: {thing: can, at: [0 mm, 0 mm]}, top: {thing: tall, at: [5 mm, 0 mm, 122 mm]}}";
        assertThat(course("top.z", CAMERA, pile).findRest()).contains("hero");
        assertThat(course("top.z", CAMERA, pile.replace("122 mm]", "130 mm]")).findRest())
                .isEmpty();
    }
}
