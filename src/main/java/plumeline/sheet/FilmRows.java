package plumeline.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import plumeline.plan.Cut;
import plumeline.plan.Delivery;
import plumeline.plan.Named;
import plumeline.plan.Plan;

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
            rows.add(new Rows.Pair((rows.size() + 1) + ": " + cut.shot().name(), String.join(", ", words)));
        }
        return rows;
    }
}
