package org.kerfleaf.cost;

/** Where in a shop a thing is found, in the order of the shopping list. */
public enum Department {
    TIMBER("Timber yard"),
    GLAZING("Glazing"),
    IRONMONGER("Ironmonger"),
    FINISH("Glue, paint, caulk"),
    GROUND("Ground");

    private final String title;

    Department(String title) {
        this.title = title;
    }

    public String title() {
        return title;
    }
}
