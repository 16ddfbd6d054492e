package org.hosewright.files.readings;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import org.hosewright.ledger.kit.Kit;

/** The day of a test night, from the times that its recorder wrote down. */
public final class NightDate {
    private NightDate() {}

    /** The day of the earliest reading whose time has a day, in the kit's zone; empty where none has. */
    public static Optional<LocalDate> find(ReadingsTable table, Kit kit) {
        ZoneId zone = ZoneId.of(kit.zone());
        return table.rows().stream()
                .map(row -> day(row.cell(Column.TIME.word()), zone))
                .flatMap(Optional::stream)
                .min(LocalDate::compareTo);
    }

    private static Optional<LocalDate> day(String time, ZoneId zone) {
        try {
            return Optional.of(LocalDateTime.parse(time).toLocalDate());
        } catch (DateTimeParseException withoutOffset) {
            return dayElsewhere(time, zone);
        }
    }

    private static Optional<LocalDate> dayElsewhere(String time, ZoneId zone) {
        try {
            return Optional.of(
                    OffsetDateTime.parse(time).atZoneSameInstant(zone).toLocalDate());
        } catch (DateTimeParseException noDay) {
            return Optional.empty();
        }
    }
}
