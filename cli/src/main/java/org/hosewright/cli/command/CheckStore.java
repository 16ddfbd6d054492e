package org.hosewright.cli.command;

import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.concurrent.Callable;
import org.hosewright.files.result.ResultJson;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Looks a whole record over: the file, what must hold between its tables, and the chain of its history. */
@Command(
        name = "check-store",
        mixinStandardHelpOptions = true,
        description = "Looks the record over: the file, its tables and the chain of its history.")
public final class CheckStore implements Callable<Integer> {
    @Mixin
    private RecordPlace place;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        List<String> found;
        String where;
        try (var store = place.openExisting(Clock.systemUTC())) {
            found = store.check();
            where = store.where();
        }
        printing.print(() -> json(found), () -> text(where, found));
        return found.isEmpty() ? Exit.DONE.status() : Exit.NO_ANSWER.status();
    }

    private static List<String> text(String where, List<String> found) {
        if (found.isEmpty()) {
            return List.of("The record in " + where + " is sound.");
        }
        var lines = new ArrayList<String>();
        lines.add("The record in " + where + " is not sound; nothing was changed. Restore a backup beside it.");
        found.forEach(one -> lines.add("  " + one));
        return lines;
    }

    private static String json(List<String> found) {
        var fields = new LinkedHashMap<String, Object>();
        fields.put("sound", found.isEmpty());
        fields.put("found", found);
        return ResultJson.write(fields);
    }
}
