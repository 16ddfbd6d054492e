package org.hosewright.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.List;
import org.hosewright.ledger.history.Audit;
import org.hosewright.ledger.history.Entry;
import org.hosewright.ledger.history.History;
import org.hosewright.ledger.history.Subject;

/** The history as rows of one table. */
final class StoredHistory implements History {
    private static final String SELECT =
            "select " + Marks.COLUMNS + ", h.hat, h.what, h.subject, h.subject_id, h.version, h.hash from history h ";

    private final Transactions transactions;

    StoredHistory(Transactions transactions) {
        this.transactions = transactions;
    }

    @Override
    public List<Entry> listLatest(int most) {
        return transactions.read(handle -> handle.createQuery(SELECT + "order by h.entry desc limit :most")
                .bind("most", most)
                .map((row, context) -> entry(row))
                .list());
    }

    @Override
    public List<Entry> listAbout(Subject subject, String subjectId, int most) {
        String which = subject == Subject.KIT
                ? "where :subject = 'kit' and 'kit' = :id and h.entry in (select entry from kit_revision)"
                : "where h.subject = :subject and h.subject_id = :id";
        return transactions.read(handle -> handle.createQuery(SELECT + which + " order by h.entry desc limit :most")
                .bind("id", subjectId)
                .bind("subject", subject.word())
                .bind("most", most)
                .map((row, context) -> entry(row))
                .list());
    }

    @Override
    public Audit audit() {
        return transactions.read(Chain::audit);
    }

    private static Entry entry(ResultSet row) throws SQLException {
        return new Entry(
                Marks.of(row),
                row.getString("hat"),
                row.getString("what"),
                subject(row.getString("subject")),
                row.getString("subject_id"),
                row.getLong("version"),
                row.getString("hash"));
    }

    private static Subject subject(String word) throws SQLException {
        return Arrays.stream(Subject.values())
                .filter(subject -> subject.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new SQLException("unknown subject " + word, "XX001"));
    }
}
