package plumeline.ask.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Words;
import plumeline.motion.Limits;
import plumeline.motion.Measure;
import plumeline.motion.Profile;
import plumeline.motion.Registration;
import plumeline.motion.RunUp;
import plumeline.motion.Travel;
import plumeline.motion.Usage;
import plumeline.quantity.Print;

/// The sentences of `move`.
final class MoveWords {
    /// Ways are told to so much, metres or radians, and one that may not be passed is rounded down.
    private static final double LEAST_WAY = 1e-4;

    private final Moving.Inputs inputs;
    private final Travel travel;
    private final Limits limits;
    private final Told told;

    MoveWords(Moving.Inputs inputs, Words words) {
        this.inputs = inputs;
        travel = inputs.travel();
        limits = inputs.limits();
        told = new Told(words, inputs.measure());
    }

    Notes notes() {
        List<String> because = new ArrayList<>();
        because.add(runs());
        because.addAll(over());
        inputs.seen()
                .ifPresentOrElse(
                        seen -> because.addAll(seen(seen)),
                        () -> because.add("Blur and how passes lie aren't known without view."));
        return new Notes(
                because,
                attempts(),
                Told.CAUTIONS,
                List.of(
                        "Areas under speed and acceleration: kinematics; smooth: minimum jerk, Flash and Hogan 1985",
                        "Scale f/(distance - f), thin lens; half a frame's travel for free starts: common practice"));
    }

    private String runs() {
        return switch (inputs.profile()) {
            case EVEN ->
                "Even, " + told.speed(travel.peakSpeed())
                        + " from the first frame to the last, without acceleration: "
                        + RunUp.find(travel.peakSpeed(), limits)
                                .map(this::runUp)
                                .orElse("what run-up takes isn't known without limits.acceleration")
                        + ".";
            case SMOOTH ->
                "Smooth is minimum jerk, 10u³ - 15u⁴ + 6u⁵: 15/8 of the mean speed at the middle, "
                        + told.acceleration(travel.peakAcceleration()) + " at 21 % and 79 % of the time.";
            case TRAPEZOID, S_CURVE ->
                "Ramps of " + Print.seconds(travel.rampSeconds(), 2) + " at " + (isJerked() ? "up to " : "")
                        + told.acceleration(travel.peakAcceleration())
                        + (isPeaked() ? ", with nothing even between" : ", even between")
                        + (isJerked()
                                ? "; the acceleration grows and shrinks in " + Print.seconds(travel.jerkSeconds(), 2)
                                        + " each"
                                : "")
                        + (isFree() ? ": thirds of the time, as no limit on it is given." : ".")
                        + (inputs.profile() == Profile.TRAPEZOID && Double.isFinite(limits.jerk())
                                ? " Its corners jerk more than any limit: limits.jerk isn't counted; an s-curve keeps"
                                        + " to it."
                                : "");
        };
    }

    private boolean isJerked() {
        return travel.jerkSeconds() > 0;
    }

    private boolean isPeaked() {
        return travel.seconds() - 2 * travel.rampSeconds() < Moving.NEAR * travel.seconds();
    }

    private boolean isFree() {
        return !Double.isFinite(limits.acceleration()) && !(isJerked() && Double.isFinite(limits.jerk()));
    }

    private String runUp(RunUp up) {
        return "run-up before it and run-out behind take " + Print.seconds(up.seconds(), 2) + " and "
                + told.way(up.distance()) + " each, " + told.way(Usage.way(travel, limits)) + " in all";
    }

    private List<String> over() {
        List<String> over = new ArrayList<>();
        Usage usage = inputs.usage();
        if (usage.speed() > 1 + Moving.NEAR) {
            over.add("It needs " + told.speed(travel.peakSpeed()) + ", the device does " + told.speed(limits.speed())
                    + ".");
        }
        if (usage.acceleration() > 1 + Moving.NEAR) {
            over.add("It needs " + told.acceleration(usage.acceleration() * limits.acceleration())
                    + " at the least, the device does " + told.acceleration(limits.acceleration()) + ".");
        }
        if (usage.jerk() > 1 + Moving.NEAR) {
            over.add("Its jerk is " + Print.number(usage.jerk(), 2) + " times what the device does.");
        }
        if (usage.travel() > 1 + Moving.NEAR) {
            over.add("It takes " + told.way(Usage.way(travel, limits)) + ", the device has " + told.way(limits.travel())
                    + ".");
        }
        return over;
    }

    private List<String> seen(Moving.Seen seen) {
        View view = seen.view();
        List<String> said = new ArrayList<>();
        String at = "Magnification " + Print.number(view.magnification(), 4) + " at "
                + told.words().length(view.distanceMetres()) + ": 1 px is "
                + Words.fineMillimetres(1 / view.pixelsPerMetre());
        said.add(
                inputs.measure() == Measure.LENGTH
                        ? at + ", across the line of sight."
                        : at + ", 0.01 deg " + Print.number(seen.pixels() * Math.toRadians(0.01), 2)
                                + " px where what is looked at is "
                                + told.words().length(seen.radiusMetres())
                                + " from the axis.");
        Registration passes = inputs.passes(seen);
        said.add("At its fastest it goes " + Words.pixels(inputs.blurPixels(seen)) + " in an exposure of "
                + Print.number(view.exposureSeconds() * 1e3, 2) + " ms. "
                + (inputs.start() == Registration.Start.TRIGGERED
                        ? "Passes start alike, as the move starts the camera; they lie up to "
                        : "Passes lie up to " + fine(passes.phasePixels()) + " apart by half a frame's travel and ")
                + fine(passes.repeatsPixels()) + " by what the device repeats to.");
        return said;
    }

