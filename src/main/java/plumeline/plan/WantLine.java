package plumeline.plan;

import java.util.List;
import java.util.Optional;
import plumeline.text.Place;

/// A want as it is written: its word, its subject, its further keys.
///
/// @param id the want's id: the shot's name or `film`, and its number from 1
/// @param word its want word
/// @param subjects the names under the want word; `all`, `camera`, `cuts` and `shot` stand as written
/// @param when the instants that count
/// @param pass the pass that it is about, where written
/// @param written all its keys as written: `within`, `by`, `gap`, `behind` …
/// @param place where its want word is written
public record WantLine(
        String id,
        String word,
        List<Named> subjects,
        When when,
        Optional<String> pass,
        Written written,
        Place place) {
    /// Copies the list.
    public WantLine {
        subjects = List.copyOf(subjects);
    }

    /// Gives the want as a sentence without verb: `hidden second, third, fourth behind first at start`.
    ///
    /// @return its words in the order written
    public String toText() {
        return WantText.of(this);
    }
}
