package plumeline.assemble;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plumeline.plan.Delivery;
import plumeline.plan.Plan;
import plumeline.timeline.Laid;
import plumeline.timeline.Timeline;

/// Titles in one language, lettered white with a dark rim, in the lower part of what the delivery keeps free.
final class Titles {
    /// Letters are so high for the shorter side of the picture.
    private static final double SIZE = 1 / 13.0;

    private static final double SMALLEST_PIXELS = 7;
    private static final double SMALLER = 0.9;
    private static final double LINE = 1.3;

    /// What stays free at each side of what is kept free anyway, a share of the picture.
    private static final double AIR = 0.05;

    private static final int MOST_LINES = 3;
    private static final double RIM = 0.75;

    private final List<Lettered> titles = new ArrayList<>();

    /// Each said once, however often its shot is cut in.
    private final Set<String> unfit = new LinkedHashSet<>();
    private final Screen screen;
    private final Lettering lettering;

    /// A title and its lines' places.
    private record Lettered(long first, long past, List<Placed> lines, int rimPixels) {}

    private record Placed(Lettering.Line line, int left, int top) {}

    /// A room for titles, pixels.
    private record Room(double left, double right, double top, double bottom) {
        double width() {
            return right - left;
        }
    }

    Titles(Plan plan, Timeline timeline, Optional<Delivery> delivery, String language, Screen screen, Lettering how) {
        this.screen = screen;
        lettering = how;
        Room room = room(delivery.map(Delivery::keepOut).orElse(new Delivery.KeepOut(0, 0, 0, 0)));
        for (Laid<Plan.Title> title : Laid.listTitles(plan, timeline, language)) {
            add(title, room);
        }
    }

    private Room room(Delivery.KeepOut keepOut) {
        return new Room(
                screen.left() + (keepOut.left() + AIR) * screen.across(),
                screen.left() + (1 - keepOut.right() - AIR) * screen.across(),
                screen.top() + (keepOut.top() + AIR) * screen.down(),
                screen.top() + (1 - keepOut.bottom() - AIR) * screen.down());
    }

    private void add(Laid<Plan.Title> title, Room room) {
        String text = title.what().text().strip();
        if (text.isEmpty()) {
            return;
        }
        double size = SIZE * Math.min(screen.across(), screen.down());
        while (size >= SMALLEST_PIXELS) {
            Optional<List<Lettering.Line>> lines = broken(text, size, room);
            if (lines.isPresent()) {
                titles.add(placed(title, lines.get(), size, room));
                return;
            }
            size *= SMALLER;
        }
        unfit.add("The title “" + text + "” isn't shown: there is no room for it clear of the keep-outs.");
    }

    /// Breaks a text at its spaces into lines that fit; empty where one doesn't or there are too many.
    private Optional<List<Lettering.Line>> broken(String text, double size, Room room) {
        List<Lettering.Line> lines = new ArrayList<>();
        for (String given : text.split("\n", -1)) {
            String line = "";
            for (String word : given.strip().split("\\s+", -1)) {
                String longer = line.isEmpty() ? word : line + " " + word;
                if (!line.isEmpty() && lettering.line(longer, size).width() > room.width()) {
                    lines.add(lettering.line(line, size));
                    line = word;
                } else {
                    line = longer;
                }
            }
            lines.add(lettering.line(line, size));
        }
        boolean fits = lines.size() <= MOST_LINES
                && lines.stream().allMatch(line -> line.width() <= room.width())
                && room.bottom() - lines.size() * LINE * size >= room.top();
        return fits ? Optional.of(lines) : Optional.empty();
    }

    private static Lettered placed(Laid<Plan.Title> title, List<Lettering.Line> lines, double size, Room room) {
        List<Placed> placed = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            Lettering.Line line = lines.get(i);
            double bottom = room.bottom() - (lines.size() - 1 - i) * LINE * size;
            placed.add(new Placed(
                    line,
                    (int) Math.round((room.left() + room.right() - line.width()) / 2),
                    (int) Math.round(bottom) - line.height()));
        }
        return new Lettered(title.firstFrame(), title.pastFrame(), placed, (int) Math.max(1, Math.round(size / 16)));
    }

    /// What isn't shown, sentences.
    List<String> unfit() {
        return List.copyOf(unfit);
    }

    /// Letters a frame's titles.
    void letter(long frame, int[] film) {
        for (Lettered title : titles) {
            if (frame >= title.first() && frame < title.past()) {
                title.lines().forEach(line -> letter(line, title.rimPixels(), film));
            }
        }
    }

    private void letter(Placed placed, int rim, int[] film) {
        Lettering.Line line = placed.line();
        for (int y = -rim; y < line.height() + rim; y++) {
            for (int x = -rim; x < line.width() + rim; x++) {
                int u = placed.left() + x;
                int v = placed.top() + y;
                if (u >= 0 && v >= 0 && u < screen.width() && v < screen.height()) {
                    double dark = RIM * near(line, x, y, rim) / 255;
                    int at = v * screen.width() + u;
                    film[at] = mixed(film[at], dark, line.at(x, y) / 255.0);
                }
            }
        }
    }

    private static int near(Lettering.Line line, int x, int y, int rim) {
        int most = 0;
        for (int down = -rim; down <= rim; down++) {
            for (int across = -rim; across <= rim; across++) {
                if (down * down + across * across <= rim * rim) {
                    most = Math.max(most, line.at(x + across, y + down));
                }
            }
        }
        return most;
    }

    private static int mixed(int pixel, double dark, double white) {
        int packed = 0;
        for (int shift = 16; shift >= 0; shift -= 8) {
            double value = (pixel >> shift & 255) * (1 - dark);
            packed |= (int) (value + (255 - value) * white + 0.5) << shift;
        }
        return packed;
    }
}
