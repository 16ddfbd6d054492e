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
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.hosewright.ledger.history.Entry;
import org.junit.jupiter.api.Test;

/**
 * A company's first year at one browser, from an empty record: a night typed in, its numbers ordered and on the rig;
 * then the hose of the crosslays is replaced, and the order that follows makes every sheet of the first past.
 */
final class NightToRigTest extends AtStation {
    private static final Path EXAMPLES = Path.of(System.getProperty("hosewright.root"), "examples");
    private static final String CHIEF = "Chief Arden";
    private static final List<String> SHEETS = List.of("pump card", "discharge tags", "pocket card");

    @Override
    Station begin() {
        return Station.company(folder);
    }

    /** The first page looks for a kit that is not there yet, which a browser writes on its console. */
    @Override
    boolean isProvoked(String complaint) {
        return complaint.contains("status of 404");
    }

    @Test
    void safety16NightToTheRigAndWhatGoesStaleAfterwardsHold() throws IOException {
        importKit();
        typeNight();
        button("Accept these numbers").click();
        assertThat(page.locator(".sub")).containsText("Taken over into the kit.");
        keepStretch("5 Garden Court", "crosslay-1-200");
        keepStretch("Old Mill", "rear-250-300");
        checkBed();
        order(1);
        fitAndAcknowledge();
        makePractice();
        assertEveryNumberStands();

        replaceHoseOfTheCrosslays();
        assertOnlyTheCrosslaysAreStale();
        order(2);
        assertPast();
        assertHistory();
    }

    private void importKit() {
        page.navigate(station.at("/kit"));
        page.waitForFileChooser(() -> button("Import a kit (YAML)").click())
                .setFiles(EXAMPLES.resolve("brindle-falls.kit.yaml"));
        assertThat(page.getByText("attack-175").first()).isVisible();
        page.getByLabel("Your name").last().fill(CHIEF);
        page.getByLabel("Your name").last().press("Tab");
    }

    /** The readings of the example, typed cell by cell; what stays the same from one to the next is typed once. */
    private void typeNight() throws IOException {
        List<String> readings = Files.readAllLines(EXAMPLES.resolve("drill-night.readings.csv"));
        page.navigate(station.at("/drill"));
        label("Name").fill("Drill night");
        label("Day").fill("2026-05-12");
        button("Start with an empty table").click();
        page.locator("button.name").first().click();
        String[] first = readings.get(1).split(",", -1);
        label("discharge").fill(first[1]);
        label("hose").fill(first[2]);
        label("nozzle").fill(first[5]);
        label("pump gauge").fill(first[9]);
        label("tip gauge").fill(first[10]);
        label("meter").fill(first[11]);
        for (int reading = 1; reading < readings.size(); reading++) {
            typeReading(reading, readings.get(reading).split(",", -1));
        }
        assertThat(page.getByText("nine readings, eight used")).isVisible();
        assertThat(page.locator("[data-state=saved]")).isVisible();
    }

    private void typeReading(int reading, String[] cells) {
        cell("length", reading).fill(cells[3]);
        cell("rise", reading).fill(cells[4].equals("0") ? "level" : cells[4] + " up");
        cell("pump", reading).fill(cells[6]);
        cell("tip", reading).fill(cells[7]);
        cell("meter", reading).fill(cells[8]);
        cell("meter", reading).press("Enter");
        assertThat(cell("pump", reading + 1)).isVisible();
    }

    private void keepStretch(String address, String hosePackage) {
        page.navigate(station.at("/ground"));
        Locator form = page.locator("hw-stretch");
        form.getByLabel("Package").selectOption(hosePackage);
        form.getByLabel("From the rig to the door").fill("180 ± 3 ft");
        button("Estimate").click();
        assertThat(form.locator(".estimate .value")).isVisible();
        form.locator("summary").last().click();
        form.getByLabel("Address").fill(address);
        button("Keep the stretch").click();
        assertThat(button("Print the stretch sheet")).isVisible();
    }

    private void checkBed() {
        page.navigate(station.at("/bed"));
        button("All of engine-41 lies as written").click();
        assertThat(page.getByText("As written.")).isVisible();
    }

    private void order(int number) {
        page.navigate(station.at("/orders"));
        button("Propose").click();
        assertThat(page.getByText("Order " + number + " is proposed.")).isVisible();
        button("Sign order " + number).click();
        assertThat(page.locator("[data-standing='in force']")).isVisible();
        assertThat(page.getByText("Not yet confirmed on the rig.").first()).isVisible();
    }

    private void fitAndAcknowledge() throws IOException {
        assertThat(text(print("Print the discharge tags"))).contains("ORDER 1, SIGNED Signed by " + CHIEF);
        button("The new tags are on engine-41").click();
        assertThat(page.getByText("On the rig: confirmed by " + CHIEF)).isVisible();
        button("I have read it and will pump by it").click();
        assertThat(page.getByText("Read by " + CHIEF)).isVisible();
    }

    private void makePractice() throws IOException {
        button("Make a practice sheet for engine-41").click();
        assertThat(page.getByText("The practice sheet engine-41, by order 1 is kept."))
                .isVisible();
        assertThat(text(print("Print engine-41, by order 1"))).contains("what must the gauge show?", "ORDER 1, SIGNED");
    }

