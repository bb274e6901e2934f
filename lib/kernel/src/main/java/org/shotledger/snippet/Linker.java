package org.shotledger.snippet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import jdk.jshell.spi.ExecutionControl.ClassBytecodes;

/**
 * Links what cells declare so that it can change under those who use it.
 *
 * <p>The compiler puts each declaration into a class of its own, its holder, and would make all holders anew that mention a changed
 * one; their values, and whatever closures had captured, would be left behind. So no class that is loaded mentions another
 * holder's variable or method: a variable lives in a class of its own, found by name and type, and a method is called through an
 * entrance, found by name and descriptor. What keeps its type can then change in place, and every closure sees it. A type that is
 * declared as it was before stays the same class.
 */
final class Linker {

    /** A holder's name, with the letters of its generation, and the number of its redefinition. */
    private static final Pattern HOLDER =
            Pattern.compile("REPL[./]\\$JShell\\$(\\d+[A-Z]*(?:_\\d+[A-Z]*)*)(?:[er]\\d+)*(?![\\w])");

    private static final String RUN = "do_it$";

    /** A variable's place, or a method's entrance. */
    record Stub(String className, String name, String descriptor) {}

    private final Map<String, Holder> holders = new HashMap<>();
    private final Map<String, Holder> byActualName = new HashMap<>();
    private final Map<String, Holder> byNumber = new HashMap<>();
    private final Map<String, List<Holder>> types = new HashMap<>();
    private final Map<String, Stub> variables = new HashMap<>();
    private final Map<String, Stub> entrances = new HashMap<>();
    private final Map<String, Holder> leadsTo = new LinkedHashMap<>();
    private final Set<String> outdated = new HashSet<>();
    private final List<ClassBytecodes> fresh = new ArrayList<>();
    private int stubs;
    private int compilers;

    /** A new compiler begins, which numbers its holders from the start again. */
    void restart() {
        holders.clear();
        byNumber.clear();
        compilers++;
    }

    /** The classes to load in place of these, new stubs among them; types that are as they were before are not loaded again. */
    ClassBytecodes[] load(ClassBytecodes[] classes) {
        Map<String, List<ClassBytecodes>> groups = new LinkedHashMap<>();
        Arrays.stream(classes)
                .forEach(c -> groups.computeIfAbsent(outer(slashed(c.name())), k -> new ArrayList<>())
                        .add(c));
        boolean found = true;
        while (found) { // what is found to be known can make another known that mentions it
            found = groups.entrySet().removeIf(group -> isKnown(group.getKey(), group.getValue()));
        }
        groups.keySet().removeAll(knownTogether(groups));
        groups.forEach((name, group) -> group.stream()
                .filter(c -> isHolder(c.name()))
                .forEach(c -> define(c, compilers == 0 ? name : name + "e" + compilers)));
        groups.forEach((name, group) -> group.forEach(c -> link(c, holders.get(name))));
        return taken();
    }

    private boolean isKnown(String name, List<ClassBytecodes> group) {
        for (Holder candidate : candidates(name, group)) {
            holders.put(name, candidate);
            if (candidate.isSame(name, group, this)) {
                recognise(name, candidate);
                return true;
            }
            holders.remove(name);
        }
        return false;
    }

    /** Types that name each other are known if all of them are, each taken for what it was when it was loaded last. */
    private Set<String> knownTogether(Map<String, List<ClassBytecodes>> groups) {
        Map<String, Holder> assumed = new HashMap<>();
        groups.forEach((name, group) -> {
            List<Holder> candidates = candidates(name, group);
            if (!candidates.isEmpty()) {
                assumed.put(name, candidates.get(candidates.size() - 1));
            }
        });
        holders.putAll(assumed);
        boolean refuted = true;
        while (refuted) {
            Set<String> others = assumed.keySet().stream()
                    .filter(name -> !assumed.get(name).isSame(name, groups.get(name), this))
                    .collect(Collectors.toSet());
            assumed.keySet().removeAll(others);
            holders.keySet().removeAll(others);
            refuted = !others.isEmpty();
        }
        assumed.forEach(this::recognise);
        return assumed.keySet();
    }

