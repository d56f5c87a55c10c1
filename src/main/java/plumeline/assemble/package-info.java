/// The film in pictures, frame by frame, before anything is shot: which picture of which camera is seen, how it lies in
/// the finished one, what is laid over it, what is heard.
///
/// Front class: [plumeline.assemble.Animatic]. Pictures of cameras are made by [plumeline.assemble.SetPainter] and
/// handed in, so that whoever has a disk may keep them: [plumeline.assemble.KeptPicture] tells whether one is still
/// right. Not here: codecs (`clip`), how light runs (`trace`), files.
@NullMarked
package plumeline.assemble;

import org.jspecify.annotations.NullMarked;
