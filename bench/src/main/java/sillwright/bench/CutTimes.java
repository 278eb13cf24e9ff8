package sillwright.bench;

import module java.base;

import sillwright.solve.ProvenCuts;
import sillwright.work.CutSolver.Layout;

/// A table of how long cut lists take, by the processor time of one thread: the published lists found in a folder (files of class u, and a zip of data set 1), and lists drawn by the rules that published
/// sets were made by: Falkenauer (1996) classes u and t; Scholl, Klein and Juergens (1997) data sets 2 and 3; and lists with several stock lengths and a kerf (rules from memory).
///
/// Stops with 1 where one takes more than ten seconds, or a list of the folder is not proven.
public final class CutTimes {
    private static final List<Double> TIMES = new ArrayList<>();
    private static int open, bad;

    private CutTimes() {}

    /// @param arguments a folder with published lists; none works only those drawn
    public static void main(String[] arguments) throws IOException {
        if (arguments.length > 0) published(Path.of(arguments[0]));
        for (Of of : all()) time(of, false);
        Collections.sort(TIMES);
        System.out.printf(Locale.ROOT, "%d lists, median %.3f s, longest %.2f s, not proven %d%n", TIMES.size(), TIMES.get(TIMES.size() / 2), TIMES.getLast(), open);
        if (bad > 0 || TIMES.getLast() > 10) System.exit(1);
    }

    private static void time(Of of, boolean mustBeProven) {
        var threads = java.lang.management.ManagementFactory.getThreadMXBean();
        long from = threads.getCurrentThreadCpuTime();
        Layout layout = new ProvenCuts().lay(of.pieces(), of.stock(), of.kerf());
        double took = (threads.getCurrentThreadCpuTime() - from) / 1e9;
        TIMES.add(took);
        if (!layout.proven()) open++;
        if (!layout.proven() && mustBeProven) bad++;
        System.out.printf(Locale.ROOT, "%-20s %4d pieces %4d bars %8.3f s  %s%n", of.name(), of.pieces().size(), layout.bars().size(), took, layout.proven() ? "proven" : "gap " + Math.round(1e4 * layout.gap()) / 100.0 + " %");
    }

    private static void published(Path folder) throws IOException {
        for (String name : List.of("binpack1.txt", "binpack2.txt")) {
            List<String> words = Arrays.asList(Files.readString(folder.resolve(name)).strip().split("\\s+"));
            for (int at = 1; at < words.size();) {
                int n = Integer.parseInt(words.get(at + 2));
                time(new Of(words.get(at), words.subList(at + 4, at + 4 + n).stream().map(Double::valueOf).toList(), List.of(Double.valueOf(words.get(at + 1))), 0), true);
                at += 4 + n;
            }
        }
        try (var zip = new java.util.zip.ZipInputStream(Files.newInputStream(folder.resolve("scholl-1-part.zip")))) {
            for (var entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                if (!entry.getName().endsWith(".BPP")) continue;
                double[] numbers = Arrays.stream(new String(zip.readAllBytes()).strip().split("\\s+")).mapToDouble(Double::parseDouble).toArray();
                time(new Of(entry.getName(), Arrays.stream(numbers, 2, 2 + (int) numbers[0]).boxed().toList(), List.of(numbers[1]), 0), true);
            }
        }
    }

    private record Of(String name, List<Double> pieces, List<Double> stock, double kerf) {}
    private static List<Of> all() {
        List<Of> all = new ArrayList<>();
        for (int s = 0; s < 4; s++) for (int n : new int[]{120,250,500}) { Random r = new Random(1000*n+s); all.add(new Of("u"+n+"-"+s, draw(n, () -> 20+r.nextInt(81)), List.of(150.0), 0)); }
        for (int s = 0; s < 3; s++) for (int n : new int[]{60,120,249,501}) all.add(triplets(n, s));
        for (int s = 0; s < 1; s++) for (int n : new int[]{50,100,200,500}) for (int w : new int[]{3,5,7,9}) for (int d : new int[]{20,50,90}) {
            Random r = new Random(n*100+w*10+d+s); double avg = 1000.0/w; int lo=(int)Math.ceil(avg*(1-d/100.0)), hi=(int)Math.floor(avg*(1+d/100.0));
            all.add(new Of("s2-n"+n+"w"+w+"d"+d, draw(n, () -> lo+r.nextInt(hi-lo+1)), List.of(1000.0), 0)); }
        for (int s = 0; s < 6; s++) { Random r = new Random(77+s); all.add(new Of("s3-"+s, draw(200, () -> 20000+r.nextInt(15001)), List.of(100000.0), 0)); }
        for (int s = 0; s < 6; s++) { Random r = new Random(99+s); int n = 57+r.nextInt(183); all.add(new Of("w-"+s+"-n"+n, draw(n, () -> 1+150+r.nextInt(4000)), List.of(10000.0), 0)); }
        for (int s = 0; s < 6; s++) { Random r = new Random(55+s); int n = 160+20*(s%3); all.add(new Of("h-"+s+"-n"+n, draw(n, () -> 1+r.nextInt(800)), List.of(1000.0), 0)); }
        for (int s = 0; s < 8; s++) { Random r = new Random(33+s); int n = 60*(1+s); all.add(new Of("multi-"+n, draw(Math.min(500,n), () -> 6.35*(20+r.nextInt(420))), List.of(2438.4,3048.0,3657.6,4267.2,4876.8), 3.175)); }
        for (int s = 0; s < 4; s++) { Random r = new Random(11+s); int n = 500; all.add(new Of("fine-"+s, draw(n, () -> 100+r.nextInt(30000)/10.0), List.of(6000.0), 3.2)); }
        for (int s = 0; s < 4; s++) { Random r = new Random(21+s); int n = 500; all.add(new Of("finemulti-"+s, draw(n, () -> 100+r.nextInt(30000)/10.0), List.of(2400.0,3600.0,4800.0,6000.0), 3.2)); }
        for (int s = 0; s < 4; s++) { Random r = new Random(61+s); int n = 300; all.add(new Of("small-"+s, draw(n, () -> 50+r.nextInt(8000)/10.0), List.of(6000.0), 3)); }
        return all;
    }
    private static List<Double> draw(int n, IntOrDouble f) { List<Double> l = new ArrayList<>(); for (int i=0;i<n;i++) l.add(f.get()); return l; }
    private interface IntOrDouble { double get(); }
    private static Of triplets(int n, int s) { Random r = new Random(500+n*10+s); List<Double> l = new ArrayList<>();
        // Falkenauer: first 38..49 of 100 (here in tenths: 380..490 of 1000), second 25.. half of the rest, third the rest
        for (int i=0;i<n/3;i++) { int a=380+r.nextInt(111); int rest=1000-a; int lo=250, hi=rest/2; int b=lo+r.nextInt(hi-lo+1); l.add((double)a); l.add((double)b); l.add((double)(rest-b)); }
        return new Of("t"+n+"-"+s, l, List.of(1000.0), 0); }
}
