package org.kerfleaf.kernel.child;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.kerfleaf.kernel.reach.ReachList;
import org.kerfleaf.kernel.wire.ClassCode;

/**
 * Defines the classes of one run. A fresh one for every run, so that no static field outlives it.
 *
 * <p>Where only the words are allowed, it keeps all other classes from the cells, in case what was read from their bytecode
 * beforehand missed one. It is a second lock on the same door and no jail: it sees classes, not what is done with them.
 */
final class CellLoader extends ClassLoader {
    /** What every run asks for again; none of it belongs to a run. */
    private static final Map<String, Class<?>> OF_THE_WORDS = new ConcurrentHashMap<>();

    private final Map<String, byte[]> classes = new HashMap<>();

    private final boolean wordsOnly;

    /** @param wordsOnly whether it gives only classes of {@link ReachList} */
    CellLoader(List<ClassCode> code, boolean wordsOnly) {
        super("cells", CellLoader.class.getClassLoader());
        this.wordsOnly = wordsOnly;
        code.forEach(one -> classes.put(one.name(), one.bytes()));
    }

    /** @throws SecurityException if the cells may not have that class */
    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
        if (name.startsWith(ReachList.CELLS)) {
            // Asking the parent first, as loaders do, would look through every jar for a class that is in none.
            synchronized (getClassLoadingLock(name)) {
                Class<?> known = findLoadedClass(name);
                return known == null ? findClass(name) : known;
            }
        }
        if (!wordsOnly) {
            return super.loadClass(name, resolve);
        }
        Class<?> known = OF_THE_WORDS.get(name);
        if (known != null) {
            return known;
        }
        if (!ReachList.mayLoad(name)) {
            throw new SecurityException("This reaches for %s, which is not allowed here.".formatted(name));
        }
        Class<?> found = super.loadClass(name, resolve);
        OF_THE_WORDS.put(name, found);
        return found;
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
