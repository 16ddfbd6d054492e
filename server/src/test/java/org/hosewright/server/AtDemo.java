package org.hosewright.server;

import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A test that asks a server with the invented company's record, its own for every test. */
abstract class AtDemo {
    @TempDir
    Path folder;

    Running running;

    @BeforeEach
    void start() {
        running = Running.demo(folder);
    }

    @AfterEach
    void stop() {
        running.close();
    }
}
