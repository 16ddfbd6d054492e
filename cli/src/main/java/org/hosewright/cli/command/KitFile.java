package org.hosewright.cli.command;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import org.hosewright.files.kit.KitDocument;
import org.hosewright.files.plain.PlainText;
import org.hosewright.ledger.kit.Kit;
import picocli.CommandLine.Option;

/** The option that names the company's kit. */
final class KitFile {
    @Option(names = "--kit", required = true, paramLabel = "KIT.yaml", description = "What the company has.")
    private Path file;

    KitFile() {}

    KitDocument read() {
        return KitDocument.of(PlainText.read(file, PlainText.YAML_LIMIT), file.toString());
    }

    /** The day it is, where the company is: ages of hose tests are taken at it. */
    static LocalDate today(Kit kit) {
        return LocalDate.now(ZoneId.of(kit.zone()));
    }
}
