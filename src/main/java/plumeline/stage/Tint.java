package plumeline.stage;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import plumeline.colour.Chromaticity;
import plumeline.colour.Hue;
import plumeline.colour.Mixture;
import plumeline.colour.Planck;
import plumeline.colour.Primary;
import plumeline.colour.TypicalLamp;
import plumeline.colour.Xyz;
import plumeline.plan.PlacedLight;
import plumeline.plan.Written;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.text.Node;

/// The colour that a lamp is set to in a shot, and what that leaves of its light.
public sealed interface Tint {
    /// Its emitters are driven so.
    ///
    /// @param names the emitters' names
    /// @param mixture their drives for the colour, at full level
    /// @param share what it gives then, of what the kit says it gives, share of one
    /// @param halfShare by how much of that it may be off, 95 %: more where nobody knows its emitters
    record Mixed(List<String> names, Mixture mixture, double share, double halfShare) implements Tint {
        /// Copies the list.
        public Mixed {
            names = List.copyOf(names);
        }
    }

    /// It is a glowing body's white, and gives all that it gives.
    ///
    /// @param kelvin its temperature, K
    record White(double kelvin) implements Tint {}

    /// Nobody says which colour it has; it gives all that it gives.
    record Untold() implements Tint {}

    /// It can't be told which colour it has, nor what it gives then.
    ///
    /// @param reason why, as a sentence
    record Unknown(String reason) implements Tint {}

    /// What a lamp of unknown emitters gives at a colour is off by so much, 95 %: common practice.
    double TYPICAL_SHARE = 0.3;

    /// Gives the tint of a lamp. A `hue` is the most saturated colour of that hue that its emitters mix, a `white` a
    /// glowing body's; without either all emitters are full.
    ///
    /// @param light the lamp as placed
    /// @return its tint
    static Tint of(PlacedLight light) {
        Written kit = light.light().written();
        Optional<Quantity> hue = light.written().findQuantity("hue");
        Optional<Quantity> white = light.written().findQuantity("white");
        if (kit.has("primaries")) {
            return mixed(light, hue, white);
        }
        if (hue.isPresent()) {
            return new Unknown("Not known: what " + light.light().name()
                    + " is made of. Write its primaries: x, y and lumens of each, or primaries: typical.");
        }
        List<Quantity> own = kit.listQuantities("white");
        Optional<Quantity> kelvin = white.or(() -> own.size() == 1 ? Optional.of(own.getFirst()) : Optional.empty());
        return kelvin.<Tint>map(found -> new White(found.si())).orElseGet(Untold::new);
    }

    private static Tint mixed(PlacedLight light, Optional<Quantity> hue, Optional<Quantity> white) {
        Written kit = light.light().written();
        List<String> names = new ArrayList<>();
        List<Primary> primaries = new ArrayList<>();
        boolean isTypical = kit.findWord("primaries").isPresent();
        if (kit.findNode("primaries").orElse(null) instanceof Node.Sequence list) {
            for (Node item : list.items()) {
                Written one = new Written((Node.Mapping) item, item.place());
                names.add(one.findWord("name").orElseThrow());
                primaries.add(new Primary(
                        Chromaticity.ofXy(si(one, "x"), Math.min(si(one, "y"), 1 - si(one, "x"))), si(one, "lumens")));
            }
        } else {
            names.addAll(TypicalLamp.NAMES);
            primaries.addAll(TypicalLamp.PRIMARIES);
        }
        Xyz all = Xyz.DARK;
        for (Primary each : primaries) {
            all = all.plus(each.colour().at(each.lumens()), 1);
        }
        if (hue.isEmpty() && white.isEmpty()) {
            Mixture full = new Mixture(
                    Collections.nCopies(primaries.size(), 1.0),
                    all.findChromaticity().orElseThrow(),
                    all.y(),
                    0);
            return new Mixed(names, full, 1, 0);
        }
        Optional<Chromaticity> wanted = hue.isPresent()
                ? Hue.findSaturated(primaries, hue.get().si())
                : white.map(kelvin -> Planck.chromaticity(kelvin.si()));
        if (wanted.isEmpty()) {
            return new Unknown("Not known: a hue of " + light.light().name() + ": its emitters don't even mix white.");
        }
        Mixture mixture = Mixture.brightest(primaries, wanted.get());
        boolean isSet = kit.findWord("gives_with").filter("set"::equals).isPresent();
        return new Mixed(
                names, mixture, isSet ? 1 : mixture.lumens() / all.y(), isSet || !isTypical ? 0 : TYPICAL_SHARE);
    }

    private static double si(Written written, String key) {
        return written.findQuantity(key).map(Quantity::si).orElseThrow();
    }

    /// Finds the colour of its light.
    ///
    /// @return the colour; empty where it isn't known
    default Optional<Chromaticity> findColour() {
        return switch (this) {
            case Mixed mixed -> Optional.of(mixed.mixture().colour());
            case White(double kelvin) -> Optional.of(Planck.chromaticity(kelvin));
            case Untold _, Unknown _ -> Optional.empty();
        };
    }

    /// Gives what is left of what the kit says it gives.
    ///
    /// @return share of one; 1 where that isn't known
    default double leftShare() {
        return this instanceof Mixed mixed ? mixed.share() : 1;
    }

    /// Gives how far each emitter is driven for a level.
    ///
    /// @param level share of what it gives at that colour, 0 to 1
    /// @return emitters with their drives, in their order: `red 12 %`; none where it has none
    default List<String> listDrives(double level) {
        return this instanceof Mixed(List<String> names, Mixture mixture, double _, double _)
                ? IntStream.range(0, names.size())
                        .mapToObj(i -> names.get(i) + " "
                                + Print.share(mixture.drives().get(i) * level, 1))
                        .toList()
                : List.of();
    }
}
