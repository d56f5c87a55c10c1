package plumeline.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.plan.Camera;
import plumeline.plan.Placed;
import plumeline.plan.Shot;
import plumeline.quantity.Kind;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Picture;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// What is set on the camera, and how far things are from the lens point and from the sensor mark, where a tape is
/// held.
final class CameraRows {
    private final Print print;
    private final Stage stage;
    private final Shot shot;
    private final Camera camera;
    private final Scene scene;

    private CameraRows(ShotAnswer answer, PaperUnit unit) {
        print = new Print(unit);
        stage = answer.posed().stages().getFirst().stage();
        shot = stage.shot();
        camera = shot.camera();
        scene = stage.scene(answer.posed().values(), 0);
    }

    static List<Rows.Pair> of(ShotAnswer answer, PaperUnit unit) {
        return new CameraRows(answer, unit).rows();
    }

    private List<Rows.Pair> rows() {
        List<Rows.Pair> rows = new ArrayList<>();
        Picture picture = scene.picture();
        rows.add(new Rows.Pair("Body", camera.body().name() + held()));
        rows.add(new Rows.Pair(
                "Lens", camera.lens().name() + ", " + quantity(camera.lens().focalLength())));
        rows.add(new Rows.Pair(
                "Aperture",
                camera.fNumber().isPresent()
                        ? "f/" + Print.number(picture.fNumber(), 1)
                        : "f/" + Print.number(picture.fNumber(), 1) + " (not in the plan: taken as)"));
        rows.add(new Rows.Pair(
                "Focus", print.length(picture.focusMetres()) + " from the lens point, along the axis" + seenThrough()));
        rows.add(new Rows.Pair(
                "Focus from the sensor mark",
                print.length(picture.focusMetres() + sensorBehindMetres()) + " on the lens's scale" + seenThrough()));
        rows.add(new Rows.Pair("Sensor mark", sensorWords()));
        rows.addAll(distanceRows());
        rows.add(new Rows.Pair("Lens height", print.length(scene.aim().eye().z()) + " above the table top"));
        camera.findRate().ifPresent(rate -> rows.add(new Rows.Pair("Rate", rate.valueText() + origin(rate))));
        shutter().ifPresent(text -> rows.add(new Rows.Pair("Shutter", text)));
        camera.findIso().ifPresent(iso -> rows.add(new Rows.Pair("ISO", Print.number(iso, 0))));
        return rows;
    }

    private String held() {
        return camera.heldOrDefault() == Camera.Held.UPRIGHT ? ", held upright (short side down)" : ", held level";
    }

    private String seenThrough() {
        return stage.findTank().isPresent() ? ", as seen through the tank's wall" : "";
    }

    private double sensorBehindMetres() {
        return camera.findSensorBehind()
                .map(Quantity::si)
                .orElse(scene.picture().imageMetres());
    }

    private String sensorWords() {
        return camera.findSensorBehind()
                .map(behind -> print.length(behind.si()) + " behind the lens point" + origin(behind))
                .orElseGet(() -> print.length(sensorBehindMetres())
                        + " behind the lens point, by the focal length alone: measure yours");
    }

    /// True distances along the axis to the thing in focus and to the nearest thing, from both points.
    private List<Rows.Pair> distanceRows() {
        List<Rows.Pair> rows = new ArrayList<>();
        findTarget().ifPresent(target -> {
            double depth = scene.aim()
                    .depthMetres(
                            scene.things().get(stage.thingIndex(target.name())).middle());
            rows.add(new Rows.Pair(
                    "To " + target.name() + "'s middle",
                    print.length(depth) + " from the lens point, " + print.length(depth + sensorBehindMetres())
                            + " from the sensor mark, along the axis"
                            + (stage.findTank().isPresent() ? ", by tape" : "")));
        });
        return rows;
    }

    private Optional<Placed> findTarget() {
        if (camera.aim() instanceof Camera.Aim.At at) {
            return shot.findPlaced(at.thing());
        }
        if (camera.focus().isPresent() && camera.focus().get() instanceof Camera.Focus.On on) {
            return shot.findPlaced(on.thing());
        }
        Optional<Placed> nearest = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < scene.things().size(); i++) {
            double distance =
                    scene.things().get(i).middle().distanceMetres(scene.aim().eye());
            if (distance < least) {
                least = distance;
                nearest = Optional.of(shot.placed().get(i));
            }
        }
        return nearest;
    }

    /// An angle and the time it makes, or a time as written.
    private Optional<String> shutter() {
        return camera.findShutter().map(shutter -> {
            if (shutter.kind() != Kind.ANGLE || camera.findRate().isEmpty()) {
                return shutter.valueText() + origin(shutter);
            }
            double seconds =
                    shutter.si() / (2 * Math.PI) / camera.findRate().get().si();
            return shutter.valueText() + " (1/" + Print.number(1 / seconds, 1) + " s)" + origin(shutter);
        });
    }

    private String quantity(Quantity quantity) {
        return quantity.valueText() + origin(quantity);
    }

    static String origin(Quantity quantity) {
        return switch (quantity.origin()) {
            case GIVEN -> "";
            case MEASURED -> " (measured)";
            case TYPICAL -> " (typical: measure yours)";
            case SOLVED -> " (solved)";
        };
    }
}
