// SPDX-License-Identifier: Apache-2.0
/**
 * Instruments and chambers that speak Modbus over TCP or a serial line, driven by a description that a person wrote. Start at
 * {@link isohume.device.modbus.ModbusDescription}.
 *
 * <p>The bytes are made and judged by classes without input or output ({@code TcpFrames}, {@code RtuFrames},
 * {@code ReadingCodec}, {@code ControlCodec}); a line moves them. Errors: trouble on the
 * wire is an outcome; a faulty description is a {@link isohume.device.sheet.SheetError}.
 *
 * <p>The frames are encoded by a Modbus library; its client is not used, because it takes a reply from another unit or
 * with another number of registers for an answer, and cannot tell half a reply from silence.
 *
 * <p>Source of the frames: MODBUS Application Protocol Specification V1.1b3 and MODBUS Messaging on TCP/IP
 * Implementation Guide V1.0b, modbus.org.
 */
@NullMarked
@CheckReturnValue
package isohume.device.modbus;

import com.google.errorprone.annotations.CheckReturnValue;
import org.jspecify.annotations.NullMarked;
