package org.hosewright.acceptance.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The evening with the keyboard alone: no click in it. */
final class KeyboardTest {
    /** More tabs than any page has stops. */
    private static final int MOST_TABS = 200;

    @TempDir
    private Path folder;

    @Test
    void eveningByKeyboardAloneHolds() {
        try (var station = Station.demo(folder);
                var eyes = new Eyes()) {
            Page page = eyes.laptop();
            page.navigate(station.at("/"));
            tabTo(page, "drill");
            page.keyboard().press("Enter");
            assertThat(page.getByText("nine readings, eight used")).isVisible();
            tabTo(page, "Type a reading");
            page.keyboard().press("Enter");
            typeReading(page);
            assertThat(page.getByText("ten readings, nine used")).isVisible();
            page.keyboard().press("ArrowUp");
            assertThat(page.locator(":focus")).hasAttribute("aria-label", "pump of reading 10");
            overrule(page);
            tabTo(page, "Accept these numbers");
            page.keyboard().press("Enter");
            assertThat(page.locator(".sub")).containsText("Taken over into the kit.");
            assertThat(eyes.complaints()).isEmpty();
        }
    }

    private static void typeReading(Page page) {
        for (String cell : new String[] {"190", "40", "153"}) {
            page.keyboard().type(cell);
            page.keyboard().press(cell.equals("153") ? "Enter" : "Tab");
        }
    }

    private static void overrule(Page page) {
        tabTo(page, "Use reading 7");
        page.keyboard().press("Enter");
        page.keyboard().type("seen with my own eyes");
        page.keyboard().press("Enter");
        assertThat(page.getByText(Pattern.compile("ten readings, all used"))).isVisible();
    }

    /** Tabs on until a thing of a name has the focus, which must then be seen. */
    private static void tabTo(Page page, String name) {
        for (int i = 0; i < MOST_TABS; i++) {
            page.keyboard().press("Tab");
            String focused = (String) page.evaluate("(document.activeElement?.textContent ?? '').trim()");
            if (focused.equals(name)) {
                assertThat((String) page.evaluate("getComputedStyle(document.activeElement).outlineStyle"))
                        .isEqualTo("solid");
                return;
            }
        }
        throw new AssertionError("The keyboard does not reach '" + name + "'.");
    }
}
