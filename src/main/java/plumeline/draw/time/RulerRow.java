package plumeline.draw.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.plan.Plan;
import plumeline.quantity.Print;
import plumeline.sketch.Box;
import plumeline.sketch.Drawing;
import plumeline.sketch.Lettering;
import plumeline.sketch.Markup;
import plumeline.sketch.Page;
import plumeline.sketch.Pen;
import plumeline.sketch.Shapes;
import plumeline.sketch.Spot;
import plumeline.sketch.Stretch;
import plumeline.solve.FilmAnswer;
import plumeline.time.Beats;
import plumeline.timeline.Span;
import plumeline.timeline.Timeline;

/// One drawing of the ruler: the film from one frame to another.
final class RulerRow {
    private static final double WIDTH = 700;
    private static final double EDGE = 14;
    private static final double SPEED = 56;
    private static final double PICTURE = 56;
    private static final double TICK = 7;
    private static final double AIR = 8;
    private static final double LEAST_TICK = 4.5;
    private static final double LEAST_FIGURE = 62;
    private static final double LEAST_SECOND = 30;
    private static final int[] FRAME_STEPS = {1, 2, 5, 6, 10, 12, 24, 25, 48, 50, 60, 100, 120, 240};
    private static final double[] SECOND_STEPS = {0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 60, 120, 600};

    private final FilmAnswer film;
    private final Timeline timeline;
    private final Plan plan;
    private final List<Heard> heard;
    private final Speeds speeds;
    private final long first;
    private final long past;
    private final double scale;
    private final Page page;
    private final List<Markup> letters = new ArrayList<>();
    private double y = 4;

    RulerRow(
            FilmAnswer film,
            Timeline timeline,
            List<Heard> heard,
            Speeds speeds,
            long first,
            long past,
            long framesARow) {
        this.speeds = speeds;
        this.film = film;
        plan = film.plan();
        this.timeline = timeline;
        this.heard = heard;
        this.first = first;
        this.past = past;
        scale = (WIDTH - 2 * EDGE) / framesARow;
        page = new Page(
                "timeline." + timeline.name() + "." + first,
                "Frames " + first + " to " + (past - 1) + " of "
                        + (timeline.delivery().isEmpty() ? "the film" : timeline.delivery()));
    }

    /// The fastest and the slowest of a film; a hold counts as one of them.
    record Speeds(double least, double most) {
        static Speeds of(Timeline timeline) {
            double most = 0;
            double least = 0;
            for (Span span : timeline.spans()) {
                for (long frame = span.first(); frame < span.past(); frame++) {
                    most = Math.max(most, speed(span, frame));
                    least = Math.min(least, speed(span, frame));
                }
            }
            return new Speeds(least, most);
        }
    }

    Drawing draw() {
        say(EDGE, heading());
        y += Lettering.ROW;
        List<Span> spans = timeline.spans().stream()
                .filter(span -> span.past() > first && span.first() < past)
                .toList();
        drawEntries(spans);
        drawPictures(spans);
        drawSpeed(spans);
        drawFrames();
        drawBeats();
        drawRealTime(spans);
        drawHeard();
        page.letter(letters);
        return page.finish(WIDTH, y + 4);
    }

    private String heading() {
        String label = plan.film()
                .findTimecode()
                .map(timecode -> ", " + timecode.label(plan.film().startFrame() + first))
                .orElse("");
        return "from frame " + first + label;
    }

    private double x(double frame) {
        return EDGE + (Math.clamp(frame, (double) first, (double) past) - first) * scale;
    }

    /// Letters words whose left end is at a place, as far as the sheet goes.
    private void say(double left, String words) {
        double width = Lettering.width(words);
        double x = Math.clamp(left, 2, Math.max(2, WIDTH - 2 - width));
        letters.add(Lettering.text(
                List.of(Lettering.fitted(words, WIDTH - 4)), new Box(x, y, x + width, y + Lettering.LINE)));
    }

    private void sayMiddle(double middle, String words) {
        say(middle - Lettering.width(words) / 2, words);
    }

