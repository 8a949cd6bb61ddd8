package gudgeon.bench.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import gudgeon.bench.web.page.Assets;
import gudgeon.rebuild.journal.Fact;
import gudgeon.rebuild.journal.Found;
import gudgeon.store.certificate.WorkshopCertificate;
import gudgeon.store.photo.Photos;
import gudgeon.store.shelf.Shelf;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.net.ConnectException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.KeyStore;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who is answered on the workshop's network, and who is not. */
class OnTheNetworkTest {
    @TempDir
    private Path folder;

    private Elsewhere workshop;
    private String build;

    @BeforeEach
    void open() throws Exception {
        workshop = Elsewhere.open(folder, Clock.systemUTC());
        build = workshop.shelf.start(
                "Tarn 98 no. 1187",
                Files.readString(Path.of("..", "examples", "tarn-98.yaml")),
                Found.TOGETHER,
                "bench");
    }

    @AfterEach
    void close() {
        workshop.close();
    }

    private Phone phone() {
        return new Phone(workshop.address());
    }

    private Phone laptop() {
        return new Phone(workshop.bench.address());
    }

    private Phone letIn(String name) throws Exception {
        Phone phone = phone();
        assertThat(phone.enter(workshop.codes.issue().digits(), name).statusCode())
                .isEqualTo(303);
        return phone;
    }

    @Test
    void withoutANetworkNothingListensBeyondTheLoopback(@TempDir Path other) {
        try (Shelf shelf = Shelf.open(other);
                Bench alone = Bench.start(shelf, new Photos(other), List.of(), 0)) {
            int port = alone.address().getPort();
            for (InetAddress address : List.of(Elsewhere.outer(), Elsewhere.secondLoopback())) {
                assertThatThrownBy(() -> new Socket(address, port).close())
                        .as("%s", address)
                        .isInstanceOf(ConnectException.class);
            }
            assertThat(alone.addressesForOthers()).isEmpty();
        }
    }

    @Test
    void whoIsNotLetInSeesTheEntranceAndNothingElse() throws Exception {
        Phone stranger = phone();
        for (String path : List.of("/", "/builds/" + build, "/builds/" + build + "/journal", "/marks", "/nowhere")) {
            HttpResponse<String> answer = stranger.get(path);
            assertThat(answer.statusCode()).as(path).isEqualTo(401);
            assertThat(answer.body())
                    .contains("Enter the code")
                    .doesNotContain("Tarn 98", "piston", "aria-label=\"Pages of this build\"");
        }
        assertThat(stranger.get(Assets.at("page.css")).statusCode()).isEqualTo(200);
        HttpResponse<String> told = stranger.post("/builds/" + build + "/entries", "type", "noted", "text", "in?");
        assertThat(told.statusCode()).isEqualTo(401);
        assertThat(workshop.shelf.build(build).orElseThrow().size()).isEqualTo(1);
    }

    @Test
    void aCodeLetsOneDeviceInAndTheJournalSaysWhichItWas() throws Exception {
        String code = workshop.codes.issue().digits();
        Phone phone = phone();
        HttpResponse<String> entered = phone.post(
                "/enter",
                "code",
                code.substring(0, 4) + " " + code.substring(4),
                "name",
                "Ann's phone",
                "to",
                "/marks");
        assertThat(entered.headers().firstValue("Location"))
                .hasValueSatisfying(to -> assertThat(to).endsWith("/marks"));
        assertThat(Phone.cookie(entered))
                .hasValueSatisfying(cookie -> assertThat(cookie).contains("HttpOnly", "SameSite=Strict", "Path=/"));
        assertThat(phone().enter(code, "Bob's phone").statusCode())
                .as("the code is used up")
                .isEqualTo(422);
        phone.post("/builds/" + build + "/entries", "type", "noted", "text", "from the shed");
        assertThat(workshop.shelf.build(build).orElseThrow().entry(2)).satisfies(entry -> {
            assertThat(entry.device()).isEqualTo("Ann's phone");
            assertThat(entry.fact()).isEqualTo(new Fact.Noted("", "from the shed"));
        });
    }

