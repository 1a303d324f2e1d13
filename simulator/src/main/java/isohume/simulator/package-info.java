// SPDX-License-Identifier: Apache-2.0
/**
 * A portable two-flow humidity chamber as a physical model, with reference instruments and instruments under test in
 * it, served over Modbus TCP. Start at {@link isohume.simulator.SimulatedBench}; what can be chosen is in
 * {@link isohume.simulator.BenchParameters}.
 *
 * <p>May use: {@code moistair}, {@code quantity}, {@code device}. Time moves only by
 * {@link isohume.simulator.SimulatedBench#advanceTo}, in whole steps of one second from the start; the same seed and the
 * same requests give the same readings to the last bit. Only the bench knows the truth about its instruments.
 */
@NullMarked
@CheckReturnValue
package isohume.simulator;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
