package org.kerfleaf.plan;

import java.util.List;
import org.kerfleaf.rain.Way;

/**
 * Where rain goes on the finished build.
 *
 * @param ways of the water
 * @param marks what it finds on them, in the order of their numbers
 */
public record Rain(List<Way> ways, List<RainMark> marks) {
    /** What the walk does not know; it stands beside every drawing of it. */
    public static final String LIMITS = "Rain is taken to fall straight down on the finished build, doors closed."
            + " Wind that drives it under eaves and against walls, splashing and water drawn up into gaps are not followed.";

    public Rain {
        ways = List.copyOf(ways);
        marks = List.copyOf(marks);
    }

    /** The marks of that kind. */
    public List<RainMark> of(RainMark.Kind kind) {
        return marks.stream().filter(m -> m.kind() == kind).toList();
    }
}
