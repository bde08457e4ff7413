package heeltap.document;

import java.util.List;

/**
 * A section of the report; the first is the page of findings.
 *
 * @param id for links, such as {@code prices}
 * @param title for people
 * @param newPage whether it begins on a new page
 * @param wide whether its pages lie on their side
 */
public record Section(String id, String title, boolean newPage, boolean wide, List<Block> blocks) {}
