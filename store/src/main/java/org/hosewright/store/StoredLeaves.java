package org.hosewright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.history.Act;
import org.hosewright.ledger.history.Subject;
import org.hosewright.ledger.leaf.Leaf;
import org.hosewright.ledger.leaf.LeafDraft;
import org.hosewright.ledger.leaf.LeafHead;
import org.hosewright.ledger.leaf.LeafKind;
import org.hosewright.ledger.leaf.LeafSaving;
import org.hosewright.ledger.leaf.Leaves;
import org.jdbi.v3.core.Handle;

/** Leaves as one row a version, and one row a leaf that counts its versions. */
final class StoredLeaves implements Leaves {
    private static final String HEAD = "select v.kind, v.id, v.version, v.title, " + Marks.COLUMNS;
    private static final String WHOLE = HEAD + ", v.leaf_text";
    private static final String FROM = " from leaf_version v join history h on h.entry = v.entry ";
    private static final String LATEST =
            FROM + "join leaf l on l.kind = v.kind and l.id = v.id and l.version = v.version ";
    private static final String STANDING = "where v.kind = :kind and l.gone = 0 order by v.entry desc";

    private final Transactions transactions;

    StoredLeaves(Transactions transactions) {
        this.transactions = transactions;
    }

    @Override
    public List<LeafHead> list(LeafKind kind) {
        return transactions.read(handle -> handle.createQuery(HEAD + LATEST + STANDING)
                .bind("kind", kind.word())
                .map((row, context) -> head(row))
                .list());
    }

    @Override
    public List<Leaf> listWhole(LeafKind kind) {
        return transactions.read(handle -> handle.createQuery(WHOLE + LATEST + STANDING)
                .bind("kind", kind.word())
                .map((row, context) -> leaf(row))
                .list());
    }

    @Override
    public Optional<Leaf> find(LeafKind kind, String id) {
        return transactions.read(handle -> latest(handle, kind, id, " and l.gone = 0"));
    }

    @Override
    public Optional<Leaf> findVersion(LeafKind kind, String id, long version) {
        return transactions.read(handle -> handle.createQuery(
                        WHOLE + FROM + "where v.kind = :kind and v.id = :id and v.version = :version")
                .bind("kind", kind.word())
                .bind("id", id)
                .bind("version", version)
                .map((row, context) -> leaf(row))
                .findOne());
    }

    @Override
    public LeafSaving save(LeafDraft draft, Act act) {
        PlainText.check("name of the " + draft.kind().word(), draft.title());
        PlainText.check(draft.kind().word(), draft.text());
        return transactions.write(act, writing -> {
            LeafDraft named = draft.id().isEmpty()
                    ? new LeafDraft(draft.kind(), writing.newId(), 0, draft.title(), draft.text())
                    : draft;
            return write(writing, named, false);
        });
    }

    @Override
    public LeafSaving takeOut(LeafKind kind, String id, long basedOn, Act act) {
        return transactions.write(act, writing -> {
            Leaf last = latest(writing.handle(), kind, id, " and l.gone = 0")
                    .orElseThrow(() -> new InvalidInput(kind.word(), id, "one that stands in the record", ""));
            return write(writing, new LeafDraft(kind, id, basedOn, last.title(), last.text()), true);
        });
    }

    private static LeafSaving write(Writing writing, LeafDraft draft, boolean gone) {
        Optional<Leaf> last = latest(writing.handle(), draft.kind(), draft.id(), "");
        long version = last.map(Leaf::version).orElse(0L);
        if (draft.basedOn() > version) {
            throw new InvalidInput(
                    "version of the " + draft.kind().word(), Long.toString(draft.basedOn()), "0 to " + version, "");
        }
        if (last.isPresent() && draft.basedOn() < version) {
            return writing.turnBack(new LeafSaving.Conflict(last.get()));
        }
        count(writing.handle(), draft, gone);
        append(writing, draft, gone);
        String done = gone ? "took out the " : version == 0 ? "added the " : "changed the ";
        writing.note(
                draft.kind().hat(),
                done + draft.kind().word() + " " + draft.title(),
                Subject.LEAF,
                draft.kind().word() + "/" + draft.id(),
                draft.basedOn() + 1);
        return new LeafSaving.Saved(
                new Leaf(draft.kind(), draft.id(), draft.basedOn() + 1, draft.title(), draft.text(), writing.mark()));
    }

    private static void count(Handle handle, LeafDraft draft, boolean gone) {
        String statement = draft.basedOn() == 0
                ? "insert into leaf (kind, id, version, gone) values (:kind, :id, :version, :gone)"
                : "update leaf set version = :version, gone = :gone where kind = :kind and id = :id";
        handle.createUpdate(statement)
                .bind("kind", draft.kind().word())
                .bind("id", draft.id())
                .bind("version", draft.basedOn() + 1)
                .bind("gone", gone ? 1 : 0)
                .execute();
    }

    private static void append(Writing writing, LeafDraft draft, boolean gone) {
        writing.handle()
                .createUpdate("insert into leaf_version (kind, id, version, title, leaf_text, gone, entry)"
                        + " values (:kind, :id, :version, :title, :text, :gone, :entry)")
                .bind("kind", draft.kind().word())
                .bind("id", draft.id())
                .bind("version", draft.basedOn() + 1)
                .bind("title", draft.title())
                .bind("text", draft.text())
                .bind("gone", gone ? 1 : 0)
                .bind("entry", writing.mark().entry())
                .execute();
    }

    private static Optional<Leaf> latest(Handle handle, LeafKind kind, String id, String which) {
        return handle.createQuery(WHOLE + LATEST + "where v.kind = :kind and v.id = :id" + which)
                .bind("kind", kind.word())
                .bind("id", id)
                .map((row, context) -> leaf(row))
                .findOne();
    }

    private static LeafHead head(ResultSet row) throws SQLException {
        return new LeafHead(
                kind(row.getString("kind")),
                row.getString("id"),
                row.getLong("version"),
                row.getString("title"),
                Marks.of(row));
    }

    private static Leaf leaf(ResultSet row) throws SQLException {
        LeafHead head = head(row);
        return new Leaf(head.kind(), head.id(), head.version(), head.title(), row.getString("leaf_text"), head.mark());
    }

    private static LeafKind kind(String word) throws SQLException {
        return Arrays.stream(LeafKind.values())
                .filter(kind -> kind.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new SQLException("unknown kind of leaf " + word, "XX001"));
    }
}
