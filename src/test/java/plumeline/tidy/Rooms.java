package plumeline.tidy;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/// The rooms of the house and the arrows between them, as `ARCHITECTURE.md` draws them. A new room or a new arrow is a
/// line here and an entry in `docs/decisions.md`.
final class Rooms {
    private static final List<String> ARROWS = List.of(
            "quantity:",
            "text: quantity",
            "ranges:",
            "roots:",
            "geom:",
            "sight: geom",
            "search:",
            "sketch:",
            "answer: quantity text",
            "jobs:",
            "optics: geom ranges",
            "light: geom optics time ranges roots",
            "mirror: light",
            "rim: mirror",
            "scenery: mirror colour",
            "trace: scenery",
            "colour: ranges",
            "time: quantity",
            "motion: geom time ranges roots",
            "water: geom ranges roots",
            "flow: ranges",
            "ink: water",
            "fall: water",
            "sound: time",
            "clip: sound",
            "flicker: quantity ranges",
            "plan: quantity text time",
            "take: quantity",
            "lesson: plan take optics light motion time water ink fall sound",
            "timeline: plan time motion",
            "stage: plan timeline lesson sight optics light colour mirror rim motion time water ink fall sound",
            "plume: stage flow",
            "wet: stage",
            "lit: stage",
            "look: lit flicker",
            "pace: stage",
            "want: wet look pace timeline",
            "solve: want search plume",
            "liquid: answer water",
            "ask: liquid answer sight optics light flicker mirror colour motion time water ink fall sound search",
            "draw: solve timeline sketch",
            "press:",
            "keys: solve",
            "cut: keys timeline sound",
            "art: scenery",
            "render: trace draw look plume jobs",
            "card: keys",
            "sheet: draw card press cut",
            "post: sheet",
            "assemble: render cut clip",
            "resect: stage search sketch",
            "desk: solve answer art clip jobs",
            "cli: *");

    /// Pure functions of numbers.
    static final Set<String> PHYSICS = Set.of(
            "optics", "light", "flicker", "mirror", "rim", "colour", "motion", "time", "water", "flow", "ink", "fall",
            "sound", "geom", "sight", "trace");

    /// Rooms without input and output, clock, environment and default locale.
    static final Set<String> SILENT = silent();

    private static final Map<String, Set<String>> DIRECT = direct();

    private Rooms() {}

    static boolean isKnown(String room) {
        return DIRECT.containsKey(room);
    }

    static Set<String> listAll() {
        return DIRECT.keySet();
    }

    /// Every room that a room may use: those at its arrows' ends, and theirs.
    static Set<String> reachable(String room) {
        var found = new LinkedHashSet<String>();
        collect(room, found);
        return found;
    }

    private static void collect(String room, Set<String> found) {
        for (String next : DIRECT.getOrDefault(room, Set.of())) {
            if (found.add(next)) {
                collect(next, found);
            }
        }
    }

    private static Map<String, Set<String>> direct() {
        var direct = new java.util.TreeMap<String, Set<String>>();
        for (String line : ARROWS) {
            int colon = line.indexOf(':');
            String targets = line.substring(colon + 1).strip();
            direct.put(line.substring(0, colon), targets.isEmpty() ? Set.of() : Set.of(targets.split(" ")));
        }
        direct.replaceAll((room, targets) -> targets.contains("*") ? allBut(direct.keySet(), room) : targets);
        return direct;
    }

    private static Set<String> silent() {
        var silent = new TreeSet<>(PHYSICS);
        silent.addAll(List.of("quantity", "text", "search", "plan", "lesson", "timeline", "stage", "want", "solve"));
        silent.addAll(List.of(
                "answer",
                "liquid",
                "ask",
                "sketch",
                "draw",
                "card",
                "ranges",
                "jobs",
                "plume",
                "wet",
                "lit",
                "look",
                "pace",
                "roots",
                "keys",
                "cut",
                "post",
                "render",
                "assemble",
                "resect",
                "scenery"));
        return silent;
    }

    private static Set<String> allBut(Set<String> rooms, String room) {
        var rest = new TreeSet<>(rooms);
        rest.remove(room);
        return rest;
    }
}
