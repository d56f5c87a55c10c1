package plumeline.ask;

import java.util.List;

/// An answer before intervals and verdict.
///
/// @param items the values; a word where a number is endless
/// @param criteria what must hold; always as many and in the same order for one question and form of input
/// @param best the best verdict this question gives
/// @param notes the sentences
record Draft(List<Item> items, List<Criterion> criteria, Verdict best, Notes notes) {
    Draft {
        items = List.copyOf(items);
        criteria = List.copyOf(criteria);
    }
}
