package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.kerfleaf.joint.Clearances;
import org.kerfleaf.joint.FastenerSetting;

/**
 * All contacts of a step that are fastened alike: one line of the fastening list.
 *
 * @param contact what fastens to what, by the names of the parts: {@code Back to Floor}
 * @param fastener as on the hardware list
 * @param count how many in all
 * @param setting how each is set and what it holds
 * @param clearances the least of all
 */
public record FastenedAlike(
        int step, String contact, String fastener, int count, FastenerSetting setting, Clearances clearances) {

    /** The lines of a fastening list, in the order of the joints. */
    static List<FastenedAlike> of(List<Fastened> contacts) {
        record Key(int step, String contact, String fastener, FastenerSetting setting) {}
        Map<Key, List<Fastened>> alike = new LinkedHashMap<>();
        for (Fastened one : contacts) {
            alike.computeIfAbsent(
                            new Key(one.step(), contact(one), one.fastener(), one.setting()), k -> new ArrayList<>())
                    .add(one);
        }
        return alike.entrySet().stream()
                .map(entry -> new FastenedAlike(
                        entry.getKey().step(),
                        entry.getKey().contact(),
                        entry.getKey().fastener(),
                        entry.getValue().stream().mapToInt(Fastened::count).sum(),
                        entry.getKey().setting(),
                        entry.getValue().stream().map(Fastened::clearances).reduce(Clearances.NONE, Clearances::and)))
                .toList();
    }

    private static String contact(Fastened one) {
        String into = one.into().stream().map(Fastened.Bound::part).distinct().collect(Collectors.joining(", "));
        return into.isEmpty() ? one.joint() : one.through().part() + " to " + into;
    }
}
