package org.hosewright.ledger.years;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.evidence.night.Reading;
import org.hosewright.evidence.night.Ruling;

/** A test night as it goes into the years.
 *
 * @param id a name that no other night has
 * @param name what people call it
 * @param date its day
 * @param readings in the order taken
 * @param rulings what people ruled, by reading id
 */
public record NightFlown(String id, String name, LocalDate date, List<Reading> readings, Map<String, Ruling> rulings) {
    public NightFlown {
        readings = List.copyOf(readings);
        rulings = Collections.unmodifiableMap(new LinkedHashMap<>(rulings));
    }

    /** Its day in years. */
    double year() {
        return date.getYear() + (date.getDayOfYear() - 1.0) / date.lengthOfYear();
    }
}
