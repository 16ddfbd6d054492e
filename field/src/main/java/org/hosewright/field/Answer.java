package org.hosewright.field;

import java.util.LinkedHashMap;
import java.util.Map;
import org.hosewright.field.json.JsonReader;
import org.hosewright.field.json.JsonWriter;
import org.hosewright.field.json.Place;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.error.NotConverged;
import org.hosewright.hydraulics.line.Ask;

/** One question answered: a line, a lay or a network as JSON, and the state it takes, in SI.
 *
 * <p>A question names {@code line} or {@code lay}, and {@code at}: the tip's pressure, its flow, or the pump's pressure.
 * Quantities are texts as in the company's files. A {@code network} is in SI numbers and asks for its own balance. An error is an answer too: {@code error} with its parts.
 */
public final class Answer {
    private Answer() {}

    /** The answer to a question; never throws for what a person may have written. */
    public static String to(String question) {
        try {
            return JsonWriter.text(answer(Place.of(JsonReader.read(question))));
        } catch (InvalidInput wrong) {
            return JsonWriter.text(Map.of("error", said(wrong)));
        } catch (NotConverged none) {
            Map<String, Object> said = new LinkedHashMap<>();
            said.put("message", String.valueOf(none.getMessage()));
            said.put("where", none.worstPlace());
            return JsonWriter.text(Map.of("error", said));
        }
    }

    private static Map<String, Object> answer(Place question) {
        Map<String, Object> answer = solved(question);
        question.requireAllRead();
        return answer;
    }

    private static Map<String, Object> solved(Place question) {
        if (question.find("network").isPresent()) {
            return States.of(NetworkReader.network(question.get("network")));
        }
        Ask ask = AskReader.ask(question.get("at"));
        if (question.find("lay").isPresent()) {
            return States.of(LayReader.lay(question.get("lay")), ask);
        }
        return States.of(LineReader.line(question.get("line")), ask);
    }

    private static Map<String, Object> said(InvalidInput wrong) {
        Map<String, Object> said = new LinkedHashMap<>();
        said.put("message", String.valueOf(wrong.getMessage()));
        said.put("what", wrong.what());
        said.put("value", wrong.value());
        said.put("allowed", wrong.allowed());
        said.put("where", wrong.where());
        return said;
    }
}
