package org.hosewright.server.api;

import io.javalin.http.Context;
import java.util.Optional;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.profile.Sheet;

/** What stands behind the question mark of a request. */
final class Queried {
    private Queried() {}

    static Optional<String> find(Context request, String key) {
        return Optional.ofNullable(request.queryParam(key)).map(String::strip).filter(text -> !text.isEmpty());
    }

    /** A small whole number, 0 or more. */
    static int number(Context request, String key, int otherwise) {
        Optional<String> text = find(request, key);
        if (text.filter(number -> !number.matches("[0-9]{1,4}")).isPresent()) {
            throw new InvalidInput(key, text.get(), "a whole number from 0", "");
        }
        return text.map(Integer::parseInt).orElse(otherwise);
    }

    /** The room that the page has for a drawing. */
    static Sheet sheet(Context request) {
        return sheet(find(request, "sheet").orElse("laptop"));
    }

    /** The sheet of a name. */
    static Sheet sheet(String name) {
        return switch (name) {
            case "laptop" -> Sheet.LAPTOP;
            case "phone" -> Sheet.PHONE;
            default -> throw new InvalidInput("sheet", name, "laptop or phone", "");
        };
    }
}
