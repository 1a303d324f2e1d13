// SPDX-License-Identifier: Apache-2.0
package isohume.station.web;

import io.quarkus.qute.TemplateData;

/** What happened, what was kept, and what to do next. */
@TemplateData
public record ErrorView(String title, String what, String kept, String next) {}
