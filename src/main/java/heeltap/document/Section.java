package heeltap.document;

import java.util.List;

/**
 * A section of the report; the first is the page of findings.
 *
 * @param id for links, such as {@code prices}
 * @param title for people
 * @param newPage whether it opens a part of the report: it begins on a new page unless the one before is nearly empty
 */
public record Section(String id, String title, boolean newPage, List<Block> blocks) {}
