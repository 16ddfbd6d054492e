package org.hosewright.cli.record;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/** The folder that holds the record: the one named, else HOSEWRIGHT_DATA, else a fixed one in the person's home. */
public final class DataFolder {
    private final Map<String, String> environment;

    public DataFolder(Map<String, String> environment) {
        this.environment = environment;
    }

    /** The folder to use.
     *
     * @param named the one that was asked for
     * @param demo true for the invented company, which never shares a folder with a real one by default
     */
    public Path of(Optional<Path> named, boolean demo) {
        return named.or(() -> find("HOSEWRIGHT_DATA").map(Path::of))
                .orElseGet(() -> home().resolve(demo ? "hosewright-demo" : "hosewright"))
                .toAbsolutePath()
                .normalize();
    }

    private Path home() {
        return find("XDG_DATA_HOME")
                .map(Path::of)
                .orElseGet(() -> Path.of(System.getProperty("user.home"), ".local", "share"));
    }

    private Optional<String> find(String name) {
        return Optional.ofNullable(environment.get(name)).filter(value -> !value.isBlank());
    }
}
