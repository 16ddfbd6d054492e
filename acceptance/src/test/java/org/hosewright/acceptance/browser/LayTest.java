package org.hosewright.acceptance.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.hosewright.ledger.history.Act;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A lay built on its page from nothing, asked both ways, with the other line of its wye. */
final class LayTest {
    private static final Path EXAMPLES = Path.of(System.getProperty("hosewright.root"), "examples");

    @TempDir
    private Path folder;

    /** The examples' expected numbers: 145 psi for both legs, 180 gpm where the other one shuts, 117 psi for one. */
    @Test
    void gardenCourtBuiltFromNothingMatchesPractice() throws IOException {
        try (var station = Station.empty(folder);
                var eyes = new Eyes()) {
            String kit = Files.readString(EXAMPLES.resolve("garden-court.kit.yaml"));
            station.ports().kits().save(kit, 0, new Act("R. Vane", ""));
            Page page = eyes.laptop();
            page.navigate(station.at("/lay"));
            build(page);
            assertThat(page.locator(".pump-answer .value")).hasText("145");
            assertThat(page.locator(".second").nth(1)).containsText("If b shuts with the pump left at 145 psi");
            assertThat(page.locator(".second").nth(1)).containsText("a gets 180 gpm");
            assertWarningsStandBeforeTheNumber(page);
            button(page, "b shuts").click();
            assertThat(page.locator(".what-if td", new Page.LocatorOptions().setHasText("180 gpm, 63 psi")))
                    .isVisible();
            button(page, "Shut rear-3/b").click();
            assertThat(page.locator(".pump-answer .value")).hasText("117");
            assertThat(page.locator("#lay-text")).hasValue(java.util.regex.Pattern.compile("shut: true"));
            askAtThePump(page);
            noteStaysWithItsPiece(page);
            hydrantIsAsWeakAsTyped(page);
            assertThat(eyes.complaints()).isEmpty();
        }
    }

    private static void build(Page page) {
        page.getByLabel("Discharge").selectOption("rear-3");
        Locator line = leg(page, "rear-3");
        line.locator("select").first().selectOption("leader-3");
        line.locator("input").first().fill("400");
        line.locator("input").first().press("Tab");
        line.getByLabel("Ends in").first().selectOption("wye");
        for (String key : new String[] {"a", "b"}) {
            Locator hose = leg(page, "rear-3/" + key);
            hose.getByLabel("It goes").selectOption("up");
            assertThat(page.locator(".lay-answer .wrong")).containsText("A hose goes up: say how far");
            height(hose).fill("20");
            height(hose).press("Tab");
        }
    }

    private static Locator height(Locator hose) {
        return hose.getByLabel("by", new Locator.GetByLabelOptions().setExact(true));
    }

    /** What the other line does, and limits that are passed, are read before the number. */
    private static void assertWarningsStandBeforeTheNumber(Page page) {
        String order = (String) page.evaluate("[...document.querySelectorAll('.second, .pump-answer')]"
                + ".map(part => part.className.includes('second') ? 's' : 'n').join('')");
        assertThat(order).isEqualTo("ssn");
    }

    /** Left at 117 psi, the one tip keeps its 50 psi. */
    private static void askAtThePump(Page page) {
        page.getByLabel("Ask").selectOption("pump");
        assertThat(page.getByLabel("The pump stands at")).hasValue("117 psi");
        assertThat(page.locator(".lay-tips tbody tr").first()).containsText("161 gpm");
    }

    /** A note of the text that was taken stands where it stood after a piece was changed above. */
    private static void noteStaysWithItsPiece(Page page) throws IOException {
        String text = Files.readString(EXAMPLES.resolve("garden-court.two-lines.lay.yaml"))
                .replace("  - discharge: rear-3", "  # by the hedge\n  - discharge: rear-3");
        page.locator("#lay-text").fill(text);
        button(page, "Take this text").click();
        assertThat(page.locator(".pump-answer .value")).hasText("145");
        button(page, "Shut rear-3/b").click();
        assertThat(page.locator(".pump-answer .value")).hasText("117");
        assertThat(page.locator("#lay-text"))
                .hasValue(java.util.regex.Pattern.compile("  # by the hedge\n  - discharge: rear-3[^$]*shut: true"));
    }

    /** The examples' hydrant, at a share of its test that is typed: less is left at the intake. */
    private static void hydrantIsAsWeakAsTyped(Page page) {
        page.getByLabel("The hydrant gives, of its test").fill("60");
        page.getByLabel("The hydrant gives, of its test").press("Tab");
        button(page, "Show a weaker hydrant").click();
        assertThat(page.locator(".what-if h3")).containsText("If the hydrant gives 60 % of its test");
        assertThat(page.locator(".what-if tbody tr").nth(1)).containsText("intake");
    }

    private static Locator leg(Page page, String path) {
        return page.getByRole(
                AriaRole.GROUP,
                new Page.GetByRoleOptions().setName("Hose to " + path).setExact(true));
    }

    private static Locator button(Page page, String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }
}
