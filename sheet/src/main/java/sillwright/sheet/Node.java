package sillwright.sheet;

/// What may stand in an element of XML.
public sealed interface Node permits Markup, Node.Text {
    /// Text as the reader reads it; it is escaped when written.
    record Text(String words) implements Node {}
}
