package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.kerfleaf.joint.FastenerLine;
import org.kerfleaf.measure.Length;
import org.kerfleaf.sketch.Bolt;

/**
 * Gives every fastener its place: along each contact, on wood, and out of the way of those driven before it from another
 * direction.
 */
final class Driving {
    private final Bodies bodies;
    private final Nearness nearness;
    private final Problems problems;
    /** How near a contact's sides must be to each other for either to be taken as its length. */
    private static final double ABOUT_SQUARE = 0.8;

    private final List<DrivenContact> driven = new ArrayList<>();

    Driving(List<PlannedJoint> joints, Sizing sizing, Bodies bodies, Problems problems) {
        this.bodies = bodies;
        this.nearness = new Nearness(sizing, bodies);
        this.problems = problems;
        joints.stream()
                .filter(j -> j.said().fastener().isPresent() && j.behind().isEmpty())
                .forEach(this::drive);
    }

    /** Every contact with its fasteners, in the order of the joints. */
    List<DrivenContact> all() {
        return List.copyOf(driven);
    }

    private void drive(PlannedJoint joint) {
        List<Driver> drivers = drivers(joint);
        List<Integer> shares = joint.said()
                .times()
                .map(many -> shares(many, drivers))
                .orElseGet(() -> drivers.stream().map(d -> 0).toList());
        for (int i = 0; i < drivers.size(); i++) {
            Driver driver = drivers.get(i);
            int share = shares.get(i);
            List<FastenerRow> rows = joint.said().times().isEmpty()
                    ? List.of(FastenerRow.every(
                            driver.place(), joint.said().every().orElseThrow()))
                    : share == 0 ? List.of() : pattern(joint, driver, share);
            if (!rows.isEmpty()) {
                drive(joint, driver, rows);
            }
        }
    }

    /** Two bolts on a contact about as wide as long stand side by side, whichever way leaves more wood to the nearest end. */
    private List<FastenerRow> pattern(PlannedJoint joint, Driver driver, int share) {
        List<FastenerRow> along = FastenerRow.pattern(driver.place(), share, end(driver));
        boolean square = driver.place().across().inMillimetres()
                > ABOUT_SQUARE * driver.place().along().inMillimetres();
        if (share != 2 || !square || !(driver.said() instanceof Bolt)) {
            return along;
        }
        List<FastenerRow> across = FastenerRow.abreast(driver.place(), share, end(driver));
        return toEnd(joint, driver, across) > toEnd(joint, driver, along) ? across : along;
    }

    /** How much wood they leave to the nearest end; less than none where one finds no wood for itself. */
    private double toEnd(PlannedJoint joint, Driver driver, List<FastenerRow> wanted) {
        List<FastenerRow> rows =
                wanted.stream().flatMap(row -> row.onWood(driver).stream()).toList();
        return rows.size() < wanted.size()
                ? -1
                : nearness.of(contact(joint, driver, rows, Length.ZERO))
                        .end()
                        .map(Length::inMillimetres)
                        .orElse(Double.MAX_VALUE);
    }

    /** Where the number is said, the end distance of the trade is kept as well as that of the shank. */
    private static Length end(Driver driver) {
        return FastenerLine.END_DISTANCE.max(Length.ofMillimetres(driver.end()));
    }

    private void drive(PlannedJoint joint, Driver driver, List<FastenerRow> wanted) {
        List<FastenerRow> rows = new ArrayList<>();
        for (FastenerRow row : wanted) {
            Optional<FastenerRow> onWood = row.onWood(driver);
            if (onWood.isEmpty()) {
                problems.add(
                        joint.said().origin(),
                        "%s and %s touch, but not all of %d fasteners find wood along their contact: openings or holes are in the way. Move one, or say fewer."
                                .formatted(
                                        driver.through().part(),
                                        driver.into().get(0).part(),
                                        row.along().size()));
                return;
            }
            rows.add(onWood.get());
        }
        driven.add(new Stagger(driven).clear(contact(joint, driver, rows, Length.ZERO)));
    }

    static DrivenContact contact(PlannedJoint joint, Driver driver, List<FastenerRow> rows, Length moved) {
        List<Driver.Driven> all = rows.stream()
                .flatMap(row -> row.along().stream()
                        .map(at -> driver.at(at, row.across()).orElseThrow()))
                .toList();
        return new DrivenContact(joint, driver, List.copyOf(rows), all, moved);
    }

    // ---- contacts -------------------------------------------------------------------------------------------------

    private List<Driver> drivers(PlannedJoint joint) {
        if (joint.said().fastener().orElseThrow() instanceof Bolt) {
            return InLine.of(joint.touches(), bodies).stream()
                    .map(stack -> new Driver(
                            bodies,
                            joint.said().fastener().orElseThrow(),
                            stack.place(),
                            stack.through(),
                            stack.into()))
                    .toList();
        }
        return joint.touches().stream()
                .map(t -> new Driver(
                        bodies, joint.said().fastener().orElseThrow(), t.place(), t.through(), List.of(t.into())))
                .toList();
    }

    /** Equal shares; what is left over goes to the largest contacts. */
    private static List<Integer> shares(int many, List<Driver> drivers) {
        List<Integer> bySize = IntStream.range(0, drivers.size())
                .boxed()
                .sorted(Comparator.comparingDouble(
                        i -> -drivers.get(i).place().area().squareMillimetres()))
                .toList();
        return IntStream.range(0, drivers.size())
                .mapToObj(i -> many / drivers.size() + (bySize.indexOf(i) < many % drivers.size() ? 1 : 0))
                .toList();
    }
}
