package sillwright.desk.demo;

import module java.base;

import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.walk.Side;

import static sillwright.desk.demo.Written.*;

/// A small porch in millimetres: no gutter, and a floor that holds water round the middle post.
final class PorchAlone implements SideNotes {
    @Override
    public Side side() {
        var main = new Side.RoofEdge("main", Side.Edge.EAVE, length("0 mm"), length("6000 mm"), length("4200 mm"), length("300 mm"), Optional.empty(),
                Optional.empty(), perhaps("4.2 m", Kind.LENGTH), perhaps("8/12", Kind.PITCH), Optional.empty());
        var porch = new Side.RoofEdge("porch", Side.Edge.EAVE, length("600 mm"), length("4800 mm"), length("2890 mm"), length("200 mm"), Optional.empty(),
                perhaps("1800 mm", Kind.LENGTH), perhaps("2 m", Kind.LENGTH), perhaps("3/12", Kind.PITCH), Optional.empty());
        return new Side("front", "Front, porch", Quantity.read("200deg", Kind.ANGLE), length("6000 mm"), List.of(main, porch),
                new Side.Ground(Side.Surface.GRASS, perhaps("2%", Kind.FALL), perhaps("380 mm", Kind.LENGTH)), Optional.empty(),
                List.of(window("1250 mm", "1200 mm", "1000 mm", "1200 mm"), opening(Side.OpeningKind.DOOR, "3850 mm", "480 mm", "900 mm", "2020 mm")));
    }

    @Override
    public Marks tables() { return Marks.MILLIMETRES; }

    @Override
    public Marks written() { return Marks.MILLIMETRES; }

    @Override
    public double woodC() { return 14; }

    @Override
    public String members() {
        return """
                id,kind,title,role,species,run,width,depth,length,left,above,slant,start,far,coat,contact
                p-floor-1,floorboard,floorboard beneath post 2,bears-load,larch-western,outward,90 mm,28 mm,1850 mm,3305 mm,422 mm,,bare,covered,failing,none
                p-floor-2,floorboard,floorboard before the door,bears-load,larch-western,outward,90 mm,28 mm,1850 mm,4250 mm,422 mm,,bare,covered,failing,none
                p-plinth-1,plinth,plinth of post 1,bears-load,spruce-sitka,level,30 mm,160 mm,160 mm,620 mm,450 mm,,coated,coated,failing,porch-floor
                p-plinth-2,plinth,plinth of post 2,bears-load,spruce-sitka,level,30 mm,160 mm,160 mm,3270 mm,450 mm,,bare,bare,failing,porch-floor
                p-plinth-3,plinth,plinth of post 3,bears-load,spruce-sitka,level,30 mm,160 mm,160 mm,5220 mm,450 mm,,coated,coated,sound,porch-floor
                p-post-1,post,left post,bears-load,spruce-sitka,upright,100 mm,100 mm,2070 mm,650 mm,480 mm,,bare,covered,failing,none
                p-post-2,post,middle post,bears-load,spruce-sitka,upright,100 mm,100 mm,2070 mm,3300 mm,480 mm,,bare,covered,failing,none
                p-post-3,post,right post,bears-load,spruce-sitka,upright,100 mm,100 mm,2070 mm,5250 mm,480 mm,,coated,covered,sound,none
                p-beam,beam,porch beam,bears-load,spruce-sitka,level,150 mm,100 mm,4700 mm,650 mm,2550 mm,,coated,coated,sound,none
                p-fascia,fascia,porch fascia,sheds-water,spruce-sitka,level,140 mm,20 mm,4800 mm,600 mm,2750 mm,,coated,coated,sound,none
                p-rail-1,rail,top rail,bears-load,spruce-sitka,level,45 mm,90 mm,2550 mm,750 mm,1350 mm,,covered,covered,sound,none
                p-rail-2,rail,bottom rail,bears-load,spruce-sitka,level,45 mm,60 mm,2550 mm,750 mm,560 mm,,covered,covered,failing,none
                p-tread-1,tread,lower tread,bears-load,larch-western,level,40 mm,280 mm,1400 mm,3600 mm,110 mm,,bare,bare,none,none
                p-stringer-1,stringer,left stair stringer,bears-load,larch-western,outward,40 mm,220 mm,700 mm,3600 mm,30 mm,,bare,covered,none,concrete
                """;
    }

    @Override
    public String rot() {
        return """
                member,face,from,peak,to,heart,edge,deepest
                p-post-1,front,0,0,90,50,0.3,14
                p-post-2,front,0,0,230,50,0.2,44
                p-post-2,left,0,0,180,40,0.3,30
                p-post-2,right,0,0,200,40,0.3,34
                p-plinth-2,front,-120,80,280,5,0.2,60
                p-floor-1,top,-150,110,420,45,0.2,22
                p-stringer-1,left,0,0,150,0,0.7,16
                p-rail-2,top,2350,2550,2550,30,0.3,12
                """;
    }

    @Override
    public String probes() {
        return """
                member,face,along,across,reach
                p-post-1,front,20;60;120;240,25;75,100
                p-post-2,front,20;60;110;160;230;320,20;50;80,80
                p-post-2,left,30;90;150;220,30;70,80
                p-post-2,right,30;90;150;220,30;70,80
                p-post-3,front,20;80;200,50,80
                p-plinth-2,front,15;45;80;115;145,15,80
                p-plinth-3,front,40;120,15,80
                p-floor-1,top,10;60;110;180;260;350;450,25;65,80
                p-floor-2,top,10;150;900,45,80
                p-stringer-1,left,15;50;90;140;220,30;90,80
                p-rail-2,top,60;1200;2300;2400;2470;2530,30,80
                p-tread-1,top,60;700;1340,90;200,80
                p-beam,front,300;1500;2700;3900,75,80
                p-fascia,front,200;2400;4600,70,80
                """;
    }

    @Override
    public String moistures() {
        return """
                member,face,along,across,about
                p-post-1,front,20,50,20
                p-post-1,front,1200,50,13
                p-post-2,front,20;120,50,30
                p-post-2,front,1200,50,13.5
                p-post-3,front,20;1200,50,13
                p-plinth-2,front,80,15,32
                p-floor-1,top,60;180,45,29
                p-floor-2,top,150,45,17
                p-stringer-1,left,30,60,26
                p-rail-2,top,2500,30,23
                p-beam,front,700;3000,75,12.5
                """;
    }

    @Override
    public String sightings() {
        return """
                sign,seen,member,left,above,words
                water-stands-on-floor,yes,,3350 mm,450 mm,round the middle post
                base-tight-on-floor,yes,p-plinth-2,3350 mm,450 mm,
                base-tight-on-floor,no,p-plinth-3,5300 mm,450 mm,
                end-grain-dark,yes,p-post-2,3350 mm,480 mm,
                end-grain-bare,yes,p-floor-1,3350 mm,430 mm,
                peeling-to-bare-wood,yes,p-post-2,3350 mm,560 mm,
                wet-after-rain,yes,p-plinth-2,3350 mm,460 mm,
                dirt-band,no,,1000 mm,400 mm,
                splash-seen,no,,1000 mm,400 mm,
                roof-damaged-above,no,,3000 mm,3000 mm,
                stain-on-soffit,no,,3000 mm,2750 mm,
                mud-tubes,no,,3000 mm,200 mm,
                """;
    }
}
