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

        boolean shows(Plan.Sync sync) {
            boolean isPass = sync.pass().isEmpty()
                    || cut.pass().map(Named::name).equals(sync.pass().map(Named::name))
                    || cut.alternate().stream()
                            .anyMatch(pass ->
                                    pass.name().equals(sync.pass().orElseThrow().name()));
            return cut.shot().name().equals(sync.shot().name()) && isPass;
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
        return entries.stream()
                .filter(entry -> entry.shows(sync) && findIn(entry, sync.when()).isPresent())
                .findFirst();
    }

    /// Finds the film's frame at which an instant of a shot is seen, where the shot is first cut so that it is. The
    /// start and the end are those of what that entry shows; an instant on the table may fall between two frames.
    ///
    /// @param sync the instant
    /// @return frames from the film's first; empty where the cut doesn't show it
    public OptionalDouble findFrame(Plan.Sync sync) {
        return findEntry(sync).map(entry -> findIn(entry, sync.when())).orElse(OptionalDouble.empty());
    }

    private OptionalDouble findIn(Entry entry, When when) {
        Cut cut = entry.cut();
        double frame = switch (when) {
            case When.Start _, When.Whole _ -> (double) cut.fromOrDefault();
            case When.End _ -> (double) (cut.pastFrame() - 1);
            case When.AtFrame(long own) -> (double) own;
            case When.AtTime(Quantity time) ->
                spans.stream()
                        .filter(span -> span.first() == entry.first())
                        .findFirst()
                        .map(Span::played)
                        .map(played -> played.retime().frameAt(time.si(), (double) played.frames()))
                        .orElseThrow();
        };
        boolean isShown = frame >= cut.fromOrDefault() && frame < cut.pastFrame();
        return isShown
                ? OptionalDouble.of((double) (entry.first() - cut.fromOrDefault()) + frame)
                : OptionalDouble.empty();
    }
}