    private void recognise(String name, Holder known) {
        Holder replaced = byNumber.put(number(name), known);
        if (replaced != null && replaced != known) {
            outdate(replaced, known);
        }
        outdated.remove(known.actualName());
    }

    /** Loaded classes that these could be, oldest first; none for what declares no types. */
    private List<Holder> candidates(String name, List<ClassBytecodes> group) {
        boolean types = !holders.containsKey(name)
                && group.stream()
                        .filter(c -> isHolder(c.name()))
                        .anyMatch(c -> new Holder(name, name, null, c).declaresTypes());
        return types ? List.copyOf(this.types.getOrDefault(kind(group), List.of())) : List.of();
    }

    /** What a group of classes declares, whatever its number. */
    private static String kind(List<ClassBytecodes> group) {
        return group.stream()
                .map(c -> slashed(c.name()).substring(outer(slashed(c.name())).length()))
                .sorted()
                .toList()
                .toString();
    }

    /**
     * The classes to load so that these take the place of those of the same names.
     *
     * @return null if what the classes offer has changed, so that those who use it must be compiled again
     */
    ClassBytecodes[] redefine(ClassBytecodes[] classes) {
        for (ClassBytecodes one : classes) {
            String name = outer(slashed(one.name()));
            Holder holder = holders.get(name);
            if (holder == null
                    || !(holder.isSame(name, List.of(one), this)
                            || (isHolder(one.name()) && holder.isOpenTo(name, one, this)))) {
                return null;
            }
        }
        for (ClassBytecodes one : classes) {
            String name = outer(slashed(one.name()));
            Holder holder = holders.get(name);
            if (isHolder(one.name())) {
                holder.shiftLines(one);
            }
            if (!holder.isSame(name, List.of(one), this)) {
                link(one, define(one, holder.nextName()));
            }
        }
        return taken();
    }

    private ClassBytecodes[] taken() {
        ClassBytecodes[] all = fresh.toArray(ClassBytecodes[]::new);
        fresh.clear();
        return all;
    }

    private Holder define(ClassBytecodes source, String actualName) {
        String name = slashed(source.name());
        Holder before = holders.get(name);
        Holder holder = new Holder(name, actualName, before, source);
        holders.put(name, holder);
        byActualName.put(actualName, holder);
        Holder replaced = byNumber.put(number(name), holder);
        holder.userMethods().forEach(m -> leadsTo.put(entrance(m).className(), holder));
        holder.variables().forEach(this::variable);
        if (replaced != null && before == null) {
            outdate(replaced, holder);
        }
        return holder;
    }

    private void link(ClassBytecodes source, Holder holder) {
        String name = names().apply(slashed(source.name()));
        fresh.add(new ClassBytecodes(name.replace('/', '.'), holder.link(source, this)));
        if (holder.declaresTypes()) {
            types.values().forEach(known -> known.remove(holder));
            types.computeIfAbsent(holder.kind(), key -> new ArrayList<>()).add(holder);
        }
    }

    /** What the new generation of a holder does not offer any more is only reached by what was made before. */
    private void outdate(Holder old, Holder now) {
        if (old.declaresTypes()) {
            outdated.add(old.actualName());
        }
        Set<String> still = new HashSet<>();
        now.userMethods().forEach(m -> still.add(entrance(m).className()));
        now.variables().forEach(v -> still.add(variable(v).className()));
        old.userMethods().forEach(m -> outdated.add(entrance(m).className()));
        old.variables().forEach(v -> outdated.add(variable(v).className()));
        outdated.removeAll(still);
    }

    /** Stubs and types that only older values use, since the last call. */
    Set<String> takeOutdated() {
        Set<String> taken = Set.copyOf(outdated);
        outdated.clear();
        return taken;
    }

    /** Entrances whose methods have a new body, with the holder of that body. */
    Map<String, Holder> takeLeads() {
        Map<String, Holder> taken = new LinkedHashMap<>(leadsTo);
        leadsTo.clear();
        return taken;
    }

    /** The method behind an entrance. */
    Stub entranceNamed(String className) {
        return entrances.values().stream()
                .filter(stub -> stub.className().equals(className))
                .findFirst()
                .orElseThrow();
    }

