package org.kerfleaf.shape;

import org.kerfleaf.measure.Angle;

/**
 * The line that a door or lid turns about.
 *
 * @param point on the line, in millimetres
 * @param axis its direction, one long: what opens turns counter-clockwise when looked at against it
 */
public record HingeLine(Vector point, Vector axis) {
    public HingeLine {
        axis = axis.normalised();
    }

    /** A piece turned open by this angle. */
    public PlacedSolid turned(PlacedSolid piece, Angle angle) {
        return piece.at(piece.pose().turnedAbout(point, axis, angle));
    }

    /** How near a piece's box, square to the line, comes to it, in millimetres. */
    public double nearest(PlacedSolid piece) {
        return reach(piece).least();
    }

    /** How far a piece's furthest corner is from the line, in millimetres. */
    public double furthest(PlacedSolid piece) {
        return reach(piece).most();
    }

    private SweepBody.Reach reach(PlacedSolid piece) {
        Pose frame = frame();
        return SweepBody.Reach.of(piece.corners().stream().map(frame::toLocal).toList());
    }

    /** A frame whose w is the line; turning is then a rotation in its u and v. */
    Pose frame() {
        return Pose.facing(point, axis);
    }
}
