package plumeline.ask.light;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import plumeline.answer.Words;
import plumeline.light.Photometry.Tilt;
import plumeline.quantity.Print;

/// What `exposure` says of a lamp that comes from a photometric file.
final class LampWords {
    /// From so many times its longest side on, a light counts as a point.
    private static final double POINT_TIMES = 5;

    private final Exposing.Source.Lamp lamp;
    private final Words words;

    LampWords(Exposing.Source.Lamp lamp, Words words) {
        this.lamp = lamp;
        this.words = words;
    }

    List<String> because(double metres) {
        List<String> because = new ArrayList<>();
        because.add(intensity());
        switch (lamp.photometry().tilt()) {
            case Tilt.None _ -> {}
            case Tilt.Factors _ -> because.add(untilted());
            case Tilt.Measured(double radians) ->
                because.add("The lamp was measured tilted by " + degrees(radians)
                        + " deg: off_axis counts from that axis, the vertical of the measurement, and not from the"
                        + " lamp's own.");
        }
        because.add(size(metres));
        return because;
    }

    private String intensity() {
        String inside = lamp.photometry().lamp();
        String named = lamp.file() + (inside.isEmpty() ? "" : " (" + inside + ")");
        String where = lamp.offAxisRadians() > 0
                ? degrees(lamp.offAxisRadians()) + " deg off its axis in the plane C " + degrees(lamp.planeRadians())
                        + " deg"
                : "along its axis";
        return lamp.candela() > 0
                ? named + " gives " + candela(lamp.candela()) + " " + where
                        + ", new and warm, with nothing before it: read a meter at the thing too."
                : named + " gives nothing " + where + ": see from where its file counts.";
    }

    private String untilted() {
        OptionalDouble factor = lamp.findUntiltedFactor();
        return factor.isPresent()
                ? "The file's tilt factor counts as for a lamp that isn't tilted, "
                        + Print.number(factor.getAsDouble(), 2) + "; tilted it gives another share."
                : "The file has tilt factors, but none for a lamp that isn't tilted: counted as 1.";
    }

    private String size(double metres) {
        double longest = lamp.longestMetres();
        if (longest == 0) {
            return "Counted as from a point; the file tells no size: nearer than five times the lamp's longest side it"
                    + " gives less.";
        }
        double from = POINT_TIMES * longest;
        String counted = "Counted as from a point, right from " + words.length(from) + " on, five times the "
                + words.length(longest) + " over which it glows";
        // An even disc on its axis gives 1/(1 + (r/d)²) of what a point does.
        double less = 1 - 1 / (1 + Math.pow(longest / (2 * metres), 2));
        return metres >= from
                ? counted + "."
                : counted + ": at " + words.length(metres) + " an even one gives about " + Words.share(less)
                        + " less, a narrow beam less still; measure there.";
    }

    private static String candela(double candela) {
        return Print.number(candela, candela < 100 ? 1 : 0) + " cd";
    }

    private static String degrees(double radians) {
        return Print.number(Math.toDegrees(radians), 1);
    }
}
