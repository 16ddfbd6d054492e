package org.hosewright.server.api;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalDate;
import org.hosewright.evidence.instrument.Instrument;
import org.hosewright.evidence.instrument.Tap;
import org.hosewright.evidence.plan.Question;
import org.hosewright.files.kit.Chain;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.hydraulics.quantity.QuantityShown;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.Kit;

/** What a test night can be planned from: the kit's packages and instruments, in words.
 *
 * @param kit the kit
 * @param today the company's day, taken as the night where none is named
 */
record PlanChoices(Kit kit, LocalDate today) {
    ObjectNode json() {
        ObjectNode json = Answer.object();
        ArrayNode packages = json.putArray("packages");
        kit.packages().values().forEach(named -> packages.add(hosePackage(named)));
        ArrayNode instruments = json.putArray("instruments");
        kit.instruments()
                .forEach((id, record) -> instruments.addObject().put("id", id).put("says", says(record.instrument())));
        for (Question question : Question.values()) {
            json.withArray("questions").add(question.word());
        }
        return json.put("today", today.toString());
    }

    private ObjectNode hosePackage(HosePackage named) {
        String last = named.hose().get(named.hose().size() - 1).hose();
        double carried_m = named.hose().stream()
                .filter(part -> part.hose().equals(last))
                .mapToDouble(part -> part.length().metres())
                .sum();
        return Answer.object()
                .put("id", named.id())
                .put("says", Chain.text(named.hose(), kit.hoses(), kit.units()) + ", " + named.nozzle())
                .put("last", last)
                .put("carried", QuantityShown.of(kit.units()).text(new Length(carried_m)));
    }

    private static String says(Instrument instrument) {
        if (instrument instanceof Instrument.PressureGauge gauge) {
            return gauge.tap().map(PlanChoices::place).orElse("place not written in the kit: not used");
        }
        return "flow meter";
    }

    private static String place(Tap tap) {
        if (tap instanceof Tap.Pitot) {
            return "pitot at the tip";
        }
        if (tap instanceof Tap.Side) {
            return "on the side behind the tip";
        }
        return tap instanceof Tap.AtDischarge ? "at the discharge" : "at the pump, before the piping";
    }
}
