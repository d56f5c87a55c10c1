package plumeline.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plumeline.geom.Aim;
import plumeline.plan.Camera;
import plumeline.plan.Placed;
import plumeline.quantity.Kind;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.solve.MarkAnswer;
import plumeline.stage.Scene;

/// What is set on the camera, and how far things are from the lens point and from the sensor mark, where a tape is
/// held.
final class CameraRows {
    private static final String BODY = "Body, lens";
    private static final String AIM = "Aim at start";

    private final Subject subject;
    private final Print print;
    private final Camera camera;
    private final Scene scene;

    CameraRows(Subject subject) {
        this.subject = subject;
        print = subject.print();
        camera = subject.shot().camera();
        scene = subject.first();
    }

    /// What is chosen and dialled, apart from what follows from the marks.
    List<Rows.Pair> settings() {
        return List.of(
                new Rows.Pair(BODY, camera.body().name() + held() + "; lens " + lens(), drawn()),
                new Rows.Pair("Set to", exposure()));
    }

    List<Rows.Pair> list() {
        List<Rows.Pair> rows = new ArrayList<>(settings());
        rows.add(new Rows.Pair("Lens point", print.length(scene.aim().eye().z()) + " above the table top"));
        rows.add(new Rows.Pair(AIM, aim()));
        rows.addAll(set());
        findTarget().ifPresent(target -> rows.add(new Rows.Pair("To " + target.name(), distance(target))));
        return rows;
    }

    /// What a change is told of: what is chosen, dialled and taped; not where the lens point is and how it is turned,
    /// which the marks say.
    List<Rows.Pair> facts() {
        List<Rows.Pair> rows = new ArrayList<>(settings());
        rows.add(new Rows.Pair(AIM, aimedAt()));
        rows.addAll(set());
        return rows;
    }

    /// What the pictures on the sheet rest on beside.
    private String drawn() {
        return "; sensor " + camera.body().sensorWidth().valueText() + " × "
                + camera.body().sensorHeight().valueText() + ", "
                + camera.body().acrossPixels() + " px across" + held("over").orElse("")
                + held("under").orElse("");
    }

    /// What its body holds from mid grey at its base sensitivity.
    private Optional<String> held(String side) {
        return camera.body()
                .written()
                .findQuantity("latitude." + side)
                .map(stops -> ", holds " + stops.valueText() + " " + side + " mid grey at ISO "
                        + Print.number(
                                camera.body().written().findNumber("iso.base").orElse(0), 0));
    }

    private String aimedAt() {
        return switch (camera.aim()) {
            case Camera.Aim.At(String thing, var _) -> thing + "'s middle";
            case Camera.Aim.Ahead _ -> "straight ahead";
            case Camera.Aim.By _ -> "as its marks say";
            case Camera.Aim.Untold _ -> "untold";
        };
    }

    /// What is dialled or taped after the marks.
    List<Rows.Pair> set() {
        List<Rows.Pair> rows = new ArrayList<>();
        double focus = scene.picture().focusMetres();
        String open = findOpen().isPresent() ? notYet() : "";
        rows.add(new Rows.Pair(
                "Focus",
                !open.isEmpty()
                        ? open
                        : (isProbe()
                                        ? ""
                                        : print.length(focus + sensorBehindMetres())
                                                + " from the sensor mark, on the lens's scale; ")
                                + print.length(focus) + " from " + lensPoint() + ", along the axis" + seenThrough()));
        rows.add(new Rows.Pair("Sensor mark", sensorWords()));
        return rows;
    }

    private String held() {
        return camera.heldOrDefault() == Camera.Held.UPRIGHT ? ", held upright (short side down)" : ", held level";
    }

    /// An inch paper gives the focal length as the lens's engraved figure, which is the same the world over: no sheet
    /// mixes units.
    private String lens() {
        Quantity focal = camera.lens().focalLength();
        boolean metric = print.unit() == PaperUnit.MILLIMETRES;
        String engraved = metric ? focal.valueText() : "engraved " + Print.number(focal.si() * 1000, 1);
        return camera.lens().name() + ", " + engraved + Told.origin(focal);
    }

