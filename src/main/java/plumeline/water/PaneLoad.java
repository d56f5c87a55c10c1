package plumeline.water;

import plumeline.ranges.Ranges;

/// What presses on a pane.
public sealed interface PaneLoad {
    /// Gives the highest pressure.
    ///
    /// @return pressure, pascals, > 0
    double highestPascals();

    /// The same pressure all over, as on a tank's floor.
    ///
    /// @param highestPascals pressure, pascals, > 0
    record Even(double highestPascals) implements PaneLoad {
        /// Checks the range.
        ///
        /// @throws IllegalArgumentException where it isn't > 0
        public Even {
            Ranges.checkPositive(highestPascals, "pressure");
        }
    }

    /// A liquid's pressure: falls evenly from the pane's lower edge to nothing at the surface.
    ///
    /// @param depthMetres from the pane's lower edge to the surface, metres, > 0; at most the pane's height
    /// @param weightNewtonsPerMetre3 density times gravity, newtons a cubic metre, > 0
    record Liquid(double depthMetres, double weightNewtonsPerMetre3) implements PaneLoad {
        /// Checks the ranges.
        ///
        /// @throws IllegalArgumentException where one isn't > 0
        public Liquid {
            Ranges.checkPositive(depthMetres, "liquid's depth");
            Ranges.checkPositive(weightNewtonsPerMetre3, "liquid's weight");
        }

        @Override
        public double highestPascals() {
            return weightNewtonsPerMetre3 * depthMetres;
        }
    }
}
