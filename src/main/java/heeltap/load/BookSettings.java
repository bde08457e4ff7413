package heeltap.load;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import heeltap.record.AcidTargets;
import heeltap.record.Folding;
import heeltap.record.IceWater;
import heeltap.record.PriceRule;
import heeltap.record.PublishedElasticity;
import heeltap.record.Setting;
import heeltap.record.Settings;
import heeltap.source.Cell;
import heeltap.source.Place;
import heeltap.source.Problem;
import heeltap.source.ProblemKind;
import java.time.DateTimeException;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashSet;
import java.util.IllformedLocaleException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The sheet Settings: names to typed values. */
final class BookSettings {
    private static final Pattern TIME =
            Pattern.compile("(\\d{1,2})(?:[:.h](\\d{2})?)?(?::00)?\\s?(am|pm)?", Pattern.CASE_INSENSITIVE);
    /** Without these every margin would be wrong. */
    private static final Set<Setting<?>> MONEY_HANGS_ON =
            Set.of(Setting.SALES_TAX_PERCENT, Setting.INVOICE_PRICES_INCLUDE_TAX, Setting.INVOICE_TAX_PERCENT);

    private static final Map<Setting<?>, ColumnBounds> BOUNDS = Map.ofEntries(
            Map.entry(Setting.GROUP_ELASTICITY, ColumnBounds.NEGATIVE),
            Map.entry(Setting.STANDARD_DRINK_GRAMS, ColumnBounds.POSITIVE),
            Map.entry(Setting.PRICE_STEP, ColumnBounds.POSITIVE),
            Map.entry(Setting.TARGET_COST_PERCENT, ColumnBounds.ABOVE_0_TO_100),
            Map.entry(Setting.TARGET_PRIME_COST_PERCENT, ColumnBounds.ABOVE_0_TO_100),
            Map.entry(Setting.POPULARITY_RULE_PERCENT, ColumnBounds.ABOVE_0_TO_100),
            Map.entry(Setting.LIQUIDS_START_AT, ColumnBounds.LIQUID_CELSIUS),
            Map.entry(Setting.BUILT_LIQUIDS_START_AT, ColumnBounds.LIQUID_CELSIUS),
            Map.entry(Setting.ICE_STARTS_AT, ColumnBounds.ICE_CELSIUS),
            Map.entry(Setting.SHAKEN_ENDS_AT, ColumnBounds.LIQUID_CELSIUS),
            Map.entry(Setting.STIRRED_ENDS_AT, ColumnBounds.LIQUID_CELSIUS),
            Map.entry(Setting.THROWN_ENDS_AT, ColumnBounds.LIQUID_CELSIUS),
            Map.entry(Setting.BUILT_ENDS_AT, ColumnBounds.LIQUID_CELSIUS));

    private final BookSheet sheet;
    private final Set<String> seen = new HashSet<>();
    private Settings settings = Settings.standard();

    private BookSettings(BookSheet sheet) {
        this.sheet = sheet;
    }

    static Settings read(BookSheet sheet) {
        BookSettings reader = new BookSettings(sheet);
        if (!sheet.isRefused()) {
            BookNames names = new BookNames();
            sheet.read(row -> reader.take(row, names) ? row : null);
            reader.missing();
            reader.wetness();
        }
        return reader.settings;
    }

    /** A blank value of a required setting is as if it were not there. */
    private void missing() {
        for (Setting<?> setting : Setting.ALL) {
            if (setting.required() && !seen.contains(setting.name())) {
                sheet.add(Problem.fatal(
                        ProblemKind.SETTING_MISSING,
                        sheet.place(),
                        "",
                        "The setting \"" + setting.name() + "\" is required and has no value.",
                        "Add the row \"" + setting.name() + "\" with its value: " + setting.meaning() + "."));
            }
        }
    }

    private void wetness() {
        Exact wet = settings.get(Setting.WET_ICE_PERCENT);
        if (wet.isPositive() && settings.get(Setting.ICE_STARTS_AT).isNegative()) {
            sheet.add(Problem.notice(
                    ProblemKind.VALUE_DOUBTFUL,
                    sheet.place(),
                    wet.toString(),
                    "Ice colder than 0 °C is dry, so \"" + Setting.WET_ICE_PERCENT.name() + "\" has no effect.",
                    "Set one of the two to 0."));
        }
    }

    private boolean take(BookRow row, BookNames names) {
        String name = row.text(BookTables.SETTING);
        if (row.isLeftOut() || !names.take(row, BookTables.SETTING, name)) {
            return false;
        }
        for (Setting<?> setting : Setting.ALL) {
            if (Folding.fold(setting.name()).equals(Folding.fold(name))) {
                row.cell(BookTables.VALUE).ifPresent(cell -> set(row, cell, setting));
                return !row.isLeftOut();
            }
        }
        List<String> known = Setting.ALL.stream().map(Setting::name).toList();
        String hint = BookText.nearest(name, known)
                .map(near -> " Is it \"" + near + "\"?")
                .orElse("");
        row.leaveOut(Problem.notice(
                ProblemKind.SETTING_UNKNOWN,
                row.place(BookTables.SETTING),
                name,
                "There is no setting of this name, so nothing is read from it." + hint,
                "Correct the name or remove the row."));
        return false;
    }

