package plumeline.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import plumeline.plan.Cut;
import plumeline.plan.Delivery;
import plumeline.plan.Named;
import plumeline.plan.Plan;
import plumeline.quantity.Print;

/// What the cover says of the whole film: its deliveries, and which shots the cut takes.
final class FilmRows {
    private FilmRows() {}

    static String title(Plan plan) {
        return plan.film().title().orElse("Untitled film");
    }

    static List<Rows.Pair> deliveries(Plan plan) {
        List<Rows.Pair> rows = new ArrayList<>();
        for (Delivery delivery : plan.deliveries()) {
            List<String> words = new ArrayList<>();
            delivery.ratio().ifPresent(ratio -> words.add(ratio.across() + ":" + ratio.down()));
            delivery.size().ifPresent(size -> words.add(size.acrossPixels() + " × " + size.downPixels() + " px"));
            delivery.length().ifPresent(length -> words.add(length.valueText()));
            for (String key : List.of("loudness", "true_peak")) {
                delivery.written()
                        .findQuantity(key)
                        .ifPresent(value -> words.add(
                                key.replace('_', ' ').toLowerCase(Locale.ROOT) + " " + Rows.minus(value.valueText())));
            }
            if (delivery.isTextless()) {
                words.add("a copy without titles");
            }
            rows.add(new Rows.Pair(delivery.name(), String.join(", ", words) + DrawingsPart.keepOut(delivery)));
        }
        return rows;
    }

    /// Each use of a shot in the cut's order.
    static List<Rows.Pair> cut(Plan plan) {
        List<Rows.Pair> rows = new ArrayList<>();
        for (Cut cut : plan.cuts()) {
            List<String> words = new ArrayList<>(List.of(cut.frames() + (cut.frames() == 1 ? " frame" : " frames")));
            cut.pass().ifPresent(pass -> words.add("pass " + pass.name()));
            if (!cut.alternate().isEmpty()) {
                words.add("in turn " + cut.alternate().stream().map(Named::name).collect(Collectors.joining(", ")));
            }
            cut.each().ifPresent(each -> words.add(each + (each == 1 ? " frame each" : " frames each")));
            if (cut.fromOrDefault() > 0) {
                words.add("from the shot's frame " + cut.fromOrDefault());
            }
            cut.listReframes("").forEach(key -> words.add(reframe(key)));
            plan.deliveries().stream()
                    .filter(delivery -> cut.written().has("reframe." + delivery.name()))
                    .forEach(delivery -> cut.listReframes(delivery.name())
                            .forEach(key -> words.add("for " + delivery.name() + " " + reframe(key))));
            rows.add(new Rows.Pair((rows.size() + 1) + ": " + cut.shot().name(), String.join(", ", words)));
        }
        return rows;
    }

    /// A key of how the picture lies in the finished one.
    static String reframe(Cut.Reframe key) {
        List<String> words = new ArrayList<>();
        words.add("at frame " + key.frame() + " scaled to " + Print.share(key.scale(), 1));
        if (key.x() != 0 || key.y() != 0) {
            words.add("placed " + Print.share(key.x(), 1) + " across and " + Print.share(key.y(), 1) + " up");
        }
        if (key.turnRadians() != 0) {
            words.add("turned " + Print.number(Math.toDegrees(key.turnRadians()), 1) + " deg");
        }
        return String.join(" and ", words) + " (" + key.profile().word() + ")";
    }
}
