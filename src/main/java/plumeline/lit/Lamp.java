package plumeline.lit;

import java.util.List;
import java.util.Optional;
import plumeline.geom.Aim;
import plumeline.geom.Vec;
import plumeline.light.Disc;
import plumeline.light.Emitter;
import plumeline.light.Glow;
import plumeline.light.Panel;
import plumeline.light.Tube;
import plumeline.plan.Kit;
import plumeline.plan.PlacedLight;
import plumeline.plan.Written;
import plumeline.quantity.Origin;
import plumeline.quantity.Quantity;
import plumeline.stage.Beam;
import plumeline.stage.Tint;

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

    /// A flag: it only keeps light off.
    ///
    /// @param name its name in the shot
    /// @param face its front
    record Flag(String name, Panel face) implements Lamp {}

    /// How a lamp is coloured.
    enum Colour {
        /// It is known what its colour leaves of its light.
        TOLD,
        /// It is set to a hue, and nobody knows how much less it gives then.
        HUED,
        /// It throws back what others shine on it.
        OF_OTHERS
    }

    /// Why it isn't known how a lamp shines.
    enum Lack {
        /// Nobody says what it gives.
        GIVES,
        /// A photometric file says it, which nobody handed in.
        FILE
    }

    /// A lamp's light by its maker, or read by nobody, is off by so much, 95 %: common practice.
    double TYPICAL_SHARE = 0.15;

    /// What a card throws back where nobody measured it: a white one, common practice.
    double CARD_SHARE = 0.8;

    /// By how much of it that may be off, 95 %: common practice.
    double CARD_HALF_SHARE = 0.1;

    /// Reads a lamp, a flag, or a card on which nothing falls.
    ///
    /// @param placed the lamp as placed
    /// @param beam how it stands
    /// @return how it shines
    static Lamp of(PlacedLight placed, Beam beam) {
        if (placed.light().emitter() instanceof Kit.Emitter.Flag) {
            return new Flag(placed.name(), panel(placed, beam));
        }
        if (placed.light().emitter() instanceof Kit.Emitter.Card) {
            return new Known(
                    placed.name(),
                    LampShine.face(panel(placed, beam).withLuminance(0), Glow.even()),
                    CARD_HALF_SHARE,
                    Colour.OF_OTHERS);
        }
        Written written = placed.light().written();
        Optional<Quantity> gives = written.findQuantity("gives");
        if (gives.isEmpty() && beam.file().isEmpty()) {
            return new Unknown(placed.name(), written.has("file") ? Lack.FILE : Lack.GIVES);
        }
        Optional<Quantity> output = placed.written().findQuantity("output");
        Tint tint = beam.tint();
        double half = output.isPresent()
                ? output.get().halfWidthSi() / output.get().si()
                : Math.hypot(
                        gives.map(quantity -> half(quantity, TYPICAL_SHARE)).orElse(TYPICAL_SHARE),
                        tint instanceof Tint.Mixed mixed ? mixed.halfShare() : 0);
        return new Known(
                placed.name(),
                LampShine.of(placed, beam, tint.leftShare()),
                half,
                tint instanceof Tint.Unknown ? Colour.HUED : Colour.TOLD);
    }

    /// Makes a card shine by what falls on it.
    ///
    /// @param placed the card as placed
    /// @param beam how it stands
    /// @param fallen what falls on it
    /// @return how it shines
    static Known ofCard(PlacedLight placed, Beam beam, CardGlow fallen) {
        Optional<Quantity> reflects = placed.light().written().findQuantity("reflects");
        Panel face = panel(placed, beam);
        double share = reflects.map(Quantity::si).orElse(CARD_SHARE);
        return new Known(
                placed.name(),
                LampShine.face(face.withLuminance(share / Math.PI), fallen),
                reflects.map(quantity -> half(quantity, CARD_HALF_SHARE)).orElse(CARD_HALF_SHARE),
                Colour.OF_OTHERS);
    }

    private static double half(Quantity quantity, double typical) {
        return quantity.hasSpread() || quantity.origin() == Origin.MEASURED
                ? quantity.halfWidthSi() / quantity.si()
                : typical;
    }

    /// Finds what shines on a lamp as a form, of luminance 1; of a card and a flag their front.
    ///
    /// @param placed the lamp as placed
    /// @param beam how it stands
    /// @return its face; empty for a point
    static Optional<Emitter> findFace(PlacedLight placed, Beam beam) {
        Aim.Frame frame = beam.aim().frame();
        Vec middle = beam.aim().eye();
        return switch (placed.light().emitter()) {
            case Kit.Emitter.Panel(Quantity width, Quantity height) -> {
                List<Quantity> window = placed.light().written().listQuantities("window");
                yield Optional.of(
                        isWindow(placed.light())
                                ? panel(beam, window.getFirst(), window.getLast())
                                : panel(beam, width, height));
            }
            case Kit.Emitter.Card(Quantity width, Quantity height) -> Optional.of(panel(beam, width, height));
            case Kit.Emitter.Flag(Quantity width, Quantity height) -> Optional.of(panel(beam, width, height));
            case Kit.Emitter.Disc(Quantity diameter) ->
                Optional.of(new Disc(middle, frame.forward(), diameter.si() / 2, 1));
            case Kit.Emitter.Tube(Quantity length, Quantity diameter) ->
                Optional.of(new Tube(middle, frame.right(), frame.forward(), length.si(), diameter.si() / 2, 1));
            case Kit.Emitter.Point() -> Optional.empty();
        };
    }

    /// Finds the dark window in a panel that shines all round it.
    ///
    /// @param placed the lamp as placed
    /// @param beam how it stands
    /// @return the window as a form
    static Optional<Emitter> findHole(PlacedLight placed, Beam beam) {
        List<Quantity> window = placed.light().written().listQuantities("window");
        return window.isEmpty() || isWindow(placed.light())
                ? Optional.empty()
                : Optional.of(panel(beam, window.getFirst(), window.getLast()));
    }

    /// Finds what of a lamp, a card or a flag keeps others' light off, as its front; a panel's with all round its
    /// window.
    ///
    /// @param placed the lamp as placed
    /// @param beam how it stands
    /// @return its front; empty for a point and a tube
    static Optional<Emitter> findHousing(PlacedLight placed, Beam beam) {
        return switch (placed.light().emitter()) {
            case Kit.Emitter.Panel(Quantity width, Quantity height) -> Optional.of(panel(beam, width, height));
            case Kit.Emitter.Tube _ -> Optional.empty();
            default -> findFace(placed, beam);
        };
    }

    /// Gives how much of what the kit says a lamp gives in its shot.
    ///
    /// @param placed the lamp as placed
    /// @return share of one; 1 where it wasn't metered there
    static double output(PlacedLight placed) {
        return placed.written().findQuantity("output").map(Quantity::si).orElse(1.0);
    }

    /// Gives the front of a card or a flag.
    ///
    /// @param placed what is placed
    /// @param beam how it stands
    /// @return its front
    static Panel panel(PlacedLight placed, Beam beam) {
        return (Panel) findFace(placed, beam).orElseThrow();
    }

    /// Whether only a panel's window shines.
    private static boolean isWindow(Kit.Light light) {
        return light.written().has("window")
                && !light.written().findWord("field").orElse("dark").equals("bright");
    }

    private static Panel panel(Beam beam, Quantity width, Quantity height) {
        Aim.Frame frame = beam.aim().frame();
        return new Panel(beam.aim().eye(), frame.forward(), frame.right(), width.si(), height.si(), 1);
    }
}
