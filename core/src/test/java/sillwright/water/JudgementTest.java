package sillwright.water;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.measure.Csv;
import sillwright.walk.Sign;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class JudgementTest {
    /// Wear, old paint, insects that need no water, and what the wood itself tells: the wood stage weighs these.
    private static final Set<Sign> TELL_NOTHING_OF_WATER = EnumSet.of(Sign.PEELING_BETWEEN_COATS, Sign.CRAZED_PAINT, Sign.HOLLOW_SOUND, Sign.SAGGING, Sign.FINE_POWDER,
            Sign.ROUND_HOLES, Sign.OVAL_HOLES, Sign.SMALL_ROUND_HOLES, Sign.PELLETS, Sign.PECKED_HOLES, Sign.INSECTS_SEEN, Sign.LOOKS_WEATHERED_ONLY);

    @Test
    void every_source_has_a_prior_a_remedy_and_signs_that_tell_of_it() {
        Set<Source> linked = EnumSet.noneOf(Source.class), mended = EnumSet.noneOf(Source.class);
        for (Sign sign : Sign.values()) Judgement.links(sign).forEach(link -> linked.add(link.source()));
        Csv.read(RemediesCsv.TEXT).rows().forEach(row -> mended.add(Source.valueOf(row.get("source"))));
        assertEquals(EnumSet.allOf(Source.class), linked);
        assertEquals(EnumSet.allOf(Source.class), mended);
        for (Source source : Source.values()) assertTrue(Judgement.prior(source) > 0 && Judgement.prior(source) < 0.5, source.name());
    }

    @Test
    void every_sign_of_water_has_a_leak_and_a_link_stronger_than_it() {
        for (Sign sign : Sign.values()) {
            boolean silent = TELL_NOTHING_OF_WATER.contains(sign);
            assertEquals(silent, Judgement.sign(sign).isEmpty(), sign.name());
            assertEquals(silent, Judgement.links(sign).isEmpty(), sign.name());
            if (silent) continue;
            double leak = Judgement.sign(sign).get().leak();
            assertTrue(leak > 0 && leak < 0.5, sign.name());
            assertTrue(Judgement.links(sign).stream().anyMatch(link -> link.strength() > leak), sign.name());
            assertEquals(Judgement.links(sign).size(), Judgement.links(sign).stream().map(Judgement.Link::source).distinct().count(), sign.name() + " links a source twice");
            for (var link : Judgement.links(sign)) assertTrue(link.strength() > 0 && link.strength() < 1, sign.name());
        }
    }

    @Test
    void every_circumstance_is_weighed() {
        Set<Circumstance> weighed = EnumSet.noneOf(Circumstance.class);
        Judgement.circumstanceRows().forEach(row -> weighed.add(row.circumstance()));
        assertEquals(EnumSet.allOf(Circumstance.class), weighed);
    }
}
