package org.kerfleaf.plan;

import java.util.List;
import java.util.stream.Stream;
import org.kerfleaf.joint.DrivenFastener;
import org.kerfleaf.measure.Length;

/**
 * One contact with the fasteners driven through it.
 *
 * @param driver drives them
 * @param rows where they stand
 * @param driven all of them, row by row
 * @param moved how far the row went out of the way of others
 */
record DrivenContact(
        PlannedJoint joint, Driver driver, List<FastenerRow> rows, List<Driver.Driven> driven, Length moved) {
    List<DrivenFastener> fasteners() {
        return driven.stream().map(Driver.Driven::fastener).toList();
    }

    /** The piece it is driven through, then what it holds in. */
    List<Piece> pieces() {
        return Stream.concat(Stream.of(driver.through()), driver.into().stream())
                .toList();
    }

    boolean sharesWood(DrivenContact other) {
        return pieces().stream().anyMatch(other.pieces()::contains);
    }
}
