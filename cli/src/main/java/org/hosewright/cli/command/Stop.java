package org.hosewright.cli.command;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;

/** The request to stop (Control-C, or the machine shutting down), held until everything is closed. */
final class Stop {
    /** The longest that a machine shutting down is kept waiting [s]. */
    private static final long PATIENCE_s = 10;

    private final CountDownLatch asked = new CountDownLatch(1);
    private final CountDownLatch done = new CountDownLatch(1);

    Stop() {
        Runtime.getRuntime().addShutdownHook(new Thread(this::ask, "stop"));
    }

    void await() throws InterruptedException {
        asked.await();
    }

    void done() {
        done.countDown();
    }

    private void ask() {
        asked.countDown();
        try {
            if (!done.await(PATIENCE_s, TimeUnit.SECONDS)) {
                System.err.println("Stopping took too long; what was acknowledged is on the disk.");
            }
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }
}
