// SPDX-License-Identifier: Apache-2.0
package isohume.device;

import java.util.Arrays;
import java.util.random.RandomGenerator;
import java.util.random.RandomGeneratorFactory;

/** Makes replies that are no replies: good ones with bytes changed, lost, added, doubled or swapped, and made-up ones. */
public final class Spoiler {
    private final RandomGenerator random;

    private Spoiler(RandomGenerator random) {
        this.random = random;
    }

    /** One with a new seed, which it prints. */
    public static Spoiler of(Class<?> test) {
        long seed = System.nanoTime();
        System.out.println(test.getSimpleName() + " seed " + seed);
        return new Spoiler(RandomGeneratorFactory.of("L64X128MixRandom").create(seed));
    }

    /** A spoilt reply; now and then it comes out as it was. */
    public byte[] spoilt(byte[] good, int longest) {
        byte[] bytes = good.clone();
        switch (random.nextInt(9)) {
            case 0 -> bytes[random.nextInt(bytes.length)] = (byte) random.nextInt();
            case 1 -> {
                for (int i = random.nextInt(5); i >= 0; i--) {
                    bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
                }
            }
            case 2 -> bytes = Arrays.copyOf(bytes, random.nextInt(bytes.length + 10));
            case 3 -> random.nextBytes(bytes);
            case 4 -> {
                bytes = new byte[random.nextInt(longest)];
                random.nextBytes(bytes);
            }
            case 5 -> bytes = with(bytes, random.nextInt(bytes.length + 1), (byte) random.nextInt());
            case 6 -> bytes = without(bytes, random.nextInt(bytes.length));
            case 7 -> {
                int from = random.nextInt(bytes.length);
                int to = random.nextInt(bytes.length);
                byte kept = bytes[from];
                bytes[from] = bytes[to];
                bytes[to] = kept;
            }
            default -> { // printable ones, which a pattern may take
                for (int i = random.nextInt(3); i >= 0; i--) {
                    bytes[random.nextInt(bytes.length)] =
                            (byte) "0123456789+-.eE{}[]:,\"\\ *\r\n".charAt(random.nextInt(27));
                }
            }
        }
        return bytes;
    }

    private static byte[] with(byte[] bytes, int at, byte one) {
        byte[] more = Arrays.copyOf(bytes, bytes.length + 1);
        System.arraycopy(bytes, at, more, at + 1, bytes.length - at);
        more[at] = one;
        return more;
    }

    private static byte[] without(byte[] bytes, int at) {
        byte[] less = Arrays.copyOf(bytes, bytes.length - 1);
        System.arraycopy(bytes, at + 1, less, at, bytes.length - 1 - at);
        return less;
    }
}
