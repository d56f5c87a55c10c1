package plumeline.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.ask.Answer.Notes;
import plumeline.ask.Draft.Criterion;
import plumeline.optics.FarLimit;
import plumeline.optics.FlatWall;
import plumeline.optics.FocusSetting;
import plumeline.optics.Layer;
import plumeline.optics.LensModel;
import plumeline.optics.Optics;
import plumeline.optics.SharpZone;
import plumeline.optics.Sharpness;

/// What `framing` says beside its numbers; whatever it tells to try, it has tried.
final class FramingWords {
    private final Framing.Found found;
    private final Framing.Inputs inputs;
    private final Words words;
    private final List<String> because = new ArrayList<>();
    private final List<String> attempts = new ArrayList<>();
    private final List<String> cautions = new ArrayList<>();

    FramingWords(Framing.Found found, Words words) {
        this.found = found;
        this.inputs = found.inputs();
        this.words = words;
    }

    Notes notes() {
        sayWhereFrom();
        sayWall();
        saySpace();
        sayDepth();
        sayOtherSide();
        sayDiffraction();
        List<String> sources = new ArrayList<>();
        sources.add("Gaussian lens with pupil ratio, derived in docs/derivations/lens.md; Airy's formula");
        if (!(inputs.wall() instanceof Framing.Wall.None)) {
            sources.add("Snell's law at a flat wall, derived in docs/derivations/flat-wall.md");
        }
        return new Notes(because, attempts, cautions, sources);
    }

    private void sayWhereFrom() {
        because.add("distance counts from the lens's front principal plane; a tape starts at the sensor mark: "
                + words.length(found.fromSensorMetres()) + " (no gap between the principal planes).");
    }

    private void sayWall() {
        if (inputs.wall() instanceof Framing.Wall.Tank tank) {
            FlatWall wall = FlatWall.ofWater(tank.glassMetres());
            double halfDiagonal =
                    Math.hypot(inputs.sensor().widthMetres(), inputs.sensor().heightMetres()) / 2;
            double slope = halfDiagonal / Optics.imageDistanceMetres(inputs.lens(), found.magnification());
            double error = wall.shiftErrorMetres(tank.waterMetres(), Math.atan(slope));
            because.add("Glass and water bring the thing " + words.length(found.wallShiftMetres())
                    + " nearer, so the camera stands that much farther back; true near the axis: in the frame's"
                    + " corners it looks " + Words.share(error / found.dryMetres()) + " larger still.");
        }
    }

    private void saySpace() {
        double space = found.findFreeSpaceMetres()
                .orElse(found.distanceMetres() - inputs.thing().depthMetres() / 2);
        if (space < 0) {
            because.add("The lens would stand " + words.length(-space) + " inside the thing.");
            attempts.add("Take a longer lens, or let the thing fill less of the frame.");
        }
        if (inputs.wall() instanceof Framing.Wall.Tank tank) {
            sayAir(tank, found.findAirMetres().orElseThrow());
            double lacking = inputs.thing().depthMetres() / 2 - tank.waterMetres();
            if (tank.waterMetres() > 0 && lacking > 0) {
                because.add("The thing would cut " + words.length(lacking) + " into the pane.");
                attempts.add("Hang it " + words.tape(words.up(lacking)) + " farther from the pane.");
            }
        }
    }

    private void sayAir(Framing.Wall.Tank tank, double airMetres) {
        String from = inputs.front() instanceof Framing.Front.At ? "lens's front" : "principal plane";
        because.add("Before the pane there are " + words.length(airMetres) + " of air from the " + from + "; "
                + words.length(tank.airGapMetres()) + " are wanted.");
        double lacking = tank.airGapMetres() - airMetres;
        if (lacking <= 0) {
            return;
        }
        double step = words.stepMetres();
        double water = Math.floor((tank.waterMetres() - lacking * Layer.WATER_INDEX) / step + 1e-6) * step;
        double nearer = tank.waterMetres() - water;
        if (water > inputs.thing().depthMetres() / 2) {
            Framing.Wall wall = new Framing.Wall.Tank(tank.airGapMetres(), tank.glassMetres(), water);
            tryOut(
                    inputs.fill(),
                    inputs.lens(),
                    wall,
                    "Bring the thing " + words.length(nearer) + " nearer to the pane, " + words.tape(water)
                            + " behind it.");
        }
        double m = found.magnification();
        double f = inputs.lens().focalLengthMetres();
        double farther = 1 / (1 + m * lacking / f);
        for (double share = share(inputs.fill()) * farther; share > 0.005; share -= 0.005) {
            double tried = Math.floor(share * 1e3) / 1e3;
            if (tryOut(
                    fill(tried),
                    inputs.lens(),
                    tank,
                    "Let it fill " + Words.fineShare(tried) + " instead of " + Words.fineShare(share(inputs.fill()))
                            + ".")) {
                break;
            }
        }
        double longer = Math.ceil((f + lacking / (1 + 1 / m)) * 1e3) / 1e3;
        tryOut(
                inputs.fill(),
                new LensModel(longer, inputs.lens().pupilRatio()),
                tank,
                "Take a lens of " + Words.MILLIMETRES.length(longer) + " or longer.");
    }

