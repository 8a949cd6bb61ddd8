package gudgeon.store.certificate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gudgeon.store.shelf.ShelfFault;
import java.net.InetAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.KeyPair;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.cert.CertPathValidator;
import java.security.cert.CertPathValidatorException;
import java.security.cert.CertificateFactory;
import java.security.cert.PKIXParameters;
import java.security.cert.TrustAnchor;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WorkshopCertificateTest {
    private static final Instant NOW = Instant.parse("2026-05-02T09:00:00Z");

    @TempDir
    private Path folder;

    private static InetAddress address(String numbers) throws Exception {
        return InetAddress.getByName(numbers);
    }

    private static X509Certificate served(WorkshopCertificate certificate) throws Exception {
        return (X509Certificate) certificate.server().getCertificate("gudgeon");
    }

    /** As a phone that was made to trust the authority does; the authority stands in the path so that its own limits are held to. */
    private static void hold(X509Certificate server, X509Certificate authority) throws Exception {
        PKIXParameters how = new PKIXParameters(
                Set.of(new TrustAnchor(authority.getSubjectX500Principal(), authority.getPublicKey(), null)));
        how.setRevocationEnabled(false);
        how.setDate(Date.from(NOW.plus(Duration.ofDays(30))));
        CertPathValidator.getInstance("PKIX")
                .validate(CertificateFactory.getInstance("X.509").generateCertPath(List.of(server, authority)), how);
    }

    @Test
    void aPhoneThatTrustsTheAuthorityTrustsTheServer() throws Exception {
        WorkshopCertificate certificate =
                WorkshopCertificate.in(folder, List.of(address("192.168.1.20"), address("10.0.0.7")), NOW);
        X509Certificate server = served(certificate);
        hold(server, certificate.authority());
        assertThat(server.getSubjectAlternativeNames())
                .extracting(name -> String.valueOf(name.get(1)))
                .containsExactly("192.168.1.20", "10.0.0.7");
        assertThat(server.getExtendedKeyUsage()).containsExactly("1.3.6.1.5.5.7.3.1");
        assertThat(Duration.between(
                        server.getNotBefore().toInstant(), server.getNotAfter().toInstant()))
                .isLessThan(Duration.ofDays(400));
        assertThat(certificate.authority().getBasicConstraints())
                .as("it signs servers, and no further authority")
                .isZero();
    }

    @Test
    void theAuthorityIsKeptSoThatPhonesGoOnTrustingIt() throws Exception {
        WorkshopCertificate first = WorkshopCertificate.in(folder, List.of(address("192.168.1.20")), NOW);
        WorkshopCertificate next =
                WorkshopCertificate.in(folder, List.of(address("192.168.1.99")), NOW.plus(Duration.ofDays(20)));
        assertThat(next.authority()).isEqualTo(first.authority());
        assertThat(next.fingerprint()).isEqualTo(first.fingerprint()).matches("([0-9A-F]{2} ){31}[0-9A-F]{2}");
        hold(served(next), first.authority());
    }

    @Test
    void theKeyIsReadableByItsOwnerOnly() throws Exception {
        WorkshopCertificate.in(folder, List.of(address("192.168.1.20")), NOW);
        assertThat(PosixFilePermissions.toString(
                        Files.getPosixFilePermissions(folder.resolve(WorkshopCertificate.FILE))))
                .isEqualTo("rw-------");
        try (var files = Files.list(folder)) {
            assertThat(files).as("the server's key is not kept").hasSize(1);
        }
    }

    @Test
    void aStolenAuthorityCanSpeakForNoOtherSite() throws Exception {
        WorkshopCertificate certificate = WorkshopCertificate.in(folder, List.of(address("192.168.1.20")), NOW);
        KeyStore stolen = KeyStore.getInstance(
                folder.resolve(WorkshopCertificate.FILE).toFile(),
                WorkshopCertificate.password().toCharArray());
        PrivateKey key = (PrivateKey)
                stolen.getKey("gudgeon", WorkshopCertificate.password().toCharArray());
        Issuing issuing = new Issuing();
        X509Certificate elsewhere = issuing.server(
                issuing.newKey().getPublic(),
                List.of(address("203.0.113.5")),
                certificate.authority(),
                new KeyPair(certificate.authority().getPublicKey(), key),
                NOW);
        assertThatThrownBy(() -> hold(elsewhere, certificate.authority()))
                .isInstanceOf(CertPathValidatorException.class);
    }

    @Test
    void aDamagedFileIsSaid() throws Exception {
        Files.writeString(folder.resolve(WorkshopCertificate.FILE), "rubbish");
        assertThatThrownBy(() -> WorkshopCertificate.in(folder, List.of(address("192.168.1.20")), NOW))
                .isInstanceOf(ShelfFault.class)
                .hasMessageContaining(WorkshopCertificate.FILE);
    }
}
