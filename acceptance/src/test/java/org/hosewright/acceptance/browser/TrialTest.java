package org.hosewright.acceptance.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A blind trial on its page: set up by the holder, read by others, opened once. */
final class TrialTest extends AtStation {
    @Tag("long")
    @Test
    void blindTrialFromSetUpToTheVerdictHolds() {
        page.navigate(station.at("/trial"));
        page.getByLabel("Name of the trial").fill("Two jackets");
        page.getByLabel("How far re-lays of one kind differ").fill("1");
        page.getByLabel("What is compared").fill("old jacket\nnew jacket");
        beCalled("R. Vane");
        button("How many re-lays does it take?").click();
        page.getByLabel("Re-lays of each kind").fill("2");
        button("Draw labels and order, and begin").click();
        String code = page.locator(".code").textContent();
        assertThat(page.getByText("0 of 4 re-lays are read.")).isVisible();

        page.getByLabel("Code of the key").fill(code);
        button("Show me the key; that is recorded").click();
        Locator key = page.getByRole(AriaRole.REGION, new Page.GetByRoleOptions().setName("The key"));
        assertThat(key.locator("tbody tr")).hasCount(4);
        boolean[] old = new boolean[4];
        for (int i = 0; i < old.length; i++) {
            old[i] = key.locator("tbody tr").nth(i).textContent().contains("old jacket");
        }
        button("Put the key away").click();
        read(old);
        assertThat(page.locator(".answer-line")).containsText("loses less than every other.");
        assertThat(page.locator("main")).not().containsText("old jacket loses");
        assertThat(new AxeBuilder(page).analyze().getViolations()).isEmpty();

        beCalled("R. Vane");
        button("Open the labels to everybody").click();
        page.getByLabel("Why now").fill("All are read");
        button("Open the labels for good").click();
        assertThat(page.locator(".pairs")).containsText("New jacket loses 20 psi less than old jacket over 300 ft");
        assertThat(station.ports().history().audit().holds()).isTrue();
    }

    private void read(boolean... old) {
        beCalled("J. Orle");
        for (int lay = 1; lay <= old.length; lay++) {
            if (lay > 1) {
                button("Next: re-lay " + lay).click();
            }
            page.getByLabel("Pump gauge").fill(old[lay - 1] ? "140" : "120");
            page.getByLabel("Tip gauge").fill("75");
            page.getByLabel("Tip gauge").press("Enter");
            assertThat(page.locator(".note")).containsText("Re-lay " + lay + " has one more reading.");
        }
    }

    private void beCalled(String who) {
        page.getByLabel("Your name").fill(who);
        page.getByLabel("Your name").press("Tab");
    }

    private Locator button(String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }
}
