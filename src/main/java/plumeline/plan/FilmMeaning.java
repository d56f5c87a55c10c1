package plumeline.plan;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plumeline.quantity.FrameRate;
import plumeline.quantity.Kind;
import plumeline.quantity.Quantity;
import plumeline.text.Node;
import plumeline.time.Beats;
import plumeline.time.Timecode;

/// Checks the film's own facts, its cut and those of its deliveries (every frame has exactly one picture), what lies on
/// them, and what titles and the film's wants point at.
final class FilmMeaning {
    private final Node root;
    private final Names names;
    private final Issues issues;
    private final Optional<FrameRate> rate;
    private final Optional<Beats> beats;

    FilmMeaning(Node root, Names names, Issues issues) {
        this.root = root;
        this.names = names;
        this.issues = issues;
        rate = Tree.find(root, "film", "rate")
                .flatMap(Written::quantityOf)
                .filter(one -> one.kind() == Kind.RATE && one.value() > 0)
                .map(FrameRate::of);
        beats = rate.flatMap(known -> Tree.find(root, "film", "tempo")
                .flatMap(Written::quantityOf)
                .filter(tempo -> tempo.kind() == Kind.TEMPO && tempo.value() > 0)
                .map(tempo -> new Beats(tempo.exactValue(), firstBeat(), known)));
    }

    private BigDecimal firstBeat() {
        return Tree.find(root, "film", "first_beat")
                .flatMap(Written::quantityOf)
                .filter(first -> first.kind() == Kind.TIME)
                .map(Quantity::exactSi)
                .orElse(BigDecimal.ZERO);
    }

    void check() {
        Tree.find(root, "film", "frames").ifPresent(n -> issues.wholeFrames(n, "film.frames"));
        new KitMeaning(root, issues).checkRate(root, "film.rate", "film", "rate");
        checkTimecode();
        checkCut(Tree.items(root, "cut"), "cut");
        Tree.find(root, "film", "frames").ifPresent(n -> checkSum(n, "film.frames", Tree.items(root, "cut"), "cut"));
        for (var delivery : Tree.entries(root, "deliver")) {
            var path = "deliver." + delivery.key();
            var own = Tree.items(delivery.value(), "cut");
            checkCut(own, path + ".cut");
            Tree.find(delivery.value(), "length").ifPresent(n -> checkSum(n, path + ".length", own, path + ".cut"));
        }
        int index = 0;
        for (Node item : Tree.items(root, "overlays")) {
            var path = "overlays[" + ++index + "]";
            checkInstant(item, "over", path);
            Tree.find(item, "file").ifPresent(file -> issues.beside(file, path + ".file"));
        }
        index = 0;
        for (Node item : Tree.items(root, "cues")) checkCue(item, "cues[" + ++index + "]");
        for (var title : Tree.entries(root, "titles")) {
            issues.known(
                    new Named(title.key(), title.value().place()),
                    "titles." + title.key(),
                    names.shots().keySet(),
                    "a shot",
                    "shots");
        }
        new WantMeaning(names, "", root, issues).check(Tree.items(root, "wants"), "wants");
    }

    private void checkTimecode() {
        if (rate.isEmpty()) return;
        var drops =
                Tree.scalar(root, "film", "timecode").filter(word -> word.text().equals(Cut.DROP));
        if (drops.isPresent() && !Timecode.canDrop(rate.get())) {
            issues.add(
                    drops.get(),
                    "film.timecode",
                    "P-CUT-01",
                    Cut.DROP + " at " + rate.get().toText(),
                    "non-drop: labels are dropped at 29.97 and 59.94 fps only",
                    "Leave it out, or write non-drop.");
            return;
        }
        var counting = drops.isPresent() ? Timecode.Counting.DROP : Timecode.Counting.NON_DROP;
        var timecode = Timecode.find(rate.get(), counting);
        if (timecode.isEmpty()) return;
        checkLabel(root, "film", "starts", timecode.get());
        for (var shot : Tree.entries(root, "shots")) {
            Tree.find(shot.value(), "clip")
                    .ifPresent(clip -> checkLabel(clip, "shots." + shot.key() + ".clip", "starts", timecode.get()));
            for (var pass : Tree.entries(shot.value(), "passes")) {
                var path = "shots." + shot.key() + ".passes." + pass.key() + ".";
                checkLabel(pass.value(), path, "clip.starts", timecode.get());
                Tree.find(pass.value(), "clip")
                        .ifPresent(clip -> checkLabel(clip, path + "clip", "starts", timecode.get()));
            }
        }
    }

