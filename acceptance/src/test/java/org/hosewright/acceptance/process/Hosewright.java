package org.hosewright.acceptance.process;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** One run of the shipped jar as a process of its own, in a folder of its own. */
record Hosewright(int status, String out, String err) {
    static final Path EXAMPLES = Path.of(System.getProperty("hosewright.root"), "examples");

    private static final Path JAR = Path.of(System.getProperty("hosewright.jar"));
    private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");

    static Hosewright run(Path folder, String... arguments) throws IOException, InterruptedException {
        var out = Files.createTempFile(folder, "out", ".txt");
        var err = Files.createTempFile(folder, "err", ".txt");
        var process = start(folder, out, err, arguments);
        if (!process.waitFor(1, TimeUnit.MINUTES)) {
            process.destroyForcibly();
            throw new IOException("did not end: " + List.of(arguments));
        }
        return new Hosewright(process.exitValue(), Files.readString(out), Files.readString(err));
    }

    static Process start(Path folder, Path out, Path err, String... arguments) throws IOException {
        var command = Stream.concat(
                        Stream.of(JAVA.toString(), "-XX:TieredStopAtLevel=1", "-jar", JAR.toString()),
                        Stream.of(arguments))
                .toList();
        return new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
    }

    static String example(String name) {
        return EXAMPLES.resolve(name).toString();
    }

    JsonNode json() throws IOException {
        return JsonMapper.builder().build().readTree(out);
    }
}
