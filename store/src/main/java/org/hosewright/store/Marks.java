package org.hosewright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.hosewright.ledger.history.Mark;

/** Marks as they stand in the history table. */
final class Marks {
    /** The columns a mark is read from, of the history table under the name h. */
    static final String COLUMNS = "h.entry, h.at, h.who, h.why";

    private static final DateTimeFormatter INSTANT = DateTimeFormatter.ofPattern(
                    "uuuu-MM-dd'T'HH:mm:ss.SSS'Z'", Locale.ROOT)
            .withZone(ZoneOffset.UTC);

    private Marks() {}

    static String text(Instant at) {
        return INSTANT.format(at);
    }

    static Mark of(ResultSet row) throws SQLException {
        return new Mark(
                row.getLong("entry"), Instant.parse(row.getString("at")), row.getString("who"), row.getString("why"));
    }
}
