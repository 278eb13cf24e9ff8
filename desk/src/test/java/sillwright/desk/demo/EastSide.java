package sillwright.desk.demo;

import module java.base;

import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.walk.Side;

import static sillwright.desk.demo.Written.*;

/// An eave side on a paved drive that falls to the wall, the lowest wood 3 in above it: rain splashes on the skirt, the
/// water table, the lowest clapboards and the feet of the corner boards, and has got to the house sill behind.
final class EastSide implements SideNotes {
    @Override
    public Side side() {
        var gutter = new Side.Gutter(Side.GutterShape.OGEE, length("5 in"), Optional.of(length("3-1/2 in")), perhaps("1/16in/ft", Kind.FALL),
                List.of(downspout("9 in", "3 in", "4 in", Side.Empties.EXTENSION, "6'"), downspout("29' 3\"", "3 in", "4 in", Side.Empties.EXTENSION, "6'")));
        var eave = new Side.RoofEdge("main", Side.Edge.EAVE, length("0 in"), length("30'"), length("18'"), length("12 in"), Optional.empty(),
                Optional.empty(), perhaps("13'", Kind.LENGTH), perhaps("9/12", Kind.PITCH), Optional.of(gutter));
        return new Side("east", "East side, drive", Quantity.read("90deg", Kind.ANGLE), length("30'"), List.of(eave),
                new Side.Ground(Side.Surface.PAVING, perhaps("-1/8in/ft", Kind.FALL), perhaps("3 in", Kind.LENGTH)), perhaps("11'", Kind.LENGTH),
                List.of(window("4'", "4' 4\"", "2' 8\"", "4' 8\""), window("13' 8\"", "4' 4\"", "2' 8\"", "4' 8\""),
                        opening(Side.OpeningKind.DOOR, "23' 6\"", "2' 2\"", "2' 8\"", "6' 10\""), window("4'", "13'", "2' 8\"", "3'"),
                        window("13' 8\"", "13'", "2' 8\"", "3'"), window("23' 4\"", "13'", "2' 8\"", "3'")));
    }

    @Override
    public double woodC() { return 15; }

    @Override
    public String members() {
        return """
                id,kind,title,role,species,run,width,depth,length,left,above,slant,start,far,coat,contact
                e-frieze,frieze,frieze,sheds-water,pine-eastern-white,level,9-1/4 in,7/8 in,29' 1",5-1/2 in,16' 6-3/4",,covered,covered,sound,none
                e-corner-s,corner-board,left corner board,sheds-water,pine-eastern-white,upright,5-1/2 in,7/8 in,17' 1",0 in,3 in,,bare,covered,failing,none
                e-corner-n,corner-board,right corner board,sheds-water,pine-eastern-white,upright,5-1/2 in,7/8 in,17' 1",29' 6-1/2",3 in,,bare,covered,failing,none
                e-sill,sill,house sill where the skirt is off,bears-load,oak-white,level,7-1/4 in,7-1/4 in,8',12',4 in,,covered,covered,none,masonry
                e-skirt-1,skirt-board,left skirt,sheds-water,pine-eastern-white,level,9-1/4 in,7/8 in,11' 6-1/2",5-1/2 in,3 in,,covered,bare,failing,none
                e-skirt-2,skirt-board,right skirt,sheds-water,pine-eastern-white,level,9-1/4 in,7/8 in,9' 6-1/2",20',3 in,,bare,covered,failing,none
                e-water-table-1,water-table,left water table,sheds-water,pine-eastern-white,level,1-1/4 in,2 in,14' 6-1/2",5-1/2 in,1' 1/4",,covered,coated,failing,none
                e-water-table-2,water-table,right water table,sheds-water,pine-eastern-white,level,1-1/4 in,2 in,14' 6-1/2",15',1' 1/4",,coated,covered,failing,none
                e-clap-1,clapboard,lowest clapboard on the left,sheds-water,pine-eastern-white,level,4-1/2 in,1/2 in,14' 6-1/2",5-1/2 in,1' 1-1/2",,covered,coated,failing,none
                e-clap-2,clapboard,lowest clapboard on the right,sheds-water,pine-eastern-white,level,4-1/2 in,1/2 in,14' 6-1/2",15',1' 1-1/2",,coated,covered,failing,none
                """;
    }

    @Override
    public String rot() {
        return """
                member,face,from,peak,to,heart,edge,deepest
                e-corner-s,front,0,0,13,2,0.3,0.875
                e-corner-s,right,0,0,10,0.4,0.1,1.25
                e-corner-n,front,0,0,8,3,0.3,0.5
                e-corner-n,left,0,0,6,0.4,0.1,0.75
                e-skirt-1,front,36,98,150,0,0.7,0.875
                e-skirt-1,bottom,30,98,156,0.4,0.2,3
                e-skirt-2,front,-30,0,64,0,0.8,0.6875
                e-skirt-2,bottom,-30,0,70,0.4,0.2,2
                e-sill,front,6,46,84,0.5,0.6,2.25
                e-sill,bottom,10,46,80,1,0.7,1.5
                e-water-table-1,top,80,128,176,0.5,0.5,0.625
                e-water-table-1,front,80,128,176,0.25,0.4,0.75
                e-water-table-2,top,-20,14,60,0.5,0.5,0.5
                e-clap-1,front,76,124,172,0,0.7,0.4375
                e-clap-1,bottom,80,124,168,0.25,0.1,0.75
                e-clap-2,front,-20,10,52,0,0.7,0.3125
                """;
    }

