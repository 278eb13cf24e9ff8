package sillwright.sheet;
import module java.base;
import sillwright.measure.Units;
final class Show {
    public static void main(String[] args) throws Exception {
        Path dir = Path.of(args[0]); Files.createDirectories(dir);
        var a = Porch.assessment(args.length > 1 ? Units.SI : Units.US);
        for (String side : List.of("south", "west")) Files.writeString(dir.resolve("elevation-" + side + ".svg"), Elevation.draw(a, side).file());
        for (var c : a.wood().all()) if (!c.maps().isEmpty()) Files.writeString(dir.resolve("map-" + c.member().id() + ".svg"), MemberMap.draw(c, a.settings().units()).file());
        for (var r : a.work().repairs()) Files.writeString(dir.resolve("repair-" + r.id() + ".svg"), RepairDrawing.draw(r, a.settings().units()).file());
        long t=System.nanoTime(); Dossier.write(a, dir.resolve("dossier.pdf"), System.out::println); System.out.println((System.nanoTime()-t)/1e9);
    }
}
