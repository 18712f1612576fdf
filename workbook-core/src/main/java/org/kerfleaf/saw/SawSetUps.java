package org.kerfleaf.saw;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Length;
import org.kerfleaf.reason.Figure;
import org.kerfleaf.saw.SawSetting.Straightedge;

/**
 * Groups cuts so that each setting of a saw is made once.
 *
 * <p>Settings come by saw in the order of {@link SawKind}, then by tilt, scale and thickness, smallest first; parts and words
 * within one setting come in the order the cuts were added. For a mitre saw the thickness makes no other setting, and a
 * router's cuts are of one setting when all their numbers are the same.
 */
public final class SawSetUps {
    private static final Comparator<Key> ORDER = Comparator.comparing(Key::saw)
            .thenComparing(Key::tilt)
            .thenComparing(Key::scale)
            .thenComparing(Key::thickness)
            .thenComparing(Key::numbers);

    private static final Angle NO_SCALE = Angle.ofDegrees(-1);

    private final Straightedges straightedges;
    private final SawLimits limits;
    private final List<SawCut> cuts = new ArrayList<>();
    private final SheetGuides guides;

    /** For a maker's saws. */
    public SawSetUps(Straightedges straightedges, SawLimits limits) {
        this.straightedges = straightedges;
        this.limits = limits;
        this.guides = new SheetGuides(straightedges);
    }

    private record Key(SawKind saw, Angle tilt, Angle scale, Length thickness, String numbers) {}

    public SawSetUps add(SawCut cut) {
        cuts.add(cut);
        return this;
    }

    public SawSetUps addAll(Collection<SawCut> more) {
        cuts.addAll(more);
        return this;
    }

    /** Where the numbered cuts of the sheets are told. */
    public SheetGuides guides() {
        return guides;
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
                cut.scale().map(Figure::value).orElse(NO_SCALE),
                cut.saw() == SawKind.MITRE_SAW ? Length.ZERO : cut.thickness(),
                cut.saw() == SawKind.ROUTER ? cut.set().toString() : "");
    }

    private SawSetting setting(List<SawCut> group) {
        SawCut first = group.get(0);
        Angle tilt = first.tilt().value();
        boolean circular = first.saw() == SawKind.CIRCULAR_SAW;
        boolean hasDepth = circular || first.saw() == SawKind.TABLE_SAW;
        return new SawSetting(
                first.saw().words(),
                distinct(group.stream().map(SawCut::letter)),
                distinct(group.stream().map(SawCut::words)).stream().collect(Collectors.joining("; ")),
                first.saw().faceUp(),
                first.tilt(),
                first.scale(),
                hasDepth ? Optional.of(SawAngles.bladeDepth(first.thickness(), tilt)) : Optional.empty(),
                circular ? straightedges.lines(tilt) : List.<Straightedge>of(),
                set(group),
                hasDepth && tilt.isZero() ? guides.of(first.thickness()) : List.of(),
                notes(group));
    }

    private static <T> List<T> distinct(Stream<T> all) {
        return all.distinct().toList();
    }

    private List<Reading> set(List<SawCut> group) {
        SawCut first = group.get(0);
        Angle tilt = first.tilt().value();
        boolean likes = group.stream().anyMatch(SawCut::meetsItsLike);
        Length thickest = group.stream()
                .map(SawCut::thickness)
                .max(Comparator.naturalOrder())
                .orElseThrow();
        Length widest =
                group.stream().map(SawCut::width).max(Comparator.naturalOrder()).orElseThrow();
        List<Reading> set = new ArrayList<>(HalfDegrees.of("tilt", tilt, tilt, thickest, likes));
        first.scale().map(Figure::value).ifPresent(scale -> {
            boolean beyond = scale.compareTo(limits.stop()) > 0;
            Figure<Angle> complement = SawAngles.complement(scale);
            if (beyond) {
                set.add(new Reading("scale, with the stock turned against a squared block", complement));
            }
            set.addAll(HalfDegrees.of("scale", scale, beyond ? complement.value() : scale, widest, likes));
        });
        set.addAll(distinct(group.stream().flatMap(cut -> cut.set().stream())));
        return set;
    }

    private String notes(List<SawCut> group) {
        SawCut first = group.get(0);
        Stream<String> own = switch (first.saw()) {
            case CIRCULAR_SAW -> Stream.of(straightedges.lacking(first.tilt().value()), depth(first));
            case TABLE_SAW -> Stream.of(depth(first));
            case MITRE_SAW -> Stream.of(SawAngles.readsFromSquare(first.scale()), block(first));
            case JIGSAW, ROUTER -> Stream.empty();
        };
        return distinct(Stream.concat(own, group.stream().map(SawCut::notes)).filter(words -> !words.isEmpty()))
                .stream()
                .collect(Collectors.joining(" "));
    }

    private String depth(SawCut cut) {
        return SawLimits.needed(cut.thickness(), cut.tilt().value()).isLongerThan(limits.bladeDepth())
                ? "Deeper than %s goes: cut from both faces.".formatted(limits.bladeWords())
                : "";
    }

    private String block(SawCut cut) {
        return cut.scale().filter(s -> s.value().compareTo(limits.stop()) > 0).isPresent()
                ? "Beyond where %s: clamp a block with a square corner to the fence, hold the stock against the block's"
                                .formatted(limits.stopWords())
                        + " end, at a right angle to the fence, and set the complement."
                : "";
    }
}
