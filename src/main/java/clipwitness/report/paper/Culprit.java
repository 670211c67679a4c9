package clipwitness.report.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** Finds the element for which a page cannot be laid out: the innermost one without which it can. */
final class Culprit {
    /** Each attempt lays the page out once. */
    private static final int MOST_ATTEMPTS = 40;

    private final Document page;
    private final Predicate<Document> fails;
    private int attempts;

    /**
     * A search.
     *
     * @param page  a page that fails
     * @param fails whether a page cannot be laid out; may change what it is given
     */
    Culprit(Document page, Predicate<Document> fails) {
        this.page = page;
        this.fails = fails;
    }

    /** Index of the element in document order; empty where the page fails without any content, or no single element is at fault. */
    Optional<Integer> index() {
        Optional<Integer> found = Optional.empty();
        Node body = page.getElementsByTagName("body").item(0);
        List<Integer> candidates = body == null ? List.of() : children(body);
        while (!candidates.isEmpty() && attempts < MOST_ATTEMPTS) {
            Optional<Integer> one = among(candidates);
            if (one.isEmpty()) {
                return found;
            }
            found = one;
            candidates = children(all(page).get(one.get()));
        }
        return found;
    }

    /** The one of some elements without which the page can be laid out, found by halves. */
    private Optional<Integer> among(List<Integer> elements) {
        if (!healsWithout(elements)) {
            return Optional.empty();
        }
        List<Integer> left = elements;
        while (left.size() > 1 && attempts < MOST_ATTEMPTS) {
            List<Integer> first = left.subList(0, left.size() / 2);
            left = healsWithout(first) ? first : left.subList(left.size() / 2, left.size());
        }
        return Optional.of(left.get(0));
    }

    private boolean healsWithout(List<Integer> elements) {
        attempts++;
        Document copy = (Document) page.cloneNode(true);
        List<Element> all = all(copy);
        elements.stream().map(all::get).forEach(e -> e.getParentNode().removeChild(e));
        return !fails.test(copy);
    }

    private List<Integer> children(Node parent) {
        List<Element> all = all(page);
        List<Integer> children = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).getParentNode() == parent) {
                children.add(i);
            }
        }
        return children;
    }

    private static List<Element> all(Document document) {
        List<Element> all = new ArrayList<>();
        collect(document.getDocumentElement(), all);
        return all;
    }

    private static void collect(Element element, List<Element> all) {
        all.add(element);
        for (Node n = element.getFirstChild(); n != null; n = n.getNextSibling()) {
            if (n instanceof Element child) {
                collect(child, all);
            }
        }
    }
}
