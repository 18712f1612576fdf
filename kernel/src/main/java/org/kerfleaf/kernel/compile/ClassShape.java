package org.kerfleaf.kernel.compile;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.FieldVisitor;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.RecordComponentVisitor;

/**
 * What users of a class were compiled against: superclass, interfaces and permitted subclasses, fields with their constants
 * (javac copies those into the user), record components, methods that are not private with what they throw.
 *
 * @param members the parts of the shape, each a text
 * @param nested the classes nested in it at any depth, by name
 */
record ClassShape(List<String> members, List<String> nested) {
    static ClassShape of(byte[] bytes) {
        Reader reader = new Reader();
        new ClassReader(bytes).accept(reader, ClassReader.SKIP_CODE | ClassReader.SKIP_DEBUG);
        return new ClassShape(reader.members.stream().sorted().toList(), List.copyOf(reader.nested));
    }

    /** Whether a user of the one can use the other. */
    boolean fits(ClassShape other) {
        return members.equals(other.members);
    }

    /** The outermost classes of pieces that the shape names. */
    Set<String> speaksOf() {
        Set<String> found = new TreeSet<>();
        members.forEach(member -> found.addAll(Bytecode.pieceClasses(member)));
        return found;
    }

    private static final class Reader extends ClassVisitor {
        private final List<String> members = new ArrayList<>();
        private final List<String> nested = new ArrayList<>();
        private String own = "";

        Reader() {
            super(Opcodes.ASM9);
        }

        @Override
        public void visit(
                int version, int access, String name, String signature, String superName, String[] interfaces) {
            own = name;
            members.add("class " + access + " " + superName + " " + List.of(interfaces) + " " + signature);
        }

        @Override
        public void visitNestMember(String name) {
            nested.add(name.replace('/', '.'));
        }

        @Override
        public void visitPermittedSubclass(String name) {
            members.add("permits " + name);
        }

        @Override
        public void visitInnerClass(String name, String outerName, String innerName, int access) {
            if (name.startsWith(own + "$")) {
                members.add("inner " + access + " " + name);
            }
        }

        @Override
        public RecordComponentVisitor visitRecordComponent(String name, String descriptor, String signature) {
            members.add("component " + members.size() + " " + name + " " + descriptor + " " + signature);
            return null;
        }

        @Override
        public FieldVisitor visitField(int access, String name, String descriptor, String signature, Object value) {
            members.add("field " + access + " " + name + " " + descriptor + " " + signature + " " + value);
            return null;
        }

        @Override
        public MethodVisitor visitMethod(
                int access, String name, String descriptor, String signature, String[] exceptions) {
            if ((access & Opcodes.ACC_PRIVATE) == 0) {
                String thrown = exceptions == null ? "" : Arrays.toString(exceptions);
                members.add("method " + access + " " + name + " " + descriptor + " " + signature + " " + thrown);
            }
            return null;
        }
    }
}
