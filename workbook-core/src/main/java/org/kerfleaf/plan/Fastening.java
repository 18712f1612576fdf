package org.kerfleaf.plan;

import java.util.List;
import org.kerfleaf.joint.GluedJoint;
import org.kerfleaf.joint.Marking;
import org.kerfleaf.joint.ScrewChoice;

/**
 * Where fasteners go, and what is marked on the parts for them.
 *
 * @param joints contact by contact, in the order of the joints
 * @param choices the screws that were chosen from a drawer, joint by joint
 * @param glued what each glued joint takes
 * @param markings one drawing for each different piece and face, in the order of the parts' letters
 */
public record Fastening(
        List<Fastened> joints, List<ScrewChoice> choices, List<GluedJoint> glued, List<Marking> markings) {
    /** Of a plan that fastens and marks nothing. */
    public static final Fastening NONE = new Fastening(List.of(), List.of(), List.of(), List.of());

    /** The contacts, those of a step that are fastened alike as one line. */
    public List<FastenedAlike> alike() {
        return FastenedAlike.of(joints);
    }

    public Fastening {
        joints = List.copyOf(joints);
        choices = List.copyOf(choices);
        glued = List.copyOf(glued);
        markings = List.copyOf(markings);
    }
}
