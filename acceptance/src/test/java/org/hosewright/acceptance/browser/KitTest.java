package org.hosewright.acceptance.browser;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.regex.Pattern;
import org.hosewright.files.kit.KitDocument;
import org.hosewright.hydraulics.equipment.SmoothBore;
import org.hosewright.ledger.kit.Kit;
import org.junit.jupiter.api.Test;

/** A company's kit from nothing, by forms, by file and as text. */
final class KitTest extends AtStation {
    private static final Path EXAMPLES = Path.of(System.getProperty("hosewright.root"), "examples");

    @Override
    Station begin() {
        return Station.empty(folder);
    }

    /** A refusal is an answer (404 for no kit yet, 422 for a bad value), which a browser still writes on its console. */
    @Override
    boolean isProvoked(String complaint) {
        return complaint.contains("status of 404") || complaint.contains("status of 422");
    }

    @Test
    void emptyPagesTeachTheNextStepHolds() {
        for (String path : new String[] {
            "/",
            "/bed",
            "/plan",
            "/drill",
            "/trial",
            "/reach",
            "/ground",
            "/papers",
            "/orders",
            "/neighbours",
            "/kit",
            "/people",
            "/history"
        }) {
            page.navigate(station.at(path));
            assertThat(page.locator(".empty")).isVisible();
            assertThat(new AxeBuilder(page).analyze().getViolations()).as(path).isEmpty();
        }
    }

    @Test
    void everyKindByFormsHolds() {
        page.navigate(station.at("/kit"));
        button("Begin in feet, psi and gpm").click();
        add(
                "hose",
                "attack-175",
                Map.of("diameter", "1 3/4 in", "section", "50 ft", "loss", "9.19 psi / 100 ft @ 100 gpm"));
        add("nozzle", "seven-eighths", Map.of("bore", "7/8 in", "works at", "50 psi"), "kind", "smooth-bore");
        add(
                "instrument",
                "gauge-a",
                Map.of("accuracy, one standard deviation", "0.5 % of range", "range", "400 psi"),
                "kind",
                "pressure-gauge");
        button("Add an engine").click();
        fill("Name", "engine-41");
        fill("the company's highest pump pressure", "250 psi");
        fill("Another discharge", "crosslay-1");
        button("Add the discharge").click();
        fill("crosslay-1: size", "2 in");
        button("Add this engine").click();
        assertThat(page.getByText("engine-41 added.")).isVisible();
        button("Add a package").click();
        fill("Name", "crosslay-1-200");
        choose("engine", "engine-41");
        choose("discharge", "crosslay-1");
        choose("nozzle", "seven-eighths");
        fill("hose", "4 x attack-175");
        button("Add this package").click();
        assertThat(page.getByText("crosslay-1-200 added.")).isVisible();
        Kit kit = kit();
        assertThat(kit.packages()).containsOnlyKeys("crosslay-1-200");
        assertThat(kit.nozzles().get("seven-eighths").nozzle().rated("")).isInstanceOf(SmoothBore.class);
        assertThat(kit.engines().get("engine-41").engine().discharges()).containsOnlyKeys("crosslay-1");
    }

    @Test
    void editUndoneAndBadValueKeptHolds() throws IOException {
        importExample("brindle-falls.kit.yaml");
        String before = text();
        entry("attack-175").click();
        fill("loss", "9.19");
        button("Save the changes").click();
        assertThat(page.getByText(Pattern.compile("loss.*'9.19'.*what would do")))
                .isVisible();
        assertThat(page.getByLabel("loss", new Page.GetByLabelOptions().setExact(true)))
                .hasValue("9.19");
        fill("loss", "9.19 psi / 100 ft @ 100 gpm");
        button("Save the changes").click();
        assertThat(page.getByText("attack-175 changed.")).isVisible();
        assertThat(text())
                .contains("loss: 9.19 psi / 100 ft @ 100 gpm")
                .contains("# The whole kit of the invented company");
        button("Undo").click();
        assertThat(page.getByText("15.5 psi / 100 ft @ 100 gpm").first()).isVisible();
        assertThat(text()).isEqualTo(before);
    }

    @Test
    void breakApartSettingAddedByFormHolds() throws IOException {
        importExample("brindle-falls.kit.yaml");
        entry("slug-fog").click();
        fill("Another setting", "tip");
        button("Add the setting").click();
        fill("tip: bore", "1 in");
        fill("tip: works at", "50 psi");
        button("Save the changes").click();
        assertThat(page.getByText("slug-fog changed.")).isVisible();
        assertThat(kit().nozzles().get("slug-fog").nozzle().settings()).containsOnlyKeys("fog", "slug", "tip");
    }

    @Test
    void writtenOutReadsBackTheSameHolds() throws IOException {
        importExample("drill-night.kit.yaml");
        Path file =
                page.waitForDownload(() -> button("Write out as YAML").click()).path();
        assertThat(Files.readString(file, StandardCharsets.UTF_8))
                .isEqualTo(Files.readString(EXAMPLES.resolve("drill-night.kit.yaml"), StandardCharsets.UTF_8));
    }

    private void importExample(String name) throws IOException {
        page.navigate(station.at("/kit"));
        page.waitForFileChooser(() -> button("Import a kit (YAML)").click()).setFiles(EXAMPLES.resolve(name));
        assertThat(page.getByText("attack-175").first()).isVisible();
    }

    private void add(String kind, String name, Map<String, String> fields, String... chosen) {
        button((kind.startsWith("i") ? "Add an " : "Add a ") + kind).click();
        fill("Name", name);
        if (chosen.length > 0) {
            choose(chosen[0], chosen[1]);
        }
        fields.forEach(this::fill);
        button("Add this " + kind).click();
        assertThat(page.getByText(name + " added.")).isVisible();
    }

    private void fill(String label, String text) {
        page.getByLabel(label, new Page.GetByLabelOptions().setExact(true)).fill(text);
    }

    private void choose(String label, String option) {
        page.getByRole(
                        AriaRole.COMBOBOX,
                        new Page.GetByRoleOptions().setName(label).setExact(true))
                .selectOption(option);
    }

    private Locator button(String name) {
        return page.getByRole(
                AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
    }

    private Locator entry(String id) {
        return button(id);
    }

    private String text() {
        return station.ports().kits().findLatest().orElseThrow().text();
    }

    private Kit kit() {
        return KitDocument.of(text(), "kit").kit();
    }
}
