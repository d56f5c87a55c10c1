/// Questions on water and what it does to a product: `float`, `hang`, `tank`, `line`, `sweat`, `beads`.
///
/// Front class: [plumeline.ask.water.WaterQuestions].
@NullMarked
package plumeline.ask.water;

import org.jspecify.annotations.NullMarked;
