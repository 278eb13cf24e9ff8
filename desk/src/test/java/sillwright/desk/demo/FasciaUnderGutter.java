package sillwright.desk.demo;

import module java.base;

import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.walk.Side;

import static sillwright.desk.demo.Written.*;

/// A 4 in half-round gutter with little fall and one small downspout beneath 40 ft of roof: clean, and it overflows all the same.
final class FasciaUnderGutter implements SideNotes {
    @Override
    public Side side() {
        var gutter = new Side.Gutter(Side.GutterShape.HALF_ROUND, length("4 in"), Optional.empty(), perhaps("1/16in/ft", Kind.FALL),
                List.of(downspout("39'", "2 in", "", Side.Empties.SPLASH_BLOCK, "2'")));
        return new Side("north", "North eave", Quantity.read("10deg", Kind.ANGLE), length("40'"),
                List.of(new Side.RoofEdge("main", Side.Edge.EAVE, length("0 in"), length("40'"), length("11'"), length("14 in"), Optional.empty(),
                        Optional.empty(), perhaps("20'", Kind.LENGTH), perhaps("7/12", Kind.PITCH), Optional.of(gutter))),
                new Side.Ground(Side.Surface.GRAVEL, perhaps("1/4in/ft", Kind.FALL), perhaps("9 in", Kind.LENGTH)), Optional.empty(),
                List.of(window("8'", "3'", "3'", "4' 6\""), window("28'", "3'", "3'", "4' 6\"")));
    }

    @Override
    public double woodC() { return 8; }

    @Override
    public String members() {
        return """
                id,kind,title,role,species,run,width,depth,length,left,above,slant,start,far,coat,contact
                fascia,fascia,right fascia board,sheds-water,fir-white,level,7-1/4 in,3/4 in,16',24',10' 4-3/4",,covered,coated,failing,none
                """;
    }

    @Override
    public String rot() {
        return """
                member,face,from,peak,to,heart,edge,deepest
                fascia,front,70,150,200,6,0.5,0.75
                fascia,top,60,150,200,0.4,0.1,2
                """;
    }

    @Override
    public String probes() {
        return """
                member,face,along,across,reach
                fascia,front,10..172/18,1.5;5.5,3
                fascia,top,40;80;120;150;180,0.375,3
                """;
    }

    @Override
    public String moistures() {
        return """
                member,face,along,across,about
                fascia,front,20,4,14
                fascia,front,110;150,4,28
                fascia,front,186,4,25
                """;
    }

    @Override
    public String sightings() {
        return """
                sign,seen,member,left,above,words
                gutter-overflows,yes,,36',11',over the front along its last 10 ft in a common shower
                stain-behind-gutter,yes,fascia,36',10' 8",
                peeling-below-eave,yes,,36',10',
                algae-or-moss,yes,fascia,37',10' 8",
                gutter-full,no,,36',11',clean to the outlet
                gutter-holds-water,no,,20',11',
                gutter-pulled-away,no,,30',11',
                gutter-joint-drips,no,,30',11',
                downspout-loose,no,,39',5',
                roof-damaged-above,no,,34',12',
                """;
    }
}
