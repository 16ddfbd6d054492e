package org.hosewright.acceptance.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A test night from the question to the first row of its table, in the browser. */
final class PlanTest extends AtStation {
    @Test
    void safety08PlannedKeptSignedAndStarted() {
        page.navigate(station.at("/plan"));
        assertThat(page.locator("[data-planned]")).isVisible();
        assertThat(page.getByText("People clear first: never in front of the end"))
                .isVisible();
        page.getByLabel("Hose there is").fill("600 ft");
        page.getByLabel("meter-1, flow meter").uncheck();
        button("Plan the night").click();
        assertThat(page.getByText("read with gauge-a, gauge-b.")).isVisible();
        assertThat(page.getByText("Only one instrument tells the flow")).isVisible();
        Locator rows = page.locator(".points tbody tr");
        int readings = rows.count();
        assertThat(readings).isGreaterThan(3);
        assertThat(page.locator(".points").textContent()).contains("nozzle shut", "never above");

        page.getByLabel("Name of the plan").fill("June night");
        page.getByLabel("Your name").fill("T. Officer");
        page.getByLabel("Your name").press("Tab");
        button("Keep this plan").click();
        button("Sign it for the night").click();
        assertThat(page.getByText("Signed by T. Officer on 1 June 2026.")).isVisible();
        button("Start this night").click();
        page.waitForURL(Pattern.compile(".*/drill\\?night=.*"));
        assertThat(page.getByText("at the tip, pump about").first()).isVisible();
        assertThat(page.getByText("never above").first()).isVisible();
        assertThat(page.locator("[data-row]")).hasCount(readings + 1);
        assertThat(station.ports().history().audit().holds()).isTrue();
    }

    private Locator button(String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }
}
