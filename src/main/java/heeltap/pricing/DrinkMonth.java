package heeltap.pricing;

import heeltap.quantity.Exact;
import heeltap.quantity.Money;
import java.time.YearMonth;

/**
 * One drink in one month, for the estimate of demand. All drinks of a group that were on the menu belong in, sold or not,
 * still listed or not.
 *
 * @param month calendar month
 * @param drink name
 * @param group name
 * @param price as the guest read it, averaged by days where it changed within the month
 * @param sold paid serves
 * @param daysOnMenu calendar days on the menu in the month
 */
public record DrinkMonth(YearMonth month, String drink, String group, Money price, Exact sold, int daysOnMenu) {}
