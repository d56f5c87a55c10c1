package plumeline.cli.ink;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import plumeline.desk.Usage;
import plumeline.plan.Plan;
import plumeline.plume.InkOdds;
import plumeline.plume.InkRecord;
import plumeline.plume.InkShot;
import plumeline.plume.Lengths;
import plumeline.plume.Subject;
import plumeline.plume.Times;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;

/// What a crew reads after its ink was followed.
final class InkText {
    private static final int LABEL = 26;
    private static final int MIDDLE = 21;
    private static final int MIDDLE_INCHES = 33;

    /// Coarser cells showed in fronts, m: at 8 mm a fifth later than at 6 mm, at 12 mm a third, at 6 mm as at 4.5 mm.
    private static final double COARSE_METRES = 0.0065;

    private static final int ROWS = 8;
    private static final double[] ROUND_SECONDS = {0.05, 0.1, 0.2, 0.25, 0.5, 1, 2, 5, 10, 20, 60};

    private final InkAnswer answer;
    private final InkRecord record;
    private final List<String> lines = new ArrayList<>();

    private InkText(InkAnswer answer) {
        this.answer = answer;
        this.record = answer.record();
    }

    static String of(InkAnswer answer) {
        return new InkText(answer).all();
    }

    static String length(Plan plan, double metres) {
        return new Print(plan.film().papersOrDefault()).length(metres);
    }

    private String length(double metres) {
        return length(answer.of().plan(), metres);
    }

    private String all() {
        int runs = record.runs().size();
        lines.add(answer.of().title() + ": ink, " + runs + (runs == 1 ? " try" : " tries") + " of " + followed()
                + " from the release");
        row("front at", "median", "80 % of takes");
        for (Subject subject : record.subjects()) {
            for (Subject.Part part : Subject.Part.values()) {
                String label = subject.thing() + "'s " + part.word();
                answer.findReaches(subject, part)
                        .ifPresentOrElse(times -> row(label, times), () -> row(label, "-", "the nozzle is under it"));
            }
        }
        row("the floor", record.reachesFloor());
        front();
        record.subjects().forEach(this::veils);
        List<InkOdds> odds = answer.odds();
        for (InkOdds each : odds) {
            lines.add("  met in " + each.met() + " of " + each.of() + (each.of() == 1 ? " try: " : " tries: ")
                    + each.line().toText(answer.of().plan().film().papersOrDefault()));
        }
        notes();
        return String.join("\n", lines) + "\n";
    }

    /// How long the tries are, not rounded up: what is "not by" the end of the shortest names the same time.
    private String followed() {
        double rate = record.head().framesPerSecond();
        String shortest = down((record.shortestFrames() - 1) / rate);
        String longest = down((record.longestFrames() - 1) / rate);
        return shortest.equals(longest) ? shortest : shortest + " to " + longest;
    }

    private void row(String label, String middle, String interval) {
        int width = isInches() ? MIDDLE_INCHES : MIDDLE;
        lines.add(("  " + Usage.column(label, LABEL) + Usage.column(middle, width) + interval).stripTrailing());
    }

    /// Fractions are longer than millimetres.
    private boolean isInches() {
        return answer.of().plan().film().papersOrDefault() == PaperUnit.INCHES;
    }

    private void row(String label, Times times) {
        OptionalDouble middle = times.middle();
        String interval = "";
        if (!times.seconds().isEmpty()) {
            interval = down(times.low().orElseThrow())
                    + (times.high().isPresent() ? " to " + up(times.high().getAsDouble()) : " or later");
        }
        row(
                label,
                middle.isPresent() ? seconds(middle.getAsDouble()) : "not by " + down(times.untilSeconds()),
                interval);
    }

