package org.hosewright.files.readings;

import java.util.LinkedHashMap;
import java.util.Map;
import org.hosewright.evidence.night.Laid;
import org.hosewright.evidence.night.Reading;

/** The lays of a night seen so far: readings of one lay share its hose, its discharge and its rise. */
final class SharedLays {
    private final Map<String, Reading> first = new LinkedHashMap<>();

    /** Refuses a reading that says its lay otherwise than the one before it. */
    void check(Reading reading, Cells cells) {
        String lay = reading.laid().lay();
        Reading before = lay.isEmpty() ? null : first.putIfAbsent(lay, reading);
        if (before == null) {
            return;
        }
        Laid one = before.laid();
        Laid other = reading.laid();
        boolean same = one.hose().equals(other.hose())
                && one.discharge().equals(other.discharge())
                && one.rise().equals(other.rise());
        if (!same) {
            String allowed = "another name for another lay: reading " + before.id()
                    + " of this lay has another discharge, hose, length or rise";
            throw cells.refused(Column.LAY, "lay", allowed);
        }
    }
}
