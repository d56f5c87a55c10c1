package plumeline.sheet;

import java.util.List;
import java.util.Locale;
import plumeline.plan.Placed;
import plumeline.sketch.Markup;

/// Boxes to write takes into, and the code that says which sheet this is to a phone.
final class TakeBoxes {
    private static final int ROWS = 6;

    /// Characters of a film's title in the code: more make one that a phone no longer reads off wet paper.
    private static final int LONGEST = 120;

    private TakeBoxes() {}

    static void addTo(Markup section, Subject subject, String title, String revision) {
        section.add(Markup.of("h2", "Takes"));
        section.add(Markup.of("div", measured(subject), Markup.of("div", code(subject, title, revision)))
                .with("class", "beside"));
        Markup body = Markup.of("tbody");
        for (int i = 0; i < ROWS; i++) {
            body.add(Markup.of(
                    "tr",
                    Rows.cell("take", Integer.toString(i + 1)),
                    Rows.cell("blank", ""),
                    Rows.cell("blank", ""),
                    Rows.cell("blank", "")));
        }
        section.add(Markup.of("table", Rows.head(List.of("Take", "What showed", "Measured", "Change one thing")), body)
                .with("class", "takes"));
    }

    private static Markup code(Subject subject, String title, String revision) {
        int count = title.codePointCount(0, title.length());
        String film = count <= LONGEST ? title : title.substring(0, title.offsetByCodePoints(0, LONGEST));
        String text = "film: " + film + "\nshot: " + subject.name() + "\nrevision: " + revision;
        return QrCode.of(
                subject.name() + ".code",
                text,
                String.format(Locale.ROOT, "Code of shot %s, revision %s", subject.name(), revision));
    }

    private static Markup measured(Subject subject) {
        StringBuilder text = new StringBuilder("One change a take. Measured: distance from the sensor mark to ")
                .append(new CameraRows(subject).findTarget().map(Placed::name).orElse("the subject"));
        if (!subject.shot().lights().isEmpty()) {
            text.append("; lux there, lamp by lamp");
        }
        if (!subject.shot().moves().isEmpty()) {
            text.append("; how long the move truly takes");
        }
        if (subject.shot().findRelease().isPresent()) {
            text.append("; frames from release to each height it passes");
        }
        return Markup.of("p", text + ".");
    }
}
