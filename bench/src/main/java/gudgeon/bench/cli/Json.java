package gudgeon.bench.cli;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** JSON as commands print it. */
final class Json {
    private static final ObjectMapper MAPPER = new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);

    private Json() {}

    /** The text of an object whose values are texts, numbers, truths, lists and objects of these; a null is null there too. */
    static String text(Map<String, ? extends @Nullable Object> object) {
        try {
            return MAPPER.writeValueAsString(object);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
