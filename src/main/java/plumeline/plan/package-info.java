/// The plan file as records: reading it with the place of every value, finding all its problems in one go, and
/// writing solved marks back without touching another character.
///
/// Front class: {@link plumeline.plan.Plans}. What a plan may say is kept as data in `Grammar` and `WantGrammar`; one
/// walk checks it, the same data prints the JSON Schema, so that an editor and the reader can't disagree.
///
/// Axes and units are the plan's own (x to camera right, y away from the camera, z up from the table). Values stay
/// quantities as they were written; nothing is computed here and no default is filled in silently: a record's
/// `written` tells what the crew wrote, and methods named `…OrDefault` say which default they take.
///
/// A key that may be missing is an `Optional` in these records (a decision: a document's keys are mostly absent).
/// Things and kit are resolved: a placed thing carries the thing with its variant merged in, a camera its body and
/// lens. Not here: poses and instants (`stage`), the meaning of a want (`want`), any number on the screen.
@NullMarked
package plumeline.plan;

import org.jspecify.annotations.NullMarked;
