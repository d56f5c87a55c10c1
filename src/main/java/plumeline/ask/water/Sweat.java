package plumeline.ask.water;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Draft;
import plumeline.answer.Given;
import plumeline.answer.Inquiry;
import plumeline.answer.Item;
import plumeline.answer.Verdict;
import plumeline.answer.Words;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;
import plumeline.water.Chilled;
import plumeline.water.Figure;
import plumeline.water.MoistAir;

/// Whether a cold product sweats: the question `sweat`, in plain SI numbers and in text.
public final class Sweat {
    private static final double ZERO_CELSIUS_KELVIN = 273.15;

    /// What a hygrometer of the usual kind is off by.
    private static final double HYGROMETER_SHARE = 0.03;

    /// What the time until the dew point may be off by, both ways.
    private static final double TIME_SHARE = 0.4;

    private Sweat() {}

    /// What is asked.
    ///
    /// @param productKelvin temperature of the product's skin, K
    /// @param air the air round it
    public record Inputs(double productKelvin, MoistAir air) {}

    /// What was found.
    ///
    /// @param inputs what was asked
    /// @param dewPoint the air's dew point, K; unknown below −45 degC
    public record Found(Inputs inputs, Figure dewPoint) {
        /// Finds by how much the product is below the dew point.
        ///
        /// @return dew point less product's temperature, K, + sweats; empty where the dew point is unknown
        public OptionalDouble findMarginKelvin() {
            OptionalDouble dew = dewPoint.find();
            return dew.isPresent() ? OptionalDouble.of(dew.getAsDouble() - inputs.productKelvin) : dew;
        }

        /// Tells whether it sweats. A dew point too low to be known is below any product that may be asked about.
        ///
        /// @return true where the product is below the dew point
        public boolean sweats() {
            return findMarginKelvin().orElse(-1) > 0;
        }
    }

    /// Answers.
    ///
    /// @param inputs what is asked
    /// @return what was found
    public static Found answer(Inputs inputs) {
        return new Found(inputs, inputs.air.dewPointKelvin());
    }

    /// The question in text.
    static final class Asked implements Inquiry<Inputs> {
        private static final String EXAMPLE = """
            # sweat: will a cold product sweat. Add ± to what you measured: a hygrometer is ± 3 %.
            product: {temperature: 4 degC}             # of its skin, by a probe taped on, not of the fridge
            air: {temperature: 20 degC, humidity: 50 %}   # beside the product, lamps on
            """;

        @Override
        public String name() {
            return "sweat";
        }

        @Override
        public String asks() {
            return "whether a cold product sweats";
        }

        @Override
        public String example() {
            return EXAMPLE;
        }

        @Override
        public Shape shape() {
            Shape product = Shape.Keys.of(
                    Key.required("temperature", "temperature of its skin", temperature("-40 degC", "60 degC"))
                            .hint("what a probe taped to the product reads, such as 4 degC", ""));
            Shape air = Shape.Keys.of(
                    Key.required("temperature", "the air's temperature", temperature("-20 degC", "60 degC"))
                            .hint("what a thermometer beside the product reads, such as 20 degC", ""),
                    Key.required(
                                    "humidity",
                                    "the air's relative humidity",
                                    new Shape.Amount(Kind.SHARE, Range.above("0 %", "100 %"), Shape.Mark.FIXED))
                            .hint("what a hygrometer beside the product reads, such as 50 %", ""));
            return Shape.Keys.of(
                    Key.required("product", "the product", product), Key.required("air", "the air round it", air));
        }

        static Shape temperature(String low, String high) {
            return new Shape.Amount(Kind.TEMPERATURE, Range.between(low, high), Shape.Mark.FIXED);
        }

        @Override
        public Inputs read(Given given) {
            Given air = given.map("air");
            return new Inputs(
                    given.map("product").si("temperature"), readAir(air, air.si("temperature"), air.si("humidity")));
        }

