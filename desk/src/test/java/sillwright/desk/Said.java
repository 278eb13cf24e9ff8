package sillwright.desk;

import java.io.PrintWriter;
import java.io.StringWriter;

/// What one run of the command line said.
record Said(int code, String out, String err) {
    static Said by(String... args) {
        StringWriter out = new StringWriter(), err = new StringWriter();
        int code = Main.run(new PrintWriter(out), new PrintWriter(err), args);
        return new Said(code, out.toString(), err.toString());
    }
}
