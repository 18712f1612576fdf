package org.kerfleaf.kernel.compile;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.kerfleaf.kernel.cell.CellProblem;
import org.kerfleaf.kernel.reach.Reach;
import org.kerfleaf.kernel.reach.ReachList;
import org.kerfleaf.kernel.reach.Reached;
import org.kerfleaf.kernel.reach.Reaching;
import org.kerfleaf.kernel.wire.ClassCode;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ConstantDynamic;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * Reads from the bytecode what cells reach for beyond the words; nothing runs. Looked at are parents, and the owners of what
 * instructions and handles name. The constant pool is not: every lambda lists the reflection there with which it is linked.
 */
public final class ReachScan {
    private final CompiledWorkbook compiled;

    /** For every unit and line of the maker's text what is named there. */
    private final Map<Integer, Map<Integer, Place>> found = new TreeMap<>();

    /** A line of a maker's text, of which several lines of a class may be made. */
    private static final class Place {
        private final int line;
        private final Map<Reach, Set<String>> reaches = new TreeMap<>();

        /** @param line the first such line of the class's source */
        Place(int line) {
            this.line = line;
        }
    }

    private ReachScan(CompiledWorkbook compiled) {
        this.compiled = compiled;
    }

    /** What all that can run of a workbook reaches for. */
    public static Reached of(CompiledWorkbook compiled) {
        ReachScan scan = new ReachScan(compiled);
        for (ClassCode code : compiled.classes()) {
            compiled.owner(code.name()).ifPresent(unit -> scan.read(unit, code));
        }
        List<Reaching> all = scan.all();
        List<String> things = all.stream().flatMap(one -> one.things().stream()).toList();
        return new Reached(all, ContentHash.of(compiled, scan.found.keySet(), things));
    }

    private void read(CompiledUnit unit, ClassCode code) {
        new ClassReader(code.bytes()).accept(new ClassScan(unit), ClassReader.SKIP_FRAMES);
    }

    private List<Reaching> all() {
        List<Reaching> all = new ArrayList<>();
        found.forEach((unit, places) -> places.values()
                .forEach(place -> place.reaches.forEach((reach, things) ->
                        all.add(reaching(compiled.units().get(unit), place.line, reach, List.copyOf(things))))));
        return all;
    }

    private static Reaching reaching(CompiledUnit unit, int line, Reach reach, List<String> things) {
        CellProblem place = unit.problemInLine(
                line, "This reaches for %s (%s).".formatted(reach.words(), String.join(", ", things)));
        return new Reaching(reach, things, place);
    }

    private final class ClassScan extends ClassVisitor {
        private final CompiledUnit unit;
        private int line;

        ClassScan(CompiledUnit unit) {
            super(Opcodes.ASM9);
            this.unit = unit;
        }

        @Override
        public void visit(int version, int access, String name, String signature, String parent, String[] interfaces) {
            note(ReachList.parent(dotted(parent)), dotted(parent));
            for (String one : interfaces) {
                note(ReachList.parent(dotted(one)), dotted(one));
            }
        }

        @Override
        public MethodVisitor visitMethod(
                int access, String name, String descriptor, String signature, String[] thrown) {
            return new Body();
        }

        private void note(Optional<Reach> reach, String thing) {
            reach.ifPresent(known -> found.computeIfAbsent(unit.unit().index(), first -> new TreeMap<>())
                    .computeIfAbsent(unit.problemInLine(line, "").line(), first -> new Place(line))
                    .reaches
                    .computeIfAbsent(known, first -> new LinkedHashSet<>())
                    .add(thing));
        }

        private void type(Type type) {
            if (type.getSort() == Type.ARRAY) {
                type(type.getElementType());
            } else if (type.getSort() == Type.OBJECT) {
                note(ReachList.type(type.getClassName()), type.getClassName());
            }
        }

        private void member(String owner, String name, Type gives) {
            if (owner.startsWith("[")) {
                type(Type.getObjectType(owner));
                return;
            }
            String thing = name.equals("<init>") ? dotted(owner) : dotted(owner) + "." + name;
            note(ReachList.member(dotted(owner), name, gives.getClassName()), thing);
        }

        private void constant(Object value) {
            if (value instanceof Type type && type.getSort() != Type.METHOD) {
                type(type);
            } else if (value instanceof Handle handle) {
                handle(handle);
            } else if (value instanceof ConstantDynamic dynamic) {
                linked(dynamic.getBootstrapMethod());
                for (int i = 0; i < dynamic.getBootstrapMethodArgumentCount(); i++) {
                    constant(dynamic.getBootstrapMethodArgument(i));
                }
            }
        }

        private void handle(Handle handle) {
            if (!ReachList.isLinking(dotted(handle.getOwner()))) {
                boolean method = handle.getTag() >= Opcodes.H_INVOKEVIRTUAL;
                Type gives = method ? Type.getReturnType(handle.getDesc()) : Type.getType(handle.getDesc());
                member(handle.getOwner(), handle.getName(), gives);
            }
        }

        private void linked(Handle bootstrap) {
            if (!ReachList.isLinking(dotted(bootstrap.getOwner()))) {
                note(Optional.of(Reach.REFLECTION), dotted(bootstrap.getOwner()) + "." + bootstrap.getName());
            }
        }

        private final class Body extends MethodVisitor {
            Body() {
                super(Opcodes.ASM9);
            }

            @Override
            public void visitLineNumber(int number, Label start) {
                line = number;
            }

            @Override
            public void visitMethodInsn(int opcode, String owner, String name, String descriptor, boolean itf) {
                member(owner, name, Type.getReturnType(descriptor));
            }

            @Override
            public void visitFieldInsn(int opcode, String owner, String name, String descriptor) {
                member(owner, name, Type.getType(descriptor));
            }

            @Override
            public void visitTypeInsn(int opcode, String type) {
                type(Type.getObjectType(type));
            }

            @Override
            public void visitMultiANewArrayInsn(String descriptor, int dimensions) {
                type(Type.getType(descriptor));
            }

            @Override
            public void visitLdcInsn(Object value) {
                constant(value);
            }

            @Override
            public void visitInvokeDynamicInsn(String name, String descriptor, Handle bootstrap, Object... arguments) {
                linked(bootstrap);
                for (Object argument : arguments) {
                    constant(argument);
                }
            }
        }
    }

    private static String dotted(String internalName) {
        return internalName.replace('/', '.');
    }
}