    @Test
    void whoIsPutOutIsRefusedAtOnceAndARestartKeepsTheOthersIn() throws Exception {
        Phone ann = letIn("Ann's phone");
        Phone bob = letIn("Bob's tablet");
        String page = laptop().get("/devices").body();
        assertThat(page).contains("Ann&#39;s phone", "Bob&#39;s tablet", "last seen");
        String id = workshop.devices.all().get(1).id();
        assertThat(laptop().post("/devices/out", "id", id).statusCode()).isEqualTo(303);
        assertThat(ann.get("/").statusCode()).isEqualTo(401);
        assertThat(bob.get("/").statusCode()).isEqualTo(200);
        String token = bob.token();
        workshop.close();
        workshop = Elsewhere.open(folder, Clock.systemUTC());
        HttpResponse<String> again =
                phone().send(HttpRequest.newBuilder(workshop.address()).header("Cookie", "gudgeon-in=" + token));
        assertThat(again.statusCode()).isEqualTo(200);
    }

    @Test
    void onlyTheLaptopLetsInAndPutsOut() throws Exception {
        Phone ann = letIn("Ann's phone");
        for (Phone device : List.of(ann, phone())) {
            assertThat(device.get("/devices").statusCode()).isEqualTo(403);
            assertThat(device.post("/devices/code").statusCode()).isEqualTo(403);
            assertThat(device.post(
                                    "/devices/out",
                                    "id",
                                    workshop.devices.all().get(0).id())
                            .statusCode())
                    .isEqualTo(403);
        }
        assertThat(workshop.codes.current()).as("no code was made").isEmpty();
        assertThat(workshop.devices.all()).hasSize(1);
        assertThat(laptop().get("/").body()).contains("/devices");
        assertThat(ann.get("/").body()).doesNotContain("/devices");
    }

    @Test
    void guessingIsStopped() throws Exception {
        Phone guesser = phone();
        String code = workshop.codes.issue().digits();
        for (int n = 0; n < 5; n++) {
            assertThat(guesser.enter(code.equals("0000000" + n) ? "x" : "0000000" + n, "g")
                            .body())
                    .contains("not the code");
        }
        assertThat(guesser.enter(code, "g").body()).contains("wrong too often");
        assertThat(workshop.devices.all()).isEmpty();
        assertThat(laptop().get("/devices").body()).contains("Something else was typed 5 times");
    }

    @Test
    void onTheNetworkOnlyTheAddressItselfIsAnswered() throws Exception {
        Phone ann = letIn("Ann's phone");
        for (String host : List.of(
                "bench.example", "localhost", "127.0.0.1", workshop.address().getHost() + ".example")) {
            assertThat(Elsewhere.asked(
                            workshop.address(),
                            "GET / HTTP/1.1\r\nHost: " + host + ":"
                                    + workshop.address().getPort() + "\r\nCookie: gudgeon-in=" + ann.token()
                                    + "\r\nConnection: close\r\n\r\n"))
                    .as(host)
                    .startsWith("HTTP/1.1 403")
                    .doesNotContain("1187");
        }
    }

    @Test
    void whatAnotherSitesPageSendsIsRefused() throws Exception {
        Phone ann = letIn("Ann's phone");
        for (String[] head : new String[][] {
            {"Origin", "http://elsewhere.example"},
            {"Origin", "null"},
            {"Origin", "https://" + workshop.address().getAuthority()},
            {"Sec-Fetch-Site", "cross-site"},
            {"Sec-Fetch-Site", "same-site"}
        }) {
            HttpResponse<String> answer =
                    ann.send(HttpRequest.newBuilder(workshop.address().resolve("/builds/" + build + "/entries"))
                            .header("Content-Type", "application/x-www-form-urlencoded")
                            .header(head[0], head[1])
                            .POST(HttpRequest.BodyPublishers.ofString("type=noted&text=x")));
            assertThat(answer.statusCode()).as(head[1]).isEqualTo(403);
        }
        assertThat(workshop.shelf.build(build).orElseThrow().size()).isEqualTo(1);
    }

