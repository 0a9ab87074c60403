package footing.core.ground;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A figure, or why there is none. Expected trouble is a value here: something not measured, or a relation past its limits. */
public sealed interface Judged<T> {
    /** The figure; empty if there is none. */
    Optional<T> value();

    /** The same after a calculation that can't fail. */
    <R> Judged<R> map(Function<? super T, ? extends R> next);

    /** The same after a calculation that may end without a figure itself. */
    <R> Judged<R> then(Function<? super T, Judged<R>> next);

    static <T> Judged<T> of(T value) {
        return new Known<>(value);
    }

    static <T> Judged<T> lacks(String... needed) {
        return new Lacks<>(List.of(needed));
    }

    static <T> Judged<T> outside(String why) {
        return new Outside<>(why);
    }

    record Known<T>(T known) implements Judged<T> {
        @Override
        public Optional<T> value() {
            return Optional.of(known);
        }

        @Override
        public <R> Judged<R> map(Function<? super T, ? extends R> next) {
            return new Known<>(next.apply(known));
        }

        @Override
        public <R> Judged<R> then(Function<? super T, Judged<R>> next) {
            return next.apply(known);
        }
    }

    /**
     * Something was not measured.
     *
     * @param needed the keys of the case that would settle it
     */
    record Lacks<T>(List<String> needed) implements Judged<T> {
        public Lacks {
            needed = List.copyOf(needed);
            if (needed.isEmpty()) {
                throw new IllegalArgumentException("nothing lacks");
            }
        }

        @Override
        public Optional<T> value() {
            return Optional.empty();
        }

        @Override
        public <R> Judged<R> map(Function<? super T, ? extends R> next) {
            return new Lacks<>(needed);
        }

        @Override
        public <R> Judged<R> then(Function<? super T, Judged<R>> next) {
            return new Lacks<>(needed);
        }
    }

    /** The relation does not hold here. */
    record Outside<T>(String why) implements Judged<T> {
        @Override
        public Optional<T> value() {
            return Optional.empty();
        }

        @Override
        public <R> Judged<R> map(Function<? super T, ? extends R> next) {
            return new Outside<>(why);
        }

        @Override
        public <R> Judged<R> then(Function<? super T, Judged<R>> next) {
            return new Outside<>(why);
        }
    }
}
