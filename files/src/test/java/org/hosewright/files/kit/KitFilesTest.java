package org.hosewright.files.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.hosewright.evidence.instrument.Accuracy;
import org.hosewright.evidence.instrument.Instrument;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.files.Examples;
import org.hosewright.hydraulics.equipment.Appliance;
import org.hosewright.hydraulics.equipment.ApplianceLoss;
import org.hosewright.hydraulics.equipment.Automatic;
import org.hosewright.hydraulics.equipment.Fog;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.hydraulics.equipment.Stretch;
import org.hosewright.hydraulics.quantity.Flow;
import org.hosewright.hydraulics.quantity.Force;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.Pressure;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.hosewright.ledger.kit.Basis;
import org.hosewright.ledger.kit.Kit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The example kits and a kit with everything in it: read, written out, read back. */
class KitFilesTest {
    /** The last bit of a division and a multiplication. */
    private static final double EXACT = 1e-12;

    @ParameterizedTest
    @ValueSource(
            strings = {"drill-night.kit.yaml", "drill-night.side-tap.kit.yaml", "garden-court.kit.yaml", "vale.kit.yaml"
            })
    void readBackHolds(String name) {
        Kit kit = Examples.kit(name).kit();
        assertThat(KitDocument.of(KitText.write(kit), "written").kit()).isEqualTo(kit);
        assertThat(KitText.write(KitDocument.of(KitText.write(kit), "written").kit()))
                .isEqualTo(KitText.write(kit));
    }

    @Test
    void wholeKitReadBackHolds() {
        Kit kit = KitDocument.of(WholeKit.TEXT, "whole.kit.yaml").kit();
        assertThat(KitDocument.of(KitText.write(kit), "written").kit()).isEqualTo(kit);
    }

    @Test
    void exampleSaysWhatItSaysHolds() {
        Kit kit = Examples.kit("drill-night.kit.yaml").kit();
        assertThat(kit.company()).isEqualTo("Brindle Falls Fire Company");
        assertThat(kit.units()).isEqualTo(UnitSystem.US);
        assertThat(kit.crewReaction()).containsEntry(2, Force.ofLbf(75)).hasSize(3);
        var hose = kit.hoses().get("attack-175");
        assertThat(hose.hose().diameter().inches()).isCloseTo(1.75, within(EXACT));
        assertThat(hose.hose().loss().value().us()).isCloseTo(15.5, within(EXACT));
        assertThat(hose.hose().loss().standardError()).isEmpty();
        assertThat(hose.basis()).isEqualTo(new Basis(Basis.Kind.BOOK, ""));
        assertThat(hose.tested()).contains(LocalDate.of(2026, 4, 11));
        assertThat(hose.made()).hasValue(2019);
        assertThat(kit.nozzles().get("seven-eighths").gauged()).contains(LocalDate.of(2026, 5, 12));
        var engine = kit.engines().get("engine-41").engine();
        assertThat(engine.rated()).contains(Flow.ofGpm(1500));
        assertThat(engine.ceiling()).contains(Pressure.ofPsi(250));
        assertThat(engine.getDischarge("crosslay-1").loss()).isEmpty();
        var pack = kit.packages().get("crosslay-1-200");
        assertThat(pack.hose()).containsExactly(new Stretch("attack-175", new Length(4 * 50 * 0.3048)));
        assertThat(pack.crew()).hasValue(2);
        assertThat(kit.rule().orElseThrow().pumpFor(Length.ofFeet(550)).psi()).isCloseTo(149, within(1e-9));
    }

    @Test
    void instrumentsOfExamplesHold() {
        var gauge = (Instrument.PressureGauge) Examples.kit("drill-night.side-tap.kit.yaml")
                .kit()
                .instruments()
                .get("gauge-b")
                .instrument();
        assertThat(gauge.tap()).contains(new Tap.Side(Optional.of(Length.ofInches(1.5))));
        assertThat(gauge.accuracy()).isEqualTo(new Accuracy(0.005, Accuracy.Of.RANGE));
        assertThat(gauge.range()).contains(Pressure.ofPsi(200));
    }

    @Test
    void wholeKitSaysWhatItSaysHolds() {
        KitDocument document = KitDocument.of(WholeKit.TEXT, "whole.kit.yaml");
        Kit kit = document.kit();
        assertThat(kit.nozzles().get("auto-100").nozzle().rated(""))
                .isEqualTo(new Automatic(Pressure.ofPsi(100), Flow.ofGpm(60), Flow.ofGpm(200)));
        assertThat(kit.nozzles().get("slug-fog").nozzle().settings().keySet()).containsExactly("fog", "slug");
        assertThat(kit.nozzles().get("slug-fog").nozzle().rated("slug"))
                .isEqualTo(new SmoothBore(Length.ofInches(0.9375), Pressure.ofPsi(50)));
        assertThat(kit.nozzles().get("ring-fog").nozzle().rated("wide"))
                .isEqualTo(new Fog(Flow.ofGpm(125), Pressure.ofPsi(100)));
        assertThat(kit.nozzles().get("fog-150").nozzle().most()).contains(Pressure.ofPsi(200));
        assertThat(kit.appliances().get("monitor").loss())
                .isEqualTo(new ApplianceLoss.Rule(Pressure.ofPsi(10), Flow.ofGpm(350)));
        assertThat(kit.appliances().get("monitor").per()).isEqualTo(Appliance.Per.TOTAL);
        assertThat(kit.hoses().get("attack-175").hose().loss().standardError()).isPresent();
        assertThat(kit.engines()
                        .get("engine-41")
                        .pipingBasis()
                        .get("crosslay-1")
                        .text())
                .isEqualTo("test drill-night");
        assertThat(kit.engines().get("engine-41").gauge()).contains("gauge-a");
        assertThat(kit.instruments()
                        .get("gauge-a")
                        .offset()
                        .orElseThrow()
                        .value()
                        .psi())
                .isCloseTo(-1.2, within(EXACT));
        assertThat(((Instrument.PressureGauge) kit.instruments().get("gauge-c").instrument()).tap())
                .contains(new Tap.Side(Optional.empty()));
        assertThat(kit.packages().get("crosslay-1-300").setting()).isEqualTo("slug");
        assertThat(kit.packages().get("crosslay-1-300").hose())
                .containsExactly(
                        new Stretch("attack-175", new Length(4 * 50 * 0.3048)),
                        new Stretch("leader-3", Length.ofFeet(125)));
        assertThat(kit.evidence().get("drill-night").correlation()).containsEntry("attack-175/crosslay-1", -0.8);
        assertThat(document.assumed())
                .containsExactly(
                        "The loss of hose leader-3 names no basis; it is taken as an estimate.",
                        "Appliance monitor does not say per leg or total; its loss is taken at the total flow.");
        assertThat(List.copyOf(kit.hoses().keySet())).containsExactly("attack-175", "leader-3");
    }
}
