/**
 * What runs inside the child process: it takes bytecode, runs it from the top and reports. Start at
 * {@link org.kerfleaf.kernel.child.ChildMain}. Nothing here may keep a value that a cell made beyond its run.
 */
package org.kerfleaf.kernel.child;