    /// Says what to try only where it meets every criterion.
    private boolean tryOut(Framing.Fill fill, LensModel lens, Framing.Wall wall, String sentence) {
        Framing.Inputs other = new Framing.Inputs(
                inputs.sensor(), lens, inputs.sharpness(), inputs.thing(), fill, inputs.front(), wall);
        for (Criterion criterion : FramingInquiry.criteria(Framing.answer(other))) {
            if (criterion.margin() < 0) {
                return false;
            }
        }
        attempts.add(sentence);
        return true;
    }

    private static double share(Framing.Fill fill) {
        return switch (fill) {
            case Framing.Fill.Height(double share) -> share;
            case Framing.Fill.Width(double share) -> share;
        };
    }

    private Framing.Fill fill(double share) {
        return switch (inputs.fill()) {
            case Framing.Fill.Height height -> new Framing.Fill.Height(share);
            case Framing.Fill.Width width -> new Framing.Fill.Width(share);
        };
    }

    private void sayDepth() {
        double half = inputs.thing().depthMetres() / 2;
        double front = found.distanceMetres() - half;
        if (half == 0 || front <= 0) {
            return;
        }
        String stop = Words.fNumber(inputs.sharpness().fNumber());
        String need = "Front to edge of the thing needs " + words.length(half) + " of sharp depth; ";
        OptionalDouble depth = found.zone().findDepthMetres();
        if (depth.isEmpty()) {
            because.add(need + "all beyond " + words.length(found.zone().nearMetres()) + " is sharp at " + stop + ".");
        } else if (found.zone().nearMetres() <= front) {
            because.add(need + stop + " gives " + words.length(depth.getAsDouble())
                    + ", focused on its middle plane: the front is sharp.");
        } else {
            because.add(need + stop + " gives " + words.length(depth.getAsDouble())
                    + (depth.getAsDouble() >= half
                            ? ", but focused on its middle plane the front is soft."
                            : ": not all is sharp."));
            trySharper(front);
        }
    }

    /// Looks for the least engraved f-number, and the focus in whole millimetres, that make front and edge sharp.
    private void trySharper(double frontMetres) {
        double seenFront = found.apparentMetres(frontMetres);
        double seenMiddle = found.dryMetres();
        if (seenFront <= inputs.lens().focalLengthMetres()) {
            return;
        }
        double blur = inputs.sharpness().blurMetres();
        FocusSetting exact = Optics.settingFor(inputs.lens(), blur, SharpZone.of(seenFront, seenMiddle));
        double index = (found.distanceMetres() - frontMetres) / (seenMiddle - seenFront);
        double step = words.stepMetres();
        double behindFront = Math.rint((exact.focusMetres() - seenFront) * index / step) * step;
        double focus = seenFront + behindFront / index;
        Optional<FNumbers.Stop> stop = FNumbers.findAtLeast(exact.fNumber());
        while (stop.isPresent() && !isSharp(stop.get().least(), focus, seenFront, seenMiddle)) {
            stop = FNumbers.findAtLeast(stop.get().most() * 1.01);
        }
        if (stop.isEmpty()) {
            attempts.add("No stop to f/32 makes front and edge sharp at this size: let it fill less of the frame.");
            return;
        }
        String behind = words.tape(behindFront) + " behind the front face: ";
        double given = inputs.sharpness().fNumber();
        if (isSharp(given, focus, seenFront, seenMiddle)) {
            attempts.add("Focus " + behind + "at " + Words.fNumber(given) + " front and edge are then sharp.");
            return;
        }
        double working = Optics.workingFNumber(inputs.lens(), stop.get().engraved(), found.magnification());
        attempts.add("Stop down to " + Words.fNumber(stop.get().engraved()) + " and focus " + behind
                + "front and edge are then sharp"
                + (Optics.softensByDiffraction(working) ? ", though past a working f/16 all gets softer." : "."));
    }

