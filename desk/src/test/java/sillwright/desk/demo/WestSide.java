package sillwright.desk.demo;

import module java.base;

import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.walk.Side;

import static sillwright.desk.demo.Written.*;

/// An eave side. The gutter is full of leaves at its only outlet, by the right end, and goes over: fascia, soffit, frieze,
/// the boards below. The skirt looks dreadful, grey and bare, and is sound.
final class WestSide implements SideNotes {
    @Override
    public Side side() {
        var gutter = new Side.Gutter(Side.GutterShape.OGEE, length("5 in"), Optional.of(length("3-1/2 in")), perhaps("1/16in/ft", Kind.FALL),
                List.of(downspout("29' 3\"", "3 in", "4 in", Side.Empties.SPLASH_BLOCK, "3'")));
        var eave = new Side.RoofEdge("main", Side.Edge.EAVE, length("0 in"), length("30'"), length("18'"), length("12 in"), Optional.empty(),
                Optional.empty(), perhaps("13'", Kind.LENGTH), perhaps("9/12", Kind.PITCH), Optional.of(gutter));
        return new Side("west", "West side, garden", Quantity.read("270deg", Kind.ANGLE), length("30'"), List.of(eave),
                new Side.Ground(Side.Surface.GRASS, perhaps("1/2in/ft", Kind.FALL), perhaps("1' 2\"", Kind.LENGTH)), perhaps("42'", Kind.LENGTH),
                List.of(window("4'", "4' 4\"", "2' 8\"", "4' 8\""), window("13' 8\"", "4' 4\"", "2' 8\"", "4' 8\""),
                        window("23' 4\"", "4' 4\"", "2' 8\"", "4' 8\""), window("4'", "13'", "2' 8\"", "3'"),
                        window("13' 8\"", "13'", "2' 8\"", "3'"), window("23' 4\"", "13'", "2' 8\"", "3'")));
    }

    @Override
    public double woodC() { return 14; }

    @Override
    public String members() {
        return """
                id,kind,title,role,species,run,width,depth,length,left,above,slant,start,far,coat,contact
                w-frieze,frieze,frieze,sheds-water,pine-eastern-white,level,9-1/4 in,7/8 in,29' 1",5-1/2 in,16' 6-3/4",,covered,covered,failing,none
                w-corner-n,corner-board,left corner board,sheds-water,pine-eastern-white,upright,5-1/2 in,7/8 in,15' 4-3/4",0 in,1' 11-1/4",,coated,covered,sound,none
                w-corner-s,corner-board,right corner board,sheds-water,pine-eastern-white,upright,5-1/2 in,7/8 in,15' 4-3/4",29' 6-1/2",1' 11-1/4",,coated,covered,failing,none
                w-clap-1,clapboard,clapboard below the frieze by the right corner,sheds-water,pine-eastern-white,level,4-1/2 in,1/2 in,3' 2",26' 4-1/2",16' 2-1/4",,covered,covered,failing,none
                w-skirt,skirt-board,skirt,sheds-water,cedar-northern-white,level,9-1/4 in,7/8 in,30',0 in,1' 2",,bare,bare,none,none
                w-soffit-1,soffit,left soffit board,sheds-water,pine-eastern-white,level,3/4 in,11 in,15',0 in,17' 4",,covered,covered,sound,none
                w-soffit-2,soffit,right soffit board,sheds-water,pine-eastern-white,level,3/4 in,11 in,15',15',17' 4",,covered,coated,failing,none
                w-fascia-1,fascia,left fascia board,sheds-water,pine-eastern-white,level,7-1/4 in,7/8 in,15',0 in,17' 4-3/4",,coated,bare,failing,none
                w-fascia-2,fascia,right fascia board,sheds-water,pine-eastern-white,level,7-1/4 in,7/8 in,15',15',17' 4-3/4",,bare,coated,failing,none
                """;
    }

    @Override
    public String rot() {
        return """
                member,face,from,peak,to,heart,edge,deepest
                w-fascia-1,front,146,180,180,5.5,0.5,0.4375
                w-fascia-1,top,140,180,180,0.5,0.1,1
                w-fascia-2,front,92,160,186,6,0.4,0.875
                w-fascia-2,front,0,0,18,5.5,0.5,0.375
                w-fascia-2,top,88,160,190,0.5,0.1,3
                w-fascia-2,bottom,130,162,180,0.5,0.1,0.5
                w-soffit-2,bottom,104,160,188,1,0.7,0.75
                w-frieze,front,276,322,348,8,0.6,0.5
                w-frieze,bottom,300,324,346,0.5,0.1,0.375
                w-corner-s,front,148,184.75,184.75,1.5,0.5,0.4375
                w-corner-s,left,160,184.75,184.75,0.4,0.1,0.5
                w-clap-1,front,4,26,46,3.5,0.5,0.3125
                """;
    }