    /// A bracket an entry, its number and as much of its name as there is room for; looks that alternate parted by
    /// strokes.
    private void drawEntries(List<Span> spans) {
        Markup group = page.group("entries");
        double line = y + Lettering.ROW + 4;
        for (Timeline.Entry entry : timeline.entries()) {
            if (entry.past() <= first || entry.first() >= past) {
                continue;
            }
            double left = x((double) entry.first());
            double right = x((double) entry.past());
            Stretch stretch = new Stretch(new Spot(left, line), new Spot(right, line));
            group.add(Shapes.line(Pen.OUTLINE, stretch));
            ends(entry, left, right, line).forEach(group::add);
            String number = String.valueOf(timeline.entries().indexOf(entry) + 1);
            String name = number + " " + name(entry);
            double room = right - left - 6;
            if (room >= Lettering.width(number)) {
                say(left + 3, Lettering.width(name) <= room ? name : shortened(number, entry, room));
            }
        }
        for (Span span : spans) {
            boolean isTurn = timeline.entries().get(span.entry()).first() != span.first() && span.first() >= first;
            if (isTurn) {
                double at = x((double) span.first());
                group.add(Shapes.line(Pen.THIN, new Spot(at, line - 4), new Spot(at, line + 4)));
            }
        }
        y = line + AIR + 4;
    }

    /// What is seen where an entry begins, as far as it has room.
    private void drawPictures(List<Span> spans) {
        Markup group = page.group("pictures");
        double bottom = y;
        for (Span span : spans) {
            Timeline.Entry entry = entry(span);
            if (span.first() != entry.first() || span.first() < first) {
                continue;
            }
            double left = x((double) span.first()) + 3;
            double room = x((double) entry.past()) - left - 3;
            Optional<SmallPicture> picture =
                    SmallPicture.find(film, span).filter(one -> one.aspect() * PICTURE <= room);
            if (picture.isPresent()) {
                double right = left + picture.get().aspect() * PICTURE;
                picture.get().draw(new Box(left, y, right, y + PICTURE)).forEach(group::add);
                bottom = y + PICTURE + AIR;
            }
        }
        y = bottom;
    }

    /// Strokes where an entry begins and ends within the row.
    private List<Markup> ends(Timeline.Entry entry, double left, double right, double line) {
        List<Markup> ends = new ArrayList<>();
        if (entry.first() >= first) {
            ends.add(Shapes.line(Pen.EDGE, new Spot(left, line - TICK), new Spot(left, line + TICK)));
        }
        if (entry.past() <= past) {
            ends.add(Shapes.line(Pen.EDGE, new Spot(right, line - TICK), new Spot(right, line + TICK)));
        }
        return ends;
    }

    private static String name(Timeline.Entry entry) {
        String shot = entry.cut().shot().name();
        if (!entry.cut().alternate().isEmpty()) {
            return shot + ": "
                    + String.join(
                            "/",
                            entry.cut().alternate().stream()
                                    .map(pass -> pass.name())
                                    .toList());
        }
        return entry.cut().pass().map(pass -> shot + ", " + pass.name()).orElse(shot);
    }

    private static String shortened(String number, Timeline.Entry entry, double room) {
        String shot = number + " " + entry.cut().shot().name();
        return Lettering.width(shot) <= room ? shot : number;
    }

    /// The speed as a line over the one of a hold, on one scale for the whole film.
    private void drawSpeed(List<Span> spans) {
        double pixels = SPEED / Math.max(speeds.most() - speeds.least(), 1e-9);
        double hold = y + Lettering.ROW + speeds.most() * pixels;
        Markup group = page.group("speed");
        group.add(Shapes.line(Pen.HATCH, new Spot(EDGE, hold), new Spot(x((double) past), hold)));
        Said said = new Said("", 0);
        for (Span span : spans) {
            long from = Math.max(first, span.first());
            long to = Math.min(past, span.past());
            List<Spot> line = new ArrayList<>();
            for (long frame = from; frame <= to; frame++) {
                line.add(new Spot(x((double) frame), hold - speed(span, frame) * pixels));
            }
            group.add(Shapes.run(Pen.OUTLINE, thinned(line)));
            said = sayKnees(span, from, to, line, span.first() == entry(span).first() ? said.anew() : said);
        }
        y += Lettering.ROW + SPEED + AIR + (speeds.least() < 0 ? Lettering.ROW : 0);
    }

