package plumeline.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import plumeline.look.CutLooks;
import plumeline.plan.Pass;
import plumeline.plan.Plan;
import plumeline.plan.Release;
import plumeline.plan.Shot;
import plumeline.plan.Thing;

/// Where a shot can hurt someone: the usual cautions, by what stands on its set. They are no promise that nothing else
/// can.
///
/// **Source:** common practice on sets with water, lamps and machines.
public final class Cautions {
    /// A caution.
    ///
    /// @param about a few words
    /// @param text the whole sentence
    public record Caution(String about, String text) {}

    /// Whose word counts more.
    public static final String DEFERENCE =
            "Local codes, the makers' manuals and licensed hands come first: mains work, rigging"
                    + " and anything over a head are theirs.";

    private static final String FLASHES =
            "Alternating looks can bring on seizures, in people who don't know it of themselves too. Warn cast, crew"
                    + " and whoever watches the cut; who feels unwell looks away and covers one eye. Limits are"
                    + " guidance, no permission: the flash test of broadcaster or client on the finished film decides.";

    private Cautions() {}

    /// Lists a shot's cautions; of what has a card only where to read them.
    ///
    /// @param plan its plan
    /// @param shot the shot
    /// @return the cautions
    public static List<Caution> of(Plan plan, Shot shot) {
        List<Caution> all = new ArrayList<>();
        boolean hasTank = shot.findTank().isPresent();
        boolean isInked =
                shot.findRelease().filter(Release.OfInk.class::isInstance).isPresent();
        if (hasTank) {
            all.add(new Caution(
                    "glass, water, mains, a heavy tank",
                    "The tank card begins with them: read them out before a drop is filled in."));
        } else if (isInked) {
            all.add(new Caution(
                    "water and mains",
                    "Feed every lamp and device near the water through a residual-current device tested today; plugs"
                            + " and distributors off the floor and higher than any spill; drip loops in all"
                            + " leads; switch"
                            + " off before a hand goes into the water."));
        }
        if (!shot.lights().isEmpty()) {
            all.add(new Caution(
                    "hot lamps, light in eyes",
                    "The light card begins with them: read them out before a lamp is switched on."));
        }
        if (isFlashing(plan, shot)) {
            all.add(new Caution(
                    "looks that flash",
                    FLASHES + " Play the cut small and once, with room light on, before anyone watches it large."));
        }
        if (shot.moves().stream()
                .anyMatch(move -> move.machine().isPresent() || move.travel().isPresent())) {
            all.add(new Caution(
                    "moving machines",
                    "Fingers, hair and cables out of every move's way from end stop to end stop; call it before each"
                            + " run; one person at the stop."));
        }
        if (!hasTank && hasClear(shot)) {
            all.add(new Caution(
                    "glass",
                    "Glass breaks: cut-proof gloves for edges and shards, shoes on, a bin for shards at hand."));
        }
        if (shot.placed().stream().anyMatch(placed -> placed.isHung())) {
            all.add(new Caution(
                    "hung things", "Nobody's hand or head below; the hang card says what the lines must bear."));
        }
        if (shot.findRelease().filter(Release.OfPieces.class::isInstance).isPresent()) {
            all.add(new Caution(
                    "falling pieces",
                    "Eyes covered near what falls; sweep before the next take: pieces slip underfoot."));
        }
        all.add(new Caution(
                "stands and cables", "Weigh stands down, tape cables where anyone walks, keep the way out clear."));
        return all;
    }

    /// Whether looks follow each other in less than a second, or someone asks whether they flash.
    private static boolean isFlashing(Plan plan, Shot shot) {
        Set<String> passes = plan.findShot(shot.name()).orElse(shot).passes().stream()
                .map(Pass::name)
                .collect(Collectors.toSet());
        return shot.wants().stream().anyMatch(want -> want.word().equals("flash_safe"))
                || CutLooks.between(plan, shot.name(), passes).stream()
                        .flatMap(List::stream)
                        .anyMatch(look -> look.frames() < plan.film().rate().si());
    }

    /// What a look card begins with.
    ///
    /// @param plan its plan
    /// @param shot the shot
    static List<String> ofLooks(Plan plan, Shot shot) {
        List<String> all = new ArrayList<>();
        if (isFlashing(plan, shot)) {
            all.add("Looks that flash: " + FLASHES);
        }
        all.add("Light in eyes: saturated and blue light is stronger than it looks; nobody looks into a lamp, on test"
                + " either.");
        all.add(DEFERENCE);
        return all;
    }

    /// What a card of a machine that moves begins with.
    static List<String> ofMoves() {
        return List.of(
                "Moving machines: fingers, hair, sleeves, cables and hung lines clear of rail, arm and plate from end"
                        + " stop to end stop; nobody reaches in while it is switched on.",
                "Once slowly without the product before the first run, and after anything was shifted; say it aloud"
                        + " before each run; one person at the stop, who watches nothing else.",
                DEFERENCE);
    }

    /// What cards after the first of a shot's moves begin with.
    static List<String> ofFurtherMoves() {
        return List.of(
                "A machine moves: the shot's first such card begins with the cautions. Read them out before it is"
                        + " switched on.");
    }

    /// What a light card begins with.
    static List<String> ofLamps(boolean hasTank) {
        List<String> all = new ArrayList<>(List.of(
                "Stands: a sandbag on each, over a leg that points where the lamp leans; no higher than needed; what"
                        + " reaches over the set or a head has a second line. Cables taped where anyone walks.",
                "Hot lamps: gloves for barn doors and glass, a hand's breadth and more from cloth, paper and gel,"
                        + " nobody leaves them on alone, cool down before rigging.",
                "Light in eyes: nobody looks into a lamp; say before switching on or flashing, warn of alternating"
                        + " light.",
                "Mains: whole plugs and cords only, drums unrolled, no more on a circuit than it bears; the question"
                        + " power adds it up."));
        if (hasTank) {
            all.add("Mains near water: the tank card's cautions count for every lamp; drip loops in all leads, no lamp"
                    + " or clamp over open water without a second line, plugs higher than any spill; switch off before"
                    + " a hand goes in.");
        }
        all.add(DEFERENCE);
        return all;
    }

    private static boolean hasClear(Shot shot) {
        return shot.placed().stream()
                .anyMatch(placed -> placed.thing()
                        .body()
                        .filter(body -> body == Thing.Body.CLEAR)
                        .isPresent());
    }
}
