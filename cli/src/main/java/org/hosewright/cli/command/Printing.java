package org.hosewright.cli.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.function.Supplier;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** How a result is printed: text for people, or one JSON document and nothing else. */
final class Printing {
    @Option(names = "--json", description = "One JSON document on standard output, for another program.")
    private boolean json;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    Printing() {}

    void print(Supplier<String> document, Supplier<List<String>> text) {
        PrintWriter out = spec.commandLine().getOut();
        if (json) {
            out.print(document.get());
        } else {
            text.get().forEach(out::println);
        }
        out.flush();
    }

    /** A remark beside the result, which never mixes with it. */
    void remark(String sentence) {
        spec.commandLine().getErr().println(sentence);
    }
}
