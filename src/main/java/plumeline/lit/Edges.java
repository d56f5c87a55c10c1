package plumeline.lit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.light.Disc;
import plumeline.light.Emitter;
import plumeline.light.Panel;
import plumeline.light.Tube;
import plumeline.plan.Thing;
import plumeline.quantity.Print;
import plumeline.rim.GlassView;
import plumeline.rim.Passage;

/// The rims of a clear thing are dark against a bright middle, or bright against a dark one.
///
/// Margin in % of the outline's width: the narrower rim's dark (bright) width less what is wanted; with a tolerance,
/// that less how far either is off. For dark rims the middle must be bright: a part that is below 0 where less than
/// half of the middle tenth is, by how much less of it, in %.
///
/// @param glass the thing
/// @param wished what is wanted
record Edges(ClearGlass glass, Wished wished) implements Measure {
    private static final double PERCENT = 100;

    /// Places across at which sight must come through for the rest to be known, from the very edge on, where nothing
    /// is seen anyway.
    private static final int LOOKS = 40;

    /// A narrower stretch would read as nothing.
    private static final double LEAST_TOLD = 0.0005;

    /// Less than half a degree isn't told.
    private static final double STRAIGHT_RADIANS = Math.toRadians(0.5);

    /// Widths of a lamp that are tried, each so many times the last.
    private static final double TRIES = 1.1;

    private static final int MOST_TRIES = 16;

    /// What is wanted.
    ///
    /// @param rims which rims
    /// @param wide how wide each is at least, share of the width
    /// @param within how far off that they may be, where they may not be wider either
    record Wished(RimField.Rims rims, double wide, OptionalDouble within) {}

    @Override
    public String unit() {
        return "%";
    }

    @Override
    public double[] parts(Instant now) {
        double[] none = {-PERCENT, -PERCENT, -PERCENT};
        return findLack(now).isPresent()
                ? none
                : glass.findField(now, glass.wall()).map(this::parts).orElse(none);
    }

    private double[] parts(RimField field) {
        RimField.Found found = field.measure(field.listBright(wished.rims), wished.rims);
        return new double[] {PERCENT * spare(found.left()), PERCENT * spare(found.right()), PERCENT * found.middle()};
    }

    private double spare(double wide) {
        return wished.within.isPresent()
                ? wished.within.getAsDouble() - Math.abs(wide - wished.wide)
                : wide - wished.wide;
    }

    private boolean holds(RimField field) {
        return Arrays.stream(parts(field)).allMatch(part -> part >= 0);
    }

    @Override
    public Optional<String> findLack(Instant now) {
        if (glass.placed()
                .thing()
                .body()
                .filter(body -> body == Thing.Body.OPAQUE)
                .isPresent()) {
            return Optional.of(glass.name() + " is opaque: no rim of it sees past anything. Light it by angle.");
        }
        return glass.finish().equals("matte")
                ? Optional.of(glass.name() + " is matte: it glows all over, its rims show nothing. Light it by angle.")
                : Optional.empty();
    }

    @Override
    public Optional<String> findUnknown(Instant now) {
        if (findLack(now).isPresent()) {
            return Optional.empty();
        }
        return glass.findUnknown(now)
                .or(() -> glass.findView(now, glass.wall())
                        .filter(Edges::isLost)
                        .map(_ -> "Not computed: sight that goes through " + glass.name()
                                + "'s floor, mouth or surface, or where its form isn't even. Write another height, such"
                                + " as at: " + mm(glass.middleMetres(now)) + ", or bring the lens level with it."));
    }

    private static boolean isLost(GlassView view) {
        for (int i = 0; i < LOOKS; i++) {
            if (view.follow((i + 0.5) / LOOKS) instanceof Passage.Lost) {
                return true;
            }
        }
        return false;
    }

    private static String mm(double metres) {
        return Print.number(1000 * metres, metres < 0.01 ? 1 : 0) + " mm";
    }

    @Override
    public String standing(Instant now) {
        Optional<String> lack = findLack(now);
        if (lack.isPresent()) {
            return lack.get();
        }
        return glass.findField(now, glass.wall())
                .map(field -> standing(field) + whither(now) + glass.assumedWords(now))
                .orElse("");
    }

    /// Where the rims look, at the middle of what is wanted of them.
    private String whither(Instant now) {
        double in = RimField.GRAZING_SHARE + wished.wide / 2;
        return glass.findView(now, glass.wall())
                .flatMap(view -> whither(now, view, in)
                        .flatMap(left -> whither(now, view, 1 - in)
                                .map(right -> " Sight " + percent(in) + " in from the left edge goes on " + left
                                        + ", from the right edge " + right + ".")))
                .orElse("");
    }

    private static Optional<String> whither(Instant now, GlassView view, double share) {
        if (!(view.follow(share) instanceof Passage.Out out)) {
            return Optional.empty();
        }
        double turn = now.scene().aim().turnRadians();
        double heading = Math.atan2(out.direction().x(), out.direction().y());
        double right = Math.IEEEremainder(heading - turn, 2 * Math.PI);
        return Optional.of(
                Math.abs(right) < STRAIGHT_RADIANS
                        ? "straight ahead"
                        : Print.degrees(Math.abs(right)) + (right > 0 ? " to the right" : " to the left"));
    }

