package plumeline.ask.light;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Words;
import plumeline.ask.light.Highlight.Light;
import plumeline.ask.light.Highlight.Task;
import plumeline.geom.Vec;
import plumeline.light.RoundMirror.Stripe;
import plumeline.quantity.Print;

/// What `highlight` says beside its numbers.
final class HighlightWords {
    private static final double DEGREE = Math.toRadians(1);

    private final Highlight.Found found;
    private final Highlight.Inputs inputs;
    private final Words words;

    HighlightWords(Highlight.Found found, Words words) {
        this.found = found;
        this.inputs = found.inputs();
        this.words = words;
    }

    Notes notes() {
        return new Notes(
                because(),
                attempts(),
                List.of("Sandbag the stand, keep its leads out of walkways and from water; lamps are hot and blind at"
                        + " close range: nobody looks into one to find its reflection."),
                List.of(
                        "Law of reflection on a round mirror (Alhazen's problem): bearing = 2i - theta - asin((r/L) sin"
                                + " i)",
                        "Common practice for what stands near the lens"));
    }

    private List<String> because() {
        List<String> because = new ArrayList<>();
        if (found.stripe().isPresent() && found.light().isPresent()) {
            Stripe stripe = found.stripe().get();
            Light light = found.light().get();
            found.other()
                    .ifPresentOrElse(
                            other -> because.add("The light reaches past both sides of the thing from behind: each edge"
                                    + " of the outline shows a stripe, this one and another from "
                                    + percent(other.left()) + " to " + percent(other.right()) + "; between them it"
                                    + " isn't seen."),
                            () -> because.add("The stripe's middle lies " + degrees(round(stripe))
                                    + " deg round the surface from the camera, for a light "
                                    + degrees(found.bearingRadians(light))
                                    + " deg round: on a cylinder the stripe goes little more than half the light's"
                                    + " way."));
            because.add("It shows from " + percent(stripe.left()) + " to " + percent(stripe.right())
                    + " of the outline, with sharp edges on gloss; on satin they blur, and matte shows no mirror image:"
                    + " light that by angle.");
            because.add("One degree of the light round the thing moves the stripe by "
                    + Print.number(movedByADegree(light), 1) + " % of the outline.");
        }
        because.add("What stands within 9 deg of the lens, seen from the thing, shows in the middle "
                + Print.number(middleOfNineDegrees(), 0) + " % of it: the lens, its hood, hands, bright clothes.");
        return because;
    }

    /// How far round the surface from the camera a stripe's middle is, rad.
    private double round(Stripe stripe) {
        return Highlight.bearing(
                inputs.mirror().way(inputs.camera(), stripe.middle()).spot(), inputs.camera());
    }

    private double movedByADegree(Light light) {
        Light moved = new Light(turned(light.middle()), turned(light.facing()), light.widthMetres());
        double before = found.stripe().map(Stripe::middle).orElse(0.0);
        double after = new Highlight.Found(inputs, Optional.of(moved), Highlight.stripes(inputs, moved), found.side())
                .stripe()
                .map(Stripe::middle)
                .orElse(before);
        return 50 * Math.abs(after - before);
    }

    private static Vec turned(Vec vec) {
        double cos = Math.cos(DEGREE);
        double sin = Math.sin(DEGREE);
        return new Vec(cos * vec.x() - sin * vec.y(), sin * vec.x() + cos * vec.y(), 0);
    }

    private double middleOfNineDegrees() {
        double away = Math.hypot(inputs.camera().x(), inputs.camera().y());
        double from = Math.atan2(inputs.camera().y(), inputs.camera().x());
        double at = from + Math.toRadians(9);
        Vec beside = new Vec(away * Math.cos(at), away * Math.sin(at), 0);
        return 100
                * inputs.mirror()
                        .find(inputs.camera(), beside)
                        .map(spot -> inputs.mirror().across(inputs.camera(), spot.azimuthRadians()))
                        .orElse(0.0);
    }

    private List<String> attempts() {
        List<String> attempts = new ArrayList<>();
        if (found.light().isEmpty()) {
            attempts.add(
                    inputs.task() instanceof Task.Wanted wanted
                                    && wanted.widthMetres().isPresent()
                            ? "No distance from the thing to 100 m gives such a stripe with a light so wide: give the"
                                    + " distance instead, and cut or widen the light to the width it answers."
                            : "No flat light that faces the thing gives so wide a stripe: curve a cloth round it, or"
                                    + " take two lights.");
        } else if (found.stripe().isEmpty()) {
            attempts.add("Bring the light round to the camera's side: it shines away from the thing, or the thing hides"
                    + " it, so no mirror image of it is seen.");
        } else if (inputs.task() instanceof Task.Standing) {
            Light light = found.light().get();
            attempts.add("To put it elsewhere, write want: {from_left: 80 %, wide: 10 %} and light: {distance: "
                    + words.length(Math.hypot(light.middle().x(), light.middle().y())) + "}.");
        }
        return attempts;
    }

    private static String degrees(double radians) {
        return Print.number(Math.toDegrees(radians), 0);
    }

    private static String percent(double across) {
        return Words.percent(50 * (1 + across));
    }
}
