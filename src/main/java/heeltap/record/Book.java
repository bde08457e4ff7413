package heeltap.record;

import java.util.List;

/**
 * The bar's standing data as written, in the order of its rows. Names are unique within each list after folding; the
 * loader reports those that are not.
 *
 * @param bar the bar's name: the setting, else the folder's name
 */
public record Book(
        String bar,
        Settings settings,
        List<Category> categories,
        List<Ingredient> ingredients,
        List<Preparation> preparations,
        List<Drink> drinks,
        List<DatedPrice> prices,
        List<SpecLine> specs,
        List<NameRule> names,
        List<ColumnRule> columns,
        List<BarMeasure> measures,
        List<AccountName> accounts) {}
