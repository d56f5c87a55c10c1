package plumeline.plan;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import plumeline.quantity.Quantity;
import plumeline.text.Node;

/// The names that a plan gives to its things, kit, deliveries and shots.
///
/// @param kit names by the kit's section: `cameras`, `lenses` …
/// @param things the things' variants by the thing's name
/// @param heights how high each thing is, where that is written, by every way to refer to it
/// @param hues which hue each thing has, likewise
/// @param ways how each machine goes, by its name
/// @param forms what each light is (`panel`, `card` …), by its name
/// @param deliveries the deliveries' names
/// @param shots each shot's names by the shot's name
record Names(
        Map<String, Set<String>> kit,
        Map<String, Set<String>> things,
        Map<String, Quantity> heights,
        Map<String, Quantity> hues,
        Map<String, Kit.Way> ways,
        Map<String, String> forms,
        Set<String> deliveries,
        Map<String, ShotNames> shots) {

    /// The names inside a shot.
    ///
    /// @param placed things, with the reference each of them places
    /// @param lights lamps
    /// @param moves moves
    /// @param passes passes
    record ShotNames(Map<String, String> placed, Set<String> lights, Set<String> moves, Set<String> passes) {
        static ShotNames of(Node shot) {
            var placed = new LinkedHashMap<String, String>();
            for (var entry : Tree.entries(shot, "place")) {
                placed.put(
                        entry.key(),
                        Tree.scalar(entry.value(), "thing")
                                .map(Node.Scalar::text)
                                .orElse(""));
            }
            return new ShotNames(placed, keys(shot, "lights"), keys(shot, "moves"), keys(shot, "passes"));
        }

        /// Things and lamps together.
        Set<String> bodies() {
            var out = new LinkedHashSet<>(placed.keySet());
            out.addAll(lights);
            return out;
        }

        /// The products placed, without their variants.
        Set<String> products() {
            var out = new HashSet<String>();
            for (String reference : placed.values()) out.add(reference.split("\\.", -1)[0]);
            return out;
        }
    }

    static Names of(Node root) {
        var kit = new LinkedHashMap<String, Set<String>>();
        for (var section : Tree.entries(root, "kit")) kit.put(section.key(), keys(section.value()));
        var things = new LinkedHashMap<String, Set<String>>();
        for (var thing : Tree.entries(root, "things")) things.put(thing.key(), keys(thing.value(), "variants"));
        var shots = new LinkedHashMap<String, ShotNames>();
        for (var shot : Tree.entries(root, "shots")) shots.put(shot.key(), ShotNames.of(shot.value()));
        var ways = new LinkedHashMap<String, Kit.Way>();
        for (var machine : Tree.entries(root, "kit", "machines")) {
            ways.put(machine.key(), KitBuilder.way(machine.value()));
        }
        var forms = new LinkedHashMap<String, String>();
        for (var light : Tree.entries(root, "kit", "lights")) forms.put(light.key(), LampMeaning.form(light.value()));
        return new Names(
                kit,
                things,
                ofThings(root, Names::findHeight),
                ofThings(root, thing -> Tree.find(thing, "hue").flatMap(Written::quantityOf)),
                ways,
                forms,
                keys(root, "deliver"),
                shots);
    }

    private static Map<String, Quantity> ofThings(Node root, Function<Node, Optional<Quantity>> find) {
        var found = new LinkedHashMap<String, Quantity>();
        for (var thing : Tree.entries(root, "things")) {
            if (!(thing.value() instanceof Node.Mapping own)) continue;
            find.apply(Overlay.variant(own, Optional.empty())).ifPresent(value -> found.put(thing.key(), value));
            for (var variant : Tree.entries(own, "variants")) {
                if (!(variant.value() instanceof Node.Mapping over)) continue;
                find.apply(Overlay.variant(own, Optional.of(over)))
                        .ifPresent(value -> found.put(thing.key() + "." + variant.key(), value));
            }
        }
        return found;
    }

    private static Optional<Quantity> findHeight(Node thing) {
        var profile = Tree.items(thing, "profile");
        return profile.isEmpty()
                ? Tree.find(thing, "height").flatMap(Written::quantityOf)
                : Written.itemsOf(profile.getLast()).stream().findFirst().flatMap(Written::quantityOf);
    }

    /// The names of all shots together.
    ShotNames all() {
        var out = new ShotNames(
                new LinkedHashMap<>(), new LinkedHashSet<>(), new LinkedHashSet<>(), new LinkedHashSet<>());
        for (var shot : shots.values()) {
            out.placed().putAll(shot.placed());
            out.lights().addAll(shot.lights());
            out.moves().addAll(shot.moves());
            out.passes().addAll(shot.passes());
        }
        return out;
    }

    Set<String> kit(String section) {
        return kit.getOrDefault(section, Set.of());
    }

    /// Every way to refer to a thing: `flacon`, `flacon.rose`.
    Set<String> references() {
        var out = new LinkedHashSet<String>();
        things.forEach((thing, variants) -> {
            out.add(thing);
            for (String variant : variants) out.add(thing + "." + variant);
        });
        return out;
    }

    private static Set<String> keys(Node node, String... path) {
        var out = new LinkedHashSet<String>();
        for (var entry : Tree.entries(node, path)) out.add(entry.key());
        return out;
    }
}
