package org.hosewright.hydraulics.reach;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

class FloorsTest {
    private static final Length TEN_FEET = Length.ofFeet(10);

    @Test
    void safety14FloorHangsOnHowItIsCounted() {
        Floors american = Floors.of(Floors.Counting.FROM_ONE, TEN_FEET);
        Floors european = Floors.of(Floors.Counting.FROM_GROUND, TEN_FEET);
        assertThat(american.rise(3).feet()).isCloseTo(20, within(1e-9));
        assertThat(european.rise(3).feet()).isCloseTo(30, within(1e-9));
        assertThat(american.rise(1).metres()).isZero();
        assertThat(american.counting().says()).contains("floor 1 is at the street");
    }

    @Test
    void safety14FloorShowsItsHeightAndTheCounting() {
        assertThat(Floors.of(Floors.Counting.FROM_ONE, TEN_FEET).says(3, UnitSystem.US))
                .isEqualTo("floor 3, 20 ft up (floor 1 is at the street)");
        assertThat(Floors.of(Floors.Counting.FROM_GROUND, Length.ofMetres(3)).says(3, UnitSystem.SI))
                .isEqualTo("floor 3, 9 m up (floor 1 is one up from the street)");
    }

    @Test
    void tallLobbyCountsHolds() {
        Floors lobby = new Floors(Floors.Counting.FROM_ONE, Length.ofFeet(20), Length.ofFeet(12));
        assertThat(lobby.rise(2).feet()).isCloseTo(20, within(1e-9));
        assertThat(lobby.rise(4).feet()).isCloseTo(44, within(1e-9));
    }

    @Test
    void floorBelowTheStreetIsRefused() {
        Floors american = Floors.of(Floors.Counting.FROM_ONE, TEN_FEET);
        assertThatThrownBy(() -> american.rise(0)).isInstanceOf(InvalidInput.class);
    }
}
