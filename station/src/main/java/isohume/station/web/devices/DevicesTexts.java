// SPDX-License-Identifier: Apache-2.0
package isohume.station.web.devices;

import io.quarkus.qute.i18n.Message;
import io.quarkus.qute.i18n.MessageBundle;
import isohume.station.trial.Tryout;

/** Texts of devices and their trials. */
@MessageBundle("devices")
interface DevicesTexts {
    @Message("Devices")
    String title();

    @Message(
            "Try whether a device answers, how fast and how finely, and what is wrong if it does not. It is only read.")
    String lead();

    @Message("No device can be tried here.")
    String impossible();

    @Message("Devices of the bench")
    String of_bench();

    @Message("No bench is connected; start the program with the plan of one (serve --plan) to see its devices here.")
    String no_bench();

    @Message(
            "The run {run} is at work. Its devices are not asked anything else meanwhile; a trial shows what the run reads.")
    String run_at_work(String run);

    @Message("Device")
    String device();

    @Message("Where")
    String place();

    @Message("Channels")
    String channels();

    @Message("Trial")
    String trial();

    @Message("Try")
    String go();

    @Message("Try {device}")
    String go_with(String device);

    @Message("Another device")
    String another();

    @Message("Begin with an example of")
    String example();

    @Message("Show it")
    String show();

    @Message("Description")
    String description();

    @Message(
            "Write your device's address and channels into it. What each line means is said in the document on connecting"
                    + " an instrument.")
    String description_what();

    @Message("This program listens to other machines too, so no addresses can be given on this page. Use"
            + " isohume device try on its own machine.")
    String no_pasting();

    @Message("For how long")
    String how_long();

    @Message("Trials so far")
    String trials();

    @Message("Begun")
    String begun();

    @Message("State")
    String state();

    @Message("Reads")
    String reads();

    @Message("Found")
    String found_count();

    @Message("{#if count == 1}1 thing to look at{#else if count > 1}{count} things to look at{#else}nothing wrong{/if}")
    String things(int count);

    @Message(
            "{#when state}{#is AT_WORK}at work{#is OVER}over{#is STOPPED}stopped{#is GAVE_WAY}gave way to a run{/when}")
    String state_word(Tryout.State state);

    @Message("At work since {begun}, until {until} at the latest.")
    String at_work(String begun, String until);

    @Message("Over. It began at {begun}.")
    String over(String begun);

    @Message("Stopped. It began at {begun}.")
    String stopped(String begun);

    @Message("A run began and needed the line, so this trial let go of it. Try again to see what the run reads.")
    String gave_way();

    @Message("Read by run {run}; nothing else is asked of the device. How long a read takes is not known here.")
    String along(String run);

    @Message("Stop")
    String stop();

    @Message("All devices")
    String all();

    @Message(
            "{#if reads == 1}1 read, which took {longest}{#else}{reads} reads; half of them took {median} at most, the longest"
                    + " {longest}{/if}")
    String pace(int reads, String median, String longest);

    @Message("{#if reads == 1}1 read{#else}{reads} reads{/if}")
    String count(int reads);

    @Message("Nothing was read yet.")
    String nothing_yet();

    @Message("Channel")
    String channel();

    @Message("Last shown")
    String shown();

    @Message("As it came")
    String raw();

    @Message("Values")
    String values();

    @Message("Nothing")
    String absent();

    @Message("Smallest step")
    String step();

    @Message("Changes every")
    String every();

    @Message("What was found")
    String found();

    @Message("Nothing is wrong.")
    String fine();

    @Message("What went over the line")
    String bytes();

    @Message("> went there, < came. A description can replay these lines.")
    String bytes_what();

    @Message("{count} earlier lines are not kept.")
    String left_out(long count);

    @Message("Nothing has been heard yet.")
    String silent();

    @Message("No connection to the program. The figures are old.")
    String lost();
}
