package plumeline.render;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Body;
import plumeline.geom.Point;
import plumeline.geom.Vec;
import plumeline.light.Latitude;
import plumeline.light.Patch;
import plumeline.lit.Setting;
import plumeline.lit.Spots;
import plumeline.plan.Placed;
import plumeline.plan.Plan;
import plumeline.quantity.Print;
import plumeline.sketch.Box;
import plumeline.sketch.Markup;
import plumeline.sketch.Pen;
import plumeline.sketch.Shapes;
import plumeline.sketch.Spot;
import plumeline.stage.PlaceSight;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.trace.Plate;

/// What lands where: a greyed picture with lines where the camera clips, at mid grey and a stop about it, and where
/// noise hides what is darker; and on each thing a number, stops over or under mid grey.
public final class Levels {
    /// Shares of luminance of the screen's red, green and blue.
    ///
    /// **Source:** ITU-R BT.709, to four digits as printed there.
    private static final double[] LUMINANCE = {0.2126, 0.7152, 0.0722};

    /// A greyed picture goes from this share of the screen's scale to white, so that black lines are read upon it.
    private static final double DARKEST = 0.35;

    /// Closed lines that are shorter are noise, pixels of the plate.
    private static final double LEAST_PIXELS = 8;

    /// A number is of a patch as wide, share of the picture's width.
    private static final double PATCH = 1 / 60.0;

    /// Where the background may be metered, shares of the picture's width and height: near the edges, high ones first.
    private static final double[][] EDGES = {
        {0.06, 0.1}, {0.94, 0.1}, {0.5, 0.06}, {0.06, 0.5}, {0.94, 0.5}, {0.06, 0.9}, {0.94, 0.9}
    };

    /// Where the table may be metered, left and right.
    private static final double[][] ON_TABLE = {{0.1, 0.92}, {0.9, 0.92}};

    private final Stage stage;
    private final Scene scene;
    private final double[] table;
    private final Developing developing;
    private final Optional<Latitude> latitude;
    private final Contours most;
    private final Contours grey;

    private Levels(Plate plate, Stage stage, Scene scene, Plan plan) {
        this.stage = stage;
        this.scene = scene;
        table = SetGround.tableMetres(plan);
        developing = Developing.of(
                stage.shot().camera(), scene.picture(), plan.film().rate());
        latitude = Setting.findLatitude(stage.shot().camera());
        double[] fullest = new double[plate.width() * plate.height()];
        double[] luminance = new double[fullest.length];
        double[] gains = {
            developing.gains().red(),
            developing.gains().green(),
            developing.gains().blue()
        };
        for (int i = 0; i < fullest.length; i++) {
            fullest[i] = Double.NEGATIVE_INFINITY;
            for (int channel = 0; channel < gains.length; channel++) {
                double share = developing.sharePerLuminance()
                        * gains[channel]
                        * plate.light(i % plate.width(), i / plate.width(), channel);
                fullest[i] = Math.max(fullest[i], share);
                luminance[i] += LUMINANCE[channel] * share;
            }
        }
        most = new Contours(plate.width(), plate.height(), fullest);
        grey = new Contours(plate.width(), plate.height(), luminance);
    }

    /// Meters an exposed plate.
    ///
    /// @param plate the whole picture, exposed, cd/m² a channel
    /// @param stage the shot or pass
    /// @param scene the instant that it shows
    /// @param plan the plan
    /// @return its levels
    public static Levels of(Plate plate, Stage stage, Scene scene, Plan plan) {
        return new Levels(plate, stage, scene, plan);
    }

    /// Gives the picture that lines are read upon: without colour, and lighter.
    ///
    /// @return the picture
    public Pixels greyed() {
        int[] packed = new int[grey.field().length];
        for (int i = 0; i < packed.length; i++) {
            double coded = ScreenScale.step(grey.field()[i]) / (double) ScreenScale.MOST;
            int step = (int) Math.round(ScreenScale.MOST * (DARKEST + (1 - DARKEST) * coded));
            packed[i] = step << 16 | step << 8 | step;
        }
        return new Pixels(grey.width(), grey.height(), packed);
    }

    /// A level that is drawn as a line.
    ///
    /// @param name its part of an id
    /// @param mark what stands at its lines
    /// @param share of the screen's white, linear
    /// @param dash strokes and gaps, pixels of the sheet; empty for a whole line
    /// @param weight how wide it is, pixels of the sheet
    /// @param words what it says below the picture
    record Level(String name, String mark, double share, String dash, double weight, String words) {
        Markup line(List<Spot> spots) {
            Markup line = Shapes.run(Pen.THIN, spots).with("stroke-width", weight);
            return dash.isEmpty() ? line : line.with("stroke-dasharray", dash);
        }
    }

