package plumeline.ask.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Draft;
import plumeline.answer.Draft.Criterion;
import plumeline.answer.Given;
import plumeline.answer.Inquiry;
import plumeline.answer.Item;
import plumeline.answer.Verdict;
import plumeline.answer.Words;
import plumeline.ask.colour.Balancing.Found;
import plumeline.ask.colour.Balancing.Inputs;
import plumeline.colour.CameraWhite;
import plumeline.colour.Chromaticity;
import plumeline.colour.Planck;
import plumeline.colour.Primaries;
import plumeline.colour.White;
import plumeline.quantity.Kind;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;

/// The question `white-balance` in text.
final class BalanceInquiry implements Inquiry<Inputs> {
    /// Less of a triangle than this is as good as a line: twice its area, in u'v'.
    private static final double LINE = 1e-4;

    private static final String EXAMPLE = """
        # white-balance: what a camera's fixed balance makes of a light, and which channel fills first under it.
        light:                    # or kelvin, xy, "#rrggbb", {daylight: 6500 K}, {spectrum: [[400 nm, 0.2], ...]}
          emitters:               # x and y off a colour meter or data sheet, or peak and width
            - {name: red, x: 0.700, y: 0.299, lumens: 300 lm, drive: 100 %}
            - {name: white, x: 0.330, y: 0.340, lumens: 1000 lm, drive: 8 %}
        balance: 5600 K           # what the camera is set to; or xy
        tint: 0                   # Duv of the balance: + is set for greenish light, - for pinkish
        primaries: Rec.709        # of its picture: Rec.709, P3, Rec.2020 or {red: [x, y], green: [x, y], blue: [x, y]}
        # headroom: 2.5 stops     # how far above the reading a channel may go before it is full
        """;

    @Override
    public String name() {
        return "white-balance";
    }

    @Override
    public String asks() {
        return "what a fixed white balance makes of a light, and which channel fills first";
    }

    @Override
    public String example() {
        return EXAMPLE;
    }

    @Override
    public Shape shape() {
        Shape own = Shape.Keys.of(
                Key.required("red", "red's x and y", Asked.XY),
                Key.required("green", "green's x and y", Asked.XY),
                Key.required("blue", "blue's x and y", Asked.XY));
        return Shape.Keys.of(
                Key.required("light", "the light", SceneLight.shape())
                        .hint("5600 K, [0.31, 0.33] or a map of emitters", ""),
                Key.optional("balance", "the white that the camera is set to", Asked.WHITE),
                Key.optional(
                        "tint",
                        "Duv of the balance beside its kelvin",
                        new Shape.Amount(Kind.NUMBER, Range.between("-0.05", "0.05"), Shape.Mark.FIXED)),
                Key.optional(
                        "primaries",
                        "the primaries of its picture",
                        Shape.AnyOf.of(new Shape.Choice(List.of("Rec.709", "P3", "Rec.2020")), own)),
                Key.optional(
                        "grey",
                        "what the neutral surface throws back",
                        new Shape.Amount(Kind.SHARE, Range.between("1 %", "100 %"), Shape.Mark.FIXED)),
                Key.optional(
                        "headroom",
                        "how far above the reading a channel may stand",
                        new Shape.Amount(Kind.STOPS, Range.between("0 stops", "15 stops"), Shape.Mark.FIXED)));
    }

    @Override
    public Inputs read(Given given) {
        Chromaticity balance = balance(given);
        Primaries primaries = primaries(given);
        Optional<CameraWhite> camera = CameraWhite.find(primaries, balance);
        if (camera.isEmpty()) {
            given.refuse(
                    given.has("balance") ? "balance" : "primaries",
                    "P-ASK-28",
                    "xy " + MixingWords.xy(balance),
                    "a white that the primaries reach",
                    "A warmer balance than its picture has needs wider primaries, such as Rec.2020.");
        }
        return new Inputs(
                SceneLight.read(given, "light").colour(),
                balance,
                camera.orElseGet(() ->
                        CameraWhite.find(Primaries.REC_709, Chromaticity.D65).orElseThrow()),
                given.si("grey", "18 %", "a grey card"),
                given.findSi("headroom"));
    }

