package org.hosewright.files.result;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.hydraulics.quantity.Known;
import org.hosewright.hydraulics.quantity.Numbers;
import org.hosewright.hydraulics.quantity.Quantity;
import org.hosewright.hydraulics.quantity.Unit;
import org.hosewright.hydraulics.quantity.UnitSystem;

/** The fields of a JSON object in the making: quantities in one unit system; what does not exist is left out. */
final class Fields {
    /** Digits beyond these are the noise of unit conversions. */
    private static final MathContext DIGITS = new MathContext(12);

    private final UnitSystem units;
    private final Map<String, Object> map = new LinkedHashMap<>();

    Fields(UnitSystem units) {
        this.units = units;
    }

    Map<String, Object> map() {
        return map;
    }

    /** Puts a text, a number, a truth value, a list or a map. */
    Fields put(String key, Object value) {
        map.put(key, value);
        return this;
    }

    /** Puts a text that is there only where it says something. */
    Fields putText(String key, String text) {
        return text.isEmpty() ? this : put(key, text);
    }

    Fields put(String key, Quantity quantity) {
        return put(key, Known.of(quantity));
    }

    Fields put(String key, Known<?> known) {
        return put(key, quantity(known));
    }

    Fields put(String key, Optional<? extends Known<?>> known) {
        known.ifPresent(there -> put(key, there));
        return this;
    }

    /** Puts, by id, an object with one quantity. */
    Fields putEach(String key, String field, Map<String, ? extends Known<?>> byId) {
        Map<String, Object> each = new LinkedHashMap<>();
        byId.forEach((id, known) -> each.put(id, Map.of(field, quantity(known))));
        return put(key, each);
    }

    Fields putAll(String key, List<Map<String, Object>> objects) {
        return put(key, objects);
    }

    /** A quantity with its unit and, where there is one, its standard error. */
    Map<String, Object> quantity(Known<?> known) {
        Map<String, Object> q = new LinkedHashMap<>();
        q.put("value", number(units.show(known.value())));
        q.put("unit", units.unitOf(known.value()));
        known.standardError().ifPresent(error -> q.put("standardError", number(width(known.value(), error))));
        return q;
    }

    static BigDecimal number(double value) {
        BigDecimal rounded = new BigDecimal(Numbers.requireFinite("number in JSON", value)).round(DIGITS);
        BigDecimal bare = rounded.stripTrailingZeros();
        return bare.scale() < 0 ? bare.setScale(0) : bare;
    }

    /** A standard error shown as a width: no zero point of a scale is in it. */
    private double width(Quantity value, Quantity error) {
        boolean temperature = units.unitOf(value).equals(Unit.F.symbol());
        return temperature ? error.si() / Unit.F.size() : units.show(error);
    }
}
