package plumeline.answer;

import java.util.ArrayList;
import java.util.List;
import plumeline.answer.Answer.Assumed;
import plumeline.answer.Answer.Notes;

/// An answer before intervals and verdict.
///
/// @param items the values; a word where a number is endless
/// @param criteria what must hold; always as many and in the same order for one question and form of input
/// @param best the best verdict this question gives
/// @param notes the sentences
/// @param assumed what was assumed in answering, beside the defaults
public record Draft(List<Item> items, List<Criterion> criteria, Verdict best, Notes notes, List<Assumed> assumed) {
    /// Copies the lists.
    public Draft {
        items = List.copyOf(items);
        criteria = List.copyOf(criteria);
        assumed = List.copyOf(assumed);
    }

    /// Makes an answer that assumes nothing beside the defaults.
    ///
    /// @param items the values
    /// @param criteria what must hold
    /// @param best the best verdict this question gives
    /// @param notes the sentences
    public Draft(List<Item> items, List<Criterion> criteria, Verdict best, Notes notes) {
        this(items, criteria, best, notes, List.of());
    }

    /// Adds what was assumed.
    ///
    /// @param more what was assumed
    /// @return the answer with it
    public Draft assuming(Assumed more) {
        List<Assumed> all = new ArrayList<>(assumed);
        all.add(more);
        return new Draft(items, criteria, best, notes, all);
    }

    /// Puts a value in place of the one of its name.
    ///
    /// @param item the value
    /// @return the answer with it
    public Draft with(Item item) {
        List<Item> all = new ArrayList<>(items);
        all.replaceAll(each -> each.name().equals(item.name()) ? item : each);
        return new Draft(all, criteria, best, notes, assumed);
    }

    /// Something that must not fall below 0 for the answer to hold.
    ///
    /// @param what what it is, as sentences say it: `the air before the pane`
    /// @param margin how far from failing, in its own unit, negative when it fails
    public record Criterion(String what, double margin) {}
}
