package plumeline.cut.mask;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import plumeline.geom.Point;
import plumeline.geom.Vec;
import plumeline.plan.Move;
import plumeline.plan.Placed;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.quantity.Print;
import plumeline.stage.PlaceSight;
import plumeline.stage.Scene;
import plumeline.stage.Strand;

/// The clean plate that a pass's masks ask for: the picture behind what is painted out.
///
/// @param shot the shot's name
/// @param pass the pass's name; empty for the shot itself
/// @param sort a still picture or the whole move
/// @param without what is taken out of the picture for it
/// @param firstCaptured the first captured frame to record, from GO; below 0 with handles
/// @param frames how many to record
/// @param apartPixels how far plate and take may lie apart where the move doesn't start with the camera, captured px at
///     the line; 0 where it does
/// @param does what to do, in sentences
/// @param cautions what to look out for
public record PlateNeed(
        String shot,
        String pass,
        Sort sort,
        List<String> without,
        long firstCaptured,
        long frames,
        double apartPixels,
        List<String> does,
        List<String> cautions) {
    private static final double SOON = 0.05;

    /// Copies the lists.
    public PlateNeed {
        without = List.copyOf(without);
        does = List.copyOf(does);
        cautions = List.copyOf(cautions);
    }

    /// What kind of plate is enough.
    public enum Sort {
        /// A second of a picture that doesn't move.
        STILL,
        /// The same move in the same phase.
        MOVED
    }

    /// Finds what a pass needs.
    ///
    /// @param plan the plan
    /// @param masked the pass
    /// @param numbers its frames
    /// @return the need
    public static PlateNeed of(Plan plan, Masked masked, MaskNumbers numbers) {
        Shot shot = masked.stage().shot();
        Set<String> held = new LinkedHashSet<>();
        for (Strand strand : masked.strands()) {
            held.add(shot.placed().get(strand.thing()).name());
        }
        List<Move> moves = shot.moves().stream()
                .filter(move -> move.listCarried().isEmpty()
                        || move.listCarried().stream().anyMatch(named -> !held.contains(named.name())))
                .toList();
        boolean isMoved = !moves.isEmpty() && masked.stage().isMoving();
        double apart = isMoved && masked.shutter().slipSeconds() > 0 ? apartPixels(masked, numbers) : 0;
        long second = (long) Math.ceil(masked.shutter().framesPerSecond() - 1e-9);
        return new PlateNeed(
                masked.shot(),
                masked.pass(),
                isMoved ? Sort.MOVED : Sort.STILL,
                taken(masked, held),
                isMoved ? numbers.firstCaptured() : 0,
                isMoved ? numbers.pastPlated() - numbers.firstCaptured() : second,
                apart,
                isMoved ? moved(plan, masked, moves, numbers, apart) : still(plan, masked),
                cautions(plan, masked, numbers, held));
    }

    private static List<String> taken(Masked masked, Set<String> held) {
        List<String> all = new ArrayList<>();
        for (String name : held) {
            all.add(name);
            long lines = lines(masked, name);
            if (lines > 0) {
                all.add(name + (lines > 1 ? "'s " + lines + " lines" : "'s line"));
            }
            if (count(masked, name, Strand.Sort.RIG) > 0) {
                all.add(name + "'s rig");
            }
        }
        return all;
    }

    /// How many lines hold a thing: those that are followed, and those that are only counted.
    private static long lines(Masked masked, String name) {
        long followed = count(masked, name, Strand.Sort.LINE);
        Placed placed = masked.stage().shot().findPlaced(name).orElseThrow();
        return followed == 0 ? 0 : Math.max(followed, placed.lines().orElse(1));
    }

    private static long count(Masked masked, String name, Strand.Sort sort) {
        return masked.strands().stream()
                .filter(strand -> strand.sort() == sort
                        && masked.stage()
                                .shot()
                                .placed()
                                .get(strand.thing())
                                .name()
                                .equals(name))
                .count();
    }

    private static List<String> still(Plan plan, Masked masked) {
        String still = "The camera stands still";
        String second = "a second of the empty picture, recorded right before ";
        String average = " is enough. Average its frames: less noise.";
        return List.of(
                masked.stage()
                        .shot()
                        .findRelease()
                        .map(release -> still + ": " + second + "the take, " + LetGo.before(release) + "," + average)
                        .orElse(still + ", and nothing moves but what is taken out: " + second + "or after the takes,"
                                + average),
                settings(plan, masked));
    }

    private static List<String> moved(
            Plan plan, Masked masked, List<Move> moves, MaskNumbers numbers, double apartPixels) {
        List<String> all = new ArrayList<>();
        String names = moves.stream().map(Move::name).collect(Collectors.joining(", "));
        long before = -numbers.firstCaptured();
        all.add("Run the same again without it: " + names + ", from the same starting place and the same side, at "
                + Print.number(masked.shutter().framesPerSecond(), 3) + " fps: "
                + (numbers.pastPlated() - numbers.firstCaptured()) + " frames, of which " + Math.max(0, before)
                + " before GO.");
        masked.stage()
                .shot()
                .findRelease()
                .ifPresent(release -> all.add("Run it before the take, " + LetGo.before(release) + "."));
        all.add(
                masked.shutter().slipSeconds() == 0
                        ? "Camera and moves start together, so each frame of the plate lies on the frame of the take"
                                + " with the same number after GO."
                        : "Camera and moves don't start together: plate and take may lie half a captured frame's travel"
                                + " apart, " + pixels(apartPixels) + ". Shoot three plates and take the one that fits"
                                + " best, or let the camera start the move (triggered: yes).");
        Set<String> unsure = new LinkedHashSet<>();
        for (Move move : moves) {
            if (move.machine().filter(one -> one.written().has("repeats")).isEmpty()) {
                unsure.add(move.name());
            }
        }
        if (!unsure.isEmpty()) {
            all.add("How well " + String.join(", ", unsure)
                    + " repeats isn't known: lay both over each other, difference"
                    + " view, before anything is struck.");
        }
        all.add(settings(plan, masked));
        return all;
    }

    private static String settings(Plan plan, Masked masked) {
        Scene start = masked.sceneAt(0);
        Print print = new Print(plan.film().papersOrDefault());
        double exposure = masked.shutter().exposureSeconds();
        return "Leave all else as it is: lens "
                + masked.stage().shot().camera().lens().name() + ", focus "
                + print.length(start.picture().focusMetres()) + " from the lens point as seen, f/"
                + Print.number(start.picture().fNumber(), 1) + ", exposure "
                + (exposure > 0.5 ? Print.seconds(exposure, 1) : "1/" + Print.number(1 / exposure, 0) + " s")
                + ", sensitivity, white, lamps and their levels, what stands about. Record it by the same codec"
                + " and curve.";
    }

    private static List<String> cautions(Plan plan, Masked masked, MaskNumbers numbers, Set<String> held) {
        List<String> all = new ArrayList<>();
        Shot shot = masked.stage().shot();
        numbers.findLack().ifPresent(all::add);
        if (masked.pass().isEmpty()
                && !plan.findShot(masked.shot()).orElseThrow().passes().isEmpty()) {
            all.add("The cut names no pass here: masks and plate are for the shot itself, beside those of its passes.");
        }
        shot.findRelease().ifPresent(release -> all.add(LetGo.across(release)));
        for (String name : held) {
            int thing = masked.stage().thingIndex(name);
            boolean isWet = masked.stage()
                    .findTank()
                    .filter(walls -> walls.isWet(masked.stage().standing(thing, masked.values())))
                    .isPresent();
            boolean hangs = shot.placed().get(thing).isHung();
            if (isWet) {
                all.add("Lift " + name
                        + " out with a hand beneath it: out of the water its lines bear all of it, over glass.");
                all.add("Without " + name
                        + " the water stands lower: fill to the mark again, and wait until it is still and"
                        + " clear.");
            } else if (hangs) {
                all.add("Take " + name + " down with a hand beneath it; nobody's head under it.");
            }
            if (count(masked, name, Strand.Sort.RIG) > 0) {
                all.add("Mark where " + name + "'s rig stands before it goes: it may have to come back.");
            }
        }
        return all;
    }

    private static String pixels(double pixels) {
        return pixels > 0 && pixels < SOON ? "under 0.1 px" : Print.number(pixels, pixels < 20 ? 1 : 0) + " px";
    }

    /// Half of the farthest that a place of the set at a line goes in the picture within a captured frame's time.
    private static double apartPixels(Masked masked, MaskNumbers numbers) {
        double most = 0;
        for (Strand strand : masked.strands()) {
            Vec place = masked.ends(strand, masked.sceneAt(masked.stage().lastSeconds() / 2))
                    .foot();
            Optional<Point> before = Optional.empty();
            for (long captured = Math.max(0, numbers.firstCaptured()); captured < numbers.pastPlated(); captured++) {
                Optional<Point> now =
                        find(masked, masked.sceneAt(masked.shutter().opensSeconds(captured)), place);
                if (before.isPresent() && now.isPresent()) {
                    most = Math.max(
                            most,
                            Math.hypot(
                                    now.get().x() - before.get().x(),
                                    now.get().y() - before.get().y()));
                }
                before = now;
            }
        }
        return most / 2;
    }

    private static Optional<Point> find(Masked masked, Scene scene, Vec place) {
        if (!(PlaceSight.of(scene, place) instanceof PlaceSight.Seen(PlaceSight.Way _, Point point))) {
            return Optional.empty();
        }
        Point at = masked.size().pixel(scene, point);
        boolean isIn = at.x() >= 0
                && at.x() <= masked.size().acrossPixels()
                && at.y() >= 0
                && at.y() <= masked.size().downPixels();
        return isIn ? Optional.of(at) : Optional.empty();
    }
}
