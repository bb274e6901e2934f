package org.shotledger.document;

import java.util.List;

/**
 * One revision of a document.
 *
 * @param number its number or letter
 * @param date its date as it is to be printed, given from outside so that a document can be made again to the byte
 * @param differences what changed since the revision before, and why; one sentence each
 */
public record Revision(String number, String date, List<String> differences) {

    public Revision {
        differences = List.copyOf(differences);
    }
}
