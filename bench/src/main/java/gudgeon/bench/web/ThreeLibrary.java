package gudgeon.bench.web;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.NotFoundResponse;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;
import org.jspecify.annotations.Nullable;

/** Serves the drawing library three from its jar. The jar lists no directories, so its files are asked for one by one. */
final class ThreeLibrary {
    private static final String VERSION = "META-INF/maven/org.webjars.npm/three/pom.properties";

    private final String directory = "META-INF/resources/webjars/three/" + version() + "/build/";

    void on(RoutesConfig routes) {
        routes.get("/three/{file}", this::serve);
    }

    private void serve(Context ctx) {
        String file = ctx.pathParam("file");
        InputStream in = file.matches("three\\.[a-z.]+\\.js") ? open(directory + file) : null;
        if (in == null) {
            throw new NotFoundResponse();
        }
        ctx.contentType("text/javascript")
                .header("Cache-Control", "max-age=86400")
                .result(in);
    }

    private static @Nullable InputStream open(String path) {
        return ThreeLibrary.class.getClassLoader().getResourceAsStream(path);
    }

    private static String version() {
        try (InputStream in = open(VERSION)) {
            Properties properties = new Properties();
            if (in != null) {
                properties.load(in);
            }
            String version = properties.getProperty("version");
            if (version == null) {
                throw new IllegalStateException("the three library is not on the class path");
            }
            return version;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
