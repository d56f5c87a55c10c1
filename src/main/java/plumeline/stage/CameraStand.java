package plumeline.stage;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Vec;
import plumeline.optics.LensModel;
import plumeline.plan.Camera;
import plumeline.plan.Kit;
import plumeline.plan.Shot;
import plumeline.quantity.Quantity;

/// The camera of a shot as numbers.
final class CameraStand {
    /// A focus is never set closer than this share over the focal length, where a lens would picture nothing.
    private static final double LEAST_FOCUS = 1.001;

    /// A search may ask for a zoom past nothing: it stays there.
    private static final double LEAST_FOCAL_METRES = 1e-4;

    /// What the lens is focused on.
    private sealed interface FocusOn {
        record Thing(int index) implements FocusOn {}

        record Nearest() implements FocusOn {}

        record Set(Slots.Slot metres) implements FocusOn {}
    }

    /// Where the camera looks at the shot's start.
    private sealed interface Looks {
        record To(int index) implements Looks {}

        record By(Slots.Slot turn, Slots.Slot tilt) implements Looks {}
    }

    private final Slots.Slot x;
    private final Slots.Slot y;
    private final Slots.Slot z;
    private final Slots.Slot fNumber;
    private final Looks looks;
    private final FocusOn focus;
    private final Vec pivot;
    private final LensModel lens;
    private final double widthMetres;
    private final double heightMetres;
    private final double pixelMetres;

    private CameraStand(Shot shot, Slots slots) {
        Camera camera = shot.camera();
        x = slots.of(camera.at().x());
        y = slots.of(camera.at().y());
        z = slots.of(camera.at().z(), 0);
        fNumber = slots.of(camera.fNumber(), 8);
        looks = looks(camera.aim(), shot, slots);
        focus = focus(camera, shot, slots);
        List<Quantity> offset = camera.listPivot();
        pivot = offset.isEmpty()
                ? Vec.ZERO
                : new Vec(
                        offset.get(0).si(),
                        offset.get(1).si(),
                        offset.size() > 2 ? offset.get(2).si() : 0);
        lens = new LensModel(camera.lens().focalLength().si(), camera.pupilRatioOrDefault());
        Kit.CameraBody body = camera.body();
        boolean upright = camera.heldOrDefault() == Camera.Held.UPRIGHT;
        double across = body.sensorWidth().si();
        double down = body.sensorHeight().si();
        double used = usedShare(camera);
        widthMetres = used * (upright ? down : across);
        heightMetres = used * (upright ? across : down);
        pixelMetres = used * across / pixelsAcross(camera);
    }

    static CameraStand of(Shot shot, Slots slots) {
        return new CameraStand(shot, slots);
    }

    /// The modes of the shot's rate.
    private static Stream<Kit.Mode> modes(Camera camera) {
        Optional<Quantity> rate = camera.findRate();
        return camera.body().modes().stream()
                .filter(mode -> rate.isPresent()
                        && Math.abs(mode.rate().si() - rate.get().si()) < 1e-6);
    }

    /// The pixels across in the mode of the shot's rate, else the sensor's.
    private static double pixelsAcross(Camera camera) {
        return modes(camera)
                .flatMapToLong(mode -> mode.acrossPixels().stream())
                .findFirst()
                .orElse(camera.body().acrossPixels());
    }

    /// The share of the sensor's width that the mode uses, all where it doesn't say.
    private static double usedShare(Camera camera) {
        return modes(camera)
                .flatMap(mode -> mode.width().stream())
                .mapToDouble(width -> width.si() / camera.body().sensorWidth().si())
                .findFirst()
                .orElse(1);
    }

    private static Looks looks(Camera.Aim aim, Shot shot, Slots slots) {
        return switch (aim) {
            case Camera.Aim.At at -> new Looks.To(Motions.indexOf(shot, at.thing()));
            case Camera.Aim.By by -> new Looks.By(slots.of(by.turn(), 0), slots.of(by.tilt(), 0));
            case Camera.Aim.Ahead _ -> new Looks.By(Slots.ZERO, Slots.ZERO);
            case Camera.Aim.Untold _ -> new Looks.By(Slots.ZERO, Slots.ZERO);
        };
    }

