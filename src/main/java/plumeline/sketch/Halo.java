package plumeline.sketch;

/// Line art that is read upon a picture, be it dark or light: every line and letter in black upon a wider one in white.
public final class Halo {
    /// How much wider a line's white is, pixels.
    private static final double WIDER = 2.4;

    /// Up to this weight a line is hatching, whose white is narrower.
    private static final double FINE = 0.5;

    private static final double FINE_WIDER = 1;
    private static final double OF_LETTERS = 4;
    private static final String WHITE = "#fff";

    private Halo() {}

    /// Lays line art upon its white.
    ///
    /// @param art black line art
    /// @return a group of both; ids are of the black one
    public static Markup of(Markup art) {
        return Markup.of("g", white(art), art);
    }

    private static Markup white(Markup art) {
        Markup copy = art.bare();
        if (art.name().equals("text")) {
            return copy.text(art.ownText())
                    .with("fill", WHITE)
                    .with("stroke", WHITE)
                    .with("stroke-width", OF_LETTERS)
                    .with("stroke-linejoin", "round");
        }
        if (!art.findAttribute("stroke").orElse("none").equals("none")) {
            double weight =
                    art.findAttribute("stroke-width").map(Double::parseDouble).orElse(1.0);
            copy.with("stroke", WHITE)
                    .with("stroke-width", weight + (weight <= FINE ? FINE_WIDER : WIDER))
                    .without("stroke-dasharray");
        } else if (art.findAttribute("fill").orElse("none").equals("#000")) {
            copy.with("fill", WHITE).with("stroke", WHITE).with("stroke-width", WIDER);
        }
        for (Markup child : art.elements()) {
            if (!child.name().equals("clipPath")) {
                copy.add(white(child));
            }
        }
        return copy;
    }
}
