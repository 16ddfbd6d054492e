package org.hosewright.files.lay;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.hosewright.files.lay.LayDocument.LaidLine;
import org.hosewright.files.lay.LayDocument.Leg;
import org.hosewright.hydraulics.error.InvalidInput;

/** The joins of a lay, held to what can be laid: each described, entered by two lines or more, none behind itself. */
final class Joins {
    private final LayDocument lay;
    private final String where;
    private final Map<String, List<String>> enteredFrom = new LinkedHashMap<>();

    private Joins(LayDocument lay, String where) {
        this.lay = lay;
        this.where = where;
    }

    static void check(LayDocument lay, String where) {
        Joins joins = new Joins(lay, where);
        for (LaidLine line : lay.lines()) {
            joins.collect(line.leg(), line.discharge());
        }
        lay.joins().forEach((name, joint) -> joins.collect(joint.leg(), name));
        joins.checkEntered();
        lay.joins().keySet().forEach(name -> joins.checkBehind(name, name, new HashSet<>()));
    }

    private void collect(Leg leg, String from) {
        for (LaidEnd.Join join : LaidTree.joins(leg)) {
            if (!lay.joins().containsKey(join.name())) {
                throw new InvalidInput("join", join.name(), "a join that stands under joins", leg.where());
            }
            enteredFrom.computeIfAbsent(join.name(), name -> new ArrayList<>()).add(from);
        }
    }

    private void checkEntered() {
        for (String name : lay.joins().keySet()) {
            int lines = enteredFrom.getOrDefault(name, List.of()).size();
            if (lines == 0) {
                throw new InvalidInput("join", name, "a join that lines end in", where);
            }
            if (lines == 1) {
                throw new InvalidInput(
                        "join", name, "two or more lines that end in it; only one does, so it is no join", place(name));
            }
        }
    }

    /** Refuses a join whose water comes from behind itself. */
    private void checkBehind(String start, String name, Set<String> seen) {
        for (String from : enteredFrom.getOrDefault(name, List.of())) {
            if (from.equals(start) && lay.joins().containsKey(from)) {
                throw new InvalidInput("join", start, "a join that does not lead back into itself", place(start));
            }
            if (seen.add(from)) {
                checkBehind(start, from, seen);
            }
        }
    }

    private String place(String name) {
        LayDocument.Joint joint = lay.joins().get(name);
        return joint == null ? where : joint.leg().where();
    }
}