    /// The levels that are drawn, the brightest first.
    List<Level> levels() {
        List<Level> levels = new ArrayList<>();
        double clips = latitude.map(held -> Developing.share(held.overStops())).orElse(1.0);
        levels.add(new Level(
                "clips",
                latitude.isPresent() ? "clips" : "white",
                clips,
                "",
                2.6,
                latitude.map(held -> "The camera clips: " + words(held.overStops()) + " mid grey at this sensitivity,"
                                + " in its fullest channel.")
                        .orElse("White of a screen, " + words(Developing.stops(1)) + " mid grey; where the camera clips"
                                + " isn't known: write the body's latitude: {over: 5 stops, under: 7 stops}.")));
        levels.add(new Level("over", "+1", Developing.share(1), "18 5", 1.2, "1 stop over mid grey."));
        levels.add(new Level("grey", "0", Developing.share(0), "", 1.2, "Mid grey."));
        levels.add(new Level("under", "−1", Developing.share(-1), "2 4", 1.6, "1 stop under mid grey."));
        latitude.ifPresent(held -> levels.add(new Level(
                "noise",
                "noise",
                Developing.share(-held.underStops()),
                "12 4 2 4",
                2.6,
                "Noise hides what is darker: " + words(-held.underStops()) + " mid grey.")));
        return levels;
    }

    private static String words(double stops) {
        return Print.stops(Math.abs(stops)) + (stops < 0 ? " under" : " over");
    }

    /// Draws the levels upon their picture.
    ///
    /// @param png the greyed picture, a PNG file's bytes
    /// @return the drawing
    public OnTop.Drawn draw(byte[] png) {
        String name = stage.shot().name() + (stage.pass().isEmpty() ? "" : "." + stage.pass());
        PictureSheet sheet = new PictureSheet(name + ".levels", "Shot " + name + ": levels", scene.picture());
        for (Level level : levels()) {
            Markup group = sheet.page().group("level." + level.name());
            List<Contours.Line> lines = lines(level);
            for (Contours.Line line : lines) {
                group.add(level.line(
                        line.spots().stream().map(spot -> onSheet(spot, sheet)).toList()));
            }
            lines.stream()
                    .max(Comparator.comparingDouble(Contours.Line::lengthPixels))
                    .ifPresent(longest -> mark(level, longest, sheet));
            sheet.row((from, to) -> List.of(level.line(List.of(from, to))), level.words());
        }
        letter(sheet);
        sheet.placeNames();
        sheet.row((from, to) -> List.of(), "Numbers: stops over (+) or under (−) mid grey, of a patch at the dot.");
        return new OnTop.Drawn(sheet.finish(png), List.of());
    }

    /// Says at a level's longest line which it is: each at another part of its way, so that neighbours don't meet.
    private void mark(Level level, Contours.Line line, PictureSheet sheet) {
        int count = line.spots().size();
        int at = switch (level.name()) {
            case "over" -> count / 3;
            case "grey" -> count / 2;
            case "under" -> 2 * count / 3;
            default -> count / 4;
        };
        sheet.name(
                "mark." + level.name(),
                List.of(level.mark()),
                onSheet(line.spots().get(at), sheet),
                4);
    }

    /// Lines of a level in pixels of the plate.
    List<Contours.Line> lines(Level level) {
        Contours of = level.name().equals("clips") ? most : grey;
        return of.smoothed().at(level.share()).stream()
                .filter(line -> !line.isClosed() || line.lengthPixels() >= LEAST_PIXELS)
                .toList();
    }

    private Spot onSheet(Spot pixel, PictureSheet sheet) {
        return new Spot(
                pixel.x() / grey.width() * sheet.box().width(),
                pixel.y() / grey.height() * sheet.box().height());
    }

    /// A patch's number.
    ///
    /// @param name what it is on
    /// @param stops over mid grey
    /// @param at where, shares of the picture's width and height from its upper left corner
    record Number(String name, double stops, Spot at) {
        String text() {
            if (!Double.isFinite(stops)) {
                return "black";
            }
            String number = Print.stops(Math.abs(stops)).replaceAll(" stops?$", "");
            return number.equals("0") ? "0" : (stops < 0 ? "−" : "+") + number;
        }
    }

