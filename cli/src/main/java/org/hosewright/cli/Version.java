package org.hosewright.cli;

import picocli.CommandLine.IVersionProvider;

/** The version written into the jar when it was built. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        var written = Hosewright.class.getPackage().getImplementationVersion();
        return new String[] {"hosewright " + (written == null ? "(not built as a jar)" : written)};
    }
}
