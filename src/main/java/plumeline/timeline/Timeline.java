package plumeline.timeline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.plan.Cut;
import plumeline.plan.Delivery;
import plumeline.plan.Named;
import plumeline.plan.Pass;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.plan.When;
import plumeline.quantity.FrameRate;
import plumeline.quantity.Quantity;

/// What a film, or a delivery's cut-down of it, shows at each of its frames.
///
/// @param delivery the delivery whose cut it is; empty for the film's own
/// @param rate the rate at which it is shown
/// @param entries the cut's entries with their places
/// @param spans stretches of one shot's pass each, in order, without gaps
public record Timeline(String delivery, FrameRate rate, List<Entry> entries, List<Span> spans) {
    private static final String FILM = "film";

    /// Copies the lists.
    public Timeline {
        entries = List.copyOf(entries);
        spans = List.copyOf(spans);
    }

    /// An entry of the cut in its place.
    ///
    /// @param cut the entry
    /// @param first the film's frame that it begins with
    public record Entry(Cut cut, long first) {
        /// Gives the film's frame after its last.
        ///
        /// @return the frame
        public long past() {
            return first + cut.frames();
        }
    }

    /// Lays out a film's own cut.
    ///
    /// @param plan the plan
    /// @return its timeline; without spans where the plan has no `cut`
    public static Timeline of(Plan plan) {
        return of(plan, "", plan.cuts());
    }

    /// Lays out a film's own cut and those of deliveries that have one.
    ///
    /// @param plan the plan
    /// @return the film's first, then the deliveries' in their order; none without `cut`
    public static List<Timeline> listAll(Plan plan) {
        List<Timeline> all = new ArrayList<>();
        if (!plan.cuts().isEmpty()) {
            all.add(of(plan));
        }
        for (Delivery delivery : plan.deliveries()) {
            if (!delivery.listCuts().isEmpty()) {
                all.add(of(plan, delivery.name(), delivery.listCuts()));
            }
        }
        return all;
    }

    /// Lays out what a delivery shows: its own cut, else the film's.
    ///
    /// @param plan the plan
    /// @param delivery the delivery
    /// @return its timeline
    public static Timeline of(Plan plan, Delivery delivery) {
        return delivery.listCuts().isEmpty() ? of(plan) : of(plan, delivery.name(), delivery.listCuts());
    }

    private static Timeline of(Plan plan, String delivery, List<Cut> cuts) {
        List<Entry> entries = new ArrayList<>();
        List<Span> spans = new ArrayList<>();
        Map<String, Played> known = new HashMap<>();
        long first = 0;
        for (Cut cut : cuts) {
            Entry entry = new Entry(cut, first);
            addSpans(plan, entry, entries.size(), known, spans);
            entries.add(entry);
            first = entry.past();
        }
        return new Timeline(delivery, plan.film().exactRate(), entries, spans);
    }

    private static void addSpans(Plan plan, Entry entry, int index, Map<String, Played> known, List<Span> spans) {
        Cut cut = entry.cut();
        String shot = cut.shot().name();
        List<String> passes = cut.alternate().isEmpty()
                ? List.of(cut.pass().map(Named::name).orElse(""))
                : cut.alternate().stream().map(Named::name).toList();
        long each = cut.each().orElse(cut.frames());
        for (long done = 0, turn = 0; done < cut.frames(); done += each, turn++) {
            String pass = passes.get((int) (turn % passes.size()));
            Played played = known.computeIfAbsent(shot + "/" + pass, key -> played(plan, shot, pass));
            spans.add(new Span(
                    index,
                    shot,
                    pass,
                    entry.first() + done,
                    Math.min(each, cut.frames() - done),
                    cut.fromOrDefault() + done,
                    played));
        }
    }

    private static Played played(Plan plan, String name, String pass) {
        Shot shot = plan.findShot(name).orElseThrow();
        Shot effective = shot.findPass(pass).map(Pass::effective).orElse(shot);
        return Played.of(plan, effective, Played.usedFrames(plan, name));
    }

    /// Gives what files and pages call it.
    ///
    /// @return `film`, or the delivery's name; `film.own` where a delivery is called `film`
    public String name() {
        return delivery.isEmpty() ? FILM : delivery.equals(FILM) ? FILM + ".own" : delivery;
    }

    /// Gives how long it is.
    ///
    /// @return frames; 0 without a cut
    public long frames() {
        return spans.isEmpty() ? 0 : spans.getLast().past();
    }

    /// Finds what it shows at a frame.
    ///
    /// @param frame the film's frame
    /// @return the stretch; empty before the first frame and after the last
    public Optional<Span> findSpan(long frame) {
        int low = 0;
        int past = spans.size();
        while (low < past) {
            int middle = (low + past) / 2;
            if (spans.get(middle).past() <= frame) {
                low = middle + 1;
            } else {
                past = middle;
            }
        }
        return low < spans.size() && spans.get(low).has(frame) ? Optional.of(spans.get(low)) : Optional.empty();
    }

    /// Finds the entry that shows an instant of a shot, the first that does.
    ///
    /// @param sync the instant
    /// @return the entry; empty where none shows it
    public Optional<Entry> findEntry(Plan.Sync sync) {
        return find(sync).map(seen -> entries.get(seen.span().entry()));
    }

    /// Finds the film's frame at which an instant of a shot, or of one of its passes, is first seen. The start and the
    /// end are those of what the entry shows that has it first; an instant on the table may fall between two
    /// frames.
    ///
    /// @param sync the instant
    /// @return frames from the film's first; empty where the cut doesn't show it
    public OptionalDouble findFrame(Plan.Sync sync) {
        return find(sync).map(seen -> OptionalDouble.of(seen.frame())).orElse(OptionalDouble.empty());
    }

    /// Where an instant is seen.
    private record Seen(Span span, double frame) {}

    private Optional<Seen> find(Plan.Sync sync) {
        List<Span> shown = spans.stream()
                .filter(span -> span.shot().equals(sync.shot().name())
                        && sync.pass()
                                .map(Named::name)
                                .filter(pass -> !pass.equals(span.pass()))
                                .isEmpty())
                .toList();
        return switch (sync.when()) {
            case When.Start _, When.Whole _ ->
                shown.stream().findFirst().map(span -> new Seen(span, (double) span.first()));
            case When.End _ ->
                shown.stream()
                        .filter(span -> span.entry() == shown.getFirst().entry())
                        .reduce((_, later) -> later)
                        .map(span -> new Seen(span, (double) (span.past() - 1)));
            case When.AtFrame(long own) ->
                shown.stream()
                        .filter(span -> own >= span.shotFrame() && own < span.shotFrame() + span.frames())
                        .findFirst()
                        .map(span -> new Seen(span, (double) (span.first() + own - span.shotFrame())));
            case When.AtTime(Quantity time) ->
                shown.stream()
                        .flatMap(span -> span.findFrame(time.si()).stream().mapToObj(frame -> new Seen(span, frame)))
                        .findFirst();
        };
    }
}
