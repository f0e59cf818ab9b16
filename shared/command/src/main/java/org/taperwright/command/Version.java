package org.taperwright.command;

import org.taperwright.command.print.Release;
import picocli.CommandLine.IVersionProvider;

/** What {@code --version} shows. */
final class Version implements IVersionProvider {
    @Override
    public String[] getVersion() {
        return new String[] {"taperwright " + Release.number()};
    }
}
