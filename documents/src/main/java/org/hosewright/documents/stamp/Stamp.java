package org.hosewright.documents.stamp;

import java.util.Locale;
import java.util.Optional;

/** Whether a sheet is an order, on every page of it.
 *
 * @param across the words across each page; empty where the sheet may be used
 * @param words the words at the head of the text
 * @param meaning what they mean, as a sentence
 * @param code the text of the square code that each page bears, where it bears one
 */
public record Stamp(String across, String words, String meaning, Optional<String> code) {
    /** Real numbers without the signature that makes them an order. */
    public static final Stamp UNSIGNED = new Stamp(
            "UNSIGNED - NOT FOR USE", "No one has signed these numbers. They are not an order: do not pump by them.");

    /** The invented company's numbers. */
    public static final Stamp DEMO =
            new Stamp("DEMO - NOT FOR USE", "An invented company's numbers, for showing only. Do not pump by them.");

    private Stamp(String words, String meaning) {
        this(words, words, meaning);
    }

    private Stamp(String across, String words, String meaning) {
        this(across, words, meaning, Optional.empty());
    }

    /** The same with a square code on each page. */
    public Stamp bearing(SheetCode sheetCode) {
        return new Stamp(across, words, meaning, Optional.of(sheetCode.text()));
    }

    /** The code of the order that the sheet is of; empty where it is of none. */
    public Optional<SheetCode> findOrder() {
        return code.flatMap(SheetCode::findIn);
    }

    /** The same with the square code of a handover on each page. */
    public Stamp bearing(HandoverCode handoverCode) {
        return new Stamp(across, words, meaning, Optional.of(handoverCode.text()));
    }

    /** Figures of a neighbour that are still to be used, as far as is known.
     *
     * @param company whose they are
     * @param days when they were made and the last day that they are to be used, as people read it
     */
    public static Stamp neighbour(String company, String days) {
        return new Stamp(
                "",
                "FIGURES OF " + company.toUpperCase(Locale.ROOT),
                days
                        + " They hold for that company's own hose, nozzles, pumps and gauges, and are nobody else's order.");
    }

    /** Figures of a neighbour that are not to be used any more.
     *
     * @param why that they ran out or were withdrawn, as sentences
     */
    public static Stamp neighbourPast(String company, String why) {
        return new Stamp("NOT FOR USE", "FIGURES OF " + company.toUpperCase(Locale.ROOT) + ", NOT FOR USE", why);
    }

    /** The same for the invented company: never for use, whatever else it says. */
    public Stamp inDemo() {
        int end = across.indexOf(" - ");
        if (end < 0 || across.equals(UNSIGNED.across)) {
            return new Stamp(DEMO.across, DEMO.words, DEMO.meaning, code);
        }
        String both = "DEMO, " + across.substring(0, end) + " - NOT FOR USE";
        return new Stamp(both, both, DEMO.meaning + " " + meaning, code);
    }

    /** A stretch's sheet that rests on what is not as it was.
     *
     * @param why what changed, as sentences
     */
    public static Stamp staleStretch(String why) {
        return new Stamp(
                "STALE - LOOK INTO IT",
                "STALE",
                "Kept when things were otherwise: look at the stretch again and keep it anew before you go by it. "
                        + why);
    }

    /** An order in force.
     *
     * @param number its number
     * @param who who signed it
     * @param day when, as people read it
     */
    public static Stamp inForce(long number, String who, String day) {
        return new Stamp(
                "",
                "ORDER " + number + ", SIGNED",
                "Signed by " + who + " on " + day + ". In force as known when printed; the gauges and the nozzle crew's"
                        + " word overrule it.");
    }

    /** The sheets of a test night that its lead signed.
     *
     * @param who who signed them
     * @param day when, as people read it
     */
    public static Stamp ofNight(String who, String day) {
        return new Stamp(
                "",
                "TEST NIGHT, NOT AN ORDER",
                "Signed for the test night by " + who + " on " + day + ". These pressures are for this night alone; the"
                        + " gauges and anybody's word overrule them.");
    }

    /** An order in force whose numbers rest on something that is not as it was.
     *
     * @param number its number
     * @param why what changed, as sentences
     */
    public static Stamp stale(long number, String why) {
        return new Stamp(
                "STALE - LOOK INTO IT",
                "ORDER " + number + ", STALE",
                "Signed, but numbers on it rest on what is no longer so. " + why);
    }

    /** An order that was superseded or withdrawn. */
    public static Stamp past(long number, String standing) {
        return new Stamp(
                standing.toUpperCase(Locale.ROOT) + " - NOT FOR USE",
                "ORDER " + number + ", " + standing.toUpperCase(Locale.ROOT),
                "It is no longer the order: do not pump by it.");
    }
}