    private void checkLabel(Node owner, String path, String key, Timecode timecode) {
        var from = path.equals("film") ? Tree.scalar(owner, "film", key) : Tree.scalar(owner, key);
        if (from.isEmpty() || !(timecode.read(from.get().text()) instanceof Timecode.Meaning.Nothing(String why))) {
            return;
        }
        issues.add(
                from.get(),
                path + (path.endsWith(".") ? "" : ".") + key,
                "P-CUT-02",
                Issues.shown(from.get().text()) + ", which " + why,
                "a timecode at " + timecode.rate().toText(),
                "Try 01:00:00:00.");
    }

    private void checkCut(List<Node> items, String path) {
        long next = 0;
        long turns = 0;
        int index = 0;
        for (Node item : items) {
            index++;
            var field = path + "[" + index + "]";
            checkEntry(item, field);
            turns = checkTurns(item, field, turns);
            var frames = count(item, "frames");
            var beat = Tree.find(item, "from_beat");
            if (beat.isPresent()) checkBeat(beat.get(), field + ".from_beat", next, index);
            if (frames.isEmpty()) return;
            next += frames.get();
            if (next <= Grammar.FILM || next - frames.get() > Grammar.FILM) continue;
            issues.add(
                    Tree.find(item, "frames").orElse(item),
                    field + ".frames",
                    "P-CUT-09",
                    frames.get() + ", which makes the cut " + next + " frames long",
                    "at most " + Grammar.FILM + " frames of a cut, an hour at 120 fps",
                    "Split the film into several plans.");
        }
    }

    /// Says where looks alternate more often than a timeline holds.
    private long checkTurns(Node cut, String path, long before) {
        long each = count(cut, "each").filter(one -> one > 0).orElse(Forms.MOST_FRAMES);
        long turns = before + Math.ceilDiv(count(cut, "frames").orElse(0L), each);
        if (turns <= Grammar.TURNS || before > Grammar.TURNS) return turns;
        issues.add(
                Tree.find(cut, "each").orElse(cut),
                path + ".each",
                "P-CUT-08",
                counted(each) + ", which makes " + turns + " looks of the cut",
                "long enough for at most " + Grammar.TURNS + " looks in a cut",
                "Let each look last longer.");
        return turns;
    }

    private void checkEntry(Node cut, String path) {
        checkShotAndPass(cut, path);
        for (var key : new String[] {"frames", "each", "from"}) {
            Tree.find(cut, key).ifPresent(n -> issues.wholeFrames(n, path + "." + key));
        }
        var passes = passesOf(cut);
        int index = 0;
        for (Node item : Tree.items(cut, "alternate")) {
            index++;
            int at = index;
            Written.named(item)
                    .ifPresent(
                            name -> issues.known(name, path + ".alternate[" + at + "]", passes, "a pass", home(cut)));
        }
        Tree.find(cut, "reframe").ifPresent(reframe -> {
            if (reframe instanceof Node.Sequence) {
                checkReframe(reframe, cut, path + ".reframe");
                return;
            }
            for (var delivery : Tree.entries(reframe)) {
                var field = path + ".reframe." + delivery.key();
                var name = new Named(delivery.key(), delivery.value().place());
                issues.known(name, field, names.deliveries(), "a delivery", "deliver");
                checkReframe(delivery.value(), cut, field);
            }
        });
    }

    private void checkReframe(Node keys, Node cut, String path) {
        long most = count(cut, "frames").orElse(Long.MAX_VALUE);
        long before = -1;
        int index = 0;
        for (Node key : Tree.items(keys)) {
            index++;
            var at = Tree.find(key, "at");
            if (at.isEmpty()) continue;
            var field = path + "[" + index + "].at";
            issues.wholeFrames(at.get(), field);
            var frame = count(key, "at");
            if (frame.isEmpty()) continue;
            if (frame.get() > most || frame.get() <= before) {
                issues.add(
                        at.get(),
                        field,
                        "P-CUT-03",
                        frame.get() + " frames",
                        frame.get() > most
                                ? "at most " + most + " frames, the entry's own"
                                : "more than " + before + " frames, the key before",
                        "Keys count from the entry's first frame, and rise.");
            }
            before = Math.max(before, frame.get());
        }
    }

    /// Says where an entry doesn't begin where the one before ends.
    private void checkBeat(Node node, String field, long next, int index) {
        var beat = Written.quantityOf(node).filter(q -> q.kind() == Kind.NUMBER && q.si() >= 1);
        if (beat.isEmpty()) return;
        if (beats.isEmpty()) {
            if (rate.isEmpty() || Tree.find(root, "film", "tempo").isPresent()) return;
            issues.add(
                    node,
                    field,
                    "P-CUT-04",
                    "a beat, and the film has no tempo",
                    "left out where `film.tempo` isn't written",
                    "Write the music's tempo: `tempo: 120 bpm`.");
            return;
        }
        long frame = beats.get().frame(Math.round(beat.get().si()) - 1);
        if (frame == next) return;
        boolean isHole = frame > next;
        long off = Math.abs(frame - next);
        var before =
                index == 1 ? "the film begins with frame 0" : "entry " + (index - 1) + " ends before frame " + next;
        issues.add(
                node,
                field,
                isHole ? "P-CUT-05" : "P-CUT-06",
                "beat " + beat.get().digits() + ", which is frame " + frame + ", while " + before + ": "
                        + (isHole ? "a hole of " : "an overlap of ") + counted(off),
                "a beat at frame " + next + ", so that every frame has one picture",
                attempt(isHole, off, index, next));
    }

