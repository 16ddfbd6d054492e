package org.hosewright.cli.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import org.hosewright.cli.Hosewright;

/** A command line that was run inside the test: what it wrote and how it ended. */
record Ran(int status, String out, String err) {
    static Ran of(String... arguments) {
        var out = new StringWriter();
        var err = new StringWriter();
        int status = Hosewright.commandLine(new PrintWriter(out, true), new PrintWriter(err, true))
                .execute(arguments);
        return new Ran(status, out.toString(), err.toString());
    }
}