    private static Chromaticity balance(Given given) {
        if (given.has("balance") && Asked.read(given, "balance") instanceof Asked.Place(Chromaticity colour)) {
            if (given.has("tint")) {
                given.refuse("tint", "P-ASK-29", "a tint", "left out beside x and y", "Leave it out.");
            }
            return colour;
        }
        double kelvin = Math.clamp(
                given.si("balance", "5600 K", "daylight, as most cameras are left"),
                Planck.LEAST_KELVIN,
                Planck.MOST_KELVIN);
        return new White(kelvin, given.si("tint", "0", "no correction toward green or pink")).chromaticity();
    }

    private static Primaries primaries(Given given) {
        if (given.isMap("primaries")) {
            Given own = given.map("primaries");
            Primaries primaries = new Primaries(place(own, "red"), place(own, "green"), place(own, "blue"));
            if (primaries.area() >= LINE) {
                return primaries;
            }
            given.refuse(
                    "primaries",
                    "P-ASK-28",
                    "three that lie in a line, or turned round",
                    "red, green and blue that make a triangle",
                    "Try primaries: Rec.709.");
            return Primaries.REC_709;
        }
        return switch (given.text("primaries", "Rec.709", "most pictures'; a sensor's own aren't told")) {
            case "P3" -> Primaries.P3;
            case "Rec.2020" -> Primaries.REC_2020;
            default -> Primaries.REC_709;
        };
    }

    private static Chromaticity place(Given given, String key) {
        return Asked.place(given, key, given.list(key).get(0), given.list(key).get(1));
    }

    @Override
    public Draft answer(Inputs inputs, double[] settled, Words words) {
        Found found = Balancing.answer(inputs);
        return draft(found, new BalanceWords(found).notes());
    }

    @Override
    public Draft vary(Inputs moved, double[] settled) {
        return draft(Balancing.answer(moved), Notes.NONE);
    }

    private static Draft draft(Found found, Notes notes) {
        List<Item> items = new ArrayList<>();
        items.add(found.light()
                .map(white -> Item.of("kelvin", white.kelvin(), "K"))
                .orElse(unknown("kelvin")));
        items.add(found.light().map(white -> Item.of("duv", white.duv(), "1")).orElse(unknown("duv")));
        items.add(found.areWhites() ? Item.of("mired_shift", found.miredShift(), "1/MK") : unknown("mired_shift"));
        items.add(found.areWhites() ? Item.of("duv_change", found.duvChange(), "1") : unknown("duv_change"));
        Optional<Chromaticity> shown = found.shown().findChromaticity();
        items.add(shown.map(colour -> Item.of("x", colour.x(), "1")).orElse(unknown("x")));
        items.add(shown.map(colour -> Item.of("y", colour.y(), "1")).orElse(unknown("y")));
        items.add(Item.of("a", found.lab().a(), "1"));
        items.add(Item.of("b", found.lab().b(), "1"));
        items.add(Item.of("difference", found.difference(), "1").atLeast(0));
        items.add(channel("red", found.channels().red()));
        items.add(channel("green", found.channels().green()));
        items.add(channel("blue", found.channels().blue()));
        items.add(Item.of("stop_down", found.stopDown(), "stops").atLeast(0));
        return new Draft(items, criteria(found), Verdict.HOLDS, notes);
    }

    private static Item unknown(String name) {
        return Item.word(name, "unknown");
    }

    private static Item channel(String name, double channel) {
        return channel > 0 ? Item.of(name, Balancing.stops(channel), "stops") : Item.word(name, "below zero");
    }

    private static List<Criterion> criteria(Found found) {
        return found.inputs().headroomStops().isPresent()
                ? List.of(new Criterion("the headroom", -found.stopDown()))
                : List.of();
    }
}
