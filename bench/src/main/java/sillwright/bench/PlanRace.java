package sillwright.bench;

import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;

import sillwright.Assessment;
import sillwright.Settings;
import sillwright.measure.Memo;
import sillwright.measure.Units;
import sillwright.store.SurveyFile;
import sillwright.walk.Survey;
import sillwright.work.FirstFit;

/// What the order of work of a survey costs, by the processor time of one thread: the weather of its years, and the search with its bound, the first time and when warm.
public final class PlanRace {
    private PlanRace() {}

    /// Times what is not known, by the sort of question; answers all else from memory, so that only the order of work is worked again.
    private static final class Timing implements Memo {
        private final Map<Object, Object> known = new HashMap<>();
        private final Map<String, Double> times = new TreeMap<>();

        @Override
        @SuppressWarnings("unchecked")
        public <T> T of(Object key, Supplier<T> work) {
            if (known.containsKey(key)) return (T) known.get(key);
            long before = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            T answer = work.get();
            times.put(key.getClass().getSimpleName(), (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - before) / 1e6);
            known.put(key, answer);
            return answer;
        }

        @Override
        @SuppressWarnings("unchecked")
        public <T> Optional<T> known(Object key) { return Optional.ofNullable((T) known.get(key)); }

        void forget(String sort) { known.keySet().removeIf(key -> key.getClass().getSimpleName().equals(sort)); }
    }

    /// @param args survey files
    public static void main(String[] args) {
        for (String file : args) {
            Survey survey = SurveyFile.read(Path.of(file)).fold();
            Settings settings = new Settings(LocalDate.of(2026, 6, 1), Units.US, 1, new FirstFit(), Settings.COMMON_STOCK_MM);
            Timing memo = new Timing();
            for (int round = 0; round < 8; round++) {
                memo.forget("Question");
                if (round < 3) memo.forget("Sky");
                Assessment assessment = Assessment.of(survey, settings, _ -> {}, memo);
                if (round == 0) System.out.println(file + ": " + assessment.work().tasks().size() + " tasks. " + assessment.work().plan().timetable().map(known -> known.words()).orElse(""));
                System.out.printf(Locale.ROOT, "  round %d: weather and search %.1f ms, weather alone %.1f ms%n", round, memo.times.getOrDefault("Question", 0.0), round < 3 ? memo.times.getOrDefault("Sky", 0.0) : 0.0);
            }
        }
    }
}
