package sillwright.desk.demo;

import module java.base;

import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.walk.Body;
import sillwright.walk.Profile;
import sillwright.walk.Side;

import static sillwright.desk.demo.Written.*;

/// The front: a gable over a porch. Water stands on the porch floor and goes into the feet of posts 2 and 3, their bases
/// and plinths; a lifted flashing lets water down behind the paint of the right beam, which looks well and is hollow.
final class SouthSide implements SideNotes {
    @Override
    public Side side() {
        var gutter = new Side.Gutter(Side.GutterShape.OGEE, length("5 in"), Optional.of(length("3-1/2 in")), perhaps("1/16in/ft", Kind.FALL),
                List.of(downspout("6 in", "2 in", "3 in", Side.Empties.SPLASH_BLOCK, "3'")));
        var porch = new Side.RoofEdge("porch", Side.Edge.EAVE, length("0 in"), length("24'"), length("10' 1-1/2\""), length("10 in"), Optional.empty(),
                perhaps("7'", Kind.LENGTH), perhaps("7' 10\"", Kind.LENGTH), perhaps("3/12", Kind.PITCH), Optional.of(gutter));
        return new Side("south", "South side, porch", Quantity.read("180deg", Kind.ANGLE), length("24'"),
                List.of(gable("24'", "18'", "27'", "12 in", "9/12"), porch),
                new Side.Ground(Side.Surface.GRAVEL, perhaps("1/4in/ft", Kind.FALL), perhaps("1' 3-1/2\"", Kind.LENGTH)), perhaps("31'", Kind.LENGTH),
                List.of(opening(Side.OpeningKind.DOOR, "10' 6\"", "2' 2\"", "3'", "6' 10\""), window("3' 6\"", "4' 2\"", "2' 8\"", "4' 10\""),
                        window("17' 10\"", "4' 2\"", "2' 8\"", "4' 10\""), window("4' 8\"", "14' 4\"", "2' 8\"", "4' 4\""),
                        window("16' 8\"", "14' 4\"", "2' 8\"", "4' 4\""), opening(Side.OpeningKind.VENT, "11' 4\"", "22'", "1' 4\"", "2'")));
    }

    /// The turned base of post 3, by a profile gauge: a cove of 3/4 in over a fillet, then a torus of 1 in.
    @Override
    public List<Body> measured() {
        List<Profile.Offset> offsets = new ArrayList<>();
        for (int step = 0; step <= 6; step++) offsets.add(offset(0.75 * Math.sin(step * Math.PI / 12), 1.75 - 0.75 * Math.cos(step * Math.PI / 12)));
        offsets.add(offset(0.75, 2));
        for (int step = 1; step <= 8; step++) offsets.add(offset(1.75 - Math.cos(step * Math.PI / 8), 2 + Math.sin(step * Math.PI / 8)));
        return List.of(new Profile("s-base-3", "turned base", offsets));
    }

    /// To the sixty-fourth of an inch, as a gauge is read.
    private static Profile.Offset offset(double across, double out) {
        return new Profile.Offset(length(Math.round(across * 64) + "/64 in"), length(Math.round(out * 64) + "/64 in"));
    }

    @Override
    public double woodC() { return 16.5; }

