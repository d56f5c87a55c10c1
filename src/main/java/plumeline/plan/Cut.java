package plumeline.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import plumeline.quantity.Quantity;
import plumeline.text.Node;

/// One entry of the film's cut, or of a delivery's own.
///
/// @param shot the shot's name
/// @param pass the pass, where written
/// @param frames how many screen frames it shows
/// @param alternate the passes that alternate, in their order; empty where none do
/// @param each how many frames each of them shows
/// @param written all keys as written, with `from_beat`, `from`, `reframe`
public record Cut(
        Named shot, Optional<Named> pass, long frames, List<Named> alternate, OptionalLong each, Written written) {
    /// The word for a timecode that leaves labels out.
    static final String DROP = "drop";

    /// Copies the list.
    public Cut {
        alternate = List.copyOf(alternate);
    }

    /// How the picture lies in the finished one at a frame of an entry.
    ///
    /// @param frame the frame, counted from the entry's first
    /// @param scale how large it is; 1 fills the delivery as its crop does, dimensionless, > 0
    /// @param x where its middle goes, to the right, a share of the finished picture's width
    /// @param y where its middle goes, upwards, a share of the finished picture's height
    /// @param turnRadians its turn, clockwise as seen
    /// @param profile how it gets there from the key before
    public record Reframe(long frame, double scale, double x, double y, double turnRadians, Move.Profile profile) {}

    static List<Cut> list(List<Node> items) {
        List<Cut> out = new ArrayList<>();
        for (Node item : items) {
            Written written = new Written((Node.Mapping) item, item.place());
            out.add(new Cut(
                    written.listNames("shot").getFirst(),
                    written.listNames("pass").stream().findFirst(),
                    KitBuilder.whole(written, "frames").orElseThrow(),
                    written.listNames("alternate"),
                    KitBuilder.whole(written, "each"),
                    written));
        }
        return out;
    }

    /// Finds the beat that it begins on.
    ///
    /// @return the beat, 1 for the first; empty where not written
    public OptionalLong findBeat() {
        return KitBuilder.whole(written, "from_beat");
    }

    /// Gives the shot's own screen frame that it begins with.
    ///
    /// @return the frame, 0 where not written
    public long fromOrDefault() {
        return KitBuilder.whole(written, "from").orElse(0);
    }

    /// Gives the shot's own screen frame after the last that it shows.
    ///
    /// @return screen frames from the shot's first
    public long pastFrame() {
        return fromOrDefault() + frames;
    }

    /// Lists how the picture lies in a delivery's finished one.
    ///
    /// @param delivery the delivery's name
    /// @return the keys, frames rising; empty where nothing is written for it
    public List<Reframe> listReframes(String delivery) {
        return listKeys(written, "reframe").or(() -> listKeys(written, "reframe." + delivery)).stream()
                .flatMap(List::stream)
                .toList();
    }

    private static Optional<List<Reframe>> listKeys(Written written, String path) {
        return written.findNode(path)
                .filter(Node.Sequence.class::isInstance)
                .map(list -> Written.itemsOf(list).stream()
                        .map(item -> reframe(new Written((Node.Mapping) item, item.place())))
                        .toList());
    }

    private static Reframe reframe(Written key) {
        List<Quantity> place = key.listQuantities("place");
        return new Reframe(
                KitBuilder.whole(key, "at").orElseThrow(),
                key.findQuantity("scale").map(Quantity::si).orElse(1.0),
                place.isEmpty() ? 0 : place.get(0).si(),
                place.isEmpty() ? 0 : place.get(1).si(),
                key.findQuantity("turn").map(Quantity::si).orElse(0.0),
                key.findWord("profile").map(Move.Profile::of).orElse(Move.Profile.SMOOTH));
    }
}
