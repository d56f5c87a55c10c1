package plumeline.ask.motion;

import java.util.List;
import plumeline.answer.Words;
import plumeline.motion.Measure;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;

/// Ways, speeds and accelerations as sentences say them; what to mind with machines that move.
///
/// @param words how sentences say lengths
/// @param measure whether a way is a length or an angle
record Told(Words words, Measure measure) {
    /// What the answers to questions on moves warn of.
    static final List<String> CAUTIONS = List.of(
            "A move starts without asking: fingers, hair, cables and glass out of its way and its pinch points; its"
                    + " stop within reach.",
            "Run it slowly first, from end to end, with what it carries. Its maker's and local rules for machines come"
                    + " before any figure here.");

    String way(double si) {
        return isAngle() ? Print.number(Math.toDegrees(si), 1) + " deg" : words.length(si);
    }

    String speed(double si) {
        return figure(si) + unit() + "/s";
    }

    String acceleration(double si) {
        return figure(si) + unit() + "/s2";
    }

    private boolean isAngle() {
        return measure == Measure.ANGLE;
    }

    private boolean isMetric() {
        return words.unit() == PaperUnit.MILLIMETRES;
    }

    private String unit() {
        return isAngle() ? " deg" : isMetric() ? " mm" : " in";
    }

    /// Three digits that count.
    private String figure(double si) {
        double value = isAngle() ? Math.toDegrees(si) : isMetric() ? si * 1e3 : si / 0.0254;
        return Print.number(value, value < 1 ? 3 : value < 10 ? 2 : value < 100 ? 1 : 0);
    }
}
