package plumeline.look;

import java.util.Optional;
import plumeline.colour.Chromaticity;
import plumeline.colour.Xyz;
import plumeline.lit.Instant;
import plumeline.lit.Metered;
import plumeline.lit.Spots;
import plumeline.quantity.Quantity;
import plumeline.stage.Stage;

/// A look as it is judged on a thing.
///
/// @param pass its name; empty for the shot itself
/// @param stage the look
/// @param thing index of the thing in it
/// @param part which part of the thing
/// @param film the film's rate
record LookAt(String pass, Stage stage, int thing, Spots.Part part, Quantity film) {
    /// A light of which this much of all is of an unknown colour is of unknown colour itself.
    private static final double MINOR_SHARE = 0.02;

    String name() {
        return stage.shot().placed().get(thing).name();
    }

    /// The instant in this look.
    Instant instant(Looks at) {
        return at.stage() == stage ? at.now() : at.other().apply(stage);
    }

    Metered.There there(Instant now) {
        return Metered.there(stage, now, thing, part, film);
    }

    /// The colour of the light on the thing.
    sealed interface OfLight {
        /// It is known.
        record Known(Chromaticity colour) implements OfLight {}

        /// It isn't.
        ///
        /// @param reason why, as a sentence
        record Unknown(String reason) implements OfLight {}

        default Optional<Chromaticity> findColour() {
            return this instanceof Known(Chromaticity colour) ? Optional.of(colour) : Optional.empty();
        }
    }

    /// All lamps' light as they add up there; what cards throw back is taken to be as coloured as the rest.
    OfLight colour(Instant now) {
        Metered.There there = there(now);
        if (there.unknown().isPresent()) {
            return new OfLight.Unknown(there.unknown().get());
        }
        Xyz sum = Xyz.DARK;
        for (int i = 0; i < there.light().lamps().size(); i++) {
            double lux = there.light().lamps().get(i);
            var light = stage.shot().lights().get(i);
            if (lux <= 0 || !light.light().emitter().isLamp()) {
                continue;
            }
            Optional<Chromaticity> colour = now.scene().beams().get(i).tint().findColour();
            if (colour.isEmpty() && lux > MINOR_SHARE * there.light().lux()) {
                return new OfLight.Unknown("Not known: the colour of " + light.name() + ". Write "
                        + light.light().name() + "'s white: 5600 K.");
            }
            if (colour.isPresent()) {
                sum = sum.plus(colour.get().at(lux), 1);
            }
        }
        return sum.findChromaticity()
                .<OfLight>map(OfLight.Known::new)
                .orElseGet(() -> new OfLight.Unknown("No light comes to " + name() + " there."));
    }
}
