/// The papers of a solved film: one HTML page, one PDF, a list of marks.
///
/// Front class: [plumeline.sheet.Papers]. HTML and PDF come from the same sections, drawn once; nothing in them asks
/// for another host. A sheet begins with what a crew needs at a glance ([plumeline.sheet.Glance]), then follows the
/// order of work ([plumeline.sheet.ShotSheet]); what changed since an earlier revision
/// ([plumeline.sheet.Changes]) is marked in the margin. Every figure is the answer's own, rounded to what a hand can
/// set, in the plan's unit of length only; leeway is rounded down. The papers are black on white, 14 points and larger,
/// and say on each page which plan they were printed from and when; the time is handed in. Nothing here opens a file.
///
/// Not here: drawings (`draw`), findings and their wording (`solve`), the making of a PDF (`press`).
@NullMarked
package plumeline.sheet;

import org.jspecify.annotations.NullMarked;
