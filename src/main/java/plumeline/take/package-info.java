/// What a take is and what was measured in it, and whatever else a crew measures on the set: records only.
///
/// Quantities are as written: a ± is a 95 % half-width, absent where nobody said. Times count from the first ink that
/// leaves the nozzle, depths from the still surface down.
///
/// Not here: what is learnt of it, plans, texts, laws.
@NullMarked
package plumeline.take;

import org.jspecify.annotations.NullMarked;
