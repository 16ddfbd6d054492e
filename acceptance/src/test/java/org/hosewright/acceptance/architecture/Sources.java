package org.hosewright.acceptance.architecture;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The source files of every room, as people read them. */
final class Sources {
    static final Path ROOT = Path.of(System.getProperty("hosewright.root"));

    private static final Set<String> NOT_OURS = Set.of("target", "node_modules", ".git", ".mvn");

    private Sources() {}

    static List<Path> listAll(String... endings) {
        try (Stream<Path> found = Files.walk(ROOT)) {
            return found.filter(Files::isRegularFile)
                    .filter(file -> Stream.of(endings).anyMatch(file.toString()::endsWith))
                    .filter(Sources::isOurs)
                    .sorted()
                    .toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static List<Path> listMain() {
        return listAll(".java").stream()
                .filter(file -> file.toString().contains("/src/main/"))
                .toList();
    }

    static List<Path> listTests() {
        return listAll("Test.java").stream()
                .filter(file -> file.toString().contains("/src/test/"))
                .toList();
    }

    static String textOf(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException broken) {
            throw new UncheckedIOException(file.toString(), broken);
        }
    }

    static String nameOf(Path file) {
        return ROOT.relativize(file).toString();
    }

    private static boolean isOurs(Path file) {
        for (Path part : ROOT.relativize(file)) {
            if (NOT_OURS.contains(part.toString())) {
                return false;
            }
        }
        return true;
    }
}
