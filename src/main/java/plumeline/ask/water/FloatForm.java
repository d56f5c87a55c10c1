package plumeline.ask.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.answer.Given;
import plumeline.quantity.Kind;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;
import plumeline.water.Block;
import plumeline.water.Form;
import plumeline.water.Recess;
import plumeline.water.Turned;
import plumeline.water.Vessel;
import plumeline.water.Wall;

/// How large a product is in water, as `float` and `hang` read it.
///
/// @param bodyMetres3 what it displaces with all of it under, no air under its base, cubic metres
/// @param underMetres3 air under its hollow base, cubic metres
/// @param wall its outside, where its form is known
record FloatForm(double bodyMetres3, double underMetres3, Optional<Wall> wall) {
    /// A square box over the cylinder in it.
    private static final double MOST_SHAPE = 4 / Math.PI * (1 + 1e-9);

    static List<Key> keys() {
        Shape volume = FloatBody.amount(Kind.VOLUME, Range.between("0.01 ml", "1000 l"));
        Shape room = FloatBody.amount(Kind.VOLUME, Range.between("0 ml", "1000 l"));
        Shape mass = FloatBody.amount(Kind.MASS, Range.between("0.01 g", "1000 kg"));
        Shape length = FloatBody.amount(Kind.LENGTH, Range.between("0.1 mm", "10 m"));
        Shape from0 = FloatBody.amount(Kind.LENGTH, Range.between("0 mm", "10 m"));
        return List.of(
                Key.optional("outside", "the volume it displaces with all of it under", volume)
                        .hint("what a kitchen scale gains when it is held just under: 1 g is 1 ml", ""),
                Key.optional("gained", "what a jug of water on a scale gains when it is held just under", mass),
                Key.optional("jug_water", "the water in that jug", FloatLiquid.water())
                        .hint("{temperature: 20 degC}", ""),
                Key.optional(
                        "profile", "heights from the base with the radius there", new Shape.Curve(from0, from0, 2)),
                Key.optional("diameter", "its outer diameter", length),
                Key.optional("height", "its outer height", length),
                Key.optional(
                                "shape_factor",
                                "its volume over that of a cylinder of that diameter and height",
                                FloatBody.amount(Kind.NUMBER, Range.above("0")))
                        .hint("its volume over that of a cylinder of its diameter and height, such as 0.9", ""),
                Key.optional(
                        "box",
                        "its outer measures, of a box",
                        Shape.Keys.of(
                                Key.required("width", "outer width", length),
                                Key.required("depth", "outer depth", length),
                                Key.required("height", "outer height", length))),
                Key.optional(
                        "base",
                        "the hollow under its base",
                        Shape.Keys.of(
                                Key.required("diameter", "the hollow's diameter at its rim", length),
                                Key.required("depth", "how deep it is in the middle", length),
                                Key.optional("volume", "what it holds: fill it with water, upside down", volume)
                                        .hint("what water it takes, upside down on a scale: 1 g is 1 ml", ""),
                                Key.optional("air", "the air that is caught under it", room)
                                        .hint("0 ml once it was tilted clear, or what its hollow holds", ""))));
    }

    static Shape.Rule rule() {
        return new Shape.Rule.ExactlyOne(List.of(
                List.of("outside"),
                List.of("gained"),
                List.of("profile"),
                List.of("diameter", "height", "shape_factor"),
                List.of("box")));
    }

    /// Reads it; a volume that was measured is without air under the base, an outline has the hollow filled.
    static FloatForm read(Given given, double waterKilogramsPerMetre3) {
        Optional<Given> base = given.findMap("base");
        Optional<Turned> recess = base.flatMap(FloatForm::readRecess);
        double hollow = recess.map(form -> form.whole().volumeMetres3()).orElse(0.0);
        double under = recess.isPresent() ? readUnder(base.orElseThrow(), hollow) : 0;
        if (given.has("outside")) {
            return new FloatForm(given.si("outside"), under, Optional.empty());
        }
        if (given.has("gained")) {
            double jug = FloatLiquid.readJug(given, waterKilogramsPerMetre3);
            return new FloatForm(given.si("gained") / jug, under, Optional.empty());
        }
        Optional<Form> outline = readOutline(given, hollow);
        if (outline.isEmpty()) {
            return new FloatForm(1e-3, 0, Optional.empty());
        }
        if (recess.isPresent() && !Recess.fits(outline.get(), recess.get())) {
            base.orElseThrow()
                    .refuse(
                            "diameter",
                            "P-ASK-60",
                            "a hollow that is larger than the base",
                            "a hollow within the outline",
                            "Measure it at the rim it stands on, and its depth in the middle with a ruler across.");
            return new FloatForm(outline.get().whole().volumeMetres3(), 0, Optional.empty());
        }
        Vessel.Hollow beneath = recess.<Vessel.Hollow>map(
                        form -> new Vessel.Hollow.Under(form, Math.min(under, hollow)))
                .orElseGet(Vessel.Hollow.Flat::new);
        Wall wall = new Wall(outline.get(), beneath);
        return new FloatForm(wall.displacedMetres3(), under, Optional.of(wall));
    }

