package clipwitness.report;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Made-up documents that begin as the program's own do, and what stands in a folder. */
final class OwnFiles {
    private OwnFiles() {}

    /** A set of three, told from others by a text; the PDF last. */
    static Map<String, byte[]> set(String text) {
        Map<String, byte[]> documents = new LinkedHashMap<>();
        documents.put("N-results.json", json(text));
        documents.put("N-results.csv", csv(text));
        documents.put("N.pdf", pdf(text));
        return documents;
    }

    static byte[] json(String text) {
        return bytes("{\n  \"schema\" : \"clipwitness-results/1\", \"" + text + "\"}");
    }

    static byte[] csv(String text) {
        return bytes("section,state,against,file,quantity,order,gainPercent,frequency,level,setting,value,unit,"
                + "expandedUncertainty,limit,decision,reason\nreport,,,,inputsDigest,,,,,,,,,,," + text + "\n");
    }

    static byte[] pdf(String text) {
        return bytes("%PDF-1.7\n<pdf:Producer>clipwitness 1</pdf:Producer>" + text);
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    /** File names and contents of a folder, all files in it. */
    static Map<String, String> in(Path folder) throws IOException {
        Map<String, String> found = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path f : files.toList()) {
                found.put(f.getFileName().toString(), Files.readString(f));
            }
        }
        return found;
    }

    /** The same of documents. */
    static Map<String, String> texts(Map<String, byte[]> documents) {
        Map<String, String> texts = new TreeMap<>();
        documents.forEach((name, bytes) -> texts.put(name, new String(bytes, StandardCharsets.UTF_8)));
        return texts;
    }
}
