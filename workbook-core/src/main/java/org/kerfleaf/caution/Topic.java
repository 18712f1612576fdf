package org.kerfleaf.caution;

/** The tools and matters that can hurt. */
public enum Topic {
    CIRCULAR_SAW("Circular saw"),
    TABLE_SAW("Table saw"),
    MITRE_SAW("Mitre saw"),
    JIGSAW("Jigsaw"),
    ROUTER("Router"),
    DRILL("Drill and driver"),
    NAILER("Nails and nailer"),
    DUST("Sanding and dust"),
    GLUE_AND_PAINT("Glue, paint and caulk"),
    GLAZING("Glass and acrylic"),
    TREATED_WOOD("Treated wood"),
    SCRAP("Old wood"),
    LIFTING("Lifting"),
    LADDER("Ladder"),
    DIGGING("Digging"),
    CONCRETE("Concrete"),
    ELECTRICITY("Electricity outdoors"),
    CHILDREN("Children at the build"),
    FATIGUE("Tired, or alone");

    private final String title;

    Topic(String title) {
        this.title = title;
    }

    /** The heading on the safety page. */
    public String title() {
        return title;
    }
}
