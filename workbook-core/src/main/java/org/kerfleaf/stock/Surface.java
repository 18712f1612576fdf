package org.kerfleaf.stock;

/** How a sheet's faces left the mill. */
public enum Surface {
    /** Sanded on both faces. */
    SANDED,
    /** Unsanded, touch-sanded or overlaid. */
    UNSANDED
}
