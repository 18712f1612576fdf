package org.kerfleaf.caution;

import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The usual words against what can hurt somebody, and the protection to wear. */
public final class Cautions {
    private Cautions() {}

    /** The caution of a topic, for the whole build; {@link Caution#onSteps(List)} puts it on steps. */
    public static Caution of(Topic topic) {
        Said said = said(topic);
        return new Caution(topic, said.words, List.of(), said.source);
    }

    /** The cautions of all these topics, each once, in the order of {@link Topic}. */
    public static List<Caution> of(Collection<Topic> topics) {
        return inOrder(topics).stream().map(Cautions::of).toList();
    }

    /** The protection a topic asks for, in the order of {@link Sign}; empty where it asks for none. */
    public static List<Sign> signs(Topic topic) {
        return List.copyOf(EnumSet.copyOf(said(topic).signs));
    }

    /** The protection all these topics ask for, each sign once. */
    public static List<Sign> signs(Collection<Topic> topics) {
        Set<Sign> all = EnumSet.noneOf(Sign.class);
        inOrder(topics).forEach(topic -> all.addAll(said(topic).signs));
        return List.copyOf(all);
    }

    private static Set<Topic> inOrder(Collection<Topic> topics) {
        return topics.isEmpty() ? EnumSet.noneOf(Topic.class) : EnumSet.copyOf(topics);
    }

    private record Said(String words, String source, Set<Sign> signs) {
        Said(String words, String source, Sign... signs) {
            this(words, source, signs.length == 0 ? EnumSet.noneOf(Sign.class) : EnumSet.copyOf(List.of(signs)));
        }
    }

    private static Said said(Topic topic) {
        return switch (topic) {
            case CIRCULAR_SAW, TABLE_SAW, MITRE_SAW, JIGSAW, ROUTER, DRILL, NAILER -> tool(topic);
            default -> matter(topic);
        };
    }

    private static Said tool(Topic topic) {
        return switch (topic) {
            case CIRCULAR_SAW ->
                new Said(
                        "The lower guard must snap shut by itself before you set the saw down. Hold up both sides of the sheet so"
                                + " that the cut opens and never pinches. Set the blade just past the sheet. Stand beside the line,"
                                + " with the cord behind you. Unplug it before you change the blade or its tilt.",
                        "29 CFR 1926.304(d) (from memory); common practice",
                        Sign.M003,
                        Sign.M004,
                        Sign.M016,
                        Sign.M021);
            case TABLE_SAW ->
                new Said(
                        "Guard, riving knife and pawls stay on. A push stick near the blade. Never cut freehand, always along the"
                                + " fence or with the mitre gauge. Never reach over the blade. Stand beside the line of the cut.",
                        "29 CFR 1910.213(c) and 1926.304(i) (from memory)",
                        Sign.M003,
                        Sign.M004,
                        Sign.M016,
                        Sign.M021);
            case MITRE_SAW ->
                new Said(
                        "Keep hands 6 in (150 mm) from the blade. Clamp the piece; cut short pieces from long stock. Let the blade"
                                + " stop before you lift it. No loose offcuts against the fence.",
                        "29 CFR 1910.213 (from memory); common practice",
                        Sign.M003,
                        Sign.M004,
                        Sign.M016,
                        Sign.M021);
            case JIGSAW ->
                new Said(
                        "Nothing and nobody under the work. Let the blade stop before you lift the saw out. The blade is hot.",
                        "common practice, no source",
                        Sign.M003,
                        Sign.M004,
                        Sign.M016);
            case ROUTER ->
                new Said(
                        "Feed against the turn of the cutter: outside edges anticlockwise, inside an opening clockwise, seen from"
                                + " above. Two thirds of the shank or more in the collet. Small bites, 1/8 in (3 mm) at most."
                                + " Unplug it before you change the cutter.",
                        "tool makers' manuals (seen in a copy); ISO 7010 M021",
                        Sign.M003,
                        Sign.M004,
                        Sign.M016,
                        Sign.M021);
            case DRILL ->
                new Said(
                        "Clamp small work; never hold it over a hand. No loose sleeves, gloves or hair near a turning bit. A hole"
                                + " saw grabs: hold the drill with both hands.",
                        "common practice, no source",
                        Sign.M004);
            case NAILER ->
                new Said(
                        "Full sequence trigger only. Keep the other hand 12 in (300 mm) from the nose. Take off air or battery"
                                + " before you clear a jam. Never point it at anybody. With a hammer, too, wear goggles.",
                        "NIOSH and OSHA nail gun guide; 29 CFR 1926.302(b) (from memory)",
                        Sign.M003,
                        Sign.M004);
            default -> throw new IllegalStateException(topic + " is no tool.");
        };
    }

