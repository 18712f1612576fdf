package org.kerfleaf.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Says parts in words: {@code Floor}; {@code Door, Floor and 2 of Side}. */
final class PartNames {
    private PartNames() {}

    /** The names in their order, equal ones counted. */
    static List<String> counted(List<String> names) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        names.forEach(name -> counts.merge(name, 1, Integer::sum));
        List<String> words = new ArrayList<>();
        counts.forEach((name, count) -> words.add(count == 1 ? name : count + " of " + name));
        return words;
    }

    static String list(List<String> words) {
        int last = words.size() - 1;
        return last == 0 ? words.get(0) : String.join(", ", words.subList(0, last)) + " and " + words.get(last);
    }
}