    private String standing(RimField field) {
        List<RimField.Stretch> bright = field.listBright(wished.rims);
        RimField.Found found = field.measure(bright, wished.rims);
        String word = wished.rims == RimField.Rims.DARK ? "dark" : "bright";
        String wanted = percent(wished.wide)
                + (wished.within.isPresent() ? " wanted, within " + percent(wished.within.getAsDouble()) : " wanted");
        return glass.name() + "'s left rim is " + word + " over " + percent(Math.max(0, found.left()))
                + " of its width, the right "
                + "one over " + percent(Math.max(0, found.right())) + "; " + wanted + "." + middle(field, found)
                + " From the left: "
                + runs(bright) + ".";
    }

    private String middle(RimField field, RimField.Found found) {
        return switch (wished.rims) {
            case DARK -> found.middle() < 0 ? " Its middle sees nothing bright." : "";
            case BRIGHT ->
                field.isMiddleLit()
                        ? " Its middle sees a light too, and bright rims are two stops over that: mask what is behind"
                                + " the middle."
                        : "";
        };
    }

    private static String runs(List<RimField.Stretch> bright) {
        List<String> runs = new ArrayList<>();
        double at = 0;
        for (RimField.Stretch stretch : bright) {
            addDark(runs, at, stretch.span().from());
            if (stretch.span().to() - stretch.span().from() >= LEAST_TOLD) {
                runs.add(stretch.name() + " to " + percent(stretch.span().to()));
            }
            at = Math.max(at, stretch.span().to());
        }
        addDark(runs, at, 1);
        return String.join(", ", runs);
    }

    private static void addDark(List<String> runs, double from, double to) {
        if (to - from >= LEAST_TOLD) {
            runs.add("dark to " + percent(to));
        }
    }

    private static String percent(double share) {
        return Print.share(share, 1);
    }

    /// A wall that nobody measured may be thinner or thicker.
    @Override
    public Optional<String> findTight(Instant now) {
        List<Double> ends = glass.wallEnds();
        boolean mayFail = ends.stream()
                .anyMatch(wall -> glass.findField(now, Optional.of(wall))
                        .filter(this::holds)
                        .isEmpty());
        return mayFail
                ? Optional.of("Its wall may be " + Print.number(1000 * ends.getFirst(), 1) + " to "
                        + mm(ends.getLast()) + ": with some of that it fails. Write what a calliper reads, wall:"
                        + " {thickness: 2 mm}.")
                : Optional.empty();
    }

    /// Another width of a lamp, the nearest to its own that is enough by itself.
    @Override
    public List<String> listAttempts(Instant now) {
        return glass.findField(now, glass.wall()).stream()
                .flatMap(field -> field.sources().stream().flatMap(source -> findWidth(field, source).stream()))
                .toList();
    }

    private Optional<String> findWidth(RimField field, RimField.Source source) {
        double wide = wideMetres(source.emitter());
        for (int i = 1; i <= MOST_TRIES; i++) {
            for (double factor : new double[] {Math.pow(TRIES, -i), Math.pow(TRIES, i)}) {
                double rounded = Math.round(100 * wide * factor) / 100.0;
                if (rounded > 0 && holds(field.with(source, sized(source.emitter(), rounded / wide)))) {
                    return Optional.of(source.name() + " " + mm(rounded) + " wide instead of " + mm(wide)
                            + (factor < 1 ? ": mask it." : "."));
                }
            }
        }
        return Optional.empty();
    }

    private static double wideMetres(Emitter emitter) {
        return switch (emitter) {
            case Panel panel -> panel.widthMetres();
            case Disc disc -> 2 * disc.radiusMetres();
            case Tube tube -> tube.lengthMetres();
        };
    }

    private static Emitter sized(Emitter emitter, double factor) {
        return switch (emitter) {
            case Panel(var middle, var facing, var right, double width, double height, double luminance) ->
                new Panel(middle, facing, right, factor * width, height, luminance);
            case Disc(var middle, var facing, double radius, double luminance) ->
                new Disc(middle, facing, factor * radius, luminance);
            case Tube(var middle, var axis, var facing, double length, double radius, double luminance) ->
                new Tube(middle, axis, facing, factor * length, radius, luminance);
        };
    }

    @Override
    public Optional<Easier> findEasier(double lack) {
        if (wished.within.isPresent()) {
            double easier = Math.ceil((PERCENT * wished.within.getAsDouble() + lack) * 2) / 2 / PERCENT;
            return easier > 0.5
                    ? Optional.empty()
                    : Optional.of(new Easier(
                            new Edges(glass, new Wished(wished.rims, wished.wide, OptionalDouble.of(easier))),
                            "within " + percent(easier) + " instead of " + percent(wished.within.getAsDouble()) + "."));
        }
        double easier = Math.floor((PERCENT * wished.wide - lack) * 10) / 10 / PERCENT;
        return easier > 0
                ? Optional.of(new Easier(
                        new Edges(glass, new Wished(wished.rims, easier, wished.within)),
                        "wide " + percent(easier) + " instead of " + percent(wished.wide) + "."))
                : Optional.empty();
    }
}
