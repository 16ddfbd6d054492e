package org.hosewright.field.json;

import java.util.List;
import java.util.Map;
import org.hosewright.hydraulics.quantity.Numbers;

/** Maps, lists, texts, numbers and truths as JSON text, keys in the order they were put. */
public final class JsonWriter {
    private final StringBuilder text = new StringBuilder();

    private JsonWriter() {}

    /** The text of a value.
     *
     * @throws org.hosewright.hydraulics.error.InvalidInput a number is not finite
     */
    public static String text(Object value) {
        JsonWriter writer = new JsonWriter();
        writer.write(value);
        return writer.text.toString();
    }

    private void write(Object value) {
        if (value instanceof Map<?, ?> members) {
            object(members);
        } else if (value instanceof List<?> items) {
            array(items);
        } else if (value instanceof Double number) {
            text.append(Numbers.requireFinite("number in an answer", number));
        } else if (value instanceof Boolean || value instanceof Integer) {
            text.append(value);
        } else {
            string(String.valueOf(value));
        }
    }

    private void object(Map<?, ?> members) {
        text.append('{');
        String before = "";
        for (Map.Entry<?, ?> member : members.entrySet()) {
            text.append(before);
            string(String.valueOf(member.getKey()));
            text.append(':');
            write(member.getValue());
            before = ",";
        }
        text.append('}');
    }

    private void array(List<?> items) {
        text.append('[');
        String before = "";
        for (Object item : items) {
            text.append(before);
            write(item);
            before = ",";
        }
        text.append(']');
    }

    private void string(String value) {
        text.append('"');
        for (int i = 0; i < value.length(); i++) {
            char next = value.charAt(i);
            if (next == '"' || next == '\\') {
                text.append('\\').append(next);
            } else if (next < ' ') {
                text.append("\\u00")
                        .append(Character.forDigit(next / 16, 16))
                        .append(Character.forDigit(next % 16, 16));
            } else {
                text.append(next);
            }
        }
        text.append('"');
    }
}
