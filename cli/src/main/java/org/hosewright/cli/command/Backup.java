package org.hosewright.cli.command;

import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.concurrent.Callable;
import org.hosewright.files.result.ResultJson;
import org.hosewright.store.Store;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Copies the whole record into one file, while the server goes on. */
@Command(
        name = "backup",
        mixinStandardHelpOptions = true,
        description = "Copies the whole record into one file, also while the server runs.")
public final class Backup implements Callable<Integer> {
    @Parameters(paramLabel = "FILE", description = "The file to make; must not exist.")
    private Path file;

    @Mixin
    private RecordPlace place;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        String where = copy(file.toAbsolutePath());
        printing.print(
                () -> json(where),
                () -> List.of("The record in " + where + " is copied to " + file + ".", "Keep it on another machine."));
        return Exit.DONE.status();
    }

    private String copy(Path target) {
        if (place.database().isEmpty()) {
            Path folder = place.existing();
            Store.backup(folder, target);
            return folder.toString();
        }
        try (var store = place.openExisting(Clock.systemUTC())) {
            store.backup(target);
            return store.where();
        }
    }

    private String json(String where) {
        var fields = new LinkedHashMap<String, Object>();
        fields.put("from", where);
        fields.put("file", file.toString());
        return ResultJson.write(fields);
    }
}
