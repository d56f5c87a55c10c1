package plumeline.lit;

import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.geom.Vec;
import plumeline.light.Exposure;
import plumeline.light.Latitude;
import plumeline.optics.TankView;
import plumeline.plan.Camera;
import plumeline.plan.Written;
import plumeline.quantity.Kind;
import plumeline.quantity.Quantity;
import plumeline.stage.Picture;
import plumeline.stage.Scene;

/// What a shot's camera is set to, as an exposure.
public final class Setting {
    /// The shutter where nobody says.
    private static final double HALF_TURN = Math.PI;

    private Setting() {}

    /// Reads the setting at an instant; a flat receptor's constant, as a lux meter has.
    ///
    /// @param camera the camera
    /// @param picture its picture then
    /// @param film the film's rate, where the camera has none of its own
    /// @return the exposure; empty where no sensitivity is written
    public static Optional<Exposure> find(Camera camera, Picture picture, Quantity film) {
        OptionalDouble iso = camera.findIso();
        return iso.isPresent() ? Optional.of(at(camera, picture, film, iso.getAsDouble())) : Optional.empty();
    }

    /// Gives the setting at a sensitivity, whatever is written.
    ///
    /// @param camera the camera
    /// @param picture its picture then
    /// @param film the film's rate, where the camera has none of its own
    /// @param sensitivity ISO, > 0
    /// @return the exposure
    public static Exposure at(Camera camera, Picture picture, Quantity film, double sensitivity) {
        return new Exposure(
                Exposure.FLAT,
                Math.max(picture.fNumber(), 0.1),
                seconds(camera, film),
                sensitivity,
                Math.max(0, picture.magnification()),
                camera.pupilRatioOrDefault(),
                loss(camera.lens().written()) + loss(camera.written()));
    }

    /// Reads it for a surface, which is darker to the camera in a tank.
    ///
    /// @param camera the camera
    /// @param scene the instant
    /// @param share how bright the surface is to it, as [#seenShare]
    /// @param film the film's rate
    /// @return the exposure
    static Optional<Exposure> find(Camera camera, Scene scene, double share, Quantity film) {
        return find(camera, scene.picture(), film).map(setting -> setting.through(share));
    }

    /// Finds what a camera's body holds at the sensitivity set.
    ///
    /// @param camera the camera
    /// @return how far over and under mid grey; empty where the body's latitude or a sensitivity isn't written
    public static Optional<Latitude> findLatitude(Camera camera) {
        Written body = camera.body().written();
        Optional<Quantity> over = body.findQuantity("latitude.over");
        Optional<Quantity> under = body.findQuantity("latitude.under");
        OptionalDouble base = body.findNumber("iso.base");
        OptionalDouble iso = camera.findIso();
        return over.isEmpty() || under.isEmpty() || base.isEmpty() || iso.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Latitude(over.get().si(), under.get().si()).rated(iso.getAsDouble(), base.getAsDouble()));
    }

    /// Gives how bright a surface is to the camera against its own luminance.
    ///
    /// @param scene the instant
    /// @param lighting its light
    /// @param place where on the surface, m
    /// @return share of one: less in a tank that is looked into through its wall
    static double seenShare(Scene scene, Lighting lighting, Vec place) {
        return scene.projection() instanceof TankView view && lighting.isInTank(place) ? view.brightness(place) : 1;
    }

    private static double loss(Written written) {
        return written.findQuantity("loss").map(Quantity::si).orElse(0.0);
    }

    /// Gives how long a frame is exposed: half its time where nobody says.
    ///
    /// @param camera the camera
    /// @param film the film's rate, where the camera has none of its own
    /// @return s
    public static double seconds(Camera camera, Quantity film) {
        Optional<Quantity> shutter = camera.findShutter();
        if (shutter.isPresent() && shutter.get().kind() == Kind.TIME) {
            return shutter.get().si();
        }
        double rate = camera.findRate().orElse(film).si();
        return shutter.map(Quantity::si).orElse(HALF_TURN) / (2 * Math.PI * rate);
    }
}
