/// What must be true: each want is one record and one margin.
///
/// A want gives its margin in parts, so that each part changes steadily with each mark; the margin is the least part,
/// in the want's own unit, negative where it fails. To add a want: one record here that implements [Want], one line in
/// [Wants]. Front class: [Wants]. What is *not* here: verdicts, leeway and remedies (`solve`), and how a want is
/// written (`plan`).
@NullMarked
package plumeline.want;

import org.jspecify.annotations.NullMarked;
