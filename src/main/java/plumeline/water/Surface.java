package plumeline.water;

import java.util.Locale;
import java.util.Optional;

/// Surfaces that drops sit on, with the contact angles water usually has there: advancing, at which a drop's edge
/// creeps out, and receding, at which it draws back. The range holds about four of five clean samples; grease, dust
/// and handling change both. Measure where it matters: photograph a growing and a shrinking drop from the side.
///
/// **Source:** typical values from memory of published tables of advancing and receding angles, placed so that they
/// enclose the mean equilibrium angles of the survey Critical Surface Tension and Contact Angle with Water for Various
/// Polymers; lacquer's receding angle and those of painted, metal and glass surfaces are assumptions.
public enum Surface {
    /// The lacquer of a drink can.
    LACQUER(80, 70, 90, 50, 38, 60),
    /// Matt spray paint or varnish.
    PAINT(88, 78, 98, 50, 35, 62),
    /// Glass as it is handled and wiped.
    GLASS(50, 35, 65, 22, 12, 32),
    /// Glass fresh from washing: water spreads on it.
    CLEAN_GLASS(18, 8, 30, 5, 0, 12),
    /// Bare metal as it is handled.
    METAL(75, 60, 88, 30, 15, 45),
    /// Candle wax or a wax coat.
    WAX(110, 105, 114, 95, 86, 102),
    /// PET bottles and labels.
    PET(80, 74, 85, 55, 46, 63),
    /// Polypropylene.
    POLYPROPYLENE(107, 100, 112, 84, 75, 93),
    /// Polyethylene.
    POLYETHYLENE(101, 95, 106, 79, 70, 88),
    /// Acrylic (PMMA).
    ACRYLIC(78, 72, 83, 57, 49, 64),
    /// Polycarbonate.
    POLYCARBONATE(89, 84, 94, 66, 57, 74),
    /// PTFE.
    PTFE(115, 109, 120, 93, 85, 101),
    /// Silicone rubber or a silicone coat.
    SILICONE(112, 107, 117, 87, 72, 100);

    private final int advancing;
    private final int leastAdvancing;
    private final int mostAdvancing;
    private final int receding;
    private final int leastReceding;
    private final int mostReceding;

    Surface(int advancing, int leastAdvancing, int mostAdvancing, int receding, int leastReceding, int mostReceding) {
        this.advancing = advancing;
        this.leastAdvancing = leastAdvancing;
        this.mostAdvancing = mostAdvancing;
        this.receding = receding;
        this.leastReceding = leastReceding;
        this.mostReceding = mostReceding;
    }

    /// Finds a surface by its word.
    ///
    /// @param word such as `clean glass`, in any case, words joined by spaces, `_` or `-`
    /// @return the surface
    public static Optional<Surface> find(String word) {
        String name = word.strip().replace('_', ' ').replace('-', ' ');
        for (Surface each : values()) {
            if (each.word().equalsIgnoreCase(name)) {
                return Optional.of(each);
            }
        }
        return Optional.empty();
    }

    /// Gives its word.
    ///
    /// @return such as `clean glass`
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /// Gives the usual angles.
    ///
    /// @return advancing and receding
    public ContactAngles usual() {
        return ContactAngles.ofDegrees(advancing, receding);
    }

    /// Gives the least of both that is usual.
    ///
    /// @return advancing and receding
    public ContactAngles low() {
        return ContactAngles.ofDegrees(leastAdvancing, leastReceding);
    }

    /// Gives the most of both that is usual.
    ///
    /// @return advancing and receding
    public ContactAngles high() {
        return ContactAngles.ofDegrees(mostAdvancing, mostReceding);
    }
}
