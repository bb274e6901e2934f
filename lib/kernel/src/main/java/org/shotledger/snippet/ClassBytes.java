package org.shotledger.snippet;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.UnaryOperator;

/** The constant pool of a compiled class, as the Java Virtual Machine Specification, section 4.4, lays it out. */
final class ClassBytes {

    private static final int POOL_AT = 8;
    private static final int UTF8 = 1;
    private static final int LONG = 5;
    private static final int DOUBLE = 6;
    private static final int CLASS = 7;
    private static final int FIELD = 9;
    private static final int METHOD = 10;
    private static final int STRING = 8;
    private static final int METHOD_TYPE = 16;
    private static final int MODULE = 19;
    private static final int PACKAGE = 20;
    private static final int METHOD_HANDLE = 15;

    /** Tells where a reference to a member of a class leads. */
    @FunctionalInterface
    interface Redirect {
        /** The class that has the member from now on, or null to leave the reference as it is. */
        String owner(boolean method, String owner, String name, String descriptor);
    }

    private final byte[] all;
    private final ByteBuffer data;
    private final int[] places;
    private final int end;

    ClassBytes(byte[] bytes) {
        all = bytes;
        data = ByteBuffer.wrap(bytes);
        places = new int[data.getShort(POOL_AT) & 0xFFFF];
        int at = POOL_AT + 2;
        for (int i = 1; i < places.length; i++) {
            places[i] = at;
            int tag = data.get(at);
            at += 1 + size(tag, at);
            if (tag == LONG || tag == DOUBLE) {
                i++; // these take two numbers
            }
        }
        end = at;
    }

    private int size(int tag, int at) {
        return switch (tag) {
            case UTF8 -> 2 + unsigned(at + 1);
            case LONG, DOUBLE -> 8;
            case CLASS, STRING, METHOD_TYPE, MODULE, PACKAGE -> 2;
            case METHOD_HANDLE -> 3;
            default -> 4;
        };
    }

    byte[] array() {
        return all;
    }

    /** The bytes. */
    ByteBuffer data() {
        return data;
    }

    /** Where the constant pool ends. */
    int end() {
        return end;
    }

    int unsigned(int at) {
        return data.getShort(at) & 0xFFFF;
    }

    /** Text of an entry. */
    String text(int index) {
        int at = places[index];
        int length = 2 + unsigned(at + 1);
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(all, at + 1, length))) {
            return in.readUTF();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Whether any text of the pool begins so. */
    boolean mentions(String prefix) {
        for (int i = 1; i < places.length; i++) {
            if (places[i] > 0 && data.get(places[i]) == UTF8 && text(i).startsWith(prefix)) {
                return true;
            }
        }
        return false;
    }

    /**
     * The class with other names.
     *
     * @param rename new text for each text that names a class or holds such a name
     * @param redirect new owners of members
     * @param tail what follows the pool
     */
    byte[] rewritten(UnaryOperator<String> rename, Redirect redirect, byte[] tail) {
        Map<String, Integer> owners = new LinkedHashMap<>();
        ByteArrayOutputStream pool = new ByteArrayOutputStream(data.capacity());
        ByteArrayOutputStream whole = new ByteArrayOutputStream(data.capacity() + 256);
        try (DataOutputStream out = new DataOutputStream(pool);
                DataOutputStream file = new DataOutputStream(whole)) {
            for (int i = 1; i < places.length; i++) {
                if (places[i] > 0) {
                    writeEntry(i, rename, redirect, owners, out);
                }
            }
            int next = places.length;
            for (String owner : owners.keySet()) {
                out.writeByte(UTF8);
                out.writeUTF(owner);
                out.writeByte(CLASS);
                out.writeShort(next);
                next += 2;
            }
            file.write(all, 0, POOL_AT);
            file.writeShort(next);
            file.write(pool.toByteArray());
            file.write(tail);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return whole.toByteArray();
    }

    private void writeEntry(
            int index,
            UnaryOperator<String> rename,
            Redirect redirect,
            Map<String, Integer> owners,
            DataOutputStream out)
            throws IOException {
        int at = places[index];
        int tag = data.get(at);
        if (tag == UTF8) {
            out.writeByte(UTF8);
            out.writeUTF(rename.apply(text(index)));
            return;
        }
        if (tag == FIELD || tag == METHOD) {
            int nameAndType = places[unsigned(at + 3)];
            String owner = redirect.owner(
                    tag == METHOD,
                    text(unsigned(places[unsigned(at + 1)] + 1)),
                    text(unsigned(nameAndType + 1)),
                    rename.apply(text(unsigned(nameAndType + 3))));
            if (owner != null) {
                out.writeByte(tag);
                out.writeShort(owners.computeIfAbsent(owner, key -> places.length + 1 + 2 * owners.size()));
                out.writeShort(unsigned(at + 3));
                return;
            }
        }
        out.write(all, at, 1 + size(tag, at));
    }
}
