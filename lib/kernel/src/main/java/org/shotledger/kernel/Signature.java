package org.shotledger.kernel;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/** Signs and checks messages with HMAC-SHA256. */
final class Signature {

    private static final String ALGORITHM = "HmacSHA256";

    private final SecretKeySpec key;

    Signature(byte[] key) {
        this.key = key.length == 0 ? null : new SecretKeySpec(key, ALGORITHM);
    }

    /** The signature of the four parts of a message, in lower-case hexadecimal. */
    byte[] sign(List<byte[]> parts) {
        if (key == null) {
            return new byte[0];
        }
        try {
            Mac mac = Mac.getInstance(ALGORITHM);
            mac.init(key);
            parts.forEach(mac::update);
            return HexFormat.of().formatHex(mac.doFinal()).getBytes(StandardCharsets.US_ASCII);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every JDK has " + ALGORITHM, e);
        }
    }

    /** Takes the same time wherever the first difference is. */
    boolean matches(byte[] signature, List<byte[]> parts) {
        return key == null || MessageDigest.isEqual(sign(parts), signature);
    }
}