    @Override
    public String members() {
        return """
                id,kind,title,role,species,run,width,depth,length,left,above,slant,start,far,coat,contact
                s-rake-1,rake-board,left rake board,sheds-water,pine-eastern-white,raking,7-1/4 in,7/8 in,15',0 in,17' 3",36.9deg,coated,coated,sound,none
                s-rake-2,rake-board,right rake board,sheds-water,pine-eastern-white,raking,7-1/4 in,7/8 in,15',12',26' 3",-36.9deg,coated,coated,sound,none
                s-sill-1,window-sill,sill of the left porch window,sheds-water,pine-eastern-white,level,1-3/4 in,5-1/2 in,3' 7",3' 1/2",4' 1/4",,coated,coated,sound,none
                s-threshold,threshold,front door threshold,sheds-water,oak-white,level,1-5/8 in,5-1/2 in,3' 4",10' 4",2' 3/8",,coated,coated,stain,none
                s-floor-1,floorboard,floorboard beneath post 2,bears-load,pine-longleaf,outward,3-1/4 in,1-1/8 in,7' 2",8' 6",1' 10-7/8",,bare,covered,failing,none
                s-floor-2,floorboard,floorboard beneath post 3,bears-load,pine-longleaf,outward,3-1/4 in,1-1/8 in,7' 2",15' 1",1' 10-7/8",,bare,covered,failing,none
                s-floor-3,floorboard,floorboard before the door,bears-load,pine-longleaf,outward,3-1/4 in,1-1/8 in,7' 2",11' 10",1' 10-7/8",,coated,covered,failing,none
                s-skirt-1,skirt-board,porch skirt left of the steps,sheds-water,pine-eastern-white,level,7-1/4 in,3/4 in,9',0 in,1' 3-5/8",,coated,coated,sound,none
                s-skirt-2,skirt-board,porch skirt right of the steps,sheds-water,pine-eastern-white,level,7-1/4 in,3/4 in,9',15',1' 3-5/8",,coated,coated,sound,none
                s-plinth-1,plinth,plinth of post 1,bears-load,pine-eastern-white,level,1-1/2 in,8 in,8 in,1-3/4 in,2',,coated,coated,failing,porch-floor
                s-plinth-2,plinth,plinth of post 2,bears-load,pine-eastern-white,level,1-1/2 in,8 in,8 in,8' 5-1/4",2',,bare,bare,failing,porch-floor
                s-plinth-3,plinth,plinth of post 3,bears-load,pine-eastern-white,level,1-1/2 in,8 in,8 in,14' 10-3/4",2',,bare,bare,failing,porch-floor
                s-plinth-4,plinth,plinth of post 4,bears-load,pine-eastern-white,level,1-1/2 in,8 in,8 in,23' 2-1/4",2',,coated,coated,sound,porch-floor
                s-base-1,column-base,base of post 1,bears-load,pine-eastern-white,level,2-1/2 in,7 in,7 in,2-1/4 in,2' 1-1/2",,coated,coated,failing,none
                s-base-2,column-base,base of post 2,bears-load,pine-eastern-white,level,2-1/2 in,7 in,7 in,8' 5-3/4",2' 1-1/2",,bare,bare,failing,none
                s-base-3,column-base,base of post 3,bears-load,pine-eastern-white,level,2-1/2 in,7 in,7 in,14' 11-1/4",2' 1-1/2",,bare,bare,failing,none
                s-base-4,column-base,base of post 4,bears-load,pine-eastern-white,level,2-1/2 in,7 in,7 in,23' 2-3/4",2' 1-1/2",,coated,coated,sound,none
                s-post-1,post,porch post 1 from the left,bears-load,pine-eastern-white,upright,5-1/2 in,5-1/2 in,6' 8",3 in,2' 4",,bare,covered,failing,none
                s-post-2,post,porch post 2 from the left,bears-load,pine-eastern-white,upright,5-1/2 in,5-1/2 in,6' 8",8' 6-1/2",2' 4",,bare,covered,failing,none
                s-post-3,post,porch post 3 from the left,bears-load,pine-eastern-white,upright,5-1/2 in,5-1/2 in,6' 8",15' 0",2' 4",,bare,covered,failing,none
                s-post-4,post,porch post 4 from the left,bears-load,pine-eastern-white,upright,5-1/2 in,5-1/2 in,6' 8",23' 3-1/2",2' 4",,coated,covered,sound,none
                s-bracket-1,bracket,bracket right of post 1,decorative,pine-eastern-white,level,7 in,1-1/2 in,9 in,8-1/2 in,8' 5",,coated,coated,sound,none
                s-rail-1,rail,left top rail,bears-load,pine-eastern-white,level,2-1/4 in,3-1/2 in,7' 10",8-1/2 in,4' 6",,covered,covered,sound,none
                s-rail-2,rail,left bottom rail,bears-load,pine-eastern-white,level,2-1/4 in,2-1/4 in,7' 10",8-1/2 in,2' 5-1/2",,covered,covered,failing,none
                s-rail-3,rail,right top rail,bears-load,pine-eastern-white,level,2-1/4 in,3-1/2 in,7' 10",15' 5-1/2",4' 6",,covered,covered,sound,none
                s-rail-4,rail,right bottom rail,bears-load,pine-eastern-white,level,2-1/4 in,2-1/4 in,7' 10",15' 5-1/2",2' 5-1/2",,covered,covered,failing,none
                s-baluster-1,baluster,baluster in the middle of the left rail,decorative,pine-eastern-white,upright,1-3/8 in,1-3/8 in,1' 10-1/4",4' 2",2' 7-3/4",,covered,covered,sound,none
                s-beam-1,beam,left porch beam,bears-load,spruce-red,level,7-1/4 in,5-1/2 in,8' 6-1/4",3 in,9',,covered,covered,sound,none
                s-beam-2,beam,middle porch beam,bears-load,spruce-red,level,7-1/4 in,5-1/2 in,6' 5-1/2",8' 9-1/4",9',,covered,covered,sound,none
                s-beam-3,beam,right porch beam,bears-load,spruce-red,level,7-1/4 in,5-1/2 in,8' 6-1/4",15' 2-3/4",9',,covered,covered,sound,none
                s-soffit,soffit,porch soffit,sheds-water,pine-eastern-white,level,3/4 in,9-1/4 in,24',0 in,9' 7-1/4",,coated,coated,sound,none
                s-fascia,fascia,porch fascia,sheds-water,pine-eastern-white,level,5-1/2 in,3/4 in,24',0 in,9' 8",,coated,coated,sound,none
                s-tread-1,tread,lower tread,bears-load,pine-longleaf,level,1-1/8 in,11 in,6',9',6-7/8 in,,bare,bare,failing,none
                s-tread-2,tread,upper tread,bears-load,pine-longleaf,level,1-1/8 in,11 in,6',9',1' 2-7/8",,bare,bare,failing,none
                s-stringer-1,stringer,left stair stringer,bears-load,spruce-red,outward,1-1/2 in,9-1/4 in,2' 8",9' 0",2 in,,bare,covered,failing,masonry
                s-stringer-2,stringer,right stair stringer,bears-load,spruce-red,outward,1-1/2 in,9-1/4 in,2' 8",14' 10-1/2",2 in,,bare,covered,failing,masonry
                """;
    }

