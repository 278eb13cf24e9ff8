package sillwright.desk.demo;

import module java.base;

import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.walk.Body;
import sillwright.walk.Member;
import sillwright.walk.OpenChecks;
import sillwright.walk.Side;
import sillwright.walk.Spot;

import static sillwright.desk.demo.Written.*;

/// The back: a gable with three window sills that lie flat and have no drip kerf, open joints at the casings and failed
/// putty. It was read with a metric tape and probe: the numbers in the tables are inches, what is written is millimetres.
final class NorthSide implements SideNotes {
    @Override
    public Side side() {
        return new Side("north", "North side, back", Quantity.read("0deg", Kind.ANGLE), length("24'"),
                List.of(gable("24'", "18'", "27'", "12 in", "9/12")),
                new Side.Ground(Side.Surface.SOIL, perhaps("1/4in/ft", Kind.FALL), perhaps("8 in", Kind.LENGTH)), perhaps("54'", Kind.LENGTH),
                List.of(window("3' 6\"", "4' 4\"", "2' 8\"", "4' 8\""), window("10' 8\"", "4' 4\"", "2' 8\"", "4' 8\""),
                        window("17' 10\"", "4' 4\"", "2' 8\"", "4' 8\""), window("4' 8\"", "14' 4\"", "2' 8\"", "4'"),
                        window("16' 8\"", "14' 4\"", "2' 8\"", "4'"), opening(Side.OpeningKind.VENT, "11' 4\"", "22'", "1' 4\"", "2'")));
    }

    @Override
    public List<Body> measured() {
        return List.of(new OpenChecks(new Spot("n-sill-3", Member.Face.TOP, length("80 mm"), length("25 mm")), 5, length("290 mm"), length("2 mm"), length("12 mm")),
                new OpenChecks(new Spot("n-casing-1r", Member.Face.FRONT, length("600 mm"), length("20 mm")), 3, length("350 mm"), length("1 mm"), length("5 mm")));
    }

    @Override
    public Marks written() { return Marks.MILLIMETRES; }

    @Override
    public double woodC() { return 11; }

    @Override
    public String members() {
        return """
                id,kind,title,role,species,run,width,depth,length,left,above,slant,start,far,coat,contact
                n-rake-1,rake-board,left rake board,sheds-water,pine-eastern-white,raking,7-1/4 in,7/8 in,15',0 in,17' 3",36.9deg,coated,coated,sound,none
                n-rake-2,rake-board,right rake board,sheds-water,pine-eastern-white,raking,7-1/4 in,7/8 in,15',12',26' 3",-36.9deg,coated,coated,sound,none
                n-corner-w,corner-board,right corner board,sheds-water,pine-eastern-white,upright,5-1/2 in,7/8 in,15' 9-3/4",23' 6-1/2",1' 5-1/4",,coated,covered,sound,none
                n-skirt,skirt-board,skirt,sheds-water,pine-eastern-white,level,9-1/4 in,7/8 in,24',0 in,8 in,,covered,covered,sound,none
                n-sash-2,sash,bottom rail of the middle sash,sheds-water,pine-eastern-white,level,3 in,1-3/8 in,2' 8",10' 8",4' 4",,covered,covered,failing,none
                n-casing-1l,casing,left casing of the left window,sheds-water,pine-eastern-white,upright,4-1/2 in,7/8 in,4' 8",3' 1-1/2",4' 4",,bare,covered,failing,none
                n-casing-1r,casing,right casing of the left window,sheds-water,pine-eastern-white,upright,4-1/2 in,7/8 in,4' 8",6' 2",4' 4",,bare,covered,failing,none
                n-casing-2l,casing,left casing of the middle window,sheds-water,pine-eastern-white,upright,4-1/2 in,7/8 in,4' 8",10' 3-1/2",4' 4",,bare,covered,failing,none
                n-casing-2r,casing,right casing of the middle window,sheds-water,pine-eastern-white,upright,4-1/2 in,7/8 in,4' 8",13' 4",4' 4",,bare,covered,failing,none
                n-sill-1,window-sill,sill of the left window,sheds-water,pine-eastern-white,level,1-3/4 in,5-1/2 in,3' 7",3' 1/2",4' 2-1/4",,bare,bare,failing,none
                n-sill-2,window-sill,sill of the middle window,sheds-water,pine-eastern-white,level,1-3/4 in,5-1/2 in,3' 7",10' 2-1/2",4' 2-1/4",,bare,bare,failing,none
                n-sill-3,window-sill,sill of the right window,sheds-water,pine-eastern-white,level,1-3/4 in,5-1/2 in,3' 7",17' 4-1/2",4' 2-1/4",,coated,bare,failing,none
                """;
    }

    @Override
    public String rot() {
        return """
                member,face,from,peak,to,heart,edge,deepest
                n-sill-1,top,0,0,21,2.5,0.4,1.25
                n-sill-1,top,26,43,43,2.5,0.4,0.625
                n-sill-1,front,0,0,10,0.9,0.2,1
                n-sill-1,bottom,0,0,8,2,0.5,0.25
                n-sill-2,top,-10,22,52,4,0.4,1.25
                n-sill-2,front,6,24,42,1.2,0.3,0.5
                n-sill-2,bottom,12,22,34,3,0.5,0.375
                n-sill-3,top,30,43,43,2.5,0.4,0.5
                n-casing-1l,front,0,0,6,2.25,0.3,0.625
                n-casing-1l,right,0,0,5,0.4,0.1,0.625
                n-casing-1r,front,0,0,4,2.25,0.3,0.375
                n-casing-2l,front,0,0,8,2.5,0.3,0.875
                n-casing-2l,right,0,0,7,0.4,0.1,1
                n-casing-2r,front,0,0,7,2,0.3,0.75
                n-casing-2r,left,0,0,6,0.4,0.1,0.75
                n-sash-2,front,0,16,32,0,0.6,0.625
                n-sash-2,bottom,2,16,30,0.7,0.2,0.75
                """;
    }

