package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import org.hosewright.ledger.ready.Due;
import org.hosewright.ledger.ready.Ground;
import org.hosewright.ledger.ready.RigReady;

/** What a rig's pressures rest on and what is due for test, as the station's page shows it. */
final class RigReadyShown {
    private RigReadyShown() {}

    static void put(ObjectNode json, RigReady ready, LocalDate today) {
        ArrayNode grounds = json.putArray("grounds");
        ready.grounds().forEach(ground -> grounds.add(ground(ground, today)));
        ArrayNode due = json.putArray("due");
        ready.due().forEach(one -> due.add(due(one)));
    }

    private static ObjectNode ground(Ground ground, LocalDate today) {
        ObjectNode json = Answer.object().put("what", ground.what()).put("verified", ground.isVerified());
        if (!ground.isVerified()) {
            return json.put("instead", ground.instead());
        }
        json.put("night", ground.night());
        ground.on().ifPresent(day -> json.put("on", day.toString()));
        ground.age_days(today).ifPresent(days -> json.put("days", days));
        return json;
    }

    private static ObjectNode due(Due due) {
        ObjectNode json = Answer.object().put("what", due.what());
        due.last().ifPresent(day -> json.put("last", day.toString()));
        due.until().ifPresent(day -> json.put("until", day.toString()));
        return json.put("state", due.state().word());
    }
}