    private static Said matter(Topic topic) {
        return switch (topic) {
            case DUST ->
                new Said(
                        "Catch dust at the tool and wear a mask: wood dust in the air should stay under 1 mg in a cubic"
                                + " metre. Empty the bag outdoors, and keep sparks from it.",
                        "NIOSH recommended limit (seen in a copy); common practice",
                        Sign.M004,
                        Sign.M016);
            case GLUE_AND_PAINT ->
                new Said(
                        "Fresh air, gloves, no flame. Rags with drying oil can set themselves alight: spread them flat outdoors, or"
                                + " put them under water in a metal can with a lid. Keep lids on when children are near.",
                        "NFPA tip sheet (seen in a copy); common practice",
                        Sign.M009);
            case GLAZING ->
                new Said(
                        "Gloves and goggles. Score, then snap away from you. Two people carry a large pane upright. Tempered glass"
                                + " is never cut. Cut edges of acrylic are sharp; the film stays on until the end.",
                        "ISO 7010 M009, M004; common practice",
                        Sign.M004,
                        Sign.M009);
            case TREATED_WOOD ->
                new Said(
                        "Saw it outdoors, with mask, goggles and gloves. Wash your hands before you eat. Never burn offcuts. Keep"
                                + " it from where food or bees touch it.",
                        "EPA consumer information sheet (seen in copies)",
                        Sign.M004,
                        Sign.M009,
                        Sign.M011,
                        Sign.M016);
            case LIFTING ->
                new Said(
                        "Agree the words lift, stop and down. Lift with two where the plan says two. The box is propped, not held,"
                                + " while screws go in.",
                        "common practice, no source",
                        Sign.M008);
            case LADDER ->
                new Said(
                        "It stands one out for four up, tied at the top or footed by somebody. Stay below its top two steps. Nobody"
                                + " lifts a box while on a ladder.",
                        "29 CFR 1926.1053(b) (from memory); common practice",
                        Sign.M008);
            case SCRAP ->
                new Said(
                        "Look for nails, screws and grit before you saw it. Do not sand or saw old paint before a test for lead says"
                                + " there is none. Wood that smells or that somebody treated is not for indoors, food or fire.",
                        "EPA 747-K-97-001 (from memory); common practice",
                        Sign.M004,
                        Sign.M009,
                        Sign.M016);
            case DIGGING ->
                new Said(
                        "No hole before the buried lines are located and marked. Dig by hand near any mark. Cover or fence an open"
                                + " hole the same day. An auger kicks: stand clear of its handle's swing.",
                        "29 CFR 1926.651(b) (seen in a copy); common practice",
                        Sign.M008,
                        Sign.M009);
            case CONCRETE ->
                new Said(
                        "Dry mix makes silica dust, wet mix burns skin. Mask, goggles and gloves; rinse off splashes at once.",
                        "29 CFR 1926.1153 (from memory); burns from memory",
                        Sign.M004,
                        Sign.M009,
                        Sign.M016);
            case ELECTRICITY ->
                new Said(
                        "Every outlet and cord outdoors goes through a residual current or ground fault device. Cords made for"
                                + " outdoors, uncoiled, out of the wet. Stop when it rains. Unplug before any blade change.",
                        "29 CFR 1926.404(b)(1) (from memory)",
                        Sign.M021);
            case CHILDREN ->
                new Said(
                        "No power saw, router or nailer under 18. Hand tools from about 7 to 9, with one grown-up for two to four"
                                + " children, and goggles and muffs of their own. A grown-up makes every machine cut beforehand.",
                        "29 CFR 570.55 sets 18 for paid work; a youth club guide (seen in a copy); common practice",
                        Sign.M003,
                        Sign.M004);
            case FATIGUE ->
                new Said(
                        "No machine in the last half hour of a long day, alone in the house, or after a drink or a medicine that"
                                + " dulls. Take breaks. Stop for the day at the first near miss.",
                        "common practice, no source");
            default -> throw new IllegalStateException(topic + " is no matter.");
        };
    }
}