    @Override
    public String rot() {
        return """
                member,face,from,peak,to,heart,edge,deepest
                s-post-1,front,0,0,4,2.75,0.3,0.5
                s-post-1,left,0,0,3,2,0.3,0.375
                s-post-2,front,0,0,8,2.75,0.25,1.75
                s-post-2,left,0,0,7,2,0.3,1.25
                s-post-2,right,0,0,8,2,0.3,1.5
                s-post-2,back,0,0,5,2.75,0.4,0.75
                s-post-3,front,0,0,10,3,0.2,2.5
                s-post-3,left,0,0,8,2,0.3,1.75
                s-post-3,right,0,0,9,2,0.3,1.5
                s-post-3,back,0,0,6,2.75,0.4,1
                s-plinth-1,front,-4,3,12,0.25,0.3,0.625
                s-plinth-2,front,-6,4,14,0.25,0.2,2
                s-plinth-2,top,-6,4,14,0,0.3,1.25
                s-plinth-3,front,-8,4,16,0.25,0.2,3
                s-plinth-3,top,-8,4,16,0,0.3,1.5
                s-base-2,front,-3,3.5,10,0.25,0.5,1.25
                s-base-2,top,-3,3.5,10,0,0.3,0.5
                s-base-3,front,-4,3.5,11,0.25,0.4,2
                s-base-3,top,-4,3.5,11,0,0.3,0.75
                s-floor-1,top,-6,5,18,1.6,0.2,0.6875
                s-floor-1,bottom,-4,5,12,1.6,0.2,0.1875
                s-floor-2,top,-6,6,21,1.6,0.2,0.8125
                s-floor-2,bottom,-4,6,16,1.6,0.2,0.25
                s-stringer-1,left,0,0,7,0,0.7,0.75
                s-stringer-1,right,0,0,5,0,0.7,0.5
                s-tread-1,top,0,0,8,0,0.5,0.5
                s-beam-3,top,22,58,92,3,0.3,5.5
                s-beam-3,back,32,60,86,5.5,0.5,3
                s-beam-3,front,44,60,80,6.5,0.8,0.25
                """;
    }

