package org.shotledger.snippet;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.Reader;
import java.io.Writer;
import java.net.URI;
import javax.lang.model.element.Modifier;
import javax.lang.model.element.NestingKind;
import javax.tools.JavaFileObject;

/**
 * A class file of the class path, read only when the compiler wants its bytes.
 *
 * <p>Thousands of these are made for each compiler, so this is no {@code SimpleJavaFileObject}, which parses a URI for each.
 *
 * @param place where it is
 * @param jars reads it
 */
record ClassFile(ClassPathIndex.Place place, OpenJars jars) implements JavaFileObject {

    @Override
    public Kind getKind() {
        return Kind.CLASS;
    }

    @Override
    public boolean isNameCompatible(String simpleName, Kind kind) {
        String name = place.binaryName();
        return kind == Kind.CLASS && name.substring(name.lastIndexOf('.') + 1).equals(simpleName);
    }

    @Override
    public NestingKind getNestingKind() {
        return null;
    }

    @Override
    public Modifier getAccessLevel() {
        return null;
    }

    @Override
    public URI toUri() {
        return URI.create("class:///" + place.binaryName().replace('.', '/') + ".class");
    }

    @Override
    public String getName() {
        return place.entry() + "(" + place.binaryName() + ")";
    }

    @Override
    public InputStream openInputStream() throws IOException {
        return new ByteArrayInputStream(jars.read(place));
    }

    @Override
    public OutputStream openOutputStream() {
        throw new UnsupportedOperationException("libraries are not written to");
    }

    @Override
    public Reader openReader(boolean ignoreEncodingErrors) {
        throw new UnsupportedOperationException("a class file is not text");
    }

    @Override
    public CharSequence getCharContent(boolean ignoreEncodingErrors) {
        throw new UnsupportedOperationException("a class file is not text");
    }

    @Override
    public Writer openWriter() {
        throw new UnsupportedOperationException("libraries are not written to");
    }

    @Override
    public long getLastModified() {
        return 0;
    }

    @Override
    public boolean delete() {
        return false;
    }
}