    private static FocusOn focus(Camera camera, Shot shot, Slots slots) {
        if (camera.focus().isEmpty()) {
            return camera.aim() instanceof Camera.Aim.At at
                    ? new FocusOn.Thing(Motions.indexOf(shot, at.thing()))
                    : new FocusOn.Nearest();
        }
        return switch (camera.focus().get()) {
            case Camera.Focus.On on -> new FocusOn.Thing(Motions.indexOf(shot, on.thing()));
            case Camera.Focus.At at -> new FocusOn.Set(slots.of(at.mark()));
        };
    }

    Vec lensPoint(double[] values) {
        return new Vec(x.in(values), y.in(values), z.in(values));
    }

    /// The camera at the shot's start, before any move. A search may ask for a tilt past straight up: it stays there.
    Aim aim(double[] values, List<Body> atStart) {
        Vec eye = lensPoint(values);
        return switch (looks) {
            case Looks.By(Slots.Slot turn, Slots.Slot tilt) ->
                new Aim(eye, turn.in(values), Math.clamp(tilt.in(values), -Math.PI / 2, Math.PI / 2));
            case Looks.To(int index) -> {
                Vec middle = atStart.get(index).middle();
                yield middle.distanceMetres(eye) > 0 ? Aim.toward(eye, middle) : new Aim(eye, 0, 0);
            }
        };
    }

    double focusMetres(double[] values, List<Body> atStart, Sightlines lines) {
        double metres = focus instanceof FocusOn.Set(Slots.Slot set)
                ? set.in(values)
                : findFocused(values, atStart)
                        .map(body -> lines.at(List.of(body)).projection().depth(body.middle()))
                        .orElse(1.0);
        return Math.max(metres, lens.focalLengthMetres() * LEAST_FOCUS);
    }

    /// The thing that the lens is focused on, where it is one.
    Optional<Body> findFocused(double[] values, List<Body> atStart) {
        return switch (focus) {
            case FocusOn.Set _ -> Optional.empty();
            case FocusOn.Thing(int index) -> Optional.of(atStart.get(index));
            case FocusOn.Nearest() -> {
                Vec eye = lensPoint(values);
                yield atStart.stream()
                        .min(Comparator.comparingDouble(body -> body.middle().distanceMetres(eye)));
            }
        };
    }

    /// The picture at an instant.
    ///
    /// @param focus where the lens is focused at the shot's start, and now
    /// @param zoomMetres by how much the focal length has become longer since
    Picture picture(double[] values, Focus focus, double zoomMetres) {
        LensModel now = zoomMetres == 0
                ? lens
                : new LensModel(Math.max(lens.focalLengthMetres() + zoomMetres, LEAST_FOCAL_METRES), lens.pupilRatio());
        double least = now.focalLengthMetres() * LEAST_FOCUS;
        return new Picture(
                now,
                widthMetres,
                heightMetres,
                pixelMetres,
                fNumber.in(values),
                Math.max(focus.scaleMetres(), least),
                Math.max(focus.nowMetres(), least));
    }

    /// Where a lens is focused.
    ///
    /// @param scaleMetres at the shot's start, which gives the picture's scale
    /// @param nowMetres now, which gives what is sharp
    record Focus(double scaleMetres, double nowMetres) {}

    /// Turns the slid camera about its pan axis. The axis is carried along by the slide; the lens point swings round
    /// it.
    Aim panned(Aim first, Aim slid, double turn) {
        if (pivot.equals(Vec.ZERO)) {
            return new Aim(slid.eye(), turn, slid.tiltRadians(), slid.rollRadians());
        }
        Vec axis = slid.eye().plus(pivot.turned(first.turnRadians()));
        return new Aim(axis.minus(pivot.turned(turn)), turn, slid.tiltRadians(), slid.rollRadians());
    }
}
