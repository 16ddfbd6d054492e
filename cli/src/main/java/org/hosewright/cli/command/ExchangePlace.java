package org.hosewright.cli.command;

import java.time.Clock;
import java.util.function.Function;
import org.hosewright.server.api.ExchangeDesk;
import picocli.CommandLine.Mixin;

/** The record whose packages are exchanged; it must not be open in a running server. */
final class ExchangePlace {
    @Mixin
    private RecordPlace place;

    ExchangePlace() {}

    /** Does something at the desk of the record, which is open as long as it lasts. */
    <T> T at(Function<ExchangeDesk, T> work) {
        Clock clock = Clock.systemUTC();
        try (var store = place.openExisting(clock)) {
            return work.apply(ExchangeDesk.of(RecordPlace.ports(store, place.folder()), clock));
        }
    }
}
