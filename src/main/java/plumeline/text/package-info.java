/// Text as a tree with places: YAML and JSON read into [plumeline.text.Node]s that know where in the text they stand,
/// [plumeline.text.Problem]s in the house form, and [plumeline.text.Shape]s, which are grammar as data.
///
/// Front class: [plumeline.text.Document]. One shape is the one truth for the check ([plumeline.text.Check]), the JSON
/// Schema ([plumeline.text.JsonSchema]) and the documents. [plumeline.text.Values] reads checked trees into records;
/// [plumeline.text.Edit] replaces spans and touches nothing else.
///
/// Places are character offsets (UTF-16 units of a Java string) into the whole text, a byte order mark included; lines
/// and columns count from 1. Nothing here throws on bad input, reads a file or knows what a plan is.
@NullMarked
package plumeline.text;

import org.jspecify.annotations.NullMarked;
