package plumeline.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.plan.Written;
import plumeline.quantity.Quantities;
import plumeline.quantity.Quantity;
import plumeline.take.Conditions;
import plumeline.take.Take;
import plumeline.text.Node;

/// Makes the record of a take from its checked keys.
final class TakeReader {
    /// Room-temperature tap water.
    static final Quantity ROOM_WATER = Quantities.get("20 degC typical");

    /// The footage's rate where nobody says.
    static final Quantity USUAL_RATE = Quantities.get("24 fps typical");

    /// How long ink flows where a nozzle is told and no time.
    static final Quantity EASY_SQUEEZE = Quantities.get("1 s typical");

    /// A nozzle's bore where a squeeze is told and no bore.
    static final Quantity USUAL_BORE = Quantities.get("4 mm typical");

    private TakeReader() {}

    static Take read(Written written) {
        List<Take.Front> fronts = pairs(written, "front").stream()
                .map(pair -> new Take.Front(pair.get(0), pair.get(1)))
                .toList();
        List<Take.Width> widths = pairs(written, "width").stream()
                .map(pair -> new Take.Width(pair.get(0), pair.get(1)))
                .toList();
        return new Take(conditions(written), written.findQuantity("rate").orElse(USUAL_RATE), fronts, widths);
    }

    static List<List<Quantity>> pairs(Written written, String key) {
        List<List<Quantity>> pairs = new ArrayList<>();
        if (written.findNode(key).orElse(written.node()) instanceof Node.Sequence list) {
            for (Node item : list.items()) {
                List<Quantity> pair = item instanceof Node.Sequence both
                        ? both.items().stream().map(TakeReader::quantity).toList()
                        : List.of();
                if (pair.size() == 2) {
                    pairs.add(pair);
                }
            }
        }
        return pairs;
    }

    private static Quantity quantity(Node node) {
        return Quantities.get(((Node.Scalar) node).text());
    }

    private static Conditions conditions(Written written) {
        Optional<Quantity> volume = written.findQuantity("volume");
        Optional<Quantity> density = written.findQuantity("density");
        if (volume.isEmpty() || density.isEmpty()) {
            return new Conditions.Untold();
        }
        return new Conditions.Told(
                volume.get(),
                density.get(),
                outlet(written),
                written.findQuantity("height").orElse(Quantities.get("0 mm")),
                written.findQuantity("water").orElse(ROOM_WATER));
    }

    private static Conditions.Outlet outlet(Written written) {
        return outlet(
                written.findQuantity("bore"), written.findQuantity("squeeze_time"), written.findQuantity("speed"));
    }

    static Conditions.Outlet outlet(Optional<Quantity> bore, Optional<Quantity> time, Optional<Quantity> speed) {
        if (bore.isEmpty() && time.isEmpty() && speed.isEmpty()) {
            return new Conditions.Outlet.AtOnce();
        }
        Quantity wide = bore.orElse(USUAL_BORE);
        return time.isEmpty() && speed.isPresent()
                ? new Conditions.Outlet.AtSpeed(wide, speed.get())
                : new Conditions.Outlet.Squeezed(wide, time.orElse(EASY_SQUEEZE));
    }
}
