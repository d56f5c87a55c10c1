package plumeline.sheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import plumeline.card.Cautions;
import plumeline.plan.Camera;
import plumeline.sketch.Drawing;
import plumeline.sketch.Markup;

/// What a sheet says at a glance, on a phone's first screenful: which shot, how long, its picture, what limits it,
/// which mark is set next, stop, rate and shutter, the distance by tape, where to take care, which revision.
final class Glance {
    /// How much of the picture a phone shows at first.
    private static final int SEEN_PIXELS = 250;

    /// How much of an upright one, whose foot would be cut off otherwise.
    private static final int UPRIGHT_PIXELS = 274;

    private final Subject subject;
    private final Standing standing;
    private final MarksPart marks;
    private final Printed printed;
    private final Drawing picture;

    Glance(Subject subject, Standing standing, MarksPart marks, Printed printed, Drawing picture) {
        this.subject = subject;
        this.standing = standing;
        this.marks = marks;
        this.printed = printed;
        this.picture = picture;
    }

    Markup block(String revision) {
        Markup words = Markup.of("div").with("class", "words");
        words.add(limiting());
        firstNote().ifPresent(text -> words.add(Rows.paragraph("note", text)));
        words.add(Markup.of("div", marks.next()).with("class", "next-mark"));
        marks.findJigs().ifPresent(text -> words.add(Rows.paragraph("together", text)));
        CameraRows camera = new CameraRows(subject);
        words.add(Rows.paragraph("exposure", camera.exposure()), Rows.paragraph("from-sensor", camera.fromSensor()));
        words.add(Rows.paragraph("care", "Take care: " + cares() + "; see below."));
        words.add(Markup.of("p", "Revision " + revision + ", " + printed.time()).with("class", "revision"));
        return Markup.of(
                        "div",
                        Markup.of("h1", "Shot " + subject.number() + ": " + subject.name())
                                .with("class", "shot-name"),
                        Rows.paragraph("length", subject.length()),
                        Markup.of("div", reference(), words).with("class", "sides"))
                .with("class", "glance");
    }

    /// On a phone only the picture with its frames' names is seen at first; the things' names are rolled to.
    private Markup reference() {
        return Markup.of("div", picture.picture())
                .with("class", "reference")
                .with("role", "group")
                .with("aria-label", picture.title())
                .with("tabindex", "0")
                .with(
                        "style",
                        "--seen:" + Math.min(picture.heightPixels(), isUpright() ? UPRIGHT_PIXELS : SEEN_PIXELS)
                                + "px");
    }

    private boolean isUpright() {
        return subject.shot().camera().heldOrDefault() == Camera.Held.UPRIGHT;
    }

    private Markup limiting() {
        Standing.Limiting limiting = standing.limiting();
        return Rows.verdict(limiting.verdict().word(), limiting.sentence()).with("class", "limiting");
    }

    /// What a machine can't do decides whether the shot can be run at all: the first note that goes on to say what to
    /// do, without that.
    private Optional<String> firstNote() {
        return subject.answer().notes().stream()
                .filter(note -> note.contains(". "))
                .findFirst()
                .map(note -> note.substring(0, note.indexOf(". ") + 1));
    }

    private String cares() {
        List<Cautions.Caution> cautions = Cautions.of(subject.plan(), subject.shot());
        return cautions.stream().map(Cautions.Caution::about).collect(Collectors.joining(", "));
    }
}
