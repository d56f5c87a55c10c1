/// The page on which places are clicked in a still beside the picture, and on which the answer is drawn; one file that
/// asks no host for anything.
///
/// Front class: [plumeline.resect.page.ComparePage]. Not here: what the clicks tell (`resect`), how pictures are drawn.
@NullMarked
package plumeline.resect.page;

import org.jspecify.annotations.NullMarked;
