package org.hosewright.store;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.ledger.canonical.Digest;
import org.hosewright.ledger.history.Audit;
import org.jdbi.v3.core.Handle;

/** The links of the history. An entry's hash is over the entry, the digest of what its act wrote, and the hash of the
 * entry before, each as canonical JSON (RFC 8785).
 */
final class Chain {
    /** What stands before the first entry. */
    static final String START = "0".repeat(Digest.DIGITS);

    /** By table, a query for all that one act wrote into it. A new table adds a line; the lines that stand stay. */
    private static final Map<String, String> WRITTEN = written();

    private static final String ENTRY = "select entry, at, who, hat, why, what, subject, subject_id, version from"
            + " history where entry = :entry";

    private Chain() {}

    /** The digest of all that an act wrote, read back from the tables. */
    static String content(Handle handle, long entry) {
        return content(handle, entry, WRITTEN.keySet());
    }

    private static String content(Handle handle, long entry, Iterable<String> tables) {
        var written = new LinkedHashMap<String, Object>();
        for (String table : tables) {
            List<Map<String, Object>> rows = handle.createQuery(WRITTEN.get(table))
                    .bind("entry", entry)
                    .mapToMap()
                    .list();
            if (!rows.isEmpty()) {
                written.put(table, rows);
            }
        }
        return Digest.of(written);
    }

    /** Gives an entry, which stands in the table, its link. */
    static void close(Handle handle, long entry) {
        close(handle, entry, content(handle, entry));
    }

    /** As {@link #close(Handle, long)}, in a store that has no other of the tables yet. */
    static void close(Handle handle, long entry, List<String> tables) {
        close(handle, entry, content(handle, entry, tables));
    }

    private static void close(Handle handle, long entry, String content) {
        String previous = entry == 1 ? START : hash(handle, entry - 1);
        handle.createUpdate(
                        "update history set content = :content, previous = :previous, hash = :hash where entry = :entry")
                .bind("content", content)
                .bind("previous", previous)
                .bind("hash", link(handle, entry, content, previous))
                .bind("entry", entry)
                .execute();
    }

    /** Proves the chain from the first entry on. */
    static Audit audit(Handle handle) {
        long last = handle.createQuery("select last from history_head")
                .mapTo(Long.class)
                .one();
        String before = START;
        for (long entry = 1; entry <= last; entry++) {
            Optional<String> wrong = findWrong(handle, entry, before);
            if (wrong.isPresent()) {
                return new Audit(entry - 1, before, Optional.of(new Audit.Broken(entry, wrong.get())));
            }
            before = hash(handle, entry);
        }
        return new Audit(last, before, findBeyond(handle, last));
    }

    private static Optional<String> findWrong(Handle handle, long entry, String before) {
        Optional<Map<String, Object>> links = handle.createQuery(
                        "select content, previous, hash from history where entry = :entry")
                .bind("entry", entry)
                .mapToMap()
                .findOne();
        if (links.isEmpty()) {
            return Optional.of("The entry is missing.");
        }
        String content = content(handle, entry);
        if (!content.equals(links.get().get("content"))) {
            return Optional.of("What it wrote is no longer what stands in the record.");
        }
        if (!before.equals(links.get().get("previous"))) {
            return Optional.of("It does not follow the entry before.");
        }
        return link(handle, entry, content, before).equals(links.get().get("hash"))
                ? Optional.empty()
                : Optional.of("Who, when, why or what was changed after it was written.");
    }

    private static Optional<Audit.Broken> findBeyond(Handle handle, long last) {
        return handle.createQuery("select min(entry) from history where entry > :last")
                .bind("last", last)
                .mapTo(Long.class)
                .findOne()
                .map(entry -> new Audit.Broken(entry, "It stands beyond the last entry that was counted."));
    }

    private static String hash(Handle handle, long entry) {
        return handle.createQuery("select hash from history where entry = :entry")
                .bind("entry", entry)
                .mapTo(String.class)
                .one();
    }

    private static String link(Handle handle, long entry, String content, String previous) {
        var fields = new LinkedHashMap<String, Object>(
                handle.createQuery(ENTRY).bind("entry", entry).mapToMap().one());
        fields.put("content", content);
        fields.put("previous", previous);
        return Digest.of(fields);
    }

    private static Map<String, String> written() {
        var written = new LinkedHashMap<String, String>();
        written.put("kit_revision", "select version, kit_text from kit_revision where entry = :entry order by version");
        written.put("drill_head", """
                select drill_id, version, name, night, column_names from drill_head
                where entry = :entry order by drill_id, version""");
        written.put("drill_row_revision", """
                select v.row_id, v.version, v.cells, v.removed, r.drill_id, r.place
                from drill_row_revision v join drill_row r on r.id = v.row_id
                where v.entry = :entry order by v.row_id, v.version""");
        written.put("ruling", """
                select id, drill_id, row_id, row_version, place, verdict, reason from ruling
                where entry = :entry order by id""");
        written.put("acceptance", """
                select drill_id, drill_version, kit_version from acceptance
                where entry = :entry order by drill_id, drill_version""");
        written.put("order_revision", """
                select number, code, kit_version, order_text from order_revision
                where entry = :entry order by number""");
        written.put("order_step", """
                select number, place, kind, engine, note from order_step
                where entry = :entry order by number, place""");
        written.putAll(writtenSinceTheFourth());
        return written;
    }

    private static Map<String, String> writtenSinceTheFourth() {
        Map<String, String> written = new LinkedHashMap<>();
        written.put("leaf_version", """
                select kind, id, version, title, leaf_text, gone from leaf_version
                where entry = :entry order by kind, id, version""");
        written.put("person_version", """
                select id, version, name, hats, active, secret, given from person_version
                where entry = :entry order by id, version""");
        return written;
    }
}