    private void letter(PictureSheet sheet) {
        List<Number> numbers = numbers();
        Markup dots = sheet.page().group("numbers");
        for (Number number : numbers) {
            Spot at = new Spot(
                    number.at().x() * sheet.box().width(),
                    number.at().y() * sheet.box().height());
            dots.add(Shapes.dot(at, 2));
            sheet.labels().keepFree(Box.round(at, 8, 8));
            sheet.name("number." + number.name(), List.of(number.name() + " " + number.text()), at, 8);
        }
    }

    /// The numbers of what is seen of each thing's label, else its side; the table's; then the background's.
    List<Number> numbers() {
        List<Number> numbers = new ArrayList<>();
        for (int i = 0; i < scene.things().size(); i++) {
            String name = stage.shot().placed().get(i).name();
            findPatch(i).ifPresent(at -> numbers.add(new Number(name, stops(at), at)));
        }
        for (double[] place : ON_TABLE) {
            Spot at = new Spot(place[0], place[1]);
            if (isClear(at) && isOnTable(at)) {
                numbers.add(new Number(at.x() < 0.5 ? "table, left" : "table, right", stops(at), at));
            }
        }
        for (double[] edge : EDGES) {
            Spot at = new Spot(edge[0], edge[1]);
            if (isClear(at) && !isOnTable(at)) {
                numbers.add(new Number("background", stops(at), at));
                break;
            }
        }
        return numbers;
    }

    /// Whether the table's top shows at a place of the picture, as far as no thing is before it; never where it is seen
    /// through a tank.
    private boolean isOnTable(Spot share) {
        Vec way = scene.aim()
                .forward()
                .plus(scene.aim()
                        .right()
                        .times((share.x() - 0.5) * scene.picture().widthTangent()))
                .plus(scene.aim().up().times((0.5 - share.y()) * scene.picture().heightTangent()));
        Vec eye = scene.aim().eye();
        if (stage.findTank().isPresent() || !(eye.z() > 0) || !(way.z() < 0)) {
            return false;
        }
        Vec hit = eye.plus(way.times(-eye.z() / way.z()));
        return Math.abs(hit.x()) < table[0] / 2 && Math.abs(hit.y()) < table[1] / 2;
    }

    private double stops(Spot at) {
        int half = Math.max(0, (int) Math.round(PATCH * grey.width() / 2));
        int x = (int) Math.clamp(Math.floor(at.x() * grey.width()), 0, grey.width() - 1);
        int y = (int) Math.clamp(Math.floor(at.y() * grey.height()), 0, grey.height() - 1);
        double sum = 0;
        int count = 0;
        for (int row = Math.max(0, y - half); row <= Math.min(grey.height() - 1, y + half); row++) {
            for (int column = Math.max(0, x - half); column <= Math.min(grey.width() - 1, x + half); column++) {
                sum += grey.field()[row * grey.width() + column];
                count++;
            }
        }
        return Developing.stops(Math.max(0, sum / count));
    }

    /// Where a thing's part that wants on light are judged at shows; nothing where it faces away, is covered or isn't
    /// in the picture.
    private Optional<Spot> findPatch(int thing) {
        Placed placed = stage.shot().placed().get(thing);
        Body body = scene.things().get(thing);
        Vec eye = scene.aim().eye();
        Patch patch = Spots.of(placed, body, Spots.usual(placed, body, eye), eye);
        if (patch.facing().dot(eye.minus(patch.place())) <= 0
                || Covering.isHidden(stage, scene, thing, patch.place())) {
            return Optional.empty();
        }
        return PlaceSight.of(scene, patch.place()) instanceof PlaceSight.Seen(PlaceSight.Way _, Point point)
                ? Optional.of(share(point)).filter(Levels::isInPicture)
                : Optional.empty();
    }

    private Spot share(Point point) {
        return new Spot(
                0.5 + point.x() / scene.picture().widthTangent(),
                0.5 - point.y() / scene.picture().heightTangent());
    }

    private static boolean isInPicture(Spot share) {
        return share.x() >= 0 && share.x() < 1 && share.y() >= 0 && share.y() < 1;
    }

    /// Whether no thing and no lamp shows near a place of the picture.
    private boolean isClear(Spot at) {
        Box about = Box.round(at, 2 * PATCH, 2 * PATCH * grey.width() / grey.height());
        List<Body> bodies = new ArrayList<>(scene.things());
        bodies.addAll(scene.lamps());
        return bodies.stream()
                .map(body -> Covering.findRoom(scene, body, this::share))
                .flatMap(Optional::stream)
                .noneMatch(about::meets);
    }
}
