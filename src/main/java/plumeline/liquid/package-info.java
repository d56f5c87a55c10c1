/// Liquids as questions name them: what is dissolved in water, by which share, and how dense it is.
///
/// One class: [plumeline.liquid.Dissolved].
///
/// Not here: the laws of mixtures (`water`), any one question (`ask`).
@NullMarked
package plumeline.liquid;

import org.jspecify.annotations.NullMarked;
