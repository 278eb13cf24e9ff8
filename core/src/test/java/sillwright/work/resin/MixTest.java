package sillwright.work.resin;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;
import sillwright.Figures;
import sillwright.measure.Answer;
import sillwright.walk.Species;
import sillwright.wood.Interval;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

@DisplayNameGeneration(ReplaceUnderscores.class)
class MixTest {
    @Test
    void the_parts_make_the_whole_in_their_ratio() {
        long seed = 3;
        var random = new Random(seed);
        for (int i = 0; i < 1_000; i++) {
            double volume = 1 + random.nextDouble() * 5_000, ratio = 0.1 + random.nextDouble() * 10;
            Mix.Parts parts = Mix.split(volume, ratio);
            assertEquals(volume, parts.aMl() + parts.bMl(), 1e-9, "seed " + seed);
            assertEquals(ratio, parts.aMl() / parts.bMl(), 1e-9, "seed " + seed);
        }
    }

    @Test
    void batches_are_the_fewest_equal_ones_that_fit() {
        assertEquals(new Mix.Batches(1, 100), Mix.batches(100, 100));
        assertEquals(new Mix.Batches(2, 60), Mix.batches(120, 100));
        assertEquals(new Mix.Batches(1, 5), Mix.batches(5, 100));
        assertEquals(3, Mix.lifts(60, 25));
        assertEquals(2, Mix.lifts(50, 25));
    }

    @Test
    void in_heat_the_batch_shrinks_with_the_time_and_in_cold_the_stated_mass_still_holds() {
        double full = Mix.greatestBatchMl(500, 1800, 1800);
        assertEquals(500 / 1.1, full, 1e-9);
        assertEquals(full / 2, Mix.greatestBatchMl(500, 1800, Mix.workingS(1800, 25, 35)), 1e-9);
        assertEquals(full, Mix.greatestBatchMl(500, 1800, Mix.workingS(1800, 25, 10)), 1e-9);
    }

    @Test
    void a_filler_in_the_sun_is_mixed_in_four_and_laid_in_three() {
        Answer answer = Figures.named("mix").answer(Map.of("volume", "900mL", "ratio", "2:1", "temp", "35C", "potLife", "30min", "refTemp", "25C", "depth", "60mm", "lift", "25mm"));
        assertEquals(4, answer.own("batches"));
        assertEquals(225, answer.own("batchVolume"), 1e-9);
        assertEquals(3, answer.own("lifts"));
        assertTrue(answer.cautions().stream().anyMatch(caution -> caution.contains("gloves")));
    }

    @Test
    void by_area_the_depth_follows_and_without_either_it_says_what_lifts_counts() {
        Map<String, String> typed = new HashMap<>(Map.of("volume", "900mL", "ratio", "1:1", "temp", "20C", "potLife", "30min", "refTemp", "25C", "lift", "25mm"));
        typed.put("area", "0.015m2");
        assertEquals(3, Figures.named("mix").answer(typed).own("lifts"));
        typed.remove("area");
        Answer bare = Figures.named("mix").answer(typed);
        assertEquals(bare.own("batches"), bare.own("lifts"));
        assertTrue(bare.cautions().stream().anyMatch(caution -> caution.contains("one lift")));
    }

    @Test
    void consolidant_fills_the_share_of_the_voids_it_is_told_to() {
        Species pine = Species.named("pine-eastern-white");
        double voids = 1 - pine.gravityOvenDry() / 1.5, softMl = 92903.04 * 12.7 / 1000;
        Interval half = Soak.volumeMl(pine, 92903.04, 12.7, 0.5);
        assertEquals(softMl * voids / 2, half.median(), 1e-9);
        assertTrue(half.low() < half.median() && half.median() < half.high());
        assertEquals(2 * half.median(), Soak.volumeMl(pine, 92903.04, 12.7, 1).median(), 1e-9);
        assertEquals(Soak.volumeMl(pine, 92903.04, 12.7, Soak.USUAL_FILL).median(), Soak.volume(pine, 92903.04, 12.7), 0);
    }

    @Test
    void for_every_species_and_fill_the_range_holds_its_middle_and_never_more_than_the_wood() {
        for (Species species : Species.all().values())
            for (double fill = 0.05; fill <= 1.0001; fill += 0.05) {
                Interval soak = Soak.volumeMl(species, 1e6, 10, Math.min(1, fill));
                assertTrue(soak.low() >= 0 && soak.high() < 10_000, species.name() + " " + fill);
            }
    }
}
