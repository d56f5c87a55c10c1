package plumeline.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/// Marks: their paths, kinds and placing errors, by the contract's `Definitions` and `More words`.
final class MarksTest {
    private static Mark mark(Shot shot, String path) {
        return shot.marks().stream()
                .filter(m -> m.path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> paths(Shot shot) {
        return shot.marks().stream().map(Mark::path).toList();
    }

    private static void checkError(Shot shot, String path, Mark.Kind kind, double si) {
        assertThat(mark(shot, path).kind()).isEqualTo(kind);
        assertThat(mark(shot, path).error().at(0.5)).isCloseTo(si, within(1e-12));
    }

    @Test
    void marks_areInTheOrderOfTheText() {
        var shot = Texts.shot(Texts.adding(
                "lights: {key: {light: strip, at: free, level: 50 %, turn: 10 deg}}",
                "moves: {slide: {machine: slider, by: [-600 mm, 0 mm], in: 8 s}}"));
        assertThat(paths(shot))
                .containsExactly(
                        "camera.x",
                        "camera.y",
                        "camera.z",
                        "hero.x",
                        "hero.y",
                        "key.x",
                        "key.y",
                        "key.z",
                        "key.level",
                        "key.turn",
                        "slide.by");
    }

    @Test
    void errors_areTheTradesWhereNothingIsWritten() {
        var shot = Texts.shot(Texts.adding(
                        "lights: {key: {light: strip, at: free, level: free, turn: free}}",
                        "moves: {slide: {machine: slider, by: [-600 mm, 0 mm]}, spin: {machine: plate, by: 60 deg}, "
                                + "hand: {machine: bare, by: [10 mm, 0 mm]}}")
                .replace("aim: hero", "turn: 0 deg, focus: 500 mm, f_number: 11")
                .replace("at: [0 mm, 0 mm]", "at: free, turn: free"));
        checkError(shot, "camera.x", Mark.Kind.TAPE, 0.002);
        checkError(shot, "camera.z", Mark.Kind.HEIGHT, 0.002);
        checkError(shot, "camera.turn", Mark.Kind.TURN, Math.toRadians(2));
        checkError(shot, "camera.focus", Mark.Kind.FOCUS, 0.005);
        checkError(shot, "camera.f_number", Mark.Kind.DIAL, 0);
        checkError(shot, "hero.x", Mark.Kind.TAPE, 0.002);
        checkError(shot, "hero.turn", Mark.Kind.TURN, Math.toRadians(2));
        checkError(shot, "key.x", Mark.Kind.LAMP_PLACE, 0.020);
        checkError(shot, "key.turn", Mark.Kind.LAMP_TURN, Math.toRadians(3));
        checkError(shot, "key.level", Mark.Kind.DIAL, 0);
        checkError(shot, "slide.by", Mark.Kind.MOTOR, 0.0001);
        checkError(shot, "spin.by", Mark.Kind.MOTOR_TURN, Math.toRadians(0.2));
        checkError(shot, "hand.by", Mark.Kind.MOTOR, 0.002);
    }

    @Test
    void error_isTheMarksOwnSpreadWhereWritten() {
        var shot = Texts.shot(Texts.replacing("[0 mm, 0 mm]", "[0 mm ± 1/8 in, 10 mm +- 10 %]"));
        checkError(shot, "hero.x", Mark.Kind.TAPE, 0.003175);
        checkError(shot, "hero.y", Mark.Kind.TAPE, 0.001);
    }

    @Test
    void hungThing_freesThreeCoordinatesAndItsTies() {
        var shot = Texts.shot(Texts.replacing("at: [0 mm, 0 mm]", "at: free, tied: [30 mm, free]"));
        assertThat(paths(shot)).endsWith("hero.x", "hero.y", "hero.z", "hero.tied_1", "hero.tied_2");
        checkError(shot, "hero.z", Mark.Kind.HUNG, 0.005);
        assertThat(mark(shot, "hero.tied_2").isFree()).isTrue();
        assertThat(mark(shot, "hero.tied_1").isFree()).isFalse();
    }

    @Test
    void standingThing_freesTwoCoordinates() {
        var shot = Texts.shot(Texts.replacing("at: [0 mm, 0 mm]", "at: free"));
        assertThat(paths(shot)).endsWith("camera.z", "hero.x", "hero.y");
    }

    private static Move move(String by) {
        return Texts.shot(Texts.adding("moves: {slide: {machine: slider, by: " + by + "}}"))
                .moves()
                .getFirst();
    }

    private static void checkVector(String by, double x, double y, double z) {
        var vector = move(by).travel().orElseThrow().vectorMetres(m -> switch (m) {
            case Mark.Fixed f -> f.quantity().si();
            case Mark.Between b -> b.low().si();
            case Mark.Free _ -> 0.25;
        });
        assertThat(vector[0]).isCloseTo(x, within(1e-12));
        assertThat(vector[1]).isCloseTo(y, within(1e-12));
        assertThat(vector[2]).isCloseTo(z, within(1e-12));
    }

    @Test
    void by_withOneComponent_isThatComponentSigned() {
        var along = (Move.Travel.Along) move("[-600 mm, 0 mm]").travel().orElseThrow();
        assertThat(along.mark().path()).isEqualTo("slide.by");
        assertThat(((Mark.Fixed) along.mark()).quantity().si()).isEqualTo(-0.6);
        checkVector("[-600 mm, 0 mm]", -0.6, 0, 0);
        checkVector("[0 mm, free]", 0, 0.25, 0);
        checkVector("[0 mm, 0 mm, free between -90 mm and 50 mm]", 0, 0, -0.09);
    }

    @Test
    void by_slanted_isTheLengthAlongTheWrittenWay() {
        var travel = move("[300 mm, -400 mm]").travel().orElseThrow();
        assertThat(travel.marks()).extracting(Mark::path).containsExactly("slide.by");
        assertThat(((Mark.Fixed) travel.marks().getFirst()).quantity().toText()).isEqualTo("500 mm");
        checkVector("[300 mm, -400 mm]", 0.3, -0.4, 0);
    }

    @Test
    void by_slantedAndFree_isAMarkAComponent() {
        var travel = move("[300 mm, free]").travel().orElseThrow();
        assertThat(travel.marks()).extracting(Mark::path).containsExactly("slide.by_x", "slide.by_y");
        checkVector("[300 mm, free]", 0.3, 0.25, 0);
    }

    @Test
    void by_ofNothing_isAMarkOfNothing() {
        checkVector("[0 mm, 0 mm]", 0, 0, 0);
        assertThat(move("[0 mm, 0 mm]").marks()).extracting(Mark::path).containsExactly("slide.by");
    }

    @Test
    void focus_onAThing_isNoMark() {
        var shot = Texts.shot(Texts.replacing("aim: hero", "aim: hero, focus: hero"));
        assertThat(paths(shot)).doesNotContain("camera.focus");
        assertThat(shot.camera().focus().orElseThrow()).isInstanceOf(Camera.Focus.On.class);
    }

    @Test
    void marks_haveTheirPlaceInTheText() {
        var plan = Texts.example();
        for (var shot : plan.shots()) {
            for (var mark : shot.marks()) {
                var place = mark.place();
                var written = plan.source().text().substring(place.start(), place.end());
                switch (mark) {
                    case Mark.Fixed f ->
                        assertThat(written).isEqualTo(f.quantity().toText());
                    case Mark.Free _ -> assertThat(written).isEqualTo("free");
                    case Mark.Between b ->
                        assertThat(written)
                                .isEqualTo("free between " + b.low().toText() + " and "
                                        + b.high().toText());
                }
            }
        }
    }
}
