package plumeline.lit;

import java.util.List;
import java.util.Optional;
import plumeline.light.CellGrid;
import plumeline.light.Disc;
import plumeline.light.Emitter;
import plumeline.light.Glow;
import plumeline.light.HotCentre;
import plumeline.light.Intensity;
import plumeline.light.Opening;
import plumeline.light.Panel;
import plumeline.light.Patch;
import plumeline.light.Photometry;
import plumeline.light.Tube;
import plumeline.plan.PlacedLight;
import plumeline.plan.Written;
import plumeline.quantity.Kind;
import plumeline.quantity.Quantity;
import plumeline.stage.Beam;

/// From what a lamp gives to how it shines. What it gives is without cloth, gel or grid put before it, and with its hot
/// centre and window.
final class LampShine {
    private LampShine() {}

    /// Reads how a lamp shines of which it is known what it gives, or that has a photometric file.
    ///
    /// @param tinted what its colour leaves of what the kit says it gives, share of one
    static Shine of(PlacedLight placed, Beam beam, double tinted) {
        Written kit = placed.light().written();
        Optional<Quantity> given = kit.findQuantity("gives");
        double level = tinted * level(placed, beam);
        Glow grid = grid(kit, beam).times(grid(placed.written(), beam));
        Optional<Emitter> unit = Lamp.findFace(placed, beam);
        if (beam.file().isPresent()) {
            return filed(placed, beam, given, level, grid);
        }
        Quantity gives = given.orElseThrow();
        if (unit.isEmpty()) {
            return new Shine.Ray(beam.aim(), intensity(gives, kit, level), 0, grid);
        }
        double stops = kit.findQuantity("hot_centre").map(Quantity::si).orElse(0.0);
        Optional<Emitter> hole = Lamp.findHole(placed, beam);
        Shine.Face bare = face(unit.get(), glow(unit.get(), stops), hole);
        double luminance = switch (gives.kind()) {
            case ILLUMINANCE -> gives.si() / bare.lux(before(unit.get(), gives), List.of());
            case INTENSITY -> gives.si() / candelas(unit.get(), stops, hole);
            default -> gives.si() / lumens(unit.get(), stops, hole);
        };
        return face(unit.get().withLuminance(level * luminance), bare.glow().times(grid), hole);
    }

    /// A lamp's file says where its light goes; what it gives, where that is written too, says how much of it there is.
    /// Its axis is where the lamp faces, C = 0 to its own right, C = 90 up. Some give less when tilted: where the
    /// file tells that, it counts from straight down. It is a point's light, whatever the lamp's form.
    private static Shine filed(PlacedLight placed, Beam beam, Optional<Quantity> gives, double level, Glow grid) {
        Photometry file = beam.file().orElseThrow();
        double down = Math.acos(Math.clamp(-beam.aim().forward().z(), -1, 1));
        double tilted = file.tilt() instanceof Photometry.Tilt.Factors factors
                ? factors.findFactor(down).orElse(1)
                : 1;
        double scale = gives.map(quantity -> switch (quantity.kind()) {
                    case FLUX -> quantity.si() / file.intensity().fluxLumens();
                    case ILLUMINANCE ->
                        quantity.si()
                                * Math.pow(quantity.findAt().orElseThrow().si(), 2)
                                / file.intensity().candelas(0, 0);
                    default -> quantity.si() / file.intensity().candelas(0, 0);
                })
                .orElse(1.0);
        return new Shine.Ray(
                beam.aim(),
                file.intensity(),
                halfMetres(placed, beam, file.opening()),
                grid.times(new Glow.Dimmed(level * tilted * scale)));
    }

    /// How far what glows reaches: as the plan has it, else as the file.
    private static double halfMetres(PlacedLight placed, Beam beam, Opening opening) {
        return Lamp.findFace(placed, beam)
                .map(unit -> face(unit, Glow.even()).reachMetres())
                .orElse(Math.max(opening.c0Metres(), opening.c90Metres()) / 2);
    }

    /// A face without a hole.
    static Shine.Face face(Emitter emitter, Glow glow) {
        return face(emitter, glow, Optional.empty());
    }

    private static Shine.Face face(Emitter emitter, Glow glow, Optional<Emitter> hole) {
        double reach = switch (emitter) {
            case Panel panel -> Math.hypot(panel.widthMetres(), panel.heightMetres()) / 2;
            case Disc disc -> disc.radiusMetres();
            case Tube tube -> Math.hypot(tube.lengthMetres() / 2, tube.radiusMetres());
        };
        return new Shine.Face(emitter, glow, hole, reach);
    }

    /// A meter facing the lamp at the distance at which it was measured.
    private static Patch before(Emitter unit, Quantity gives) {
        double away = gives.findAt().orElseThrow().si();
        return new Patch(
                unit.middle().plus(unit.facing().times(away)), unit.facing().times(-1));
    }

    private static Glow glow(Emitter unit, double stops) {
        return switch (unit) {
            case Panel panel when stops > 0 -> HotCentre.of(panel, stops);
            case Disc disc when stops > 0 -> HotCentre.of(disc, stops);
            default -> Glow.even();
        };
    }

    private static Glow grid(Written written, Beam beam) {
        return written.findQuantity("grid")
                .<Glow>map(angle -> CellGrid.ofBeam(beam.aim().forward(), angle.si()))
                .orElse(Glow.even());
    }

    /// Candela along its axis by luminance 1 in its middle: its area, each part as bright as it is.
    private static double candelas(Emitter unit, double stops, Optional<Emitter> hole) {
        return switch (unit) {
            case Panel panel ->
                shining(panel, panel, stops)
                        - hole.map(window -> shining(panel, (Panel) window, stops))
                                .orElse(0.0);
            case Disc disc ->
                Math.PI
                        * disc.radiusMetres()
                        * disc.radiusMetres()
                        * HotCentre.of(disc, stops).meanOverDisc(disc.radiusMetres());
            case Tube tube -> 2 * tube.lengthMetres() * tube.radiusMetres();
        };
    }

    private static double shining(Panel panel, Panel part, double stops) {
        return part.widthMetres()
                * part.heightMetres()
                * HotCentre.of(panel, stops).meanOver(part.widthMetres(), part.heightMetres());
    }

    /// All lumens by luminance 1: π times a flat face's candela, π² times a tube's.
    private static double lumens(Emitter unit, double stops, Optional<Emitter> hole) {
        return candelas(unit, stops, hole) * (unit instanceof Tube ? Math.PI * Math.PI : Math.PI);
    }

    /// The share of what it gives that leaves it: by its level, less what cloth and gel before it take.
    private static double level(PlacedLight placed, Beam beam) {
        return Lamp.output(placed)
                * beam.level()
                * Math.pow(2, -loss(placed.light().written()) - loss(placed.written()));
    }

    private static double loss(Written written) {
        return written.findQuantity("loss").map(Quantity::si).orElse(0.0);
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
