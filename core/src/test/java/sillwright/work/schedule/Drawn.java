package sillwright.work.schedule;

import module java.base;

import sillwright.work.schedule.Activity.Before;
import sillwright.work.schedule.Activity.Fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/// A short list of jobs with crews, waits, nights and weather, drawn from a seed.
record Drawn(List<Activity> all, Crew crew, Season season) {
    static final int HALF = 30, DAYS = 60;
    private static final LocalDate MONDAY = LocalDate.of(2027, 5, 3);

    static Drawn of(long seed, int years) {
        SplittableRandom random = new SplittableRandom(seed);
        int n = 3 + random.nextInt(3);
        Crew crew = new Crew(1 + random.nextInt(2), EnumSet.allOf(DayOfWeek.class), 2 * HALF / 60.0, 0);
        List<Activity> all = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            List<Before> after = new ArrayList<>();
            for (int b = 0; b < i; b++) if (random.nextInt(3) == 0) after.add(new Before(b, random.nextInt(3)));
            all.add(random.nextInt(4) == 0 ? Activity.waits(1 + random.nextInt(4), after) : Activity.work(HALF * (1 + random.nextInt(5)), Fit.values()[random.nextInt(6)], after));
        }
        byte[][] sky = new byte[years][DAYS];
        for (byte[] year : sky) for (int d = 0; d < DAYS; d++) year[d] = (byte) (random.nextInt(3) == 0 ? random.nextInt(4) : 4);
        boolean[] opening = new boolean[DAYS];
        for (int d = 0; d < DAYS; d++) opening[d] = random.nextInt(3) > 0;
        return new Drawn(all, crew, Season.drawn(MONDAY, crew, sky, opening));
    }

    /// What comes before has ended, with its nights; nobody works more than the day has, nor in weather that the job has not.
    void keepsTheRules(Timetable timetable, long seed) {
        for (int i = 0; i < all.size(); i++)
            for (Before before : all.get(i).after())
                assertTrue(!timetable.slots().get(before.activity()).last().plusDays(before.nights()).isAfter(timetable.slots().get(i).first()), "seed " + seed);
        int[] done = new int[all.size()];
        Map<List<Object>, Integer> busy = new HashMap<>();
        for (Timetable.Stint stint : timetable.stints()) {
            done[stint.activity()] += stint.minutes();
            assertTrue(busy.merge(List.of(stint.day(), stint.crew()), stint.minutes(), Integer::sum) <= 2 * HALF, "seed " + seed);
            assertTrue(season.fits(0, (int) (stint.day().toEpochDay() - MONDAY.toEpochDay()), all.get(stint.activity()).needs()), "seed " + seed);
        }
        for (int i = 0; i < all.size(); i++) assertEquals(all.get(i).itself() ? 0 : all.get(i).amount(), done[i], "seed " + seed);
    }
}
