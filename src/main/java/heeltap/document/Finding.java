package heeltap.document;

import heeltap.quantity.Money;
import org.jspecify.annotations.Nullable;

/**
 * One finding of the first page.
 *
 * @param sentence one sentence in plain words
 * @param amount the money it is about, for ranking; null where it has none
 * @param section id of the section to read on in
 */
public record Finding(String sentence, @Nullable Money amount, String section) {}
