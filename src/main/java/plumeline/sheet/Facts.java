package plumeline.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumeline.plan.Mark;
import plumeline.plan.Plan;
import plumeline.quantity.Origin;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.sheet.Changes.Key;
import plumeline.sheet.Changes.Of;
import plumeline.solve.MarkAnswer;
import plumeline.solve.Words;

/// What papers say, by where it stands, as text: what two revisions are compared by. What only follows from other
/// facts, such as leeway, isn't among them.
final class Facts {
    static final String TITLE = "Title";

    /// The names in a sheet's head.
    static final String SHOT = "Shot";

    static final String LENGTH = "Length";

    static final String NUMBER = "Shot number";

    static final String TANK = "Tank stands";

    static final String RESET = "Reset between takes";

    private static final String PLAYBACK = "Playback";

    private Facts() {}

    /// A mark's figure and where it comes from.
    record Setting(String figure, String origin) {}

    /// Marks by path.
    static Map<Key, Setting> marks(Subject subject) {
        Words words = new Words(subject.unit());
        Map<Key, Setting> facts = new LinkedHashMap<>();
        for (MarkAnswer mark : subject.answer().marks()) {
            Setting setting = switch (mark.setting()) {
                case MarkAnswer.Setting.Open() -> new Setting("free", "");
                case MarkAnswer.Setting.At at ->
                    new Setting(
                            Rows.minus(words.value(mark.mark(), at.si())) + spread(words, mark),
                            at.origin().word());
            };
            facts.put(new Key(Of.MARK, subject.name(), mark.mark().path()), setting);
        }
        return facts;
    }

    /// A spread that is written is what the hand places to.
    private static String spread(Words words, MarkAnswer answer) {
        return answer.mark() instanceof Mark.Fixed(var _, var _, var quantity, var _, var _) && quantity.hasSpread()
                ? " ± " + words.difference(answer.mark(), answer.placingErrorSi())
                : "";
    }

    /// Marks as they are told beside another revision's: with their origin where that tells how far a figure is
    /// trusted, or where it differs.
    static Map<Key, Rows.Pair> told(Map<Key, Setting> marks, Map<Key, Setting> others) {
        Map<Key, Rows.Pair> told = new LinkedHashMap<>();
        marks.forEach((key, setting) -> {
            boolean isSame = others.getOrDefault(key, setting).origin().equals(setting.origin());
            boolean isPlain = setting.origin().equals(Origin.GIVEN.word())
                    || setting.origin().equals(Origin.SOLVED.word());
            String origin = isSame && isPlain ? "" : " " + setting.origin();
            told.put(key, new Rows.Pair(key.name(), (setting.figure() + origin).stripTrailing()));
        });
        return told;
    }

    /// What the cover says of the film.
    static Map<Key, Rows.Pair> film(Plan plan) {
        Map<Key, Rows.Pair> facts = new LinkedHashMap<>();
        put(facts, Of.TITLE, Changes.FILM, List.of(new Rows.Pair(TITLE, FilmRows.title(plan))));
        put(facts, Of.DELIVERY, Changes.FILM, FilmRows.deliveries(plan));
        put(facts, Of.CUT, Changes.FILM, FilmRows.cut(plan));
        return facts;
    }

    /// What neither is a mark nor only follows from marks: head, tank, rows of camera, moves, light, passes, effect,
    /// heroes, sizes; what is taped or dialled after them; and all figures of cards, which are read away from the
    /// sheet.
    static Map<Key, Rows.Pair> rows(Subject subject) {
        String shot = subject.name();
        CameraRows camera = new CameraRows(subject);
        Map<Key, Rows.Pair> facts = new LinkedHashMap<>();
        put(
                facts,
                Of.HEAD,
                shot,
                List.of(
                        new Rows.Pair(NUMBER, Integer.toString(subject.number())),
                        new Rows.Pair(LENGTH, subject.length())));
        TankFirst.findPlace(subject).ifPresent(text -> put(facts, Of.TANK, shot, List.of(new Rows.Pair(TANK, text))));
        put(facts, Of.CAMERA, shot, camera.facts());
        put(facts, Of.MOVE, shot, MoveRows.of(subject));
        put(facts, Of.LIGHT, shot, LightRows.of(subject));
        put(facts, Of.PASS, shot, PassRows.of(subject));
        put(facts, Of.EFFECT, shot, EffectRows.of(subject));
        put(facts, Of.HERO, shot, Preparation.products(subject));
        put(facts, Of.THING, shot, ThingRows.of(subject));
        put(facts, Of.CARD, shot, CardsPart.facts(subject));
        String minutes = new Resets(subject.shot(), !subject.passes().isEmpty()).minutes();
        put(facts, Of.RESET, shot, List.of(new Rows.Pair(RESET, minutes)));
        return facts;
    }

    private static void put(Map<Key, Rows.Pair> facts, Of of, String shot, List<Rows.Pair> rows) {
        rows.forEach(pair -> facts.put(new Key(of, shot, pair.name()), pair));
    }

    /// What a shot has where it doesn't say, and its sheet neither.
    static Optional<String> findUnwritten(Subject subject, Key key) {
        return switch (key.of()) {
            case MARK -> findUnwrittenMark(subject, key.name());
            case MOVE -> key.name().equals(PLAYBACK) ? Optional.of(MoveRows.playback(1)) : Optional.empty();
            default -> Optional.empty();
        };
    }

    private static Optional<String> findUnwrittenMark(Subject subject, String path) {
        int dot = path.indexOf('.');
        String owner = path.substring(0, Math.max(0, dot));
        Print print = subject.print();
        boolean isPlaced = subject.shot().findPlaced(owner).isPresent();
        boolean isLamp =
                subject.shot().lights().stream().anyMatch(light -> light.name().equals(owner));
        return Optional.ofNullable(
                switch (path.substring(dot + 1)) {
                    case "turn", "tilt" -> isPlaced ? Print.degrees(0) : null;
                    case "z" -> isPlaced ? print.length(0) : null;
                    case "level" -> isLamp ? Print.share(1, 0) : null;
                    case "f_number" ->
                        "f/" + Print.number(subject.first().picture().fNumber(), 1);
                    case "focus" -> print.length(subject.first().picture().focusMetres());
                    default -> null;
                });
    }

    /// What is said to be new or gone.
    static String subject(Key key) {
        return key.of() == Of.HERO ? key.name() : name(key);
    }

    /// What a change is said to be of.
    static String name(Key key) {
        return switch (key.of()) {
            case HERO -> key.name() + " is";
            case DELIVERY -> "delivery " + key.name();
            case CUT -> "in the cut " + key.name();
            default -> key.name();
        };
    }

    /// A unit by its name on papers.
    static String word(PaperUnit unit) {
        return unit == PaperUnit.MILLIMETRES ? "mm" : "inches";
    }
}
