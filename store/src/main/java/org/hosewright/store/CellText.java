package org.hosewright.store;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Cells and column names as JSON text, in their order. */
final class CellText {
    private static final JsonFactory JSON = new JsonFactory();

    private CellText() {}

    static String of(Map<String, String> cells) {
        return write(json -> {
            json.writeStartObject();
            for (Map.Entry<String, String> cell : cells.entrySet()) {
                json.writeStringField(cell.getKey(), cell.getValue());
            }
            json.writeEndObject();
        });
    }

    static String of(List<String> columns) {
        return write(json -> json.writeArray(columns.toArray(String[]::new), 0, columns.size()));
    }

    static Map<String, String> cells(String text) {
        var cells = new LinkedHashMap<String, String>();
        read(text, JsonToken.START_OBJECT, json -> {
            String column = json.currentName();
            json.nextToken();
            cells.put(column, json.getText());
        });
        return cells;
    }

    static List<String> columns(String text) {
        var columns = new ArrayList<String>();
        read(text, JsonToken.START_ARRAY, json -> columns.add(json.getText()));
        return columns;
    }

    private static String write(Writing writing) {
        var text = new StringWriter();
        try (JsonGenerator json = JSON.createGenerator(text)) {
            writing.on(json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }

    private static void read(String text, JsonToken start, Reading each) {
        try (JsonParser json = JSON.createParser(text)) {
            if (json.nextToken() != start) {
                throw new IOException("not the expected JSON: " + text);
            }
            while (!json.nextToken().isStructEnd()) {
                each.on(json);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private interface Writing {
        void on(JsonGenerator json) throws IOException;
    }

    private interface Reading {
        void on(JsonParser json) throws IOException;
    }
}
