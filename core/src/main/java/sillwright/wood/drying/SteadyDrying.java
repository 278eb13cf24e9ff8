package sillwright.wood.drying;

import sillwright.measure.Answer;
import sillwright.measure.Kind;
import sillwright.measure.Refused;
import sillwright.wood.moisture.Moisture;

/// How long a flat piece takes to come from one moisture to another in steady air.
///
/// @param timeS   until its mean moisture is the wanted one
/// @param atRest  the moisture it would come to rest at
/// @param middle  moisture half way in, or at the sealed face, when the mean is the wanted one
public record SteadyDrying(double timeS, double atRest, double middle) {
    private static final int SLICES = 40, LONGEST_YEARS = 60;

    /// @param faces 2, or 1 where the other is sealed
    /// @param start moisture throughout at first
    /// @param goal  mean moisture wanted, on the way to that of rest
    /// @throws Refused where the air never brings the wood there
    public static SteadyDrying of(Timber timber, double thicknessM, int faces, Skin skin, double start, double goal, double tempC, double humidity) {
        double atRest = Moisture.atRest(Math.max(-30, tempC), humidity);
        if ((goal - start) * (atRest - goal) <= 0)
            throw new Refused("to", "{} is never reached from {}: in this air the wood comes to rest at {}",
                    "choose a moisture between the two, or change the air", percent(goal), percent(start), percent(atRest));
        double path = thicknessM / faces, stepS = Math.min(3600, path * path / timber.diffusion(0.15) / 2000);
        Stack stack = new Stack(SLICES, 1, stepS);
        stack.lay(0, timber, thicknessM, skin, faces == 2 ? skin : Skin.SEALED, 1.15, start);
        Air air = new Air(1);
        air.set(0, tempC, humidity, 0);
        double before = start, timeS = 0;
        while (timeS < LONGEST_YEARS * 365.0 * 86400) {
            Transport.PLAIN.hours(stack, air, 0, 1);
            double mean = stack.mean(0);
            if ((mean - goal) * (goal - start) >= 0) {
                double part = (goal - before) / (mean - before);
                return new SteadyDrying(timeS + part * stepS, atRest, stack.moisture[faces == 2 ? SLICES / 2 : SLICES - 1][0]);
            }
            before = mean;
            timeS += stepS;
        }
        throw new Refused("to", "{} is not reached in " + LONGEST_YEARS + " years", "choose a moisture further from rest, a thinner piece or a film that breathes", percent(goal));
    }

    private static Answer.Measured percent(double moisture) { return new Answer.Measured(moisture, Kind.PERCENT); }
}
