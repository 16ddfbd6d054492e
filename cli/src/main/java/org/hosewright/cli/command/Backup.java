package org.hosewright.cli.command;

import java.nio.file.Path;
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
        Path folder = place.existing();
        Store.backup(folder, file.toAbsolutePath());
        printing.print(
                () -> json(folder),
                () -> List.of(
                        "The record in " + folder + " is copied to " + file + ".", "Keep it on another machine."));
        return Exit.DONE.status();
    }

    private String json(Path folder) {
        var fields = new LinkedHashMap<String, Object>();
        fields.put("from", folder.toString());
        fields.put("file", file.toString());
        return ResultJson.write(fields);
    }
}
