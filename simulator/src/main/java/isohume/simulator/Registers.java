// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import com.digitalpetri.modbus.ExceptionCode;
import com.digitalpetri.modbus.FunctionCode;
import com.digitalpetri.modbus.exceptions.ModbusResponseException;
import com.google.errorprone.annotations.CanIgnoreReturnValue;
import java.nio.ByteBuffer;
import java.util.HashMap;
import java.util.Map;
import java.util.function.DoubleSupplier;
import java.util.function.IntConsumer;
import java.util.function.IntSupplier;
import org.jspecify.annotations.Nullable;

/** The registers of one unit: 16-bit words, made when they are asked for. A value beyond its type stops at its end. */
final class Registers {
    /** Which of a 32-bit value's two words comes first. */
    enum WordOrder {
        BIG,
        LITTLE
    }

    private record Writer(int lowest, int highest, IntConsumer take) {}

    private static final int MOST_WORDS = 125; // Modbus application protocol 1.1b3, 6.3 and 6.4

    private final Map<Integer, IntSupplier> input = new HashMap<>();
    private final Map<Integer, IntSupplier> holding = new HashMap<>();
    private final Map<Integer, Writer> writers = new HashMap<>();
    private @Nullable Map<Integer, IntSupplier> stillInput;
    private @Nullable Map<Integer, IntSupplier> stillHolding;
    private Map<Integer, IntSupplier> table = input;

    /** What follows goes into the input registers. */
    Registers inInput() {
        table = input;
        return this;
    }

    /** What follows goes into the holding registers. */
    Registers inHolding() {
        table = holding;
        return this;
    }

    @CanIgnoreReturnValue
    Registers word(int address, IntSupplier value) {
        table.put(address, value);
        return this;
    }

    Registers int16(int address, double scale, DoubleSupplier value) {
        return word(address, () -> (int) Math.clamp(Math.rint(value.getAsDouble() / scale), -32_768, 32_767));
    }

    Registers uint16(int address, double scale, DoubleSupplier value) {
        return word(address, () -> (int) Math.clamp(Math.rint(value.getAsDouble() / scale), 0, 65_535));
    }

    Registers uint32(int address, WordOrder order, DoubleSupplier value) {
        return words(address, order, () -> (int) (long) Math.clamp(Math.rint(value.getAsDouble()), 0, 4_294_967_295.0));
    }

    Registers float32(int address, WordOrder order, DoubleSupplier value) {
        return words(address, order, () -> Float.floatToIntBits((float) value.getAsDouble()));
    }

    private Registers words(int address, WordOrder order, IntSupplier bits) {
        boolean big = order == WordOrder.BIG;
        word(address, () -> big ? bits.getAsInt() >>> 16 : bits.getAsInt());
        return word(address + 1, () -> big ? bits.getAsInt() : bits.getAsInt() >>> 16);
    }

    /** A holding register that can be written, as a signed word within limits. */
    Registers writable(int address, int lowest, int highest, IntSupplier value, IntConsumer take) {
        holding.put(address, value);
        writers.put(address, new Writer(lowest, highest, take));
        return this;
    }

    /** From now on every word stays as it is, until it may move again. */
    void freeze(boolean on) {
        stillInput = on ? snapshot(input) : null;
        stillHolding = on ? snapshot(holding) : null;
    }

    private static Map<Integer, IntSupplier> snapshot(Map<Integer, IntSupplier> moving) {
        Map<Integer, IntSupplier> still = new HashMap<>();
        moving.forEach((address, word) -> {
            int now = word.getAsInt();
            still.put(address, () -> now);
        });
        return still;
    }

    byte[] readInput(int address, int count) throws ModbusResponseException {
        return read(stillInput == null ? input : stillInput, FunctionCode.READ_INPUT_REGISTERS, address, count);
    }

    byte[] readHolding(int address, int count) throws ModbusResponseException {
        return read(stillHolding == null ? holding : stillHolding, FunctionCode.READ_HOLDING_REGISTERS, address, count);
    }

    private static byte[] read(Map<Integer, IntSupplier> from, FunctionCode function, int address, int count)
            throws ModbusResponseException {
        if (count < 1 || count > MOST_WORDS) {
            throw new ModbusResponseException(function, ExceptionCode.ILLEGAL_DATA_VALUE);
        }
        ByteBuffer bytes = ByteBuffer.allocate(2 * count);
        for (int i = 0; i < count; i++) {
            @Nullable IntSupplier word = from.get(address + i);
            if (word == null) {
                throw new ModbusResponseException(function, ExceptionCode.ILLEGAL_DATA_ADDRESS);
            }
            bytes.putShort((short) word.getAsInt());
        }
        return bytes.array();
    }

    /** Takes all words, or none of them. */
    void write(FunctionCode function, int address, short... words) throws ModbusResponseException {
        for (int i = 0; i < words.length; i++) {
            @Nullable Writer writer = writers.get(address + i);
            if (writer == null) {
                throw new ModbusResponseException(function, ExceptionCode.ILLEGAL_DATA_ADDRESS);
            }
            if (words[i] < writer.lowest() || words[i] > writer.highest()) {
                throw new ModbusResponseException(function, ExceptionCode.ILLEGAL_DATA_VALUE);
            }
        }
        for (int i = 0; i < words.length; i++) {
            Writer writer = writers.get(address + i);
            if (writer != null) {
                writer.take().accept(words[i]);
            }
        }
    }
}
