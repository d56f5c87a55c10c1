package plumeline.lit;

import java.util.Optional;
import plumeline.geom.Aim;
import plumeline.geom.Vec;
import plumeline.light.Disc;
import plumeline.light.Emitter;
import plumeline.light.Intensity;
import plumeline.light.Panel;
import plumeline.light.Tube;
import plumeline.plan.Kit;
import plumeline.plan.PlacedLight;
import plumeline.plan.Written;
import plumeline.quantity.Kind;
import plumeline.quantity.Origin;
import plumeline.quantity.Quantity;
import plumeline.stage.Beam;

/// A lamp of a shot at an instant.
public sealed interface Lamp {
    /// Gives its name in the shot.
    ///
    /// @return the name
    String name();

    /// It is known how it shines.
    ///
    /// @param name its name in the shot
    /// @param shine how
    /// @param halfShare by how much of it its light may be off, 95 %, share of one
    /// @param colour whether it is set to a colour
    record Known(String name, Shine shine, double halfShare, Colour colour) implements Lamp {}

    /// It isn't.
    ///
    /// @param name its name in the shot
    /// @param lack what is missing
    record Unknown(String name, Lack lack) implements Lamp {}

    /// How a lamp is coloured.
    enum Colour {
        /// It shines white, as its light is given.
        WHITE,
        /// It is set to a hue: how much less it gives then isn't computed.
        HUED
    }

    /// Why it isn't known how a lamp shines.
    enum Lack {
        /// Nobody says what it gives.
        GIVES,
        /// A photometric file says it, which isn't read in plans yet.
        FILE
    }

    /// A lamp's light by its maker, or read by nobody, is off by so much, 95 %: common practice.
    double TYPICAL_SHARE = 0.15;

    /// Reads a lamp.
    ///
    /// @param placed the lamp as placed
    /// @param beam how it stands
    /// @return how it shines
    static Lamp of(PlacedLight placed, Beam beam) {
        Written written = placed.light().written();
        Optional<Quantity> gives = written.findQuantity("gives");
        if (gives.isEmpty()) {
            return new Unknown(placed.name(), written.has("file") ? Lack.FILE : Lack.GIVES);
        }
        Optional<Quantity> output = placed.written().findQuantity("output");
        double half =
                output.isPresent() ? output.get().halfWidthSi() / output.get().si() : halfShare(gives.get());
        return new Known(
                placed.name(),
                shine(placed, gives.get(), beam),
                half,
                placed.written().has("hue") ? Colour.HUED : Colour.WHITE);
    }

    private static double halfShare(Quantity gives) {
        return gives.hasSpread() || gives.origin() == Origin.MEASURED
                ? gives.halfWidthSi() / gives.si()
                : TYPICAL_SHARE;
    }

    /// Finds what shines on a lamp as a form, of luminance 1.
    ///
    /// @param placed the lamp as placed
    /// @param beam how it stands
    /// @return its face; empty for a point
    static Optional<Emitter> findFace(PlacedLight placed, Beam beam) {
        Aim.Frame frame = beam.aim().frame();
        Vec middle = beam.aim().eye();
        return switch (placed.light().emitter()) {
            case Kit.Emitter.Panel(Quantity width, Quantity height) ->
                Optional.of(new Panel(middle, frame.forward(), frame.right(), width.si(), height.si(), 1));
            case Kit.Emitter.Disc(Quantity diameter) ->
                Optional.of(new Disc(middle, frame.forward(), diameter.si() / 2, 1));
            case Kit.Emitter.Tube(Quantity length, Quantity diameter) ->
                Optional.of(new Tube(middle, frame.right(), frame.forward(), length.si(), diameter.si() / 2, 1));
            case Kit.Emitter.Point() -> Optional.empty();
        };
    }

    private static Shine shine(PlacedLight placed, Quantity gives, Beam beam) {
        return findFace(placed, beam)
                .map(face -> face(face, gives, level(placed, beam)))
                .orElseGet(() -> new Shine.Ray(
                        beam.aim(), intensity(gives, placed.light().written(), level(placed, beam))));
    }

    /// Gives how much of what the kit says a lamp gives in its shot.
    ///
    /// @param placed the lamp as placed
    /// @return share of one; 1 where it wasn't metered there
    static double output(PlacedLight placed) {
        return placed.written().findQuantity("output").map(Quantity::si).orElse(1.0);
    }

    /// The share of what it gives that leaves it: by its level, less what cloth and gel before it take.
    private static double level(PlacedLight placed, Beam beam) {
        return output(placed) * beam.level() * Math.pow(2, -loss(placed.light().written()) - loss(placed.written()));
    }

    private static double loss(Written written) {
        return written.findQuantity("loss").map(Quantity::si).orElse(0.0);
    }

    private static Shine face(Emitter face, Quantity gives, double level) {
        return switch (face) {
            case Panel panel -> {
                double area = panel.widthMetres() * panel.heightMetres();
                yield new Shine.Face(
                        level(panel, gives, area, Math.PI * area, level),
                        Math.hypot(panel.widthMetres(), panel.heightMetres()) / 2);
            }
            case Disc disc -> {
                double area = Math.PI * disc.radiusMetres() * disc.radiusMetres();
                yield new Shine.Face(level(disc, gives, area, Math.PI * area, level), disc.radiusMetres());
            }
            case Tube tube -> {
                double side = 2 * tube.lengthMetres() * tube.radiusMetres();
                yield new Shine.Face(
                        level(tube, gives, side, Math.PI * Math.PI * side, level),
                        Math.hypot(tube.lengthMetres() / 2, tube.radiusMetres()));
            }
        };
    }

    /// Makes it as bright as it is given: by lux at a distance, by candela along its axis, by all its lumens.
    private static Emitter level(Emitter unit, Quantity gives, double faceMetres2, double perLuminance, double level) {
        double luminance = switch (gives.kind()) {
            case ILLUMINANCE ->
                unit.giving(gives.si(), gives.findAt().orElseThrow().si()).luminance();
            case INTENSITY -> gives.si() / faceMetres2;
            default -> gives.si() / perLuminance;
        };
        return unit.withLuminance(level * luminance);
    }

    private static Intensity intensity(Quantity gives, Written written, double level) {
        Optional<Quantity> beam = written.findQuantity("beam");
        double full = level
                * switch (gives.kind()) {
                    case ILLUMINANCE ->
                        gives.si() * Math.pow(gives.findAt().orElseThrow().si(), 2);
                    default -> gives.si();
                };
        boolean isFlux = gives.kind() == Kind.FLUX;
        if (beam.isEmpty() || beam.get().si() >= Math.PI) {
            double wide = beam.map(Quantity::si).orElse(2 * Math.PI);
            return isFlux ? Intensity.Cone.ofLumens(full, wide) : new Intensity.Cone(full, wide);
        }
        return isFlux
                ? Intensity.Cone.ofLumens(full, beam.get().si())
                : new Intensity.CosineBeam(full, beam.get().si());
    }
}
