package org.shotledger.comm;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What one side of a comm tells the other.
 *
 * @param data the content: texts, numbers, booleans, nulls, and lists and maps of these; numbers that arrive are {@code Double}s
 * @param metadata what the protocol in use wants beside it, such as a version; usually empty
 * @param buffers binary content, in the order in which the data refers to it; usually none
 */
public record CommMessage(Map<String, Object> data, Map<String, Object> metadata, List<byte[]> buffers) {

    public CommMessage {
        data = Collections.unmodifiableMap(new LinkedHashMap<>(data));
        metadata = Collections.unmodifiableMap(new LinkedHashMap<>(metadata));
        buffers = List.copyOf(buffers);
    }

    /**
     * A message of data alone.
     *
     * @param data the content
     * @return the message, without metadata and buffers
     */
    public static CommMessage of(Map<String, Object> data) {
        return new CommMessage(data, Map.of(), List.of());
    }
}
