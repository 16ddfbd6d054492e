package org.hosewright.acceptance.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import org.hosewright.ledger.leaf.LeafKind;
import org.junit.jupiter.api.Test;

/** The daily check of a rig: one tap where all lies as written, a short form where it does not. */
final class BedTest extends AtStation {
    @Test
    void dailyCheckInOneTapAndASwappedLineHold() {
        page.navigate(station.at("/bed"));
        page.getByLabel("Your name").fill("D. Driver");
        page.getByLabel("Your name").press("Tab");
        button("All of engine-41 lies as written").click();
        assertThat(page.getByText("As written.")).isVisible();

        Locator line = page.locator(".rigs > li", new Page.LocatorOptions().setHasText("crosslay-1-200"));
        line.getByText("Write down what lies there").click();
        line.getByLabel("Hose in laying order").fill("3 x attack-175 + 1 x leader-3");
        line.getByLabel("What was swapped").fill("Length 117 burst on 30 May");
        line.getByText("Save what lies there").click();
        assertThat(line.getByText("its pressures rest on")).isVisible();
        assertThat(page.getByText("One line not as written.")).isVisible();
        assertThat(new AxeBuilder(page).analyze().getViolations()).isEmpty();
        assertThat(station.ports()
                        .leaves()
                        .find(LeafKind.BED, "engine-41")
                        .orElseThrow()
                        .text())
                .contains("{\"hose\":\"leader-3\",\"length\":\"50 ft\"}")
                .contains("Length 117 burst on 30 May");
        assertThat(station.ports().history().audit().holds()).isTrue();
    }

    private Locator button(String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }
}
