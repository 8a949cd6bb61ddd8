package gudgeon.store.certificate;

import gudgeon.store.disk.OwnerOnly;
import gudgeon.store.disk.Reason;
import gudgeon.store.shelf.ContentHash;
import gudgeon.store.shelf.ShelfFault;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.cert.Certificate;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;

/**
 * The workshop's certificate: an authority of its own, made once and kept in the data folder, and a certificate for the addresses
 * served now, made anew at each start. The authority's key file is readable by its owner only; the server's key is not kept at all.
 *
 * @param authority what a phone is made to trust
 * @param server the server's key and certificates, to be served with
 */
public record WorkshopCertificate(X509Certificate authority, KeyStore server) {
    /** The name of the file in the data folder that holds the authority and its key. */
    public static final String FILE = "workshop-authority.p12";

    private static final String ENTRY = "gudgeon";
    /** PKCS 12 wants a password; the file's permissions guard it, and a password beside it would add nothing. */
    private static final char[] NONE = "gudgeon".toCharArray();

    private static final Duration LEFT_AT_LEAST = Duration.ofDays(400);

    private record Authority(X509Certificate certificate, PrivateKey key) {}

    /** The password of {@link #server}, which lives in memory only. */
    public static String password() {
        return new String(NONE);
    }

    /**
     * The certificate for addresses.
     *
     * @throws ShelfFault if the authority's file can't be read or written
     */
    public static WorkshopCertificate in(Path dataFolder, List<InetAddress> addresses, Instant now) {
        Path file = dataFolder.resolve(FILE);
        try {
            Issuing issuing = new Issuing();
            Authority authority = Files.exists(file) ? read(file) : made(file, issuing, now);
            if (authority.certificate().getNotAfter().toInstant().isBefore(now.plus(LEFT_AT_LEAST))) {
                authority = made(file, issuing, now);
            }
            KeyPair key = issuing.newKey();
            X509Certificate server = issuing.server(
                    key.getPublic(),
                    addresses,
                    authority.certificate(),
                    new KeyPair(authority.certificate().getPublicKey(), authority.key()),
                    now);
            return new WorkshopCertificate(
                    authority.certificate(), store(key.getPrivate(), server, authority.certificate()));
        } catch (IOException unusable) {
            throw new ShelfFault(
                    "The workshop's certificate, " + file + ", can't be used: " + Reason.of(unusable)
                            + ". See that you may read it; or remove it, start again, and have the phones trust the new one.",
                    unusable);
        } catch (GeneralSecurityException broken) {
            throw new ShelfFault(
                    "The workshop's certificate, " + file
                            + ", is damaged. Remove it, start again, and have the phones trust the new one.",
                    broken);
        }
    }

    private static Authority made(Path file, Issuing issuing, Instant now)
            throws IOException, GeneralSecurityException {
        KeyPair key = issuing.newKey();
        X509Certificate certificate = issuing.authority(key, now);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        store(key.getPrivate(), certificate).store(bytes, NONE);
        OwnerOnly.write(file, bytes.toByteArray());
        return new Authority(certificate, key.getPrivate());
    }

    private static Authority read(Path file) throws IOException, GeneralSecurityException {
        KeyStore store = KeyStore.getInstance("PKCS12");
        store.load(new ByteArrayInputStream(Files.readAllBytes(file)), NONE);
        if (store.getCertificate(ENTRY) instanceof X509Certificate certificate
                && store.getKey(ENTRY, NONE) instanceof PrivateKey key) {
            return new Authority(certificate, key);
        }
        throw new GeneralSecurityException("no key in it");
    }

    private static KeyStore store(PrivateKey key, Certificate... chain) throws IOException, GeneralSecurityException {
        KeyStore store = KeyStore.getInstance("PKCS12");
        store.load(null, NONE);
        store.setKeyEntry(ENTRY, key, NONE, chain);
        return store;
    }

    /** The authority's certificate as phones take it, in DER. */
    public byte[] file() {
        try {
            return authority.getEncoded();
        } catch (GeneralSecurityException never) {
            throw new IllegalStateException("it was made or read before", never);
        }
    }

    /** SHA-256 of {@link #file()} in pairs of digits, to be held against what a phone shows. */
    public String fingerprint() {
        return String.join(" ", ContentHash.of(file()).toUpperCase(Locale.ROOT).split("(?<=\\G..)", -1))
                .strip();
    }
}