    private static double speed(Span span, long frame) {
        double at = (double) span.shotFrameAt(frame);
        // The end of a span belongs to it: a jump in the speed comes behind it.
        return span.played().retime().speedAt(frame == span.past() ? Math.max(0, at - 1e-6) : at);
    }

    /// The speed said last, and up to where its words reach.
    private record Said(String words, double past) {
        Said anew() {
            return new Said("", past);
        }
    }

    private double entryEnd(Span span) {
        return x((double) entry(span).past());
    }

    private Timeline.Entry entry(Span span) {
        return timeline.entries().get(span.entry());
    }

    /// Says the speed where an entry begins and where it turns steady, as far as there is room.
    private Said sayKnees(Span span, long from, long to, List<Spot> line, Said before) {
        Said said = before;
        for (long frame = from; frame < to; frame++) {
            double now = speed(span, frame);
            double rise = frame == from ? 0 : now - speed(span, frame - 1);
            double next = speed(span, Math.min(to, frame + 1)) - now;
            boolean isKnee = frame == from || Math.abs(rise) > 1e-9 && rise * next <= 1e-15;
            String words = Print.number(100 * now, 0).replace('-', '−') + " %";
            double left = x((double) frame) + 3;
            boolean hasRoom = left >= said.past() && left + Lettering.width(words) <= entryEnd(span) + AIR;
            if (isKnee && !words.equals(said.words()) && hasRoom) {
                double row = y;
                double at = line.get((int) (frame - from)).y();
                y = now < 0 ? at + 2 : at - Lettering.ROW;
                say(left, words);
                y = row;
                said = new Said(words, left + Lettering.width(words) + 6);
            }
        }
        return said;
    }

    /// Without the spots on a straight way between their neighbours.
    private static List<Spot> thinned(List<Spot> line) {
        List<Spot> kept = new ArrayList<>();
        for (int i = 0; i < line.size(); i++) {
            boolean isEnd = i == 0 || i == line.size() - 1;
            if (isEnd
                    || Math.abs(2 * line.get(i).y()
                                    - line.get(i - 1).y()
                                    - line.get(i + 1).y())
                            > 1e-9) {
                kept.add(line.get(i));
            }
        }
        return kept;
    }

    private void drawFrames() {
        Markup group = page.group("frames");
        double edge = y + Lettering.ROW + TICK;
        group.add(Shapes.line(Pen.EDGE, new Spot(EDGE, edge), new Spot(x((double) past), edge)));
        long small = step(LEAST_TICK);
        long figured = step(LEAST_FIGURE);
        List<Stretch> ticks = new ArrayList<>();
        for (long frame = Math.ceilDiv(first, small) * small; frame <= past; frame += small) {
            double at = x((double) frame);
            boolean isFigured = frame % figured == 0;
            ticks.add(new Stretch(new Spot(at, edge), new Spot(at, edge - (isFigured ? TICK : TICK / 2))));
            if (isFigured && frame < past) {
                sayMiddle(at, String.valueOf(frame));
            }
        }
        group.add(Shapes.lines(Pen.THIN, ticks));
        y = edge;
    }

    private long step(double leastPixels) {
        for (int step : FRAME_STEPS) {
            if (step * scale >= leastPixels) {
                return step;
            }
        }
        return FRAME_STEPS[FRAME_STEPS.length - 1];
    }

    /// Under the same edge: a long stroke a beat, its number where there is room.
    private void drawBeats() {
        if (plan.film().findBeats().isEmpty()) {
            y += AIR;
            return;
        }
        Beats beats = plan.film().findBeats().get();
        Markup group = page.group("beats");
        double edge = y;
        y += 2 * TICK + 2;
        double free = 0;
        List<Stretch> strokes = new ArrayList<>();
        long beat = Math.max(0, (long) Math.floor((first - beats.position(0)) / beats.intervalFrames()));
        for (; beats.frame(beat) < past; beat++) {
            long frame = beats.frame(beat);
            if (frame < first) {
                continue;
            }
            double at = x((double) frame);
            strokes.add(new Stretch(new Spot(at, edge), new Spot(at, edge + 2 * TICK)));
            String words = String.valueOf(beat + 1);
            double left = Math.max(2, at - Lettering.width(words) / 2);
            if (left >= free) {
                say(left, words);
                free = left + Lettering.width(words) + 8;
            }
        }
        group.add(Shapes.lines(Pen.EDGE, strokes));
        y += Lettering.ROW;
    }