    @Override
    public String probes() {
        return """
                member,face,along,across,reach
                e-corner-s,front,1;3;5;8;11;15,1;2.75;4.5,4
                e-corner-s,right,1;4;8;12,0.4375,4
                e-corner-n,front,1;3;5;8;12,1.5;4,4
                e-corner-n,left,1;4;8,0.4375,4
                e-skirt-1,front,30..136/12,1;4;7,4
                e-skirt-1,bottom,40;64;88;112;134,0.4375,4
                e-skirt-2,front,4..112/12,1;4,4
                e-skirt-2,bottom,6;30;54,0.4375,4
                e-sill,front,8..92/12,1;3.5;6,4
                e-sill,bottom,12;30;46;64;82,2,4
                e-water-table-1,top,60..170/10,0.75,3
                e-water-table-1,front,70;100;130;150;170,0.625,3
                e-water-table-2,top,6;16;30;50;80;130,0.75,3
                e-water-table-2,front,6;16;30;50;80;130,0.625,3
                e-clap-1,front,40..170/13,0.75;2.5,3
                e-clap-1,bottom,90;124;160,0.25,3
                e-clap-2,front,4;14;26;40;56;80;130,0.75;2.5,3
                e-clap-2,bottom,6;24,0.25,3
                e-frieze,front,30;120;210;300,4.5,3
                """;
    }

    @Override
    public String moistures() {
        return """
                member,face,along,across,about
                e-corner-s,front,2;6,2.75,30
                e-corner-s,front,24,2.75,16
                e-corner-s,front,100,2.75,12
                e-corner-n,front,2,2.75,27
                e-corner-n,front,24;100,2.75,13
                e-skirt-1,front,70;100;130,2,31
                e-skirt-1,front,20,6,20
                e-skirt-2,front,6;30,2,28
                e-skirt-2,front,100,6,18
                e-sill,front,30;46;64,2,27
                e-sill,front,6;90,6,18
                e-water-table-1,top,120,1,26
                e-water-table-1,top,20,1,15
                e-water-table-2,top,14,1,25
                e-water-table-2,top,120,1,14
                e-clap-1,front,120,1.5,25
                e-clap-1,front,30,2,14
                e-clap-2,front,12,1.5,23
                e-clap-2,front,120,2,13
                e-frieze,front,60;240,4.5,11.5
                """;
    }

    @Override
    public String sightings() {
        return """
                sign,seen,member,left,above,words
                paving-against-wall,yes,,15',0 in,tight against the stone
                ground-falls-to-wall,yes,,14',0 in,a level shows 1/4 in to the wall in 2 ft
                dirt-band,yes,e-skirt-1,8',8 in,up to the second clapboard
                splash-seen,yes,e-skirt-1,9',10 in,from the drive in rain with wind from the east
                peeling-at-base,yes,e-clap-1,10',1' 3",
                mildew-low,yes,e-clap-1,11',1' 5",
                algae-or-moss,yes,e-skirt-1,9',5 in,
                wet-after-rain,yes,e-skirt-1,8' 6",4 in,
                cubes-across-grain,yes,e-skirt-1,8' 6",5 in,
                rust-streaks,yes,e-clap-1,10' 6",1' 4",
                end-grain-dark,yes,e-corner-s,2 in,3 in,
                end-grain-bare,yes,e-corner-n,29' 9",3 in,
                joint-open,yes,e-water-table-2,15',1' 1",the two lengths have drawn apart
                soil-touches-wood,no,,15',3 in,
                gutter-full,no,,15',18',
                gutter-overflows,no,,15',18',watched in the same rain
                stain-on-soffit,no,,15',17' 4",
                peeling-below-eave,no,e-frieze,15',16' 10",
                downspout-empties-at-wall,no,,29' 3",6 in,extensions in place at both ends
                hose-tap-leaks,no,,21',2',
                sprinkler-wets-wall,no,,15',2',
                plants-against-wall,no,,15',2',
                pipe-in-wall,no,,14',3',no water pipe behind this stretch
                mud-tubes,no,e-sill,15',5 in,
                fine-powder,no,e-sill,16',5 in,
                salts-on-masonry,no,,15',2 in,
                """;
    }

    @Override
    public String slips() {
        return """
                of,what,nth,how
                e-skirt-1,front,11,typed
                e-clap-2,front,4,struck
                """;
    }
}
