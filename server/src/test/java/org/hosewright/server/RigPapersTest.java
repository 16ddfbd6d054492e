package org.hosewright.server;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.hosewright.ledger.history.Act;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The sheets of one rig among two: marked for what concerns that rig, and for nothing else. */
final class RigPapersTest extends AtDemo {
    private static final List<String> SHEETS = List.of("pump-card", "tags", "pocket-card");
    private static final String RIG_42 = """
            engines:
              engine-42:
                pump: { rated: 1500 gpm, ceiling: 250 psi }
                discharges:
                  deck-1: { size: 2 1/2 in, loss: 2.06 psi @ 100 gpm }
            """;
    private static final String LINE_42 = """
            packages:
              deck-42: { engine: engine-42, discharge: deck-1, hose: 4 x attack-250, nozzle: inch-eighth, target: 250 gpm, least: 200 gpm }
            """;

    @BeforeEach
    void orderForTwoRigs() {
        kit("engines:\n", RIG_42);
        kit("packages:\n", LINE_42);
        ask("/orders", "{\"who\": \"T. Officer\"}");
        ask("/orders/1/steps", "{\"who\": \"Chief\", \"kind\": \"signed\"}");
    }

    @Test
    void safety17OnlyTheSheetsOfTheRigThatIsConcernedAreMarkedHold() throws IOException {
        kit(
                "attack-175: { diameter: 1 3/4 in, section: 50 ft, loss: 15.5",
                "attack-175: { diameter: 1 3/4 in, section: 50 ft, loss: 14.1");
        for (String sheet : SHEETS) {
            assertThat(sheet(sheet, "&engine=engine-41")).contains("DEMO, STALE", "The hose attack-175 changed.");
            assertThat(sheet(sheet, "&engine=engine-42"))
                    .contains("200 ft")
                    .doesNotContain("STALE", "The hose attack-175");
            assertThat(sheet(sheet, "")).contains("DEMO, STALE");
        }
        assertThat(scanned("engine-41")).contains("Order 1 is in force; numbers on that sheet are stale, as known");
        assertThat(scanned("engine-42")).contains("Order 1 is in force, as known");
        assertThat(scanned("engine-41+engine-42")).contains("are stale");
        assertThat(scanned("all")).contains("are stale");
    }

    @Test
    void safety16CardOfAReplacedRigNamesTheOneThatServesHolds() throws IOException {
        String says =
                "While engine-42 serves in the place of engine-41, go by the card of engine-42 on it, never by this one.";
        assertThat(sheet("pump-card", "")).doesNotContain(says);
        running.post(
                "/api/v1/beds/engine-41",
                "{\"who\": \"D. Driver\", \"basedOn\": 0, \"reserve\": \"engine-42\", \"lines\": []}");
        for (String sheet : SHEETS) {
            assertThat(sheet(sheet, "&engine=engine-41")).contains(says);
            assertThat(sheet(sheet, "&engine=engine-42")).doesNotContain(says);
        }
        assertThat(running.get("/api/v1/papers?engine=engine-41").body()).contains(says);
        assertThat(running.get("/api/v1/papers?engine=engine-42").body()).doesNotContain(says);
    }

    private void kit(String from, String to) {
        var kits = running.ports().kits();
        var kit = kits.findLatest().orElseThrow();
        assertThat(kit.text()).contains(from);
        kits.save(kit.text().replace(from, to), kit.version(), new Act("Quartermaster", "a change"));
    }

    private String scanned(String engine) {
        String check = running.ports().orders().read().get(1).code();
        String code = "HOSEWRIGHT 1;order=1;engine=" + engine + ";check=" + check;
        return running.post("/api/v1/sheet-codes", "{\"text\": \"" + code + "\"}")
                .body();
    }

    private String sheet(String name, String asked) throws IOException {
        String path = "/api/v1/papers/" + name + ".pdf?order=1" + asked;
        var request = HttpRequest.newBuilder(running.address().resolve(path)).build();
        try (InputStream in = HttpClient.newHttpClient()
                        .send(request, BodyHandlers.ofInputStream())
                        .body();
                var pdf = Loader.loadPDF(in.readAllBytes())) {
            return new PDFTextStripper().getText(pdf).replaceAll("[\\s\\u00a0\\u202f]+", " ");
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    private void ask(String path, String json) {
        assertThat(running.post("/api/v1" + path, json).statusCode()).isEqualTo(200);
    }
}
