// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import isohume.station.convert.Answer;
import isohume.station.convert.Conversion;
import isohume.station.convert.Question;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.UriInfo;
import java.util.HashMap;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.ParameterIn;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** The Convert page's data. */
@Path("/api/convert")
@Tag(name = "convert")
@Produces(MediaType.APPLICATION_JSON)
public final class ConvertApi {
    @GET
    @Operation(
            summary = "Converts one measure of humidity into the others",
            description = "Give the temperature and exactly one measure of humidity. Each number may have its"
                    + " uncertainty behind it, U at k = 2, as in 12.03±0.1; then each measure gets its own. A measure"
                    + " that no formula vouches for is null, and left_out says why.")
    @Parameter(in = ParameterIn.QUERY, name = Question.TEMPERATURE, description = "of the air, °C", required = true)
    @Parameter(in = ParameterIn.QUERY, name = "relative_humidity", description = "% RH over liquid water")
    @Parameter(in = ParameterIn.QUERY, name = "relative_humidity_over_ice", description = "% RH")
    @Parameter(in = ParameterIn.QUERY, name = "dew_point", description = "°C, over the phase given")
    @Parameter(in = ParameterIn.QUERY, name = "frost_point", description = "°C, over ice")
    @Parameter(in = ParameterIn.QUERY, name = "wet_bulb", description = "°C, aspirated psychrometer")
    @Parameter(in = ParameterIn.QUERY, name = "vapour_pressure", description = "Pa")
    @Parameter(in = ParameterIn.QUERY, name = "mixing_ratio", description = "g/kg, of dry air")
    @Parameter(in = ParameterIn.QUERY, name = "specific_humidity", description = "g/kg, of moist air")
    @Parameter(in = ParameterIn.QUERY, name = "absolute_humidity", description = "g/m³")
    @Parameter(in = ParameterIn.QUERY, name = "volume_fraction", description = "ppmv of moist air")
    @Parameter(in = ParameterIn.QUERY, name = "volume_ratio", description = "ppmv of dry air")
    @Parameter(in = ParameterIn.QUERY, name = Question.PRESSURE, description = "Pa; 101325 when not given")
    @Parameter(
            in = ParameterIn.QUERY,
            name = Question.MIRROR_PRESSURE,
            description = "Pa, where a dew or frost point was measured; that of the air when not given")
    @Parameter(
            in = ParameterIn.QUERY,
            name = Question.PHASE,
            description = "water or ice: of a dew point's deposit, or on a wet bulb")
    @Parameter(in = ParameterIn.QUERY, name = Question.FORMULATION, description = "sonntag_1990 when not given")
    public Answer convert(@Context UriInfo uri) {
        MultivaluedMap<String, String> query = uri.getQueryParameters();
        Map<String, String> typed = new HashMap<>();
        for (String key : Question.KEYS) {
            String text = query.getFirst(key);
            if (text != null) {
                typed.put(key, text);
            }
        }
        return Answer.of(Conversion.of(Question.read(typed)));
    }
}
