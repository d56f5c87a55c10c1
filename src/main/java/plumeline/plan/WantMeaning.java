package plumeline.plan;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import plumeline.text.Node;

/// Checks what wants point at.
final class WantMeaning {
    private static final Set<WantGrammar.Subject> OF_THE_FILM = Set.of(
            WantGrammar.Subject.DELIVERIES,
            WantGrammar.Subject.CAMERA,
            WantGrammar.Subject.TANK,
            WantGrammar.Subject.CUTS,
            WantGrammar.Subject.SHOT,
            WantGrammar.Subject.PASSES_OR_CUTS);

    private final Names names;
    private final String home;
    private final Names.ShotNames own;
    private final Issues issues;

    /// @param home the shot's path, or empty for the film's own wants
    /// @param node the shot, or the plan
    WantMeaning(Names names, String home, Node node, Issues issues) {
        this.names = names;
        this.home = home;
        this.own = home.isEmpty() ? names.all() : Names.ShotNames.of(node);
        this.issues = issues;
    }

    private boolean isFilm() {
        return home.isEmpty();
    }

    void check(List<Node> wants, String path) {
        int index = 0;
        for (Node want : wants) {
            var at = path + "[" + ++index + "]";
            var words = Tree.entries(want).stream()
                    .filter(e -> WantGrammar.isWord(e.key()) && !isFurther(want, e.key()))
                    .toList();
            if (words.size() == 1) {
                checkWant(want, words.getFirst(), words.getFirst().key(), at);
            } else if (words.isEmpty() && want instanceof Node.Mapping mapping) {
                WantGrammar.shape()
                        .findMisspelt(mapping)
                        .ifPresent(word -> checkWant(want, word, WantGrammar.nearest(word.key()), at));
            }
        }
    }

    /// `ratio` and `within` apart, a word may also be another want's key; then the first word counts.
    private static boolean isFurther(Node want, String key) {
        var first = Tree.entries(want).stream()
                .filter(e -> WantGrammar.isWord(e.key()))
                .findFirst();
        return first.isPresent()
                && !first.get().key().equals(key)
                && WantGrammar.takes(first.get().key(), key);
    }

    /// @param word the entry as written
    /// @param meant the want word that it is, or most likely means
    private void checkWant(Node want, Node.Entry word, String meant, String at) {
        var subject = WantGrammar.subject(meant);
        if (isFilm() && !ofTheFilm(word, subject)) {
            issues.add(
                    word.value(),
                    at + "." + word.key(),
                    "P-WANT-01",
                    "a want of the film's own",
                    "under a shot's `wants`: it is about what a shot holds",
                    "Move it into the shot.");
            return;
        }
        checkNames(word, subject, at);
        checkTwice(word, at);
        for (var key : List.of("behind", "upon")) {
            checkList(want, at, key, own.placed().keySet(), "a placed thing", place());
        }
        Set<String> placedOrAll = new LinkedHashSet<>(own.placed().keySet());
        placedOrAll.add("all");
        checkList(want, at, "of", placedOrAll, "a placed thing", place());
        for (var key : List.of("key", "fill", "light"))
            checkList(want, at, key, own.lights(), "a light of the shot", lights());
        checkList(want, at, "pass", own.passes(), "a pass", isFilm() ? "a shot" : home + ".passes");
        for (var key : List.of("frames", "for", "when")) {
            Tree.find(want, key).ifPresent(n -> issues.wholeFrames(n, at + "." + key));
        }
        checkKeys(want, word, meant, at);
    }

    private static boolean ofTheFilm(Node.Entry word, WantGrammar.Subject subject) {
        var subjects = Written.namesOf(word.value()).stream().map(Named::name).toList();
        if (subject == WantGrammar.Subject.BODIES || subject == WantGrammar.Subject.SHADOWS)
            return subjects.equals(List.of("all"));
        if (subject == WantGrammar.Subject.PASSES_OR_CUTS) return subjects.equals(List.of("cuts"));
        return OF_THE_FILM.contains(subject);
    }

    private void checkNames(Node.Entry word, WantGrammar.Subject subject, String at) {
        if (!subject.isNamed()) return;
        var known = new LinkedHashSet<>(known(subject));
        known.addAll(subject.words());
        boolean many = word.value() instanceof Node.Sequence;
        int index = 0;
        for (var name : Written.namesOf(word.value())) {
            index++;
            var field = at + "." + word.key() + (many ? "[" + index + "]" : "");
            issues.known(name, field, known, subject.what, homeOf(subject));
        }
    }

