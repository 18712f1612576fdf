package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.kerfleaf.joint.HardwareLine;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.measure.Quantity;
import org.kerfleaf.plan.Facts.Fact;
import org.kerfleaf.rules.Check;
import org.kerfleaf.shape.Touching;

/**
 * What a change touched: everything in which one plan differs from another, old and new, and nothing that stayed the same.
 *
 * <p>Lengths differ if they do so by more than what counts as touching, everything else if it prints otherwise. Of what
 * appeared or went only the thing itself is told, not its every figure; of checks, only what their verdict was and is.
 */
public final class Changes {
    private Changes() {}

    /** What is otherwise in the second plan, topic by topic, in the order of the plan. */
    public static List<Change> between(Plan before, Plan after) {
        Map<Fact, Quantity> old = new Facts(before, Map.of()).all();
        Map<Fact, Quantity> now = new Facts(after, oldNames(before, after)).all();
        List<Change> changes = new ArrayList<>();
        for (List<Fact> thing : byThing(old.keySet(), now.keySet())) {
            boolean inBoth =
                    thing.stream().anyMatch(old::containsKey) && thing.stream().anyMatch(now::containsKey);
            for (Fact fact : inBoth ? thing : thing.subList(0, 1)) {
                Optional<Quantity> was = Optional.ofNullable(old.get(fact));
                Optional<Quantity> is = Optional.ofNullable(now.get(fact));
                if (!same(was, is, after.style())) {
                    changes.add(new Change(fact.topic(), fact.subject(), inBoth ? fact.aspect() : "", was, is));
                }
            }
        }
        changes.sort(Comparator.comparing(Change::topic));
        return List.copyOf(changes);
    }

    private static Collection<List<Fact>> byThing(Set<Fact> old, Set<Fact> now) {
        Map<List<Object>, List<Fact>> things = new LinkedHashMap<>();
        Stream.concat(old.stream(), now.stream())
                .distinct()
                .forEach(fact -> things.computeIfAbsent(List.of(fact.topic(), fact.subject()), key -> new ArrayList<>())
                        .add(fact));
        return things.values();
    }

    private static boolean same(Optional<Quantity> one, Optional<Quantity> other, MeasureStyle style) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.isEmpty() && other.isEmpty();
        }
        if (one.get() instanceof Length length && other.get() instanceof Length second) {
            return length.isWithin(second, Touching.TOLERANCE);
        }
        return one.get().in(style).equals(other.get().in(style));
    }

    // ---- things whose name holds a size ----------------------------------------------------------------------------

    /**
     * The old name of what is only named otherwise: a bolt whose length changed is the same line with another bolt, a check
     * that was held against the worst of several joints may now find another one the worst.
     */
    private static Map<String, String> oldNames(Plan before, Plan after) {
        Map<String, String> names = new LinkedHashMap<>();
        names.putAll(renamed(before.hardware(), after.hardware(), HardwareLine::what, Changes::use));
        names.putAll(renamed(before.checks(), after.checks(), Check::name, Changes::rule));
        return names;
    }

    private static <T> Map<String, String> renamed(
            List<T> before, List<T> after, Function<T, String> name, Function<T, ?> nature) {
        Set<String> old = new LinkedHashSet<>(before.stream().map(name).toList());
        List<T> fresh = new ArrayList<>(
                after.stream().filter(t -> !old.contains(name.apply(t))).toList());
        after.stream().map(name).forEach(old::remove);
        Map<String, String> names = new LinkedHashMap<>();
        for (T one : before) {
            Optional<T> found = !old.contains(name.apply(one))
                    ? Optional.empty()
                    : fresh.stream()
                            .filter(t -> nature.apply(t).equals(nature.apply(one)))
                            .findFirst();
            found.ifPresent(t -> {
                fresh.remove(t);
                names.put(name.apply(t), name.apply(one));
            });
        }
        return names;
    }

    /** Where a line of hardware goes, without how many. */
    private static List<String> use(HardwareLine line) {
        return line.uses().stream()
                .map(use -> use.substring(0, use.lastIndexOf(':')))
                .toList();
    }

    private static String rule(Check check) {
        return check.name().split(": ")[0];
    }
}
