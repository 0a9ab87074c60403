package footing.io.proposal;

import java.util.List;

/** What to have in writing before an order. Common practice, no source. */
final class InWriting {
    static final List<String> OF_THE_MAKER = List.of(
            "Do these wheels fit this machine, by bolt pattern, seat and offset, with the deck and the fenders as they"
                    + " are?",
            "Load and speed each wheel is rated for, against the machine's weight with operator and its top speed.",
            "Does the machine's warranty stand with them on it, axles, forks and wheel motors included?",
            "What their own warranty covers, for how many hours or months, and what is paid in the second half of"
                    + " them.",
            "Lug torque, deck height and pitch with these wheels, as the operator's manual or a supplement to it says.",
            "Price each, for how long it holds, delivery, what taking the old ones back brings.",
            "What they add when the machine is traded, and on what condition.");

    static final List<String> OF_THE_LENDER = List.of(
            "Can the wheels be financed with the machine, at the same rate and over the same months?",
            "The rate a year with every fee in it, the payment, the date of the first and of the last.",
            "What a cash buyer would get off: a rate of nothing is often paid for by a discount forgone.",
            "What paying it off early costs, for instance at the trade.");

    private InWriting() {}
}
