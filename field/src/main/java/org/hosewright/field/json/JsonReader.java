package org.hosewright.field.json;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.hydraulics.error.InvalidInput;

/** JSON text as maps, lists, texts, numbers and truths (RFC 8259); there is no null, and no key twice. */
public final class JsonReader {
    /** Deeper than any lay; a text nested further is refused, not followed. */
    private static final int DEEPEST = 200;

    private final String text;
    private int at;
    private int depth;

    private JsonReader(String text) {
        this.text = text;
    }

    /** The value that a text stands for: Map, List, String, Double or Boolean.
     *
     * @throws InvalidInput the text is not JSON, or says null
     */
    public static Object read(String text) {
        JsonReader reader = new JsonReader(text);
        Object value = reader.value();
        reader.skipSpace();
        if (reader.at < text.length()) {
            throw reader.wrong("nothing after the value");
        }
        return value;
    }

    private Object value() {
        skipSpace();
        char first = peek();
        if (first == '{' || first == '[') {
            return nested(first);
        }
        if (first == '"') {
            return string();
        }
        if (accept("true")) {
            return true;
        }
        if (accept("false")) {
            return false;
        }
        return number();
    }

    private Object nested(char first) {
        if (++depth > DEEPEST) {
            throw wrong("no more than " + DEEPEST + " levels");
        }
        at++;
        Object value = first == '{' ? object() : array();
        depth--;
        return value;
    }

    private Map<String, Object> object() {
        Map<String, Object> members = new LinkedHashMap<>();
        skipSpace();
        if (accept("}")) {
            return members;
        }
        do {
            skipSpace();
            String key = string();
            skipSpace();
            expect(":");
            if (members.put(key, value()) != null) {
                throw wrong("key '" + key + "' once");
            }
            skipSpace();
        } while (accept(","));
        expect("}");
        return members;
    }

    private List<Object> array() {
        List<Object> items = new ArrayList<>();
        skipSpace();
        if (accept("]")) {
            return items;
        }
        do {
            items.add(value());
            skipSpace();
        } while (accept(","));
        expect("]");
        return items;
    }

    private String string() {
        expect("\"");
        StringBuilder read = new StringBuilder();
        while (peek() != '"') {
            char next = text.charAt(at++);
            if (next < ' ') {
                throw wrong("no control character in a text");
            }
            read.append(next == '\\' ? escaped() : next);
        }
        at++;
        return read.toString();
    }

    private char escaped() {
        char kind = peek();
        at++;
        int plain = "\"\\/bfnrt".indexOf(kind);
        if (plain >= 0) {
            return "\"\\/\b\f\n\r\t".charAt(plain);
        }
        if (kind != 'u' || at + 4 > text.length()) {
            throw wrong("an escape that JSON knows");
        }
        int code = 0;
        for (int end = at + 4; at < end; at++) {
            int digit = Character.digit(text.charAt(at), 16);
            if (digit < 0) {
                throw wrong("four hexadecimal digits");
            }
            code = 16 * code + digit;
        }
        return (char) code;
    }

    private Double number() {
        int start = at;
        accept("-");
        if (!accept("0")) {
            digits();
        }
        if (accept(".")) {
            digits();
        }
        if (accept("e") || accept("E")) {
            if (!accept("+")) {
                accept("-");
            }
            digits();
        }
        return Double.valueOf(text.substring(start, at));
    }

    private void digits() {
        int start = at;
        while (at < text.length() && text.charAt(at) >= '0' && text.charAt(at) <= '9') {
            at++;
        }
        if (at == start) {
            throw wrong("a value");
        }
    }

    private char peek() {
        if (at >= text.length()) {
            throw wrong("more of it");
        }
        return text.charAt(at);
    }

    private boolean accept(String word) {
        boolean found = text.startsWith(word, at);
        at += found ? word.length() : 0;
        return found;
    }

    private void expect(String word) {
        if (!accept(word)) {
            throw wrong("'" + word + "'");
        }
    }

    private void skipSpace() {
        while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) {
            at++;
        }
    }

    private InvalidInput wrong(String allowed) {
        String rest = text.substring(Math.min(at, text.length()), Math.min(at + 12, text.length()));
        return new InvalidInput("JSON", rest.isEmpty() ? "its end" : rest, allowed, "character " + (at + 1));
    }
}
