// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import isohume.station.convert.NotUnderstood;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.time.temporal.ChronoUnit;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;

/** What a person or a program is told when there is no page to give. */
class Errors {
    private static final Logger LOG = Logger.getLogger(Errors.class);
    private static final int WRONG = 400;
    private static final int TROUBLE = 500;

    private final Texts say;
    private final Desk desk;

    Errors(Texts say, Desk desk) {
        this.say = say;
        this.desk = desk;
    }

    @CheckedTemplate(basePath = "", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static final class Templates {
        private Templates() {}

        static native TemplateInstance error(ErrorView view);
    }

    @ServerExceptionMapper
    Response noPage(NotFoundException none, UriInfo uri) {
        String what = say.no_page_what(uri.getPath());
        return answer(404, uri, new ErrorView(say.no_page(), what, say.nothing_changed(), say.no_page_next()));
    }

    @ServerExceptionMapper
    Response wrongInput(NotUnderstood said, UriInfo uri) {
        String message = said.why();
        return answer(
                WRONG, uri, new ErrorView(say.wrong_input(), message, say.nothing_changed(), say.wrong_input_next()));
    }

    @ServerExceptionMapper
    Response notNow(NotNow said, UriInfo uri) {
        return answer(409, uri, new ErrorView(say.not_now(), said.why(), say.trouble_kept(), say.not_now_next()));
    }

    @ServerExceptionMapper
    Response refused(WebApplicationException refused, UriInfo uri) {
        int status = refused.getResponse().getStatus();
        if (status >= TROUBLE) {
            return trouble(refused, uri);
        }
        return answer(
                status,
                uri,
                new ErrorView(
                        say.wrong_input(),
                        refused.getResponse().getStatusInfo().getReasonPhrase(),
                        say.nothing_changed(),
                        say.wrong_input_next()));
    }

    @ServerExceptionMapper
    Response trouble(Throwable broken, UriInfo uri) {
        LOG.error("no page for " + uri.getPath(), broken);
        String at = desk.clock().instant().truncatedTo(ChronoUnit.SECONDS).toString();
        return answer(
                TROUBLE,
                uri,
                new ErrorView(say.trouble(), say.trouble_what(), say.trouble_kept(), say.trouble_next(at)));
    }

    /** For a request that a page of another origin sent. */
    Response foreign(UriInfo uri) {
        return answer(
                403, uri, new ErrorView(say.refused(), say.refused_what(), say.nothing_changed(), say.refused_next()));
    }

    private static Response answer(int status, UriInfo uri, ErrorView view) {
        boolean data = uri.getPath().startsWith("/api");
        return Response.status(status)
                .type(data ? MediaType.APPLICATION_JSON_TYPE : MediaType.TEXT_HTML_TYPE.withCharset("UTF-8"))
                .entity(data ? view : Templates.error(view))
                .build();
    }
}