    private static String fine(double pixels) {
        return Print.number(pixels, pixels < 10 ? 2 : 1) + " px";
    }

    private List<String> attempts() {
        List<String> attempts = new ArrayList<>();
        if (inputs.usage().worst() > 1 + Moving.NEAR) {
            addSlower(attempts);
        }
        if (inputs.seen().isPresent()) {
            addRegistering(attempts, inputs.passes(inputs.seen().get()));
        }
        return attempts;
    }

    private void addSlower(List<String> attempts) {
        if (inputs.by() > limits.travel() * (1 + Moving.NEAR)) {
            double left = limits.travel() - (Usage.way(travel, limits) - inputs.by());
            attempts.add(
                    left > 0
                            ? "Shorten the move to " + told.way(Math.floor(left / LEAST_WAY + Moving.NEAR) * LEAST_WAY)
                                    + " at the most, or take a device with more travel."
                            : "Take a device with more travel.");
            return;
        }
        Optional<Moving.Nearest> own = Moving.findNearest(inputs, inputs.profile());
        own.ifPresent(nearest -> attempts.add(run(nearest, "")));
        Profile ramped = Double.isFinite(limits.jerk()) ? Profile.S_CURVE : Profile.TRAPEZOID;
        if (inputs.profile() != ramped && inputs.profile() != Profile.TRAPEZOID) {
            Moving.findNearest(inputs, ramped)
                    .filter(other ->
                            own.isEmpty() || other.playback() < own.get().playback() - Moving.NEAR)
                    .ifPresent(other ->
                            attempts.add(run(other, ramped == Profile.S_CURVE ? " as an s-curve" : " as a trapezoid")));
        }
    }

    private String run(Moving.Nearest nearest, String how) {
        Moving.Inputs slower = nearest.inputs();
        String seconds = String.format(Locale.ROOT, "%.1f", slower.seconds());
        boolean isTenths = Math.abs(Double.parseDouble(seconds) - slower.seconds()) < Moving.NEAR;
        double millis = Math.ceil(slower.seconds() * 1e3 - 1e-6) / 1e3;
        return "Run it in " + (isTenths ? seconds + " s" : Print.seconds(millis, 3)) + how + ", play at "
                + Print.share(nearest.playback(), 0) + ": " + (how.isEmpty() ? "the same" : "as long")
                + " on the screen, at most " + told.speed(slower.travel().peakSpeed())
                + slower.seen()
                        .map(seen -> shown(slower, seen, nearest.playback()))
                        .orElse("") + ".";
    }

    /// The blur of the fastest instant is kept by a shutter as much wider as that is slower.
    private String shown(Moving.Inputs slower, Moving.Seen seen, double playback) {
        double wider = inputs.blurPixels(seen) / slower.blurPixels(seen);
        double open = seen.view().exposureSeconds() * seen.view().rate() * wider;
        return ", " + Words.pixels(slower.blurPixels(seen)) + " of blur and "
                + fine(slower.passes(seen).sumPixels()) + " from pass to pass"
                + (open <= 1 + Moving.NEAR && playback > 1
                        ? "; a shutter of " + Print.number(360 * open, 0) + " deg keeps the blur as it is"
                        : "");
    }

    /// With a limit what it takes to meet it; without one what a triggered start leaves.
    private void addRegistering(List<String> attempts, Registration passes) {
        if (inputs.mostPixels().isEmpty()) {
            if (inputs.start() == Registration.Start.FREE) {
                attempts.add("For passes that register let the move start the camera: " + fine(passes.restPixels())
                        + " are left, of what repeats.");
            }
            return;
        }
        double most = inputs.mostPixels().getAsDouble();
        if (passes.sumPixels() <= most) {
            return;
        }
        OptionalDouble slower = passes.findSlower(most);
        if (slower.isPresent()) {
            double seconds = Math.ceil(inputs.seconds() * slowed(passes, most) * 10 - 1e-6) / 10;
            attempts.add("Passes register to " + fine(most) + " in " + Print.seconds(seconds, 1)
                    + " of real time; or as fast as now at "
                    + Print.number(Math.ceil(passes.findRate(most).getAsDouble() - 1e-6), 0) + " fps, "
                    + Print.number(slower.getAsDouble(), 1) + " times the rate.");
        }
        attempts.add(
                passes.isMetTriggered(most)
                        ? "Let the move start the camera: " + fine(passes.restPixels()) + " are left."
                        : "What the device repeats to is more than that by itself, " + fine(passes.repeatsPixels())
                                + ": a wider view, a more exact device, or lining the passes up afterwards.");
    }

    /// How many times the time for a peak speed that is low enough: with ramps of a device the peak falls faster than
    /// the mean speed.
    private double slowed(Registration passes, double most) {
        double peak = travel.peakSpeed() / passes.findSlower(most).getAsDouble();
        double times = 1;
        while (inputs.in(inputs.seconds() * times, inputs.profile()).travel().peakSpeed() > peak * (1 + Moving.NEAR)) {
            times *= 1.01;
        }
        return times;
    }
}
