package sillwright.work;

import sillwright.walk.Member;

/// Whether old paint is to be taken for leaded.
final class Lead {
    private Lead() {}

    static boolean mayBe(int yearBuilt, Member member) {
        return yearBuilt < LeadSafe.FIRST_YEAR_FREE && member.coat() != Member.Coat.NONE && member.coat() != Member.Coat.STAIN;
    }
}
