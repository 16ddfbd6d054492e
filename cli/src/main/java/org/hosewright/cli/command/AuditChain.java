package org.hosewright.cli.command;

import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.concurrent.Callable;
import org.hosewright.files.result.ResultJson;
import org.hosewright.ledger.history.Audit;
import org.hosewright.store.Store;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Proves that the history is whole and unchanged, or names the first link that is broken. */
@Command(
        name = "audit",
        mixinStandardHelpOptions = true,
        description = "Proves that nothing in the record was changed behind its back; names the first broken link.")
public final class AuditChain implements Callable<Integer> {
    @Mixin
    private RecordPlace place;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        Audit audit = prove();
        printing.print(() -> json(audit), () -> text(audit));
        return audit.holds() ? Exit.DONE.status() : Exit.NO_ANSWER.status();
    }

    private Audit prove() {
        if (place.database().isEmpty()) {
            return Store.audit(place.existing());
        }
        try (var store = place.openExisting(Clock.systemUTC())) {
            return store.history().audit();
        }
    }

    private static List<String> text(Audit audit) {
        return audit.broken()
                .map(broken -> List.of(
                        "The chain is broken at entry " + broken.entry() + ". " + broken.why(),
                        audit.entries() + " entries before it hold."))
                .orElseGet(() -> List.of(
                        "The chain holds: " + audit.entries() + " entries, each unchanged since it was written.",
                        "Last hash: " + audit.last(),
                        "Write it down elsewhere: it proves later that nothing was cut off or redone."));
    }

    private static String json(Audit audit) {
        var fields = new LinkedHashMap<String, Object>();
        fields.put("holds", audit.holds());
        fields.put("entries", audit.entries());
        fields.put("last", audit.last());
        audit.broken().ifPresent(broken -> {
            fields.put("brokenAt", broken.entry());
            fields.put("why", broken.why());
        });
        return ResultJson.write(fields);
    }
}
