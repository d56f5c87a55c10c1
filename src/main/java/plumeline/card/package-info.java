/// What the cards of a shot say: what is weighed, hung and filled in at a wet table, where lamps stand and what a meter
/// shows there, and what is written down.
///
/// The usual cautions of a shot stand here too ([plumeline.card.Cautions]). Front class: [plumeline.card.Cards]. A card
/// is words and boxes to write in, in the order in which it is read; a tank card begins with its cautions. Every figure
/// is that of the finding on the same thing (`want`), rounded to what a hand can set or a kitchen scale shows; where a
/// fact is missing the card stands all the same and asks for it. Lengths are in the papers' unit, masses in grams and
/// kilograms.
///
/// Not here: how a card looks (`sheet`), whether a want holds (`want`, `solve`).
@NullMarked
package plumeline.card;

import org.jspecify.annotations.NullMarked;
