package plumeline.want;

import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.plan.Plan;
import plumeline.plan.Thing;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.RoomAir;
import plumeline.water.MoistAir;

/// A chilled thing sweats, or stays dry: its skin is colder, or warmer, than the air's dew point.
///
/// Margin in degC: dew point less the thing's temperature to sweat, the other way round to stay dry. No mark bears on
/// it. Where the spreads of what was measured reach past 0 it is unknown; where a hygrometer's usual 3 % would, tight.
///
/// @param line as written
/// @param thing index of the thing
/// @param wanted which of both
/// @param found what was found
record Sweats(WantLine line, int thing, Wanted wanted, Found found) implements Want {
    private static final double ZERO_CELSIUS_KELVIN = 273.15;

    /// What a hygrometer of the usual kind is off by. Common practice.
    private static final double HYGROMETER_SHARE = 0.03;

    /// What is wanted.
    enum Wanted {
        DEW,
        DRY
    }

    /// What was found.
    ///
    /// @param productKelvin the thing's temperature, kelvin
    /// @param dewKelvin the air's dew point, kelvin
    /// @param hygrometerKelvin how far the dew point moves with a hygrometer that is 3 % off, kelvin; 0 where the
    ///     humidity's spread is written
    record Found(double productKelvin, double dewKelvin, double hygrometerKelvin) {}

    /// Makes the want, or one that says what is missing.
    static Want of(WantLine line, int thing, Thing product, String name, Plan.Film film) {
        Optional<Quantity> skin = product.written().findQuantity("temperature");
        if (skin.isEmpty()) {
            return new NotComputed(line, "Tape a probe to " + name + ": write its temperature.");
        }
        Optional<MoistAir> air = RoomAir.find(film);
        if (air.isEmpty()) {
            return new NotComputed(
                    line,
                    "Measure the air beside " + name
                            + ", lamps on, within -20 to 60 degC: write the film's air: {temperature: 20 degC,"
                            + " humidity: 50 %}.");
        }
        OptionalDouble dew = air.get().dewPointKelvin().find();
        if (dew.isEmpty()) {
            return new NotComputed(line, "Not computed: the air's dew point is below -45 degC.");
        }
        Quantity humidity = film.written().findQuantity("air.humidity").orElseThrow();
        Quantity temperature = film.written().findQuantity("air.temperature").orElseThrow();
        double off = Math.hypot(
                skin.get().halfWidthSi(),
                Math.hypot(
                        moved(air.get(), temperature.halfWidthSi(), 0), moved(air.get(), 0, humidity.halfWidthSi())));
        Found found = new Found(
                skin.get().si(), dew.getAsDouble(), humidity.hasSpread() ? 0 : moved(air.get(), 0, HYGROMETER_SHARE));
        double margin = found.dewKelvin - found.productKelvin;
        if (Math.abs(margin) < off) {
            return new NotComputed(
                    line,
                    name + " is " + kelvins(margin) + (margin > 0 ? " under" : " over")
                            + " the dew point, but that may be off by " + kelvins(off) + ": measure more closely.");
        }
        Wanted wanted = line.word().equals("sweats") ? Wanted.DEW : Wanted.DRY;
        return new Sweats(line, thing, wanted, found);
    }

    /// How far the dew point moves.
    private static double moved(MoistAir air, double kelvin, double share) {
        double humidity = air.humidityShare() + share > 1 ? air.humidityShare() - share : air.humidityShare() + share;
        double warmer = Math.min(air.temperatureKelvin() + kelvin, ZERO_CELSIUS_KELVIN + 60);
        OptionalDouble there = new MoistAir(warmer, humidity).dewPointKelvin().find();
        double here = air.dewPointKelvin().find().orElseThrow();
        return Math.abs(there.orElse(here) - here);
    }

    @Override
    public String unit() {
        return "degC";
    }

    private double colderKelvin() {
        return found.dewKelvin - found.productKelvin;
    }

    @Override
    public double[] parts(Moments moments) {
        return new double[] {wanted == Wanted.DEW ? colderKelvin() : -colderKelvin()};
    }

    @Override
    public boolean restsOnMarks() {
        return false;
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        boolean isWet = colderKelvin() > 0;
        String stands = Parts.name(moments, thing) + (isWet ? " sweats" : " stays dry") + ": at "
                + celsius(found.productKelvin) + " it is " + kelvins(colderKelvin()) + (isWet ? " under" : " over")
                + " the dew point of " + celsius(found.dewKelvin) + ".";
        boolean holds = isWet == (wanted == Wanted.DEW);
        double dew = found.dewKelvin - ZERO_CELSIUS_KELVIN;
        return Optional.of(
                holds
                        ? stands
                        : isWet
                                ? stands + " Let it warm to " + Print.number(Math.ceil(dew), 0)
                                        + " degC, or dry the air."
                                : stands + " Chill it to " + Print.number(Math.floor(dew) - 1, 0) + " degC or colder.");
    }

    @Override
    public Optional<String> findTight(Moments moments) {
        return Math.abs(colderKelvin()) < found.hygrometerKelvin
                ? Optional.of("A hygrometer that is 3 % off moves the dew point by " + kelvins(found.hygrometerKelvin)
                        + ": measure both closely, and write ±.")
                : Optional.empty();
    }

    @Override
    public Optional<String> findCaution(Moments moments) {
        return colderKelvin() > 0
                ? Optional.of("Dew drips: no mains plug or lead underneath, and a footing that holds when wet.")
                : Optional.empty();
    }

    private static String kelvins(double kelvin) {
        return Print.number(Math.abs(kelvin), 1) + " degC";
    }

    private static String celsius(double kelvin) {
        return Print.number(kelvin - ZERO_CELSIUS_KELVIN, 1) + " degC";
    }
}