    @Override
    public String probes() {
        return """
                member,face,along,across,reach
                n-sill-1,top,2..42/5,1.25;3.5,4
                n-sill-1,front,2;6;10;22;34;41,0.875,4
                n-sill-1,bottom,3;22;40,1,4
                n-sill-2,top,2..42/5,1.25;3.5,4
                n-sill-2,front,2;10;22;34;41,0.875,4
                n-sill-2,bottom,4;22;40,2.5,4
                n-sill-3,top,2..42/5,1.25;3.5,4
                n-sill-3,front,2;22;41,0.875,4
                n-casing-1l,front,0.75;2;4;6;9;14,1.25;3.25,3
                n-casing-1l,right,1;4;8,0.4375,3
                n-casing-1r,front,0.75;2;4;6;9;14,1.25;3.25,3
                n-casing-1r,left,1;4;8,0.4375,3
                n-casing-2l,front,0.75;2;4;6;9;14,1.25;3.25,3
                n-casing-2l,right,1;4;8,0.4375,3
                n-casing-2r,front,0.75;2;4;6;9;14,1.25;3.25,3
                n-casing-2r,left,1;4;8,0.4375,3
                n-sash-2,front,2..30/4,0.75;2,3
                n-sash-2,bottom,4;16;28,0.7,3
                n-corner-w,front,2;20;60;150,2.75,3
                n-skirt,front,10;60;120;170;230;280,4.5,3
                """;
    }

    @Override
    public String moistures() {
        return """
                member,face,along,across,about
                n-sill-1,top,3;12,2,28
                n-sill-1,top,24,2,19
                n-sill-1,top,41,2,24
                n-sill-2,top,10;22;34,3,30
                n-sill-3,top,8;22,2,14
                n-sill-3,top,41,2,22
                n-casing-1l,front,2,2.25,26
                n-casing-1l,front,30,2.25,13
                n-casing-1r,front,2,2.25,23
                n-casing-1r,front,30,2.25,13
                n-casing-2l,front,2,2.25,30
                n-casing-2l,front,30,2.25,14
                n-casing-2r,front,2,2.25,28
                n-casing-2r,front,30,2.25,13
                n-sash-2,front,16,1,26
                n-sash-2,front,2,2,16
                n-corner-w,front,10;100,2.75,13
                n-skirt,front,60;200,4.5,14
                """;
    }

    @Override
    public String sightings() {
        return """
                sign,seen,member,left,above,words
                sill-flat,yes,n-sill-1,1370 mm,1320 mm,bubble in the middle
                sill-flat,yes,n-sill-2,3550 mm,1320 mm,falls 3 mm back to the sash
                sill-flat,no,n-sill-3,5730 mm,1320 mm,falls 9 mm to the front
                no-drip-kerf,yes,n-sill-1,1370 mm,1285 mm,
                no-drip-kerf,yes,n-sill-2,3550 mm,1285 mm,
                no-drip-kerf,yes,n-sill-3,5730 mm,1285 mm,
                sill-checks,yes,n-sill-2,3550 mm,1330 mm,a fingernail goes in
                joint-open,yes,n-casing-1l,1000 mm,1325 mm,between the casing and the sill
                joint-open,yes,n-casing-2l,3180 mm,1325 mm,between the casing and the sill
                joint-open,yes,n-casing-2r,4120 mm,1325 mm,between the casing and the sill
                joint-open,no,n-sill-3,5500 mm,1325 mm,
                putty-failed,yes,n-sash-2,3650 mm,1400 mm,gone along the bottom of two panes
                stain-below-sill-end,yes,n-sill-1,940 mm,1200 mm,
                peeling-below-window,yes,,3600 mm,1100 mm,
                peeling-to-bare-wood,yes,n-sill-2,3550 mm,1330 mm,
                cubes-across-grain,yes,n-casing-2l,3180 mm,1380 mm,
                end-grain-dark,yes,n-casing-2l,3180 mm,1325 mm,
                wet-after-rain,yes,n-sill-2,3550 mm,1330 mm,
                worse-after-wind-rain,no,,3600 mm,1300 mm,the same after still rain
                condensation-on-glass,no,n-sash-2,3600 mm,1500 mm,
                damp-room-behind,no,,3600 mm,1500 mm,a pantry and a stair
                fan-or-dryer-vents-here,no,,3600 mm,1500 mm,
                stain-inside,no,,3600 mm,1200 mm,plaster below the windows dry
                downspout-empties-at-wall,no,,3600 mm,100 mm,no downspout on this side
                splash-seen,no,n-skirt,3600 mm,250 mm,
                dirt-band,no,n-skirt,3600 mm,250 mm,
                plants-against-wall,no,,3600 mm,300 mm,
                worse-in-winter,no,,3600 mm,1300 mm,
                ice-ridge,no,,3600 mm,5400 mm,
                """;
    }

    @Override
    public String slips() {
        return """
                of,what,nth,how
                n-sill-2,top,9,typed
                n-casing-2l,front,3,restored
                """;
    }
}
