package org.kerfleaf.kernel.compile;

import java.util.ArrayList;
import java.util.List;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.FieldVisitor;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/**
 * What users of a class were compiled against: superclass, interfaces, fields with their constants (javac copies those
 * into the user), methods that are not private.
 */
record ClassShape(List<String> members) {
    static ClassShape of(byte[] bytes) {
        Reader reader = new Reader();
        new ClassReader(bytes).accept(reader, ClassReader.SKIP_CODE | ClassReader.SKIP_DEBUG);
        return new ClassShape(reader.members.stream().sorted().toList());
    }

    private static final class Reader extends ClassVisitor {
        private final List<String> members = new ArrayList<>();

        Reader() {
            super(Opcodes.ASM9);
        }

        @Override
        public void visit(
                int version, int access, String name, String signature, String superName, String[] interfaces) {
            members.add("class " + access + " " + superName + " " + List.of(interfaces) + " " + signature);
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
                members.add("method " + access + " " + name + " " + descriptor + " " + signature);
            }
            return null;
        }
    }
}
