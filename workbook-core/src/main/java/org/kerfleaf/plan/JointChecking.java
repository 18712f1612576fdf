package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.kerfleaf.joint.FastenerLine;
import org.kerfleaf.joint.WoodScrew;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.MeasureStyle;
import org.kerfleaf.rules.Check;
import org.kerfleaf.rules.JointChecks;
import org.kerfleaf.sketch.Fastener;
import org.kerfleaf.sketch.Lumber;
import org.kerfleaf.sketch.Screw;

/**
 * Whether what is driven holds: metal, reach, tip, edge, spacing, head.
 *
 * <p>Contacts with the same screw through the same thickness into the same kind of edge are held against each rule once, with
 * the contact that is nearest to falling short.
 */
final class JointChecking {
    private final Planned planned;
    private final MeasureStyle style;

    JointChecking(Planned planned) {
        this.planned = planned;
        this.style = planned.style();
    }

    /** What the rules for a screw look at: contacts that agree in all of it are one case. */
    private record Case(WoodScrew screw, Length through) {}

    private record Contact(PlannedJoint joint, PlannedJoint.Touch touch, Length into) {}

    List<Check> all() {
        List<Check> checks = new ArrayList<>(metals());
        Map<Case, List<Contact>> cases = new LinkedHashMap<>();
        for (PlannedJoint joint : planned.joints()) {
            if (joint.said().fastener().orElse(null) instanceof Screw said) {
                for (PlannedJoint.Touch touch : joint.touches()) {
                    Length through = touch.thickness();
                    Length into = wood(touch);
                    Case key = new Case(new WoodScrew(said.gauge(), said.length()), through);
                    cases.computeIfAbsent(key, k -> new ArrayList<>()).add(new Contact(joint, touch, into));
                }
            }
        }
        cases.forEach((key, contacts) -> checks.addAll(screw(key, contacts)));
        checks.addAll(meetings());
        return checks;
    }

    /** The least wood on the way of what is driven through a contact; the part's depth where nothing found a place. */
    private Length wood(PlannedJoint.Touch touch) {
        return planned.driven().stream()
                .filter(contact -> contact.driver().place().equals(touch.place()))
                .flatMap(contact -> contact.driven().stream())
                .map(Driver.Driven::wood)
                .reduce(Length::min)
                .orElse(touch.depth());
    }

    /** Every two joints whose fasteners meet; if none do, the two of the build that come nearest. */
    private List<Check> meetings() {
        List<Stagger.Meeting> all = Stagger.meetings(planned.driven());
        List<Stagger.Meeting> meet =
                new ArrayList<>(all.stream().filter(m -> m.spare().isNegative()).toList());
        if (meet.isEmpty()) {
            all.stream().min(Comparator.comparing(Stagger.Meeting::spare)).ifPresent(meet::add);
        }
        int moved = (int) planned.driven().stream()
                .filter(contact -> contact.moved().isPositive())
                .count();
        Map<String, Check> checks = new LinkedHashMap<>();
        meet.stream().sorted(Comparator.comparing(Stagger.Meeting::spare)).forEach(m -> {
            String of = some(List.of(m.one().joint().words(), m.other().joint().words()).stream()
                    .distinct()
                    .toList());
            checks.computeIfAbsent(of, name -> JointChecks.fastenersMeet(name, m.a(), m.b(), moved, style));
        });
        return List.copyOf(checks.values());
    }

    private List<Check> metals() {
        record Metals(Fastener fastener, boolean treated) {}
        Map<Metals, List<String>> joints = new LinkedHashMap<>();
        for (PlannedJoint joint : planned.joints()) {
            boolean treated = joint.touches().stream()
                    .anyMatch(t ->
                            isTreated(t.through().part()) || isTreated(t.into().part()));
            joint.said()
                    .fastener()
                    .ifPresent(fastener -> joints.computeIfAbsent(new Metals(fastener, treated), k -> new ArrayList<>())
                            .add(joint.words()));
        }
        List<Check> checks = new ArrayList<>();
        // Everything a workbook builds stands outdoors.
        joints.forEach((metals, names) -> checks.add(
                JointChecks.metalInWood(some(names), metals.fastener().metal(), metals.treated(), true, style)));
        return checks;
    }

    private boolean isTreated(String part) {
        return planned.sketch()
                .part(part)
                .flatMap(p -> planned.sketch().lumber(p.stock()))
                .map(Lumber::preserved)
                .orElse(false);
    }

    private List<Check> screw(Case key, List<Contact> contacts) {
        String of = names(contacts);
        String first = contacts.get(0).touch().through().part();
        Length into = contacts.stream().map(Contact::into).reduce(Length::min).orElseThrow();
        List<Check> checks = new ArrayList<>();
        checks.add(JointChecks.screwReach(
                of, first, key.screw(), key.through(), WoodScrew.COUNTERSINK, Optional.of(into), style));
        checks.add(tip(key, contacts));
        contacts.stream()
                .filter(c -> c.joint().said().every().isPresent()
                        && c.touch().fasteners().value() > 1)
                .map(JointChecking::apart)
                .reduce(Length::max)
                .ifPresent(apart -> checks.add(JointChecks.seamSpacing(of, apart, style)));
        checks.add(JointChecks.countersink(of, WoodScrew.COUNTERSINK, key.through(), style));
        return checks;
    }

    /** Where tips come out, of those contacts alone; else of all. */
    private Check tip(Case key, List<Contact> contacts) {
        List<Contact> out = contacts.stream()
                .filter(c -> tip(key, names(contacts), c.into()).verdict() == Check.Verdict.SHORT)
                .toList();
        List<Contact> told = out.isEmpty() ? contacts : out;
        return tip(
                key,
                names(told),
                told.stream().map(Contact::into).reduce(Length::min).orElseThrow());
    }

    private Check tip(Case key, String of, Length into) {
        return JointChecks.screwTip(of, key.screw(), key.through(), WoodScrew.COUNTERSINK, into, style);
    }

    private static String names(List<Contact> contacts) {
        return some(contacts.stream()
                .map(c -> c.touch().through().part() + " to " + c.touch().into().part())
                .distinct()
                .toList());
    }

    private static Length apart(Contact contact) {
        Length run = contact.touch().place().along().minus(FastenerLine.END_DISTANCE.times(2));
        return run.dividedBy(contact.touch().fasteners().value() - 1L);
    }

    /** {@code Back to Floor, Side to Floor and 5 more}. */
    private static String some(List<String> names) {
        int shown = names.size() > 3 ? 2 : names.size();
        String more = names.size() > shown ? " and " + (names.size() - shown) + " more" : "";
        return String.join(", ", names.subList(0, shown)) + more;
    }
}
