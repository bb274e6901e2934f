package org.shotledger.cli;

import java.lang.reflect.Constructor;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import picocli.CommandLine;

/**
 * Makes what the command-line parser asks for. The parser's own way looks through each jar for a library that is not there.
 *
 * <p>A class and no lambda, which would keep the parser out of the start-up archive.
 */
final class PlainFactory implements CommandLine.IFactory {

    @Override
    public <T> T create(Class<T> type) throws Exception {
        if (type == Set.class) {
            return type.cast(new LinkedHashSet<>());
        }
        if (type == Map.class) {
            return type.cast(new LinkedHashMap<>());
        }
        if (type.isInterface()) {
            return CommandLine.defaultFactory().create(type);
        }
        Constructor<T> constructor = type.getDeclaredConstructor();
        constructor.setAccessible(true);
        return constructor.newInstance();
    }
}
