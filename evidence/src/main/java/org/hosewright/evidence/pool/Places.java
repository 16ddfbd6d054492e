package org.hosewright.evidence.pool;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.hosewright.evidence.joint.Unknown;

/** Where each unknown of many nights stands. */
final class Places {
    private final Map<String, Integer> byName = new LinkedHashMap<>();
    private final Map<String, Unknown> shared = new LinkedHashMap<>();
    private final Map<String, String> ids = new LinkedHashMap<>();
    private final Map<String, Integer> nights = new LinkedHashMap<>();

    /** The place of an unknown by name, new or met before. */
    int place(String name) {
        Integer known = byName.get(name);
        if (known == null) {
            known = byName.size();
            byName.put(name, known);
        }
        return known;
    }

    int type(String type) {
        return place("type " + type);
    }

    int drift(String type) {
        return place("drift " + type);
    }

    int batch(String batch) {
        return place("batch " + batch);
    }

    /** A batch as a night found it. */
    int flown(String batch, int night) {
        return place("flown " + night + " " + batch);
    }

    /** What a night's unknown is one with. */
    static String name(PoolNight night, int index, Unknown unknown) {
        Optional<String> era = night.findShared(unknown);
        return "shared " + unknown.role() + " " + era.orElse(unknown.id() + " of night " + index);
    }

    /** Meets an unknown; the narrowest belief in it that any night has is the one that counts.
     *
     * @param id what people call it, where nights share it
     */
    void meet(String name, Optional<String> id, Unknown unknown) {
        id.ifPresent(known -> ids.put(name, known));
        nights.merge(name, 1, Integer::sum);
        Unknown before = shared.get(name);
        if (before == null || unknown.deviation() < before.deviation()) {
            shared.put(name, unknown);
        }
    }

    Unknown shared(String name) {
        Unknown found = shared.get(name);
        if (found == null) {
            throw new IllegalArgumentException("not met: " + name);
        }
        return found;
    }

    /** What people call an unknown that nights share. */
    Optional<String> findId(String name) {
        return Optional.ofNullable(ids.get(name));
    }

    /** How many nights met an unknown. */
    int nights(String name) {
        return nights.getOrDefault(name, 0);
    }

    /** The names of all that were met. */
    List<String> listShared() {
        return new ArrayList<>(shared.keySet());
    }

    int size() {
        return byName.size();
    }
}
