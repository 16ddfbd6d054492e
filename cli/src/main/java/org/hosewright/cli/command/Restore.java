package org.hosewright.cli.command;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.concurrent.Callable;
import org.hosewright.files.result.ResultJson;
import org.hosewright.ledger.history.Audit;
import org.hosewright.store.Store;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Makes a record from a backup, in a folder that has none. */
@Command(
        name = "restore",
        mixinStandardHelpOptions = true,
        description =
                "Makes a record from a backup, in a folder that has none; the record that was there is never replaced.")
public final class Restore implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "A file that backup made.")
    private Path file;

    @Mixin
    private RecordPlace place;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        place.requireFolder();
        Path folder = place.folder();
        Audit audit = Store.restore(file.toAbsolutePath(), folder);
        printing.print(
                () -> json(folder, audit),
                () -> List.of(
                        "The record is restored into " + folder + ": " + audit.entries()
                                + " history entries, and their chain holds.",
                        "Last hash: " + audit.last()));
        return Exit.DONE.status();
    }

    private String json(Path folder, Audit audit) {
        var fields = new LinkedHashMap<String, Object>();
        fields.put("from", file.toString());
        fields.put("folder", folder.toString());
        fields.put("entries", audit.entries());
        fields.put("last", audit.last());
        return ResultJson.write(fields);
    }
}
