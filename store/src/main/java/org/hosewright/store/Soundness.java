package org.hosewright.store;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jdbi.v3.core.Handle;

/** What must hold between the tables of a store, whatever happened to the machine. */
final class Soundness {
    /** By what is wrong, a query that counts the offenders. */
    private static final Map<String, String> RULES = rules();

    private Soundness() {}

    /** The broken rules, each with how often; empty where all hold. */
    static List<String> listBroken(Handle handle) {
        var broken = new ArrayList<String>();
        RULES.forEach((wrong, query) -> {
            long count = handle.createQuery(query).mapTo(Long.class).one();
            if (count != 0) {
                broken.add(wrong + ": " + count);
            }
        });
        return broken;
    }

    private static Map<String, String> rules() {
        var rules = new LinkedHashMap<String, String>();
        counted(rules);
        linked(rules);
        return rules;
    }

    private static void counted(Map<String, String> rules) {
        rules.put("entries missing from the history", """
                select abs(h.last - (select count(*) from history)) + abs(h.last - coalesce((select max(entry) from history), 0))
                from history_head h""");
        rules.put("kit versions missing", """
                select coalesce(max(version), 0) - count(*) from kit_revision""");
        rules.put("drills whose version is not the number of acts on them", """
                select count(*) from drill d where d.version <>
                (select count(*) from history h where h.subject = 'drill' and h.subject_id = d.id)""");
        rules.put("drills with a head missing", """
                select count(*) from drill d where d.head_version <>
                (select count(*) from drill_head t where t.drill_id = d.id and t.version <= d.head_version)""");
        rules.put("rows with a revision missing or too many", """
                select count(*) from drill_row r where r.version <>
                (select count(*) from drill_row_revision v where v.row_id = r.id)""");
        rules.put("rows out of place", """
                select count(*) from drill_row r where r.place <>
                (select count(*) from drill_row s where s.drill_id = r.drill_id and s.place <= r.place)""");
    }

    private static void linked(Map<String, String> rules) {
        rules.put("records without their history entry", """
                select (select count(*) from kit_revision where entry not in (select entry from history))
                  + (select count(*) from drill_head where entry not in (select entry from history))
                  + (select count(*) from drill_row_revision where entry not in (select entry from history))
                  + (select count(*) from ruling where entry not in (select entry from history))
                  + (select count(*) from acceptance where entry not in (select entry from history))
                  + (select count(*) from order_revision where entry not in (select entry from history))
                  + (select count(*) from order_step where entry not in (select entry from history))
                  + (select count(*) from leaf_version where entry not in (select entry from history))
                  + (select count(*) from person_version where entry not in (select entry from history))""");
        rules.put("people with a version missing or too many", """
                select count(*) from person p where p.version <>
                (select count(*) from person_version v where v.id = p.id)""");
        rules.put("leaves with a version missing or too many", """
                select count(*) from leaf l where l.version <>
                (select count(*) from leaf_version v where v.kind = l.kind and v.id = l.id)""");
        rules.put("orders or steps of orders missing", """
                select (select coalesce(max(number), 0) - count(*) from order_revision)
                  + (select count(*) from order_step s where s.place >
                     (select count(*) from order_step t where t.number = s.number))""");
        rules.put("history entries without their link", """
                select count(*) from history where hash = ''""");
        rules.put("acceptances into a kit that another act saved", """
                select count(*) from acceptance a left join kit_revision k
                on k.version = a.kit_version and k.entry = a.entry where k.version is null""");
    }
}
