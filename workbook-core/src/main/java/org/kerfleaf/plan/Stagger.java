package org.kerfleaf.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.kerfleaf.joint.DrivenFastener;
import org.kerfleaf.measure.Length;

/** Keeps fasteners from two directions from meeting in the wood: the row that comes later goes out of the way. */
final class Stagger {
    private final List<DrivenContact> before;

    /** @param before what is driven already */
    Stagger(List<DrivenContact> before) {
        this.before = List.copyOf(before);
    }

    /** The two of two contacts' fasteners that come nearest, from two directions in one piece. */
    record Meeting(DrivenContact one, DrivenContact other, DrivenFastener a, DrivenFastener b) {
        /** How near the middles of their shanks come. */
        Length between() {
            return a.between(b);
        }

        /** How much nearer they may come; negative where they meet. */
        Length spare() {
            return between().minus(a.wanted(b));
        }
    }

    /** For every two contacts that share a piece, the two fasteners that have the least to spare. */
    static List<Meeting> meetings(List<DrivenContact> all) {
        List<Meeting> meetings = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            for (int j = 0; j < i; j++) {
                nearest(all.get(j), all.get(i)).ifPresent(meetings::add);
            }
        }
        return meetings;
    }

    private static Optional<Meeting> nearest(DrivenContact one, DrivenContact other) {
        if (!one.sharesWood(other)) {
            return Optional.empty();
        }
        Meeting nearest = null;
        for (DrivenFastener a : one.fasteners()) {
            for (DrivenFastener b : other.fasteners()) {
                if (a.isCrossedBy(b)) {
                    Meeting met = new Meeting(one, other, a, b);
                    nearest = nearest == null || met.spare().compareTo(nearest.spare()) < 0 ? met : nearest;
                }
            }
        }
        return Optional.ofNullable(nearest);
    }

    /**
     * The contact with its rows moved along it by the least that clears all, in steps of 1/64 in; as it is if it is clear, or if
     * nothing clears.
     *
     * <p>A row moves as it is while both of its end distances last; else one end of it, or both, draw in.
     */
    DrivenContact clear(DrivenContact contact) {
        if (isClear(contact)) {
            return contact;
        }
        double length = contact.driver().place().along().inMillimetres();
        double step = FastenerRow.STEP.inMillimetres();
        for (int i = 1; i * step < length / 2; i++) {
            double by = i * step;
            for (double[] move : new double[][] {{by, by}, {-by, -by}, {by, 0}, {0, -by}, {by, -by}}) {
                Optional<DrivenContact> moved = moved(contact, move[0], move[1], by);
                if (moved.isPresent() && isClear(moved.get())) {
                    return moved.get();
                }
            }
        }
        return contact;
    }

    private boolean isClear(DrivenContact contact) {
        return before.stream()
                .flatMap(other -> nearest(other, contact).stream())
                .noneMatch(met -> met.spare().isNegative());
    }

    private static Optional<DrivenContact> moved(DrivenContact contact, double first, double last, double by) {
        Driver driver = contact.driver();
        List<FastenerRow> rows = new ArrayList<>();
        for (FastenerRow row : contact.rows()) {
            FastenerRow moved = row.moved(first, last);
            boolean alone = row.along().size() == 1;
            if (alone && first != last || !keepsEnds(row, moved, driver) || !moved.isOnWood(driver)) {
                return Optional.empty();
            }
            rows.add(moved);
        }
        return Optional.of(Driving.contact(contact.joint(), driver, rows, Length.ofMillimetres(by)));
    }

    /** No end comes nearer than the shank's end distance, or than it was; and a row that draws in keeps half its spacing. */
    private static boolean keepsEnds(FastenerRow row, FastenerRow moved, Driver driver) {
        double length = driver.place().along().inMillimetres();
        int end = row.along().size() - 1;
        double before = Math.min(row.along().get(0), length - row.along().get(end));
        double least = driver.end() == 0 ? before : Math.min(before, driver.end());
        double run = row.along().get(end) - row.along().get(0);
        return moved.along().get(0) >= least - 1e-6
                && length - moved.along().get(end) >= least - 1e-6
                && moved.along().get(end) - moved.along().get(0) >= run / 2;
    }
}
