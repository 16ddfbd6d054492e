package org.hosewright.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import org.hosewright.ledger.history.Act;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What lies on a rig, through the API, and what it does to the order in force. */
final class BedRoutesTest extends AtDemo {
    private static final JsonMapper JSON = new JsonMapper();

    @BeforeEach
    void signOrder() throws IOException {
        ask("/orders", "{\"who\": \"T. Officer\"}");
        ask("/orders/1/steps", "{\"who\": \"Chief\", \"kind\": \"signed\"}");
    }

    @Test
    void safety17OnlyTheLineThatLiesDifferentlyIsStaleHolds() throws IOException {
        check(asWritten("engine-41"), 0);
        assertThat(stale()).isEmpty();
        ObjectNode bed = asWritten("engine-41");
        ((ObjectNode) bed.path("lines").path(0)).put("hose", "3 x attack-175");
        check(bed, 1);
        String changed = bed.path("lines").path(0).path("package").asText();
        assertThat(stale()).containsExactly(changed);
        assertThat(running.get("/api/v1/station").body())
                .contains("lies as 150 ft of attack-175; its pressures rest on")
                .contains("stale on 1 line:");
        assertThat(running.get("/api/v1/orders/1").body()).contains("lies as 150 ft of attack-175");
        check(asWritten("engine-41"), 2);
        assertThat(stale()).isEmpty();
    }

    @Test
    void bedIsQuietAboutOrdersWhereThereIsNoneAndSaysItsAgeHolds() throws IOException {
        check(asWritten("engine-41"), 0);
        JsonNode rig = JSON.readTree(running.get("/api/v1/beds").body())
                .path("engines")
                .path(0);
        assertThat(rig.path("days").asInt(-1)).isZero();
        assertThat(rig.path("lines").path(0).path("ordered").asBoolean()).isTrue();
        ask("/orders/1/steps", "{\"who\": \"Chief\", \"kind\": \"withdrawn\"}");
        rig = JSON.readTree(running.get("/api/v1/beds").body()).path("engines").path(0);
        assertThat(rig.path("lines").findValues("ordered")).isNotEmpty().noneMatch(JsonNode::asBoolean);
    }

    @Test
    void oldVersionOfABedRefused() throws IOException {
        check(asWritten("engine-41"), 0);
        assertThat(post(asWritten("engine-41").put("basedOn", 0)).statusCode()).isEqualTo(409);
        ObjectNode bed = asWritten("engine-41").put("basedOn", 1);
        ((ObjectNode) bed.path("lines").path(0)).put("hose", "200");
        assertThat(post(bed).statusCode()).isEqualTo(422);
        ((ObjectNode) bed.path("lines").path(0)).put("hose", "4 x garden");
        assertThat(post(bed).statusCode()).isEqualTo(422);
        assertThat(post(asWritten("engine-41").put("basedOn", 1).put("reserve", "engine-41"))
                        .statusCode())
                .isEqualTo(422);
    }

    @Test
    void reserveRigGoesByItsOwnOrderHolds() throws IOException {
        var kits = running.ports().kits();
        var kit = kits.findLatest().orElseThrow();
        String reserve = """
                engines:
                  engine-42:
                    pump: { rated: 1500 gpm, ceiling: 250 psi }
                    discharges:
                      crosslay-1: { size: 2 in, loss: 2.06 psi @ 100 gpm }
                """;
        kits.save(kit.text().replace("engines:\n", reserve), kit.version(), new Act("Quartermaster", "reserve rig"));
        check(asWritten("engine-41").put("reserve", "engine-42"), 0);
        JsonNode engine = JSON.readTree(running.get("/api/v1/station").body())
                .path("orders")
                .path("engines")
                .path(0);
        assertThat(engine.path("id").asText()).isEqualTo("engine-41");
        assertThat(engine.path("serving").asText())
                .isEqualTo("engine-42 serves in its place; the order of engine-42 applies, not this one's.");
        assertThat(engine.path("wants")).isEmpty();
        assertThat(running.get("/api/v1/station").body())
                .contains("In service in the place of engine-41, by its own order.")
                .contains("The order has no number for it.");
    }

    private void check(ObjectNode bed, long basedOn) {
        assertThat(post(bed.put("basedOn", basedOn)).statusCode()).isEqualTo(200);
    }

    private HttpResponse<String> post(ObjectNode bed) {
        return running.post("/api/v1/beds/engine-41", bed.toString());
    }

    /** The bed as the kit has it. */
    private ObjectNode asWritten(String engine) throws IOException {
        ObjectNode bed = JSON.createObjectNode().put("who", "D. Driver");
        for (JsonNode rig : JSON.readTree(running.get("/api/v1/beds").body()).path("engines")) {
            if (rig.path("id").asText().equals(engine)) {
                for (JsonNode line : rig.path("lines")) {
                    ObjectNode one = ((ObjectNode) line.path("written")).deepCopy();
                    one.put("package", line.path("package").asText()).put("note", "");
                    one.putArray("marks").add("117");
                    bed.withArray("lines").add(one);
                }
            }
        }
        return bed;
    }

    private List<String> stale() throws IOException {
        JsonNode order = JSON.readTree(running.get("/api/v1/orders/1").body());
        JsonNode lines = order.path("engines").path(0).path("lines");
        assertThat(lines.size()).as("lines of the order").isGreaterThan(1);
        List<String> stale = new ArrayList<>();
        for (JsonNode line : lines) {
            if (!line.path("stale").isEmpty()) {
                stale.add(line.path("package").asText());
            }
        }
        return stale;
    }

    private void ask(String path, String json) {
        assertThat(running.post("/api/v1" + path, json).statusCode()).isEqualTo(200);
    }
}
