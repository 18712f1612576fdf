package org.kerfleaf.joint;

import static org.kerfleaf.reason.Given.given;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.LengthUnit;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.reason.Figure;

/**
 * Which screw of a drawer suits a joint: the longest that goes 6 of its diameters in, keeps its tip inside and stands 2.5
 * diameters from the edge, in every contact; of two as long, the thinner.
 *
 * @param joint what is fastened to what
 * @param chosen the one to take; where none suits, the thinnest of those that break fewest of the rules
 * @param suits whether it keeps them all
 * @param length its length, and why
 * @param refused every other, with the reason
 * @param wouldSuit the shortest screw sold that would, if none of the drawer does and one is sold
 */
public record ScrewChoice(
        String joint,
        WoodScrew chosen,
        boolean suits,
        Figure<Length> length,
        List<Refused> refused,
        Optional<WoodScrew> wouldSuit) {
    private static final double LEAST_DIAMETERS = 6;
    private static final Length TIP_INCHES = Length.ofSixtyFourths(4);
    private static final Length TIP_MILLIMETRES = Length.ofMillimetres(1.5);
    private static final String RULE =
            "the longest of the drawer that goes 6 diameters in, keeps its tip inside and stands"
                    + " 2.5 diameters from the edge";
    /** Where its rules are from. */
    public static final String SOURCE = "NDS 2018 12.1.5.6 and commentary (from memory); tip margin common practice";

    public ScrewChoice {
        refused = List.copyOf(refused);
    }

    /** A screw that was not taken. */
    public record Refused(WoodScrew screw, String because) {}

    /**
     * What a screw meets in one contact.
     *
     * @param through the first part's thickness
     * @param wood how much of the second lies under it
     * @param edge how far the row is from the nearest edge
     */
    public record Contact(Length through, Length wood, Length edge) {}

    /** How much wood stays beyond a tip: 1/16 in, or 1.5 mm; common practice. */
    public static Length tipMargin(MeasureStyle style) {
        return style.unit() == LengthUnit.INCHES ? TIP_INCHES : TIP_MILLIMETRES;
    }

    /** Chooses for a joint. @throws IllegalArgumentException if there is no contact or no screw */
    public static ScrewChoice among(List<WoodScrew> drawer, List<Contact> contacts, String joint, MeasureStyle style) {
        if (drawer.isEmpty() || contacts.isEmpty()) {
            throw new IllegalArgumentException("%d screws for %d contacts.".formatted(drawer.size(), contacts.size()));
        }
        List<WoodScrew> suit = drawer.stream()
                .filter(screw -> against(screw, contacts, style).isEmpty())
                .toList();
        WoodScrew best = suit.stream()
                .max(longest())
                .orElseGet(() -> drawer.stream()
                        .min(Comparator.<WoodScrew>comparingInt(
                                        screw -> against(screw, contacts, style).size())
                                .thenComparing(WoodScrew::gauge)
                                .thenComparing(longest().reversed()))
                        .orElseThrow());
        List<Refused> refused = drawer.stream()
                .filter(screw -> suit.isEmpty() || !screw.equals(best))
                .map(screw -> new Refused(
                        screw,
                        against(screw, contacts, style).stream().findFirst().orElse(less(screw, best))))
                .toList();
        Figure<Length> length = Figure.of(
                best.length(),
                suit.isEmpty() ? "none suits; this one breaks fewest of the rules" : RULE,
                SOURCE,
                given("screws in the drawer", drawer.size()));
        return new ScrewChoice(
                joint,
                best,
                !suit.isEmpty(),
                length,
                refused,
                suit.isEmpty() ? sold(drawer, contacts, style) : Optional.empty());
    }

    private static String less(WoodScrew screw, WoodScrew best) {
        return screw.length().equals(best.length())
                ? "it would do; the thinner one splits less"
                : "it would do; the longer one holds more";
    }

    private static Comparator<WoodScrew> longest() {
        return Comparator.comparing(WoodScrew::length).thenComparing(screw -> -screw.gauge());
    }

    /** The shortest sold that suits, of a gauge in the drawer if there is one; of two as long, the thicker. */
    private static Optional<WoodScrew> sold(List<WoodScrew> drawer, List<Contact> contacts, MeasureStyle style) {
        Set<Integer> gauges = drawer.stream().map(WoodScrew::gauge).collect(Collectors.toSet());
        return ScrewLengths.all(style.unit()).stream()
                .filter(screw -> against(screw, contacts, style).isEmpty())
                .min(Comparator.<WoodScrew, Boolean>comparing(screw -> !gauges.contains(screw.gauge()))
                        .thenComparing(WoodScrew::length)
                        .thenComparing(screw -> -screw.gauge()));
    }

    /** What speaks against a screw, each rule once; nothing if it suits all contacts. */
    private static List<String> against(WoodScrew screw, List<Contact> contacts, MeasureStyle style) {
        SettingWords say = new SettingWords(style);
        Length least = screw.diameter().times(LEAST_DIAMETERS);
        Length room = EdgeDistance.EDGE.least(screw.diameter(), true).value();
        Map<String, String> broken = new LinkedHashMap<>();
        for (Contact contact : contacts) {
            Length reach = screw.reach(contact.through(), WoodScrew.COUNTERSINK).value();
            if (reach.isShorterThan(least)) {
                broken.putIfAbsent(
                        "reach", "reaches %s; 6 D are %s".formatted(say.fine(reach.max(Length.ZERO)), say.fine(least)));
            }
            if (reach.isLongerThan(contact.wood().minus(tipMargin(style)))) {
                broken.putIfAbsent(
                        "tip", "goes %s into %s of wood".formatted(say.fine(reach), say.fine(contact.wood())));
            }
            if (contact.edge().isShorterThan(room)) {
                broken.putIfAbsent(
                        "edge", "%s from the edge; 2.5 D are %s".formatted(say.fine(contact.edge()), say.fine(room)));
            }
        }
        return List.copyOf(broken.values());
    }
}
