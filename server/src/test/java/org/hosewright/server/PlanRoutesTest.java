package org.hosewright.server;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.leaf.LeafDraft;
import org.hosewright.ledger.leaf.LeafKind;
import org.junit.jupiter.api.Test;

/** A test night planned, kept and started through the API. */
final class PlanRoutesTest extends AtDemo {
    private static final JsonMapper JSON = new JsonMapper();

    @Test
    void safety08EveryPointIsCheckedAndSaysWhereNotToGoAboveHolds() throws IOException {
        JsonNode plan = JSON.readTree(look(asked()).body());
        assertThat(plan.path("points")).hasSizeGreaterThan(3);
        for (JsonNode point : plan.path("points")) {
            assertThat(point.path("checks")).isNotEmpty();
            point.path("checks")
                    .forEach(check -> assertThat(check.path("used").asInt()).isLessThanOrEqualTo(100));
            assertThat(point.path("never").asText()).endsWith(" psi");
        }
        assertThat(plan.path("goNoGo").toString()).contains("12 months", "July 1987");
        assertThat(plan.path("cautions").toString()).contains("to its right", "within 15 ft", "purge all air");
        assertThat(plan.path("warnings").toString()).contains("not measured yet");
    }

    @Test
    void aKeptPlanStaysAsItWasMadeHolds() throws IOException {
        String id = keep();
        JsonNode kept = read("/plans/" + id);
        assertThat(kept.path("points").toString())
                .isEqualTo(JSON.readTree(look(asked()).body()).path("points").toString());
        assertThat(kept.path("kept").path("title").asText()).isEqualTo("June night");
        assertThat(kept.has("changed")).isFalse();
        assertThat(read("/plans").path("plans")).hasSize(1);
        assertThat(read("/plans/" + id + "/result.json").path("points").size())
                .isEqualTo(kept.path("points").size());
        changeTheKit();
        JsonNode later = read("/plans/" + id);
        assertThat(later.path("points")).isEqualTo(kept.path("points"));
        assertThat(later.path("changed").asText()).contains("Plan it again");
        HttpResponse<String> refused = post("/plans/" + id + "/night", "{\"who\": \"A\", \"date\": \"2026-06-12\"}");
        assertThat(refused.statusCode()).isEqualTo(409);
        assertThat(refused.body()).contains("The kit has changed since this was planned");
    }

    @Test
    void aStartedNightHasARowForEachReadingHolds() throws IOException {
        String id = keep();
        JsonNode plan = read("/plans/" + id);
        HttpResponse<String> answer = post("/plans/" + id + "/night", "{\"who\": \"A\", \"date\": \"2026-06-12\"}");
        assertThat(answer.statusCode()).isEqualTo(201);
        JsonNode night = JSON.readTree(answer.body());
        assertThat(night.path("rows")).hasSize(plan.path("points").size());
        JsonNode first = night.path("rows").path(0).path("cells");
        assertThat(first.path("hose").asText()).isEqualTo("attack-175");
        assertThat(first.path("length [ft]").asText() + " ft")
                .isEqualTo(plan.path("points").path(0).path("length").asText());
        assertThat(first.has("pump [psi]")).isFalse();
        assertThat(first.path("note").asText()).contains("at the tip", "never above");
        assertThat(read("/drills/" + night.path("id").asText() + "/report").path("troubles"))
                .isEmpty();
    }

    @Test
    void safety08StartingOnADayWithHoseOutOfDateRefused() throws IOException {
        HttpResponse<String> answer = post("/plans/" + keep() + "/night", "{\"who\": \"A\", \"date\": \"2027-06-12\"}");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("attack-175", "12 months");
        assertThat(read("/drills").path("drills")).hasSize(1);
    }

    @Test
    void aSignedPlanSaysWhoAnswersForItHolds() throws IOException {
        String id = keep();
        assertThat(post("/plans/" + id + "/signed", "{\"who\": \"Chief\", \"basedOn\": 1}")
                        .statusCode())
                .isEqualTo(200);
        JsonNode plan = read("/plans/" + id);
        assertThat(plan.path("signed").asText()).isEqualTo("Signed by Chief on 1 June 2026.");
        assertThat(plan.path("kept").path("version").asInt()).isEqualTo(2);
        assertThat(running.get("/api/v1/plans/" + id + "/sheet.pdf").body()).startsWith("%PDF");
        changeTheKit();
        assertThat(post("/plans/" + id + "/signed", "{\"who\": \"Chief\", \"basedOn\": 2}")
                        .statusCode())
                .isEqualTo(409);
    }

