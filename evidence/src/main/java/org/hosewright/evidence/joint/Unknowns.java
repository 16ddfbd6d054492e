package org.hosewright.evidence.joint;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

/** The unknowns of a night, in a fixed order.
 *
 * @param list the unknowns
 */
public record Unknowns(List<Unknown> list) {
    public Unknowns {
        list = List.copyOf(list);
    }

    public int size() {
        return list.size();
    }

    public Unknown get(int index) {
        return list.get(index);
    }

    /** The place of an unknown. */
    public OptionalInt find(Role role, String id) {
        for (int i = 0; i < list.size(); i++) {
            if (list.get(i).role() == role && list.get(i).id().equals(id)) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    /** The places of all unknowns of a role. */
    public List<Integer> listOf(Role role) {
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            if (list.get(i).role() == role) {
                places.add(i);
            }
        }
        return places;
    }

    /** The same with one more at the end. */
    public Unknowns with(Unknown more) {
        List<Unknown> all = new ArrayList<>(list);
        all.add(more);
        return new Unknowns(all);
    }
}
