package sillwright;

import module java.base;

import sillwright.measure.Csv;

/// The published values in the folder `checks` of the test resources.
final class Checks {
    private Checks() {}

    /// One file of them.
    ///
    /// @param name as `wood/emc-table.csv`
    record File(String name, Csv csv) {
        /// The word behind `known:` or another of the header lines.
        String note(String word) {
            return csv.notes().stream().filter(note -> note.startsWith(word + ":")).map(note -> note.substring(word.length() + 1).strip()).findFirst()
                    .orElseThrow(() -> new AssertionError(name + " has no line '# " + word + ": ...'"));
        }

        boolean isForFigures() { return note("checks").startsWith("figure "); }
    }

    static List<File> all() {
        try {
            Path folder = Path.of(Checks.class.getResource("/checks").toURI());
            try (var paths = Files.walk(folder)) {
                List<File> all = new ArrayList<>();
                for (Path path : paths.filter(p -> p.toString().endsWith(".csv")).sorted().toList())
                    all.add(new File(folder.relativize(path).toString().replace('\\', '/'), Csv.read(Files.readString(path))));
                return all;
            }
        } catch (IOException | URISyntaxException trouble) {
            throw new AssertionError(trouble);
        }
    }

    /// `key=value key=value`, an underscore within a value standing for a blank, as a figure takes them.
    static Map<String, String> typed(String inputs) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (String pair : inputs.strip().split(" +")) {
            int equals = pair.indexOf('=');
            if (equals < 1) throw new AssertionError("'" + pair + "' is not key=value, in: " + inputs);
            typed.put(pair.substring(0, equals), pair.substring(equals + 1).replace('_', ' '));
        }
        return typed;
    }
}
