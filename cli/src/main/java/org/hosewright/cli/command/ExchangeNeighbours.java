package org.hosewright.cli.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.hosewright.cli.text.ExchangeText;
import org.hosewright.files.exchange.ExchangeFile;
import org.hosewright.files.result.ResultJson;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.exchange.Neighbour;
import org.hosewright.server.api.ExchangeDesk;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What the neighbours handed over, as theirs and with its date. */
@Command(
        name = "neighbours",
        mixinStandardHelpOptions = true,
        description = "What the neighbours handed over: their figures, with their date, never ours.")
final class ExchangeNeighbours implements Callable<Integer> {
    @Mixin
    private ExchangePlace place;

    @Mixin
    private Person person;

    @Option(
            names = "--take-out",
            paramLabel = "ID",
            description = "Takes a neighbour out; its key must then be confirmed anew.")
    private @Nullable String takeOut;

    @Mixin
    private Printing printing;

    @Override
    public Integer call() {
        record Shown(List<Neighbour> neighbours, ExchangeText text) {}
        Shown shown = place.at(desk -> {
            if (takeOut != null) {
                takeOut(desk, takeOut);
            }
            return new Shown(desk.neighbours(), new ExchangeText(desk.kit().units(), desk.today()));
        });
        printing.print(() -> json(shown.neighbours()), () -> shown.text().neighbours(shown.neighbours()));
        return Exit.DONE.status();
    }

    private void takeOut(ExchangeDesk desk, String id) {
        Neighbour neighbour = desk.findNeighbour(id)
                .orElseThrow(() -> new InvalidInput(
                        "--take-out",
                        id,
                        "a neighbour: "
                                + String.join(
                                        ", ",
                                        desk.neighbours().stream()
                                                .map(Neighbour::id)
                                                .toList()),
                        ""));
        ExchangeImport.requireSaved(desk.takeOut(neighbour, person.act()));
    }

    private static Map<String, Object> fields(Neighbour neighbour) {
        Map<String, Object> fields = new LinkedHashMap<>();
        fields.put("id", neighbour.id());
        fields.put("confirmedBy", neighbour.confirmedBy());
        fields.put("confirmedAt", neighbour.confirmedAt().toString());
        fields.putAll(ExchangeFile.fields(neighbour.last()));
        return fields;
    }

    private static String json(List<Neighbour> neighbours) {
        return ResultJson.write(Map.of(
                "neighbours",
                neighbours.stream().map(ExchangeNeighbours::fields).toList()));
    }
}
