package gudgeon.rebuild.journal;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;

/**
 * What was offered, ordered, paid and sent out. A price is as written, with its currency: "24.50 EUR". Sizes are by the id of the
 * book's dimension, as written.
 */
public sealed interface Sourcing extends Fact {
    /**
     * A part or a machinist's work was offered.
     *
     * @param part what the seller calls it, or the name it shall have in the build; may be empty
     * @param origin where it comes from, if that is known
     * @param from who offers it
     * @param price what one costs
     * @param days how long it would take to come, if that was said
     * @param sizes the sizes that the offer states
     */
    record Offered(
            String position,
            String part,
            Optional<Origin> origin,
            String from,
            String price,
            Optional<Days> days,
            Map<String, String> sizes)
            implements Sourcing, Fact.OfPosition {
        public Offered {
            sizes = Map.copyOf(sizes);
        }
    }

    /**
     * A part is ordered.
     *
     * @param order name of the order, the person's own
     * @param part what the seller calls it, or the name it shall have in the build; may be empty
     * @param origin where it comes from, if that is known
     * @param count how many, from 1
     * @param from who it is ordered from
     * @param price what one costs
     * @param days how long it is on its way, from now on, if that is known
     * @param promised the day it was promised for, if one was
     * @param sizes the sizes ordered
     */
    record Ordered(
            String order,
            String position,
            String part,
            Optional<Origin> origin,
            int count,
            String from,
            String price,
            Optional<Days> days,
            Optional<LocalDate> promised,
            Map<String, String> sizes)
            implements Sourcing, Fact.OfPosition {
        public Ordered {
            sizes = Map.copyOf(sizes);
        }

        /** An order of which no more than this was said. */
        public Ordered(String order, String position, int count, String from, String price) {
            this(
                    order,
                    position,
                    "",
                    Optional.empty(),
                    count,
                    from,
                    price,
                    Optional.empty(),
                    Optional.empty(),
                    Map.of());
        }
    }

    /** Parts of an order came. */
    record Arrived(String order, String position, int count, String remark) implements Sourcing, Fact.OfPosition {}

    /** Postage, carriage or duty of an order was paid. */
    record PostagePaid(String order, String price) implements Sourcing {
        @Override
        public String about() {
            return order;
        }
    }

    /**
     * A part goes back to the seller.
     *
     * @param part the part entered, or empty
     * @param count how many, from 1
     * @param refund the money that comes back; may be empty
     */
    record Returned(String order, String position, String part, int count, String why, String refund)
            implements Sourcing, Fact.OfPosition {}

    /**
     * A part went to a machinist.
     *
     * @param part the part entered; empty for the one that came off
     * @param to who does it
     * @param work what is to be done, with sizes and tolerances
     * @param price what it costs
     * @param days how long it is away, from now on, if that is known
     */
    record WorkSent(String position, String part, String to, String work, String price, Optional<Days> days)
            implements Sourcing, Fact.OfPosition {}

    /** A part came back from a machinist. */
    record WorkBack(String position, String part, String remark) implements Sourcing, Fact.OfPosition {}

    /** How many hours a week the person finds for the bench. */
    record PaceSet(double hours) implements Sourcing {
        @Override
        public String about() {
            return "pace";
        }
    }
}
