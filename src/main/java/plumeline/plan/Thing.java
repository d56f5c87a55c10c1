package plumeline.plan;

import java.util.List;
import java.util.Optional;
import plumeline.quantity.Quantity;

/// A product or other thing of the crew, one variant of it where `variant` is present.
///
/// @param name the thing's name, without the variant
/// @param variant the variant merged in
/// @param variants the names of all its variants, in the order written
/// @param form its outer form; its own origin is the middle of its base
/// @param body opaque or clear, where written
/// @param label its label, facing −y at turn 0
/// @param written all keys as written, the variant's in place of the thing's (`mass`, `hue`, `contents.volume` …)
public record Thing(
        String name,
        Optional<String> variant,
        List<String> variants,
        Form form,
        Optional<Body> body,
        Optional<Label> label,
        Written written) {

    /// Copies the list.
    public Thing {
        variants = List.copyOf(variants);
    }

    /// Whether light goes through.
    public enum Body {
        /// Nothing is seen through it; it hides what stands behind.
        OPAQUE,
        /// Clear, as glass is.
        CLEAR
    }

    /// The outer form of a thing.
    public sealed interface Form {
        /// A body of revolution by its profile.
        ///
        /// @param stations heights from the base upwards, with the radius there; a step is two stations at one
        /// height
        record Profile(List<Station> stations) implements Form {
            /// Copies the list.
            public Profile {
                stations = List.copyOf(stations);
            }
        }

        /// A box, its width facing −y.
        ///
        /// @param width along x at turn 0
        /// @param depth along y at turn 0
        /// @param height upwards
        record Box(Quantity width, Quantity depth, Quantity height) implements Form {}

        /// An upright cylinder.
        ///
        /// @param diameter its diameter
        /// @param height its height
        record Cylinder(Quantity diameter, Quantity height) implements Form {}
    }

    /// One station of a profile.
    ///
    /// @param height above the base
    /// @param radius the radius there
    public record Station(Quantity height, Quantity radius) {}

    /// The label of a thing.
    ///
    /// @param width its width, round the body
    /// @param height its height
    /// @param bottom its lower edge above the base, where written
    public record Label(Quantity width, Quantity height, Optional<Quantity> bottom) {}

    /// Gives the name with the variant, `flacon.rose`, as a plan refers to it.
    ///
    /// @return the reference
    public String reference() {
        return variant.map(v -> name + "." + v).orElse(name);
    }
}
