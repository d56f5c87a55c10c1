/// Finds where free marks should stand, and how far each mark may be off.
///
/// The room knows numbers only: axes (one a mark) and margins (how far each part of each want is from failing, in its
/// own unit, negative when it fails). It knows nothing of films, cameras or units. Front class: [Search].
///
/// Invariants: pure functions, no threads, no randomness (starts are a fixed low-discrepancy sequence), so the same
/// question gives the same bits. What is *not* here: which wants there are, and what a mark means.
@NullMarked
package plumeline.search;

import org.jspecify.annotations.NullMarked;
