package heeltap.menu;

import heeltap.quantity.Exact;
import java.util.List;

/**
 * The analysis of one group of drinks that compete with each other.
 *
 * @param name of the group
 * @param drinksOnMenu how many drinks were on its menu in the month, unsold and faulty ones included
 * @param sold serves of all its drinks that are in the analysis
 * @param thresholds where its classes are cut
 * @param drinks in the order given
 */
public record MenuGroup(
        String name, int drinksOnMenu, Exact sold, MenuThresholds thresholds, List<ClassedDrink> drinks) {}
