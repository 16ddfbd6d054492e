package org.hosewright.files.yaml;

import org.hosewright.hydraulics.error.InvalidInput;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.composer.Composer;
import org.snakeyaml.engine.v2.events.CollectionEndEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.parser.Parser;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;
import org.snakeyaml.engine.v2.schema.CoreSchema;

/** The reader of the subset of YAML 1.2 that the open formats use: core schema, one document, no anchors, no tags. */
public final class YamlReader {
    /** The most a file may hold [characters]. */
    public static final int LIMIT = 1_000_000;

    /** Deeper nesting than any of the formats has. */
    private static final int DEEPEST = 24;

    private static final int SHOWN = 60;

    private YamlReader() {}

    /** The top mapping of a file.
     *
     * @param source the file's name, for error messages
     * @throws InvalidInput it is not such a file
     */
    public static YamlMap read(String text, String source) {
        Place top = new Place(source, 1, "");
        return new YamlValue(top, compose(text, source)).map();
    }

    static Node compose(String text, String source) {
        if (text.length() > LIMIT) {
            throw new InvalidInput("size", text.length() + " characters", "at most 1 MB", source);
        }
        try {
            check(text, source);
            return new Composer(settings(source), parser(text, source))
                    .getSingleNode()
                    .orElseThrow(() -> new InvalidInput("content", "", "keys and values in YAML", source));
        } catch (MarkedYamlEngineException e) {
            int line = e.getProblemMark().map(mark -> mark.getLine() + 1).orElse(1);
            throw new InvalidInput(
                    "YAML", shown(text, line), "YAML 1.2 (" + e.getProblem() + ")", source + ", line " + line);
        } catch (YamlEngineException e) {
            throw new InvalidInput("YAML", firstLine(String.valueOf(e.getMessage())), "YAML 1.2 in UTF-8", source);
        }
    }

    private static Parser parser(String text, String source) {
        LoadSettings settings = settings(source);
        return new ParserImpl(settings, new StreamReader(settings, text));
    }

    private static LoadSettings settings(String source) {
        return LoadSettings.builder()
                .setLabel(source)
                .setSchema(new CoreSchema())
                .setCodePointLimit(LIMIT)
                .setMaxAliasesForCollections(0)
                .build();
    }

    private static void check(String text, String source) {
        int depth = 0;
        int documents = 0;
        Parser events = parser(text, source);
        while (events.hasNext()) {
            Event event = events.next();
            String where = source
                    + event.getStartMark()
                            .map(m -> ", line " + (m.getLine() + 1))
                            .orElse("");
            depth += event instanceof CollectionStartEvent ? 1 : event instanceof CollectionEndEvent ? -1 : 0;
            documents += event instanceof DocumentStartEvent ? 1 : 0;
            if (depth > DEEPEST) {
                throw new InvalidInput("nesting", "deeper than " + DEEPEST, "fewer braces within braces", where);
            }
            if (documents > 1) {
                throw new InvalidInput("a second document", "---", "one document a file", where);
            }
            Tricks.refuse(event, where);
        }
    }

    private static String shown(String text, int line) {
        String found = text.lines().skip(line - 1L).findFirst().orElse("").strip();
        String some = found.isEmpty() ? "(an empty line)" : found;
        return some.length() > SHOWN ? some.substring(0, SHOWN) + "…" : some;
    }

    private static String firstLine(String message) {
        return message.lines().findFirst().orElse("unreadable");
    }
}
