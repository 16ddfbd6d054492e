package org.hosewright.files.readings;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.hosewright.hydraulics.quantity.Kind;

/** The columns that a readings file may have a meaning for; any other is kept and not read. */
public enum Column {
    READING("reading"),
    DISCHARGE("discharge"),
    HOSE("hose"),
    LENGTH("length", Kind.LENGTH),
    RISE("rise", Kind.LENGTH),
    NOZZLE("nozzle"),
    SETTING("setting"),
    PUMP("pump", Kind.PRESSURE),
    TIP("tip", Kind.PRESSURE),
    FLOW("flow", Kind.FLOW),
    MID("mid", Kind.PRESSURE),
    MID_AT("mid at", Kind.LENGTH),
    INTAKE("intake", Kind.PRESSURE),
    PUMP_GAUGE("pump gauge"),
    TIP_GAUGE("tip gauge"),
    METER("meter"),
    ENGINE("engine"),
    LAY("lay"),
    TIME("time"),
    READER("reader"),
    DOUBT("doubt"),
    NOTE("note");

    private final String word;
    private final Optional<Kind> kind;

    Column(String word) {
        this.word = word;
        this.kind = Optional.empty();
    }

    Column(String word, Kind kind) {
        this.word = word;
        this.kind = Optional.of(kind);
    }

    /** The head, without its unit. */
    public String word() {
        return word;
    }

    /** The kind of quantity in it; empty for a column of words. */
    public Optional<Kind> kind() {
        return kind;
    }

    static Optional<Column> find(String word) {
        return Arrays.stream(values())
                .filter(column -> column.word.equals(word))
                .findFirst();
    }

    /** The columns that every file has. */
    static List<Column> required() {
        return List.of(READING, DISCHARGE, HOSE, NOZZLE, PUMP);
    }
}