    /** Whether the newest class of a holder was loaded. */
    boolean isLoaded(String className) {
        return holders.containsKey(slashed(className));
    }

    /** The newest class of a holder, with dots, as stack traces name it. */
    String actualName(String className) {
        Holder holder = holders.get(slashed(className));
        return holder == null ? className : holder.actualName().replace('/', '.');
    }

    /** By how many lines the newest source of a class lies below the one it was loaded with. */
    int lineShift(String actualName) {
        Holder holder = byActualName.get(slashed(actualName));
        return holder == null ? 0 : holder.lineShift();
    }

    /** Where the variables of a holder live. */
    List<Stub> places(String className) {
        Holder holder = holders.get(slashed(className));
        return holder == null
                ? List.of()
                : holder.variables().stream().map(this::variable).toList();
    }

    /** The stubs and holders that a loaded class mentions. */
    Set<String> mentionedBy(String actualName) {
        Holder holder = byActualName.get(slashed(actualName));
        return holder == null ? Set.of() : holder.mentioned();
    }

    /** The holder in which a class lies, in slashes; null if it lies in none. */
    static String holderOf(String className) {
        Matcher name = HOLDER.matcher(className);
        return name.lookingAt() ? slashed(name.group()) : null;
    }

    /** The holders that a text of a class names. */
    static List<String> holdersIn(String text) {
        return text.contains("REPL/$JShell$")
                ? HOLDER.matcher(text).results().map(MatchResult::group).toList()
                : List.of();
    }

    static boolean isHolder(String className) {
        return HOLDER.matcher(className).matches();
    }

    static String slashed(String className) {
        return className.replace('.', '/');
    }

    static String outer(String className) {
        Matcher name = HOLDER.matcher(className);
        return name.lookingAt() ? name.group() : className;
    }

    private static String number(String className) {
        return className.replaceAll("(?<=\\d)[A-Z]+", "");
    }

    private Stub variable(ClassShape.Member declared) {
        return variable(declared.name(), names().apply(declared.descriptor()));
    }

    private Stub variable(String name, String descriptor) {
        return variables.computeIfAbsent(name + ":" + descriptor, key -> {
            Stub stub = new Stub("REPL/$Variable$" + ++stubs, name, descriptor);
            fresh.add(new ClassBytecodes(
                    stub.className().replace('/', '.'), Stubs.variable(stub.className(), name, descriptor)));
            return stub;
        });
    }

    private Stub entrance(ClassShape.Member declared) {
        return entrance(declared.name(), names().apply(declared.descriptor()));
    }

    private Stub entrance(String name, String descriptor) {
        return entrances.computeIfAbsent(name + descriptor, key -> {
            Stub stub = new Stub("REPL/$Method$" + ++stubs, name, descriptor);
            fresh.add(new ClassBytecodes(
                    stub.className().replace('/', '.'), Stubs.entrance(stub.className(), name, descriptor)));
            return stub;
        });
    }

    /** Where a reference to a member leads: null if it stays. */
    String owner(boolean method, String owner, String name, String descriptor, String from, boolean overloaded) {
        if (owner.equals("java/lang/System") && name.equals("exit")) {
            return ExitRequest.class.getName().replace('.', '/');
        }
        if (!isHolder(owner)) {
            return null;
        }
        if (!method) {
            return name.equals("$assertionsDisabled")
                    ? null
                    : variable(name, descriptor).className();
        }
        boolean own = owner.equals(from) && !overloaded;
        boolean machinery =
                name.equals(RUN) || name.startsWith("<") || name.startsWith("lambda$") || name.startsWith("access$");
        return own || machinery ? null : entrance(name, descriptor).className();
    }

    /** Names of newest classes in place of the compiler's names. */
    UnaryOperator<String> names() {
        return text -> text.contains("REPL/$JShell$") ? renamed(text) : text;
    }

    private String renamed(String text) {
        return HOLDER.matcher(text).replaceAll(found -> {
            Holder holder = holders.get(found.group());
            return Matcher.quoteReplacement(holder == null ? found.group() : holder.actualName());
        });
    }
}
