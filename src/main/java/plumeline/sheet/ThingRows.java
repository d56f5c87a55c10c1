package plumeline.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import plumeline.plan.Thing;
import plumeline.quantity.Quantity;

/// What each product is taken to be: the sizes that all marks rest on, and whether they were measured.
final class ThingRows {
    private static final List<String> WEIGHED = List.of("mass", "displaces", "contents");

    private final Told told;

    private ThingRows(Told told) {
        this.told = told;
    }

    static List<Rows.Pair> of(Subject subject) {
        ThingRows rows = new ThingRows(new Told(subject.print()));
        Map<String, Rows.Pair> things = new LinkedHashMap<>();
        for (Subject pass : subject.eachPass()) {
            pass.shot().placed().forEach(placed -> {
                Thing thing = placed.thing();
                String words = rows.words(thing);
                Rows.Pair same = things.putIfAbsent(thing.name(), rows.pair(thing.name(), thing, words));
                if (same != null && !same.text().equals(words)) {
                    things.put(thing.reference(), rows.pair(thing.reference(), thing, words));
                }
            });
        }
        return List.copyOf(things.values());
    }

    private Rows.Pair pair(String name, Thing thing, String words) {
        return new Rows.Pair(name, words, drawn(thing));
    }

    private String words(Thing thing) {
        List<String> words = new ArrayList<>();
        switch (thing.form()) {
            case Thing.Form.Box(Quantity width, Quantity depth, Quantity height) -> {
                words.add(told.quantity(width) + " wide");
                words.add(told.quantity(depth) + " deep");
                words.add(told.quantity(height) + " tall");
            }
            case Thing.Form.Cylinder(Quantity diameter, Quantity height) -> {
                words.add(told.quantity(diameter) + " across");
                words.add(told.quantity(height) + " tall");
            }
            case Thing.Form.Profile(List<Thing.Station> stations) -> words.add(turned(stations));
        }
        thing.label()
                .ifPresent(label ->
                        words.add("label " + told.quantity(label.width()) + " × " + told.quantity(label.height())));
        for (String key : WEIGHED) {
            thing.written().findQuantity(key).ifPresent(value -> words.add(key + " " + told.quantity(value)));
        }
        return String.join(", ", words) + ".";
    }

    private String drawn(Thing thing) {
        StringBuilder words = new StringBuilder();
        thing.written()
                .findWord("body")
                .ifPresent(body -> words.append(" Body ").append(body).append('.'));
        thing.label()
                .flatMap(Thing.Label::bottom)
                .ifPresent(bottom -> words.append(" Label's lower edge ")
                        .append(told.quantity(bottom))
                        .append('.'));
        reflects(thing, "reflects")
                .ifPresent(share -> words.append(" Reflects ").append(share));
        reflects(thing, "label.reflects")
                .ifPresent(share -> words.append(" Its label reflects ").append(share));
        if (thing.form() instanceof Thing.Form.Profile(List<Thing.Station> stations)) {
            words.append(" Outline: ")
                    .append(stations.stream()
                            .map(one -> "radius " + told.quantity(one.radius()) + " at " + told.quantity(one.height()))
                            .collect(Collectors.joining(", ")))
                    .append('.');
        }
        return words.toString();
    }

    private Optional<String> reflects(Thing thing, String path) {
        return thing.written().findQuantity(path).map(share -> told.spread(share) + ".");
    }

    /// A profile's widest place and its height.
    private String turned(List<Thing.Station> stations) {
        Thing.Station widest = stations.getFirst();
        for (Thing.Station station : stations) {
            widest = station.radius().si() > widest.radius().si() ? station : widest;
        }
        return "widest radius " + told.quantity(widest.radius()) + ", "
                + told.quantity(stations.getLast().height()) + " tall";
    }
}
