// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.inject.Produces;

/** Lets handlers ask for the desk. */
@ApplicationScoped
class Wiring {
    @Produces
    @ApplicationScoped
    Desk desk() {
        return Web.Front.desk();
    }
}