    @Override
    public String probes() {
        return """
                member,face,along,across,reach
                s-post-1,front,1;2;4;6,1.25;4.25,4
                s-post-1,left,1;3;6,1.5;4,4
                s-post-2,front,0.75;2;4;6;9;13,1;2.75;4.5,4
                s-post-2,left,1;3;6;9,1.5;4,4
                s-post-2,right,1;3;6;9,1.5;4,4
                s-post-2,back,1;4;8,2.75,4
                s-post-3,front,0.75;2;4;6;9;13,1;2.75;4.5,4
                s-post-3,left,1;3;6;10,1.5;4,4
                s-post-3,right,1;3;6;10,1.5;4,4
                s-post-3,back,1;4;8,2.75,4
                s-post-4,front,1;3;6;12,1.25;4.25,4
                s-plinth-1,front,1..7/1,0.75,4
                s-plinth-1,top,1;2.5;4;5.5;7,0.25,4
                s-plinth-2,front,1..7/1,0.75,4
                s-plinth-2,top,1;2.5;4;5.5;7,0.25,4
                s-plinth-3,front,1..7/1,0.75,4
                s-plinth-3,top,1;2.5;4;5.5;7,0.25,4
                s-plinth-4,front,1;4;7,0.75,4
                s-base-1,front,1;3.5;6,1.25,4
                s-base-2,front,1..6/1,0.75;1.75,4
                s-base-2,top,1;3.5;6,0.25,4
                s-base-3,front,1..6/1,0.75;1.75,4
                s-base-3,top,1;3.5;6,0.25,4
                s-base-4,front,1;3.5;6,1.25,4
                s-floor-1,top,1..22/3,0.75;2.5,4
                s-floor-1,bottom,1;7;13;19,1.625,4
                s-floor-2,top,1..22/3,0.75;2.5,4
                s-floor-2,bottom,1;7;13;19,1.625,4
                s-floor-3,top,1;10;40;80,1.625,4
                s-stringer-1,left,0.75;2;4;6;10,1;3;6,4
                s-stringer-1,right,1;3;6,1.5,4
                s-stringer-2,right,1;3;6;12,1.5,4
                s-tread-1,top,1;3;5;8;12;36,1;4;8,4
                s-tread-1,front,1;3;6,0.5,4
                s-tread-2,top,1;6;36;70,2,4
                s-rail-2,top,1;24;93,1.125,3
                s-rail-4,top,1;24;93,1.125,3
                s-rail-1,top,1;47,1.75,3
                s-rail-3,top,1;47,1.75,3
                s-baluster-1,front,1;11,0.75,3
                s-beam-1,front,10..90/20,2,4
                s-beam-2,front,10..70/15,2,4
                s-beam-3,front,10..94/12,1.5;5.75,4
                s-beam-3,top,12..96/12,1.5;4,4
                s-beam-3,back,30;50;70;90,5.5,4
                s-beam-3,bottom,15;40;65;90,2.75,4
                s-skirt-1,front,6;54;102,3.5,3
                s-skirt-2,front,6;54;102,3.5,3
                s-soffit,bottom,60;150;210;240;270,4,3
                s-fascia,front,12;80;150;220;276,2.5,3
                s-sill-1,top,2;12;21;32;41,2,3
                s-threshold,top,2;12;20;28;38,2,3
                """;
    }

