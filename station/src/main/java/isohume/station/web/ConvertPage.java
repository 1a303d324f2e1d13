// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import isohume.station.convert.Conversion;
import isohume.station.convert.NotUnderstood;
import isohume.station.convert.Question;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import org.jspecify.annotations.Nullable;

/** The Convert page; works with a plain form, and refreshes as one types where scripts run. */
@Path("/convert")
public final class ConvertPage {
    @CheckedTemplate(basePath = "", defaultName = CheckedTemplate.HYPHENATED_ELEMENT_NAME)
    static final class Templates {
        private Templates() {}

        static native TemplateInstance convert(ConvertView view);

        static native TemplateInstance convert$answer(ConvertView view);
    }

    @GET
    @Produces(MediaType.TEXT_HTML)
    public TemplateInstance page(@Context UriInfo uri, @HeaderParam("HX-Request") @Nullable String part) {
        ConvertForm form = ConvertForm.from(uri.getQueryParameters());
        ConvertView view = view(form);
        return part == null ? Templates.convert(view) : Templates.convert$answer(view);
    }

    private static ConvertView view(ConvertForm form) {
        try {
            return ConvertView.of(form, Conversion.of(Question.read(form.typed())));
        } catch (NotUnderstood said) {
            return ConvertView.refused(form, said);
        }
    }
}
