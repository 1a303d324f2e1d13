// SPDX-License-Identifier: Apache-2.0
package isohume.simulator;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** HTTP/1.1: {@code GET /11.json} is the document of the instrument with unit 11 (RFC 9112, 2 to 6). */
final class HttpSpeech implements Speech {
    private static final Pattern GET = Pattern.compile("GET /([0-9]{1,3})\\.json HTTP/1\\.1");

    private final JsonDocument documents;

    HttpSpeech(JsonDocument documents) {
        this.documents = documents;
    }

    @Override
    public Request next(InputStream in) throws IOException {
        Matcher get = GET.matcher(TextSpeech.line(in));
        boolean head = true;
        while (head) {
            head = !TextSpeech.line(in).isEmpty();
        }
        return new Asked(get.matches() ? Integer.parseInt(get.group(1)) : 0);
    }

    private static byte[] response(String status, byte[] body) {
        String head = "HTTP/1.1 " + status + "\r\nContent-Type: application/json\r\nContent-Length: " + body.length
                + "\r\n\r\n";
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.writeBytes(head.getBytes(StandardCharsets.US_ASCII));
        bytes.writeBytes(body);
        return bytes.toByteArray();
    }

    private final class Asked implements Request {
        private final int unit;

        Asked(int unit) {
            this.unit = unit;
        }

        @Override
        public int unit() {
            return unit;
        }

        @Override
        public byte[] answer() {
            return documents.isThere(unit)
                    ? response("200 OK", documents.of(unit, unit))
                    : response("404 Not Found", new byte[0]);
        }

        @Override
        public byte[] refusal() {
            return response("503 Service Unavailable", new byte[0]);
        }

        /** A brace is missing, and the length is right. */
        @Override
        public byte[] garbled(byte[] answer) {
            byte[] other = answer.clone();
            other[other.length - 1] = ' ';
            return other;
        }

        @Override
        public byte[] foreign(byte[] answer) {
            return response("200 OK", documents.of(unit, unit + 1));
        }
    }
}
