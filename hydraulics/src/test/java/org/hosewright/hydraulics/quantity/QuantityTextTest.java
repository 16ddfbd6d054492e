package org.hosewright.hydraulics.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.hosewright.hydraulics.error.InvalidInput;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class QuantityTextTest {
    /** Relative; two roundings of a double. */
    private static final double ROUNDING = 1e-15;

    @ParameterizedTest
    @CsvSource({
        "PRESSURE, 75 psi, 75, PSI",
        "PRESSURE, 75psi, 75, PSI",
        "PRESSURE, 5.2 bar, 5.2, BAR",
        "PRESSURE, 345 kPa, 345, KPA",
        "PRESSURE, -3 psi, -3, PSI",
        "PRESSURE, \u22123 psi, -3, PSI",
        "FLOW, 150 gpm, 150, GPM",
        "FLOW, 568 L/min, 568, L_MIN",
        "FLOW, 568L/min, 568, L_MIN",
        "LENGTH, 50 ft, 50, FT",
        "LENGTH, 15 m, 15, M",
        "LENGTH, 1.75 in, 1.75, IN",
        "LENGTH, 1 3/4 in, 1.75, IN",
        "LENGTH, 1 3/4in, 1.75, IN",
        "LENGTH, 7/8 in, 0.875, IN",
        "LENGTH, 7/8in, 0.875, IN",
        "LENGTH, .5 in, 0.5, IN",
        "LENGTH, 45 mm, 45, MM",
        "LENGTH, -20 ft, -20, FT",
        "FORCE, 20 lbf, 20, LBF",
        "FORCE, 90 N, 90, N",
        "VOLUME, 750 gal, 750, GAL",
        "VOLUME, 1800 L, 1800, L",
        "TIME, 2 s, 2, S",
        "TIME, 12 min, 12, MIN",
        "TEMPERATURE, 68 F, 68, F",
        "TEMPERATURE, 20 C, 20, C",
        "RATIO, 3 %, 3, PERCENT",
        "RATIO, 0.5%, 0.5, PERCENT"
    })
    void everyFormOfTheFilesHolds(Kind kind, String text, double value, Unit unit) {
        assertThat(QuantityText.parse(kind, text)).isEqualTo(kind.ofSi(unit.toSi(value)));
    }

    @Test
    void lossesAsPeopleSayThemHold() {
        assertThat(QuantityText.hoseLoss("9.19 ± 0.21 psi / 100 ft @ 100 gpm"))
                .isEqualTo(Known.of(HoseLoss.ofUs(9.19), HoseLoss.ofUs(0.21)));
        assertThat(QuantityText.hoseLoss("9.19+-0.21psi/100ft@100gpm"))
                .isEqualTo(Known.of(HoseLoss.ofUs(9.19), HoseLoss.ofUs(0.21)));
        assertThat(QuantityText.hoseLoss("23.8 psi / 100 ft @ 161 gpm").value().us())
                .isCloseTo(23.8 / 1.61 / 1.61, within(9.2 * ROUNDING * 4));
        assertThat(QuantityText.hoseLoss("14.5 kPa / 100 m @ 100 L/min").value().metric())
                .isCloseTo(14.5, within(14.5 * ROUNDING * 4));
        assertThat(QuantityText.pointLoss("2.06 ± 1.0 psi @ 100 gpm"))
                .isEqualTo(Known.of(PointLoss.ofUs(2.06), PointLoss.ofUs(1)));
        assertThat(QuantityText.pointLoss("0 kPa @ 100 L/min")).isEqualTo(Known.of(PointLoss.NONE));
        assertThat(QuantityText.ratedPoint("150 gpm @ 75 psi"))
                .isEqualTo(new RatedPoint(Flow.ofGpm(150), Pressure.ofPsi(75)));
        assertThat(QuantityText.lossByLength("18 psi / 100 ft"))
                .isEqualTo(new LossByLength(Pressure.ofPsi(18), Length.ofFeet(100)));
    }

    @Test
    void anErrorOfATemperatureIsADifferenceHolds() {
        Known<Quantity> known = QuantityText.known(Kind.TEMPERATURE, "68 ± 9 F");
        assertThat(known.standardErrorSi()).isCloseTo(5, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "PRESSURE|350|a number with its unit: a pressure in psi, bar or kPa",
                "PRESSURE|75 gpm|a pressure in psi, bar or kPa; gpm is a unit of flow",
                "PRESSURE|75 PSI|the unit spelled exactly: psi",
                "PRESSURE|75 lb|a pressure in psi, bar or kPa",
                "PRESSURE|75 psig|a pressure in psi, bar or kPa",
                "PRESSURE|1501 psi|-15 to 1500 psi",
                "PRESSURE|-16 psi|-15 to 1500 psi",
                "PRESSURE|NaN psi|a pressure in psi, bar or kPa",
                "PRESSURE|Infinity psi|a pressure in psi, bar or kPa",
                "PRESSURE|1e3 psi|a pressure in psi, bar or kPa",
                "PRESSURE|75. psi|a pressure in psi, bar or kPa",
                "PRESSURE|75 psi 3|a pressure in psi, bar or kPa",
                "PRESSURE|75 ± 2 psi|a pressure in psi, bar or kPa",
                "FLOW|1,500 gpm|a quantity with a comma is never read",
                "FLOW|1 500 gpm|a flow in gpm or L/min",
                "FLOW|-5 gpm|0 to 20000 gpm",
                "FLOW|7/8 gpm|fractions are read in inches alone",
                "LENGTH|50|a length in ft, m, in or mm",
                "LENGTH|1 7/5 in|halves, quarters, eighths",
                "LENGTH|1 3/7 in|halves, quarters, eighths",
                "LENGTH|1-3/4 in|a length in ft, m, in or mm",
                "LENGTH|200000 ft|-5000 to 100000 ft",
                "TEMPERATURE|500 F|-60 to 100 C"
            })
    void whatCannotBeReadIsRefused(Kind kind, String text, String says) {
        assertThatThrownBy(() -> QuantityText.parse(kind, text))
                .isInstanceOf(InvalidInput.class)
                .hasMessageContaining("'" + text + "'")
                .hasMessageContaining(says);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "9.19",
                "9.19 psi",
                "9.19 psi / 100 ft",
                "9.19 psi / 100 @ 100 gpm",
                "9.19 psi / 100 gpm @ 100 ft",
                "9.19 ± -0.2 psi / 100 ft @ 100 gpm",
                "9.19 psi / 0 ft @ 100 gpm",
                "9.19 psi / 100 ft @ 0 gpm",
                "-9.19 psi / 100 ft @ 100 gpm",
                "99999 psi / 100 ft @ 100 gpm"
            })
    void aLossThatIsNotOneIsRefused(String text) {
        assertThatThrownBy(() -> QuantityText.hoseLoss(text)).isInstanceOf(InvalidInput.class);
    }

    @Test
    void aCellUnderAUnitIsReadWithoutItHolds() {
        assertThat(QuantityText.parse(Unit.PSI, "72")).isEqualTo(Pressure.ofPsi(72));
        assertThatThrownBy(() -> QuantityText.parse(Unit.PSI, "72 psi")).hasMessageContaining("a number of psi");
        assertThatThrownBy(() -> QuantityText.parse(Unit.PSI, "7200")).hasMessageContaining("-15 to 1500 psi");
    }
}