    @Test
    void aDeviceThatAsksTooFastIsHeldBackAndTheLaptopIsNot(@TempDir Path other) throws Exception {
        try (Elsewhere slow =
                Elsewhere.open(other, Clock.systemUTC(), Elsewhere.outer(), Optional.empty(), new Rates(1, 20))) {
            assertThat(burst(slow.address()))
                    .startsWith("HTTP/1.1 200")
                    .contains("HTTP/1.1 429", "This device asks for more than Gudgeon answers");
            assertThat(burst(slow.bench.address())).doesNotContain("HTTP/1.1 429");
        }
    }

    private static String burst(URI server) throws IOException {
        String one = "GET " + Assets.at("mark.svg") + " HTTP/1.1\r\nHost: " + server.getAuthority() + "\r\n";
        return Elsewhere.asked(server, (one + "\r\n").repeat(200) + one + "Connection: close\r\n\r\n");
    }

    @Test
    void labelsCarryTheNetworksAddressAndNoOther() throws Exception {
        String prints = laptop().get("/builds/" + build + "/prints").body();
        assertThat(prints).contains("<option>" + workshop.address() + "</option>");
        String labels = "/builds/" + build + "/print/labels?empty=3&address=";
        assertThat(laptop().get(labels + workshop.address()).statusCode()).isEqualTo(200);
        assertThat(laptop().get(labels + "http://192.168.7.7:7373/").body())
                .contains("is no address at which other devices");
    }

    @Test
    void theLogHoldsNoSecret() throws Exception {
        ByteArrayOutputStream log = new ByteArrayOutputStream();
        PrintStream before = System.err;
        System.setErr(new PrintStream(log, true, StandardCharsets.UTF_8));
        String code;
        Phone ann = phone();
        try {
            code = workshop.codes.issue().digits();
            ann.get("/enter?code=" + code);
            ann.enter(code.equals("12345678") ? "87654321" : "12345678", "Ann's phone");
            ann.enter(code, "Ann's phone");
            workshop.shelf.close();
            assertThat(ann.get("/builds/" + build + "/journal?q=" + code).statusCode())
                    .as("a fault that is logged")
                    .isEqualTo(503);
        } finally {
            System.setErr(before);
        }
        assertThat(log.toString(StandardCharsets.UTF_8))
                .contains("While serving /builds/" + build + "/journal")
                .doesNotContain(code, ann.token(), workshop.devices.all().get(0).tokenHash());
    }

    @Test
    void withACertificateAllIsEncryptedAndTheCookieToo(@TempDir Path other) throws Exception {
        InetAddress at = Elsewhere.secondLoopback();
        WorkshopCertificate certificate = WorkshopCertificate.in(other, List.of(at), Instant.now());
        try (Elsewhere encrypted =
                Elsewhere.open(other, Clock.systemUTC(), at, Optional.of(certificate), Rates.USUAL)) {
            assertThat(encrypted.address()).hasScheme("https");
            Phone trusting =
                    new Phone(encrypted.address(), HttpClient.newBuilder().sslContext(trust(certificate)));
            HttpResponse<String> entered =
                    trusting.enter(encrypted.codes.issue().digits(), "Ann's phone");
            assertThat(Phone.cookie(entered))
                    .hasValueSatisfying(cookie -> assertThat(cookie).contains("Secure", "HttpOnly"));
            assertThat(trusting.get("/").body()).contains("No build yet");
            assertThat(Elsewhere.asked(encrypted.address(), "GET / HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n"))
                    .as("nothing is told in the clear")
                    .doesNotContain("Enter the code", "No build yet");
            HttpResponse<byte[]> file = HttpClient.newHttpClient()
                    .send(
                            HttpRequest.newBuilder(encrypted.bench.address().resolve("/workshop.crt"))
                                    .build(),
                            HttpResponse.BodyHandlers.ofByteArray());
            assertThat(file.body()).isEqualTo(certificate.file());
        }
    }

    private static SSLContext trust(WorkshopCertificate certificate) throws Exception {
        KeyStore trusted = KeyStore.getInstance("PKCS12");
        trusted.load(null, null);
        trusted.setCertificateEntry("workshop", certificate.authority());
        TrustManagerFactory managers = TrustManagerFactory.getInstance(TrustManagerFactory.getDefaultAlgorithm());
        managers.init(trusted);
        SSLContext context = SSLContext.getInstance("TLS");
        context.init(null, managers.getTrustManagers(), null);
        return context;
    }
}
