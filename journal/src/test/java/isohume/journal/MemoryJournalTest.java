// SPDX-License-Identifier: Apache-2.0
package isohume.journal;

final class MemoryJournalTest extends JournalContract {
    @Override
    Journal begin() {
        return new MemoryJournal(this::now);
    }
}
