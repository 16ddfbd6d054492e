package org.hosewright.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import org.hosewright.files.exchange.ExchangeFile;
import org.hosewright.ledger.leaf.LeafKind;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Neighbours' files through the API. */
final class ExchangeRoutesTest extends AtDemo {
    private static final JsonMapper JSON = new JsonMapper();

    private byte[] file;

    @BeforeEach
    void readFile() throws IOException {
        file = Files.readAllBytes(Path.of(System.getProperty("hosewright.root"), "examples", "aldwick-vale.exchange"));
    }

    @Test
    void aNeighbourIsTakenOutAndInAgainAndOurKitStaysHolds() throws IOException {
        JsonNode first = exchange();
        JsonNode vale = first.path("neighbours").path(0);
        assertThat(vale.path("company").asText()).isEqualTo("Aldwick Vale Brigade");
        assertThat(vale.path("standing").asText()).isEqualTo("held");
        assertThat(vale.toString()).contains("We have a hose attack-175 too").contains("87 psi (600 kPa)");
        assertThat(look(file).path("held").asBoolean()).isTrue();
        String id = vale.path("id").asText();
        ask("/exchange/neighbours/" + id + "/taken-out", "{\"who\": \"R. Vane\"}", 200);
        assertThat(exchange().path("neighbours")).isEmpty();
        assertThat(look(file).path("firstUse").asBoolean()).isTrue();
        assertThat(keep("", 422)).contains("by telephone");
        assertThat(keep("0".repeat(32), 422)).contains("nothing was taken in");
        assertThat(exchange().path("neighbours")).isEmpty();
        keep(vale.path("fingerprint").asText(), 200);
        assertThat(exchange().path("neighbours")).hasSize(1);
        assertThat(running.ports().kits().latestVersion()).isEqualTo(1);
        assertThat(running.ports().orders().read().revisions()).isEmpty();
    }

    @Test
    void whatWeHandOverIsSignedAndStaleOrUnsignedNumbersAreNotHandedOverHolds() throws IOException {
        String all = "{\"who\": \"R. Vane\", \"packages\": [\"crosslay-1-200\"]}";
        assertThat(ask("/exchange/handovers", all, 422)).contains("sign one first");
        ask("/orders", "{\"who\": \"R. Vane\"}", 200);
        ask("/orders/1/steps", "{\"who\": \"Chief\", \"kind\": \"signed\"}", 200);
        ask("/exchange/handovers", all, 200);
        String signed = running.get("/api/v1/exchange/handed.exchange").body();
        var read = ExchangeFile.read(signed.getBytes(StandardCharsets.UTF_8), "ours");
        assertThat(read.handover().packages()).hasSize(1);
        assertThat(signed).contains("1 1/2 in NH").contains("\"by\":\"Chief\"");
        assertThat(ask("/exchange/arrivals/look", arrival(signed.getBytes(StandardCharsets.UTF_8)), 422))
                .contains("our own");
        String code = "{\"text\": \"HOSEWRIGHT 1;key=" + read.fingerprint().digits() + ";file=" + read.check() + "\"}";
        assertThat(ask("/exchange/sheet-codes", code, 200))
                .contains("it is held, as known on this device at 1 June 2026");
        ask("/exchange/withdrawals", "{\"who\": \"R. Vane\", \"why\": \"Hose changed.\"}", 200);
        assertThat(ask("/exchange/sheet-codes", code, 200)).contains("do not use it");
        assertThat(running.ports().leaves().list(LeafKind.HANDOVER))
                .singleElement()
                .satisfies(head -> assertThat(head.version()).isEqualTo(2));
        String secret = Files.readString(folder.resolve("exchange.key"))
                .lines()
                .toList()
                .get(1);
        assertThat(running.get("/api/v1/exchange").body()).doesNotContain(secret);
    }

    @Test
    void aChangedFileIsRefused() throws IOException {
        file[file.length / 2] ^= 1;
        assertThat(ask("/exchange/arrivals/look", arrival(file), 422)).contains("CHANGED");
        assertThat(ask("/exchange/arrivals/look", arrival(new byte[ExchangeFile.LIMIT + 1]), 422))
                .contains("at most 200000 bytes");
        assertThat(ask("/exchange/arrivals/look", "{\"file\": \"?\"}", 422)).contains("base64");
        assertThat(running.get("/api/v1/exchange/handed.exchange").statusCode()).isEqualTo(404);
        assertThat(running.get("/api/v1/exchange/neighbours/nobody/sheet.pdf").statusCode())
                .isEqualTo(404);
    }

    private JsonNode exchange() throws IOException {
        return JSON.readTree(running.get("/api/v1/exchange").body());
    }

    private JsonNode look(byte[] bytes) throws IOException {
        return JSON.readTree(ask("/exchange/arrivals/look", arrival(bytes), 200));
    }

    private String keep(String fingerprint, int status) {
        String told = fingerprint.isEmpty() ? "" : ", \"fingerprint\": \"" + fingerprint + "\"";
        return ask(
                "/exchange/neighbours",
                "{\"who\": \"R. Vane\", \"file\": \"" + base64(file) + "\"" + told + "}",
                status);
    }

    private static String arrival(byte[] bytes) {
        return "{\"file\": \"" + base64(bytes) + "\", \"name\": \"vale.exchange\"}";
    }

    private static String base64(byte[] bytes) {
        return Base64.getEncoder().encodeToString(bytes);
    }

    private String ask(String path, String json, int status) {
        var answer = running.post("/api/v1" + path, json);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(status);
        return answer.body();
    }
}