        /// Moved for an interval, an input may leave what can be; then it is refused, and moved one way only.
        static MoistAir readAir(Given given, double temperatureKelvin, double humidityShare) {
            double temperature = Math.clamp(temperatureKelvin, ZERO_CELSIUS_KELVIN - 20, ZERO_CELSIUS_KELVIN + 60);
            double humidity = Math.clamp(humidityShare, 1e-6, 1);
            if (humidity != humidityShare || Math.abs(temperature - temperatureKelvin) > 1e-9) {
                given.refuse(
                        "humidity",
                        "P-RANGE-01",
                        Print.share(humidityShare, 1) + " at " + degrees(temperatureKelvin),
                        "within 0 % to 100 % at -20 degC to 60 degC",
                        "Measure both with a hygrometer beside the product.");
            }
            return new MoistAir(temperature, humidity);
        }

        @Override
        public Draft answer(Inputs inputs, double[] settled, Words words) {
            Found found = Sweat.answer(inputs);
            return draft(found, new Sentences(found).notes());
        }

        @Override
        public Draft vary(Inputs moved, double[] settled) {
            return draft(Sweat.answer(moved), Notes.NONE);
        }

        private static Draft draft(Found found, Notes notes) {
            List<Item> items = new ArrayList<>();
            OptionalDouble margin = found.findMarginKelvin();
            if (margin.isPresent()) {
                double dew = found.dewPoint().find().orElseThrow();
                items.add(Item.of("dew_point", dew - ZERO_CELSIUS_KELVIN, "degC"));
            } else {
                items.add(Item.word("dew_point", "below -45 degC"));
            }
            items.add(Item.word("sweats", found.sweats() ? "yes" : "no"));
            items.add(
                    margin.isPresent()
                            ? Item.of("margin", margin.getAsDouble(), "degC")
                            : Item.word("margin", "unknown"));
            return new Draft(items, List.of(), Verdict.HOLDS, notes);
        }
    }

    /// What `sweat` says beside its numbers; whatever it tells to try, it has tried.
    private static final class Sentences {
        /// What a tenth of a degree shows as more than nothing.
        private static final double LEAST_SHOWN_KELVIN = 0.05;

        private final Found found;
        private final double product;
        private final MoistAir air;
        private final List<String> because = new ArrayList<>();
        private final List<String> attempts = new ArrayList<>();
        private final List<String> cautions = new ArrayList<>();

        private Sentences(Found found) {
            this.found = found;
            product = found.inputs().productKelvin();
            air = found.inputs().air();
        }

        private Notes notes() {
            sayMargin();
            sayFrost();
            sayTime();
            sayTries();
            sayCautions();
            return new Notes(
                    because,
                    attempts,
                    cautions,
                    List.of("Saturation line of IAPWS R7-97, below 0 degC the formula of WMO-No. 8 over liquid water;"
                            + " time by our own lumped balance, within 40 %"));
        }

        private void sayMargin() {
            OptionalDouble margin = found.findMarginKelvin();
            if (margin.isEmpty()) {
                because.add("The air is drier than any dew point this law knows, down to -45 degC.");
                return;
            }
            String side = margin.getAsDouble() > 0 ? " colder" : " warmer";
            double off = Math.abs(margin.getAsDouble());
            because.add("Whatever is colder than the dew point gathers dew; the product is "
                    + (off < LEAST_SHOWN_KELVIN
                            ? "at it, within 0.1 degC."
                            : Print.number(off, 1) + " degC" + side + " than that."));
            double damper = Math.min(1, air.humidityShare() + HYGROMETER_SHARE);
            double other = damper == air.humidityShare() ? air.humidityShare() - HYGROMETER_SHARE : damper;
            OptionalDouble moved = new MoistAir(air.temperatureKelvin(), other)
                    .dewPointKelvin()
                    .find();
            double shift = Math.abs(moved.orElse(0) - found.dewPoint().find().orElseThrow());
            if (Math.abs(margin.getAsDouble()) < shift) {
                because.add("Too near to call: a hygrometer that is 3 % off moves the dew point by "
                        + Print.number(shift, 1) + " degC.");
            }
        }

