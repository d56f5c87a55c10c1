package plumeline.draw;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Body;
import plumeline.geom.Projection;
import plumeline.plan.Delivery;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.quantity.Print;
import plumeline.sight.Extent;
import plumeline.sight.Sight;
import plumeline.sketch.Box;
import plumeline.sketch.Drawing;
import plumeline.sketch.Labels;
import plumeline.sketch.Lettering;
import plumeline.sketch.Markup;
import plumeline.sketch.Page;
import plumeline.sketch.Pen;
import plumeline.sketch.Shapes;
import plumeline.sketch.Spot;
import plumeline.sketch.Stretch;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Frame;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// Where things stand across the picture over a shot: the picture's width across the page, screen frames down it.
final class TravelAcross {
    private static final double WIDTH = 700;
    private static final double LEFT = 150;
    private static final double RIGHT = 670;
    private static final double HEIGHT = 260;

    /// Room above the names for the shares of the width.
    private static final double HEAD = 50;

    /// Between the names and the picture.
    private static final double GAP = 8;

    private static final int MOST_INSTANTS = 49;

    /// Less than this share of the picture's width is no travel.
    private static final double LEAST_SHARE = 1e-3;

    /// Things that start nearer to each other than this share of the width aren't told apart there.
    private static final double NEAR_SHARE = 0.03;

    /// More things than this are named at the start only.
    private static final int MOST_NAMED_TWICE = 8;

    /// One thing at one instant; shares of the picture's width from its left side.
    ///
    /// @param row which instant
    /// @param left its left edge
    /// @param right its right edge
    private record Across(int row, double left, double right) {
        boolean isInPicture() {
            return right > 0 && left < 1;
        }
    }

    /// A thing's runs of instants at which it is wholly in front of the lens.
    private record Track(String name, List<List<Across>> runs) {
        List<Across> all() {
            return runs.stream().flatMap(List::stream).toList();
        }

        boolean isInPicture() {
            return all().stream().anyMatch(Across::isInPicture);
        }

        boolean startsInPicture() {
            Across start = all().getFirst();
            return start.row() == 0 && start.isInPicture();
        }

        boolean endsInPicture(int row) {
            Across end = all().getLast();
            return end.row() == row && end.isInPicture();
        }

        /// The middle of what is in the picture at the start.
        double startShare() {
            return inPicture(all().getFirst());
        }

        boolean moves() {
            double least = all().stream().mapToDouble(Across::left).min().orElse(0);
            double most = all().stream().mapToDouble(Across::left).max().orElse(0);
            return most - least > LEAST_SHARE || runs.size() > 1;
        }
    }

    private final Plan plan;
    private final Stage stage;
    private final List<Scene> scenes;
    private final List<Track> tracks;
    private final Page page;
    private final Box plot;
    private final List<String> key = new ArrayList<>();
    private final List<String> unplaced = new ArrayList<>();
    private final Labels labels;

    private TravelAcross(Plan plan, ShotAnswer answer) {
        this.plan = plan;
        stage = answer.posed().stages().getFirst().stage();
        scenes = scenes(answer);
        MarkBook marks = new MarkBook(answer);
        tracks = new ArrayList<>();
        for (int i = 0; i < stage.shot().placed().size(); i++) {
            String name = stage.shot().placed().get(i).name();
            if (marks.isPlaced(name)) {
                tracks.add(new Track(name, runs(i)));
            }
        }
        tracks.removeIf(track -> !track.isInPicture());
        page = new Page(
                answer.shot() + ".travel",
                "Shot " + answer.shot() + ": where things stand across the picture, frames down the page");
        // How high the names reach doesn't depend on where the picture begins.
        double names =
                new ViewNames(WIDTH, 0, ViewNames.Side.ABOVE).place(names(0)).reach();
        double top = HEAD + Math.max(names, Lettering.ROW) + GAP;
        plot = new Box(LEFT, top, RIGHT, top + HEIGHT);
        labels = new Labels(new Box(0, top, WIDTH, plot.bottom()));
    }

    static List<Drawing> of(Plan plan, ShotAnswer answer) {
        TravelAcross travel = new TravelAcross(plan, answer);
        MarkBook marks = new MarkBook(answer);
        boolean isKnown = marks.isCameraSet() && marks.areMovesSet(travel.stage.shot());
        return isKnown && travel.tracks.stream().anyMatch(Track::moves) ? List.of(travel.draw()) : List.of();
    }

    private List<Scene> scenes(ShotAnswer answer) {
        double[] values = answer.posed().values();
        long frames = stage.frames();
        int instants = (int) Math.min(MOST_INSTANTS, frames);
        List<Scene> all = new ArrayList<>();
        for (int i = 0; i < instants; i++) {
            all.add(stage.scene(values, instants > 1 ? (frames - 1) * (double) i / (instants - 1) : 0));
        }
        return all;
    }

