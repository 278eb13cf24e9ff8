package sillwright.store;

import static sillwright.store.Nodes.each;
import static sillwright.store.Nodes.words;

import sillwright.work.Costing;
import sillwright.work.cost.Range;
import tools.jackson.databind.node.ObjectNode;

/// What the work costs, as its part of `findings.json`.
final class CostFound {
    private CostFound() {}

    static void put(ObjectNode node, Costing cost) {
        node.put("currency", cost.currency()).put("priced", cost.priced());
        range(node.putObject("money"), cost.money());
        range(node.putObject("hours"), cost.hours());
        each(node.putArray("lines"), cost.bill().lines(), (n, line) -> {
            n.put("words", line.words()).put("labour", line.toil()).put("hours", line.hours());
            line.likely().ifPresent(likely -> n.put("likely", likely));
            line.price().ifPresent(price -> n.putObject("price").put("item", price.item()).put("unit", price.sold().text()).put("low", price.money().low())
                    .put("price", price.money().mid()).put("high", price.money().high()));
            words(n.putArray("refs"), line.refs());
        });
        each(node.putArray("repairs"), cost.repairs(), CostFound::part);
        each(node.putArray("sources"), cost.sources(), CostFound::part);
        each(node.putArray("remedies"), cost.remedies(), (n, one) -> {
            n.put("source", one.source()).put("remedy", one.remedy()).put("inTheSum", one.summed()).put("material", one.material());
            range(n.putObject("money"), one.money());
            range(n.putObject("hours"), one.hours());
        });
        words(node.putArray("gaps"), cost.bill().gaps());
    }

    private static void part(ObjectNode node, Costing.Part part) {
        node.put("id", part.id());
        range(node.putObject("money"), part.money());
        range(node.putObject("hours"), part.hours());
    }

    private static void range(ObjectNode node, Range range) {
        node.put("low", range.low()).put("middle", range.middle()).put("high", range.high()).put("mean", range.mean()).put("meanInClosedForm", range.exact())
                .put("deviationInClosedForm", range.spread()).put("draws", range.draws());
        each(node.putArray("drivers"), range.drivers(), (n, driver) -> n.put("words", driver.words()).put("share", driver.share()));
    }
}
