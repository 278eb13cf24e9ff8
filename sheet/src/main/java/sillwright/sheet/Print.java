package sillwright.sheet;

import java.util.Optional;
import java.util.function.Function;

import sillwright.measure.Units;

/// What is printed: for whom, on what paper, with which pictures.
///
/// @param pictures the bytes of a picture by the name that the survey gives it; empty where it is not at hand
public record Print(Reader reader, Paper paper, Function<String, Optional<byte[]>> pictures) {
    /// Who reads it. `EVERYBODY` gets all of it in the fewest pages; the owner gets the lists to walk with in place of the drawings of the repairs; the crew gets drawings,
    /// steps, mixes and boxes to tick, and no prose; a review board gets what is kept, what else was weighed, and by which standards.
    public enum Reader {
        EVERYBODY("dossier"), OWNER("owner"), CREW("crew"), BOARD("board");

        private final String file;

        Reader(String file) { this.file = file; }

        /// `crew.pdf`
        public String file() { return file + ".pdf"; }
    }

    public enum Paper {
        LETTER("letter", 279.4), A4("A4", 297);

        private final String css;
        private final double highMm;

        Paper(String css, double highMm) {
            this.css = css;
            this.highMm = highMm;
        }

        /// What stands between the margins of an upright page, mm, by the style sheet.
        double roomMm() { return highMm - 24.5; }

        String css() { return css; }

        /// The paper that readers of these units have.
        public static Paper of(Units units) { return units == Units.US ? LETTER : A4; }
    }

    /// All of it, on the paper of the reader's units, without pictures.
    public static Print whole(Units units) { return new Print(Reader.EVERYBODY, Paper.of(units), file -> Optional.empty()); }

    public Print read(Reader by) { return new Print(by, paper, pictures); }
}
