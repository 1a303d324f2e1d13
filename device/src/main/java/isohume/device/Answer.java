// SPDX-License-Identifier: Apache-2.0
package isohume.device;

/** What a chamber answered to a request. */
public sealed interface Answer {
    /** The controller took this target, which may differ from the one asked for. */
    record Taken(Setpoint target) implements Answer {}

    /** The chamber is at rest: drives off, fan on. */
    record AtRest() implements Answer {}

    /** The description's limits or the controller said no. */
    record Refused(String why) implements Answer {}

    /** Nothing usable came back. */
    record None(Trouble trouble, String detail) implements Answer {}
}
