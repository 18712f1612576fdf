package org.kerfleaf.kernel.wire;

/**
 * How the methods of several pieces of Java are told apart in a class that they share. Each carries the class that was made
 * of its piece in its name, behind a sign that no name in Java has, so that a line of a stack trace leads back to the piece.
 */
public final class SharedClass {
    /** The static method that gives all fields of a shared class the value back with which they began. */
    public static final String FORGET = "forget@";

    private static final char OF = '@';

    private SharedClass() {}

    /** What a method is called in the shared class. */
    public static String method(String className, String method) {
        return method + OF + className.substring(className.lastIndexOf('.') + 1);
    }

    /** A line of a stack trace as it would be without sharing. */
    public static Thrown.Frame frame(StackTraceElement element) {
        String className = element.getClassName();
        String method = element.getMethodName();
        int of = method.indexOf(OF);
        return of < 0
                ? new Thrown.Frame(className, method, element.getLineNumber())
                : new Thrown.Frame(
                        className.substring(0, className.lastIndexOf('.') + 1) + method.substring(of + 1),
                        method.substring(0, of),
                        element.getLineNumber());
    }
}