    private <T> void set(BookRow row, Cell cell, Setting<T> setting) {
        seen.add(setting.name());
        Object value = value(cell, setting, BookText.clean(cell.text()));
        if (value != null) {
            settings = settings.with(setting, cast(setting, value));
            return;
        }
        Place place = row.place(BookTables.VALUE);
        String reason = "\"" + setting.name() + "\" must be " + wanted(setting) + ".";
        boolean fatal = setting.required() || MONEY_HANGS_ON.contains(setting);
        String raw = BookText.clean(cell.text());
        String until = setting.standardText().isEmpty()
                ? "; until then it counts as not set."
                : "; until then " + setting.standardText() + " is used.";
        row.leaveOut(
                fatal
                        ? Problem.fatal(ProblemKind.VALUE_INVALID, place, raw, reason, "Correct it.")
                        : Problem.fault(ProblemKind.VALUE_INVALID, place, raw, reason, "Correct it" + until));
    }

    @SuppressWarnings("unchecked")
    private static <T> T cast(Setting<T> setting, Object value) {
        // price endings are typed as a list, of which no class literal exists
        return setting.type() == List.class ? (T) value : setting.type().cast(value);
    }

    private @Nullable Object value(Cell cell, Setting<?> setting, String text) {
        Class<?> type = setting.type();
        if (type == String.class) {
            return text;
        }
        if (type == Currency.class) {
            return currency(text);
        }
        if (type == Locale.class) {
            return language(text);
        }
        if (type == Boolean.class) {
            return BookText.yesNo(text);
        }
        if (type == LocalTime.class) {
            return time(cell, text);
        }
        if (type == List.class) {
            return endings(text);
        }
        if (type == PriceRule.class) {
            return word(PriceRule.values(), text);
        }
        if (type == AcidTargets.class) {
            return word(AcidTargets.values(), text);
        }
        if (type == PublishedElasticity.class) {
            return word(PublishedElasticity.values(), text);
        }
        if (type == IceWater.class) {
            return word(IceWater.values(), text);
        }
        Exact number = number(cell, setting);
        return number != null && type == Money.class ? new Money(number) : number;
    }

    private @Nullable Exact number(Cell cell, Setting<?> setting) {
        boolean percent = setting.name().endsWith("percent");
        Exact number;
        if (cell.number() == null) {
            number = sheet.numbers(BookTables.VALUE).parse(cell.text());
        } else {
            Exact stored = Exact.of(cell.number());
            number = percent && cell.text().contains("%") ? stored.times(Exact.HUNDRED) : stored;
        }
        return number != null && bounds(setting).allow(number) ? number : null;
    }

    static ColumnBounds bounds(Setting<?> setting) {
        ColumnBounds own = BOUNDS.get(setting);
        if (own != null) {
            return own;
        }
        boolean number = setting.type() == Exact.class || setting.type() == Money.class;
        return setting.name().endsWith("percent")
                ? ColumnBounds.TO_100
                : number ? ColumnBounds.NOT_NEGATIVE : ColumnBounds.ANY;
    }

    /** What a value of the setting looks like. */
    private static String wanted(Setting<?> setting) {
        Class<?> type = setting.type();
        if (type == Exact.class || type == Money.class) {
            return "a number " + bounds(setting).words();
        }
        if (type == Currency.class) {
            return "a currency code of three letters, such as EUR";
        }
        if (type == Locale.class) {
            return "a language tag, such as en, de or fr-CA";
        }
        if (type == LocalTime.class) {
            return "a time of day, such as 05:00";
        }
        if (type == List.class) {
            return "price endings with spaces between them, such as .00 .50";
        }
        if (type == PriceRule.class) {
            return "latest, average or fifo";
        }
        if (type == PublishedElasticity.class) {
            return "reported or corrected";
        }
        if (type == IceWater.class) {
            return "heat balance or usual percent";
        }
        return type == AcidTargets.class ? "rule or exact" : "yes or no";
    }

    private static @Nullable Currency currency(String text) {
        String code = text.toUpperCase(Locale.ROOT);
        return Currency.getAvailableCurrencies().stream()
                .filter(currency -> currency.getCurrencyCode().equals(code) && currency.getDefaultFractionDigits() >= 0)
                .findFirst()
                .orElse(null);
    }

    private static @Nullable Locale language(String text) {
        try {
            Locale locale =
                    new Locale.Builder().setLanguageTag(text.replace('_', '-')).build();
            boolean known = Set.of(Locale.getISOLanguages()).contains(locale.getLanguage());
            return known ? locale : null;
        } catch (IllformedLocaleException noTag) {
            return null;
        }
    }

    private static @Nullable LocalTime time(Cell cell, String text) {
        if (cell.moment() != null) {
            return cell.moment().toLocalTime();
        }
        Matcher matcher = TIME.matcher(text);
        if (!matcher.matches()) {
            return null;
        }
        try {
            LocalTime time = LocalTime.of(
                    Integer.parseInt(matcher.group(1)),
                    Integer.parseInt(Optional.ofNullable(matcher.group(2)).orElse("0")));
            String half = matcher.group(3);
            if (half == null) {
                return time;
            }
            boolean valid = time.getHour() >= 1 && time.getHour() <= 12;
            int hour = time.getHour() % 12 + (half.equalsIgnoreCase("pm") ? 12 : 0);
            return valid ? time.withHour(hour) : null;
        } catch (DateTimeException noTime) {
            return null;
        }
    }

    private static @Nullable List<Money> endings(String text) {
        List<Money> endings = new ArrayList<>();
        for (String part : text.split("[;\\s]+|,(?=\\s)|(?<=\\d),(?=[.,])", -1)) {
            String plain = part.replace(',', '.');
            if (!plain.matches("\\d{0,6}(\\.\\d{1,3})?") || plain.isEmpty()) {
                return null;
            }
            endings.add(Money.of("0" + plain));
        }
        return List.copyOf(endings);
    }

    private static <E extends Enum<E>> @Nullable E word(E[] values, String text) {
        for (E value : values) {
            if (value.name().replace('_', ' ').equals(text.toUpperCase(Locale.ROOT))) {
                return value;
            }
        }
        return null;
    }
}