        private void sayFrost() {
            OptionalDouble frost = air.frostPointKelvin().find();
            if (product >= ZERO_CELSIUS_KELVIN) {
                return;
            }
            if (frost.isPresent() ? product < frost.getAsDouble() : found.sweats()) {
                because.add("Below 0 degC it is frost, or dew that freezes, and it shows white.");
            }
            if (frost.isPresent()) {
                because.add("dew_point is over liquid water; frost grows below the frost point, "
                        + degrees(frost.getAsDouble()) + ".");
            }
        }

        private void sayTime() {
            if (!found.sweats()) {
                return;
            }
            OptionalDouble seconds = Chilled.CAN.secondsToDewPoint(air, product).find();
            OptionalDouble film = Chilled.filmMetresPerSecond(air, product).find();
            if (seconds.isPresent() && film.isPresent()) {
                double minutes = seconds.getAsDouble() / 60;
                because.add("Roughly how long: a filled 330 ml can in still air gathers dew for some "
                        + rough(minutes * (1 - TIME_SHARE)) + " to " + rough(minutes * (1 + TIME_SHARE))
                        + " min, at first " + micrometres(film.getAsDouble() * 60e6)
                        + " a minute; a large bottle longer, an empty one shorter.");
            }
        }

        private static String micrometres(double micrometres) {
            return micrometres < 0.05 ? "under 0.1 µm" : Print.number(micrometres, 1) + " µm";
        }

        private static String rough(double minutes) {
            double step = minutes < 20 ? 1 : 5;
            return Print.number(Math.max(1, Math.rint(minutes / step) * step), 0);
        }

        private void sayTries() {
            OptionalDouble known = found.dewPoint().find();
            if (known.isEmpty()) {
                return;
            }
            double dew = known.getAsDouble() - ZERO_CELSIUS_KELVIN;
            OptionalDouble there = MoistAir.saturationPascals(product).find();
            OptionalDouble full =
                    MoistAir.saturationPascals(air.temperatureKelvin()).find();
            double balance = there.orElse(0) / full.orElse(1);
            if (found.sweats()) {
                tryDry(Math.ceil(dew), Math.floor(balance * 100) / 100);
            } else {
                tryWet(Math.floor(dew), Math.ceil(balance * 100) / 100);
            }
        }

        private void tryDry(double celsius, double humidity) {
            boolean warm = !sweats(celsius + ZERO_CELSIUS_KELVIN, air.humidityShare());
            boolean dry = humidity >= 0.1 && product >= ZERO_CELSIUS_KELVIN && !sweats(product, humidity);
            if (warm) {
                attempts.add("To keep it dry, let it warm to " + Print.number(celsius, 0) + " degC"
                        + (dry ? ", or dry the air to " + Print.share(humidity, 0) : "") + ".");
            }
        }

        private void tryWet(double celsius, double humidity) {
            boolean cold = celsius >= 1 && sweats(celsius - 1 + ZERO_CELSIUS_KELVIN, air.humidityShare());
            boolean damp = humidity < 0.95 && sweats(product, humidity + 0.01);
            if (cold) {
                attempts.add("To let it sweat, chill it to " + Print.number(celsius - 1, 0) + " degC or colder"
                        + (damp ? ", or bring the air above " + Print.share(humidity + 0.01, 0) : "") + ".");
            }
        }

        private boolean sweats(double productKelvin, double humidityShare) {
            return Sweat.answer(new Inputs(productKelvin, new MoistAir(air.temperatureKelvin(), humidityShare)))
                    .sweats();
        }

        private void sayCautions() {
            if (found.sweats()) {
                cautions.add(
                        "Real dew runs and dries within minutes under lamps; for a long set-up spray drops of water"
                                + " and glycerine (ask beads).");
                cautions.add("Dew drips: no mains plug or lead underneath, and a footing that holds when wet.");
            }
            if (product < ZERO_CELSIUS_KELVIN) {
                cautions.add("Below 0 degC a closed bottle or can of a watery drink bursts; skin sticks to cold metal:"
                        + " gloves.");
            }
        }
    }

    private static String degrees(double kelvin) {
        return Print.number(kelvin - ZERO_CELSIUS_KELVIN, 1) + " degC";
    }
}
