package org.hosewright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.history.Hat;
import org.hosewright.ledger.history.Subject;
import org.hosewright.ledger.kit.KitRevision;
import org.hosewright.ledger.kit.KitSaving;
import org.hosewright.ledger.kit.Kits;
import org.jdbi.v3.core.Handle;

/** The kit as one row a version. */
final class StoredKits implements Kits {
    private static final String KIT = "kit";
    private static final String SELECT = "select k.version as kit_version, k.kit_text, " + Marks.COLUMNS
            + " from kit_revision k join history h on h.entry = k.entry ";

    private final Transactions transactions;

    StoredKits(Transactions transactions) {
        this.transactions = transactions;
    }

    @Override
    public Optional<KitRevision> findLatest() {
        return transactions.read(StoredKits::latest);
    }

    @Override
    public long latestVersion() {
        return transactions.read(handle -> handle.createQuery("select coalesce(max(version), 0) from kit_revision")
                .mapTo(Long.class)
                .one());
    }

    @Override
    public Optional<KitRevision> findRevision(long version) {
        return transactions.read(handle -> handle.createQuery(SELECT + "where k.version = :version")
                .bind("version", version)
                .map((row, context) -> revision(row))
                .findOne());
    }

    @Override
    public KitSaving save(String text, long basedOn, Act act) {
        PlainText.check("kit", text);
        return transactions.write(act, writing -> {
            Optional<KitRevision> newer = findNewer(writing.handle(), basedOn);
            if (newer.isPresent()) {
                return writing.turnBack(new KitSaving.Conflict(newer.get(), text));
            }
            KitRevision saved = append(writing, text, basedOn + 1);
            writing.note(Hat.ANALYST, "saved the kit", Subject.KIT, KIT, saved.version());
            return new KitSaving.Saved(saved);
        });
    }

    /** The kit as it stands, where that is not the version named.
     *
     * @throws InvalidInput there never was such a version
     */
    static Optional<KitRevision> findNewer(Handle handle, long basedOn) {
        Optional<KitRevision> latest = latest(handle);
        long version = latest.map(KitRevision::version).orElse(0L);
        if (basedOn < 0 || basedOn > version) {
            throw new InvalidInput("version of the kit", Long.toString(basedOn), "0 to " + version, "");
        }
        return latest.filter(kit -> kit.version() != basedOn);
    }

    private static Optional<KitRevision> latest(Handle handle) {
        return handle.createQuery(SELECT + "where k.version = (select max(version) from kit_revision)")
                .map((row, context) -> revision(row))
                .findOne();
    }

    /** Adds a version; the caller has checked that it is the next, and writes the history entry. */
    static KitRevision append(Writing writing, String text, long version) {
        var revision = new KitRevision(version, text, writing.mark());
        writing.handle()
                .createUpdate("insert into kit_revision (version, kit_text, entry) values (:version, :text, :entry)")
                .bind("version", revision.version())
                .bind("text", text)
                .bind("entry", writing.mark().entry())
                .execute();
        return revision;
    }

    private static KitRevision revision(ResultSet row) throws SQLException {
        return new KitRevision(row.getLong("kit_version"), row.getString("kit_text"), Marks.of(row));
    }
}
