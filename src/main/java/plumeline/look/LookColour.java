package plumeline.look;

import java.util.List;
import java.util.Optional;
import plumeline.colour.Chromaticity;
import plumeline.colour.Difference;
import plumeline.colour.Lab;
import plumeline.colour.Planck;
import plumeline.colour.Seen;
import plumeline.colour.Srgb;
import plumeline.colour.White;
import plumeline.colour.Xyz;
import plumeline.plan.Placed;
import plumeline.plan.Written;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.Gauge;
import plumeline.stage.Tint;

/// A look has its colour: a lamp's light, or a thing as the camera shows it in all the light on it.
///
/// The margin is the distance allowed less the distance: of light in CIE 1976 u'v', of a thing by CIEDE2000.
///
/// @param look the look
/// @param of whose colour counts
/// @param wanted the colour wanted
/// @param within how far it may be off
record LookColour(LookAt look, Of of, Wanted wanted, double within) implements Gauge<Looks> {
    /// The white to which a camera is balanced where nobody says, K: daylight, common practice.
    private static final double BALANCE_KELVIN = 5600;

    /// Farther from Planck's locus it is no white that a gel makes.
    private static final double WHITE_DUV = 0.006;

    /// Cameras are balanced in steps as fine as this, K.
    private static final double ROUND_KELVIN = 50;

    /// Of so large differences CIEDE2000 tells no more than that they are large.
    private static final double ROUGH = 10;

    /// What counts.
    sealed interface Of {
        /// A lamp's light.
        ///
        /// @param lamp its index
        record Light(int lamp) implements Of {}

        /// The look's thing in its light.
        ///
        /// @param own its colour under daylight
        record Thing(Srgb own) implements Of {}
    }

    /// A colour wanted.
    sealed interface Wanted {
        /// As a screen has it.
        record Code(Srgb code) implements Wanted {}

        /// Whatever its lightness.
        record Place(Chromaticity colour) implements Wanted {}

        /// The colour, whatever its lightness; empty of black.
        default Optional<Chromaticity> findChromaticity() {
            return switch (this) {
                case Code(Srgb code) -> code.toXyz().findChromaticity();
                case Place(Chromaticity colour) -> Optional.of(colour);
            };
        }
    }

    /// Finds the wanted colour as written.
    static Optional<Wanted> findWanted(Written keys) {
        List<Quantity> numbers = keys.listQuantities("colour");
        if (numbers.size() == 2) {
            double x = numbers.getFirst().si();
            double y = numbers.getLast().si();
            return x + y <= 1 && y > 0 ? Optional.of(new Wanted.Place(Chromaticity.ofXy(x, y))) : Optional.empty();
        }
        if (numbers.size() == 1) {
            return Optional.of(
                    new Wanted.Place(Planck.chromaticity(numbers.getFirst().si())));
        }
        return keys.findWord("colour").flatMap(Srgb::find).map(Wanted.Code::new);
    }

    @Override
    public String unit() {
        return "1";
    }

    @Override
    public boolean restsOnMarks() {
        return of instanceof Of.Thing;
    }

    private Chromaticity balance() {
        return Planck.chromaticity(look.stage()
                .shot()
                .camera()
                .written()
                .findQuantity("white")
                .map(Quantity::si)
                .orElse(BALANCE_KELVIN));
    }

    /// A light's is never black.
    private Chromaticity wantedLight() {
        return wanted.findChromaticity().orElseThrow();
    }

    private Optional<Srgb> findSeen(Looks at, Srgb own) {
        return findSeen(at, own, balance());
    }

    private Optional<Srgb> findSeen(Looks at, Srgb own, Chromaticity balance) {
        return look.colour(look.instant(at)).findColour().map(light -> Seen.under(own, light, balance));
    }

    private static Lab lab(Srgb colour) {
        return Lab.of(colour.toXyz(), Chromaticity.D65);
    }

    /// The wanted colour of a thing; one without lightness is taken as light as the thing is seen.
    private Lab wantedLab(Lab seen, Chromaticity balance) {
        return switch (wanted) {
            case Wanted.Code(Srgb code) -> lab(code);
            case Wanted.Place(Chromaticity colour) -> {
                Xyz as = colour.at(
                        new Lab(seen.l(), 0, 0).toXyz(Chromaticity.D65).y());
                yield Lab.of(Seen.adapted(as, balance, Chromaticity.D65), Chromaticity.D65);
            }
        };
    }

    private Tint tint(Looks at, int lamp) {
        return look.instant(at).scene().beams().get(lamp).tint();
    }

    private double distance(Looks at) {
        return switch (of) {
            case Of.Light(int lamp) ->
                tint(at, lamp)
                        .findColour()
                        .map(colour -> colour.distance(wantedLight()))
                        .orElse(0.0);
            case Of.Thing(Srgb own) -> distance(at, own, balance());
        };
    }

    private double distance(Looks at, Srgb own, Chromaticity balance) {
        return findSeen(at, own, balance)
                .map(seen -> Difference.ciede2000(lab(seen), wantedLab(lab(seen), balance)))
                .orElse(0.0);
    }

    /// A gel that makes one white of another, by the difference of their mireds; a camera balanced to the light, where
    /// that shows the thing as wanted.
    @Override
    public List<String> listAttempts(Looks at) {
        return switch (of) {
            case Of.Light(int lamp) -> findGel(at, lamp).stream().toList();
            case Of.Thing(Srgb own) -> findBalance(at, own).stream().toList();
        };
    }

