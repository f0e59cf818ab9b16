package org.taperwright.library.store.tree;

import java.util.AbstractList;
import java.util.AbstractMap;
import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.RandomAccess;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * An immutable map sorted by its keys. A changed copy costs the logarithm of its size, and shares the rest.
 *
 * @param <K> keys
 * @param <V> values
 */
public final class SortedTree<K, V> {
    private final Comparator<? super K> order;
    private final @Nullable Node<K, V> root;

    private SortedTree(Comparator<? super K> order, @Nullable Node<K, V> root) {
        this.order = order;
        this.root = root;
    }

    /** An empty tree. */
    public static <K, V> SortedTree<K, V> empty(Comparator<? super K> order) {
        return new SortedTree<>(order, null);
    }

    /** A tree of values that are sorted by their keys, no key twice. */
    public static <K, V> SortedTree<K, V> ofSorted(
            Comparator<? super K> order, List<V> values, Function<? super V, K> key) {
        return new SortedTree<>(order, ofSorted(values, key, 0, values.size()));
    }

    private static <K, V> @Nullable Node<K, V> ofSorted(
            List<V> values, Function<? super V, K> key, int begin, int end) {
        if (begin == end) {
            return null;
        }
        int middle = (begin + end) >>> 1;
        V value = values.get(middle);
        return Node.joined(
                key.apply(value), value, ofSorted(values, key, begin, middle), ofSorted(values, key, middle + 1, end));
    }

    /** How many. */
    public int size() {
        return Node.size(root);
    }

    /** The value of a key. */
    public Optional<V> get(K key) {
        Node<K, V> node = root;
        while (node != null) {
            int side = order.compare(key, node.key());
            if (side == 0) {
                return Optional.of(node.value());
            }
            node = side < 0 ? node.left() : node.right();
        }
        return Optional.empty();
    }

    /** With a value for a key, in the place of any other. */
    public SortedTree<K, V> with(K key, V value) {
        return new SortedTree<>(order, with(root, key, value));
    }

    private Node<K, V> with(@Nullable Node<K, V> node, K key, V value) {
        if (node == null) {
            return Node.single(key, value);
        }
        int side = order.compare(key, node.key());
        if (side == 0) {
            return new Node<>(key, value, node.size(), node.left(), node.right());
        }
        return side < 0
                ? Node.balanced(node.key(), node.value(), with(node.left(), key, value), node.right())
                : Node.balanced(node.key(), node.value(), node.left(), with(node.right(), key, value));
    }

    /** Without a key. */
    public SortedTree<K, V> without(K key) {
        return get(key).isEmpty() ? this : new SortedTree<>(order, without(root, key));
    }

    private @Nullable Node<K, V> without(@Nullable Node<K, V> node, K key) {
        if (node == null) {
            return null;
        }
        int side = order.compare(key, node.key());
        if (side == 0) {
            return Node.glued(node.left(), node.right());
        }
        return side < 0
                ? Node.balanced(node.key(), node.value(), without(node.left(), key), node.right())
                : Node.balanced(node.key(), node.value(), node.left(), without(node.right(), key));
    }

    /** Receives what differs between two trees. */
    public interface Differences<V> {
        /** A value whose key the older tree lacks. */
        void added(V value);

        /** Another value for the same key. */
        void changed(V before, V after);

        /** A value whose key the newer tree lacks. */
        void removed(V value);
    }

    /** Tells what differs from an older tree of the same order, by key; what both share costs nothing. */
    public void since(SortedTree<K, V> older, Differences<V> told) {
        compare(older.root, root, told);
    }

    private void compare(@Nullable Node<K, V> before, @Nullable Node<K, V> after, Differences<V> told) {
        if (before == after) {
            return;
        }
        if (before == null) {
            each(after, told::added);
            return;
        }
        Parts<K, V> parts = split(after, before.key());
        compare(before.left(), parts.before, told);
        if (parts.at.isEmpty()) {
            told.removed(before.value());
        } else if (parts.at.get() != before.value()) {
            told.changed(before.value(), parts.at.get());
        }
        compare(before.right(), parts.after, told);
    }

