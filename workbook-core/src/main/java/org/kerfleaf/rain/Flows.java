package org.kerfleaf.rain;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What leads where: places that water passes, from each to the next, and which of them lead to the ground in the end. */
final class Flows {
    /** A place that water passes: a piece of a side between two stops, or a level patch (its side empty). */
    record Place(Patch patch, Patch.Side side, int piece) {}

    private final Map<Place, Set<Place>> next = new LinkedHashMap<>();
    private final Map<Place, Set<Place>> before = new HashMap<>();
    private final Set<Place> ground = new LinkedHashSet<>();

    void lead(Place from, Place to) {
        next.computeIfAbsent(from, key -> new LinkedHashSet<>()).add(to);
        next.computeIfAbsent(to, key -> new LinkedHashSet<>());
        before.computeIfAbsent(to, key -> new LinkedHashSet<>()).add(from);
    }

    void leadToGround(Place from) {
        next.computeIfAbsent(from, key -> new LinkedHashSet<>());
        ground.add(from);
    }

    /** All places from which water comes to the ground. */
    Set<Place> leaving() {
        return reached(ground, before);
    }

    /**
     * The places that water comes to and does not leave, each group of them together: whatever leads on from one of the group leads
     * back to it.
     */
    List<Set<Place>> traps() {
        Set<Place> leaving = leaving();
        List<Set<Place>> traps = new ArrayList<>();
        Set<Place> seen = new LinkedHashSet<>();
        for (Place place : next.keySet()) {
            if (!leaving.contains(place) && !seen.contains(place)) {
                Set<Place> on = reached(Set.of(place), next);
                boolean comesBack =
                        on.stream().allMatch(p -> reached(Set.of(p), next).contains(place));
                if (comesBack) {
                    traps.add(on);
                    seen.addAll(on);
                }
            }
        }
        return traps;
    }

    private static Set<Place> reached(Collection<Place> from, Map<Place, Set<Place>> ways) {
        Set<Place> reached = new LinkedHashSet<>(from);
        Deque<Place> open = new ArrayDeque<>(from);
        while (!open.isEmpty()) {
            for (Place place : ways.getOrDefault(open.removeFirst(), Set.of())) {
                if (reached.add(place)) {
                    open.add(place);
                }
            }
        }
        return reached;
    }
}