    private Optional<String> findGel(Looks at, int lamp) {
        return White.find(wantedLight())
                .filter(white -> Math.abs(white.duv()) < WHITE_DUV)
                .filter(_ -> tint(at, lamp) instanceof Tint.White)
                .map(white -> {
                    double from = ((Tint.White) tint(at, lamp)).kelvin();
                    double shift = White.miredShift(from, white.kelvin());
                    String to = Print.number(Math.rint(white.kelvin() / ROUND_KELVIN) * ROUND_KELVIN, 0) + " K";
                    return "A gel of " + (shift < 0 ? "−" : "+") + Print.number(Math.abs(shift), 0) + " mired on "
                            + look.stage().shot().lights().get(lamp).name() + ", or its white set to " + to
                            + " where it has one. Write white: " + to + " then, and loss for what the gel takes.";
                });
    }

    private Optional<String> findBalance(Looks at, Srgb own) {
        return look.colour(look.instant(at))
                .findColour()
                .flatMap(White::find)
                .map(white -> Math.rint(white.kelvin() / ROUND_KELVIN) * ROUND_KELVIN)
                .filter(kelvin -> kelvin >= Planck.LEAST_KELVIN && kelvin <= Planck.MOST_KELVIN)
                .filter(kelvin -> distance(at, own, Planck.chromaticity(kelvin)) <= within)
                .map(kelvin -> "Balance the camera to that light: camera.white " + Print.number(kelvin, 0)
                        + " K. All that it shows changes with it.");
    }

    @Override
    public double[] parts(Looks at) {
        return new double[] {within - distance(at)};
    }

    @Override
    public Optional<String> findUnknown(Looks at) {
        return switch (of) {
            case Of.Light(int lamp) -> {
                var light = look.stage().shot().lights().get(lamp);
                yield switch (tint(at, lamp)) {
                    case Tint.Unknown(String reason) -> Optional.of(reason);
                    case Tint.Untold _ ->
                        Optional.of("Not known: the colour of " + light.name() + ". Write "
                                + light.light().name() + "'s white: 5600 K, or its primaries.");
                    case Tint.Mixed _, Tint.White _ -> Optional.empty();
                };
            }
            case Of.Thing _ ->
                look.colour(look.instant(at)) instanceof LookAt.OfLight.Unknown(String reason)
                        ? Optional.of(reason)
                        : Optional.empty();
        };
    }

    @Override
    public Optional<String> findLack(Looks at) {
        return of instanceof Of.Light(int lamp)
                        && look.instant(at).scene().beams().get(lamp).level() <= 0
                ? Optional.of(look.stage().shot().lights().get(lamp).name() + " is off in " + look.pass() + ".")
                : Optional.empty();
    }

    @Override
    public String standing(Looks at) {
        return switch (of) {
            case Of.Light(int lamp) -> {
                var light = look.stage().shot().lights().get(lamp);
                Chromaticity colour = tint(at, lamp).findColour().orElseThrow();
                yield light.name() + " shines in " + look.pass() + " at x " + Print.number(colour.x(), 4) + ", y "
                        + Print.number(colour.y(), 4) + ", " + Print.number(distance(at), 4)
                        + " from what is wanted (x "
                        + Print.number(wantedLight().x(), 4) + ", y "
                        + Print.number(wantedLight().y(), 4) + ") in CIE 1976 u'v'; "
                        + Print.number(within, 4) + " is allowed.";
            }
            case Of.Thing(Srgb own) -> {
                Srgb seen = findSeen(at, own).orElseThrow();
                double far = distance(at);
                yield look.name() + " shows in " + look.pass() + " about as " + seen.toHex() + " (" + Words.hue(seen)
                        + "), a CIEDE2000 of "
                        + Print.number(far, 1) + " from what is wanted; " + Print.number(within, 1) + " is allowed."
                        + (far > ROUGH ? " Past some 10 that figure only says: quite another colour." : "");
            }
        };
    }

    @Override
    public Optional<String> findTight(Looks at) {
        return of instanceof Of.Light(int lamp) && tint(at, lamp) instanceof Tint.Mixed mixed && mixed.halfShare() > 0
                ? Optional.of("Its primaries are typical ones: meter its colour, or write each emitter's x and y.")
                : Optional.empty();
    }

    @Override
    public Optional<String> findCaution(Looks at) {
        return of instanceof Of.Thing
                ? Optional.of(
                        "Reckoned by red, green and blue alone, as no spectra are known, with the camera balanced to "
                                + balanced()
                                + ": narrow emitters may show it quite otherwise. Shoot the thing and a grey card"
                                + " in this light.")
                : Optional.empty();
    }

    private String balanced() {
        return look.stage()
                .shot()
                .camera()
                .written()
                .findQuantity("white")
                .map(Quantity::valueText)
                .orElse(Print.number(BALANCE_KELVIN, 0) + " K, as nothing is written");
    }

    /// The colour of a thing under daylight, as its variant, its label or itself has it.
    static Optional<Srgb> findOwn(Placed placed) {
        return placed.thing().written().findWord("colour").flatMap(Srgb::find);
    }
}
