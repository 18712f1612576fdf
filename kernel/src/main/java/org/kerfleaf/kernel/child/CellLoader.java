package org.kerfleaf.kernel.child;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.kerfleaf.kernel.wire.ClassCode;

/** Defines the classes of one run. A fresh one for every run, so that no static field outlives it. */
final class CellLoader extends ClassLoader {
    private final Map<String, byte[]> classes = new HashMap<>();

    CellLoader(List<ClassCode> code) {
        super("cells", CellLoader.class.getClassLoader());
        code.forEach(one -> classes.put(one.name(), one.bytes()));
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
        byte[] bytes = classes.remove(name);
        if (bytes == null) {
            throw new ClassNotFoundException(name);
        }
        return defineClass(name, bytes, 0, bytes.length);
    }
}
