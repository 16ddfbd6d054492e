package org.hosewright.acceptance.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.io.InputStream;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.history.Entry;
import org.hosewright.ledger.kit.KitRevision;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** From a proposal to a signed, fitted and acknowledged order; then a hose is replaced, and the next order follows. */
final class OrderStoryTest extends AtStation {
    @BeforeEach
    void open() {
        page.navigate(station.at("/orders"));
    }

    @Test
    void safety16OrderFromProposalToTheRigAndTheNextHolds() throws IOException {
        sign(1);
        button("The new tags are on engine-41").click();
        assertThat(page.getByText("On the rig: confirmed by Chief Arden")).isVisible();
        button("I have read it and will pump by it").first().click();
        assertThat(page.getByText("Read by Chief Arden.")).isVisible();
        assertThat(text(print("Print the pump card"))).contains("order 1, ");

        replaceTheHose();
        page.reload();
        assertThat(page.getByText(Pattern.compile("of it (is|are) stale"))).isVisible();
        Locator stale = page.locator("section.line", new Page.LocatorOptions().setHasText("crosslay-1-200"));
        assertThat(stale.getByText("The hose attack-175 changed.")).isVisible();
        assertThat(new AxeBuilder(page).analyze().getViolations()).isEmpty();

        sign(2);
        assertThat(page.locator("[data-standing='in force']")).hasText("in force");
        assertThat(page.getByText("Not yet confirmed on the rig.").first()).isVisible();
        assertThat(page.getByText(Pattern.compile("stale: what"))).hasCount(0);
        button("Order 1").click();
        assertThat(page.locator("[data-standing=superseded]")).isVisible();
        page.getByLabel("Text of the code").fill(code(1));
        button("Look it up").click();
        assertThat(page.getByText("Order 1 is superseded, as known on this device at 1 June 2026"))
                .isVisible();
        assertThat(station.ports().history().listLatest(99))
                .extracting(Entry::what)
                .startsWith(
                        "signed order 2", "proposed order 2", "saved the kit", "acknowledged order 1 for engine-41");
        assertThat(station.ports().history().audit().holds()).isTrue();
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

    private void replaceTheHose() {
        KitRevision kit = station.ports().kits().findLatest().orElseThrow();
        String text = kit.text().replaceFirst("(attack-175:[^\n]*loss: )[0-9.]+", "$19.90");
        assertThat(text).isNotEqualTo(kit.text());
        station.ports().kits().save(text, kit.version(), new Act("Quartermaster", "new batch on the crosslays"));
    }

    private String code(long number) {
        String check = station.ports().orders().read().get(number).code();
        return "HOSEWRIGHT 1;order=" + number + ";engine=engine-41;check=" + check;
    }

    private Locator button(String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    private Download print(String name) {
        return page.waitForDownload(() -> button(name).click());
    }

    private static String text(Download file) throws IOException {
        try (InputStream in = file.createReadStream();
                var pdf = Loader.loadPDF(in.readAllBytes())) {
            return new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
        }
    }
}
