/// The questions on colour, each as a typed class with plain numbers and as text: which drive gives which colour, one
/// white against another.
///
/// Front class: [plumeline.ask.colour.ColourQuestions]. What a camera makes of a colour is not known here.
@NullMarked
package plumeline.ask.colour;

import org.jspecify.annotations.NullMarked;
