package org.hosewright.ledger.stretch;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.hosewright.ground.stretch.Slack;
import org.hosewright.ground.stretch.Stairs;
import org.hosewright.ground.stretch.StretchEstimate;
import org.hosewright.ground.stretch.StretchFactor;
import org.hosewright.ground.stretch.StretchPart;
import org.hosewright.ground.stretch.StretchPlan;
import org.hosewright.ground.stretch.StretchRecord;
import org.hosewright.ground.track.Position;
import org.hosewright.ground.walk.EnteredRise;
import org.hosewright.hydraulics.error.InvalidInput;
import org.hosewright.hydraulics.quantity.Length;
import org.hosewright.ledger.kit.HosePackage;
import org.hosewright.ledger.kit.Kit;
import org.hosewright.ledger.line.KitLines;

/** A stretch to an address as the company keeps it.
 *
 * @param address where it goes; not blank
 * @param site what people know of the place
 * @param packages ids in laying order
 * @param second id of the package that may be laid beside it, where one is planned
 * @param parts lengths as walked, taped or paced
 * @param stairs climbed inside, where there are any
 * @param slack for corners and obstacles
 * @param reserveSections whole sections kept in reserve
 * @param rise the tip above the pump, where it is known
 * @param laid when it was laid, and how much hose it took
 */
public record KeptStretch(
        String address,
        Site site,
        List<String> packages,
        Optional<String> second,
        List<StretchPart> parts,
        Optional<Stairs> stairs,
        Slack slack,
        int reserveSections,
        Optional<EnteredRise> rise,
        List<LaidOnce> laid) {
    public KeptStretch {
        if (address.isBlank()) {
            throw new InvalidInput("address of the stretch", address, "where it goes", "");
        }
        packages = List.copyOf(packages);
        parts = List.copyOf(parts);
        laid = List.copyOf(laid);
    }

    /** What people know of the place.
     *
     * @param stands where the rig stands, in words; may be empty
     * @param way as drawn by hand on the map; may be empty
     * @param pictures ids of photographs
     * @param cautions of this place, as sentences
     * @param privateNotes such as door codes: printed only when asked for; may be empty
     */
    public record Site(
            String stands, List<Position> way, List<String> pictures, List<String> cautions, String privateNotes) {
        public static final Site UNKNOWN = new Site("", List.of(), List.of(), List.of(), "");

        public Site {
            way = List.copyOf(way);
            pictures = List.copyOf(pictures);
            cautions = List.copyOf(cautions);
        }
    }

    /** One time that it was laid.
     *
     * @param on the day
     * @param used hose that lay on the ground and in the building, without the reserve
     */
    public record LaidOnce(LocalDate on, Length used) {}

    /** The same with one more time that it was laid. */
    public KeptStretch withLaid(LaidOnce once) {
        List<LaidOnce> more = new ArrayList<>(laid);
        more.add(once);
        return new KeptStretch(address, site, packages, second, parts, stairs, slack, reserveSections, rise, more);
    }

    /** The same with these photographs. */
    public KeptStretch withPictures(List<String> pictures) {
        Site shown = new Site(site.stands(), site.way(), pictures, site.cautions(), site.privateNotes());
        return new KeptStretch(address, shown, packages, second, parts, stairs, slack, reserveSections, rise, laid);
    }

    /** True where nothing but photographs and times that it was laid differs from an earlier version. */
    public boolean onlyAddsTo(KeptStretch earlier) {
        return !equals(earlier) && plain().equals(earlier.plain());
    }

    private KeptStretch plain() {
        KeptStretch without = withPictures(List.of());
        return new KeptStretch(
                address, without.site(), packages, second, parts, stairs, slack, reserveSections, rise, List.of());
    }

    /** What the hose is counted from, in sections of the last package's hose. */
    public StretchPlan plan(Kit kit) {
        HosePackage named = PackageChain.of(kit, packages);
        Length section = KitLines.hose(
                        kit, named.hose().get(named.hose().size() - 1).hose())
                .section();
        return new StretchPlan(section, parts, stairs, slack, reserveSections);
    }

    /** The tip above the pump; level where nothing is known. */
    public Length up() {
        return rise.map(EnteredRise::rise).orElse(new Length(0));
    }

    /** Planned against used, each time that it was laid; none where its packages are no longer in the kit. */
    public List<StretchRecord> records(Kit kit) {
        if (laid.isEmpty() || !kit.packages().keySet().containsAll(packages)) {
            return List.of();
        }
        Length planned =
                StretchEstimate.of(plan(kit), Optional.empty()).needed().value();
        return planned.metres() > 0
                ? laid.stream()
                        .map(once -> StretchRecord.of(planned, once.used()))
                        .toList()
                : List.of();
    }

    /** The company's own factor from all that it laid, at drills, at fires and along walks; absent before the first.
     *
     * @param walked hose laid along walks, against the walked way
     */
    public static Optional<StretchFactor> factor(List<KeptStretch> all, List<StretchRecord> walked, Kit kit) {
        List<StretchRecord> records = Stream.concat(
                        all.stream().flatMap(kept -> kept.records(kit).stream()), walked.stream())
                .toList();
        return records.isEmpty() ? Optional.empty() : Optional.of(StretchFactor.of(records));
    }
}
