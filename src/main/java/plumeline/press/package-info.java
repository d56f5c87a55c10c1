/// From the papers' markup to PDF: A4, tagged, lettering embedded.
///
/// Front class: [plumeline.press.PdfPrinter]. Pages are set in parts, each by itself, then put together and numbered
/// ([plumeline.press.PageNumbers]). Lines break where no figure is parted from its unit; what is written from right to
/// left is turned and joined, and still read as its letters. Drawings are drawn line by line
/// ([plumeline.press.DrawingPrinter]). Only [plumeline.press.Bundled] reads what is bundled; nothing here opens a file
/// or asks for another host.
///
/// Not here: what stands on the papers (`sheet`), pens and shapes (`sketch`).
@NullMarked
package plumeline.press;

import org.jspecify.annotations.NullMarked;
