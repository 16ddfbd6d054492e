package org.hosewright.files.yaml;

import java.util.Optional;
import org.hosewright.hydraulics.error.InvalidInput;
import org.snakeyaml.engine.v2.common.SpecVersion;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;

/** What YAML can do and the open formats do not: values that stand elsewhere than where they are read. */
final class Tricks {
    private Tricks() {}

    static void refuse(Event event, String where) {
        if (event instanceof AliasEvent alias) {
            throw new InvalidInput("an alias", "*" + alias.getAlias(), "the value itself, written out", where);
        }
        if (event instanceof NodeEvent node && node.getAnchor().isPresent()) {
            throw new InvalidInput("an anchor", "&" + node.getAnchor().get(), "the value without an anchor", where);
        }
        if (event instanceof DocumentStartEvent start && start.getSpecVersion().isPresent()) {
            refuseOther(start.getSpecVersion().get(), where);
        }
        if (event instanceof ScalarEvent scalar) {
            refuseTag(scalar.getTag(), where);
            if (scalar.isPlain() && scalar.getValue().equals("<<")) {
                throw new InvalidInput("a merge", "<<", "the entries themselves, written out", where);
            }
        }
        if (event instanceof CollectionStartEvent start) {
            refuseTag(start.getTag(), where);
        }
    }

    private static void refuseTag(Optional<String> tag, String where) {
        if (tag.isPresent()) {
            throw new InvalidInput("a tag", tag.get(), "the value without a tag", where);
        }
    }

    private static void refuseOther(SpecVersion version, String where) {
        if (version.getMajor() != 1 || version.getMinor() != 2) {
            throw new InvalidInput("YAML version", version.getRepresentation(), "1.2, or no %YAML line", where);
        }
    }
}
