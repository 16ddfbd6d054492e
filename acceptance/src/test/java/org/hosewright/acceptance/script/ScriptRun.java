package org.hosewright.acceptance.script;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** One of the project's scripts, run by a bare machine's shell with nothing on its path but what a test puts there. */
record ScriptRun(int status, String out, String err) {
    private static final Path ROOT = Path.of(System.getProperty("hosewright.root"));
    private static final List<String> PLAIN_TOOLS = List.of("dirname", "readlink", "sed", "cat", "find", "head", "id");

    static ScriptRun of(Path bench, Map<String, String> environment, String script, String... arguments)
            throws IOException, InterruptedException {
        var command = Stream.concat(Stream.of("/bin/sh", ROOT.resolve(script).toString()), Stream.of(arguments))
                .toList();
        var out = bench.resolve("out.txt");
        var err = bench.resolve("err.txt");
        var builder = new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
        builder.environment().clear();
        builder.environment().put("PATH", bareTools(bench).toString());
        builder.environment().putAll(environment);
        var process = builder.start();
        if (!process.waitFor(1, TimeUnit.MINUTES)) {
            process.destroyForcibly();
            throw new IOException(script + " did not end");
        }
        return new ScriptRun(process.exitValue(), text(out), text(err));
    }

    /** A folder that holds the few tools every machine has, and no Java. */
    private static Path bareTools(Path bench) throws IOException {
        var folder = Files.createDirectories(bench.resolve("tools"));
        for (String tool : PLAIN_TOOLS) {
            Programs.write(folder.resolve(tool), "exec /usr/bin/" + tool + " \"$@\"");
        }
        return folder;
    }

    private static String text(Path file) throws IOException {
        return Files.readString(file, StandardCharsets.UTF_8);
    }
}
