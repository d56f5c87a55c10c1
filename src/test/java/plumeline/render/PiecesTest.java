package plumeline.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumeline.fall.Handful;
import plumeline.geom.Body;
import plumeline.geom.Vec;
import plumeline.plan.Release;
import plumeline.scenery.Form;
import plumeline.scenery.Part;
import plumeline.stage.PieceRelease;
import plumeline.stage.Stage;

/// Pieces as parts, against the cloud that wants and drawings follow.
final class PiecesTest {
    private static Stage stage(String piece) {
        return LooseShots.stage(
                LooseShots.CAMERA,
                "place: {tin: {thing: tin, at: [0 mm, 0 mm]}}",
                "release: {piece: " + piece
                        + ", count: 40, at: [100 mm, 20 mm, 400 mm], start: 0.2 s, over: 0.5 s, spread: 30 mm}");
    }

    private static Vec middle(Part part) {
        return switch (part.form()) {
            case Form.Ball ball -> ball.middle();
            case Form.Posed(Body body) -> body.middle();
            case Form.Rod _, Form.Sheet _, Form.Bend _ -> throw new AssertionError(part.name());
        };
    }

    private static Handful handful(Stage stage, Vec hand) {
        return PieceRelease.of((Release.OfPieces) stage.shot().findRelease().orElseThrow())
                .handful(PieceRelease.findMedium(stage, hand).orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(strings = {"bead", "die", "petal"})
    void piecesOnTheirWay_areWhereTheHandfulHasThem(String name) {
        Stage stage = stage(name);
        Vec hand = new Vec(0.1, 0.02, 0.4);
        Handful handful = handful(stage, hand);
        Pieces pieces = Pieces.of(stage, stage.startValues());
        int compared = 0;
        for (double seconds : new double[] {0.01, 0.1, 0.21, 0.3}) {
            List<Vec> expected = handful.at(seconds, 0.4);
            List<Part> parts = pieces.parts(0.2 + seconds);
            assertThat(parts).hasSameSizeAs(expected);
            for (int i = 0; i < parts.size(); i++) {
                Vec there = hand.plus(expected.get(i));
                if (there.z() > 0.01) {
                    assertThat(middle(parts.get(i)).distanceMetres(there)).isLessThan(5e-5);
                    compared++;
                }
            }
        }
        assertThat(compared).isGreaterThan(40);
    }

    @Test
    void piecesLetGo_comeOneAfterAnother() {
        Stage stage = stage("bead");
        Pieces pieces = Pieces.of(stage, stage.startValues());
        assertThat(pieces.parts(0.19)).isEmpty();
        // Each piece has its own fortieth of the half second.
        assertThat(pieces.parts(0.2 + 0.25).size()).isBetween(20, 21);
        assertThat(pieces.parts(0.75)).hasSize(40);
        assertThat(pieces.parts(0.75).getFirst().name()).isEqualTo("bead-1");
    }

    @ParameterizedTest
    @ValueSource(strings = {"bead", "die", "petal"})
    void piecesThatHaveFallen_lieOnTheTable(String name) {
        Stage stage = stage(name);
        for (Part part : Pieces.of(stage, stage.startValues()).parts(30)) {
            double low = switch (part.form()) {
                case Form.Ball ball -> ball.middle().z() - ball.radiusMetres();
                case Form.Posed(Body body) -> body.bounds().low().z();
                case Form.Rod _, Form.Sheet _, Form.Bend _ -> Double.NaN;
            };
            assertThat(low).isBetween(0.0, 2e-6);
        }
    }

    @Test
    void piecesNeverReachIntoTheTable() {
        Stage stage = stage("die");
        Pieces pieces = Pieces.of(stage, stage.startValues());
        for (double seconds = 0.2; seconds < 1.5; seconds += 0.01) {
            for (Part part : pieces.parts(seconds)) {
                assertThat(((Form.Posed) part.form()).body().bounds().low().z()).isGreaterThanOrEqualTo(0);
            }
        }
    }

    @Test
    void corkUnderWater_risesToItsSurface_andIsSaidToStay() {
        Stage stage = LooseShots.stage(
                LooseShots.CAMERA,
                LooseShots.TANK,
                LooseShots.TIN,
                "release: {piece: cork, count: 3, at: [0 mm, -20 mm, 60 mm]}");
        Pieces pieces = Pieces.of(stage, stage.startValues());
        assertThat(pieces.parts(60))
                .hasSize(3)
                .allSatisfy(part -> assertThat(middle(part).z()).isEqualTo(0.168, within(1e-9)));
        assertThat(pieces.assumed()).anyMatch(words -> words.contains("water's surface"));
    }

    @Test
    void beadUnderWater_sinksToTheTanksFloor() {
        Stage stage = LooseShots.stage(
                LooseShots.CAMERA,
                LooseShots.TANK,
                LooseShots.TIN,
                "release: {piece: bead, at: [0 mm, -30 mm, 100 mm]}");
        Pieces pieces = Pieces.of(stage, stage.startValues());
        assertThat(middle(pieces.parts(60).getFirst()).z()).isEqualTo(0.008 + 0.002, within(2e-6));
    }

    @Test
    void moreThanCanBeHeld_areSaidToBeFewer() {
        for (int count : new int[] {501, 30_000, 30_001, 1_000_000}) {
            Stage stage = LooseShots.stage(
                    LooseShots.CAMERA,
                    "",
                    LooseShots.TIN,
                    "release: {piece: bead, count: " + count
                            + ", spread: 100 mm, over: 1 s, at: [0 mm, 0 mm, 300 mm]}");
            Pieces pieces = Pieces.of(stage, stage.startValues());
            assertThat(pieces.parts(60)).hasSize(Math.min(count, 30_000));
            assertThat(pieces.mostInstants()).isBetween(16, 958);
            boolean isTold = pieces.assumed().stream().anyMatch(told -> told.contains("of " + count + " pieces"));
            assertThat(isTold).isEqualTo(count > 30_000);
        }
    }
}
