package org.kerfleaf.kernel.compile;

import java.util.Arrays;
import java.util.Map;
import jdk.jshell.spi.ExecutionControl;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;

/**
 * Takes the bytecode that JShell makes, and runs none of it.
 *
 * <p>A redefinition is accepted when the class keeps its shape; else JShell gives the class a new name and compiles again
 * what it knows to use it.
 */
final class CollectingControl implements ExecutionControl {
    private final CellClasses classes = new CellClasses();

    /** The provider to build a session with. */
    ExecutionControlProvider provider() {
        return new ExecutionControlProvider() {
            @Override
            public String name() {
                return "collecting";
            }

            @Override
            public ExecutionControl generate(ExecutionEnv env, Map<String, String> parameters) {
                return CollectingControl.this;
            }
        };
    }

    /** All classes so far. */
    CellClasses classes() {
        return classes;
    }

    @Override
    public void load(ClassBytecodes[] loaded) {
        Arrays.stream(loaded).forEach(one -> classes.put(one.name(), one.bytecodes()));
    }

    @Override
    public void redefine(ClassBytecodes[] redefined) throws ClassInstallException {
        boolean[] kept = new boolean[redefined.length];
        boolean all = true;
        for (int i = 0; i < redefined.length; i++) {
            CellClass before = classes.get(redefined[i].name());
            kept[i] = before != null && before.shape().fits(ClassShape.of(redefined[i].bytecodes()));
            all &= kept[i];
        }
        if (!all) {
            throw new ClassInstallException("The shape changed.", kept);
        }
        load(redefined);
    }

    @Override
    public String invoke(String className, String methodName) {
        return "";
    }

    @Override
    public String varValue(String className, String varName) {
        return "";
    }

    @Override
    public void addToClasspath(String path) {
        // The class path is an option of the compiler.
    }

    @Override
    public void stop() {
        // Nothing runs.
    }

    @Override
    public Object extensionCommand(String command, Object argument) throws NotImplementedException {
        throw new NotImplementedException("Command (%s): none are known.".formatted(command));
    }

    @Override
    public void close() {
        // Nothing is open.
    }
}
