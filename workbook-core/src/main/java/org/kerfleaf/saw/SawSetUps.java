package org.kerfleaf.saw;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.saw.SawSetting.Straightedge;

/**
 * Groups cuts so that each setting of a saw is made once.
 *
 * <p>Settings come by saw in the order of {@link SawKind}, then by tilt, scale and thickness, smallest first; parts and words
 * within one setting come in the order the cuts were added. For a mitre saw the thickness makes no other setting.
 */
public final class SawSetUps {
    private static final Comparator<Key> ORDER = Comparator.comparing(Key::saw)
            .thenComparing(Key::tilt)
            .thenComparing(Key::scale)
            .thenComparing(Key::thickness);

    private static final Angle NO_SCALE = Angle.ofDegrees(-1);

    private final Straightedges straightedges;
    private final List<SawCut> cuts = new ArrayList<>();

    /** For a maker's circular saw. */
    public SawSetUps(Straightedges straightedges) {
        this.straightedges = straightedges;
    }

    private record Key(SawKind saw, Angle tilt, Angle scale, Length thickness) {}

    public SawSetUps add(SawCut cut) {
        cuts.add(cut);
        return this;
    }

    public SawSetUps addAll(Collection<SawCut> more) {
        cuts.addAll(more);
        return this;
    }

    /** The grouped settings. */
    public List<SawSetting> settings() {
        Map<Key, List<SawCut>> groups = cuts.stream()
                .collect(Collectors.groupingBy(SawSetUps::key, () -> new TreeMap<>(ORDER), Collectors.toList()));
        return groups.values().stream().map(this::setting).toList();
    }

    private static Key key(SawCut cut) {
        return new Key(
                cut.saw(),
                cut.tilt().value(),
                cut.scale().map(scale -> scale.value()).orElse(NO_SCALE),
                cut.saw() == SawKind.MITRE_SAW ? Length.ZERO : cut.thickness());
    }

    private SawSetting setting(List<SawCut> group) {
        SawCut first = group.get(0);
        Angle tilt = first.tilt().value();
        boolean upright = tilt.isZero();
        boolean circular = first.saw() == SawKind.CIRCULAR_SAW;
        boolean hasDepth = circular || first.saw() == SawKind.TABLE_SAW;
        return new SawSetting(
                first.saw().words(),
                distinct(group.stream().map(SawCut::letter).toList()),
                String.join("; ", distinct(group.stream().map(SawCut::words).toList())),
                first.tilt(),
                first.scale(),
                hasDepth ? Optional.of(SawAngles.bladeDepth(first.thickness(), tilt)) : Optional.empty(),
                circular && upright ? straightedges.lines() : List.<Straightedge>of(),
                notes(first, upright));
    }

    private static List<String> distinct(List<String> words) {
        return words.stream().distinct().toList();
    }

    private static String notes(SawCut cut, boolean upright) {
        return switch (cut.saw()) {
            case CIRCULAR_SAW -> circularNotes(cut, upright);
            case TABLE_SAW -> "Good face up.";
            case JIGSAW -> "Good face down, unless the blade cuts on the down stroke.";
            case MITRE_SAW -> "Good face up. The scale reads from square.";
        };
    }

    private static String circularNotes(SawCut cut, boolean upright) {
        StringBuilder notes = new StringBuilder("Good face down.");
        if (!upright) {
            notes.append(" Measure base edge to blade again at this tilt: the blade moves when it tilts.");
        }
        if (SawLimits.needed(cut.thickness(), cut.tilt().value()).isLongerThan(SawLimits.BLADE_DEPTH)) {
            notes.append(" Deeper than a 7 1/4 in blade goes: cut from both faces.");
        }
        return notes.toString();
    }
}
