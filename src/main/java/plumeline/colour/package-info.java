/// Colour of light in numbers: coordinates, white, how far colours are apart, what lamps of several primaries mix,
/// spectra of lights and surfaces, and a picture's channels under a fixed white balance.
///
/// Front classes: [plumeline.colour.Chromaticity], [plumeline.colour.Xyz], [plumeline.colour.Lab],
/// [plumeline.colour.Srgb], [plumeline.colour.Planck], [plumeline.colour.Daylight], [plumeline.colour.White],
/// [plumeline.colour.Difference], [plumeline.colour.Mixture], [plumeline.colour.Spectrum],
/// [plumeline.colour.SmoothSpectrum], [plumeline.colour.Metamers], [plumeline.colour.SpectralLocus],
/// [plumeline.colour.CameraWhite].
///
/// All is of the CIE 1931 standard observer (2 degrees). Tristimulus values are scaled so that Y of a white is 1 where
/// it is a surface's, or lumens where it is a light's. Colour temperatures are in kelvin with the second radiation
/// constant of the SI of 2019, 0.01438776877 m K. Spectra are of whole nanometres from 380 nm to 780 nm.
///
/// Not here: which spectrum a certain lamp, ink or sensor has, what glows in a light, where a lamp stands.
@NullMarked
package plumeline.colour;

import org.jspecify.annotations.NullMarked;
