package org.hosewright.acceptance.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.nio.file.Path;
import org.hosewright.ledger.leaf.LeafKind;
import org.junit.jupiter.api.Test;

/** A neighbour is taken out, its file is looked at, and it is kept only with the fingerprint told by telephone. */
final class NeighboursTest extends AtStation {
    private static final Path FILE =
            Path.of(System.getProperty("hosewright.root"), "examples", "aldwick-vale.exchange");
    private static final String KEPT = "What Aldwick Vale Brigade handed over is kept, as theirs.";

    /** A refusal is an answer, which a browser still writes on its console. */
    @Override
    boolean isProvoked(String complaint) {
        return complaint.contains("status of 422");
    }

    @Test
    void aFileIsKeptOnlyWithTheFingerprintToldByTelephoneHolds() {
        page.navigate(station.at("/neighbours"));
        String fingerprint = page.locator(".neighbour .fingerprint").textContent();
        page.getByText("Their key and this file").click();
        button("Take Aldwick Vale Brigade out").click();
        assertThat(page.getByText("No neighbour has handed anything over yet.")).isVisible();

        page.getByLabel("The file they sent").setInputFiles(FILE);
        assertThat(page.locator("[data-came]")).containsText("We have a hose attack-175 too.");
        assertThat(page.locator("[data-came]")).containsText("87 psi (600 kPa)");
        assertThat(page.locator("[data-came]")).not().containsText(fingerprint);
        page.getByLabel("Fingerprint as they read it out").fill("0".repeat(32));
        button("Keep as theirs").click();
        assertThat(page.getByText("it is another, so the file is not theirs")).isVisible();
        assertThat(new AxeBuilder(page).analyze().getViolations()).isEmpty();
        page.getByLabel("Fingerprint as they read it out").fill(fingerprint);
        button("Keep as theirs").click();
        assertThat(page.getByText(KEPT)).isVisible();
        assertThat(page.locator(".neighbour")).containsText("delivery-75");
        assertThat(station.ports().leaves().list(LeafKind.NEIGHBOUR)).hasSize(1);
        assertThat(station.ports().kits().latestVersion()).isEqualTo(1);
    }

    private Locator button(String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }
}