    private void assertEveryNumberStands() throws IOException {
        for (String sheet : SHEETS) {
            assertThat(text(print("Print the " + sheet)))
                    .contains("ORDER 1, SIGNED", "of order 1, ")
                    .doesNotContain("NOT FOR USE", "STALE");
        }
        page.navigate(station.at("/"));
        assertThat(rig()).containsText("0 stale");
        assertThat(rig()).containsText("Signed, on the rig, acknowledged, nothing stale.");
        assertThat(page.locator("[data-practice]")).containsText("every answer holds");
        assertThat(page.locator("[data-stretches]")).containsText("nothing that their sheets rest on has changed");
    }

    private void replaceHoseOfTheCrosslays() {
        page.navigate(station.at("/kit"));
        button("attack-175").click();
        label("loss").fill("10.8 psi / 100 ft @ 100 gpm");
        button("Save the changes").click();
        assertThat(page.getByText("attack-175 changed.")).isVisible();
    }

    private void assertOnlyTheCrosslaysAreStale() throws IOException {
        page.navigate(station.at("/orders"));
        Locator stale = page.locator("section.line:has(.wrong:text-is('stale'))");
        assertThat(stale.locator("h3")).hasText(new String[] {"crosslay-1-200 stale", "crosslay-2-200 stale"});
        assertThat(stale.getByText("The hose attack-175 changed.")).hasCount(2);
        int figures = stale.locator("td.figure").count();
        assertThat(page.getByRole(AriaRole.ALERT)).containsText(figures + " numbers of it are stale");
        Locator rests = page.locator("[data-rests]");
        assertThat(rests).containsText("1 of 2 stretch sheets stale. 5 Garden Court: The hose attack-175 changed.");
        assertThat(rests).containsText(Pattern.compile("12 of 12 practice problems stale\\."));
        assertThat(new AxeBuilder(page).analyze().getViolations()).isEmpty();
        for (String sheet : SHEETS) {
            assertThat(text(print("Print the " + sheet))).contains("ORDER 1, STALE", "The hose attack-175 changed.");
        }
        page.navigate(station.at("/"));
        assertThat(rig()).containsText(figures + " stale");
        assertThat(rig().locator(".wants"))
                .hasText(Pattern.compile("on 2 lines:\\s*The hose attack-175 changed\\.\\s*"));
        assertThat(page.locator("[data-stretches]")).containsText("1 of two stretches stale");
        assertThat(page.locator("[data-stretches] li b")).hasText(new String[] {"5 Garden Court"});
        page.navigate(station.at("/bed"));
        assertThat(page.getByText("As written.")).isVisible();
        assertStretch("5 Garden Court", true);
        assertStretch("Old Mill", false);
    }

    private void assertStretch(String address, boolean stale) throws IOException {
        page.navigate(station.at("/ground"));
        button(address).click();
        assertThat(button("Print the stretch sheet")).isVisible();
        assertThat(page.locator("[data-stale]")).hasCount(stale ? 1 : 0);
        String sheet = text(print("Print the stretch sheet"));
        assertThat(sheet.contains("STALE")).isEqualTo(stale);
    }

    /** A sheet of the first order, read back by its code, and its own print. */
    private void assertPast() throws IOException {
        assertThat(page.getByRole(AriaRole.ALERT)).hasCount(0);
        assertThat(line("crosslay-1-200").locator("tr.changed").first()).isVisible();
        assertThat(line("rear-250-300").locator("tr.changed")).hasCount(0);
        button("Withdraw order 2").waitFor();
        page.getByLabel("Text of the code").fill(code(1));
        button("Look it up").click();
        assertThat(page.getByText("Order 1 is superseded, as known on this device at 1 June 2026, 08:00."))
                .isVisible();
        page.getByLabel("Text of the code").fill(code(2));
        button("Withdraw order 2").click();
        assertThat(page.locator("[data-standing=withdrawn]")).isVisible();
        button("Look it up").click();
        assertThat(page.getByText("Order 2 is withdrawn, as known on this device at 1 June 2026, 08:00."))
                .isVisible();
        assertThat(text(print("Print the pump card"))).contains("WITHDRAWN");
    }

    private void assertHistory() {
        assertThat(station.ports().history().listLatest(99))
                .extracting(Entry::what)
                .startsWith("withdrawn order 2", "signed order 2", "proposed order 2")
                .containsSubsequence(
                        "acknowledged order 1 for engine-41",
                        "fitted order 1 for engine-41",
                        "signed order 1",
                        "proposed order 1");
        assertThat(station.ports().history().audit().holds()).isTrue();
    }

    private Locator rig() {
        return page.locator("[data-rig=engine-41]");
    }

    private Locator line(String hosePackage) {
        return page.locator("section.line", new Page.LocatorOptions().setHasText(hosePackage));
    }

    private Locator cell(String head, int reading) {
        return label(head + " of reading " + reading);
    }

    private Locator label(String text) {
        return page.getByLabel(text, new Page.GetByLabelOptions().setExact(true));
    }

    private Locator button(String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    private String code(long number) {
        String check = station.ports().orders().read().get(number).code();
        return "HOSEWRIGHT 1;order=" + number + ";engine=engine-41;check=" + check;
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
