// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jspecify.annotations.Nullable;

/**
 * Refuses requests that change something when a page of another origin sent them; and, where the program listens to its
 * own machine only, requests that reached it under a name of somebody else's choosing.
 */
public class SameOrigin {
    private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS");
    private static final Set<String> OWN_MACHINE = Set.of("localhost", "127.0.0.1", "[::1]");
    private static final Pattern PORT = Pattern.compile(":\\d+$");
    private final Errors errors;
    private final boolean alone;

    SameOrigin(Errors errors, @ConfigProperty(name = "quarkus.http.host") String listening) {
        this.errors = errors;
        this.alone = alone(listening);
    }

    @ServerRequestFilter
    Optional<Response> check(ContainerRequestContext request) {
        String host = request.getUriInfo().getRequestUri().getAuthority(); // HTTP/2 has no Host header
        boolean ours = !alone || (host != null && ownMachine(host));
        if (ours
                && (READING.contains(request.getMethod())
                        || allowed(
                                request.getHeaderString("Sec-Fetch-Site"), request.getHeaderString("Origin"), host))) {
            return Optional.empty();
        }
        return Optional.of(errors.foreign(request.getUriInfo()));
    }

    /** Whether a program that listens at this address is reached from its own machine only. */
    public static boolean alone(String listening) {
        return ownMachine(listening) || listening.equals("::1");
    }

    /** A foreign name that was made to lead here would let a foreign page read what only this machine should. */
    static boolean ownMachine(String host) {
        return OWN_MACHINE.contains(PORT.matcher(host).replaceFirst(""));
    }

    /** Browsers say where a request comes from in one of the first two; programs that are no browsers say nothing. */
    static boolean allowed(@Nullable String site, @Nullable String origin, @Nullable String host) {
        if (site != null) {
            return site.equals("same-origin") || site.equals("none");
        }
        return origin == null || (host != null && host.equals(authority(origin)));
    }

    private static @Nullable String authority(String origin) {
        try {
            return URI.create(origin).getAuthority();
        } catch (IllegalArgumentException notOne) {
            return null; // an origin that cannot be read is not ours
        }
    }
}
