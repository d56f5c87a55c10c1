/// How far camera and things seem off, by where places of the set show in a real still.
///
/// Front class: [plumeline.resect.Resection]. [plumeline.resect.Landmarks] lists the places of a staged shot that a
/// hand can click, [plumeline.resect.Still] says what of the camera's picture a still shows and where its pixels are.
/// Clicks and marks are taken alike as readings with an error each and fitted together; a reading that is far out is
/// found, named and let go; [plumeline.resect.ComparePage] is what they are clicked on. Not here: files, how pictures
/// are drawn, what the wants make of it.
@NullMarked
package plumeline.resect;

import org.jspecify.annotations.NullMarked;