    /** A plan kept by a program that planned otherwise: what was signed is neither changed nor flown as if it were this. */
    @Test
    void aSignedPlanThatWouldBeMadeOtherwiseNowIsNotAlteredHolds() throws IOException {
        String id = keep();
        assertThat(post("/plans/" + id + "/signed", "{\"who\": \"Chief\", \"basedOn\": 1}")
                        .statusCode())
                .isEqualTo(200);
        String before = running.get("/api/v1/plans/" + id + "/result.json").body();
        var leaves = running.ports().leaves();
        var leaf = leaves.find(LeafKind.PLAN, id).orElseThrow();
        ObjectNode text = (ObjectNode) JSON.readTree(leaf.text());
        assertThat(text.path("worked").asText()).isEqualTo(before);
        String other = before.replaceFirst("\"length\"", "\"longth\"");
        text.put("worked", other);
        leaves.save(
                new LeafDraft(LeafKind.PLAN, id, leaf.version(), leaf.title(), JSON.writeValueAsString(text)),
                new Act("Elsewhere", "kept by another edition"));
        assertThat(running.get("/api/v1/plans/" + id + "/result.json").body()).isEqualTo(other);
        assertThat(read("/plans/" + id).path("changed").asText())
                .contains("plans the night otherwise", "Plan it again");
        assertThat(running.get("/api/v1/plans/" + id + "/sheet.pdf").statusCode())
                .isEqualTo(409);
        assertThat(post("/plans/" + id + "/night", "{\"who\": \"A\", \"date\": \"2026-06-12\"}")
                        .statusCode())
                .isEqualTo(409);
        assertThat(post("/plans/" + id + "/signed", "{\"who\": \"Chief\", \"basedOn\": 3}")
                        .statusCode())
                .isEqualTo(409);
    }

    @Test
    void aPlanTakenOutIsOnTheListNoMoreHolds() throws IOException {
        String id = keep();
        assertThat(post("/plans/" + id + "/taken-out", "{\"who\": \"A\", \"basedOn\": 1}")
                        .statusCode())
                .isEqualTo(200);
        assertThat(read("/plans").path("plans")).isEmpty();
        assertThat(running.ports().history().audit().holds()).isTrue();
    }

    @Test
    void whatIsMissingIsSaidRefused() throws IOException {
        refused(asked().put("date", "12 June"), "a day such as 2026-05-12");
        refused(asked().put("package", "no-such"), "crosslay-1-200");
        refused(with(asked(), "questions"), "one or more of hose, piping");
        refused(with(asked(), "instruments", "gauge-b"), "the gauge that pump pressure is read on");
        refused(with(asked(), "instruments", "gauge-a"), "a tip gauge, a flow meter, or both");
        refused(with(asked(), "instruments", "gauge-z"), "gauge-a");
        refused(asked().put("time", "25 min"), "more of it, or shorter times");
        refused(asked().put("supply", "40 gpm"), "no reading within every limit");
        refused(asked().put("hose", "800 psi"), "800 psi");
        refused(asked().put("up", "-8 ft"), "a height of 0 or more");
        refused(asked().put("up", "8 ft").put("down", "8 ft"), "one of the two");
    }

    private void refused(ObjectNode plan, String sentence) throws IOException {
        HttpResponse<String> answer = look(plan);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(422);
        assertThat(JSON.readTree(answer.body()).path("detail").asText()).contains(sentence);
    }

    private void changeTheKit() throws IOException {
        JsonNode kit = read("/kit");
        ObjectNode edit = JSON.createObjectNode().put("who", "A");
        edit.put("text", kit.path("text").asText().replace("750 gal", "1000 gal"))
                .put("basedOn", kit.path("version").asLong());
        assertThat(post("/kit", edit.toString()).statusCode()).isEqualTo(200);
    }

    private String keep() throws IOException {
        ObjectNode body = JSON.createObjectNode().put("who", "T. Officer").put("name", "June night");
        body.set("plan", asked());
        HttpResponse<String> answer = post("/plans", body.toString());
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(201);
        return JSON.readTree(answer.body()).path("id").asText();
    }

    private static ObjectNode asked() {
        ObjectNode plan = JSON.createObjectNode().put("package", "crosslay-1-200");
        return with(plan.put("date", "2026-06-12").put("hose", "600 ft"), "questions", "hose", "piping");
    }

    private static ObjectNode with(ObjectNode plan, String key, String... texts) {
        var list = plan.putArray(key);
        for (String text : texts) {
            list.add(text);
        }
        return plan;
    }

    private HttpResponse<String> look(ObjectNode plan) {
        return post("/plans/look", JSON.createObjectNode().set("plan", plan).toString());
    }

    private HttpResponse<String> post(String path, String json) {
        return running.post("/api/v1" + path, json);
    }

    private JsonNode read(String path) throws IOException {
        return JSON.readTree(running.get("/api/v1" + path).body());
    }
}
