package plumeline.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/// Solids that products, ballast and lines are made of, with their usual densities at room temperature. Where it
/// matters, weigh the piece: plastics, paper, wax and soap differ from maker to maker.
public enum Material {
    /// Aluminium, near pure.
    ALUMINIUM(2700, 2690, 2730, Basis.TABLE),
    /// The alloy of drink cans.
    CAN_ALUMINIUM(2720, 2690, 2750, Basis.MEMORY),
    /// Steel sheet with a little tin on it: food cans.
    TINPLATE(7850, 7750, 7870, Basis.MEMORY),
    /// Mild steel.
    STEEL(7850, 7750, 7870, Basis.MEMORY),
    /// Stainless steel of the usual kinds.
    STAINLESS_STEEL(7950, 7700, 8030, Basis.MEMORY),
    /// Iron.
    IRON(7870, 7850, 7880, Basis.TABLE),
    /// Brass.
    BRASS(8500, 8400, 8730, Basis.MEMORY),
    /// Lead.
    LEAD(11340, 11300, 11350, Basis.TABLE),
    /// Tungsten.
    TUNGSTEN(19300, 19200, 19350, Basis.TABLE),
    /// Window and bottle glass (soda lime).
    GLASS(2500, 2440, 2560, Basis.TABLE),
    /// PET: bottles.
    PET(1380, 1330, 1400, Basis.MEMORY),
    /// Polypropylene: caps; floats.
    POLYPROPYLENE(905, 895, 920, Basis.MEMORY),
    /// Polyethylene of high density: caps; floats.
    POLYETHYLENE(950, 940, 970, Basis.MEMORY),
    /// Acrylic (PMMA).
    ACRYLIC(1185, 1170, 1200, Basis.MEMORY),
    /// Nylon: line.
    NYLON(1140, 1120, 1160, Basis.MEMORY),
    /// PVDF, sold as fluorocarbon: line.
    PVDF(1780, 1760, 1800, Basis.MEMORY),
    /// Paper and board, dry; soaked it is nearer to 1200.
    PAPER(800, 600, 1200, Basis.MEMORY),
    /// Candle wax (paraffin): floats.
    WAX(900, 870, 940, Basis.MEMORY),
    /// Bar soap; soap beaten with air floats.
    SOAP(1040, 850, 1150, Basis.MEMORY);

    private final double usual;
    private final double low;
    private final double high;
    private final Basis basis;

    Material(double usual, double low, double high, Basis basis) {
        this.usual = usual;
        this.low = low;
        this.high = high;
        this.basis = basis;
    }

    /// What a density rests on.
    public enum Basis {
        /// A table or standard: CRC Handbook (density of solids), EN 572-1 (glass).
        TABLE,
        /// From memory of handbooks.
        MEMORY
    }

    /// Finds a material by its name, in any case, words joined by spaces, `_` or `-`.
    ///
    /// @param name such as `can aluminium`; `aluminum` is a spelling too
    /// @return the material
    public static Optional<Material> find(String name) {
        String word = name.strip()
                .toUpperCase(Locale.ROOT)
                .replace(' ', '_')
                .replace('-', '_')
                .replace("ALUMINUM", "ALUMINIUM");
        for (Material each : values()) {
            if (each.name().equals(word)) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }

    /// Lists every name that is found, as people write them.
    ///
    /// @return all materials' words, then other spellings
    public static List<String> listSpellings() {
        List<String> all = new ArrayList<>();
        for (Material each : values()) {
            all.add(each.word());
        }
        all.add("aluminum");
        all.add("can aluminum");
        return all;
    }

    /// Gives its name as people write it.
    ///
    /// @return such as `can aluminium`
    public String word() {
        return this == PET || this == PVDF
                ? name()
                : name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /// Gives the usual density.
    ///
    /// @return kg/m³
    public double densityKilogramsPerMetre3() {
        return usual;
    }

    /// Gives the least that is usual.
    ///
    /// @return kg/m³
    public double lowKilogramsPerMetre3() {
        return low;
    }

    /// Gives the most that is usual.
    ///
    /// @return kg/m³
    public double highKilogramsPerMetre3() {
        return high;
    }

    /// Says what it rests on.
    ///
    /// @return the basis
    public Basis basis() {
        return basis;
    }
}
