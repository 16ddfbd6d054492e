package org.hosewright.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.opentest4j.AssertionFailedError;

/** A second process of this project's classes, its words in files so that they outlive it. */
final class Child implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    private final Process process;
    private final Path out;
    private final Path err;

    private Child(Process process, Path out, Path err) {
        this.process = process;
        this.out = out;
        this.err = err;
    }

    /** Starts a class's main.
     *
     * @param wrapper what stands before java on the command line; may be empty
     * @param folder where its words go
     */
    static Child start(List<String> wrapper, Class<?> main, Path folder, String... arguments) {
        var command = new ArrayList<>(wrapper);
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-Xmx256m", "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp"));
        command.add(System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")));
        command.add(main.getName());
        command.addAll(List.of(arguments));
        try {
            Path out = Files.createTempFile(folder, "child", ".out");
            Path err = Files.createTempFile(folder, "child", ".err");
            Process process = new ProcessBuilder(command)
                    .redirectOutput(out.toFile())
                    .redirectError(err.toFile())
                    .start();
            return new Child(process, out, err);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    long pid() {
        return process.pid();
    }

    /** Waits until it has said a whole line that starts so. */
    void awaitLine(String start) throws InterruptedException {
        awaitLines(start, 1);
    }

    /** Waits until it has said so many whole lines that start so. */
    void awaitLines(String start, int count) throws InterruptedException {
        long giveUp = System.nanoTime() + PATIENCE.toNanos();
        while (true) {
            boolean alive = process.isAlive();
            if (said().stream().filter(line -> line.startsWith(start)).count() >= count) {
                return;
            }
            if (!alive || System.nanoTime() > giveUp) {
                throw new AssertionFailedError("the child never said '" + start + "' " + count + " times: " + words());
            }
            TimeUnit.MILLISECONDS.sleep(5);
        }
    }

    /** Waits for its end.
     *
     * @return exit status
     */
    int await() throws InterruptedException {
        if (!process.waitFor(PATIENCE.toSeconds(), TimeUnit.SECONDS)) {
            throw new AssertionFailedError("the child did not end: " + words());
        }
        return process.exitValue();
    }

    /** Ends it at once, as SIGKILL does. */
    void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    /** The whole lines of its standard output so far. */
    List<String> said() {
        try {
            String text = Files.readString(out);
            return text.substring(0, text.lastIndexOf('\n') + 1).lines().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All it said, errors included, for a message. */
    String words() {
        try {
            return Files.readString(out) + Files.readString(err);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
