package heeltap.load;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What a file of a month is, by the beginning of its name, and which fields make it one. */
enum FileKind {
    PRICES("prices", "prices"),
    SALES("sales", "sales"),
    INVOICES("invoices", "invoices"),
    STOCK_OPENING("stock-opening", "stock"),
    STOCK("stock", "stock"),
    LOSSES("losses", "losses");

    private final String beginning;
    private final String words;

    FileKind(String beginning, String words) {
        this.beginning = beginning;
        this.words = words;
    }

    /** As {@code files.csv} says it. */
    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** The name of its section in the heading words. */
    String words() {
        return words;
    }

    /** Of each list at least one field must be there. */
    List<List<Field>> required() {
        return switch (this) {
            case PRICES -> List.of(List.of(Field.CODE, Field.ITEM), List.of(Field.UNIT_PRICE, Field.ITEM));
            case SALES -> List.of(List.of(Field.ITEM, Field.CODE));
            case INVOICES ->
                List.of(List.of(Field.PRODUCT), List.of(Field.QUANTITY), List.of(Field.UNIT_PRICE, Field.LINE_TOTAL));
            case STOCK, STOCK_OPENING -> List.of(List.of(Field.ITEM), List.of(Field.COUNT));
            case LOSSES -> List.of(List.of(Field.ITEM), List.of(Field.AMOUNT));
        };
    }

    /** The kind of a file by its path from the bar folder; null where the name says none. */
    static @Nullable FileKind find(String path) {
        String name = fileName(path).toLowerCase(Locale.ROOT);
        for (FileKind kind : values()) {
            if (name.startsWith(kind.beginning)) {
                return kind;
            }
        }
        return null;
    }

    static String fileName(String path) {
        return path.substring(path.lastIndexOf('/') + 1);
    }

    /** {@code sales, invoices, stock ...}, for messages. */
    static String beginnings() {
        return String.join(", ", List.of("sales", "invoices", "stock", "stock-opening", "losses", "prices"));
    }

    static Map<String, Field> fieldsByWord() {
        return FieldWords.BY_NAME;
    }

    /** The field that a row of Columns names for this kind of file; null for none. */
    @Nullable Field field(String word) {
        Field field = FieldWords.BY_NAME.get(TextFold.fold(word));
        if (field == Field.ITEM && this == INVOICES) {
            return Field.PRODUCT;
        }
        return field == Field.PRODUCT && this != INVOICES ? Field.ITEM : field;
    }

    /** Names of fields as a person may type them in Columns. */
    private static final class FieldWords {
        private static final Map<String, Field> BY_NAME = byName();

        private static Map<String, Field> byName() {
            Map<String, Field> fields = new java.util.HashMap<>();
            for (Field field : Field.values()) {
                fields.put(field.word(), field);
            }
            fields.put("ingredient", Field.ITEM);
            fields.put("price", Field.UNIT_PRICE);
            return Map.copyOf(fields);
        }
    }
}
