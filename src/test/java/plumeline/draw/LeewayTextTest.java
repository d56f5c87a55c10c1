package plumeline.draw;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plumeline.plan.Mark;
import plumeline.quantity.PaperUnit;
import plumeline.search.Leeway;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;

final class LeewayTextTest {
    private static final LeewayText MM = new LeewayText(PaperUnit.MILLIMETRES);
    private static final LeewayText IN = new LeewayText(PaperUnit.INCHES);

    private static MarkAnswer mark(String path) {
        return Made.shot(Made.film(Made.text()), "reveal").marks().stream()
                .filter(answer -> answer.mark().path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void leeway_isRoundedDown() {
        Mark tape = mark("second.x").mark();
        assertThat(MM.withUnit(tape, 0.0039)).isEqualTo("3 mm");
        assertThat(MM.withUnit(tape, 0.001999)).isEqualTo("1.9 mm");
        assertThat(MM.withUnit(tape, 0.00188)).isEqualTo("1.8 mm");
        assertThat(MM.withUnit(tape, 0)).isEqualTo("0.0 mm");
        assertThat(IN.withUnit(tape, 0.0254 * 0.99 / 4)).isEqualTo("3/16 in");
        assertThat(IN.withUnit(tape, 0.0254 * 0.99 / 8)).isEqualTo("1/16 in");
        assertThat(IN.withUnit(tape, 0.00178)).isEqualTo("1/16 in");
    }

    @Test
    void leeway_forgivesATrifleOfAStepAndNeverMore() {
        assertThat(MM.withUnit(mark("second.x").mark(), 0.006999999999)).isEqualTo("7 mm");
        assertThat(MM.withUnit(mark("second.x").mark(), 0.0069999)).isEqualTo("6 mm");
        assertThat(MM.withUnit(mark("second.x").mark(), 3.2298)).isEqualTo("3229 mm");
    }

    @Test
    void wayPastTheTravel_isSaidToGoToItsEnd() {
        var reveal = Made.shot(Made.film(Made.text()), "reveal");
        // Of 600 mm of travel the slide goes 600 mm to the left; its leeway is 9.7 m that way and 131.1 mm back.
        assertThat(MM.findStop(mark("slide.by"), LeewayText.Way.MINUS, reveal)).hasValue("to the end of the travel");
        assertThat(MM.findStop(mark("slide.by"), LeewayText.Way.PLUS, reveal)).isEmpty();
        assertThat(MM.findStop(mark("second.x"), LeewayText.Way.PLUS, reveal)).isEmpty();
    }

    @Test
    void wayIntoSomething_isSaidToGoUntilItMeets() {
        var film = Made.film(Made.text());
        var reveal = Made.shot(film, "reveal");
        // Axes 105 mm apart, each 21 mm from its outline: 63 mm. The lens point is 600 mm from an axis.
        checkStop(reveal, "second.y", LeewayText.Way.PLUS, "63 mm until it meets third");
        checkStop(reveal, "fourth.y", LeewayText.Way.MINUS, "");
        // A bottle 42 mm across in 450 mm of water; the camera 1122 mm from it, the glass 128 mm before it.
        var plume = Made.shot(film, "plume");
        checkStop(plume, "bottle.x", LeewayText.Way.PLUS, "204 mm until it meets the tank's wall");
        checkStop(plume, "bottle.x", LeewayText.Way.MINUS, "204 mm until it meets the tank's wall");
        checkStop(plume, "bottle.z", LeewayText.Way.MINUS, "72 mm until it meets the tank's floor");
        checkStop(plume, "bottle.y", LeewayText.Way.MINUS, "");
        assertThat(MM.findMet(mark("slide.by"), LeewayText.Way.MINUS, reveal)).isEmpty();
    }

    private static void checkStop(ShotAnswer shot, String path, LeewayText.Way way, String words) {
        MarkAnswer answer = shot.marks().stream()
                .filter(one -> one.mark().path().equals(path))
                .findFirst()
                .orElseThrow();
        assertThat(MM.findStop(answer, way, shot).orElse("")).isEqualTo(words);
        assertThat(MM.findMet(answer, way, shot).orElse("")).isEqualTo(words);
    }

    @Test
    void whatStandsOnAFloor_restsThereAndNeedsNoRoomBelow() {
        String text = Made.text().replace("at: [0 mm, 0 mm, 80 mm], lines: 2", "at: [0 mm, 0 mm, 8 mm]");
        checkStop(
                Made.shot(Made.film(text), "plume"), "bottle.z", LeewayText.Way.MINUS, "it rests on the tank's floor");
    }

    @Test
    void heightBelowTheTable_isSaidToGoToItsTop() {
        var reveal = Made.shot(Made.film(Made.text()), "reveal");
        var least = height(0.0519);
        assertThat(MM.findStop(least, LeewayText.Way.MINUS, reveal)).isEmpty();
        assertThat(MM.both(least)).isEqualTo("−51 +38");
        var below = height(0.059);
        assertThat(MM.findStop(below, LeewayText.Way.MINUS, reveal)).hasValue("to the table top");
        assertThat(MM.findStop(below, LeewayText.Way.PLUS, reveal)).isEmpty();
        assertThat(MM.both(below)).isEqualTo("−52 +38");
    }

    private static MarkAnswer height(double minus) {
        var lens = mark("camera.z");
        var leeway = new Leeway(new Leeway.Side.Ends(minus), lens.leeway().plus());
        return new MarkAnswer(lens.mark(), lens.setting(), leeway, lens.ends(), lens.placingErrorSi());
    }

    @Test
    void bothSides_areSaidShortly() {
        assertThat(MM.both(mark("second.x"))).isEqualTo("±3");
        assertThat(MM.both(mark("third.x"))).isEqualTo("−6 +1.2");
        assertThat(MM.both(mark("second.y"))).isEqualTo("−9 + loose");
        assertThat(MM.both(mark("first.x"))).isEqualTo("loose");
    }

    /// A lamp 1 m before the camera; the camera's lens is where Made put it.
    @Test
    void whatHasNoPlaceYet_meetsNothing() {
        String text = Made.text().replace("at: free}}", "at: [0 mm, 1000 mm, 52 mm]}}");
        assertThat(stop(text)).contains("until it meets");
        assertThat(stop(text.replace("[0 mm, 1000 mm, 52 mm]", "[free, 1000 mm, 52 mm]")))
                .isEmpty();
    }

    private static String stop(String text) {
        ShotAnswer reveal = Made.shot(Made.film(text), "reveal");
        MarkAnswer away = reveal.marks().stream()
                .filter(answer -> answer.mark().path().equals("key.y"))
                .findFirst()
                .orElseThrow();
        return MM.findStop(away, LeewayText.Way.MINUS, reveal).orElse("");
    }
}
