package org.kerfleaf.kernel.compile;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.kerfleaf.kernel.wire.ClassCode;
import org.kerfleaf.kernel.wire.SharedClass;
import org.kerfleaf.kernel.wire.Unit;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.FieldVisitor;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.ClassRemapper;
import org.objectweb.asm.commons.Remapper;

/**
 * A workbook's classes put together into few. JShell makes a class of every piece, and every run defines all of them anew:
 * most of what a run costs. A piece stays alone if it declares a class of its own, which may need the one around it.
 *
 * <p>Each shared class also has a method that gives all its fields back the value they begin with. Where a workbook keeps
 * nothing anywhere else, one set of classes serves many runs.
 *
 * @param classes what a run defines
 * @param units the units, each in the class where it now stands
 * @param shared the classes that have {@link SharedClass#FORGET}
 * @param forgetful whether nothing of a run is left when these have forgotten
 */
public record Joined(List<ClassCode> classes, List<Unit> units, List<String> shared, boolean forgetful) {
    /** Far fewer bytes than a class can have constants, of which each takes three bytes at least. */
    private static final int MOST_BYTES = 60_000;

    private static final String DOTTED = "REPL.Shared";
    private static final String INIT = "<init>";

    /** Puts together what can be. */
    public static Joined of(CompiledWorkbook compiled) {
        Map<String, String> homes = new LinkedHashMap<>();
        boolean forgetful = findHomes(compiled, homes);
        Remapper moved = new Moved(homes);
        Map<String, Shared> shared = new LinkedHashMap<>();
        List<ClassCode> classes = new ArrayList<>();
        for (ClassCode code : compiled.classes()) {
            ClassReader reader = new ClassReader(code.bytes());
            String home = homes.get(reader.getClassName());
            if (home == null) {
                ClassWriter alone = new ClassWriter(0);
                reader.accept(new ClassRemapper(alone, moved), 0);
                classes.add(new ClassCode(code.name(), alone.toByteArray()));
            } else {
                Shared into = shared.computeIfAbsent(home, name -> new Shared(name, reader.readShort(6)));
                reader.accept(new ClassRemapper(into.members(), moved), 0);
            }
        }
        shared.forEach((name, whole) -> classes.add(new ClassCode(dotted(name), whole.toByteArray())));
        List<Unit> units = compiled.runnable().stream()
                .map(unit -> unit.at(dotted(homes.getOrDefault(slashed(unit.className()), slashed(unit.className())))))
                .toList();
        List<String> names = shared.keySet().stream().map(Joined::dotted).toList();
        return new Joined(classes, units, names, forgetful);
    }

    /** Finds the shared one for every class that can share one; says whether all others keep nothing. */
    private static boolean findHomes(CompiledWorkbook compiled, Map<String, String> homes) {
        boolean forgetful = true;
        Set<String> fields = new HashSet<>();
        int bytes = 0;
        int number = 0;
        for (ClassCode code : compiled.classes()) {
            Alone looked = new Alone();
            ClassReader reader = new ClassReader(code.bytes());
            reader.accept(looked, ClassReader.SKIP_CODE);
            if (looked.alone || looked.fields.stream().anyMatch(fields::contains)) {
                forgetful &= !looked.keeps;
                continue;
            }
            bytes += code.bytes().length;
            if (bytes > MOST_BYTES) {
                bytes = code.bytes().length;
                number++;
            }
            fields.addAll(looked.fields);
            homes.put(reader.getClassName(), slashed(DOTTED) + number);
        }
        return forgetful;
    }

    private static String dotted(String name) {
        return name.replace('/', '.');
    }

    private static String slashed(String name) {
        return name.replace('.', '/');
    }

    /** Looks whether a class has to stay by itself. */
    private static final class Alone extends ClassVisitor {
        private final Set<String> fields = new HashSet<>();
        private boolean alone;
        private boolean keeps;

        Alone() {
            super(Opcodes.ASM9);
        }

        @Override
        public void visitNestHost(String host) {
            alone = true;
        }

        @Override
        public void visitNestMember(String member) {
            alone = true;
        }

        @Override
        public FieldVisitor visitField(int access, String name, String descriptor, String signature, Object value) {
            fields.add(name);
            keeps |= (access & Opcodes.ACC_STATIC) != 0;
            // It has that value before anything runs.
            alone |= value != null;
            return null;
        }

        @Override
        public MethodVisitor visitMethod(
                int access, String name, String descriptor, String signature, String[] thrown) {
            alone |= name.equals("<clinit>");
            keeps |= name.equals("<clinit>");
            return null;
        }
    }

    /** Where fields and methods of a class that shares another are found now. */
    private static final class Moved extends Remapper {
        private final Map<String, String> homes;

        Moved(Map<String, String> homes) {
            super(Opcodes.ASM9);
            this.homes = homes;
        }

        @Override
        public String map(String name) {
            return homes.getOrDefault(name, name);
        }

        @Override
        public String mapMethodName(String owner, String name, String descriptor) {
            return homes.containsKey(owner) && !name.equals(INIT) ? SharedClass.method(dotted(owner), name) : name;
        }
    }

    /** A class that several share. */
    private static final class Shared {
        private final String name;
        private final ClassWriter writer = new ClassWriter(0);
        private final MethodVisitor forget;

        /** @param version of the class file; all of a workbook are of one compiler, so all have one version */
        Shared(String name, int version) {
            this.name = name;
            writer.visit(version, Opcodes.ACC_PUBLIC | Opcodes.ACC_SUPER, name, null, "java/lang/Object", null);
            forget = writer.visitMethod(Opcodes.ACC_PUBLIC | Opcodes.ACC_STATIC, SharedClass.FORGET, "()V", null, null);
            forget.visitCode();
        }

        /** Takes over the fields and methods of a class, and nothing that would make it a class. */
        ClassVisitor members() {
            return new ClassVisitor(Opcodes.ASM9) {
                @Override
                public FieldVisitor visitField(
                        int access, String field, String descriptor, String signature, Object value) {
                    forget.visitInsn(nothing(Type.getType(descriptor)));
                    forget.visitFieldInsn(Opcodes.PUTSTATIC, name, field, descriptor);
                    return writer.visitField(access, field, descriptor, signature, value);
                }

                @Override
                public MethodVisitor visitMethod(
                        int access, String method, String descriptor, String signature, String[] thrown) {
                    return method.equals(INIT)
                            ? null
                            : writer.visitMethod(access, method, descriptor, signature, thrown);
                }
            };
        }

        private static int nothing(Type type) {
            return switch (type.getSort()) {
                case Type.LONG -> Opcodes.LCONST_0;
                case Type.DOUBLE -> Opcodes.DCONST_0;
                case Type.FLOAT -> Opcodes.FCONST_0;
                case Type.ARRAY, Type.OBJECT -> Opcodes.ACONST_NULL;
                default -> Opcodes.ICONST_0;
            };
        }

        byte[] toByteArray() {
            forget.visitInsn(Opcodes.RETURN);
            forget.visitMaxs(2, 0);
            forget.visitEnd();
            writer.visitEnd();
            return writer.toByteArray();
        }
    }
}
