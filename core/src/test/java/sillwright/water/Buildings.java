package sillwright.water;

import module java.base;

import sillwright.walk.Sign;
import sillwright.water.net.Network;
import sillwright.water.net.Network.Finding;
import sillwright.water.net.Network.Link;
import sillwright.water.net.Network.Look;
import sillwright.water.net.Weighing;

/// Invented buildings drawn from the program's own table: sources on sides, and at places there; sightings of a place, each linked to
/// what reaches it; what is at work and what is seen drawn from the model itself.
record Buildings(List<Double> priors, List<Finding> findings, List<Look> looks, boolean[] atWork) {

    private record Stands(Source source, int side, int place) {}

    /// @param sides among which sources and sightings are shared out; 1 for a building where everything is seen on one side
    static Buildings drawn(long seed, int sources, int sightings, int sides) {
        Random random = new Random(seed);
        List<Stands> stands = new ArrayList<>();
        while (stands.size() < sources) {
            Source source = Source.values()[random.nextInt(Source.values().length)];
            Stands one = new Stands(source, random.nextInt(sides), local(source) ? 1 + random.nextInt(5) : 0);
            if (!stands.contains(one)) stands.add(one);
        }
        List<Sign> signs = Arrays.stream(Sign.values()).filter(sign -> Judgement.sign(sign).isPresent()).toList();
        List<Finding> findings = new ArrayList<>();
        while (findings.size() < sightings) {
            Sign sign = signs.get(random.nextInt(signs.size()));
            int side = random.nextInt(sides), place = 1 + random.nextInt(5);
            List<Link> links = new ArrayList<>();
            for (int i = 0; i < sources; i++) {
                Stands one = stands.get(i);
                if (one.side != side || one.place != 0 && one.place != place) continue;
                Judgement.links(sign).stream().filter(link -> link.source() == one.source).findFirst().ifPresent(link -> links.add(new Link(stands.indexOf(one), link.strength())));
            }
            if (!links.isEmpty()) findings.add(new Finding(Judgement.sign(sign).get().leak(), links));
        }
        List<Double> priors = stands.stream().map(one -> Judgement.prior(one.source)).toList();
        boolean[] atWork = new boolean[sources];
        for (int i = 0; i < sources; i++) atWork[i] = random.nextDouble() < priors.get(i);
        List<Look> looks = new ArrayList<>();
        for (Finding finding : findings) {
            double absent = 1 - finding.leak();
            for (Link link : finding.links()) if (atWork[link.source()]) absent *= 1 - link.strength();
            looks.add(random.nextDouble() < absent ? Look.NOT_SEEN : Look.SEEN);
        }
        return new Buildings(priors, findings, looks, atWork);
    }

    private static boolean local(Source source) {
        return switch (source) {
            case FLASHING_FAILED, CAP_MISSING, SILL_HOLDS_WATER, JOINT_OPEN, END_GRAIN_DRINKS, TRAPPED_BEHIND_COAT, DOWNSPOUT_AT_WALL -> true;
            default -> false;
        };
    }

    Network network() { return Network.of(priors, findings); }

    public static void main(String[] args) {
        for (int sides : new int[] {4, 4, 2, 1}) {
            List<Double> plan = new ArrayList<>(), all = new ArrayList<>(), cost = new ArrayList<>(), width = new ArrayList<>();
            for (long seed = 1; seed <= Integer.parseInt(args[0]); seed++) {
                Buildings one = drawn(seed, 40, 150, sides);
                Network network = one.network();
                double best = 1e9, bestPlan = 1e9;
                Weighing weighing = null;
                for (int again = 0; again < 3; again++) {
                    long begun = System.nanoTime();
                    weighing = network.weighing(one.looks);
                    bestPlan = Math.min(bestPlan, (System.nanoTime() - begun) / 1e6);
                    weighing.logEvidence();
                    best = Math.min(best, (System.nanoTime() - begun) / 1e6);
                }
                plan.add(bestPlan);
                all.add(best);
                cost.add(weighing.cost());
                width.add((double) weighing.width());
            }
            System.out.println(sides + " sides: plan ms " + told(plan) + "; all ms " + told(all) + "; cost " + told(cost) + "; width " + told(width));
        }
    }

    private static String told(List<Double> values) {
        Collections.sort(values);
        return "%.3g %.3g %.3g".formatted(values.get(values.size() / 2), values.get(values.size() * 9 / 10), values.getLast());
    }
}
