package plumeline.plan;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Quantity;
import plumeline.text.Node;
import plumeline.text.Place;

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
    /// @param cues the sound cues
    /// @param titles the titles, one entry a shot and language
    public record CutList(List<Cut> cuts, List<Cue> cues, List<Title> titles) {
        /// Copies the lists.
        public CutList {
            cuts = List.copyOf(cuts);
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

    /// A sound cue.
    ///
    /// @param sound what is heard
    /// @param shot the shot that it falls in
    /// @param pass the pass of it, where written
    /// @param when the instant that its sync point meets
    /// @param lead how many frames or seconds the sound begins earlier
    /// @param written all keys as written
    public record Cue(
            String sound, Named shot, Optional<Named> pass, When when, Optional<Quantity> lead, Written written) {}

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
    }
}
