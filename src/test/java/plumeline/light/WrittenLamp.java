package plumeline.light;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/// A lamp that tests write as photometric files: its intensity by C and gamma, both in degrees.
public record WrittenLamp(DoubleBinaryOperator candelas, List<Double> gammas) {
    public static final List<Double> EVERY_TEN = steps(0, 90, 10);
    public static final double LUMENS = 800;

    /// Narrow in one plane and wide in the other, the same in all four quarters.
    public static WrittenLamp twiceMirrored() {
        return new WrittenLamp((c, g) -> (900 + 100 * Math.rint(100 * cos2(c)) / 100) * fall(g), EVERY_TEN);
    }

    /// The same on both sides of the plane C0 to C180 only.
    static WrittenLamp mirroredAboutC0() {
        return new WrittenLamp((c, g) -> (500 + Math.rint(100 * Math.cos(Math.toRadians(c)))) * fall(g), EVERY_TEN);
    }

    /// The same on both sides of the plane C90 to C270 only.
    static WrittenLamp mirroredAboutC90() {
        return new WrittenLamp((c, g) -> (500 + Math.rint(100 * Math.sin(Math.toRadians(c)))) * fall(g), EVERY_TEN);
    }

    /// Another one in every direction.
    public static WrittenLamp uneven() {
        return new WrittenLamp((c, g) -> (400 + c % 360) * fall(g), EVERY_TEN);
    }

    /// The same all round.
    public static WrittenLamp round() {
        return new WrittenLamp((c, g) -> 1000 * fall(g), EVERY_TEN);
    }

    private static double cos2(double degrees) {
        return Math.cos(Math.toRadians(2 * degrees));
    }

    private static double fall(double gammaDegrees) {
        return (100 - gammaDegrees) / 100;
    }

    static List<Double> steps(double from, double to, double step) {
        return DoubleStream.iterate(from, each -> each <= to, each -> each + step)
                .boxed()
                .toList();
    }

    /// An LM-63 file of 2002 with these planes, metres, an open disc of 20 cm.
    public String lm63(List<Double> planes) {
        return "IESNA:LM-63-2002\r\n[TEST] ours\r\n[LAMP] 40 W filament\r\n[MORE] clear\r\nTILT=NONE\r\n"
                + "1 " + LUMENS + " 1 " + gammas.size() + " " + planes.size() + " 1 2 -0.2 -0.2 0\r\n1 1 40\r\n"
                + words(gammas) + "\r\n" + words(planes) + "\r\n"
                + planes.stream().map(c -> words(row(c))).collect(Collectors.joining("\r\n")) + "\r\n";
    }

    /// A EULUMDAT file of all planes of a whole turn, with the intensities of those that are stored.
    public String eulumdat(int symmetry, List<Double> planes, List<Double> stored) {
        var lines =
                new StringBuilder("Ours\n1\n" + symmetry + "\n" + planes.size() + "\n0\n" + gammas.size() + "\n0\n");
        lines.append("report\nlamp\nnumber\nfile\ndate\n200\n0\n100\n200\n0\n0\n0\n0\n0\n100\n90\n1\n0\n1\n1\n");
        lines.append("40 W filament\n" + LUMENS + "\n2700\n99\n40\n");
        lines.append("1\n".repeat(10));
        planes.forEach(c -> lines.append(c).append('\n'));
        gammas.forEach(g -> lines.append(g).append('\n'));
        for (double c : stored) {
            row(c).forEach(each -> lines.append(each * 1000 / LUMENS).append('\n'));
        }
        return lines.toString();
    }

    private List<Double> row(double c) {
        return gammas.stream().map(g -> candelas.applyAsDouble(c, g)).toList();
    }

    static String words(List<Double> numbers) {
        return numbers.stream().map(String::valueOf).collect(Collectors.joining(" "));
    }

    public static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    static Photometry read(String text) {
        LampFile file = LampFile.read(bytes(text));
        assertThat(file).isInstanceOf(LampFile.Read.class);
        return ((LampFile.Read) file).photometry();
    }

    static LampFile.Refused refuse(String text) {
        LampFile file = LampFile.read(bytes(text));
        assertThat(file).isInstanceOf(LampFile.Refused.class);
        return (LampFile.Refused) file;
    }

    /// Holds that two tables agree all over, between their angles and outside them too.
    static void checkAgree(Intensity one, Intensity other) {
        assertThat(other.fluxLumens())
                .isCloseTo(one.fluxLumens(), org.assertj.core.data.Percentage.withPercentage(1e-9));
        for (double c = -370; c <= 370; c += 7.3) {
            for (double g = 0; g <= 180; g += 3.7) {
                assertThat(at(other, c, g)).as("C %s gamma %s", c, g).isCloseTo(at(one, c, g), near(1e-9));
            }
        }
    }

    static double at(Intensity intensity, double cDegrees, double gammaDegrees) {
        return intensity.candelas(Math.toRadians(cDegrees), Math.toRadians(gammaDegrees));
    }

    static org.assertj.core.data.Offset<Double> near(double offset) {
        return org.assertj.core.api.Assertions.within(offset);
    }

    static double[] radians(double... degrees) {
        return Arrays.stream(degrees).map(Math::toRadians).toArray();
    }
}
