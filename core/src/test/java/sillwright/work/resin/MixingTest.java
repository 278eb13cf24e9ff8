package sillwright.work.resin;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.wood.Interval;
import sillwright.work.resin.Checks.Advice;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class MixingTest {
    @Test
    void batches_and_parts_always_sum_to_what_is_bought_and_that_is_never_less_than_the_likely() {
        for (long seed = 1; seed <= 500; seed++) {
            Random random = new Random(seed);
            double median = 1 + random.nextDouble() * 5000;
            Interval soft = new Interval(median * random.nextDouble(), median, median * (1 + 2 * random.nextDouble())), takes = new Interval(0.2, 0.4, 0.4 + 0.5 * random.nextDouble());
            for (Resin resin : Resin.values()) {
                Mixing mixing = Mixing.of(resin, soft, takes, random.nextDouble() * 60, 5 + random.nextDouble() * 30, Optional.empty());
                assertEquals(mixing.buyMl(), mixing.batches().count() * mixing.batches().eachMl(), 1e-9 * mixing.buyMl(), "seed " + seed);
                assertEquals(mixing.buyMl(), mixing.parts().aMl() + mixing.parts().bMl(), 1e-9 * mixing.buyMl(), "seed " + seed);
                assertTrue(mixing.buyMl() >= mixing.likelyMl() - 1e-9, "seed " + seed);
            }
        }
    }

    /// Nine in ten lognormal draws of both take no more than what is bought.
    @Test
    void what_is_bought_is_enough_nine_times_in_ten() {
        Interval soft = new Interval(60, 100, 180), takes = new Interval(0.3, 0.6, 0.9);
        double buy = Mixing.of(Resin.CONSOLIDANT, soft, takes, 10, 20, Optional.empty()).buyMl();
        long seed = 7;
        Random random = new Random(seed);
        int enough = 0, draws = 200_000;
        for (int i = 0; i < draws; i++)
            if (100 * Math.exp(Math.log(1.8) / 1.6448536 * random.nextGaussian()) * 0.6 * Math.exp(Math.log(1.5) / 1.6448536 * random.nextGaussian()) <= buy) enough++;
        assertEquals(0.9, (double) enough / draws, 0.004, "seed " + seed);
    }

    @Test
    void warmer_days_give_thinner_lifts_smaller_batches_and_sooner_paint() {
        Interval soft = Interval.exactly(2000);
        Mixing cool = Mixing.of(Resin.SHAPING, soft, Interval.exactly(1), 60, 15, Optional.empty()), hot = Mixing.of(Resin.SHAPING, soft, Interval.exactly(1), 60, 35, Optional.empty());
        assertTrue(hot.liftMm() < cool.liftMm() && hot.lifts() >= cool.lifts() && hot.batches().eachMl() < cool.batches().eachMl() && hot.paintH() < cool.paintH());
        assertEquals(4, cool.workingS() / hot.workingS(), 1e-9, "20 °C is two halvings");
        assertEquals(4, cool.paintH() / hot.paintH(), 1e-9);
        assertEquals(25.4 / Math.sqrt(2), hot.liftMm(), 1e-9, "10 °C over the stated: the square root of one halving");
    }

    @Test
    void holes_are_drilled_only_where_resin_does_not_soak_and_never_through() {
        assertTrue(Mixing.holes(20_000, 10, 40).isEmpty());
        Mixing.Holes holes = Mixing.holes(20_000, 39, 40).orElseThrow();
        assertTrue(holes.deepMm() < 40 - 6);
        assertEquals((int) Math.ceil(20_000 / (50.8 * 25.4)), holes.count());
    }

    @Test
    void checks_are_coated_left_or_filled_by_their_width_and_which_way_they_look() {
        assertEquals(Advice.COAT, Checks.of(new Checks.Group(5, 200, 0.5, 8), true, 0.7, 0.6).advice());
        assertEquals(Advice.LEAVE, Checks.of(new Checks.Group(5, 200, 2, 8), false, 0.7, 0.6).advice());
        assertEquals(Advice.FILL, Checks.of(new Checks.Group(5, 200, 4, 8), false, 0.7, 0.6).advice());
        Checks open = Checks.of(new Checks.Group(5, 200, 2, 8), true, 0.7, 0.6);
        assertEquals(Advice.FILL, open.advice());
        assertEquals(5 * 200 * 2 * 8 / 2000.0, open.skimMl().median(), 1e-9, "checks are wedges");
        assertEquals(2 * 5 * 200 * 8 * 2 / 1000.0 * 0.7 * 0.6, open.consolidantMl(), 1e-9, "both walls of each");
    }
}
