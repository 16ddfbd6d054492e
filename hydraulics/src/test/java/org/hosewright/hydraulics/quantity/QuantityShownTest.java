package org.hosewright.hydraulics.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class QuantityShownTest {
    @ParameterizedTest
    @CsvSource({
        "PRESSURE, 103.4 psi, 103 psi, 713 kPa",
        "PRESSURE, 102.5 psi, 103 psi, 707 kPa",
        "PRESSURE, 4.34 psi, 4.3 psi, 30 kPa",
        "PRESSURE, -4.34 psi, \u22124.3 psi, \u221230 kPa",
        "PRESSURE, 0 psi, 0 psi, 0 kPa",
        "FLOW, 161.08 gpm, 161 gpm, 610 L/min",
        "FLOW, 3.75 gpm, 3.8 gpm, 14 L/min",
        "LENGTH, 550 ft, 550 ft, 168 m",
        "LENGTH, 7/8 in, 7/8 in, 22.2 mm",
        "LENGTH, 1 3/4 in, 1 3/4 in, 44.5 mm",
        "LENGTH, 45 mm, 1.77 in, 45 mm",
        "LENGTH, 0 ft, 0 ft, 0 m",
        "FORCE, 60.1 lbf, 60 lbf, 267 N",
        "VOLUME, 750 gal, 750 gal, 2840 L",
        "TIME, 125 s, 2 min 5 s, 2 min 5 s",
        "TIME, 119.5 s, 120 s, 120 s",
        "TIME, 3600 s, 60 min, 60 min",
        "TEMPERATURE, 68 F, 68 F, 20 C",
        "RATIO, 0.5 %, 0.5 %, 0.5 %"
    })
    void aNumberIsShownAsItIsSaidHolds(Kind kind, String text, String us, String si) {
        Quantity quantity = QuantityText.parse(kind, text);
        assertThat(QuantityShown.us().text(quantity)).isEqualTo(us);
        assertThat(QuantityShown.si().text(quantity)).isEqualTo(si);
    }

    @Test
    void lossesAreShownAtTheFlowTheyAreForHolds() {
        Known<HoseLoss> loss = Known.of(HoseLoss.ofUs(9.25), HoseLoss.ofUs(0.195));
        assertThat(QuantityShown.us().text(HoseLoss.ofUs(9.19))).isEqualTo("9.19 psi per 100 ft at 100 gpm");
        assertThat(QuantityShown.us().text(HoseLoss.ofUs(0.08))).isEqualTo("0.08 psi per 100 ft at 100 gpm");
        assertThat(QuantityShown.si().text(HoseLoss.ofSi(14.5))).isEqualTo("14.5 kPa per 100 m at 100 L/min");
        assertThat(QuantityShown.us().withBand(loss)).isEqualTo("9.25 ± 0.39 psi per 100 ft at 100 gpm");
        assertThat(QuantityShown.us().hoseLossAt(loss, Flow.ofGpm(161)))
                .isEqualTo("24.0 ± 1.0 psi per 100 ft at 161 gpm");
        assertThat(QuantityShown.us().pointLossAt(Known.of(PointLoss.ofUs(1.5), PointLoss.ofUs(0.53)), Flow.ofGpm(161)))
                .isEqualTo("3.9 ± 2.7 psi at 161 gpm");
        assertThat(QuantityShown.us().text(PointLoss.ofUs(2.06))).isEqualTo("2.06 psi at 100 gpm");
    }

    @ParameterizedTest
    @CsvSource({
        "103.2, 1.0, 103 psi ± 2",
        "103.2, 1.2, 103 psi ± 3",
        "103.24, 0.15, 103.2 psi ± 0.3",
        "103.24, 19, 103 psi ± 38",
        "3.26, 1.38, 3.3 psi ± 2.7",
        "-0.02, 1, 0.0 psi ± 2.0"
    })
    void noDigitIsFinerThanIsKnownHolds(double psi, double error, String text) {
        assertThat(QuantityShown.us().withBand(Known.of(Pressure.ofPsi(psi), Pressure.ofPsi(error))))
                .isEqualTo(text);
    }

    @Test
    void aNumberOfUnknownWorthClaimsNoneHolds() {
        assertThat(QuantityShown.us().withBand(Known.of(Pressure.ofPsi(103.2)))).isEqualTo("103 psi");
    }

    @Test
    void safety14RiseIsUpOrDownWithAHeight() {
        assertThat(QuantityShown.us().rise(Length.ofFeet(20))).isEqualTo("20 ft up");
        assertThat(QuantityShown.us().rise(Length.ofFeet(-8))).isEqualTo("8 ft down");
        assertThat(QuantityShown.si().rise(Length.ofMetres(2.5))).isEqualTo("2.5 m up");
        assertThat(QuantityShown.us().rise(Length.ofFeet(0))).isEqualTo("level");
    }

    /** Water is said to three digits: nobody knows it to the gallon. */
    @Test
    void safety14WaterIsSaidToThreeDigits() {
        assertThat(QuantityShown.us().text(Volume.ofGallons(6778))).isEqualTo("6780 gal");
        assertThat(QuantityShown.us().text(Volume.ofGallons(750))).isEqualTo("750 gal");
        assertThat(QuantityShown.us().text(Volume.ofGallons(12345))).isEqualTo("12300 gal");
        assertThat(QuantityShown.us().text(Volume.ofGallons(4.26))).isEqualTo("4.3 gal");
        assertThat(QuantityShown.si().text(new Volume(25.6581))).isEqualTo("25700 L");
        assertThat(QuantityShown.us().text(new Volume(0))).isEqualTo("0 gal");
    }

    @Test
    void aFactorIsSaidAsAChangeHolds() {
        assertThat(QuantityShown.us().change(Known.of(new Ratio(1.06), new Ratio(0.0102))))
                .isEqualTo("+6.0 % ± 2.0");
        assertThat(QuantityShown.us().change(Known.of(new Ratio(0.97)))).isEqualTo("\u22123.0 %");
        assertThat(QuantityShown.us().change(Known.of(new Ratio(1)))).isEqualTo("0.0 %");
    }

    @Test
    void fractionsAndRoundedErrorsInFilesHold() {
        assertThat(QuantityShown.us().file(Length.ofInches(1.75), Unit.IN)).isEqualTo("1 3/4 in");
        assertThat(QuantityShown.us().file(Length.ofInches(3), Unit.IN)).isEqualTo("3 in");
        assertThat(QuantityShown.us().file(Length.ofInches(1.88), Unit.IN)).isEqualTo("1.88 in");
        assertThat(QuantityShown.us().fileTextRounded(Known.of(HoseLoss.ofUs(9.24671), HoseLoss.ofUs(0.1954321))))
                .isEqualTo("9.247 ± 0.195 psi / 100 ft @ 100 gpm");
        assertThat(QuantityShown.us().fileText(Known.of(HoseLoss.ofUs(9.19), HoseLoss.ofUs(0.21))))
                .isEqualTo("9.19 ± 0.21 psi / 100 ft @ 100 gpm");
        assertThat(QuantityShown.us().fileText(Known.of(Pressure.ofPsi(105)))).isEqualTo("105 psi");
    }
}
