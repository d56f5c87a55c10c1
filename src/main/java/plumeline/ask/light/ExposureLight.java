package plumeline.ask.light;

import java.util.List;
import plumeline.answer.Beside;
import plumeline.answer.Given;
import plumeline.light.IntensityTable;
import plumeline.light.LampFile;
import plumeline.light.Opening;
import plumeline.light.Photometry;
import plumeline.quantity.Kind;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;

/// The `light` of the question `exposure` in text: as a meter reads it, as candela, as a panel or as a photometric
/// file.
final class ExposureLight {
    private static final int LONGEST_NAME = 1000;

    private ExposureLight() {}

    static Shape shape() {
        Shape size = amount(Kind.LENGTH, "1 mm", "10 m");
        return Shape.Keys.of(
                        Key.optional(
                                "lux",
                                "what a meter facing it reads",
                                amount(Kind.ILLUMINANCE, "0.01 lx", "10000000 lx")),
                        Key.optional("at", "how far from it that was read", amount(Kind.LENGTH, "10 mm", "100 m")),
                        Key.optional(
                                "candela",
                                "its intensity to the thing",
                                amount(Kind.INTENSITY, "0.01 cd", "100000000 cd")),
                        Key.optional("file", "its photometric file, LM-63 or EULUMDAT", new Shape.Free(LONGEST_NAME)),
                        Key.optional(
                                "off_axis",
                                "from the file's axis to the thing, seen from the lamp",
                                amount(Kind.ANGLE, "0 deg", "180 deg")),
                        Key.optional(
                                "plane",
                                "the file's C plane that goes to the thing",
                                amount(Kind.ANGLE, "0 deg", "360 deg")),
                        Key.optional(
                                "panel",
                                "an even panel's width and height",
                                new Shape.Tuple(
                                        List.of(new Shape.Part("width", size), new Shape.Part("height", size)), 2)),
                        Key.optional("lumens", "all of the panel's light", amount(Kind.FLUX, "0.01 lm", "10000000 lm")))
                .with(
                        new Shape.Rule.ExactlyOne(List.of(
                                List.of("lux", "at"), List.of("candela"), List.of("file"), List.of("panel", "lumens"))),
                        new Shape.Rule.Needs("off_axis", "file"),
                        new Shape.Rule.Needs("plane", "file"));
    }

    private static Shape amount(Kind kind, String low, String high) {
        return new Shape.Amount(kind, Range.between(low, high), Shape.Mark.FIXED);
    }

    static Exposing.Source read(Given light) {
        if (light.has("lux")) {
            return new Exposing.Source.Point(light.si("lux") * Math.pow(light.si("at"), 2));
        }
        if (light.has("candela")) {
            return new Exposing.Source.Point(light.si("candela"));
        }
        if (light.has("file")) {
            return lamp(light);
        }
        List<Double> size = light.list("panel");
        return new Exposing.Source.Flat(size.get(0), size.get(1), light.si("lumens"));
    }

    private static Exposing.Source lamp(Given light) {
        double offAxis = Math.clamp(light.si("off_axis", "0 deg", "the lamp points at the thing"), 0, Math.PI);
        double plane = offAxis > 0 || light.has("plane")
                ? light.si("plane", "0 deg", "the file's first plane; round lamps have but one")
                : 0;
        return new Exposing.Source.Lamp(light.text("file"), photometry(light), offAxis, plane);
    }

    private static Photometry photometry(Given light) {
        String name = light.text("file");
        return switch (light.file("file", LampFile.MOST_BYTES + 1)) {
            case Beside.File.Absent(String given, String attempt) -> {
                light.refuse("file", "P-ASK-88", given, "an LM-63 or EULUMDAT file that can be read", attempt);
                yield dark();
            }
            case Beside.File.There there ->
                switch (LampFile.read(there.toArray())) {
                    case LampFile.Read(Photometry photometry) -> photometry;
                    case LampFile.Refused(int line, String found, String accepted) -> {
                        light.refuse(
                                "file",
                                "P-ASK-89",
                                name + ", in whose line " + line + " is: " + found,
                                "an LM-63 or EULUMDAT file; in its place would be: " + accepted,
                                "Get the file anew and whole from the lamp's maker; or give lux and at, as a"
                                        + " meter reads them.");
                        yield dark();
                    }
                };
        };
    }

    /// What is worked with where a file was refused: no light.
    private static Photometry dark() {
        return new Photometry(
                IntensityTable.of(new double[1], new double[] {0, Math.PI}, new double[1][2]),
                new Opening(Opening.Shape.POINT, 0, 0, 0),
                0,
                "",
                new Photometry.StatedFlux.None(),
                new Photometry.Tilt.None());
    }
}
