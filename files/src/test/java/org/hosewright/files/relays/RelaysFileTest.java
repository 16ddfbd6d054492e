package org.hosewright.files.relays;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.hosewright.evidence.trial.Measure;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Constants;
import org.junit.jupiter.api.Test;

/** Re-lays of a blind trial read from a file. */
class RelaysFileTest {
    @Test
    void rowsOfOneLayAreOneRelayHold() {
        RelaysFile read = RelaysFile.read("label,lay,loss [psi]\nA,1,40\nA,1,41\nB,2,46\nA,3,42\n", "relays.csv");
        assertThat(read.measure()).isEqualTo(Measure.LOSS);
        assertThat(read.relays()).hasSize(3);
        assertThat(read.relays().get(0).values()).hasSize(2);
        assertThat(read.relays().get(1).label()).isEqualTo("B");
        assertThat(read.relays().get(2).values().get(0) / Constants.PSI_PA).isBetween(41.999999, 42.000001);
    }

    @Test
    void missingUnitOrLabelIsRefused() {
        assertThatThrownBy(() -> RelaysFile.read("label,lay,loss\nA,1,40\n", "relays.csv"))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> RelaysFile.read("label,lay,loss [psi]\n,1,40\n", "relays.csv"))
                .isInstanceOf(InvalidInput.class);
        assertThatThrownBy(() -> RelaysFile.read("label,lay,loss [psi],flow [gpm]\nA,1,40,150\n", "relays.csv"))
                .isInstanceOf(InvalidInput.class);
    }
}
