package plumeline.lit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import plumeline.quantity.Print;

/// Light in words.
public final class Amounts {
    /// Nobody tells more stops apart from none at all.
    static final double MOST_STOPS = 20;

    private Amounts() {}

    /// Gives light in words, to two figures: a meter repeats no more.
    ///
    /// @param lux illuminance, lx
    /// @return as `1200 lx`
    public static String lux(double lux) {
        if (!(lux > 0)) {
            return "0 lx";
        }
        double step = Math.pow(10, Math.floor(Math.log10(lux)) - 1);
        double rounded = Math.round(lux / step) * step;
        return String.format(Locale.ROOT, rounded < 10 ? "%.1f lx" : "%.0f lx", rounded);
    }

    /// Gives a difference in words, without its sign, to tenths of a stop.
    ///
    /// @param stops stops
    /// @return as `0.7 stops`
    public static String stops(double stops) {
        return Print.number(Math.abs(stops), 1) + (Math.abs(stops) < 0.05 ? " stops" : stopWord(stops));
    }

    /// Stops that are allowed, wanted: `0.5 stops are`.
    static String stopsAre(double stops) {
        String words = stops(stops);
        return words + (words.endsWith("stop") ? " is" : " are");
    }

    private static String stopWord(double stops) {
        return Print.number(Math.abs(stops), 1).equals("1") ? " stop" : " stops";
    }

    /// Gives how much more one is than another.
    ///
    /// @param one any amount of light, ≥ 0
    /// @param other another, ≥ 0
    /// @return stops, from −20 to 20; 0 where both are nothing
    public static double stops(double one, double other) {
        return one <= 0 && other <= 0 ? 0 : Math.clamp(Math.log(one / other) / Math.log(2), -MOST_STOPS, MOST_STOPS);
    }

    /// How light stands to what a setting needs.
    static String over(double lux, double neededLux) {
        double over = stops(lux, neededLux);
        if (lux <= 0) {
            return "no light";
        }
        return Math.abs(over) < 0.05 ? "just right" : stops(over) + (over < 0 ? " too little" : " too much");
    }

    /// How much darker what stands in a tank is to the camera; nothing in plain air. Glass alone never takes a fifth.
    static String through(double seenShare) {
        return seenShare < 1
                ? ", as " + (seenShare < 0.8 ? "water and glass make" : "glass makes") + " it "
                        + stops(stops(1, seenShare)) + " darker to the camera"
                : "";
    }

    /// What each lamp gives.
    static String byLamp(List<Lamp> lamps, List<Double> lux) {
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < lux.size(); i++) {
            if (!(lamps.get(i) instanceof Lamp.Flag)) {
                parts.add(lamps.get(i).name() + " " + lux(lux.get(i)));
            }
        }
        return String.join(", ", parts);
    }
}
