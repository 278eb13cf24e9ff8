package sillwright.sheet;

import java.io.StringReader;

import javax.xml.parsers.DocumentBuilderFactory;

import org.w3c.dom.Document;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

/// Reads XML with the parser of the Java library, as a second opinion on what is written.
final class Xml {
    private Xml() {}

    static Document parse(String xml) throws Exception {
        var builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
        builder.setErrorHandler(new DefaultHandler() {
            @Override
            public void error(SAXParseException e) throws SAXException { throw e; }
        });
        return builder.parse(new InputSource(new StringReader(xml)));
    }
}
