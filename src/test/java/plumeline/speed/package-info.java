/// Benchmarks (JMH), run by `scripts/bench`; no test runs them.
@NullMarked
package plumeline.speed;

import org.jspecify.annotations.NullMarked;
