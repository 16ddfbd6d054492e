package org.hosewright.acceptance.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What a crew sends back from the rig about an order. */
final class OrderStoryTest extends AtStation {
    @BeforeEach
    void open() {
        page.navigate(station.at("/orders"));
    }

    @Test
    void reportFromTheRigHolds() {
        sign(1);
        Locator form = page.locator("form", new Page.LocatorOptions().setHasText("Something on engine-41"));
        form.locator("input").fill("The tag of crosslay 1 says 110");
        form.getByText("Report it").click();
        Locator report = page.locator(".caution", new Page.LocatorOptions().setHasText("says 110"));
        assertThat(report).isVisible();
        report.getByText("Looked into").click();
        assertThat(report).hasCount(0);
    }

    private void sign(int number) {
        button("Propose").click();
        assertThat(page.getByText("Order " + number + " is proposed.")).isVisible();
        page.getByLabel("Your name").fill("Chief Arden");
        page.getByLabel("Your name").press("Tab");
        button("Sign order " + number).click();
        assertThat(page.locator("[data-standing='in force']")).isVisible();
    }

    private Locator button(String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }
}
