package plumeline.render;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.geom.Body;
import plumeline.geom.Point;
import plumeline.plan.Placed;
import plumeline.sight.Outline;
import plumeline.sight.Sight;
import plumeline.stage.Frame;
import plumeline.stage.Scene;

/// What the picture shows in front is what line art's outlines have in front, but within half a pixel of an outline.
final class OutlinesTest {
    private static final int WIDTH = 480;
    private static final int HEIGHT = 270;
    private static final int STEPS = 256;
    private static final double HALF_PIXEL = 0.5;

    /// A thing flat in the picture.
    private record Flat(String name, List<Outline> parts, double awayMetres) {
        boolean covers(double x, double y) {
            return parts.stream().anyMatch(part -> isIn(part.corners(), x, y));
        }

        private static boolean isIn(List<Point> corners, double x, double y) {
            for (int i = 0; i < corners.size(); i++) {
                Point from = corners.get(i);
                Point to = corners.get((i + 1) % corners.size());
                if ((to.x() - from.x()) * (y - from.y()) - (to.y() - from.y()) * (x - from.x()) < 0) {
                    return false;
                }
            }
            return true;
        }
    }

    @ParameterizedTest
    @CsvSource({"reveal, 0", "reveal, 40", "plume, 0", "plume, 60", "spin, 0", "looks, 50"})
    void things_areWhereLineArtHasThem(String shot, long frame) throws IOException {
        ShotSet set = SetShots.example(shot);
        double seconds = set.stage().retime().realSeconds(frame);
        Window window = new Window(Frame.WHOLE, WIDTH, HEIGHT);
        PartsView view = PartsView.of(set, seconds, window);
        Scene scene = set.sceneAt(seconds);
        List<Flat> flats = flats(set, scene);
        double pixelX = scene.picture().widthTangent() / WIDTH;
        double pixelY = scene.picture().heightTangent() / HEIGHT;
        int ofThings = 0;
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < WIDTH * HEIGHT; i++) {
            String seen = view.seen().get(i) < 0
                    ? ""
                    : view.parts().get(view.seen().get(i)).name();
            if (set.stage().lampIndex(seen) >= 0) {
                continue;
            }
            String shown = set.stage().thingIndex(seen) < 0 ? "" : seen;
            double x = (i % WIDTH + 0.5 - WIDTH / 2.0) * pixelX;
            double y = (HEIGHT / 2.0 - i / WIDTH - 0.5) * pixelY;
            boolean isRight = false;
            for (int turn = 0; turn <= 16 && !isRight; turn++) {
                double out = turn == 0 ? 0 : HALF_PIXEL;
                isRight = front(
                                flats,
                                x + out * pixelX * Math.cos(turn * Math.PI / 8),
                                y + out * pixelY * Math.sin(turn * Math.PI / 8))
                        .equals(shown);
            }
            if (!isRight) {
                wrong.add(i % WIDTH + ", " + i / WIDTH + " shows " + seen);
            }
            ofThings += shown.isEmpty() ? 0 : 1;
        }
        assertThat(wrong).isEmpty();
        assertThat(ofThings).as("pixels of things").isGreaterThan(1000);
    }

    private static List<Flat> flats(ShotSet set, Scene scene) {
        List<Flat> flats = new ArrayList<>();
        List<Placed> placed = set.stage().shot().placed();
        for (int i = 0; i < placed.size(); i++) {
            Body body = scene.things().get(i);
            flats.add(new Flat(
                    placed.get(i).name(),
                    Sight.outline(scene.view(body), body, STEPS),
                    body.middle().distanceMetres(scene.aim().eye())));
        }
        return flats;
    }

    private static String front(List<Flat> flats, double x, double y) {
        String name = "";
        double nearest = Double.POSITIVE_INFINITY;
        for (Flat flat : flats) {
            if (flat.awayMetres() < nearest && flat.covers(x, y)) {
                nearest = flat.awayMetres();
                name = flat.name();
            }
        }
        return name;
    }
}