    /// How deep and how wide, at some round times to which all tries go.
    private void front() {
        double rate = record.head().framesPerSecond();
        double last = (record.shortestFrames() - 1) / rate;
        double every = last / ROWS;
        for (double round : ROUND_SECONDS) {
            if (round >= last / ROWS) {
                every = round;
                break;
            }
        }
        // As exact as the step: a quarter of a second is no tenth.
        int decimals = Math.clamp(BigDecimal.valueOf(every).stripTrailingZeros().scale(), 0, 2);
        row("front after", "depth", "half-width");
        for (int n = 1; n * every <= last * (1 + 1e-9); n++) {
            int frame = (int) Math.round(n * every * rate);
            String label = String.format(Locale.ROOT, "%." + decimals + "f s", n * every);
            row(label, shown(record.depth(frame)), shown(record.halfWidth(frame)));
        }
    }

    private String shown(Lengths lengths) {
        if (lengths.middle().isEmpty()) {
            return "-";
        }
        return length(lengths.middle().getAsDouble()) + " ("
                + plain(lengths.low().orElseThrow()) + " to "
                + plain(lengths.high().orElseThrow()) + ")";
    }

    private String plain(double metres) {
        return new Print(answer.of().plan().film().papersOrDefault()).lengthNumber(metres, Print.Hand.TAPE);
    }

    private void veils(Subject subject) {
        if (!subject.isSeen()) {
            lines.add("  " + subject.thing() + " " + subject.unseen() + ": what veils it is unknown");
            return;
        }
        boolean isMeasured = record.head().strength().measured();
        row(subject.thing() + (isMeasured ? " veiled" : " veiled (a guess)"), "median", "80 % of takes");
        row("ink before it", record.inked(subject));
        row("its top", record.veiled(subject, subject.heights().size() - 1));
        row("its middle", record.veiled(subject, subject.heights().indexOf(subject.at(Subject.Part.MIDDLE))));
        row("its base", record.veiled(subject, 0));
        row("all of it, by then", record.veiledAll(subject));
    }

    private void notes() {
        for (String each : answer.assumed()) {
            lines.add("Assumed  " + each);
        }
        if (!record.head().strength().measured()) {
            lines.add("Assumed  an ink strength of 100 /cm, a guess for coloured ink: what is veiled when stays unknown"
                    + " until the ink has its strength. Measure it: ./plumeline ask clear-water --example");
        }
        lines.add(
                "Because  Depths count from the water line, times from the release. Veiled: less than half of the light"
                        + " is left before the side that faces the camera.");
        List<String> drawn = answer.tries().planned().spreads().stream()
                .map(InkShot.Spread::name)
                .toList();
        lines.add("         An interval is that of one more take set "
                + (drawn.isEmpty() ? "exactly as written" : "as written, within its ±")
                + "; takes differ by a fifth whatever is done.");
        if (!drawn.isEmpty()) {
            lines.add("         Each try has its own draw within the ± of " + String.join(", ", drawn) + ".");
        }
        double cell = record.head().course().cellMetres();
        if (cell > COARSE_METRES) {
            lines.add("         Cells of " + length(cell) + " are for a first look: in such ones ink comes later than"
                    + " in the usual ones, by a third and more from " + length(0.012) + " on.");
        }
        int runs = record.runs().size();
        lines.add(
                "Files    " + answer.files().getParent() + ": run-1.dye" + (runs > 1 ? " to run-" + runs + ".dye" : "")
                        + " for pictures, " + answer.files().getFileName() + " for wants");
    }

    /// Hundredths below a second, else tenths: no take is known better.
    private static String seconds(double seconds) {
        return String.format(Locale.ROOT, seconds < 0.995 ? "%.2f s" : "%.1f s", seconds);
    }

    private static String down(double seconds) {
        double steps = seconds < 0.995 ? 100 : 10;
        return seconds(Math.floor(seconds * steps + 1e-6) / steps);
    }

    private static String up(double seconds) {
        double steps = seconds < 0.995 ? 100 : 10;
        return seconds(Math.ceil(seconds * steps - 1e-6) / steps);
    }
}
