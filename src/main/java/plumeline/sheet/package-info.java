/// The papers of a solved film: one HTML page, one PDF, a list of marks.
///
/// Front class: [plumeline.sheet.Papers]. HTML and PDF come from the same markup; nothing in them asks for another
/// host. Every figure is the answer's own, rounded to what a hand can set, in the plan's unit of length only; leeway is
/// rounded down. The papers are black on white, 14 points and larger, and say on each page which plan they were printed
/// from and when; the time is handed in. Only [plumeline.sheet.Bundled] reads what is bundled; nothing here opens a
/// file.
///
/// Not here: drawings (`draw`), findings and their wording (`solve`).
@NullMarked
package plumeline.sheet;

import org.jspecify.annotations.NullMarked;