    private List<List<Across>> runs(int thing) {
        List<List<Across>> runs = new ArrayList<>();
        boolean isOpen = false;
        for (int row = 0; row < scenes.size(); row++) {
            Scene scene = scenes.get(row);
            Body body = scene.things().get(thing);
            Projection view = scene.view(body);
            if (!(Sight.leastDepthMetres(view, body) > 0)) {
                isOpen = false;
                continue;
            }
            Extent extent = Sight.extent(view, body);
            double width = scene.picture().widthTangent();
            Across across = new Across(row, 0.5 + extent.left() / width, 0.5 + extent.right() / width);
            if (!isOpen) {
                runs.add(new ArrayList<>());
                isOpen = true;
            }
            runs.getLast().add(across);
        }
        return runs;
    }

    private static double x(double share) {
        return LEFT + share * (RIGHT - LEFT);
    }

    private double y(double row) {
        return plot.top() + row / Math.max(1, scenes.size() - 1) * plot.height();
    }

    private Drawing draw() {
        tracks.forEach(this::drawTrack);
        ViewNames.Placing above =
                new ViewNames(WIDTH, plot.top() - GAP, ViewNames.Side.ABOVE).place(names(plot.top() - GAP));
        // Numbers are told by one key: they stand at the start alone.
        ViewNames under = new ViewNames(WIDTH, plot.bottom() + GAP, ViewNames.Side.BELOW);
        ViewNames.Placing below = under.place(above.key().isEmpty() ? namesAtEnd() : List.of());
        below = below.key().isEmpty() ? below : under.place(List.of());
        drawDeliveries(plot.bottom() + GAP + below.reach());
        page.group("picture").add(Shapes.box(Pen.BORDER, plot));
        drawShares();
        drawFrames();
        page.letter(above.labels().draw());
        page.letter(below.labels().draw());
        key.addAll(above.key());
        unplaced.addAll(above.unplaced());
        tracks.stream().filter(track -> !track.startsInPicture()).forEach(this::nameInside);
        page.letter(labels.draw());
        return page.finish(WIDTH, letterUnplaced(plot.bottom() + GAP + below.reach()) + 4);
    }

    private double letterUnplaced(double from) {
        double low = from + Lettering.ROW * plan.deliveries().size() + 4;
        List<String> rows = new ArrayList<>();
        rows.add("Each thing is between two lines, its left and its right edge.");
        if (!key.isEmpty()) {
            rows.addAll(Lettering.wrapped(String.join(", ", key) + ".", WIDTH - 8));
        }
        if (!unplaced.isEmpty()) {
            rows.addAll(Lettering.wrapped("No room for: " + String.join(", ", unplaced) + ".", WIDTH - 8));
        }
        Box box = new Box(4, low, WIDTH, low + rows.size() * Lettering.LINE);
        page.letter(List.of(Markup.of("g", Lettering.text(rows, box)).with("id", page.id("unplaced"))));
        return box.bottom();
    }

    /// What is in the picture from the start on is named above it.
    private List<ViewNames.Name> names(double edge) {
        return tracks.stream()
                .filter(Track::startsInPicture)
                .map(track -> name("name.thing.", track, new Spot(x(track.startShare()), edge + GAP)))
                .toList();
    }

    /// Where things start behind each other, what is in the picture at the end is named there too.
    private List<ViewNames.Name> namesAtEnd() {
        boolean isShared = tracks.size() <= MOST_NAMED_TWICE
                && tracks.stream()
                        .filter(Track::startsInPicture)
                        .anyMatch(track -> tracks.stream()
                                .filter(other -> other.startsInPicture() && !other.equals(track))
                                .anyMatch(other -> Math.abs(other.startShare() - track.startShare()) < NEAR_SHARE));
        return tracks.stream()
                .filter(track -> isShared && track.endsInPicture(scenes.size() - 1))
                .map(track -> name(
                        "name.end.thing.",
                        track,
                        new Spot(x(inPicture(track.all().getLast())), plot.bottom())))
                .toList();
    }

    private ViewNames.Name name(String id, Track track, Spot anchor) {
        return new ViewNames.Name(page.id(id + track.name()), rows(track), anchor);
    }

    private List<String> rows(Track track) {
        return Lettering.rows(
                track.name(), WIDTH * 0.45, tracks.stream().map(Track::name).toList());
    }

    /// The middle of what is in the picture.
    private static double inPicture(Across across) {
        return (Math.max(across.left(), 0) + Math.min(across.right(), 1)) / 2;
    }

