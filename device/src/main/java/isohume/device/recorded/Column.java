// SPDX-License-Identifier: Apache-2.0
package isohume.device.recorded;

import isohume.device.Channel;
import isohume.device.Unit;
import isohume.quantity.Quantity;

/** One column of a file, by its heading. */
sealed interface Column {
    /** What is said of the row itself. */
    enum Mark implements Column {
        TIME("time"),
        POINT("point"),
        DEPOSIT("deposit");

        private final String heading;

        Mark(String heading) {
            this.heading = heading;
        }

        @Override
        public String heading() {
            return heading;
        }
    }

    /** A reference condition; a cell must not be empty. */
    enum Reference {
        DEW_POINT("dew_point", Quantity.DEW_POINT),
        TEMPERATURE("temperature", Quantity.TEMPERATURE),
        PRESSURE("pressure", Quantity.PRESSURE),
        MIRROR_PRESSURE("mirror_pressure", Quantity.PRESSURE);

        private final String heading;
        private final Quantity quantity;

        Reference(String heading, Quantity quantity) {
            this.heading = heading;
            this.quantity = quantity;
        }

        String heading() {
            return heading;
        }

        Quantity quantity() {
            return quantity;
        }
    }

    /** A column of numbers. */
    sealed interface Numbers extends Column {
        Quantity quantity();

        Unit unit();

        /** Whether an empty cell is a gap and not an error. */
        boolean mayBeEmpty();
    }

    /** A reference's numbers. */
    record Of(Reference reference, Unit unit) implements Numbers {
        @Override
        public String heading() {
            return reference.heading();
        }

        @Override
        public Quantity quantity() {
            return reference.quantity();
        }

        @Override
        public boolean mayBeEmpty() {
            return false;
        }
    }

    /** What an instrument under test showed. */
    record Shown(Channel channel, Unit unit) implements Numbers {
        @Override
        public String heading() {
            return channel.id();
        }

        @Override
        public Quantity quantity() {
            return channel.quantity();
        }

        @Override
        public boolean mayBeEmpty() {
            return true;
        }
    }

    /**
     * What a channel had still to change, or its standard uncertainty; in the unit of a difference, the same in every
     * line of a point.
     */
    record ToCome(Channel channel, Part part) implements Column {
        /** Which of the two. */
        enum Part {
            VALUE("to_come"),
            UNCERTAINTY("u_to_come");

            private final String word;

            Part(String word) {
                this.word = word;
            }

            String word() {
                return word;
            }
        }

        @Override
        public String heading() {
            return channel.id() + ":" + part.word();
        }
    }

    /** The heading without its unit. */
    String heading();
}
