package heeltap.load;

import java.util.List;

/**
 * A blank sheet to fill in.
 *
 * @param name the sheet's name, or the beginning of a month's file name
 * @param rows cells by row; the first row holds the headings
 */
public record TemplateSheet(String name, List<List<String>> rows) {}
