package org.hosewright.server.api;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.hosewright.files.kit.KitDocument;

/** One edit of the kit: the value of an entry, or that there shall be none.
 *
 * @param path keys from the top
 * @param value YAML of the entry; absent takes it out
 */
record KitEdit(List<String> path, Optional<String> value) {
    KitEdit {
        path = List.copyOf(path);
    }

    static KitEdit of(Asked asked) {
        asked.only(Set.of("path", "value"));
        return new KitEdit(asked.texts("path"), asked.findText("value"));
    }

    KitDocument made(KitDocument document) {
        return value.isPresent() ? document.withEntry(path, value.get()) : document.withoutEntry(path);
    }
}