    /// What comes in later is named there.
    private void nameInside(Track track) {
        Across first =
                track.all().stream().filter(Across::isInPicture).findFirst().orElseThrow();
        Spot anchor = new Spot(x(Math.clamp((first.left() + first.right()) / 2, 0, 1)), y(first.row()));
        List<String> name = rows(track);
        if (labels.place(page.id("name.thing." + track.name()), name, anchor, Labels.around(anchor, name, 8, 200), 14)
                .isEmpty()) {
            unplaced.add(track.name());
        }
    }

    private void drawTrack(Track track) {
        Markup group = page.group("thing." + track.name());
        for (List<Across> run : track.runs()) {
            List<Spot> left = run.stream()
                    .map(across -> new Spot(x(across.left()), y(across.row())))
                    .toList();
            List<Spot> right = run.stream()
                    .map(across -> new Spot(x(across.right()), y(across.row())))
                    .toList();
            List<Stretch> edges = new ArrayList<>();
            addEdge(edges, left);
            addEdge(edges, right);
            group.add(Shapes.lines(Pen.OUTLINE, edges));
            edges.forEach(labels::keepLine);
        }
    }

    private void addEdge(List<Stretch> edges, List<Spot> spots) {
        for (int i = 1; i < spots.size(); i++) {
            new Stretch(spots.get(i - 1), spots.get(i)).clipped(plot).ifPresent(edges::add);
        }
    }

    /// Both sides of every delivery's frame, dashed, and its name below between them.
    private void drawDeliveries(double from) {
        for (int i = 0; i < plan.deliveries().size(); i++) {
            Delivery delivery = plan.deliveries().get(i);
            Shot shot = stage.shot();
            Frame frame = Frame.of(scenes.getFirst().picture(), delivery, shot.cropOrDefault(delivery.name()));
            double left = Math.clamp(x(frame.left() + 0.5), plot.left(), plot.right());
            double right = Math.clamp(x(frame.right() + 0.5), plot.left(), plot.right());
            double low = from + Lettering.ROW * i + Lettering.LINE / 2 + 2;
            Markup group = page.group("delivery." + delivery.name());
            for (double side : new double[] {left, right}) {
                Stretch line = new Stretch(new Spot(side, plot.top()), new Spot(side, low));
                group.add(Shapes.line(Pen.HIDDEN, line));
                labels.keepLine(line);
            }
            group.add(Shapes.line(Pen.HIDDEN, new Spot(left, low), new Spot(right, low)));
            List<String> name = List.of(Lettering.fitted(delivery.name(), WIDTH - 8));
            double half = Lettering.width(name) / 2;
            Spot middle = new Spot(Math.clamp((left + right) / 2, half + 4, WIDTH - half - 4), low);
            fixed("name.delivery." + delivery.name(), name, middle);
        }
    }

    /// Letters a text where nothing else may stand.
    private void fixed(String id, List<String> text, Spot middle) {
        Box box = Labels.room(text, middle);
        labels.keepFree(box);
        page.letter(List.of(Markup.of(
                        "g",
                        Markup.of("rect")
                                .with("x", box.left() - 3)
                                .with("y", box.top())
                                .with("width", box.width() + 6)
                                .with("height", box.height())
                                .with("fill", "#fff"),
                        Lettering.text(text, box))
                .with("id", page.id(id))));
    }

    private void drawShares() {
        Markup group = page.group("shares");
        for (int quarter = 0; quarter <= 4; quarter++) {
            double x = x(quarter / 4.0);
            group.add(Shapes.line(Pen.EDGE, new Spot(x, HEAD - 3), new Spot(x, HEAD + 5)));
            String text = Print.share(quarter / 4.0, 0);
            fixed("share." + 25 * quarter, List.of(text), new Spot(x, HEAD - 15));
        }
        fixed("unit.shares", List.of("of the picture's width"), new Spot(x(0.5), 12));
    }

    /// Frames and real seconds at start, quarters and end.
    private void drawFrames() {
        Markup group = page.group("frames");
        long before = -1;
        for (int quarter = 0; quarter <= 4; quarter++) {
            long frame = Math.round((stage.frames() - 1) * quarter / 4.0);
            if (frame == before) {
                continue;
            }
            before = frame;
            double y = y((double) frame / Math.max(1, stage.frames() - 1) * (scenes.size() - 1));
            group.add(Shapes.line(Pen.EDGE, new Spot(plot.left() - 7, y), new Spot(plot.left(), y)));
            List<String> lines = List.of(
                    "frame " + (frame + 1), Print.seconds(stage.retime().realSeconds((double) frame), 2) + " real");
            double middle = plot.left() - 12 - Lettering.width(lines) / 2;
            // Beside the plot, not beside the names above and below it.
            double beside = Math.clamp(y, plot.top() + Lettering.LINE, plot.bottom() - Lettering.LINE);
            fixed("frame." + frame, lines, new Spot(Math.max(middle, Lettering.width(lines) / 2 + 2), beside));
        }
    }
}
