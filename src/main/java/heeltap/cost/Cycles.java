package heeltap.cost;

import heeltap.cost.SpecVersions.Item;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/** Which items use which, in an order in which each comes after all it uses, and which of them use themselves. */
final class Cycles {
    static final Comparator<Item> BY_NAME = Comparator.comparing(Item::name).thenComparing(Item::kind);

    private final Map<Item, SortedSet<Item>> uses;
    private final Map<Item, List<Item>> paths = new HashMap<>();

    /** @param uses by item what its lines ask for of preparations and drinks */
    Cycles(Map<Item, SortedSet<Item>> uses) {
        this.uses = uses;
        List<Item> byName = new ArrayList<>(uses.keySet());
        byName.sort(BY_NAME);
        for (Item item : byName) {
            if (!paths.containsKey(item)) {
                markCycle(item);
            }
        }
    }

    /** A shortest way back to the item, told of every item that lies with it on any way round. */
    private void markCycle(Item start) {
        Set<Item> below = reachable(start);
        if (!below.contains(start)) {
            return;
        }
        List<Item> path = shortestWayBack(start);
        for (Item other : below) {
            if (reachable(other).contains(start)) {
                paths.putIfAbsent(other, path);
            }
        }
    }

    private Set<Item> reachable(Item from) {
        Set<Item> seen = new HashSet<>();
        Deque<Item> open = new ArrayDeque<>(used(from));
        while (!open.isEmpty()) {
            Item item = open.pop();
            if (seen.add(item)) {
                open.addAll(used(item));
            }
        }
        return seen;
    }

    private List<Item> shortestWayBack(Item start) {
        Map<Item, Item> cameFrom = new HashMap<>();
        Deque<Item> open = new ArrayDeque<>(List.of(start));
        while (!cameFrom.containsKey(start)) {
            Item item = open.remove();
            for (Item next : used(item)) {
                if (cameFrom.putIfAbsent(next, item) == null) {
                    open.add(next);
                }
            }
        }
        List<Item> path = new ArrayList<>(List.of(start));
        Item item = start;
        do {
            item = cameFrom.getOrDefault(item, start);
            path.add(0, item);
        } while (!item.equals(start));
        return path;
    }

    private SortedSet<Item> used(Item item) {
        return uses.getOrDefault(item, new TreeSet<>(BY_NAME));
    }

    /** The way round on which the item lies, its first item also its last; empty where it lies on none. */
    List<Item> path(Item item) {
        return paths.getOrDefault(item, List.of());
    }

    /** Whether the second is used by the first on a way back to it. */
    boolean isRound(Item user, Item used) {
        List<Item> path = path(user);
        return !path.isEmpty() && path.equals(path(used));
    }

    /** Every item after all it uses, ways round left out. */
    List<Item> order() {
        Set<Item> done = new HashSet<>();
        List<Item> order = new ArrayList<>();
        List<Item> all = new ArrayList<>(uses.keySet());
        all.sort(BY_NAME);
        for (Item root : all) {
            Deque<Item> stack = new ArrayDeque<>(List.of(root));
            while (!stack.isEmpty()) {
                Item item = stack.peek();
                List<Item> open = used(item).stream()
                        .filter(next -> !done.contains(next) && !isRound(item, next))
                        .toList();
                if (!done.contains(item) && !open.isEmpty()) {
                    open.forEach(stack::push);
                } else {
                    stack.pop();
                    if (done.add(item)) {
                        order.add(item);
                    }
                }
            }
        }
        return order;
    }
}
