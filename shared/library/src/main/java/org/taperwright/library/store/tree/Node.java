package org.taperwright.library.store.tree;

import org.jspecify.annotations.Nullable;

/**
 * A node of a weight-balanced tree: neither side is over three times as heavy as the other, the weight being the number of
 * nodes and one. Rotations with the parameters (3, 2), which keep that so after every insertion and deletion (Y. Hirai and
 * K. Yamamoto, "Balancing weight-balanced trees", J. Functional Programming 21 (2011) 287-307); joining and splitting
 * after S. Adams, "Efficient sets: a balancing act", J. Functional Programming 3 (1993) 553-561.
 */
record Node<K, V>(
        K key,
        V value,
        int size,
        @Nullable Node<K, V> left,
        @Nullable Node<K, V> right) {
    private static final int DELTA = 3;
    private static final int GAMMA = 2;

    static int size(@Nullable Node<?, ?> node) {
        return node == null ? 0 : node.size;
    }

    private static long weight(@Nullable Node<?, ?> node) {
        return size(node) + 1L;
    }

    private static <K, V> Node<K, V> of(K key, V value, @Nullable Node<K, V> left, @Nullable Node<K, V> right) {
        return new Node<>(key, value, size(left) + size(right) + 1, left, right);
    }

    /** A tree of one. */
    static <K, V> Node<K, V> single(K key, V value) {
        return new Node<>(key, value, 1, null, null);
    }

    /** A tree of two sides of which one was changed by one node. */
    static <K, V> Node<K, V> balanced(K key, V value, @Nullable Node<K, V> left, @Nullable Node<K, V> right) {
        if (right != null && DELTA * weight(left) < weight(right)) {
            return leaningRight(key, value, left, right);
        }
        if (left != null && DELTA * weight(right) < weight(left)) {
            return leaningLeft(key, value, left, right);
        }
        return of(key, value, left, right);
    }

    private static <K, V> Node<K, V> leaningRight(K key, V value, @Nullable Node<K, V> left, Node<K, V> right) {
        Node<K, V> inner = right.left;
        if (inner == null || weight(inner) < GAMMA * weight(right.right)) {
            return of(right.key, right.value, of(key, value, left, inner), right.right);
        }
        return of(
                inner.key,
                inner.value,
                of(key, value, left, inner.left),
                of(right.key, right.value, inner.right, right.right));
    }

    private static <K, V> Node<K, V> leaningLeft(K key, V value, Node<K, V> left, @Nullable Node<K, V> right) {
        Node<K, V> inner = left.right;
        if (inner == null || weight(inner) < GAMMA * weight(left.left)) {
            return of(left.key, left.value, left.left, of(key, value, inner, right));
        }
        return of(
                inner.key,
                inner.value,
                of(left.key, left.value, left.left, inner.left),
                of(key, value, inner.right, right));
    }

    /** Joins two trees of any size, all keys of the one before a key and all of the other after it. */
    static <K, V> Node<K, V> joined(K key, V value, @Nullable Node<K, V> left, @Nullable Node<K, V> right) {
        if (right != null && DELTA * weight(left) < weight(right)) {
            return balanced(right.key, right.value, joined(key, value, left, right.left), right.right);
        }
        if (left != null && DELTA * weight(right) < weight(left)) {
            return balanced(left.key, left.value, left.left, joined(key, value, left.right, right));
        }
        return of(key, value, left, right);
    }

    /** Joins two trees, all keys of the one before all of the other. */
    static <K, V> @Nullable Node<K, V> glued(@Nullable Node<K, V> left, @Nullable Node<K, V> right) {
        if (left == null) {
            return right;
        }
        if (right == null) {
            return left;
        }
        if (left.size > right.size) {
            Node<K, V> last = left.last();
            return balanced(last.key, last.value, left.withoutLast(), right);
        }
        Node<K, V> first = right.first();
        return balanced(first.key, first.value, left, right.withoutFirst());
    }

    private Node<K, V> first() {
        Node<K, V> node = this;
        for (Node<K, V> next = node.left; next != null; next = node.left) {
            node = next;
        }
        return node;
    }

    private Node<K, V> last() {
        Node<K, V> node = this;
        for (Node<K, V> next = node.right; next != null; next = node.right) {
            node = next;
        }
        return node;
    }

    private @Nullable Node<K, V> withoutFirst() {
        return left == null ? right : balanced(key, value, left.withoutFirst(), right);
    }

    private @Nullable Node<K, V> withoutLast() {
        return right == null ? left : balanced(key, value, left, right.withoutLast());
    }

    /** Whether every node's weight and size are as they must be. */
    boolean sound() {
        boolean even = DELTA * weight(left) >= weight(right) && DELTA * weight(right) >= weight(left);
        return size == size(left) + size(right) + 1
                && (even || size <= 2)
                && (left == null || left.sound())
                && (right == null || right.sound());
    }
}
