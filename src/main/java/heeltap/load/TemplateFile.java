package heeltap.load;

/**
 * A text file of the blank bar folder.
 *
 * @param path from the folder, with {@code /}
 * @param text in UTF-8 with LF line ends
 */
public record TemplateFile(String path, String text) {}
