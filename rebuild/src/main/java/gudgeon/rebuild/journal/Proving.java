package gudgeon.rebuild.journal;

import java.util.List;

/** What was read and done to prove the engine, start it and run it in. */
public sealed interface Proving extends Fact {
    /** What entries about true top dead centre are about. */
    String TOP_DEAD_CENTRE = "top dead centre";
    /** What entries about the spark's timing are about. */
    String IGNITION = "ignition";
    /** What entries about the first start are about. */
    String FIRST_START = "first start";
    /** What entries about running in are about. */
    String RUNNING_IN = "running in";

    /**
     * The piston touched a stop put in its way, the crank turned either way.
     *
     * @param forwardDeg what the degree disc read turning forward, in degrees in [0, 360)
     * @param backwardDeg the same turning backward
     */
    record StopTouched(double forwardDeg, double backwardDeg, String remark) implements Proving {
        @Override
        public String about() {
            return TOP_DEAD_CENTRE;
        }
    }

    /**
     * At which crank angles a valve, or its lobe, stood at a lift.
     *
     * @param valve the valve's id in the book
     * @param lift the lift with its unit: "1.0 mm"
     * @param opening where it reached that lift opening, as manuals write it: "12 btdc"
     * @param closing where it came back to it closing: "45 abdc"
     */
    record LobeRead(String valve, String lift, String opening, String closing, String remark) implements Proving {
        @Override
        public String about() {
            return valve;
        }
    }

    /**
     * A size of the ignition was read.
     *
     * @param value with its unit: "25 btdc", "2.5 mm btdc", "0.35 mm", "180°"
     */
    record IgnitionRead(IgnitionSize what, String value, String remark) implements Proving {
        @Override
        public String about() {
            return IGNITION;
        }
    }

    /**
     * A point of the list before the first start was looked at, one that is no check of the book.
     *
     * @param item its id on the list
     * @param good whether it is as it should be
     */
    record StartItemSeen(String item, boolean good, String remark) implements Proving {
        @Override
        public String about() {
            return FIRST_START;
        }
    }

    /**
     * The list before the first start was signed.
     *
     * @param by who signed
     * @param open what was still open, each in words
     * @param reason why it is started all the same; empty where nothing was open
     */
    record StartSigned(String by, List<String> open, String reason) implements Proving {
        public StartSigned {
            open = List.copyOf(open);
        }

        @Override
        public String about() {
            return FIRST_START;
        }
    }

    /**
     * The engine ran.
     *
     * @param stage the stage of running in, by its id
     * @param minutes how long, from 1
     * @param cooled whether it was let go cold after it
     * @param found what was found; may be empty
     */
    record RanIn(String stage, int minutes, boolean cooled, String found) implements Proving {
        @Override
        public String about() {
            return RUNNING_IN;
        }
    }

    /**
     * A fluid was let out and filled anew.
     *
     * @param fluid the fluid's id in the book
     * @param found what was found in it; may be empty
     */
    record FluidChanged(String fluid, String found) implements Proving {
        @Override
        public String about() {
            return fluid;
        }
    }
}
