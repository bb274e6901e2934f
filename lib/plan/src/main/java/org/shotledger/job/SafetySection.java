package org.shotledger.job;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.shotledger.sheet.SheetSection;
import org.shotledger.wiring.SafetyChain;
import org.shotledger.wiring.SafetyCircuit;
import org.shotledger.wiring.SafetyContact;

/** Reads what can let nitrous flow: valves and pump, each with its contacts in series from the battery on. */
final class SafetySection {
    private static final Map<String, SafetyCircuit.Role> ROLES = words(SafetyCircuit.Role.values());
    private static final Map<String, SafetyContact.Holder> HOLDERS = words(SafetyContact.Holder.values());

    private SafetySection() {}

    static SafetyChain chain(SheetSection s) {
        List<SafetyCircuit> circuits = new ArrayList<>();
        s.namedSections().forEach((key, one) -> circuits.add(circuit(ControllerSection.words(key), one)));
        return s.make(() -> new SafetyChain(circuits));
    }

    private static SafetyCircuit circuit(String name, SheetSection s) {
        SafetyCircuit.Role role = s.choice("role", ROLES);
        List<SafetyContact> contacts = new ArrayList<>();
        s.section("contacts")
                .namedSections()
                .forEach((key, one) -> contacts.add(contact(ControllerSection.words(key), one)));
        return s.make(() -> new SafetyCircuit(name, role, contacts));
    }

    private static SafetyContact contact(String name, SheetSection s) {
        SafetyContact.Holder holder = s.choice("held-by", HOLDERS);
        String output = s.textOr("output", "");
        return s.make(() -> new SafetyContact(name, holder, ControllerSection.words(output)));
    }

    /** Constants by their names in a sheet, for example {@code nitrous-valve}. */
    private static <E extends Enum<E>> Map<String, E> words(E[] values) {
        Map<String, E> map = new LinkedHashMap<>();
        for (E value : values) {
            map.put(value.name().toLowerCase(Locale.ROOT).replace('_', '-'), value);
        }
        return map;
    }
}
