package org.hosewright.evidence.joint;

import java.util.ArrayList;
import java.util.List;

/** The unknowns of a night while its readings are gone through; each is met first, then known by its place. */
final class Collected {
    private final List<Unknown> list = new ArrayList<>();

    /** The place of an unknown, new or met before. */
    int place(Unknown unknown) {
        for (int i = 0; i < list.size(); i++) {
            if (list.get(i).role() == unknown.role() && list.get(i).id().equals(unknown.id())) {
                return i;
            }
        }
        list.add(unknown);
        return list.size() - 1;
    }

    Unknowns unknowns() {
        return new Unknowns(list);
    }
}
