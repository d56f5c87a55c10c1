package plumeline.sketch;

/// How a line is drawn. Weights are for print read at arm's length; kinds differ by weight and dash.
public enum Pen {
    /// What is seen of a thing, a footprint.
    OUTLINE(1.8, ""),
    /// Rims and edges within an outline.
    EDGE(0.9, ""),
    /// What stands behind something.
    HIDDEN(0.9, "5 3"),
    /// The picture's border.
    BORDER(2.6, ""),
    /// Sight lines at the start, leaders, dimension lines.
    THIN(0.7, ""),
    /// Sight lines at the end.
    THIN_DASHED(0.7, "9 4"),
    /// The centreline.
    CENTRE(0.7, "14 3 3 3"),
    /// The water line, a tank's inside.
    WATER(0.9, "2 3"),
    /// A leeway box.
    LEEWAY(1.2, ""),
    /// A side of a leeway that goes on.
    LEEWAY_OPEN(1.2, "2 4"),
    /// What is sharp on a ruler.
    SHARP(5, ""),
    /// Hatching.
    HATCH(0.4, ""),
    /// A machine's way.
    WAY(3, "");

    private final double weight;
    private final String dash;

    Pen(double weight, String dash) {
        this.weight = weight;
        this.dash = dash;
    }

    /// Sets the attributes of a group or a shape.
    ///
    /// @param markup the group or shape
    /// @return the same
    public Markup on(Markup markup) {
        markup.with("fill", "none").with("stroke", "#000").with("stroke-width", weight);
        return dash.isEmpty() ? markup : markup.with("stroke-dasharray", dash);
    }
}
