package org.shotledger.snippet;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes the small classes that stand between cells: one with a variable's place, one through which a method is called, and one that
 * leads such a call to the method's newest body. No instruction of theirs jumps, so that they need no stack maps.
 */
final class Stubs {

    private static final int VERSION = 52;
    private static final int PUBLIC = 1;
    private static final int STATIC = 8;
    private static final int SUPER = 0x20;
    private static final int ABSTRACT = 0x400;
    private static final int GET_STATIC = 178;
    private static final int INVOKE_VIRTUAL = 182;
    private static final int INVOKE_SPECIAL = 183;
    private static final int INVOKE_STATIC = 184;
    private static final int RETURN = 177;
    private static final int FIELD = 9;
    private static final int METHOD = 10;

    /** The field of a stub that holds what leads to the newest body. */
    static final String CURRENT = "current";

    private static final String CALL = "call";

    private final ByteArrayOutputStream pool = new ByteArrayOutputStream();
    private final DataOutputStream constants = new DataOutputStream(pool);
    private int count = 1;

    private Stubs() {}

    /** A class with one public static field. */
    static byte[] variable(String className, String name, String descriptor) {
        Stubs stub = new Stubs();
        try {
            byte[] field = stub.member(PUBLIC | STATIC, name, descriptor, null);
            return stub.file(PUBLIC | SUPER, className, "java/lang/Object", List.of(field), List.of());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A class with one public static method, which hands its arguments to whatever {@link #CURRENT} is. */
    static byte[] entrance(String className, String name, String descriptor) {
        Stubs stub = new Stubs();
        try {
            String type = "L" + className + ";";
            byte[] field = stub.member(PUBLIC | STATIC, CURRENT, type, null);
            byte[] made = stub.constructor("java/lang/Object");
            byte[] call = stub.member(PUBLIC | ABSTRACT, CALL, descriptor, null);
            Code code = new Code(descriptor, 0);
            code.instruction(GET_STATIC, stub.reference(FIELD, className, CURRENT, type));
            code.arguments();
            code.instruction(INVOKE_VIRTUAL, stub.reference(METHOD, className, CALL, descriptor));
            byte[] entrance = stub.member(PUBLIC | STATIC, name, descriptor, code.finished());
            return stub.file(
                    PUBLIC | SUPER | ABSTRACT,
                    className,
                    "java/lang/Object",
                    List.of(field),
                    List.of(made, call, entrance));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A class that leads the calls of an entrance to a method. */
    static byte[] guide(String className, String entrance, String owner, String name, String descriptor) {
        Stubs stub = new Stubs();
        try {
            byte[] made = stub.constructor(entrance);
            Code code = new Code(descriptor, 1);
            code.arguments();
            code.instruction(INVOKE_STATIC, stub.reference(METHOD, owner, name, descriptor));
            byte[] call = stub.member(PUBLIC, CALL, descriptor, code.finished());
            return stub.file(PUBLIC | SUPER, className, entrance, List.of(), List.of(made, call));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private byte[] file(int access, String name, String parent, List<byte[]> fields, List<byte[]> methods)
            throws IOException {
        int own = type(name);
        int above = type(parent);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeInt(0xCAFEBABE);
        out.writeInt(VERSION);
        out.writeShort(count);
        out.write(pool.toByteArray());
        out.writeShort(access);
        out.writeShort(own);
        out.writeShort(above);
        out.writeShort(0);
        for (List<byte[]> members : List.of(fields, methods)) {
            out.writeShort(members.size());
            for (byte[] member : members) {
                out.write(member);
            }
        }
        out.writeShort(0);
        return bytes.toByteArray();
    }

    private byte[] constructor(String parent) throws IOException {
        Code code = new Code("()V", 1);
        code.self();
        code.instruction(INVOKE_SPECIAL, reference(METHOD, parent, "<init>", "()V"));
        return member(PUBLIC, "<init>", "()V", code.finished());
    }

    private byte[] member(int access, String name, String descriptor, byte[] code) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeShort(access);
        out.writeShort(text(name));
        out.writeShort(text(descriptor));
        out.writeShort(code == null ? 0 : 1);
        if (code != null) {
            out.writeShort(text("Code"));
            out.write(code);
        }
        return bytes.toByteArray();
    }

    private int text(String value) throws IOException {
        constants.writeByte(1);
        constants.writeUTF(value);
        return count++;
    }

    private int type(String name) throws IOException {
        int index = text(name);
        constants.writeByte(7);
        constants.writeShort(index);
        return count++;
    }

    private int reference(int tag, String owner, String name, String descriptor) throws IOException {
        int type = type(owner);
        int nameIndex = text(name);
        int descriptorIndex = text(descriptor);
        constants.writeByte(12);
        constants.writeShort(nameIndex);
        constants.writeShort(descriptorIndex);
        int nameAndType = count++;
        constants.writeByte(tag);
        constants.writeShort(type);
        constants.writeShort(nameAndType);
        return count++;
    }

    /** The instructions of one method that passes its arguments on. */
    private static final class Code {
        private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        private final DataOutputStream out = new DataOutputStream(bytes);
        private final List<Character> arguments;
        private final char result;
        private final int first;
        private int slots;

        Code(String descriptor, int first) {
            this.arguments = kinds(descriptor);
            this.result = descriptor.charAt(descriptor.indexOf(')') + 1);
            this.first = first;
            this.slots = first;
            arguments.forEach(kind -> slots += width(kind));
        }

        void self() throws IOException {
            out.writeByte(42); // aload_0
        }

        void instruction(int code, int operand) throws IOException {
            out.writeByte(code);
            out.writeShort(operand);
        }

        void arguments() throws IOException {
            int slot = first;
            for (char kind : arguments) {
                out.writeByte(196); // wide: the one form that reaches every slot
                out.writeByte(21 + family(kind)); // iload, lload, fload, dload, aload
                out.writeShort(slot);
                slot += width(kind);
            }
        }

        byte[] finished() throws IOException {
            out.writeByte(result == 'V' ? RETURN : 172 + family(result)); // ireturn, lreturn, ...
            ByteArrayOutputStream attribute = new ByteArrayOutputStream();
            DataOutputStream file = new DataOutputStream(attribute);
            file.writeInt(12 + bytes.size());
            file.writeShort(slots + 2);
            file.writeShort(slots);
            file.writeInt(bytes.size());
            file.write(bytes.toByteArray());
            file.writeShort(0);
            file.writeShort(0);
            return attribute.toByteArray();
        }

        private static int width(char kind) {
            return kind == 'J' || kind == 'D' ? 2 : 1;
        }

        private static int family(char kind) {
            return switch (kind) {
                case 'J' -> 1;
                case 'F' -> 2;
                case 'D' -> 3;
                case 'L', '[' -> 4;
                default -> 0;
            };
        }

        private static List<Character> kinds(String descriptor) {
            List<Character> found = new ArrayList<>();
            for (int at = 1; descriptor.charAt(at) != ')'; at++) {
                found.add(descriptor.charAt(at));
                while (descriptor.charAt(at) == '[') {
                    at++;
                }
                if (descriptor.charAt(at) == 'L') {
                    at = descriptor.indexOf(';', at);
                }
            }
            return found;
        }
    }
}
