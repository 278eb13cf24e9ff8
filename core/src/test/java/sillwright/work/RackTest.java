package sillwright.work;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import sillwright.measure.Refused;
import sillwright.measure.Units;
import sillwright.walk.Member;
import sillwright.walk.MemberKind;
import sillwright.wood.Condition;
import sillwright.work.CutSolver.Flaw;
import sillwright.work.stock.Quality;

import static org.junit.jupiter.api.Assertions.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class RackTest {
    private static Repair.Piece piece(String label, double lengthMm, String set) { return new Repair.Piece(label, "R1", "pine-eastern-white", 139.7, 19.05, lengthMm, Quality.FINISH, set); }

    private static List<WorkFindings.CutPlan> laid(Rack rack, Repair.Piece... pieces) {
        Member member = Scene.sill();
        Repair repair = new Repair("R1", Scene.sillSpot(member), new Treatment.Watch("the next round"), List.of(), List.of(), false, List.of(), List.of(), List.of(pieces), List.of(), List.of(), List.of());
        return CutList.of(List.of(repair), List.of(2438.4, 3048.0), new FirstFit(), rack, Units.US).plans();
    }

    @Test
    void a_table_of_boards_is_read_with_its_defects() {
        Rack rack = Rack.read("boards.csv", "species,width,depth,length,count,defects\npine-eastern-white,5-1/2in,3/4in,4ft 6in,2,14in-17in; 3ft 1-1/2in-3ft 2in\noak-white,200mm,50mm,2m,,\n");
        assertEquals(2, rack.boards().size());
        assertEquals(2, rack.boards().getFirst().count());
        List<Flaw> flaws = rack.boards().getFirst().flaws();
        assertEquals(List.of(355.6, 431.8, 952.5, 965.2), flaws.stream().flatMap(flaw -> Stream.of(flaw.fromMm(), flaw.toMm())).map(mm -> Math.round(mm * 10) / 10.0).toList());
        assertEquals(1, rack.boards().getLast().count());
    }

    @Test
    void every_bad_row_is_told_at_once() {
        Refused refused = assertThrows(Refused.class, () -> Rack.read("boards.csv", "species,width,depth,length,count,defects\npine-eastern-white,5-1/2in,3/4in,4ft,1,5ft-6ft\nnothing-known,1in,1in,1ft,1,\noak-white,1in,1in,4ft,none,17in\n"));
        String line = refused.line(Units.US);
        assertTrue(line.contains("line 2") && line.contains("past the end") && line.contains("line 3") && line.contains("line 4"), line);
    }

    @Test
    void what_lies_in_the_rack_is_sawn_first_around_its_knot_and_not_bought() {
        Rack rack = Rack.read("boards.csv", "species,width,depth,length,count,defects\npine-eastern-white,5-1/2in,3/4in,1800mm,1,700mm-800mm\n");
        WorkFindings.CutPlan plan = laid(rack, piece("a", 650, ""), piece("b", 900, ""), piece("c", 900, "")).getFirst();
        WorkFindings.Bar inHand = plan.bars().stream().filter(WorkFindings.Bar::inHand).findFirst().orElseThrow();
        assertEquals(2, inHand.pieces().size());
        for (int k = 0; k < 2; k++) {
            double from = inHand.startsMm().get(k), to = from + inHand.pieces().get(k).lengthMm();
            assertTrue(to <= 700.001 || from >= 799.999, inHand::toString);
        }
        assertEquals(2438.4, plan.boughtMm(), 1e-9, "one length is bought for the third");
        assertTrue(laid(rack, new Repair.Piece("wide", "R1", "pine-eastern-white", 180, 19.05, 650)).getFirst().bars().stream().noneMatch(WorkFindings.Bar::inHand), "a board too narrow is left");
    }

    @Test
    void pieces_of_one_set_come_side_by_side_from_one_board() {
        WorkFindings.CutPlan plan = laid(Rack.EMPTY, piece("a", 1200, "rail"), piece("x", 1100, ""), piece("b", 1200, "rail"), piece("y", 1100, "")).getFirst();
        WorkFindings.Bar bar = plan.bars().stream().filter(one -> one.pieces().stream().anyMatch(piece -> piece.label().equals("a"))).findFirst().orElseThrow();
        List<String> labels = bar.pieces().stream().map(Repair.Piece::label).toList();
        assertEquals(labels.indexOf("a") + 1, labels.indexOf("b"), labels::toString);
    }

    @Test
    void bare_wood_is_matched_and_painted_wood_is_not() {
        for (Member.Coat coat : new Member.Coat[] {Member.Coat.STAIN, Member.Coat.SOUND}) {
            Member board = Scene.member("board", "south", MemberKind.CASING, Member.Role.DECORATIVE, Member.Run.LEVEL, 139.7, 19.05, 2400, 1000, coat, Member.Contact.NONE);
            WorkFindings work = new Scene().add(board, Condition.State.DECAYED, 0.12, Scene.damage(board, 1, 0, 300, 19, 19, 0, 0, 0, false)).work();
            for (Repair repair : work.repairs()) for (Repair.Piece piece : repair.pieces()) assertEquals(coat == Member.Coat.STAIN ? "south casing" : "", piece.set());
        }
    }
}
