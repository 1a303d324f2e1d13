// SPDX-License-Identifier: Apache-2.0
package isohume.benchmarks.chamber;

/** A way of working through a plan. */
interface Way {
    Outcome work(Job job);
}