    private Set<String> known(WantGrammar.Subject subject) {
        return switch (subject) {
            case THING, THINGS -> own.placed().keySet();
            case DELIVERIES -> names.deliveries();
            case BODIES, SHADOWS, THINGS_OR_LIGHTS, THING_OR_CARD -> own.bodies();
            case LIGHT, LIGHT_OR_CAMERA -> own.lights();
            case TANK -> names.kit("tanks");
            case PIECE -> names.kit("pieces");
            case THING_OR_PIECE -> {
                Set<String> both = new LinkedHashSet<>(own.placed().keySet());
                both.addAll(names.kit("pieces"));
                yield both;
            }
            case MOVE -> own.moves();
            case PASSES, PASSES_OR_CUTS -> own.passes();
            case CAMERA, CUTS, SHOT -> Set.of();
        };
    }

    private String homeOf(WantGrammar.Subject subject) {
        return switch (subject) {
            case THING, THINGS, THING_OR_PIECE -> place();
            case DELIVERIES -> "deliver";
            case BODIES, SHADOWS, THINGS_OR_LIGHTS, THING_OR_CARD -> isFilm() ? "a shot" : home;
            case LIGHT, LIGHT_OR_CAMERA -> lights();
            case TANK -> "kit.tanks";
            case PIECE -> "kit.pieces";
            case MOVE -> home + ".moves";
            case PASSES, PASSES_OR_CUTS -> home + ".passes";
            case CAMERA, CUTS, SHOT -> home;
        };
    }

    private String place() {
        return isFilm() ? "a shot" : home + ".place";
    }

    private String lights() {
        return isFilm() ? "a shot" : home + ".lights";
    }

    private void checkList(Node want, String at, String key, Set<String> known, String what, String where) {
        Tree.find(want, key).ifPresent(value -> {
            boolean many = value instanceof Node.Sequence;
            int index = 0;
            for (var name : Written.namesOf(value)) {
                index++;
                issues.known(name, at + "." + key + (many ? "[" + index + "]" : ""), known, what, where);
            }
        });
    }

    private void checkTwice(Node.Entry word, String at) {
        var seen = new HashSet<String>();
        for (var name : Written.namesOf(word.value())) {
            if (seen.add(name.name())) continue;
            issues.add(
                    name.place(),
                    fieldOf(name, word, at),
                    "P-WANT-02",
                    "naming " + Issues.shown(name.name()) + " twice",
                    "naming each once",
                    "Leave one of them out.");
        }
    }

    /// Gives the path of one of a want's subjects.
    private static String fieldOf(Named name, Node.Entry word, String at) {
        var field = at + "." + word.key();
        return word.value() instanceof Node.Sequence
                ? field + "[" + (Written.namesOf(word.value()).indexOf(name) + 1) + "]"
                : field;
    }

    private void checkKeys(Node want, Node.Entry word, String meant, String at) {
        switch (meant) {
            case "fills" -> {
                if (Tree.has(want, "height") == Tree.has(want, "width")) {
                    issues.add(
                            want,
                            at,
                            "P-WANT-03",
                            Tree.has(want, "height") ? "given height and width" : "given neither height nor width",
                            "given one of them",
                            "Try `height: 60 %`.");
                }
            }
            case "hidden" -> {
                var behind = Tree.find(want, "behind").map(Written::namesOf).orElse(List.of());
                for (var name : Written.namesOf(word.value())) {
                    if (behind.stream().noneMatch(b -> b.name().equals(name.name()))) continue;
                    issues.add(
                            name.place(),
                            fieldOf(name, word, at),
                            "P-WANT-04",
                            Issues.shown(name.name()) + ", which is also behind",
                            "another thing than what hides it",
                            "Leave it out on one side.");
                }
            }
            case "registers", "matched", "flash_safe" -> checkTwo(word, at);
            case "same_size" -> checkOther(want, word, at);
            default -> {}
        }
    }

    private void checkTwo(Node.Entry word, String at) {
        var subjects = Written.namesOf(word.value());
        if (subjects.size() != 1 || subjects.getFirst().name().equals("cuts")) return;
        issues.add(
                word.value(),
                at + "." + word.key(),
                "P-WANT-05",
                "one pass",
                "two passes or more",
                "Name the passes that are compared.");
    }

    private void checkOther(Node want, Node.Entry word, String at) {
        var as = Tree.find(want, "as").flatMap(Written::named);
        if (as.isEmpty()) return;
        issues.known(as.get(), at + ".as", names.shots().keySet(), "a shot", "shots");
        var other = names.shots().get(as.get().name());
        var thing = Written.named(word.value()).map(Named::name).orElse("");
        if (other == null || !own.placed().containsKey(thing) || other.placed().containsKey(thing)) return;
        var product = own.placed().get(thing).split("\\.", -1)[0];
        if (product.isEmpty() || other.products().contains(product)) return;
        issues.add(
                as.get().place(),
                at + ".as",
                "P-WANT-06",
                as.get().name() + ", which places neither " + thing + " nor a " + product,
                "a shot that places the same",
                "Name the shot to compare with.");
    }
}
