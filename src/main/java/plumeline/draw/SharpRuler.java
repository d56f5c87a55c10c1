package plumeline.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import plumeline.optics.FarLimit;
import plumeline.plan.Named;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.quantity.Origin;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.sketch.Box;
import plumeline.sketch.Drawing;
import plumeline.sketch.Labels;
import plumeline.sketch.Lettering;
import plumeline.sketch.Markup;
import plumeline.sketch.Page;
import plumeline.sketch.Pen;
import plumeline.sketch.Shapes;
import plumeline.sketch.Spot;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Stage;

/// A ruler along the camera's axis: things as bars from their nearest to their farthest place, what is not seen of them
/// dashed; under them a line a blur, heavy where it is sharp and hatched where it is soft; the focus as a tick.
final class SharpRuler {
    private static final double WIDTH = 700;
    private static final double EDGE = 16;
    private static final double BAR = 13;
    private static final double BAND = 13;

    /// From the end of what stands before it to a zone's bracket, its words between.
    private static final double ABOVE_LINE = 8 + Lettering.LINE + 5;

    /// Limits farther from things and focus than this many times their span are told, not shown.
    private static final double MOST_SPANS = 1.5;

    private static final double LEAST_SPAN_METRES = 0.02;
    private static final double LEAST_STEP_PIXELS = 74;
    private static final double LEAST_MINOR_PIXELS = 5;

    private final Shot shot;
    private final Print print;
    private final AxisDepths depths;
    private final Page page;
    private final Labels labels;
    private final List<Note> below = new ArrayList<>();
    private final double lowMetres;
    private final double highMetres;
    private double y = 4;

    private SharpRuler(PaperUnit unit, ShotAnswer answer, Shot shot, AxisDepths depths, Moment moment) {
        this.shot = shot;
        this.depths = depths;
        print = new Print(unit);
        page = new Page(
                answer.shot() + ".ruler." + moment.word(),
                "Shot " + answer.shot() + ": what is sharp along the axis at " + moment.word());
        labels = new Labels(new Box(0, 0, WIDTH, 10_000));
        double[] core = DoubleStream.concat(
                        DoubleStream.of(depths.focusMetres()),
                        depths.bars().stream()
                                .flatMapToDouble(bar -> DoubleStream.of(bar.nearMetres(), bar.farMetres())))
                .sorted()
                .toArray();
        double low = core[0];
        double high = core[core.length - 1];
        double most = MOST_SPANS * Math.max(high - low, LEAST_SPAN_METRES);
        double shownLow = low;
        double shownHigh = high;
        for (AxisDepths.Zone zone : depths.zones()) {
            shownLow = Math.min(shownLow, Math.max(zone.nearMetres(), low - most));
            shownHigh = Math.max(
                    shownHigh,
                    switch (zone.far()) {
                        case FarLimit.At(double far) -> Math.min(far, high + most);
                        case FarLimit.Endless() -> high + most / 3;
                    });
        }
        double air = Math.max(shownHigh - shownLow, LEAST_SPAN_METRES) * 0.09;
        lowMetres = Math.max(0, shownLow - air);
        highMetres = shownHigh + air;
    }

    static List<Drawing> of(Plan plan, ShotAnswer answer) {
        Stage stage = answer.posed().stages().getFirst().stage();
        MarkBook marks = new MarkBook(answer);
        if (!marks.isCameraSet()) {
            return List.of();
        }
        double[] values = answer.posed().values();
        PaperUnit unit = plan.film().papersOrDefault();
        AxisDepths start = AxisDepths.of(stage.scene(values, 0), stage.shot(), marks);
        AxisDepths end = AxisDepths.of(
                stage.scene(values, marks.areMovesSet(stage.shot()) ? (double) (stage.frames() - 1) : 0),
                stage.shot(),
                marks);
        List<Drawing> all = new ArrayList<>();
        all.add(new SharpRuler(unit, answer, stage.shot(), start, Moment.START).draw(Moment.START));
        if (!start.isLike(end)) {
            all.add(new SharpRuler(unit, answer, stage.shot(), end, Moment.END).draw(Moment.END));
        }
        return all;
    }

    private double x(double metres) {
        return EDGE + (metres - lowMetres) / (highMetres - lowMetres) * (WIDTH - 2 * EDGE);
    }

    private double clampedX(double metres) {
        return x(Math.clamp(metres, lowMetres, highMetres));
    }

    private String figure(double metres) {
        return print.lengthNumber(metres, Print.Hand.TAPE);
    }

