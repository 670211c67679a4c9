package clipwitness.job.read;

import clipwitness.job.Photo;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the list {@code photos}. */
final class PhotosSection {
    private PhotosSection() {}

    static List<Photo> read(Section sheet, List<String> states, JobFiles files) {
        List<Photo> photos = new ArrayList<>();
        for (SheetNode node : sheet.items("photos")) {
            Section.read(node, section -> photo(section, states, files)).ifPresent(photos::add);
        }
        return photos;
    }

    private static Optional<Photo> photo(Section section, List<String> states, JobFiles files) {
        Optional<String> file = section.required("file", "Write for example file: photos/board.jpg")
                .flatMap(f -> section.node("file"))
                .flatMap(SheetNode::path)
                .flatMap(files::picture);
        String caption = section.text("caption");
        Optional<String> state = section.field("state").flatMap(f -> f.oneOf(states, "state"));
        return file.map(f -> new Photo(f, caption, state));
    }
}
