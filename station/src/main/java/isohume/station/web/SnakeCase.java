// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.SerializationFeature;
import io.quarkus.jackson.ObjectMapperCustomizer;
import jakarta.inject.Singleton;

/** How the data under {@code /api} is spelled: snake case, instants in ISO 8601. */
@Singleton
class SnakeCase implements ObjectMapperCustomizer {
    @Override
    public void customize(ObjectMapper mapper) {
        ObjectMapper ignored = mapper.setPropertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
                .disable(SerializationFeature.WRITE_DATES_AS_TIMESTAMPS);
    }
}