    private static <K, V> void each(@Nullable Node<K, V> node, java.util.function.Consumer<V> told) {
        if (node != null) {
            each(node.left(), told);
            told.accept(node.value());
            each(node.right(), told);
        }
    }

    private record Parts<K, V>(
            @Nullable Node<K, V> before,
            Optional<V> at,
            @Nullable Node<K, V> after) {}

    private Parts<K, V> split(@Nullable Node<K, V> node, K key) {
        if (node == null) {
            return new Parts<>(null, Optional.empty(), null);
        }
        int side = order.compare(key, node.key());
        if (side == 0) {
            return new Parts<>(node.left(), Optional.of(node.value()), node.right());
        }
        if (side < 0) {
            Parts<K, V> parts = split(node.left(), key);
            return new Parts<>(
                    parts.before, parts.at, Node.joined(node.key(), node.value(), parts.after, node.right()));
        }
        Parts<K, V> parts = split(node.right(), key);
        return new Parts<>(Node.joined(node.key(), node.value(), node.left(), parts.before), parts.at, parts.after);
    }

    /** The values in the order of their keys, by index in logarithmic time; never changes. */
    public List<V> values() {
        return new Values<>(root);
    }

    /** As a map that never changes. */
    public Map<K, V> asMap(Class<K> type) {
        return new View<>(this, type);
    }

    /** Whether the tree is balanced, for tests. */
    boolean sound() {
        return root == null || root.sound();
    }

    private static final class Walk<K, V> implements Iterator<Node<K, V>> {
        private final Deque<Node<K, V>> path = new ArrayDeque<>();

        private Walk(@Nullable Node<K, V> root) {
            descend(root);
        }

        private void descend(@Nullable Node<K, V> from) {
            for (Node<K, V> node = from; node != null; node = node.left()) {
                path.push(node);
            }
        }

        @Override
        public boolean hasNext() {
            return !path.isEmpty();
        }

        @Override
        public Node<K, V> next() {
            if (path.isEmpty()) {
                throw new NoSuchElementException();
            }
            Node<K, V> node = path.pop();
            descend(node.right());
            return node;
        }
    }

    private static final class Values<K, V> extends AbstractList<V> implements RandomAccess {
        private final @Nullable Node<K, V> root;

        private Values(@Nullable Node<K, V> root) {
            this.root = root;
        }

        @Override
        public V get(int index) {
            int left = index;
            Node<K, V> node = root;
            while (node != null && left >= 0) {
                int before = Node.size(node.left());
                if (left == before) {
                    return node.value();
                }
                node = left < before ? node.left() : node.right();
                left = left < before ? left : left - before - 1;
            }
            throw new IndexOutOfBoundsException(index);
        }

        @Override
        public int size() {
            return Node.size(root);
        }

        @Override
        public Iterator<V> iterator() {
            Walk<K, V> walk = new Walk<>(root);
            return new Iterator<>() {
                @Override
                public boolean hasNext() {
                    return walk.hasNext();
                }

                @Override
                public V next() {
                    return walk.next().value();
                }
            };
        }
    }

    private static final class View<K, V> extends AbstractMap<K, V> {
        private final SortedTree<K, V> tree;
        private final Class<K> type;

        private View(SortedTree<K, V> tree, Class<K> type) {
            this.tree = tree;
            this.type = type;
        }

        @Override
        public @Nullable V get(Object key) {
            return type.isInstance(key) ? tree.get(type.cast(key)).orElse(null) : null;
        }

        @Override
        public boolean containsKey(Object key) {
            return get(key) != null;
        }

        @Override
        public int size() {
            return tree.size();
        }

        @Override
        public Set<Entry<K, V>> entrySet() {
            return new java.util.AbstractSet<>() {
                @Override
                public int size() {
                    return tree.size();
                }

                @Override
                public Iterator<Entry<K, V>> iterator() {
                    Walk<K, V> walk = new Walk<>(tree.root);
                    return new Iterator<>() {
                        @Override
                        public boolean hasNext() {
                            return walk.hasNext();
                        }

                        @Override
                        public Entry<K, V> next() {
                            Node<K, V> node = walk.next();
                            return Map.entry(node.key(), node.value());
                        }
                    };
                }
            };
        }
    }
}