    private boolean isSharp(double fNumber, double focusMetres, double nearMetres, double farMetres) {
        if (focusMetres <= inputs.lens().focalLengthMetres()) {
            return false;
        }
        Sharpness sharpness =
                new Sharpness(inputs.lens(), fNumber, inputs.sharpness().blurMetres());
        SharpZone zone = Optics.sharpZone(sharpness, focusMetres);
        boolean farSharp = switch (zone.far()) {
            case FarLimit.At(double metres) -> metres >= farMetres;
            case FarLimit.Endless() -> true;
        };
        return farSharp && zone.nearMetres() <= nearMetres;
    }

    private void sayOtherSide() {
        double m = found.magnification();
        double width = inputs.thing().widthMetres() * m / inputs.sensor().widthMetres();
        double height = inputs.thing().heightMetres() * m / inputs.sensor().heightMetres();
        because.add("It fills " + Words.share(width) + " of the width and " + Words.share(height) + " of the height.");
        double over = Math.max(width, height);
        boolean asked = share(inputs.fill()) > 1;
        if (over > 1 && !asked) {
            double share = Math.floor(share(inputs.fill()) / over * 100) / 100;
            attempts.add("To have all of it in the frame, let it fill " + Words.share(share) + " at most.");
        }
    }

    private void sayDiffraction() {
        double working = found.workingFNumber();
        if (!Optics.softensByDiffraction(working)) {
            return;
        }
        double blurPixels = inputs.sharpness().blurMetres() / inputs.sensor().pitchMetres();
        cautions.add("Past a working f/16 (here " + Words.fineFNumber(working)
                + ") diffraction softens the whole picture: the"
                + " Airy disc is " + Words.pixels(found.airyPixels()) + " wide against a blur limit of "
                + Words.pixels(blurPixels) + ".");
        double open = Optics.DIFFRACTION_F_NUMBER / Optics.pupilFactor(inputs.lens(), found.magnification());
        FNumbers.findAtMost(open)
                .ifPresent(stop -> attempts.add(
                        "Open up to " + Words.fNumber(stop.engraved()) + " or wider to stay within a working f/16."));
    }

    /// The f-numbers engraved on lenses, in thirds of a stop.
    ///
    /// **Source:** the usual rounded series; common practice.
    private static final class FNumbers {
        private static final double[] ENGRAVED = {
            1, 1.1, 1.2, 1.4, 1.6, 1.8, 2, 2.2, 2.5, 2.8, 3.2, 3.5, 4, 4.5, 5, 5.6, 6.3, 7.1, 8, 9, 10, 11, 13, 14, 16,
            18, 20, 22, 25, 29, 32
        };

        private FNumbers() {}

        /// An engraved f-number and the one it stands for: the series is 2^(n/6), so an engraved 11 is 11.31.
        record Stop(double engraved, double exact) {
            /// The smaller of both: as little as may be stopped down.
            double least() {
                return Math.min(engraved, exact);
            }

            /// The larger of both: as much as may be stopped down.
            double most() {
                return Math.max(engraved, exact);
            }
        }

        /// The largest engraved f-number that, taken either way, is no larger than asked; none below f/1.
        static Optional<Stop> findAtMost(double fNumber) {
            for (int i = ENGRAVED.length - 1; i >= 0; i--) {
                Stop stop = stop(i);
                if (stop.most() <= fNumber * (1 + 1e-12)) {
                    return Optional.of(stop);
                }
            }
            return Optional.empty();
        }

        /// The first engraved f-number that, taken either way, is no smaller than asked; none past f/32.
        static Optional<Stop> findAtLeast(double fNumber) {
            for (int i = 0; i < ENGRAVED.length; i++) {
                Stop stop = stop(i);
                if (stop.least() >= fNumber * (1 - 1e-12)) {
                    return Optional.of(stop);
                }
            }
            return Optional.empty();
        }

        private static Stop stop(int index) {
            return new Stop(ENGRAVED[index], Math.pow(2, index / 6.0));
        }
    }
}
