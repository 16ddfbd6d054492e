package org.hosewright.hydraulics.method;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** One worked example of a field method.
 *
 * @param id its number in the list
 * @param rule the method
 * @param inputs by name, as text with units
 * @param answer as printed
 * @param tolerance in the answer's unit
 * @param source who printed it, or that it is from memory
 */
record Example(String id, String rule, Map<String, String> inputs, String answer, double tolerance, String source) {
    private static final int COLUMNS = 6;

    boolean fromMemory() {
        return source.startsWith("from memory");
    }

    String input(String name) {
        return Objects.requireNonNull(inputs.get(name), () -> id + " has no " + name);
    }

    static List<Example> listAll() {
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(Example.class.getResourceAsStream("list-a.csv")), StandardCharsets.UTF_8))) {
            return reader.lines().skip(1).map(Example::of).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Example of(String line) {
        String[] cells = line.split(",", COLUMNS);
        Map<String, String> inputs = new LinkedHashMap<>();
        for (String input : cells[2].split(";", -1)) {
            int equals = input.indexOf('=');
            inputs.put(
                    input.substring(0, equals).trim(),
                    input.substring(equals + 1).trim());
        }
        String source = cells[5].replace("\"", "");
        return new Example(cells[0], cells[1], inputs, cells[3], Double.parseDouble(cells[4]), source);
    }

    @Override
    public String toString() {
        return id + " " + rule + " " + inputs;
    }
}
