package org.hosewright.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The station's morning look at one rig, from no order to one that is on the rig and read. */
final class StationRoutesTest extends AtDemo {
    private static final JsonMapper JSON = new JsonMapper();

    @Test
    void rigWantsOneThingLessWithEachStepHolds() throws IOException {
        assertThat(wants()).containsExactly("No order is signed for it.");
        ask("/orders", "{\"who\": \"T. Officer\"}");
        assertThat(wants()).containsExactly("No order is signed for it.");
        step("signed", "");
        assertThat(wants())
                .containsExactly(
                        "Nobody has confirmed that the new tags are on it.", "No driver has acknowledged the order.");
        step("fitted", ", \"engine\": \"engine-41\"");
        assertThat(wants()).containsExactly("No driver has acknowledged the order.");
        step("acknowledged", ", \"engine\": \"engine-41\"");
        assertThat(wants()).isEmpty();
        assertThat(rig().path("figures").path("stale").asInt()).isZero();
        assertThat(rig().path("acknowledged").path(0).path("who").asText()).isEqualTo("Chief");
    }

    @Test
    void evidenceItsAgeAndWhatIsDueHold() throws IOException {
        JsonNode rig = rig();
        assertThat(rig.path("grounds")).isNotEmpty();
        assertThat(rig.path("due").findValuesAsText("what"))
                .contains("service test of attack-175", "flow test of crosslay-1-200");
        assertThat(rig.path("due").findValuesAsText("until")).contains("2027-04-11");
        assertThat(rig.has("bed")).isFalse();
        assertThat(rig.path("grounds").findValuesAsText("instead")).contains("not measured, from the book");
        assertThat(rig.path("grounds").findValuesAsText("night")).isEmpty();

        var drill = running.ports().drills().listDrills().get(0);
        ask(
                "/drills/" + drill.id() + "/acceptance",
                "{\"who\": \"Chief\", \"basedOn\": 1, \"version\": " + drill.version() + "}");
        JsonNode hose = rig().path("grounds").path(0);
        assertThat(hose.path("what").asText()).isEqualTo("loss of attack-175");
        assertThat(hose.path("verified").asBoolean()).isTrue();
        assertThat(hose.path("on").asText()).isEqualTo("2026-05-12");
        assertThat(hose.path("days").asInt()).isEqualTo(20);
        assertThat(rig().path("due").findValuesAsText("until")).contains("2027-05-12");
    }

    private void step(String kind, String more) {
        ask("/orders/1/steps", "{\"who\": \"Chief\", \"kind\": \"" + kind + "\"" + more + "}");
    }

    private List<String> wants() throws IOException {
        var wants = new ArrayList<String>();
        rig().path("wants").forEach(want -> wants.add(want.asText()));
        return wants;
    }

    private JsonNode rig() throws IOException {
        return JSON.readTree(running.get("/api/v1/station").body())
                .path("orders")
                .path("engines")
                .path(0);
    }

    private void ask(String path, String json) {
        assertThat(running.post("/api/v1" + path, json).statusCode()).isEqualTo(200);
    }
}
