package org.hosewright.files.lay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hosewright.files.lay.LayDocument.Leg;

/** What lies behind a leg, walked in laying order. */
final class LaidTree {
    private LaidTree() {}

    /** The legs that start where a leg ends, by the key that their tips' names take from them; empty adds no key. */
    static Map<String, Leg> behind(Leg leg) {
        Map<String, Leg> next = new LinkedHashMap<>();
        if (leg.end() instanceof LaidEnd.Wye wye) {
            next.putAll(wye.legs());
        } else if (leg.end() instanceof LaidEnd.Standpipe pipe) {
            pipe.outlets().forEach((name, outlet) -> next.put(name, outlet.leg()));
        } else if (leg.end() instanceof LaidEnd.Reducer reducer) {
            next.put("", reducer.leg());
        } else if (leg.end() instanceof LaidEnd.Eductor eductor) {
            next.put("", eductor.leg());
        }
        return next;
    }

    /** The joins that a leg ends in, further on too. */
    static List<LaidEnd.Join> joins(Leg leg) {
        List<LaidEnd.Join> joins = new ArrayList<>();
        if (leg.end() instanceof LaidEnd.Join join) {
            joins.add(join);
        }
        behind(leg).values().forEach(next -> joins.addAll(joins(next)));
        return joins;
    }

    /** The paths of the tips behind a leg, each the way to it by keys. */
    static List<String> paths(Leg leg, String path) {
        List<String> paths = new ArrayList<>();
        if (leg.end() instanceof LaidEnd.Monitor monitor && monitor.tips().size() > 1) {
            monitor.tips().keySet().forEach(tip -> paths.add(path + "/" + tip));
        } else if (behind(leg).isEmpty() && !(leg.end() instanceof LaidEnd.Join)) {
            paths.add(path);
        }
        behind(leg).forEach((key, next) -> paths.addAll(paths(next, below(path, key))));
        return paths;
    }

    static String below(String path, String key) {
        return key.isEmpty() ? path : path + "/" + key;
    }
}
