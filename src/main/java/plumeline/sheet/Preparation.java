package plumeline.sheet;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import plumeline.geom.Body;
import plumeline.geom.Vec;
import plumeline.plan.Placed;
import plumeline.quantity.Print;
import plumeline.sketch.Markup;

/// What is done once before the first take: charts and plates, which hero stands where and which way its label faces.
///
/// **Source:** common practice.
final class Preparation {
    private final Subject subject;

    Preparation(Subject subject) {
        this.subject = subject;
    }

    void addTo(Markup section, Changes changes) {
        section.add(Markup.of("h2", "Before the first take"));
        reminders().forEach(text -> section.add(Rows.toTick(text)));
        if (!subject.shot().placed().isEmpty()) {
            section.add(Markup.of("h2", "Heroes and how their labels are turned"), heroes(changes));
        }
    }

    private List<String> reminders() {
        List<String> all = new ArrayList<>();
        String each = subject.passes().isEmpty() ? "" : ", once for each pass";
        all.add("Colour chart and grey card where the hero stands, in the shot's light" + each + ".");
        boolean painted = subject.shot().placed().stream().anyMatch(Placed::isHung)
                || subject.shot().findRelease().isPresent()
                || !subject.passes().isEmpty();
        all.add("Clean plate: same " + (subject.stage().isMoving() ? "move, " : "")
                + "focus and light, the things taken away"
                + (painted ? "; this shot needs it for cleaning up and laying passes over each other." : "."));
        all.add("Photograph the taped marks and the lamps as they stand, with the revision in the picture.");
        return all;
    }

    private Markup heroes(Changes changes) {
        Markup body = Markup.of("tbody");
        for (int i = 0; i < subject.shot().placed().size(); i++) {
            heroes(body, i, changes);
        }
        return Markup.of("table", Rows.head(List.of("Where", "What", "Hero no.", "Label's middle")), body)
                .with("class", "heroes");
    }

    /// A row for the thing that stands there, and one for each other that a later pass puts in its place.
    private void heroes(Markup body, int i, Changes changes) {
        Set<String> said = new HashSet<>();
        for (Subject pass : subject.eachPass()) {
            Placed placed = pass.shot().placed().get(i);
            String clocking = clocking(pass, placed, i);
            if (!said.add(placed.thing().reference() + clocking)) {
                continue;
            }
            Markup product = Rows.cell("", placed.thing().reference());
            Markup row =
                    Markup.of("tr", Rows.name(placed.name()), product, Rows.cell("blank", ""), Rows.cell("", clocking));
            body.add(changes.tell(row, product, Changes.Of.HERO, subject.name(), placed.name()));
        }
    }

    /// Which products stand where, those of later passes too.
    static List<Rows.Pair> products(Subject subject) {
        List<Rows.Pair> products = new ArrayList<>();
        for (int i = 0; i < subject.shot().placed().size(); i++) {
            Set<String> references = new LinkedHashSet<>();
            for (Subject pass : subject.eachPass()) {
                references.add(pass.shot().placed().get(i).thing().reference());
            }
            products.add(new Rows.Pair(subject.shot().placed().get(i).name(), String.join(" or ", references)));
        }
        return products;
    }

    /// Facing is the turn of the label's middle from the lens, clockwise seen from above.
    private static String clocking(Subject pass, Placed placed, int index) {
        Body body = pass.first().things().get(index);
        Vec toLens = pass.first().aim().eye().minus(body.pose().base());
        double turn = body.pose().turnRadians();
        double facing = Math.IEEEremainder(turn - Math.atan2(-toLens.x(), -toLens.y()), 2 * Math.PI);
        String middle = placed.thing().label().isPresent() ? "" : "no label; its front ";
        return middle + turned(turn) + "; from the lens " + turned(facing);
    }

    private static String turned(double radians) {
        return MarkWords.turned(Print.degrees(Math.abs(radians)), radians, "clockwise", "anticlockwise");
    }
}
