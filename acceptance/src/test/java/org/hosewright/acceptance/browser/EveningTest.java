package org.hosewright.acceptance.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.FileChooser;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Mouse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The training officer's evening, from the readings to the papers, in the browser. */
final class EveningTest extends AtStation {
    private static final Path EXAMPLES = Path.of(System.getProperty("hosewright.root"), "examples");

    @Test
    void nightShowsTheExamplesNumbersHold() {
        page.navigate(station.at("/drill"));
        assertThat(page.getByText("nine readings, eight used")).isVisible();
        // The examples' expected numbers with their bands: loss at 161 gpm 24.0 +- 0.7, meter 1.035 to 1.075.
        assertThat(leading(answer("hose loss of attack-175"))).isBetween(23.3, 24.7);
        assertThat(leading(answer("meter-1 reads high"))).isBetween(3.5, 7.5);
        Locator rule = page.locator("table.deliveries").first();
        assertThat(column(rule, 1)).containsExactly("77", "113", "149", "185");
        assertNear(rule, 2, 2, 148.7, 145.5, 143.9, 142.9);
        assertNear(rule, 5, 3, 90.0, 138.1, 186.1, 234.2);
        Locator book = page.locator("table.deliveries").nth(1);
        assertThat(column(book, 1)).containsExactly("110", "190", "270", "351");
        assertNear(book, 2, 2, 178, 189, 194, 197);
        assertNear(book, 4, 2, 74, 83, 87, 90);
        assertThat(page.locator(".verdict")).containsText(Pattern.compile("14[1-5] gpm where 161 gpm is wanted"));
        // 7: expected 189.6 psi, and about 237 at 750 ft were it used as well, beside 234.
        assertThat(reading("7")).containsText(Pattern.compile("Expected 1(8[789]|9[012]) psi, read 203 psi"));
        assertThat(reading("7")).containsText(Pattern.compile("pump gauge, length"));
        assertThat(reading("7").locator("tr").first()).containsText("set aside");
    }

    @Test
    void safety06SetAsideShownWithAndWithoutAndOverruled() {
        page.navigate(station.at("/drill"));
        assertThat(reading("7")).containsText(Pattern.compile("234 psi without it, 2[34]\\d psi with it"));
        button("Use reading 7").click();
        page.getByLabel("Why use it?").fill("the gate was seen open");
        button("Use reading 7").click();
        assertThat(page.getByText("nine readings, all used")).isVisible();
        assertThat(reading("7")).containsText("because the gate was seen open");
        button("Undo").click();
        assertThat(page.getByText("nine readings, eight used")).isVisible();
    }

    @Test
    void typingChecksEachRowAndSavesItHolds() {
        page.navigate(station.at("/drill"));
        button("Type a reading").click();
        page.keyboard().type("186");
        page.keyboard().press("Tab");
        page.keyboard().type("40");
        page.keyboard().press("Tab");
        page.keyboard().type("152");
        page.keyboard().press("Enter");
        assertThat(reading("10").locator("tr").first()).containsText("as expected");
        assertThat(page.getByText("ten readings")).isVisible();
        // The next reading waits with the same line, and the typing goes on in its pump cell.
        assertThat(page.locator(":focus")).hasAttribute("aria-label", "pump of reading 11");
        page.keyboard().type("260");
        page.keyboard().press("Tab");
        page.keyboard().type("50");
        page.keyboard().press("Tab");
        page.keyboard().type("169");
        page.keyboard().press("Enter");
        assertThat(reading("11")).containsText(Pattern.compile("walk the line|look|cannot"));
        assertThat(page.locator("[data-state=saved]")).isVisible();
    }

    @Test
    void safety14RiseSaidAsUpOrDown() {
        page.navigate(station.at("/drill"));
        Locator rise = page.getByLabel("rise of reading 9");
        assertThat(rise).hasValue("8 up");
        rise.fill("8");
        rise.press("Tab");
        assertThat(rise).hasValue("8 up");
        rise.fill("6 down");
        rise.press("Tab");
        assertThat(page.locator("[data-state=saved]")).isVisible();
        assertThat(station.ports()
                        .drills()
                        .findDrill(station.night())
                        .orElseThrow()
                        .rows()
                        .get(8)
                        .cells())
                .containsEntry("rise [ft]", "-6");
        rise.fill("-6");
        rise.press("Tab");
        assertThat(reading("9")).containsText(Pattern.compile("6 up or 6 down"));
    }

    @Test
    void badCellSaysWhatWouldDoHolds() {
        page.navigate(station.at("/drill"));
        page.getByLabel("pump of reading 3").fill("1,100");
        page.getByLabel("pump of reading 3").press("Tab");
        assertThat(reading("3").getByText(Pattern.compile("what would do"))).isVisible();
        assertThat(page.getByLabel("pump of reading 3")).hasValue("1,100");
        assertThat(page.getByText("eight readings, seven used")).isVisible();
    }

    @Test
    void acceptedNumbersReachKitReachAndPapersHold() {
        page.navigate(station.at("/drill"));
        button("Accept these numbers").click();
        assertThat(page.getByText(Pattern.compile("numbers were taken over into the kit")))
                .isVisible();
        assertThat(page.locator(".sub")).containsText("Taken over into the kit.");
        page.navigate(station.at("/kit"));
        assertThat(page.locator("li", new Page.LocatorOptions().setHasText("attack-175"))
                        .first())
                .containsText(Pattern.compile("9\\.\\d+ ± 0\\.\\d+ psi / 100 ft @ 100 gpm\\s*test drill-night"));
        page.navigate(station.at("/reach"));
        Locator row = page.locator("table.reaches tbody tr").first();
        assertThat(row).containsText("a test night");
        assertThat(leading(row.locator("td").nth(1))).isBetween(700.0, 850.0);
        assertThat(leading(row.locator("td").first()))
                .isLessThan(leading(row.locator("td").nth(1)));
        page.navigate(station.at("/papers"));
        assertThat(page.locator(".stamp")).hasText("DEMO - NOT FOR USE");
        for (String sheet : new String[] {"pump card", "discharge tags", "pocket card"}) {
            assertPdf(page.waitForDownload(() -> button("Print the " + sheet).click()));
        }
    }

