/// Quantities as people write them: reading `66 mm ± 1 mm measured`, printing what a hand can set, exact frame rates
/// and picture ratios. Front class: [plumeline.quantity.Quantities].
///
/// A [plumeline.quantity.Quantity] keeps the unit and the digits it was written with; arithmetic happens on
/// [plumeline.quantity.Quantity#si], a plain double in SI units (metre, second, radian, kilogram, lux, kelvin …; a
/// share is a fraction of one). Nothing here knows of plans, questions or bodies, and nothing here reads a file, a
/// clock or a locale.
@NullMarked
package plumeline.quantity;

import org.jspecify.annotations.NullMarked;
