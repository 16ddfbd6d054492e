package org.hosewright.acceptance.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.hosewright.ledger.leaf.LeafKind;
import org.junit.jupiter.api.Test;

/** A neighbour is taken out, its file is looked at, and it is kept only with the fingerprint told by telephone. */
final class NeighboursTest extends AtStation {
    private static final Path FILE =
            Path.of(System.getProperty("hosewright.root"), "examples", "aldwick-vale.exchange");
    /** As a phone held close takes it [dots an inch]. */
    private static final int SHARP_DPI = 200;

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

    @Test
    void photographOfTheirSheetIsLookedUpHolds() throws IOException {
        page.navigate(station.at("/neighbours"));
        Download sheet = page.waitForDownload(() -> button("Print their sheet").click());
        var photograph = new ByteArrayOutputStream();
        try (InputStream in = sheet.createReadStream();
                var pdf = Loader.loadPDF(in.readAllBytes())) {
            ImageIO.write(new PDFRenderer(pdf).renderImageWithDPI(0, SHARP_DPI), "png", photograph);
        }
        page.getByLabel("Photograph")
                .setInputFiles(new FilePayload("sheet.png", "image/png", photograph.toByteArray()));
        assertThat(page.getByText("This sheet is of the last file of Aldwick Vale Brigade that is held"))
                .isVisible();
    }

    private Locator button(String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }
}