    @Override
    public String probes() {
        return """
                member,face,along,across,reach
                w-fascia-1,front,20;60;100,3.5,3
                w-fascia-1,front,132..180/8,2;5.5,3
                w-fascia-1,top,140;160;176,0.4375,4
                w-fascia-2,front,4;16;40;70,5.5,3
                w-fascia-2,front,96..176/10,1.5;5.5,3
                w-fascia-2,top,100..172/12,0.4375,4
                w-fascia-2,bottom,110;140;160;176,0.4375,4
                w-soffit-1,bottom,20;60;100;160,4,3
                w-soffit-2,bottom,100..170/10,2;5;9,3
                w-frieze,front,30;100;180,4.5,3
                w-frieze,front,270..340/10,2;7,3
                w-frieze,bottom,280;310;325;340,0.4375,3
                w-corner-n,front,4;60;120;180,2.75,3
                w-corner-s,front,120;150;160;168;174;180;184,1.5;4,3
                w-corner-s,left,156;168;176;184,0.4375,3
                w-clap-1,front,4..34/5,1;3.25,3
                w-clap-1,bottom,10;26,0.25,3
                w-skirt,front,12..348/24,2;7,3
                w-skirt,top,12;100;180;260;348,0.4375,3
                """;
    }

    @Override
    public String moistures() {
        return """
                member,face,along,across,about
                w-fascia-1,front,40;100,3.5,13
                w-fascia-1,front,176,4,24
                w-fascia-2,front,6,4,22
                w-fascia-2,front,60,3.5,17
                w-fascia-2,front,140;160;174,4,30
                w-soffit-1,bottom,40;120,4,12
                w-soffit-2,bottom,130;160,3,28
                w-soffit-2,bottom,30,5,14
                w-frieze,front,40;160,4.5,12
                w-frieze,front,310;330,6,26
                w-corner-n,front,20;120,2.75,12
                w-corner-s,front,180,2.75,25
                w-corner-s,front,20;90,2.75,13
                w-clap-1,front,25,2.5,24
                w-skirt,front,24;100;180;260;340,4,12
                """;
    }

    @Override
    public String sightings() {
        return """
                sign,seen,member,left,above,words
                gutter-full,yes,,28',18',maple leaves and a seedling at the outlet
                gutter-overflows,yes,,27',18',over the front and the back in a heavy shower
                stain-behind-gutter,yes,w-fascia-2,28' 6",17' 8",
                stain-on-soffit,yes,w-soffit-2,28',17' 4",
                peeling-below-eave,yes,w-frieze,27',16' 10",
                peeling-to-bare-wood,yes,w-fascia-2,28',17' 8",
                water-runs-down-wall,yes,,28',12',from the soffit to the upper window in rain
                wet-after-rain,yes,w-fascia-2,28' 6",17' 8",dark four days after rain
                algae-or-moss,yes,w-frieze,27' 6",17',
                cubes-across-grain,yes,w-fascia-2,28' 3",17' 10",
                looks-weathered-only,yes,w-skirt,15',1' 6",no paint left; hard everywhere under the thumb and the probe
                paint-gone-on-weather-side,yes,w-skirt,15',1' 6",
                gutter-holds-water,no,,10',18',runs dry up to the leaves
                gutter-pulled-away,no,,15',18',
                gutter-joint-drips,no,,15',18',
                streak-below-gutter-joint,no,,15',17',
                downspout-loose,no,,29' 3",9',
                streak-on-downspout-wall,no,,29' 3",9',
                drip-edge-behind-gutter,no,,20',18',first course laps well into the gutter
                roof-edge-short,no,,20',18',
                no-drip-edge,no,,20',18',
                roof-damaged-above,no,,24',20',
                dirt-band,no,w-skirt,15',1' 4",
                splash-seen,no,w-skirt,15',1' 4",
                plants-against-wall,no,,15',2',
                coarse-frass,no,w-fascia-2,28',17' 8",
                """;
    }

    @Override
    public String slips() {
        return """
                of,what,nth,how
                w-fascia-2,front,9,struck
                w-skirt,front,12,typed
                """;
    }
}
