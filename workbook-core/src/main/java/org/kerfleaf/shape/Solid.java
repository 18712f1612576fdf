package org.kerfleaf.shape;

import java.util.List;
import org.kerfleaf.measure.Angle;
import org.kerfleaf.measure.Area;
import org.kerfleaf.measure.Length;
import org.kerfleaf.measure.Volume;

/**
 * A part: an outline as thick as its stock, sawn off by named cuts, less named pockets.
 *
 * <p>Its own frame: u and v in the outline, w from 0, the OUTSIDE or lower face, to the thickness, the INSIDE or upper face;
 * right-handed, so one sees u to the right and v up when looking at the INSIDE. Faces follow from this definition and are never
 * split, so names are stable at every size.
 */
public final class Solid {
    private final Outline outline;
    private final Length thickness;
    private final List<Cut> cuts;
    private final List<Pocket> pockets;

    private Solid(Outline outline, Length thickness, List<Cut> cuts, List<Pocket> pockets) {
        this.outline = outline;
        this.thickness = thickness;
        this.cuts = List.copyOf(cuts);
        this.pockets = List.copyOf(pockets);
    }

    /** @throws IllegalArgumentException if the thickness is not more than nothing */
    public static Solid of(Outline outline, Length thickness) {
        return new Solid(outline, thickness, List.of(), List.of());
    }

    public Outline outline() {
        return outline;
    }

    public Length thickness() {
        return thickness;
    }

    public List<Cut> cuts() {
        return cuts;
    }

    public List<Pocket> pockets() {
        return pockets;
    }

    /**
     * An edge sawn with the blade tilted; the outline stays the size of the long face. The cut has the edge's name.
     *
     * @param tilt from square to the sheet, more than 0 and less than 90 degrees
     * @param longFace the face that keeps its size
     */
    public Solid bevelled(String edge, Angle tilt, SheetSide longFace) {
        throw new UnsupportedOperationException("not built yet");
    }

    /**
     * An end sawn with the blade swung and tilted.
     *
     * @param longAt the neighbouring edge on which the long point stays
     * @param mitre in the sheet, from square
     * @param tilt of the blade, from square to the sheet; zero for a plain mitre
     */
    public Solid mitredEnd(String edge, String longAt, Angle mitre, Angle tilt, SheetSide longFace) {
        throw new UnsupportedOperationException("not built yet");
    }

    /** Sawn off at any plane not square to the sheet. */
    public Solid cut(Cut cut) {
        throw new UnsupportedOperationException("not built yet");
    }

    /** With wood taken out from one side. @throws IllegalArgumentException if it is as deep as the sheet or its name is taken */
    public Solid pocket(String name, Outline shape, Length depth, SheetSide side) {
        throw new UnsupportedOperationException("not built yet");
    }

    /** A rabbet along a straight edge of the outline. */
    public Solid rabbetAlong(String name, String edge, Length wide, Length depth, SheetSide side) {
        throw new UnsupportedOperationException("not built yet");
    }

    /** A rabbet all round an opening, with square corners. */
    public Solid rabbetAround(String name, String opening, Length wide, Length depth, SheetSide side) {
        throw new UnsupportedOperationException("not built yet");
    }

    /** A groove right across, side by side with a straight edge, its near wall so far from that edge. */
    public Solid groove(String name, String edge, Length from, Length wide, Length depth, SheetSide side) {
        throw new UnsupportedOperationException("not built yet");
    }

    /** The other hand: u mirrored about the middle of the outline's box; every name stays with its face. */
    public Solid mirrored() {
        throw new UnsupportedOperationException("not built yet");
    }

    /** All faces, arcs as facets; in a fixed order. */
    public List<Face> faces() {
        throw new UnsupportedOperationException("not built yet");
    }

    /** The faces of that name: facets of an arc, or what grooves leave of it. @throws IllegalArgumentException if there is none */
    public List<Face> faces(String name) {
        throw new UnsupportedOperationException("not built yet");
    }

    /** The flat face of that name, the largest piece of it. @throws IllegalArgumentException if there is none or it is round */
    public Face face(String name) {
        throw new UnsupportedOperationException("not built yet");
    }

    public Volume volume() {
        throw new UnsupportedOperationException("not built yet");
    }

    /** The middle of the wood, in this frame. */
    public Vector centroid() {
        throw new UnsupportedOperationException("not built yet");
    }

    /** The area of all faces of that name; arcs count in full. */
    public Area area(String name) {
        throw new UnsupportedOperationException("not built yet");
    }

    /** The area of all faces. */
    public Area surface() {
        throw new UnsupportedOperationException("not built yet");
    }

    /** Whether a point of this frame is in the wood, not on a face. */
    public boolean holds(Vector point) {
        throw new UnsupportedOperationException("not built yet");
    }
}
