package gudgeon.rebuild.book;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import gudgeon.rebuild.book.Form.Value;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes the JSON Schema (2020-12) of an engine book from the forms that the reader checks books against. */
final class BookSchema {
    private static final List<Form> BLOCKS = List.of(
            Forms.SIZE,
            Forms.ENGINE,
            Forms.INSTRUMENT,
            Forms.CYLINDER,
            Forms.CRANK,
            Forms.DECK_HEIGHT,
            Forms.HEAD,
            Forms.GASKET,
            Forms.CAM,
            ValveForms.VALVE,
            ValveForms.LIFT,
            PistonForms.PISTON,
            PistonForms.CROWN,
            PistonForms.GROOVE,
            PistonForms.POCKET,
            Forms.WANTED,
            Forms.WANTED_VALVE,
            StructureForms.POSITION,
            StructureForms.JOINT,
            StructureForms.HOLE,
            StructureForms.STEP,
            StructureForms.CHECK,
            StructureForms.EXPECT,
            StructureForms.DIMENSION,
            CommissioningForms.START,
            CommissioningForms.PROVED_BY,
            CommissioningForms.FLUID,
            CommissioningForms.RUNNING_IN,
            CommissioningForms.STAGE);

    private final ObjectMapper json = new ObjectMapper();

    /** The schema as text, with a line break at its end. */
    String text() {
        ObjectNode schema = json.createObjectNode();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", "Engine book");
        schema.setAll(block(Forms.BOOK));
        ObjectNode parts = schema.putObject("$defs");
        BLOCKS.forEach(form -> parts.set(named(form), block(form)));
        try {
            return json.writerWithDefaultPrettyPrinter().writeValueAsString(schema) + "\n";
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String named(Form form) {
        return form.name().replace(' ', '-');
    }

    private ObjectNode block(Form form) {
        ObjectNode block = json.createObjectNode();
        block.put("description", form.description());
        block.put("type", "object");
        ObjectNode keys = block.putObject("properties");
        Map<String, Boolean> required = new LinkedHashMap<>();
        for (Form.Key key : form.keys()) {
            ObjectNode value = value(key.value());
            value.put("description", key.description());
            keys.set(key.name(), value);
            required.put(key.name(), key.required());
        }
        ArrayNode needed = json.createArrayNode();
        required.forEach((name, needs) -> {
            if (needs) {
                needed.add(name);
            }
        });
        if (!needed.isEmpty()) {
            block.set("required", needed);
        }
        if (form.equals(Forms.SIZE)) {
            ArrayNode any = block.putArray("anyOf");
            any.addObject().putArray("required").add("value");
            any.addObject().putArray("required").add("readings");
        }
        if (form.equals(Forms.WANTED)) {
            block.set("additionalProperties", reference(Forms.WANTED_VALVE));
        } else {
            block.put("additionalProperties", false);
        }
        ways(form, block);
        return block;
    }

    private static void ways(Form form, ObjectNode block) {
        if (form.ways().isEmpty()) {
            return;
        }
        ArrayNode oneOf = block.putArray("oneOf");
        for (Form.Way way : form.ways()) {
            ObjectNode one = oneOf.addObject();
            ArrayNode needed = one.putArray("required").add(way.lead());
            way.needed().forEach(needed::add);
            ObjectNode others = one.putObject("properties");
            form.names().stream().filter(name -> !way.uses(name)).forEach(name -> others.put(name, false));
        }
    }

    private ObjectNode reference(Form form) {
        return json.createObjectNode().put("$ref", "#/$defs/" + named(form));
    }

    private ObjectNode value(Value value) {
        ObjectNode node = json.createObjectNode();
        if (value instanceof Value.OfSize size) {
            ObjectNode bare = node.putArray("anyOf").addObject();
            bare.put("type", "number").put("minimum", size.low()).put("maximum", size.high());
            ((ArrayNode) node.get("anyOf")).addObject().put("type", "string");
            if (size.unit() != Unit.NONE || size.high() < 100) {
                ((ArrayNode) node.get("anyOf")).add(reference(Forms.SIZE));
            }
        } else if (value instanceof Value.OfEvent) {
            node.putArray("type").add("string").add("number");
        } else if (value instanceof Value.OfText) {
            node.putArray("type").add("string").add("number");
        } else if (value instanceof Value.OfWhole whole) {
            node.put("type", "integer").put("minimum", whole.low()).put("maximum", whole.high());
        } else if (value instanceof Value.OfWord word) {
            ArrayNode words = node.putArray("enum");
            word.words().forEach(text -> {
                if (text.equals("true") || text.equals("false")) {
                    words.add(Boolean.parseBoolean(text));
                } else {
                    words.add(text);
                }
            });
        } else if (value instanceof Value.OfWords word) {
            ObjectNode one = node.putArray("anyOf").addObject();
            ArrayNode words = one.putArray("enum");
            word.words().forEach(words::add);
            ((ArrayNode) node.get("anyOf")).addObject().put("type", "array").set("items", one.deepCopy());
        } else if (value instanceof Value.OfTexts || value instanceof Value.OfIds) {
            ArrayNode any = node.putArray("anyOf");
            any.addObject().put("type", "string");
            any.addObject().put("type", "array").putObject("items").put("type", "string");
        } else if (value instanceof Value.OfBlock of) {
            node.setAll(reference(of.form()));
        } else if (value instanceof Value.OfNamed of) {
            node.put("type", "object").set("additionalProperties", reference(of.form()));
        } else if (value instanceof Value.OfList of) {
            node.put("type", "array").put("minItems", 1).set("items", reference(of.form()));
        } else if (value instanceof Value.OfPoints) {
            node.put("type", "array").put("minItems", LiftReader.FEWEST_POINTS);
            ObjectNode pair = node.putObject("items")
                    .put("type", "array")
                    .put("minItems", 2)
                    .put("maxItems", 2);
            pair.putObject("items").putArray("type").add("number").add("string");
        } else if (value instanceof Value.OfPoint) {
            point(node);
        } else if (value instanceof Value.OfOutline) {
            point(node.put("type", "array").put("minItems", 3).putObject("items"));
        } else if (value instanceof Value.OfSizes) {
            node.put("type", "object")
                    .putObject("additionalProperties")
                    .put("type", "object")
                    .putObject("additionalProperties")
                    .putArray("type")
                    .add("number")
                    .add("string");
        } else if (value instanceof Value.OfReadings) {
            node.put("type", "array").put("minItems", 1);
            node.putObject("items").putArray("type").add("number").add("string");
        }
        return node;
    }

    private static void point(ObjectNode node) {
        node.put("type", "array").put("minItems", 2).put("maxItems", 2);
        node.putObject("items").putArray("type").add("number").add("string");
    }
}
