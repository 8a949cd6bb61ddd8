package gudgeon.rebuild.source;

import java.util.List;

/**
 * Someone who offers or sends parts.
 *
 * @param name the name, as the person writes it; empty for what nobody was named for
 * @param orders what was ordered there
 * @param offers what is offered there and still to be ordered
 * @param postage postage paid on those orders
 */
public record Supplier(String name, List<OrderLine> orders, List<Offer> offers, Sum postage) {
    public Supplier {
        orders = List.copyOf(orders);
        offers = List.copyOf(offers);
    }
}