    /// Real seconds on each span's table from GO, as ticks that crowd where it runs fast.
    private void drawRealTime(List<Span> spans) {
        Markup group = page.group("real");
        double edge = y + TICK;
        List<Stretch> ticks = new ArrayList<>();
        double free = 0;
        y = edge + 2;
        for (Span span : spans) {
            long from = Math.max(first, span.first());
            long to = Math.min(past, span.past());
            group.add(Shapes.line(Pen.THIN, new Spot(x((double) from) + 1, edge), new Spot(x((double) to) - 1, edge)));
            double step = secondStep(span, from, to);
            for (long frame = from; frame < to; frame++) {
                if (!isTick(span, from, frame, step)) {
                    continue;
                }
                double at = x((double) frame);
                ticks.add(new Stretch(new Spot(at, edge), new Spot(at, edge - TICK)));
                double seconds = Math.rint(realSeconds(span, frame) / step) * step;
                String words = Print.number(Math.abs(seconds) < 1e-9 ? 0 : seconds, 2) + " s";
                if (at + 2 >= free && at + 2 + Lettering.width(words) <= WIDTH - 2) {
                    say(at + 2, words);
                    free = at + Lettering.width(words) + 10;
                }
            }
        }
        group.add(Shapes.lines(Pen.THIN, ticks));
        y += Lettering.ROW;
    }

    /// Whether a whole step of seconds lies at a frame, or was passed since the one before.
    private static boolean isTick(Span span, long from, long frame, double step) {
        double now = realSeconds(span, frame) / step;
        return frame == from
                ? Math.abs(now - Math.rint(now)) < 1e-9
                : Math.floor(now + 1e-9) != Math.floor(realSeconds(span, frame - 1) / step + 1e-9);
    }

    private static double realSeconds(Span span, long frame) {
        return span.played().retime().realSeconds((double) span.shotFrameAt(frame));
    }

    /// The least step at which ticks have room where a span runs fastest.
    private double secondStep(Span span, long from, long to) {
        double fastest =
                span.played().retime().fastestSpeed((double) span.shotFrameAt(from), (double) span.shotFrameAt(to));
        double least = fastest / timeline.rate().framesPerSecond() / scale * LEAST_SECOND;
        for (double step : SECOND_STEPS) {
            if (step >= least) {
                return step;
            }
        }
        return SECOND_STEPS[SECOND_STEPS.length - 1];
    }

    /// A line each, from where it begins to where it ends, a stroke where it meets the picture.
    private void drawHeard() {
        Markup group = page.group("heard");
        for (Heard one : heard) {
            if (!one.isIn((double) first, (double) past)) {
                continue;
            }
            double middle = y + Lettering.LINE / 2;
            double left = x(one.from());
            double right = x(one.past());
            double room = Lettering.width(one.words()) + 10;
            boolean isBefore = left - room > 2;
            boolean isAfter = !isBefore && right + room < WIDTH - 2;
            if (!isBefore && !isAfter) {
                say(left, one.words());
                y += Lettering.ROW;
                middle = y;
            } else {
                say(isBefore ? left - room + 4 : right + 8, one.words());
            }
            group.add(Shapes.line(Pen.EDGE, new Spot(left, middle), new Spot(Math.max(right, left + 1), middle)));
            if (one.sync() >= first && one.sync() < past) {
                double at = x(one.sync());
                group.add(Shapes.line(Pen.OUTLINE, new Spot(at, middle - TICK), new Spot(at, middle + TICK)));
            }
            y += isBefore || isAfter ? Lettering.ROW : AIR;
        }
    }
}
