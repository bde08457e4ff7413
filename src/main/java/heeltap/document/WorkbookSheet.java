package heeltap.document;

import java.util.List;

/**
 * A sheet of the workbook.
 *
 * @param name 31 characters at the most
 * @param blocks tables (all columns, whatever a view shows), charts and paragraphs, one under the other
 */
public record WorkbookSheet(String name, List<Block> blocks) {}
