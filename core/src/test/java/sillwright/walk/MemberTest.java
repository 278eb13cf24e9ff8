package sillwright.walk;

import module java.base;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.*;
import static sillwright.walk.Bodies.*;

@DisplayNameGeneration(ReplaceUnderscores.class)
class MemberTest {
    private static Member member(Member.Run run) {
        Member post = post("post", "south");
        return new Member("m", "south", post.kind(), "", post.role(), post.species(), run, mm("5 in"), mm("3 in"), mm("7 ft"), mm("0 in"), mm("0 in"),
                Optional.empty(), post.startEnd(), post.farEnd(), post.coat(), post.contact());
    }

    @Test
    void whichever_way_a_member_runs_it_has_four_faces_on_four_sides_of_its_section_and_opposite_ones_match() {
        for (Member.Run run : Member.Run.values()) {
            Member member = member(run);
            assertEquals(4, Set.copyOf(member.faces()).size());
            assertEquals(4, member.faces().stream().map(member::sectionSide).distinct().count());
            for (Member.Face face : member.faces()) {
                assertTrue(member.faces().contains(Member.opposite(face)), run + " " + face);
                assertEquals(face, Member.opposite(Member.opposite(face)));
                assertEquals(member.acrossMm(face), member.acrossMm(Member.opposite(face)));
                assertEquals(member.sectionMm2(), member.acrossMm(face) * member.throughMm(face), 1e-9);
                boolean level = switch (member.sectionSide(face)) {
                    case FRONT, BACK -> true;
                    case LEFT, RIGHT -> false;
                };
                assertEquals(level ? member.widthMm() : member.depthMm(), member.acrossMm(face), run + " " + face);
            }
        }
    }
}
