// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;

/** A pseudo-terminal that leads to a port of the bench, by socat. */
final class Pty implements AutoCloseable {
    private static final long PATIENCE_NANOS = TimeUnit.SECONDS.toNanos(10);

    private final Path link;
    private final int port;
    private Process socat;
    private RandomAccessFile
            held; // while somebody holds the terminal, socat does not mind the driver's coming and going

    Pty(int port) {
        Assumptions.assumeTrue(isThere(), "socat is not installed; it makes the pseudo-terminals of this test");
        this.port = port;
        try {
            link = Files.createTempDirectory("isohume-pty").resolve("tty");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        plugIn();
    }

    static boolean isThere() {
        try {
            return new ProcessBuilder("socat", "-V")
                            .redirectErrorStream(true)
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    String path() {
        return link.toString();
    }

    void plugIn() {
        try {
            socat = new ProcessBuilder("socat", "PTY,link=" + link + ",raw,echo=0", "TCP:127.0.0.1:" + port)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            long end = System.nanoTime() + PATIENCE_NANOS;
            while (!Files.exists(link)) {
                assertTrue(socat.isAlive() && System.nanoTime() < end, "socat made no terminal");
                boolean ended = socat.waitFor(5, TimeUnit.MILLISECONDS);
                assertTrue(!ended, "socat ended");
            }
            held = new RandomAccessFile(link.toFile(), "rw");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    void unplug() {
        try {
            held.close();
            socat.destroy();
            assertTrue(socat.waitFor(10, TimeUnit.SECONDS), "socat does not end");
            Files.deleteIfExists(link);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new AssertionError(e);
        }
    }

    @Override
    public void close() {
        unplug();
        try {
            Files.deleteIfExists(link.getParent());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