    @Override
    public String moistures() {
        return """
                member,face,along,across,about
                s-post-1,front,1;12,2.75,19
                s-post-1,front,48,2.75,12.5
                s-post-2,front,1;4,2.75,28
                s-post-2,right,2,2,27
                s-post-2,front,14,2.75,18
                s-post-2,front,48,2.75,13
                s-post-3,front,1;4,2.75,31
                s-post-3,left,2,2,29
                s-post-3,front,14,2.75,19
                s-post-3,front,48,2.75,13
                s-post-4,front,1;12;48,2.75,12
                s-plinth-1,front,4,0.75,21
                s-plinth-2,front,2;6,0.75,31
                s-plinth-3,front,2;6,0.75,33
                s-plinth-4,front,4,0.75,13
                s-base-2,front,3.5,1.25,29
                s-base-3,front,3.5,1.25,31
                s-base-4,front,3.5,1.25,12
                s-floor-1,top,2;10,1.625,28
                s-floor-1,top,50,1.625,16
                s-floor-2,top,2;10,1.625,30
                s-floor-2,top,50,1.625,17
                s-floor-3,top,10;60,1.625,14
                s-stringer-1,left,1,2,26
                s-stringer-1,left,20,5,15
                s-tread-1,top,2,4,24
                s-tread-1,top,36,4,16
                s-beam-1,front,20;60,2,12
                s-beam-2,front,40,2,12
                s-beam-3,top,40;60;80,3,29
                s-beam-3,back,60,5.5,25
                s-beam-3,front,20;60,3,15
                s-fascia,front,40;200,2.5,12
                s-skirt-1,front,50,3.5,13
                s-skirt-2,front,50,3.5,13
                s-sill-1,top,21,2,13
                """;
    }

    @Override
    public String sightings() {
        return """
                sign,seen,member,left,above,words
                water-stands-on-floor,yes,,9',2',a puddle round posts 2 and 3 the morning after rain
                floor-falls-to-house,yes,,12',2',the front edge of the floor stands 1/4 in proud of the boards at the posts
                base-tight-on-floor,yes,s-plinth-2,8' 9",2',no gap and no vent beneath
                base-tight-on-floor,yes,s-plinth-3,15' 3",2',no gap and no vent beneath
                base-tight-on-floor,no,s-plinth-4,23' 6",2',lead strips keep it 3/8 in off the floor
                weep-blocked,yes,s-plinth-3,15' 3",2',caulk run round the foot of the plinth
                end-grain-dark,yes,s-post-2,8' 9",2' 4",
                end-grain-dark,yes,s-post-3,15' 3",2' 4",
                end-grain-dark,no,s-post-4,23' 6",2' 4",
                end-grain-bare,yes,s-floor-2,15' 2",1' 11",nose of the floorboards never painted
                wet-after-rain,yes,s-plinth-3,15' 3",2',dark three days after rain
                cupped-boards,yes,s-floor-2,15' 2",2',
                cubes-across-grain,yes,s-post-3,15' 3",2' 6",where the paint came off
                peeling-to-bare-wood,yes,s-post-3,15' 3",2' 8",
                joint-open,yes,s-base-2,8' 9",2' 4",a card goes in between base and post
                flashing-lifted,yes,,19',11' 9",where the porch roof meets the wall over the right beam
                stain-on-soffit,yes,s-soffit,19' 6",9' 7",brown ring at a ceiling joint
                hollow-sound,yes,s-beam-3,20' 3",9' 4",from 2 ft right of post 3 to 7 ft right of it
                hollow-sound,no,s-beam-1,4' 6",9' 4",
                hollow-sound,no,s-beam-2,12',9' 4",
                peeling-to-bare-wood,no,s-beam-3,19',9' 4",the paint on it is whole
                sagging,no,s-beam-3,19',9',string line straight within 1/8 in
                sagging,no,s-post-3,15' 3",5',plumb
                roof-damaged-above,no,,12',11',
                gutter-full,no,,12',10',porch gutter clear
                gutter-overflows,no,,12',10',watched in rain
                gutter-joint-drips,no,,12',10',
                dirt-band,no,s-skirt-1,6',1' 6",
                splash-seen,no,s-skirt-1,6',1' 6",
                soil-touches-wood,no,s-stringer-1,9',2 in,stone pads beneath both stringers
                mud-tubes,no,,12',1',looked behind the lattice
                round-holes,no,s-soffit,12',9' 7",
                """;
    }

    @Override
    public String slips() {
        return """
                of,what,nth,how
                s-post-4,length,1,typed
                s-post-3,front,5,typed
                s-beam-3,top,6,struck
                s-post-2,moisture,1,typed
                gutter-joint-drips,sighting,1,typed
                """;
    }
}
