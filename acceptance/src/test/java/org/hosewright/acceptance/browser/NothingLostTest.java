package org.hosewright.acceptance.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.hosewright.ledger.drill.DrillChange;
import org.hosewright.ledger.drill.DrillRow;
import org.hosewright.ledger.history.Act;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What a person typed stays, whatever happens to the program, the page or somebody else's hand. */
final class NothingLostTest extends AtStation {
    /** The program is stopped under the page's feet: a browser says so. */
    @Override
    boolean isProvoked(String complaint) {
        return true;
    }

    @BeforeEach
    void open() {
        page.navigate(station.at("/drill"));
        assertThat(page.getByText("nine readings, eight used")).isVisible();
    }

    @Test
    void programStoppedWhileTypingHolds() {
        station.stop();
        cell("pump", 10).fill("186");
        cell("tip", 10).fill("40");
        cell("flow", 10).fill("152");
        cell("flow", 10).press("Tab");
        assertThat(page.locator("[data-state=kept]")).containsText("kept in this browser");
        assertThat(cell("pump", 10)).hasValue("186");
        station.startAgain();
        assertThat(page.locator("[data-state=saved]")).isVisible();
        assertThat(page.getByText("ten readings")).isVisible();
        assertThat(row(9)).containsEntry("pump [psi]", "186").containsEntry("flow [gpm]", "152");
    }

    @Test
    void pageClosedWhileTypingHolds() {
        station.stop();
        cell("pump", 10).fill("186");
        cell("tip", 10).fill("40");
        page.close();
        station.startAgain();
        page = eyes.again(page);
        page.navigate(station.at("/drill"));
        assertThat(cell("pump", 10)).hasValue("186");
        assertThat(cell("tip", 10)).hasValue("40");
        assertThat(page.getByText("ten readings")).isVisible();
        assertThat(page.locator("[data-state=saved]")).isVisible();
        assertThat(row(9)).containsEntry("pump [psi]", "186");
    }

    @Test
    void restartKeepsAllHolds() {
        cell("pump", 10).fill("186");
        cell("tip", 10).fill("40");
        cell("tip", 10).press("Tab");
        assertThat(page.locator("[data-state=saved]")).isVisible();
        page.getByText("Accept these numbers").click();
        assertThat(page.locator(".sub")).containsText("Taken over into the kit.");
        String text = station.ports().kits().findLatest().orElseThrow().text();
        station.stop();
        station.startAgain();
        page.reload();
        assertThat(page.getByText("ten readings")).isVisible();
        assertThat(page.locator(".sub")).containsText("Taken over into the kit.");
        assertThat(station.ports().kits().findLatest().orElseThrow().text()).isEqualTo(text);
    }

    @Test
    void changeBySomebodyElseShowsBothHolds() {
        DrillRow stored = station.ports()
                .drills()
                .findDrill(station.night())
                .orElseThrow()
                .rows()
                .get(2);
        cell("pump", 3).fill("111");
        station.ports().drills().change(station.night(), List.of(changed(stored, "112")), new Act("B. Quill", ""));
        cell("pump", 3).press("Tab");
        assertThat(page.getByText("theirs 112, yours 111")).isVisible();
        assertThat(page.locator("[data-state=both]")).isVisible();
        page.getByText("Keep yours").click();
        assertThat(page.locator("[data-state=saved]")).isVisible();
        assertThat(page.getByText("theirs 112, yours 111")).isHidden();
        assertThat(row(2)).containsEntry("pump [psi]", "111");
    }

    @Test
    void removedReadingStaysInTheRecordHolds() {
        page.locator("button.name").nth(8).click();
        page.getByText("Remove reading 9").click();
        assertThat(page.getByText("eight readings, seven used")).isVisible();
        assertThat(station.ports()
                        .drills()
                        .findDrill(station.night())
                        .orElseThrow()
                        .rows())
                .hasSize(9);
        page.getByText("Undo").click();
        assertThat(page.getByText("nine readings, eight used")).isVisible();
    }

    @Test
    void refusedKitKeepsTheTextTypedHolds() {
        page.navigate(station.at("/kit"));
        Locator text = page.getByLabel("The kit as text");
        String broken = text.inputValue().replace("1 3/4 in", "1 3/4");
        text.fill(broken);
        page.getByText("Save the text").click();
        assertThat(page.getByText(Pattern.compile("line 8.*diameter.*'1 3/4'.*what would do")))
                .isVisible();
        assertThat(text).hasValue(broken);
        assertThat(station.ports().kits().findLatest().orElseThrow().version()).isEqualTo(1);
    }

    private static DrillChange changed(DrillRow row, String pump) {
        var cells = new LinkedHashMap<>(row.cells());
        cells.put("pump [psi]", pump);
        return new DrillChange.EditRow(row.id(), row.version(), cells);
    }

    private Map<String, String> row(int index) {
        return station.ports()
                .drills()
                .findDrill(station.night())
                .orElseThrow()
                .rows()
                .get(index)
                .cells();
    }

    private Locator cell(String head, int reading) {
        String name = (head.equals("flow") ? "meter" : head) + " of reading " + reading;
        return page.getByLabel(name, new Page.GetByLabelOptions().setExact(true));
    }
}
