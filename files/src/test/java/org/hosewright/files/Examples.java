package org.hosewright.files;

import java.nio.file.Path;
import org.hosewright.files.kit.KitDocument;
import org.hosewright.files.plain.PlainText;
import org.hosewright.files.readings.ReadingsFile;
import org.hosewright.files.readings.ReadingsTable;

/** The example files of the invented companies. */
public final class Examples {
    private Examples() {}

    public static String text(String name) {
        Path root = Path.of(System.getProperty("hosewright.root", ".."));
        return PlainText.read(root.resolve("examples").resolve(name), PlainText.YAML_LIMIT);
    }

    public static KitDocument kit(String name) {
        return KitDocument.of(text(name), name);
    }

    public static ReadingsTable readings(String name) {
        return ReadingsFile.read(text(name), name);
    }
}