    private Drawing draw(Moment moment) {
        letter(
                "head",
                "at " + moment.word() + ": " + (print.unit() == PaperUnit.INCHES ? "inches" : "mm")
                        + " from the lens point along its axis" + (depths.isThroughGlass() ? ", as seen" : ""),
                4,
                y);
        y += Lettering.ROW + 2;
        double top = y;
        depths.bars().forEach(this::drawBar);
        double floor = y;
        depths.zones().forEach(this::drawZone);
        drawGuides(top, floor);
        drawScale();
        drawFocus(floor);
        sayRest();
        return finish();
    }

    /// Letters words with their left end at a place and their upper edge at a height; below the drawing where they meet
    /// others.
    private void letter(String id, String words, double left, double topPixels) {
        double width = Lettering.width(words);
        double x = Math.clamp(left, 2, Math.max(2, WIDTH - 2 - width));
        Spot middle = new Spot(x + width / 2, topPixels + Lettering.LINE / 2);
        if (labels.place(page.id("name." + id), List.of(words), middle, List.of(middle), 1e4)
                .isEmpty()) {
            note(id, words);
        }
    }

    /// Words in a row below the drawing.
    private record Note(String id, String words) {}

    private void note(String id, String words) {
        below.add(new Note(page.id("note." + id), words));
    }

    private void drawBar(AxisDepths.Bar bar) {
        double near = x(bar.nearMetres());
        double outline = x(bar.outlineMetres());
        double far = x(bar.farMetres());
        String name = Lettering.fitted(bar.name(), WIDTH - 2 * EDGE);
        double width = Lettering.width(name);
        double left = far + 9;
        double row = y;
        if (left + width > WIDTH - 2) {
            left = near - 9 - width;
        }
        if (left < 2) {
            left = near;
            y += Lettering.LINE;
        }
        letter("thing." + bar.name(), name, left, row);
        double top = y + (Lettering.LINE - BAR) / 2;
        Markup group = page.group("thing." + bar.name());
        if (far - outline > 0.5) {
            group.add(Shapes.box(Pen.HIDDEN, new Box(outline, top, far, top + BAR)));
        }
        group.add(Shapes.box(Pen.OUTLINE, new Box(near, top, Math.max(outline, near + 1), top + BAR)));
        y += Lettering.ROW;
    }

    private static String id(AxisDepths.Zone zone) {
        return zone.wants().isEmpty()
                ? "blur"
                : "want." + zone.wants().getFirst().id();
    }

    private String words(AxisDepths.Zone zone) {
        String reach = switch (zone.far()) {
            case FarLimit.At(double far) -> "sharp " + figure(zone.nearMetres()) + " to " + figure(far);
            case FarLimit.Endless() -> "sharp from " + figure(zone.nearMetres()) + " on";
        };
        String blur = ", blur " + Print.number(zone.pixels(), 1) + " px";
        if (depths.zones().size() < 2) {
            return reach + blur;
        }
        String things = zone.wants().stream()
                .flatMap(want -> want.subjects().stream())
                .map(Named::name)
                .distinct()
                .collect(Collectors.joining(", "));
        if (Lettering.width(things) <= WIDTH * 0.45) {
            return reach + blur + " (" + things + ")";
        }
        note(id(zone) + ".things", "Blur " + Print.number(zone.pixels(), 1) + " px: " + things + ".");
        return reach + blur + " (see below)";
    }

    private boolean isFarShown(AxisDepths.Zone zone) {
        return zone.far() instanceof FarLimit.At(double far) && far < highMetres;
    }

    private double farX(AxisDepths.Zone zone) {
        return zone.far() instanceof FarLimit.At(double far) ? clampedX(far) : x(highMetres);
    }

    /// A bracket with words over a line that is heavy where it is sharp, hatched where it is soft.
    private void drawZone(AxisDepths.Zone zone) {
        y += 8;
        double near = clampedX(zone.nearMetres());
        double far = farX(zone);
        boolean isNearShown = zone.nearMetres() > lowMetres;
        String words = words(zone);
        double width = Lettering.width(words);
        double left = Math.clamp((near + far - width) / 2, 2, WIDTH - 2 - width);
        letter(id(zone), words, left, y);
        letterSoft(zone, left, left + width, near, far);
        double bracket = y + ABOVE_LINE - 8;
        double line = bracket + 6 + BAND;
        Markup group = page.group(id(zone));
        group.add(Shapes.line(Pen.EDGE, new Spot(near, bracket), new Spot(far, bracket)));
        group.add(Shapes.line(Pen.THIN, new Spot(EDGE, line), new Spot(WIDTH - EDGE, line)));
        group.add(Shapes.line(Pen.SHARP, new Spot(near, line), new Spot(far, line)));
        if (isNearShown) {
            group.add(Shapes.line(Pen.EDGE, new Spot(near, bracket), new Spot(near, line + 5)));
            group.add(Shapes.hatch(new Box(EDGE, line - BAND, near, line), 6));
        } else {
            group.add(Shapes.arrow(new Spot(near + 20, bracket), new Spot(near, bracket)));
        }
        if (isFarShown(zone)) {
            group.add(Shapes.line(Pen.EDGE, new Spot(far, bracket), new Spot(far, line + 5)));
            group.add(Shapes.hatch(new Box(far, line - BAND, WIDTH - EDGE, line), 6));
        } else {
            group.add(Shapes.arrow(new Spot(far - 20, bracket), new Spot(far, bracket)));
        }
        y = line + 10;
    }

