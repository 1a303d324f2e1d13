// SPDX-License-Identifier: Apache-2.0
package isohume.device;

/** Why no usable reply came. */
public enum Trouble {
    /** Asked, and nothing came within the time limit. */
    SILENCE,
    /** Something came that is not a reply. */
    GARBLED,
    /** The device understood, and said no. */
    REFUSED,
    /** There is no connection to ask over. */
    UNPLUGGED
}
