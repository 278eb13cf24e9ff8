package sillwright.desk;

import java.io.PrintWriter;

/// Says how far long work has come: over one line on a terminal, otherwise a line for each stage.
final class Progress {
    private final PrintWriter err;
    private final boolean terminal;
    private String stage = "";

    Progress(PrintWriter err, boolean terminal) {
        this.err = err;
        this.terminal = terminal;
    }

    static Progress on(PrintWriter err) { return new Progress(err, System.console() != null && System.console().isTerminal()); }

    void step(String step) {
        if (terminal) {
            String clipped = step.length() > 70 ? step.substring(0, 70) : step;
            err.print("\r\u001b[K  " + clipped);
            err.flush();
            return;
        }
        String now = step.contains(":") ? step.substring(0, step.indexOf(':')) : step;
        if (!now.equals(stage)) err.println("  " + step);
        stage = now;
    }

    void done() {
        if (!terminal) return;
        err.print("\r\u001b[K");
        err.flush();
    }
}
