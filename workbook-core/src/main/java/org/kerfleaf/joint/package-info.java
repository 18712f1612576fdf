/** Fasteners: which, how many, where, what they hold. Start at {@link org.kerfleaf.joint.Fastening}. */
package org.kerfleaf.joint;
