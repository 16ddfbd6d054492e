package org.hosewright.field;

import org.hosewright.field.json.Place;
import org.hosewright.hydraulics.line.Ask;
import org.hosewright.hydraulics.quantity.QuantityText;

/** What is asked: {@code {"tip": "50 psi"}}, {@code {"flow": "150 gpm"}} or {@code {"pump": "117 psi"}}. */
final class AskReader {
    private AskReader() {}

    static Ask ask(Place at) {
        if (at.find("tip").isPresent()) {
            return new Ask.AtTip(at.quantity("tip", QuantityText::pressure));
        }
        if (at.find("flow").isPresent()) {
            return new Ask.AtFlow(at.quantity("flow", QuantityText::flow));
        }
        return new Ask.AtPump(at.quantity("pump", QuantityText::pressure));
    }
}
