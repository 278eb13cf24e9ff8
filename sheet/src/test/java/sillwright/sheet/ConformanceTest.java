package sillwright.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.util.List;
import java.util.TreeSet;

import org.junit.jupiter.api.DisplayNameGeneration;
import org.junit.jupiter.api.DisplayNameGenerator.ReplaceUnderscores;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;

import sillwright.measure.Units;

/// The prints with the most drawings before another program's judge of ISO 19005-3 (PDF/A-3a, archival) and ISO 14289-1 (PDF/UA-1, for those who hear it): veraPDF's validation model.
@DisplayNameGeneration(ReplaceUnderscores.class)
class ConformanceTest {
    @ParameterizedTest
    @EnumSource(names = {"EVERYBODY", "CREW"})
    void a_print_keeps_the_archival_profile_and_can_be_heard(Print.Reader reader) throws Exception {
        VeraGreenfieldFoundryProvider.initialise();
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Dossier.write(Porch.assessment(Units.US), Print.whole(Units.US).read(reader), out, part -> {});
        for (PDFAFlavour flavour : List.of(PDFAFlavour.PDFA_3_A, PDFAFlavour.PDFUA_1)) {
            TreeSet<String> faults = new TreeSet<>();
            try (PDFAParser parser = Foundries.defaultInstance().createParser(new ByteArrayInputStream(out.toByteArray()), flavour);
                    PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, 1000, false, false, false)) {
                for (TestAssertion one : validator.validate(parser).getTestAssertions()) faults.add(one.getRuleId().getClause() + "-" + one.getRuleId().getTestNumber() + " " + one.getMessage());
            }
            assertEquals(new TreeSet<String>(), faults, flavour.toString());
        }
    }
}
