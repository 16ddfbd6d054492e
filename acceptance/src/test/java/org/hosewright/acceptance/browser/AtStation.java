package org.hosewright.acceptance.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A test that stands at a station of its own with a browser, and in the end has heard no complaint of the browser. */
abstract class AtStation {
    @TempDir
    Path folder;

    Station station;
    Eyes eyes;
    Page page;

    /** The station, with the invented company in it. */
    Station begin() {
        return Station.demo(folder);
    }

    /** True for what the browser writes on its console and the test provokes on purpose. */
    boolean isProvoked(String complaint) {
        return false;
    }

    @BeforeEach
    void enter() {
        station = begin();
        eyes = new Eyes();
        page = eyes.laptop();
    }

    @AfterEach
    void leave() {
        assertThat(eyes.complaints()).allMatch(this::isProvoked);
        eyes.close();
        station.close();
    }
}
