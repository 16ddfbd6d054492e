package org.hosewright.field;

import java.util.LinkedHashMap;
import java.util.Map;
import org.hosewright.field.json.JsonReader;
import org.hosewright.field.json.JsonWriter;
import org.hosewright.field.json.Place;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.error.NotConverged;
import org.hosewright.hydraulics.lay.Lay;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.line.Line;

/** One question answered: a line or a lay as JSON, and the state it takes, in SI.
 *
 * <p>A question names {@code line} or {@code lay}, and {@code at}: the tip's pressure, its flow, or the pump's pressure.
 * Quantities are texts as in the company's files. An error is an answer too: {@code error} with its parts.
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
        Ask ask = AskReader.ask(question.get("at"));
        Map<String, Object> answer;
        if (question.find("lay").isPresent()) {
            Lay lay = LayReader.lay(question.get("lay"));
            answer = States.of(lay, ask);
        } else {
            Line line = LineReader.line(question.get("line"));
            answer = States.of(line, ask);
        }
        question.requireAllRead();
        return answer;
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
