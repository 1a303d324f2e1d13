// SPDX-License-Identifier: Apache-2.0
package isohume.device.http;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.http.HttpResponse.BodySubscriber;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.Flow;
import org.jspecify.annotations.Nullable;

/** Collects a body of a bounded length. */
final class Bounded implements BodySubscriber<byte[]> {
    private final int most;
    private final ByteArrayOutputStream body = new ByteArrayOutputStream();
    private final CompletableFuture<byte[]> whole = new CompletableFuture<>();
    private Flow.@Nullable Subscription subscription;

    Bounded(int most) {
        this.most = most;
    }

    @Override
    public CompletionStage<byte[]> getBody() {
        return whole;
    }

    @Override
    public void onSubscribe(Flow.Subscription given) {
        subscription = given;
        given.request(Long.MAX_VALUE);
    }

    @Override
    public void onNext(List<ByteBuffer> items) {
        for (ByteBuffer item : items) {
            byte[] bytes = new byte[item.remaining()];
            item.get(bytes);
            if (body.size() <= most) {
                body.writeBytes(bytes);
            }
        }
        if (body.size() > most && subscription != null) {
            subscription.cancel();
            whole.completeExceptionally(new IOException("parsing was given up after " + most + " bytes"));
        }
    }

    @Override
    public void onError(Throwable trouble) {
        whole.completeExceptionally(trouble);
    }

    @Override
    public void onComplete() {
        whole.complete(body.toByteArray());
    }
}
