package footing.web.answer;

import footing.core.answer.Workers;

/** Lets first answers go before refinements: while one is being worked out, refinements wait between two tasks. */
final class Gate {
    private int first;

    synchronized void enter() {
        first++;
    }

    synchronized void leave() {
        first--;
        notifyAll();
    }

    private synchronized void pass() {
        while (first > 0) {
            try {
                wait();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return;
            }
        }
    }

    /** Workers that give way. */
    Workers givingWay(Workers workers) {
        return (tasks, task) -> workers.all(tasks, i -> {
            pass();
            task.accept(i);
        });
    }
}
