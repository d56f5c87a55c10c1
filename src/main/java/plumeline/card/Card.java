package plumeline.card;

import java.util.List;

/// A card for a crew: words and boxes to write in.
///
/// @param id its id on the papers, one a film
/// @param title what it is and of what
/// @param cautions what to take care of before anything else, in sentences
/// @param parts what stands on it, from top to bottom
public record Card(String id, String title, List<String> cautions, List<Part> parts) {
    /// Copies the lists.
    public Card {
        cautions = List.copyOf(cautions);
        parts = List.copyOf(parts);
    }

    /// Something that stands on a card.
    public sealed interface Part {
        /// What is to be known.
        ///
        /// @param text sentences
        record Say(String text) implements Part {}

        /// What is to be done, with a box to tick.
        ///
        /// @param text sentences
        record Tick(String text) implements Part {}

        /// What the plan gives or what follows from it.
        ///
        /// @param name what it is of
        /// @param text what it is
        record Fact(String name, String text) implements Part {}

        /// A colour: its chip never stands alone.
        ///
        /// @param name what it is of
        /// @param code the chip, as a screen has it: `#rrggbb`
        /// @param text the colour in words and figures
        record Chip(String name, String code, String text) implements Part {}

        /// A fact that only the crew has, with a box to write it in.
        ///
        /// @param name what it is of
        /// @param text what is wanted
        record Ask(String name, String text) implements Part {}

        /// A table; a cell without text is a box to write in.
        ///
        /// @param heads what its columns are
        /// @param rows its rows, each as long as its head
        record Grid(List<String> heads, List<List<String>> rows) implements Part {
            /// Copies the lists.
            public Grid {
                heads = List.copyOf(heads);
                rows = rows.stream().map(List::copyOf).toList();
            }
        }
    }
}
