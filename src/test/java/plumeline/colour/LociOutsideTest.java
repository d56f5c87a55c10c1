package plumeline.colour;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.tidy.Outside;

/// The loci of whites against published tables and another library's sums.
@Outside(
        source = "CIE 15:2004; Robertson 1968 in Wyszecki and Stiles 1982; colour-science 0.4.6",
        kind = "standard, table, other program")
final class LociOutsideTest {
    private static void check(Chromaticity found, double x, double y, double tolerance) {
        assertThat(found.x()).isCloseTo(x, within(tolerance));
        assertThat(found.y()).isCloseTo(y, within(tolerance));
    }

    /// The sums that CIE 15:2004 prints under table T.4 (grade P: printed), which a mistyped row would change.
    @Test
    void observer_sumsUpAsPrinted() {
        Xyz all = Observer.sum(_ -> 1);
        assertThat(all.x()).isCloseTo(21.371524, within(4e-7));
        assertThat(all.y()).isCloseTo(21.371327, within(4e-7));
        assertThat(all.z()).isCloseTo(21.371540, within(4e-7));
    }

    /// Sums in steps of 1 nm with the same constants, by colour-science 0.4.6 (grade D: computed by another program).
    /// The contract allows 0.0005; what the law's comment promises is held here.
    @ParameterizedTest
    @CsvSource({
        "2000, 0.52668, 0.41330", "2700, 0.45986, 0.41060", "2800, 0.45186, 0.40863", "3000, 0.43693, 0.40407",
        "3200, 0.42336, 0.39895", "3400, 0.41103, 0.39350", "4000, 0.38044, 0.37675", "4300, 0.36811, 0.36869",
        "5000, 0.34510, 0.35161", "5600, 0.33020, 0.33908", "6500, 0.31353, 0.32363", "7500, 0.30033, 0.31027",
        "9300, 0.28486, 0.29322", "10000, 0.28063, 0.28829"
    })
    void planck_againstFineSums(double kelvin, double x, double y) {
        check(Planck.chromaticity(kelvin), x, y, 1e-4);
    }

    /// Robertson's table (1968, as Wyszecki and Stiles print it), CIE 1960 u and v by mireds; grade P: printed. His c₂
    /// was
    /// 1.4388 cm K.
    @ParameterizedTest
    @CsvSource({
        "100, 0.19032, 0.29326",
        "150, 0.19962, 0.30921",
        "200, 0.21142, 0.32312",
        "250, 0.22511, 0.33439",
        "300, 0.24010, 0.34308",
        "350, 0.25591, 0.34951",
        "400, 0.27218, 0.35407"
    })
    void planck_againstRobertson(double mireds, double u, double v) {
        Chromaticity found = Planck.chromaticity(1e6 / mireds);
        assertThat(found.u()).isCloseTo(u, within(5e-5));
        assertThat(found.v1960()).isCloseTo(v, within(5e-5));
    }

    /// From memory of the same table, and of charts of the locus: its ends.
    @ParameterizedTest
    @CsvSource({"10, 0.18066, 0.26589", "600, 0.33724, 0.36051"})
    void planck_atTheEnds(double mireds, double u, double v) {
        Chromaticity found = Planck.chromaticity(1e6 / mireds);
        assertThat(found.u()).isCloseTo(u, within(1e-4));
        assertThat(found.v1960()).isCloseTo(v, within(1e-4));
        check(Planck.chromaticity(1000), 0.6528, 0.3444, 2e-4);
    }

    /// CIE 15's formula as a public page works it out (grade F: formula), and its worked example at 5000 K (grade P).
    @ParameterizedTest
    @CsvSource({
        "4000, 0.38234, 0.38377", "5000, 0.34574, 0.35867", "5500, 0.33250, 0.34761", "5600, 0.33016, 0.34555",
        "6500, 0.31278, 0.32918", "6504, 0.31271, 0.32912", "7500, 0.29909, 0.31503", "10000, 0.27880, 0.29197"
    })
    void daylight_againstTheStandard(double kelvin, double x, double y) {
        check(Daylight.chromaticity(kelvin), x, y, 1.01e-5);
    }

    /// CIE 15:2004, table T.3 (grade P): standard illuminants A, which is a glowing body of 2856 K by definition, D55
    /// and D75, whose temperatures are 5503 K and 7504 K.
    @Test
    void illuminants_lieOnTheLoci() {
        check(Planck.chromaticity(2855.5), 0.44758, 0.40745, 5e-5);
        check(Daylight.chromaticity(5503), 0.33243, 0.34744, 2e-4);
        check(Daylight.chromaticity(7504), 0.29903, 0.31488, 2e-4);
        assertThat(Chromaticity.ofXy(1.0 / 3, 1.0 / 3).u()).isCloseTo(4.0 / 19, within(1e-12));
        assertThat(Chromaticity.ofXy(1.0 / 3, 1.0 / 3).v()).isCloseTo(9.0 / 19, within(1e-12));
    }

    @Test
    void outsideTheirRanges_theyRefuse() {
        assertThatThrownBy(() -> Planck.chromaticity(999)).hasMessageContaining("1000 K to 100 000 K");
        assertThatThrownBy(() -> Planck.chromaticity(100_001)).hasMessageContaining("1000 K to 100 000 K");
        assertThatThrownBy(() -> Daylight.chromaticity(3999)).hasMessageContaining("4000 K");
        assertThatThrownBy(() -> Daylight.chromaticity(25_001)).hasMessageContaining("25 000 K");
        assertThatThrownBy(() -> Chromaticity.ofXy(0.6, 0.5)).hasMessageContaining("x + y");
    }
}
