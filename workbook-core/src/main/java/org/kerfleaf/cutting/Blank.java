package org.kerfleaf.cutting;

/**
 * One part to cut from a sheet, in the solver's measures: nanometres with one kerf added to each side. With a kerf added
 * to the sheet too, edge-to-edge cutting with a kerf is the same as cutting without one.
 *
 * @param kind the part's place in the cut list; equal parts share it
 * @param part its name
 * @param length along its grain
 * @param width across
 * @param upright whether it may lie with the sheet's grain and fits so
 * @param turned whether it may lie across it and fits so; false for a square that may lie upright
 */
record Blank(int kind, String part, long length, long width, boolean upright, boolean turned) {
    long alongSheet(boolean isTurned) {
        return isTurned ? width : length;
    }

    long acrossSheet(boolean isTurned) {
        return isTurned ? length : width;
    }

    boolean allows(boolean isTurned) {
        return isTurned ? turned : upright;
    }
}
