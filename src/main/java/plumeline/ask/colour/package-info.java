/// The questions on colour, each as a typed class with plain numbers and as text: which drive gives which colour, one
/// white against another, a label under a coloured light, what a camera's fixed balance makes of a light.
///
/// Front class: [plumeline.ask.colour.ColourQuestions]. What a certain sensor or ink does is not known here.
@NullMarked
package plumeline.ask.colour;

import org.jspecify.annotations.NullMarked;
