package org.kerfleaf.kernel.child;

import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.kerfleaf.kernel.wire.Request;
import org.kerfleaf.kernel.wire.SharedClass;
import org.kerfleaf.kernel.wire.Unit;

/**
 * The classes of a workbook, fresh in their own loader.
 *
 * <p>They may serve a run after this one, and that is ten times faster than defining them anew, where it can make no
 * difference: cells keep nothing but in the fields of shared classes, which forget; they reach for nothing beyond the words;
 * and nothing was thrown, for what the virtual machine could not link once it does not try again.
 */
final class CellClasses {
    private static final String DO_IT = "do_it$";

    private final Request.Load book;
    private final CellLoader loader;
    private final Map<Integer, MethodHandle> methods = new HashMap<>();
    private final List<MethodHandle> forgetting = new ArrayList<>();

    CellClasses(Request.Load book) {
        this.book = book;
        this.loader = new CellLoader(book.classes(), book.wordsOnly());
    }

    /** The workbook that these classes are of. */
    Request.Load book() {
        return book;
    }

    ClassLoader loader() {
        return loader;
    }

    /** Does what a unit says. @throws Throwable what the unit throws */
    Object invoke(Unit unit) throws Throwable {
        MethodHandle method = methods.get(unit.index());
        if (method == null) {
            method = method(unit.home(), unit.method(DO_IT), Object.class);
            methods.put(unit.index(), method);
        }
        return (Object) method.invokeExact();
    }

    /** What a unit's field holds. */
    Object field(Unit unit) throws ReflectiveOperationException {
        Field field =
                loader.loadClass(unit.home()).getDeclaredField(unit.field().orElseThrow());
        field.setAccessible(true);
        return field.get(null);
    }

    /**
     * The classes for the next run of the workbook: these, or new ones.
     *
     * @param threw whether anything was thrown in the run before
     */
    CellClasses next(boolean threw) {
        if (threw || !book.forgetful() || !book.wordsOnly()) {
            return new CellClasses(book);
        }
        try {
            if (forgetting.isEmpty()) {
                for (String shared : book.shared()) {
                    forgetting.add(method(shared, SharedClass.FORGET, void.class));
                }
            }
            for (MethodHandle forget : forgetting) {
                forget.invokeExact();
            }
            return this;
        } catch (Throwable cannot) {
            return new CellClasses(book);
        }
    }

    // Reflection would make itself a class in the cells' loader after some calls.
    private MethodHandle method(String className, String name, Class<?> gives) throws ReflectiveOperationException {
        Class<?> holder = loader.loadClass(className);
        return MethodHandles.privateLookupIn(holder, MethodHandles.lookup())
                .findStatic(holder, name, MethodType.methodType(gives));
    }
}
