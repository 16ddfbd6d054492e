package org.hosewright.web.build;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** The build's step that completes the pages: cuts their font and lists the files they are made of. */
public final class LayOutPages {
    private static final String LIST = "files.txt";
    private static final List<String> NOT_SERVED = List.of("package-info.class", "libraries.properties", LIST);

    private LayOutPages() {}

    /** Completes a folder of compiled pages.
     *
     * @param arguments the folder
     */
    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        for (var cut : FontCut.ALL) {
            cut.write(folder.resolve("font"));
        }
        Files.write(folder.resolve(LIST), listServed(folder));
    }

    private static List<String> listServed(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> folder.relativize(file).toString().replace('\\', '/'))
                    .filter(name -> !name.endsWith(".class") && !NOT_SERVED.contains(name))
                    .sorted()
                    .toList();
        }
    }
}
