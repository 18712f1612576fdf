package org.kerfleaf.plan;

import java.util.List;

/**
 * What hangs on hinges, and what is glazed.
 *
 * @param hung each door and lid, with the lines to mark on it and on what it closes
 * @param panes each pane in its pocket
 */
public record Doors(List<HungDoor> hung, List<GlazedPane> panes) {
    /** Of a build without doors and panes. */
    public static final Doors NONE = new Doors(List.of(), List.of());

    public Doors {
        hung = List.copyOf(hung);
        panes = List.copyOf(panes);
    }
}
