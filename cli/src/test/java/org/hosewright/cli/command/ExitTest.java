package org.hosewright.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class ExitTest {
    @Test
    void noCommandRefused() {
        var ran = Ran.of();
        assertThat(ran.status()).isEqualTo(Exit.USAGE.status());
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).contains("Say what to do.").contains("hosewright --help");
    }

    @Test
    void unknownCommandRefused() {
        var ran = Ran.of("dril");
        assertThat(ran.status()).isEqualTo(Exit.USAGE.status());
        assertThat(ran.err()).contains("dril");
    }
}
