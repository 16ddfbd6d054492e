package org.hosewright.cli.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.hosewright.cli.text.CardsText;
import org.hosewright.documents.Papers;
import org.hosewright.documents.stamp.Stamp;
import org.hosewright.files.kit.Revision;
import org.hosewright.files.plain.NewFile;
import org.hosewright.files.result.ResultJson;
import org.hosewright.hydraulics.order.Rounding;
import org.hosewright.ledger.card.CardAnalysis;
import org.hosewright.ledger.card.CardSet;
import org.hosewright.ledger.kit.Kit;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** The pump card, the discharge tags and the pocket card of a kit, as PDF. */
@Command(
        name = "cards",
        mixinStandardHelpOptions = true,
        description = "The pump card, the discharge tags and the pocket card, as PDF.")
public final class Cards implements Callable<Integer> {
    @Mixin
    private KitFile kit;

    @Option(names = "--out", required = true, paramLabel = "DIR", description = "Folder for the files; made if new.")
    private Path out;

    @Option(
            names = "--round",
            defaultValue = "nearest",
            description = "Round pump pressures to the nearest step (5 psi, 50 kPa) or up: nearest, up.")
    private Rounding.Way round;

    @Option(names = "--force", description = "Replace files that are there already.")
    private boolean force;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        List<Path> files = List.of(
                out.resolve("pump-card.pdf"), out.resolve("discharge-tags.pdf"), out.resolve("pocket-card.pdf"));
        if (Files.exists(out)) {
            files.forEach(file -> NewFile.check(file, force));
        }
        Kit company = kit.read().kit();
        CardSet set = CardAnalysis.of(company, Revision.of(company), KitFile.today(company), round);
        write(Map.of(
                files.get(0), Papers.pumpCard(set, Stamp.UNSIGNED),
                files.get(1), Papers.tags(set, Stamp.UNSIGNED),
                files.get(2), Papers.pocketCard(set, Stamp.UNSIGNED)));
        printing.print(() -> json(set, files), () -> CardsText.of(set, files));
        return Exit.DONE.status();
    }

    private void write(Map<Path, byte[]> papers) {
        try {
            Files.createDirectories(out);
        } catch (IOException broken) {
            throw new UncheckedIOException("could not make the folder " + out, broken);
        }
        papers.forEach((file, paper) -> NewFile.write(file, paper, force));
    }

    private static String json(CardSet set, List<Path> files) {
        var fields = new LinkedHashMap<String, Object>();
        fields.put("revision", set.revision());
        fields.put("made", set.made().toString());
        fields.put("stamp", Stamp.UNSIGNED.words());
        fields.put("files", files.stream().map(Path::toString).toList());
        fields.put("refused", CardsText.listRefused(set));
        fields.put("assumed", set.assumed());
        return ResultJson.write(fields);
    }
}
