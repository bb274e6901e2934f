package org.shotledger.snippet;

import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import jdk.jshell.spi.ExecutionControl.ClassBytecodes;

/** The class the compiler made for a declaration or a statement, and the classes nested in it. */
final class Holder {

    private static final String RUN = "do_it$";

    private final String name;
    private final String actualName;
    private final int generation;
    private final List<ClassShape.Member> members;
    private final boolean hasTypes;
    private final int firstLine;
    private final Set<String> mentioned = new HashSet<>();
    private final Map<String, byte[]> contents = new HashMap<>();
    private int lineShift;

    Holder(String name, String actualName, Holder before, ClassBytecodes source) {
        ClassBytes bytes = new ClassBytes(source.bytecodes());
        ClassShape shape = new ClassShape(bytes);
        this.name = name;
        this.actualName = actualName;
        this.generation = before == null ? 0 : before.generation + 1;
        this.members = shape.members();
        this.hasTypes = bytes.mentions(name + "$");
        this.firstLine = shape.firstLine();
    }

    String name() {
        return name;
    }

    String actualName() {
        return actualName;
    }

    String nextName() {
        return name + "r" + (generation + 1);
    }

    int lineShift() {
        return lineShift;
    }

    /** Whether this holds a type that a cell declares, rather than one without a name inside a statement. */
    boolean declaresTypes() {
        return hasTypes && members.stream().noneMatch(m -> m.name().equals(RUN));
    }

    Set<String> mentioned() {
        return mentioned;
    }

    boolean isOverloaded() {
        return userMethods().size() > 1;
    }

    List<ClassShape.Member> variables() {
        return members.stream().filter(m -> !m.method() && !m.isSynthetic()).toList();
    }

    List<ClassShape.Member> userMethods() {
        return members.stream().filter(Holder::isUserMethod).toList();
    }

    private static boolean isUserMethod(ClassShape.Member member) {
        return member.method()
                && !member.isSynthetic()
                && !member.name().equals(RUN)
                && !member.name().startsWith("<");
    }

    /** The nested types that were linked so far. */
    String kind() {
        return contents.keySet().stream().sorted().toList().toString();
    }

    /** Whether the classes, under the holder name that the compiler gives them now, would be loaded as they are already. */
    boolean isSame(String asNamed, List<ClassBytecodes> classes, Linker linker) {
        return classes.stream().allMatch(source -> {
            byte[] known = contents.get(suffix(source));
            return known != null && Arrays.equals(known, content(asNamed, new ClassBytes(source.bytecodes()), linker));
        });
    }

    private static String suffix(ClassBytecodes source) {
        String path = Linker.slashed(source.name());
        return path.substring(Linker.outer(path).length());
    }

    /** Whether the class offers what it did before, so that only what it does has changed. */
    boolean isOpenTo(String asNamed, ClassBytecodes source, Linker linker) {
        ClassBytes bytes = new ClassBytes(source.bytecodes());
        if (hasTypes || bytes.mentions(asNamed + "$")) {
            return false;
        }
        return offered(new ClassShape(bytes).members(), linker).equals(offered(members, linker));
    }

    private static Set<String> offered(List<ClassShape.Member> members, Linker linker) {
        Set<String> found = new HashSet<>();
        for (ClassShape.Member member : members) {
            if (!member.isSynthetic() && !member.name().equals(RUN)) {
                found.add(linker.names().apply(member.name() + " " + member.descriptor() + " " + member.generic()));
            }
        }
        return found;
    }

    /** Notes where the newest source of the loaded class stands. */
    void shiftLines(ClassBytecodes source) {
        int first = new ClassShape(new ClassBytes(source.bytecodes())).firstLine();
        lineShift = first == Integer.MAX_VALUE || firstLine == Integer.MAX_VALUE ? 0 : first - firstLine;
    }

    /** The class as it is to be loaded. */
    byte[] link(ClassBytecodes source, Linker linker) {
        ClassBytes bytes = new ClassBytes(source.bytecodes());
        contents.put(suffix(source), content(name, bytes, linker));
        byte[] all = source.bytecodes();
        byte[] tail = Arrays.copyOfRange(all, bytes.end(), all.length);
        return bytes.rewritten(
                text -> {
                    String named = linker.names().apply(text);
                    mention(named);
                    return named;
                },
                (method, owner, member, descriptor) -> {
                    String led = linker.owner(method, owner, member, descriptor, name, isOverloaded());
                    if (led != null) {
                        mentioned.add(led);
                    }
                    return led;
                },
                tail);
    }

    private void mention(String text) {
        for (String holder : Linker.holdersIn(text)) {
            if (!holder.equals(actualName)) {
                mentioned.add(holder);
            }
        }
    }

    /** What distinguishes a class: all of it but its lines, its number and the holders of what is reached through stubs. */
    private byte[] content(String asNamed, ClassBytes bytes, Linker linker) {
        return bytes.rewritten(
                text -> (Linker.isHolder(text) && !text.equals(asNamed)) || text.endsWith(".java")
                        ? "-"
                        : linker.names().apply(text),
                (method, owner, member, descriptor) ->
                        linker.owner(method, owner, member, descriptor, asNamed, isOverloaded()),
                new ClassShape(bytes).withoutLines());
    }
}
