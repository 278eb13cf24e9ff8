package sillwright.desk.demo;

import module java.base;

import sillwright.measure.Kind;
import sillwright.measure.Quantity;
import sillwright.walk.Side;

import static sillwright.desk.demo.Written.*;

/// One sill that lies flat: soft at its left end and along the sash.
final class OneSill implements SideNotes {
    @Override
    public Side side() {
        return new Side("west", "West wall, one window", Quantity.read("260deg", Kind.ANGLE), length("8'"), List.of(),
                new Side.Ground(Side.Surface.GRASS, perhaps("1/2in/ft", Kind.FALL), perhaps("10 in", Kind.LENGTH)), Optional.empty(),
                List.of(window("2' 8\"", "2' 10\"", "2' 8\"", "4' 6\"")));
    }

    @Override
    public double woodC() { return 19; }

    @Override
    public String members() {
        return """
                id,kind,title,role,species,run,width,depth,length,left,above,slant,start,far,coat,contact
                sill,window-sill,the sill,sheds-water,pine-eastern-white,level,1-3/4 in,5-1/2 in,3' 7",2' 2-1/2",2' 8-1/4",,bare,bare,failing,none
                """;
    }

    @Override
    public String rot() {
        return """
                member,face,from,peak,to,heart,edge,deepest
                sill,top,0,0,18,3,0.3,1.375
                sill,top,8,24,38,4.5,0.5,0.625
                sill,front,0,0,8,0.9,0.2,0.75
                """;
    }

    @Override
    public String probes() {
        return """
                member,face,along,across,reach
                sill,top,2..42/5,1.5;4,3
                sill,front,3;21,0.875,3
                """;
    }

    @Override
    public String moistures() {
        return """
                member,face,along,across,about
                sill,top,3;12,3,28
                sill,top,24,4,24
                sill,top,40,3,14
                """;
    }

    @Override
    public String sightings() {
        return """
                sign,seen,member,left,above,words
                sill-flat,yes,sill,4',2' 10",bubble in the middle
                no-drip-kerf,yes,sill,4',2' 8",
                joint-open,yes,sill,2' 6",2' 10",a card goes in beneath the left casing
                sill-checks,yes,sill,3' 2",2' 10",
                putty-failed,no,sill,4',3',
                condensation-on-glass,no,,4',4',
                damp-room-behind,no,,4',4',
                splash-seen,no,,4',1',
                """;
    }
}
