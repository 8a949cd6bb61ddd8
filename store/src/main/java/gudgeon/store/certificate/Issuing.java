package gudgeon.store.certificate;

import java.io.IOException;
import java.math.BigInteger;
import java.net.InetAddress;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PublicKey;
import java.security.SecureRandom;
import java.security.cert.X509Certificate;
import java.security.spec.ECGenParameterSpec;
import java.time.Duration;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import org.bouncycastle.asn1.DEROctetString;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.ExtendedKeyUsage;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.bouncycastle.asn1.x509.GeneralSubtree;
import org.bouncycastle.asn1.x509.KeyPurposeId;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.asn1.x509.NameConstraints;
import org.bouncycastle.cert.CertIOException;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509ExtensionUtils;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/**
 * Makes certificates by RFC 5280. The workshop's authority may speak for numbered addresses of private networks only, and for no
 * name at all: if its key were stolen, it would be of no use against any other site that a phone visits.
 */
final class Issuing {
    /** How long the authority is good for; a phone is made to trust it once. */
    static final Duration AUTHORITY_GOOD_FOR = Duration.ofDays(3650);
    /** How long a server's certificate is good for: below 825 days, more than which phones don't take (from memory). */
    static final Duration SERVER_GOOD_FOR = Duration.ofDays(397);

    /** A clock that is behind on the phone must not refuse what was just made. */
    private static final Duration BACKDATED = Duration.ofDays(1);

    private static final String SIGNED_BY = "SHA256withECDSA";
    private static final int SERIAL_BITS = 120;

    private final SecureRandom random = new SecureRandom();

    KeyPair newKey() throws GeneralSecurityException {
        KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
        generator.initialize(new ECGenParameterSpec("secp256r1"), random);
        return generator.generateKeyPair();
    }

    X509Certificate authority(KeyPair key, Instant now) throws GeneralSecurityException {
        X500Name name = new X500Name("CN=Gudgeon workshop " + now.toString().substring(0, 10) + ",O=Gudgeon");
        try {
            JcaX509v3CertificateBuilder certificate = begun(name, name, key.getPublic(), now, AUTHORITY_GOOD_FOR);
            certificate.addExtension(Extension.basicConstraints, true, new BasicConstraints(0));
            certificate.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.keyCertSign | KeyUsage.cRLSign));
            certificate.addExtension(Extension.nameConstraints, true, onlyPrivateNetworks());
            return signed(certificate, key);
        } catch (CertIOException | OperatorCreationException never) {
            throw new GeneralSecurityException(never);
        }
    }

    X509Certificate server(
            PublicKey key, List<InetAddress> addresses, X509Certificate authority, KeyPair authorityKey, Instant now)
            throws GeneralSecurityException {
        try {
            X500Name issuer =
                    X500Name.getInstance(authority.getSubjectX500Principal().getEncoded());
            JcaX509v3CertificateBuilder certificate =
                    begun(issuer, new X500Name("CN=Gudgeon at the bench"), key, now, SERVER_GOOD_FOR);
            certificate.addExtension(Extension.basicConstraints, true, new BasicConstraints(false));
            certificate.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.digitalSignature));
            certificate.addExtension(
                    Extension.extendedKeyUsage, false, new ExtendedKeyUsage(KeyPurposeId.id_kp_serverAuth));
            certificate.addExtension(
                    Extension.subjectAlternativeName,
                    false,
                    new GeneralNames(addresses.stream()
                            .map(address -> new GeneralName(GeneralName.iPAddress, address.getHostAddress()))
                            .toArray(GeneralName[]::new)));
            return signed(certificate, authorityKey);
        } catch (IOException | OperatorCreationException never) {
            throw new GeneralSecurityException(never);
        }
    }

    private JcaX509v3CertificateBuilder begun(
            X500Name issuer, X500Name subject, PublicKey key, Instant now, Duration goodFor)
            throws GeneralSecurityException, CertIOException {
        JcaX509v3CertificateBuilder certificate = new JcaX509v3CertificateBuilder(
                issuer,
                new BigInteger(SERIAL_BITS, random).add(BigInteger.ONE),
                Date.from(now.minus(BACKDATED)),
                Date.from(now.plus(goodFor)),
                subject,
                key);
        certificate.addExtension(
                Extension.subjectKeyIdentifier, false, new JcaX509ExtensionUtils().createSubjectKeyIdentifier(key));
        return certificate;
    }

    private static X509Certificate signed(JcaX509v3CertificateBuilder certificate, KeyPair by)
            throws GeneralSecurityException, OperatorCreationException {
        return new JcaX509CertificateConverter()
                .getCertificate(certificate.build(new JcaContentSignerBuilder(SIGNED_BY).build(by.getPrivate())));
    }

    /** Private networks by RFC 1918 and the loopback; for names, one that can't exist (RFC 2606), which leaves none. */
    private static NameConstraints onlyPrivateNetworks() {
        return new NameConstraints(
                new GeneralSubtree[] {
                    network(10, 0, 0, 0, 255, 0, 0, 0),
                    network(172, 16, 0, 0, 255, 240, 0, 0),
                    network(192, 168, 0, 0, 255, 255, 0, 0),
                    network(127, 0, 0, 0, 255, 0, 0, 0),
                    new GeneralSubtree(new GeneralName(GeneralName.dNSName, "gudgeon.invalid"))
                },
                null);
    }

    private static GeneralSubtree network(int... addressAndMask) {
        byte[] bytes = new byte[addressAndMask.length];
        for (int n = 0; n < bytes.length; n++) {
            bytes[n] = (byte) addressAndMask[n];
        }
        return new GeneralSubtree(new GeneralName(GeneralName.iPAddress, new DEROctetString(bytes)));
    }
}
