package clipwitness.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.commonmark.Extension;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.ext.heading.anchor.HeadingAnchorExtension;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;

/**
 * The chapters of the manual as one page of HTML that needs nothing beside it: pictures are in it, links between chapters lead within it. The chapter called index
 * comes first, then those it links to in that order, then the others by name.
 */
final class ManualPage {
    private static final List<Extension> EXTENSIONS =
            List.of(TablesExtension.create(), HeadingAnchorExtension.create());
    private static final Pattern CHAPTER = Pattern.compile("\\]\\(([\\w-]+)\\.md(?:#[^)]*)?\\)");
    private static final Pattern LINK = Pattern.compile("href=\"([\\w-]+)\\.md(?:#([^\"]*))?\"");
    private static final Pattern PICTURE = Pattern.compile("src=\"([\\w./-]+)\"");
    private static final String FIRST = "index";

    private static final String HEAD = """
            <!DOCTYPE html>
            <html lang="en">
            <head>
            <meta charset="utf-8">
            <meta name="viewport" content="width=device-width, initial-scale=1">
            <title>Clipwitness: the manual</title>
            <style>
            body { font: 16px/1.5 sans-serif; color: #1a1a1a; background: #fff; max-width: 52em; margin: 2em auto; padding: 0 1em; }
            h1, h2, h3 { line-height: 1.25; }
            section + section { border-top: 1px solid #999; margin-top: 3em; }
            table { border-collapse: collapse; display: block; overflow-x: auto; }
            th, td { border: 1px solid #bbb; padding: .3em .6em; text-align: left; vertical-align: top; }
            code { font-family: monospace; background: #f2f2f2; }
            pre { background: #f2f2f2; padding: .7em; overflow-x: auto; }
            img { max-width: 100%; }
            </style>
            </head>
            <body>
            """;

    private final Path folder;

    private ManualPage(Path folder) {
        this.folder = folder;
    }

    /** The page of the chapters in a folder. */
    static String of(Path folder) throws IOException {
        ManualPage manual = new ManualPage(folder);
        StringBuilder page = new StringBuilder(HEAD);
        for (String chapter : manual.chapters()) {
            page.append("<section id=\"")
                    .append(chapter)
                    .append("\">\n")
                    .append(manual.html(chapter))
                    .append("</section>\n");
        }
        return page.append("</body>\n</html>\n").toString();
    }

    private List<String> chapters() throws IOException {
        List<String> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            files.map(f -> f.getFileName().toString())
                    .filter(f -> f.endsWith(".md"))
                    .map(f -> f.substring(0, f.length() - ".md".length()))
                    .sorted()
                    .forEach(all::add);
        }
        if (!all.contains(FIRST)) {
            return all;
        }
        Stream<String> linked =
                CHAPTER.matcher(text(FIRST)).results().map(m -> m.group(1)).filter(all::contains);
        return Stream.of(Stream.of(FIRST), linked, all.stream())
                .flatMap(chapters -> chapters)
                .distinct()
                .toList();
    }

    private String text(String chapter) throws IOException {
        return Files.readString(folder.resolve(chapter + ".md"));
    }

    private String html(String chapter) throws IOException {
        Parser parser = Parser.builder().extensions(EXTENSIONS).build();
        HtmlRenderer renderer = HtmlRenderer.builder().extensions(EXTENSIONS).build();
        String html = renderer.render(parser.parse(text(chapter)));
        String within =
                LINK.matcher(html).replaceAll(m -> "href=\"#" + (m.group(2) == null ? m.group(1) : m.group(2)) + "\"");
        return PICTURE.matcher(within).replaceAll(this::picture);
    }

    private String picture(MatchResult source) {
        Path file = folder.resolve(source.group(1)).normalize();
        String name = file.toString().toLowerCase(Locale.ROOT);
        String type = name.endsWith(".svg") ? "svg+xml" : name.substring(name.lastIndexOf('.') + 1);
        try {
            String bytes = Base64.getEncoder().encodeToString(Files.readAllBytes(file));
            return Matcher.quoteReplacement("src=\"data:image/" + type + ";base64," + bytes + "\"");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
