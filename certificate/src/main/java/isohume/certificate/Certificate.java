// SPDX-License-Identifier: Apache-2.0
package isohume.certificate;

import isohume.quantity.Quantity;
import isohume.result.Item;
import isohume.result.Job;
import isohume.result.PointResult;
import isohume.result.Recording;
import isohume.result.Reference;
import isohume.result.Results;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What one certificate says about one instrument. A certificate without an authorisation is a draft, and every page of
 * it says so.
 *
 * @param number unique in the laboratory, printed on every page
 * @param zone the zone in which dates and times are printed
 * @param points the item's results, by quantity, then in the order of the plan
 * @param recordings those that the points came from
 * @param software name and version of the program
 * @param room conditions in the room, in words
 * @param deviations additions to, deviations or exclusions from the method
 */
public record Certificate(
        String number,
        Instant issuedAt,
        ZoneId zone,
        String software,
        Kind kind,
        Job job,
        Item item,
        List<PointResult> points,
        List<Results.Hysteresis> hysteresis,
        List<Recording> recordings,
        String performedBy,
        Optional<Authorisation> authorisation,
        Optional<String> room,
        List<String> deviations,
        List<String> remarks) {
    public Certificate {
        points = List.copyOf(points);
        hysteresis = List.copyOf(hysteresis);
        recordings = List.copyOf(recordings);
        deviations = List.copyOf(deviations);
        remarks = List.copyOf(remarks);
        if (number.isBlank()) {
            throw new IllegalArgumentException("a certificate needs a number");
        }
        if (points.isEmpty()) {
            throw new IllegalArgumentException(
                    "there are no results of instrument " + item.id() + "; a certificate needs at least one");
        }
    }

    /** In which state the instrument was measured. */
    public enum Kind {
        /** As received, before any change to it. */
        AS_FOUND
    }

    /** Who answers for the content, and since when. */
    public record Authorisation(String name, Instant at) {}

    /**
     * A draft for one instrument.
     *
     * @throws IllegalArgumentException when the job has no such instrument, or there are no results of it
     */
    public static Certificate of(
            Results results, String itemId, String number, Instant issuedAt, ZoneId zone, String software) {
        Job job = results.job();
        Item item = job.items().stream()
                .filter(i -> i.id().equals(itemId))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("job " + job.number() + " has no instrument " + itemId
                        + "; it has " + job.items().stream().map(Item::id).toList()));
        List<PointResult> points = results.of(itemId).stream()
                .sorted(Comparator.comparing(PointResult::quantity)
                        .thenComparingInt(p -> p.point().number()))
                .toList();
        Set<Integer> numbers = points.stream().map(p -> p.point().number()).collect(Collectors.toSet());
        return new Certificate(
                number,
                issuedAt,
                zone,
                software,
                Kind.AS_FOUND,
                job,
                item,
                points,
                results.hysteresis().stream()
                        .filter(h -> h.instrument().equals(itemId))
                        .toList(),
                results.recordings().stream()
                        .filter(r -> numbers.contains(r.point().number()))
                        .toList(),
                job.operator(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of());
    }

    /** The same, authorised; no longer a draft. */
    public Certificate authorisedBy(String name, Instant at) {
        return with(Optional.of(new Authorisation(name, at)), room, deviations, remarks);
    }

    public Certificate withRoom(String conditions) {
        return with(authorisation, Optional.of(conditions), deviations, remarks);
    }

    public Certificate withDeviations(List<String> changed) {
        return with(authorisation, room, changed, remarks);
    }

    public Certificate withRemarks(List<String> changed) {
        return with(authorisation, room, deviations, changed);
    }

    /** The references that the results stand on. */
    public List<Reference> references() {
        return job.references();
    }

    /** The quantities that there are results of. */
    public List<Quantity> quantities() {
        return points.stream().map(PointResult::quantity).distinct().toList();
    }

    public List<PointResult> of(Quantity quantity) {
        return points.stream().filter(p -> p.quantity() == quantity).toList();
    }

    /** The results of this instrument alone, for a file that goes with the certificate. */
    public Results results() {
        return new Results(job, recordings, points, hysteresis, List.of());
    }

    private Certificate with(
            Optional<Authorisation> by, Optional<String> air, List<String> deviating, List<String> remarking) {
        return new Certificate(
                number,
                issuedAt,
                zone,
                software,
                kind,
                job,
                item,
                points,
                hysteresis,
                recordings,
                performedBy,
                by,
                air,
                deviating,
                remarking);
    }
}
