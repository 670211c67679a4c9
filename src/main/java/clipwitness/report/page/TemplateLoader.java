package clipwitness.report.page;

import io.pebbletemplates.pebble.error.LoaderException;
import io.pebbletemplates.pebble.loader.Loader;
import java.io.Reader;
import java.io.StringReader;

/** Gives the template engine the template's files, and no others. */
final class TemplateLoader implements Loader<String> {
    private final TemplateSource source;

    TemplateLoader(TemplateSource source) {
        this.source = source;
    }

    @Override
    public Reader getReader(String file) {
        return TemplateSource.text(source.any(file))
                .map(StringReader::new)
                .orElseThrow(() -> new LoaderException(null, "there is no file '" + file + "'"));
    }

    @Override
    public void setCharset(String charset) {
        throw new IllegalArgumentException("templates are UTF-8");
    }

    @Override
    public void setPrefix(String prefix) {
        throw new IllegalArgumentException("a template has no prefix");
    }

    @Override
    public void setSuffix(String suffix) {
        throw new IllegalArgumentException("a template has no suffix");
    }

    @Override
    public String resolveRelativePath(String relativePath, String anchorPath) {
        return relativePath;
    }

    @Override
    public String createCacheKey(String templateName) {
        return templateName;
    }

    @Override
    public boolean resourceExists(String file) {
        return source.any(file).isPresent();
    }
}