    private void letterSoft(AxisDepths.Zone zone, double left, double right, double near, double far) {
        double width = Lettering.width("soft");
        if (zone.nearMetres() > lowMetres && Math.min(near, left) - EDGE > width + 12) {
            letter(id(zone) + ".before", "soft", EDGE, y);
        }
        if (isFarShown(zone) && WIDTH - EDGE - Math.max(far, right) > width + 12) {
            letter(id(zone) + ".behind", "soft", WIDTH - EDGE - width, y);
        }
    }

    /// From each shown limit up past the things.
    private void drawGuides(double top, double floor) {
        Markup group = page.group("guides");
        for (AxisDepths.Zone zone : depths.zones()) {
            if (zone.nearMetres() > lowMetres) {
                group.add(guide(x(zone.nearMetres()), top, floor));
            }
            if (isFarShown(zone)) {
                group.add(guide(farX(zone), top, floor));
            }
        }
    }

    private static Markup guide(double x, double top, double floor) {
        return Shapes.line(Pen.THIN_DASHED, new Spot(x, top), new Spot(x, floor));
    }

    private void drawScale() {
        y += 4;
        double pixelsPerMetre = (WIDTH - 2 * EDGE) / (highMetres - lowMetres);
        double step = RulerSteps.step(print.unit(), LEAST_STEP_PIXELS / pixelsPerMetre);
        double minor = RulerSteps.minor(print.unit(), step, LEAST_MINOR_PIXELS / pixelsPerMetre);
        Markup group = page.group("scale");
        group.add(Shapes.line(Pen.OUTLINE, new Spot(EDGE, y), new Spot(WIDTH - EDGE, y)));
        for (long i = (long) Math.ceil(lowMetres / minor); i * minor <= highMetres; i++) {
            double x = x(i * minor);
            group.add(Shapes.line(Pen.THIN, new Spot(x, y), new Spot(x, y + 5)));
        }
        for (long i = (long) Math.ceil(lowMetres / step); i * step <= highMetres; i++) {
            double x = x(i * step);
            group.add(Shapes.line(Pen.EDGE, new Spot(x, y), new Spot(x, y + 10)));
            String words = figure(i * step);
            double left = x - Lettering.width(words) / 2;
            boolean isUnderFocus = Math.abs(x - x(depths.focusMetres())) < Lettering.width(words) / 2 + 4;
            if (!isUnderFocus && left > 2 && left + Lettering.width(words) < WIDTH - 2) {
                letter("scale." + i, words, left, y + 11);
            }
        }
        y += 11 + Lettering.ROW;
    }

    /// The focus: a tick through the lines, its figure under the scale.
    private void drawFocus(double floor) {
        double x = x(depths.focusMetres());
        page.group("camera.focus").add(Shapes.line(Pen.OUTLINE, new Spot(x, floor + ABOVE_LINE), new Spot(x, y)));
        String words = "focus " + figure(depths.focusMetres());
        letter("camera.focus", words, x - Lettering.width(words) / 2, y + 2);
        y += Lettering.ROW;
    }

    private void sayRest() {
        if (depths.zones().getFirst().wants().isEmpty()) {
            note(
                    "blur.usual",
                    "No want says how sharp: a blur of " + Print.number(AxisDepths.USUAL_PIXELS, 1) + " px is taken.");
        }
        shot.camera()
                .findSensorBehind()
                .ifPresent(behind -> note(
                        "camera.sensor_behind",
                        "From the sensor mark add " + print.length(behind.si())
                                + (behind.origin() == Origin.MEASURED ? " measured." : ".")));
        if (depths.isThroughGlass()) {
            note("tank", "Seen through the tank's wall: depths are where things look to be, nearer than they stand.");
        }
        depths.unknown().forEach((name, why) -> note("thing." + name, name + ": " + why + "."));
    }

    private Drawing finish() {
        page.letter(labels.draw());
        for (Note note : below) {
            List<String> rows = Lettering.wrapped(note.words(), WIDTH - 8);
            Box box = new Box(4, y, WIDTH, y + rows.size() * Lettering.LINE);
            page.letter(List.of(Markup.of("g", Lettering.text(rows, box)).with("id", note.id())));
            y = box.bottom();
        }
        return page.finish(WIDTH, y + 4);
    }
}
