// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Optional;
import java.util.Set;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;
import org.jspecify.annotations.Nullable;

/** Refuses requests that change something when a page of another origin sent them. */
class SameOrigin {
    private static final Set<String> READING = Set.of("GET", "HEAD", "OPTIONS");
    private final Errors errors;

    SameOrigin(Errors errors) {
        this.errors = errors;
    }

    @ServerRequestFilter
    Optional<Response> check(ContainerRequestContext request) {
        if (READING.contains(request.getMethod())
                || allowed(
                        request.getHeaderString("Sec-Fetch-Site"),
                        request.getHeaderString("Origin"),
                        request.getHeaderString("Host"))) {
            return Optional.empty();
        }
        return Optional.of(errors.foreign(request.getUriInfo()));
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