    /// Stop, rate, shutter and sensitivity in a line.
    String exposure() {
        String stop = "f/" + Print.number(scene.picture().fNumber(), 1)
                + (camera.fNumber().isPresent() ? "" : " (not in the plan: taken as)");
        return Stream.of(
                        Optional.of(stop),
                        camera.findRate().map(rate -> rate.valueText() + Told.origin(rate)),
                        shutter(),
                        camera.findIso().stream()
                                .mapToObj(iso -> "ISO " + Print.number(iso, 0))
                                .findFirst(),
                        camera.written()
                                .findQuantity("loss")
                                .map(loss -> "filters take " + loss.valueText() + Told.origin(loss)))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(", "));
    }

    /// An angle and the time it makes, or a time as written.
    private Optional<String> shutter() {
        return camera.findShutter().map(shutter -> {
            if (shutter.kind() != Kind.ANGLE || camera.findRate().isEmpty()) {
                return "shutter " + shutter.valueText() + Told.origin(shutter);
            }
            double seconds =
                    shutter.si() / (2 * Math.PI) / camera.findRate().get().si();
            return "shutter " + shutter.valueText() + " (1/" + Print.number(1 / seconds, 1) + " s)"
                    + Told.origin(shutter);
        });
    }

    private String aim() {
        Aim aim = scene.aim();
        String at = camera.aim() instanceof Camera.Aim.At(String thing, var _) ? thing + "'s middle: " : "";
        return at + "turned " + turned(aim.turnRadians(), "clockwise", "anticlockwise") + " seen from above, tilted "
                + turned(aim.tiltRadians(), "up", "down");
    }

    private static String turned(double radians, String more, String less) {
        return MarkWords.turned(Print.fineDegrees(Math.abs(radians)), radians, more, less);
    }

    private String seenThrough() {
        return subject.stage().findTank().isPresent() ? ", as seen through the tank's wall" : "";
    }

    private double sensorBehindMetres() {
        return camera.findSensorBehind()
                .map(Quantity::si)
                .orElse(scene.picture().imageMetres());
    }

    /// A barrel that is longer than the mark is behind the lens point hides where the mark is: then tapes are held to
    /// the barrel's front.
    private boolean isProbe() {
        return camera.findSensorBehind().isEmpty()
                && camera.lens()
                        .barrel()
                        .filter(barrel -> barrel.length().si() > sensorBehindMetres())
                        .isPresent();
    }

    private String sensorWords() {
        if (isProbe()) {
            return "not in the plan, and behind the whole barrel: measure from the front of the barrel, where the lens"
                    + " point is.";
        }
        return camera.findSensorBehind()
                .map(behind -> print.length(behind.si()) + " behind the lens point" + Told.origin(behind))
                .orElseGet(() -> print.length(sensorBehindMetres())
                        + " behind the lens point, by the focal length alone: measure yours");
    }

    /// How far the thing in focus is from the sensor mark, in a line.
    String fromSensor() {
        if (findOpen().isPresent()) {
            return "Focus: " + notYet();
        }
        return findTarget()
                .map(target -> target.name() + "'s middle: " + taped(depthMetres(target)) + byTape() + focusRing())
                .orElseGet(() -> "Focus: " + taped(scene.picture().focusMetres()) + seenThrough());
    }

    /// A distance from where a tape is held.
    private String taped(double metres) {
        return print.length(isProbe() ? metres : metres + sensorBehindMetres())
                + (isProbe() ? " from the front of the barrel" : " from the sensor mark") + ", along the axis";
    }

    /// Through water a tape and the lens's ring differ.
    private String focusRing() {
        return subject.stage().findTank().isPresent()
                ? "; focus ring " + print.length(scene.picture().focusMetres() + (isProbe() ? 0 : sensorBehindMetres()))
                : "";
    }

    /// A mark without a value, on which its distances rest.
    private Optional<String> findOpen() {
        String target = findTarget().map(Placed::name).orElse("camera");
        return subject.answer().marks().stream()
                .filter(mark -> mark.setting() instanceof MarkAnswer.Setting.Open)
                .map(mark -> mark.mark().path())
                .filter(path -> path.matches("(camera|" + Pattern.quote(target) + ")\\.([xyz]|focus)"))
                .findFirst();
    }

    private String notYet() {
        return "no distance yet, as " + findOpen().orElseThrow() + " has no value";
    }

    private String lensPoint() {
        return isProbe() ? "the front of the barrel" : "the lens point";
    }

    private String distance(Placed target) {
        if (findOpen().isPresent()) {
            return notYet();
        }
        double depth = depthMetres(target);
        return isProbe()
                ? taped(depth) + byTape()
                : print.length(depth + sensorBehindMetres()) + " from the sensor mark, " + print.length(depth)
                        + " from the lens point, along the axis" + byTape();
    }

    private double depthMetres(Placed target) {
        return scene.aim()
                .depthMetres(scene.things()
                        .get(subject.stage().thingIndex(target.name()))
                        .middle());
    }

    private String byTape() {
        return subject.stage().findTank().isPresent() ? ", by tape" : "";
    }

    /// What the camera looks at, else what it is focused on, else what stands nearest.
    Optional<Placed> findTarget() {
        if (camera.aim() instanceof Camera.Aim.At at) {
            return subject.shot().findPlaced(at.thing());
        }
        if (camera.focus().isPresent() && camera.focus().get() instanceof Camera.Focus.On on) {
            return subject.shot().findPlaced(on.thing());
        }
        Optional<Placed> nearest = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < scene.things().size(); i++) {
            double distance =
                    scene.things().get(i).middle().distanceMetres(scene.aim().eye());
            if (distance < least) {
                least = distance;
                nearest = Optional.of(subject.shot().placed().get(i));
            }
        }
        return nearest;
    }
}
