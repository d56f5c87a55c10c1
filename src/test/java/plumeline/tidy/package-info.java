/// The guards of the house rules: rooms and arrows, bans, style, the list of public types, checks from outside.
@NullMarked
package plumeline.tidy;

import org.jspecify.annotations.NullMarked;
