// SPDX-License-Identifier: Apache-2.0
package isohume.device.export;

/** In which order a date has its day, month and year. */
public enum DateOrder {
    YEAR_FIRST,
    DAY_FIRST,
    MONTH_FIRST
}
