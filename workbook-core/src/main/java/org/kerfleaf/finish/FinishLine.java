package org.kerfleaf.finish;

import static org.kerfleaf.reason.Given.given;

import org.kerfleaf.measure.Quantity;
import org.kerfleaf.measure.Volume;
import org.kerfleaf.reason.Figure;

/**
 * One finishing material with what is needed of it.
 *
 * @param what the material's name
 * @param task {@code paint}, {@code caulk} or {@code glue}
 * @param extent the area to coat or the length to run, all coats counted once
 * @param coats how many coats
 * @param need the volume needed
 * @param pack the volume of one can, cartridge or bottle
 * @param packs how many to buy
 * @param goes how far one pack goes, nothing wasted: the area in one coat or joint, the length of a bead
 */
public record FinishLine(
        String what,
        Task task,
        Figure<? extends Quantity> extent,
        int coats,
        Figure<Volume> need,
        Volume pack,
        Figure<Integer> packs,
        Figure<? extends Quantity> goes) {
    /** What of the packs is left over. */
    public Figure<Volume> left() {
        return Figure.of(
                pack.times(packs.value()).minus(need.value()),
                "packs · pack − need",
                "arithmetic",
                given("packs", packs.value()),
                given("pack", pack),
                given("need", need.value()));
    }

    /** What is done with it. */
    public enum Task {
        PAINT,
        CAULK,
        GLUE
    }
}
