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

        /// A line drawn in a field, for what a table doesn't show at a glance.
        ///
        /// @param name what it shows, in words
        /// @param across what is told from left to right
        /// @param up what is told from below upward
        /// @param line its corners, each across and up, in order
        /// @param notes words beside it
        record Chart(String name, Axis across, Axis up, List<Corner> line, List<Note> notes) implements Part {
            /// Copies the lists.
            public Chart {
                line = List.copyOf(line);
                notes = List.copyOf(notes);
            }
        }

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

    /// An axis of a chart.
    ///
    /// @param words what it counts, with its unit
    /// @param last where it ends; it begins at 0
    public record Axis(String words, double last) {}

    /// A place on a chart.
    ///
    /// @param across along the one axis
    /// @param up along the other
    public record Corner(double across, double up) {}

    /// Words beside a chart's line.
    ///
    /// @param at the place on the line
    /// @param words a few
    public record Note(Corner at, String words) {}
}