    @Test
    void acceptingTakenBackHolds() {
        page.navigate(station.at("/drill"));
        button("Accept these numbers").click();
        button("Undo").click();
        assertThat(page.getByText("The kit is again as it was before.")).isVisible();
        assertThat(station.ports().kits().findLatest().orElseThrow().text())
                .isEqualTo(station.ports().kits().findRevision(1).orElseThrow().text());
    }

    @Test
    void reportPrintedAndReadingsWrittenOutHold() throws IOException {
        page.navigate(station.at("/drill"));
        assertPdf(page.waitForDownload(() -> button("Print the report").click()));
        Download csv = page.waitForDownload(() -> button("Write out as CSV").click());
        assertThat(Files.readString(csv.path(), StandardCharsets.UTF_8).replace("\r\n", "\n"))
                .isEqualTo(Files.readString(EXAMPLES.resolve("drill-night.readings.csv"))
                        .replace("\r\n", "\n"));
    }

    @Test
    void importedNightIsAnalysedHolds() {
        page.navigate(station.at("/drill"));
        button("New night").click();
        FileChooser chooser =
                page.waitForFileChooser(() -> button("Import readings (CSV)").click());
        chooser.setFiles(EXAMPLES.resolve("drill-night.readings.csv"));
        assertThat(page.getByLabel("Name", new Page.GetByLabelOptions().setExact(true)))
                .hasValue("drill night");
        page.getByLabel("Name", new Page.GetByLabelOptions().setExact(true)).fill("Second night");
        page.getByLabel("Day").fill("2026-05-12");
        button("Start with drill-night.readings.csv").click();
        assertThat(page.getByText(Pattern.compile("Second night.*nine readings, eight used")))
                .isVisible();
    }

    @Test
    void everyHeadlineShowsItsWorkingHolds() {
        page.navigate(station.at("/drill"));
        for (String what : new String[] {"hose loss of attack-175", "piping of crosslay-1", "meter-1 reads high"}) {
            Locator answer = page.locator(".answer", new Page.LocatorOptions().setHasText(what));
            answer.getByText("show the working").click();
            assertThat(answer.locator(".working li").first()).isVisible();
            if (!what.startsWith("meter")) {
                assertThat(leading(answer.locator(".working .result").last()))
                        .isEqualTo(leading(answer.locator(".value")));
            }
        }
        page.locator("table.deliveries").first().getByRole(AriaRole.LINK).last().click();
        assertThat(page.locator("#needed-750-ft li").first()).isVisible();
    }

    @Test
    void lineDrawnLongerByButtonAndByHandHolds() {
        page.navigate(station.at("/drill"));
        Locator drawing = page.getByRole(AriaRole.IMG);
        assertThat(drawing).hasAttribute("aria-label", Pattern.compile("550 ft, 8 ft up: 18\\d psi at the pump"));
        button("one section more").click();
        assertThat(drawing).hasAttribute("aria-label", Pattern.compile("600 ft, level: (19|20)\\d psi at the pump"));
        var box = page.locator("hw-profile circle.mk-tip, hw-profile circle")
                .last()
                .boundingBox();
        double x = box.x + box.width / 2;
        double y = box.y + box.height / 2;
        page.mouse().move(x, y);
        page.mouse().down();
        page.mouse().move(x - 100, y, new Mouse.MoveOptions().setSteps(5));
        page.mouse().up();
        assertThat(drawing).hasAttribute("aria-label", Pattern.compile("(450|500) ft, level: 1\\d\\d psi at the pump"));
        page.mouse().move(x - 300, y - 50);
        assertThat(page.locator(".mk-touched")).containsText(Pattern.compile("psi ± \\d+ at \\d+ ft"));
    }

    private Locator button(String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    private Locator reading(String name) {
        return page.locator("hw-readings tbody")
                .filter(new Locator.FilterOptions()
                        .setHas(page.getByLabel(
                                "pump of reading " + name, new Page.GetByLabelOptions().setExact(true))));
    }

    private Locator answer(String what) {
        return page.locator(".answer", new Page.LocatorOptions().setHasText(what))
                .locator(".value");
    }

    private static List<String> column(Locator table, int index) {
        return table.locator("tbody tr").all().stream()
                .map(row -> row.locator("th, td").nth(index).textContent().strip())
                .toList();
    }

    private static void assertNear(Locator table, int index, double band, double... expected) {
        var cells = column(table, index);
        assertThat(cells).hasSize(expected.length);
        for (int i = 0; i < expected.length; i++) {
            assertThat(Double.parseDouble(cells.get(i).split(" ", 2)[0]))
                    .isBetween(expected[i] - band, expected[i] + band);
        }
    }

    private static double leading(Locator cell) {
        return Double.parseDouble(cell.textContent().strip().split(" ", 2)[0]);
    }

    private static void assertPdf(Download download) {
        try {
            assertThat(Files.readAllBytes(download.path())).startsWith("%PDF-".getBytes(StandardCharsets.US_ASCII));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
