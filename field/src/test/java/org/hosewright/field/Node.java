package org.hosewright.field;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** The JavaScript module as this build made it, run by Node. */
final class Node {
    private static final long LONGEST_s = 120;

    private Node() {}

    /** The module's answers to questions, in their order. */
    static List<String> answers(List<String> questions, Path folder) throws IOException, InterruptedException {
        Path asked = Files.write(folder.resolve("questions.jsonl"), questions);
        Path answered = folder.resolve("answers.jsonl");
        Path said = folder.resolve("node.log");
        Process node = new ProcessBuilder(
                        "node", file("answer-all.mjs"), file("hosewright.mjs"), asked.toString(), answered.toString())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile())
                .start();
        if (!node.waitFor(LONGEST_s, TimeUnit.SECONDS) || node.exitValue() != 0) {
            node.destroyForcibly();
            throw new IOException("node: " + Files.readString(said));
        }
        return Files.readAllLines(answered);
    }

    private static String file(String name) {
        try {
            return Path.of(Node.class.getResource(name).toURI()).toString();
        } catch (URISyntaxException broken) {
            throw new IllegalStateException(name, broken);
        }
    }
}
