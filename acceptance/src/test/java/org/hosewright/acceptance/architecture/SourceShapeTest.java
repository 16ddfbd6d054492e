package org.hosewright.acceptance.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The size of what people have to read in one piece. */
final class SourceShapeTest {
    /** At 200 lines look for the second concept; at 300 stop. */
    private static final int LONGEST_FILE_lines = 300;

    /** Between the braces, both included: 25 lines of work. */
    private static final int LONGEST_METHOD_lines = 27;

    @Test
    void filesShortEnoughToReadHold() {
        var files = Sources.listAll(".java", ".js", ".css", ".html");
        assertThat(files).isNotEmpty();
        assertThat(files.stream()
                        .filter(file -> Sources.textOf(file).lines().count() >= LONGEST_FILE_lines)
                        .map(Sources::nameOf))
                .as("files of %d lines or more", LONGEST_FILE_lines)
                .isEmpty();
    }

    @Test
    void methodsShortEnoughToReadHold() {
        var methods = Methods.listIn(Sources.listMain());
        assertThat(methods).isNotEmpty();
        assertThat(methods.stream()
                        .filter(method -> method.lines() > LONGEST_METHOD_lines)
                        .map(method -> method + " (" + method.lines() + ")"))
                .as("methods longer than %d lines", LONGEST_METHOD_lines)
                .isEmpty();
    }
}
