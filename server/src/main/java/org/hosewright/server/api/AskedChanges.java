package org.hosewright.server.api;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.ledger.drill.DrillChange;
import org.hosewright.ledger.drill.DrillHead;
import org.hosewright.ledger.drill.RulingRecord.Verdict;

/** The changes to a test night that a request asks for. */
final class AskedChanges {
    private static final String KINDS = "add-row, edit-row, remove-row, restore-row, rule or edit-head";

    private AskedChanges() {}

    static List<DrillChange> of(List<Asked> asked) {
        return asked.stream().map(AskedChanges::of).toList();
    }

    private static DrillChange of(Asked asked) {
        return switch (asked.text("do")) {
            case "add-row" ->
                new DrillChange.AddRow(asked.only(Set.of("do", "cells")).cells("cells"));
            case "edit-row" ->
                new DrillChange.EditRow(
                        asked.only(Set.of("do", "row", "version", "cells")).text("row"),
                        asked.number("version"),
                        asked.cells("cells"));
            case "remove-row" -> new DrillChange.RemoveRow(row(asked), asked.number("version"));
            case "restore-row" -> new DrillChange.RestoreRow(row(asked), asked.number("version"));
            case "rule" ->
                new DrillChange.Rule(
                        asked.only(Set.of("do", "row", "version", "verdict", "reason"))
                                .text("row"),
                        asked.number("version"),
                        verdict(asked.text("verdict")),
                        asked.text("reason"));
            case "edit-head" ->
                new DrillChange.EditHead(
                        head(asked.only(Set.of("do", "seen", "head")).object("seen")), head(asked.object("head")));
            default -> throw new InvalidInput("change", asked.text("do"), KINDS, "");
        };
    }

    static DrillHead head(Asked asked) {
        asked.only(Set.of("name", "date", "columns"));
        return new DrillHead(asked.text("name").strip(), date(asked.text("date")), asked.texts("columns"));
    }

    static LocalDate date(String text) {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeException e) {
            throw new InvalidInput("date", text, "a day such as 2026-05-12", "");
        }
    }

    private static String row(Asked asked) {
        return asked.only(Set.of("do", "row", "version")).text("row");
    }

    private static Verdict verdict(String word) {
        for (Verdict verdict : Verdict.values()) {
            if (verdict.word().equals(word)) {
                return verdict;
            }
        }
        throw new InvalidInput("verdict", word, "use, set aside or as judged", "");
    }
}
