package org.hosewright.cli.command;

import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.hosewright.files.result.ResultJson;
import org.hosewright.ledger.exchange.Fingerprint;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** The company's fingerprint, to be read to a neighbour by telephone; its key is made at the first asking. */
@Command(
        name = "key",
        mixinStandardHelpOptions = true,
        description = "Shows the company's fingerprint, which a neighbour compares by telephone.")
final class ExchangeKey implements Callable<Integer> {
    @Mixin
    private ExchangePlace place;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        record Shown(String company, Fingerprint fingerprint) {}
        Shown shown = place.at(desk -> new Shown(desk.kit().company(), desk.fingerprint()));
        String groups = shown.fingerprint().groups();
        printing.print(
                () -> ResultJson.write(Map.of("company", shown.company(), "fingerprint", groups)),
                () -> List.of(
                        "The fingerprint of " + shown.company() + ":",
                        "  " + groups,
                        "Read it to a neighbour by telephone, on a number they know. Its key lies in exchange.key"
                                + " beside the record and in no backup: keep a copy where you keep the seal."));
        return Exit.DONE.status();
    }
}
