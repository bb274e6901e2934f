package org.shotledger.snippet;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.List;

/** What follows the constant pool of a class: its members, and its bytes without the numbers of lines. */
final class ClassShape {

    private static final int SYNTHETIC = 0x1000;
    private static final int INTERFACES_AT = 6;

    /**
     * A field or method.
     *
     * @param generic the declaration with its type arguments, or empty
     */
    record Member(boolean method, int access, String name, String descriptor, String generic) {

        boolean isSynthetic() {
            return (access & SYNTHETIC) != 0;
        }
    }

    private final ClassBytes bytes;
    private final ByteBuffer data;
    private final List<Member> members = new ArrayList<>();
    private final ByteArrayOutputStream plain = new ByteArrayOutputStream();
    private int firstLine = Integer.MAX_VALUE;
    private int at;

    ClassShape(ClassBytes bytes) {
        this.bytes = bytes;
        this.data = bytes.data();
        at = bytes.end();
        keep(INTERFACES_AT);
        keep(2 + 2 * bytes.unsigned(at));
        members(false);
        members(true);
        attributes();
    }

    List<Member> members() {
        return members;
    }

    /** The smallest number of a line; {@link Integer#MAX_VALUE} if there is none. */
    int firstLine() {
        return firstLine;
    }

    /** All that follows the pool, without the numbers of lines. */
    byte[] withoutLines() {
        return plain.toByteArray();
    }

    private void keep(int count) {
        plain.write(bytes.array(), at, count);
        at += count;
    }

    private void members(boolean methods) {
        int count = bytes.unsigned(at);
        keep(2);
        for (int i = 0; i < count; i++) {
            int access = bytes.unsigned(at);
            String name = bytes.text(bytes.unsigned(at + 2));
            String descriptor = bytes.text(bytes.unsigned(at + 4));
            keep(6);
            members.add(new Member(methods, access, name, descriptor, attributes()));
        }
    }

    /** Goes through the attributes of one thing; the generic declaration if one is among them. */
    private String attributes() {
        int count = bytes.unsigned(at);
        keep(2);
        String generic = "";
        for (int i = 0; i < count; i++) {
            String name = bytes.text(bytes.unsigned(at));
            int length = data.getInt(at + 2);
            if (name.equals("LineNumberTable")) {
                lines();
                at += 6 + length;
            } else if (name.equals("Code")) {
                code();
            } else {
                generic = name.equals("Signature") ? bytes.text(bytes.unsigned(at + 6)) : generic;
                keep(6 + length);
            }
        }
        return generic;
    }

    private void lines() {
        int count = bytes.unsigned(at + 6);
        for (int i = 0; i < count; i++) {
            firstLine = Math.min(firstLine, bytes.unsigned(at + 8 + 4 * i + 2));
        }
    }

    private void code() {
        keep(10);
        keep(4 + data.getInt(at));
        keep(2 + 8 * bytes.unsigned(at));
        attributes();
    }
}