    private static double readUnder(Given base, double hollowMetres3) {
        if (!base.has("air")) {
            String all = FloatBody.millilitres(hollowMetres3);
            return Math.min(hollowMetres3, base.assume("air", all, "lowered upright it keeps what its hollow holds"));
        }
        double air = base.si("air");
        if (air > hollowMetres3 * (1 + 1e-9)) {
            base.refuse(
                    "air",
                    "P-ASK-61",
                    FloatBody.millilitres(air),
                    "at most the hollow's " + FloatBody.millilitres(hollowMetres3),
                    "Fill the hollow with water, upside down on a scale, and give volume: 1 g is 1 ml.");
        }
        return Math.min(air, hollowMetres3);
    }

    private static Optional<Turned> readRecess(Given base) {
        Recess recess = new Recess(base.si("diameter") / 2, base.si("depth"));
        double holds = base.findSi("volume").orElse(recess.capMetres3());
        Optional<Turned> dome = recess.findDome(holds);
        if (dome.isEmpty()) {
            base.refuse(
                    "volume",
                    "P-ASK-62",
                    FloatBody.millilitres(holds),
                    "less than the " + FloatBody.millilitres(recess.cylinderMetres3())
                            + " of its diameter and depth, and no spike",
                    "Fill the hollow with water, upside down on a scale: 1 g is 1 ml.");
        }
        return dome;
    }

    private static Optional<Form> readOutline(Given given, double hollowMetres3) {
        if (given.has("profile")) {
            return readProfile(given).map(Form.class::cast);
        }
        if (given.has("box")) {
            Given box = given.map("box");
            return Optional.of(new Block(box.si("width"), box.si("depth"), box.si("height")));
        }
        double height = given.si("height");
        if (given.si("shape_factor") > MOST_SHAPE) {
            given.refuse(
                    "shape_factor",
                    "P-ASK-65",
                    given.quantity("shape_factor").valueText(),
                    "at most 1.27 (4/π): nothing within that diameter and height holds more than a square box",
                    "Measure its volume: hold it just under in a jug on a scale and give gained: 372 g;"
                            + " or measure its width, depth and height and give box.");
            return Optional.empty();
        }
        double radius = given.si("diameter") / 2;
        double filled = given.si("shape_factor") * Math.PI * radius * radius * height + hollowMetres3;
        return Optional.of(Turned.cylinder(Math.sqrt(filled / (Math.PI * height)), height));
    }

    private static Optional<Turned> readProfile(Given given) {
        List<Turned.Ring> rings = new ArrayList<>();
        for (List<Double> row : given.rows("profile")) {
            rings.add(new Turned.Ring(row.get(0), row.get(1)));
        }
        boolean hole = rings.getFirst().heightMetres() != 0;
        for (int i = 1; i < rings.size() - 1; i++) {
            hole |= rings.get(i).radiusMetres() == 0;
        }
        double height = rings.getLast().heightMetres() - rings.getFirst().heightMetres();
        boolean thin = rings.stream().allMatch(ring -> ring.radiusMetres() == 0) || height == 0;
        if (hole || thin) {
            given.refuse(
                    "profile",
                    "P-ASK-52",
                    hole ? "a profile with a hole" : "a profile without volume",
                    "rings from 0 mm up, with a radius everywhere between the ends",
                    "Measure the diameter at each height where the outline bends, from the base to the top.");
            return Optional.empty();
        }
        return Optional.of(new Turned(rings));
    }
}
