package plumeline.plan;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import plumeline.quantity.FrameRate;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Quantity;
import plumeline.text.Node;
import plumeline.text.Place;
import plumeline.time.Beats;
import plumeline.time.Timecode;

/// A whole plan, read without problems.
///
/// @param source the file's name and text as read, and its tree
/// @param film the film's own facts
/// @param deliveries what is delivered, in the order written
/// @param things the crew's products, without variants merged, in the order written
/// @param kit cameras, lenses, lights, machines, tanks, inks and pieces
/// @param shots the shots in the order written
/// @param cutList how the shots are cut together, with cues and titles
/// @param wants the film's own wants, ids `film.1` and on
public record Plan(
        Source source,
        Film film,
        List<Delivery> deliveries,
        List<Thing> things,
        Kit kit,
        List<Shot> shots,
        CutList cutList,
        List<WantLine> wants) {
    /// Handles where nothing is written, recorded frames: a second's worth at 24 (common practice).
    private static final long HANDLES = 24;

    /// The text that a plan was read from.
    ///
    /// @param file the file's name as given by the caller
    /// @param text the whole text
    /// @param root the text as a tree
    /// @param measured what was put in the place of its values, each as `path: value`; empty where nothing was
    /// @param files what photometric files hold, each byte as a character, by the lamp of the kit that names them
    public record Source(String file, String text, Node.Mapping root, String measured, Map<String, String> files) {
        /// Copies the map.
        public Source {
            files = Map.copyOf(files);
        }
    }

    /// The film's cut with what lies on it.
    ///
    /// @param cuts the cut's entries in their order; empty where the plan has no `cut`
    /// @param overlays the pictures laid over it
    /// @param cues the sound cues
    /// @param titles the titles, one entry a shot and language
    public record CutList(List<Cut> cuts, List<Overlay> overlays, List<Cue> cues, List<Title> titles) {
        /// Copies the lists.
        public CutList {
            cuts = List.copyOf(cuts);
            overlays = List.copyOf(overlays);
            cues = List.copyOf(cues);
            titles = List.copyOf(titles);
        }
    }

    /// Copies the lists.
    public Plan {
        deliveries = List.copyOf(deliveries);
        things = List.copyOf(things);
        shots = List.copyOf(shots);
        wants = List.copyOf(wants);
    }

    /// Finds a shot by its name.
    ///
    /// @param name the shot's name
    /// @return the shot, empty where the plan has none of that name
    public Optional<Shot> findShot(String name) {
        return shots.stream().filter(s -> s.name().equals(name)).findFirst();
    }

    /// Finds a delivery by its name.
    ///
    /// @param name the delivery's name
    /// @return the delivery, empty where the plan has none of that name
    public Optional<Delivery> findDelivery(String name) {
        return deliveries.stream().filter(d -> d.name().equals(name)).findFirst();
    }

    /// Gives the cut's entries, in their order.
    ///
    /// @return the entries; empty where the plan has no `cut`
    public List<Cut> cuts() {
        return cutList.cuts();
    }

    /// An instant of a shot in the film.
    ///
    /// @param shot the shot
    /// @param pass the pass of it, where written
    /// @param when the instant
    public record Sync(Named shot, Optional<Named> pass, When when) {}

    /// A sound cue.
    ///
    /// @param sound what is heard
    /// @param sync the instant that its sync point meets
    /// @param written all keys as written
    public record Cue(String sound, Sync sync, Written written) {
        /// Finds how much earlier it begins.
        ///
        /// @return frames or seconds; empty where it begins at its sync point
        public Optional<Quantity> findLead() {
            return written.findQuantity("lead");
        }

        /// Finds how long it is heard from its beginning.
        ///
        /// @return frames or seconds, where written
        public Optional<Quantity> findLength() {
            return written.findQuantity("lasts");
        }

        /// Finds the layer it belongs to.
        ///
        /// @return the layer, where written
        public Optional<String> findLayer() {
            return written.findWord("layer");
        }

        /// Finds the placed thing that it follows.
        ///
        /// @return the thing's name in the shot, where written
        public Optional<Named> findFollowed() {
            return written.listNames("of").stream().findFirst();
        }
    }

    /// A picture laid over the film by a screen blend.
    ///
    /// @param name what is laid over
    /// @param over the instant it begins at
    /// @param written all keys as written: `file`, `frames`, `black`, `range`, `transfer`, `level`
    public record Overlay(String name, Sync over, Written written) {
        /// Finds its file.
        ///
        /// @return the path from the plan's folder, where written
        public Optional<String> findFile() {
            return written.findWord("file");
        }

        /// Finds how long it is seen.
        ///
        /// @return screen frames; empty where it is seen until its entry ends
        public OptionalLong findFrames() {
            return KitBuilder.whole(written, "frames");
        }

        /// Gives where its black sits.
        ///
        /// @return a share of full, 0 to less than 1; 0 where not written
        public double blackOrDefault() {
            return written.findQuantity("black").map(Quantity::si).orElse(0.0);
        }

        /// Gives how strongly it is laid on.
        ///
        /// @return a share, over 0 to 1; 1 where not written
        public double levelOrDefault() {
            return written.findQuantity("level").map(Quantity::si).orElse(1.0);
        }

        /// Gives the range that its black point is of.
        ///
        /// @return `full` or `video`; `full` where not written
        public String rangeOrDefault() {
            return written.findWord("range").orElse("full");
        }

        /// Gives the scale that its black point is on.
        ///
        /// @return `display` or `linear`; `display` where not written
        public String transferOrDefault() {
            return written.findWord("transfer").orElse("display");
        }
    }

    /// A title over a shot, in one language.
    ///
    /// @param shot the shot's name
    /// @param language the language, as written
    /// @param text the words
    /// @param place where they are written
    public record Title(String shot, String language, String text, Place place) {}

    /// The film's own facts.
    ///
    /// @param title the film's title
    /// @param rate the rate at which the film is shown
    /// @param frames the film's whole length in screen frames
    /// @param tempo the music's tempo
    /// @param papers the unit the papers speak, where written
    /// @param written all keys as written
    public record Film(
            Optional<String> title,
            Quantity rate,
            OptionalLong frames,
            Optional<Quantity> tempo,
            Optional<PaperUnit> papers,
            Written written) {

        /// Gives the papers' unit, millimetres where the plan doesn't say.
        ///
        /// @return the unit
        public PaperUnit papersOrDefault() {
            return papers.orElse(PaperUnit.MILLIMETRES);
        }

        /// Gives the exact rate at which the film is shown.
        ///
        /// @return the rate
        public FrameRate exactRate() {
            return FrameRate.of(rate);
        }

        /// Finds the frames of its music's beats, beat 1 at `first_beat`, else with the film's first frame.
        ///
        /// @return the beats, 0 for beat 1; empty where no tempo is written
        public Optional<Beats> findBeats() {
            return tempo.map(beat -> new Beats(
                    beat.exactValue(),
                    written.findQuantity("first_beat").map(Quantity::exactSi).orElse(BigDecimal.ZERO),
                    exactRate()));
        }

        /// Finds how its frames are labelled.
        ///
        /// @return the timecode; empty where the film's rate has none
        public Optional<Timecode> findTimecode() {
            boolean drops =
                    written.findWord("timecode").filter(Cut.DROP::equals).isPresent();
            return Timecode.find(exactRate(), drops ? Timecode.Counting.DROP : Timecode.Counting.NON_DROP);
        }

        /// Gives the label of the film's first frame.
        ///
        /// @return a timecode, an hour where not written
        public String startOrDefault() {
            return written.findWord("starts").orElse("01:00:00:00");
        }

        /// Gives the count of a label.
        ///
        /// @param label a timecode; at a rate that has none, its labels count the rate's whole frames
        /// @return frames from 00:00:00:00
        public long frameOf(String label) {
            Optional<Timecode> timecode = findTimecode();
            if (timecode.isPresent() && timecode.get().read(label) instanceof Timecode.Meaning.Frame(long frame)) {
                return frame;
            }
            long seconds = 0;
            for (int i = 0; i < 3; i++) {
                seconds = 60 * seconds + Long.parseLong(label.substring(3 * i, 3 * i + 2));
            }
            long perSecond = Math.ceilDiv(exactRate().numerator(), exactRate().denominator());
            return seconds * perSecond + Long.parseLong(label.substring(9));
        }

        /// Gives the count of the label of the film's first frame.
        ///
        /// @return frames from 00:00:00:00
        public long startFrame() {
            return frameOf(startOrDefault());
        }

        /// Gives how many recorded frames are kept before and after what is shown.
        ///
        /// @return frames, 24 where not written
        public long handlesOrDefault() {
            return KitBuilder.whole(written, "handles").orElse(HANDLES);
        }
    }
}