    private String attempt(boolean isHole, long off, int index, long next) {
        if (index == 1) return "Begin on beat 1, or let `film.first_beat` be when the first beat falls.";
        var entry = "entry " + (index - 1);
        var there = beatAt(next);
        return (isHole
                        ? "Make " + entry + " " + counted(off) + " longer"
                        : "Make " + entry + " " + counted(off) + " shorter")
                + there.map(beat -> ", or begin on beat " + beat).orElse("") + ".";
    }

    private Optional<Long> beatAt(long frame) {
        var known = beats.orElseThrow();
        long near = Math.round((frame - known.position(0)) / known.intervalFrames());
        return known.frame(near) == frame && near >= 0 ? Optional.of(near + 1) : Optional.empty();
    }

    private static String counted(long frames) {
        return frames + (frames == 1 ? " frame" : " frames");
    }

    /// Says where a cut isn't as long as it should be.
    private void checkSum(Node node, String field, List<Node> items, String path) {
        if (items.isEmpty() || rate.isEmpty()) return;
        long sum = 0;
        for (Node item : items) {
            var frames = count(item, "frames");
            if (frames.isEmpty()) return;
            sum += frames.get();
        }
        var length = Written.quantityOf(node).filter(q -> q.kind() != Kind.TIME || q.si() > 0);
        if (length.isEmpty()) return;
        double wanted = length.get().kind() == Kind.TIME
                ? Math.floor(length.get().si() * rate.get().framesPerSecond() + 0.5)
                : length.get().si();
        if (wanted == sum || wanted != Math.rint(wanted)) return;
        long off = Math.round(Math.abs(wanted - sum));
        issues.add(
                node,
                field,
                "P-CUT-07",
                Math.round(wanted) + " frames, while the entries of " + path + " come to " + sum,
                "the sum of the entries",
                "Write " + sum + " frames, or make the cut " + counted(off)
                        + (wanted > sum ? " longer." : " shorter."));
    }

    private void checkCue(Node cue, String path) {
        checkInstant(cue, "sync", path);
        for (var key : new String[] {"lead", "lasts"}) {
            Tree.find(cue, key).ifPresent(n -> issues.wholeFrames(n, path + "." + key));
        }
        var followed = Tree.find(cue, "of").flatMap(Written::named);
        var sync = Tree.find(cue, "sync");
        if (followed.isEmpty() || sync.isEmpty()) return;
        var shot = shotOf(sync.get());
        var inside = names.shots().get(shot);
        if (inside == null) return;
        issues.known(
                followed.get(), path + ".of", inside.placed().keySet(), "a placed thing", "shots." + shot + ".place");
    }

    private void checkInstant(Node owner, String key, String path) {
        Tree.find(owner, "frames").ifPresent(n -> issues.wholeFrames(n, path + ".frames"));
        Tree.find(owner, key).ifPresent(instant -> {
            checkShotAndPass(instant, path + "." + key);
            Tree.find(instant, "when").ifPresent(n -> issues.wholeFrames(n, path + "." + key + ".when"));
        });
    }

    private void checkShotAndPass(Node node, String path) {
        Tree.find(node, "shot")
                .flatMap(Written::named)
                .ifPresent(
                        name -> issues.known(name, path + ".shot", names.shots().keySet(), "a shot", "shots"));
        Tree.find(node, "pass").flatMap(Written::named).ifPresent(name -> {
            if (knowsShot(node)) issues.known(name, path + ".pass", passesOf(node), "a pass", home(node));
        });
    }

    private boolean knowsShot(Node node) {
        return names.shots().containsKey(shotOf(node));
    }

    private Set<String> passesOf(Node node) {
        var shot = names.shots().get(shotOf(node));
        return shot == null ? Set.of() : shot.passes();
    }

    private static String shotOf(Node node) {
        return Tree.scalar(node, "shot").map(Node.Scalar::text).orElse("");
    }

    private static String home(Node node) {
        return "shots." + shotOf(node) + ".passes";
    }

    /// A count of whole frames.
    private static Optional<Long> count(Node owner, String key) {
        return Tree.find(owner, key)
                .flatMap(Written::quantityOf)
                .filter(q -> (q.kind() == Kind.NUMBER || q.kind() == Kind.FRAMES)
                        && q.si() == Math.rint(q.si())
                        && q.si() >= 0
                        && q.si() <= Forms.MOST_FRAMES)
                .map(q -> Math.round(q.si()));
    }
}
