package plumeline.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import plumeline.card.Dimmer;
import plumeline.plan.Camera;
import plumeline.plan.Kit;
import plumeline.plan.Mark;
import plumeline.plan.PlacedLight;
import plumeline.plan.Written;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.solve.MarkAnswer;
import plumeline.stage.Beam;
import plumeline.text.Node;

/// The lamps of a shot: what they are, where they face, at which level and colour.
final class LightRows {
    private final Subject subject;
    private final Told told;

    private LightRows(Subject subject) {
        this.subject = subject;
        told = new Told(subject.print());
    }

    static List<Rows.Pair> of(Subject subject) {
        LightRows rows = new LightRows(subject);
        return subject.shot().lights().stream()
                .map(light -> new Rows.Pair(light.name(), rows.words(light)))
                .toList();
    }

    private String words(PlacedLight light) {
        Kit.Light kit = light.light();
        List<String> words = new ArrayList<>(List.of(kit.name() + ", " + shape(kit.emitter(), kit.written())));
        words.add(faces(light));
        quantity(kit.written(), "reflects", "throws back ").ifPresent(words::add);
        if (!kit.emitter().isLamp()) {
            return String.join("; ", words) + ".";
        }
        words.add(level(light));
        quantity(light, "white").ifPresent(white -> words.add("white " + told.quantity(white)));
        quantity(light, "hue").ifPresent(hue -> words.add("hue " + told.quantity(hue) + " (CIE LCh)"));
        kit.written().findQuantity("gives").ifPresent(gives -> words.add("gives " + told.spread(gives)));
        light.written()
                .findQuantity("output")
                .ifPresent(output -> words.add("in this shot " + told.spread(output) + " of that" + places(light)));
        quantity(kit.written(), "hot_centre", "corners or edge darker than its middle by ")
                .ifPresent(words::add);
        quantity(kit.written(), "loss", "cloth takes ").ifPresent(words::add);
        quantity(light.written(), "loss", "gel or cloth before it takes ").ifPresent(words::add);
        quantity(kit.written(), "grid", "its grid leaves ").ifPresent(words::add);
        quantity(light.written(), "grid", "a grid before it leaves ").ifPresent(words::add);
        quantity(kit.written(), "power", "").ifPresent(words::add);
        return String.join("; ", words) + ".";
    }

    private Optional<String> quantity(Written written, String key, String words) {
        return written.findQuantity(key).map(quantity -> words + told.quantity(quantity));
    }

    /// Where it was metered; where that was at several places, also what it gave at each.
    private String places(PlacedLight light) {
        List<Written> readings = light.written().findNode("readings").orElse(null) instanceof Node.Sequence list
                ? list.items().stream()
                        .map(item -> new Written((Node.Mapping) item, item.place()))
                        .toList()
                : List.of();
        return readings.isEmpty()
                ? ""
                : readings.stream()
                        .map(reading -> (readings.size() > 1
                                        ? reading.findQuantity("output")
                                                        .map(told::spread)
                                                        .orElse("") + " "
                                        : "")
                                + "on " + reading.findWord("thing").orElse("") + "'s "
                                + reading.findWord("part").orElse(""))
                        .collect(Collectors.joining(", ", ", metered: ", ""));
    }

    /// What the shot says of a lamp, else what the kit does; a hue in the shot puts the kit's white away.
    private static Optional<Quantity> quantity(PlacedLight light, String key) {
        boolean coloured = key.equals("white") && light.written().has("hue");
        return light.written()
                .findQuantity(key)
                .or(() -> coloured
                        ? Optional.<Quantity>empty()
                        : light.light().written().findQuantity(key));
    }

    private String shape(Kit.Emitter emitter, Written written) {
        Print print = subject.print();
        return switch (emitter) {
            case Kit.Emitter.Panel(Quantity width, Quantity height) ->
                "panel " + print.length(width.si()) + " wide, " + print.length(height.si()) + " tall" + window(written);
            case Kit.Emitter.Tube(Quantity length, Quantity diameter) ->
                "tube " + print.length(length.si()) + " long, " + print.length(diameter.si()) + " thick";
            case Kit.Emitter.Disc(Quantity diameter) -> "disc " + print.length(diameter.si()) + " across";
            case Kit.Emitter.Card(Quantity width, Quantity height) ->
                "card " + print.length(width.si()) + " wide, " + print.length(height.si()) + " tall";
            case Kit.Emitter.Flag(Quantity width, Quantity height) ->
                "flag " + print.length(width.si()) + " wide, " + print.length(height.si()) + " tall";
            case Kit.Emitter.Point() -> "small source";
        };
    }

    private String window(Written written) {
        List<Quantity> window = written.listQuantities("window");
        if (window.isEmpty()) {
            return "";
        }
        boolean isBright = written.findWord("field").orElse("dark").equals("bright");
        Print print = subject.print();
        return (isBright ? ", shining round a black window " : ", black round a shining window ")
                + print.length(window.getFirst().si()) + " by "
                + print.length(window.getLast().si());
    }

    private String faces(PlacedLight light) {
        return switch (light.aim()) {
            case Camera.Aim.At(String thing, var _) -> "faces " + thing;
            case Camera.Aim.By _ -> "turned by hand: see its marks";
            case Camera.Aim.Ahead _ -> "faces away from the camera";
            case Camera.Aim.Untold _ -> turned(light);
        };
    }

    /// A lamp that is told no aim faces what the camera does, else the thing nearest to the lens point.
    private String turned(PlacedLight light) {
        if (!isPlaced(light)) {
            return "faces what the camera looks at";
        }
        Beam lamp = subject.first().beams().get(subject.stage().lampIndex(light.name()));
        double turn = Math.IEEEremainder(lamp.aim().turnRadians(), 2 * Math.PI);
        return "faces what the camera looks at: from facing straight away from the crew, turned "
                + MarkWords.turned(Print.degrees(Math.abs(turn)), turn, "clockwise", "anticlockwise")
                + " seen from above";
    }

    private boolean isPlaced(PlacedLight light) {
        return light.marks().stream().allMatch(mark -> value(mark).isPresent());
    }

    private String level(PlacedLight light) {
        return light.level()
                .map(level -> value(level).map(share -> level(light, share)).orElse("level not found yet"))
                .orElseGet(() -> level(light, 1));
    }

    private static String level(PlacedLight light, double share) {
        return share == 0
                ? "off"
                : "level " + Print.share(share, 0) + " of what it gives"
                        + Dimmer.findSetting(light, share)
                                .map(set -> ", its dimmer at " + Print.share(set, 0))
                                .orElse("");
    }

    /// What is found for a mark; what a pass alone writes isn't among the shot's marks.
    private Optional<Double> value(Mark mark) {
        return subject.answer().marks().stream()
                .filter(answer -> answer.mark().path().equals(mark.path()))
                .flatMap(answer -> answer.setting() instanceof MarkAnswer.Setting.At(double si, var _)
                        ? Optional.of(si).stream()
                        : Optional.<Double>empty().stream())
                .findFirst()
                .or(() -> mark instanceof Mark.Fixed fixed
                        ? Optional.of(fixed.quantity().si())
                        : Optional.<Double>empty());
    }
}
