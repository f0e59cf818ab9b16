package org.taperwright.library.store.tree;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

/** The tree held against the sorted map of the Java library, which does the same by changing itself. */
class SortedTreeProperties {
    private static SortedTree<Integer, String> tree(Map<Integer, String> values) {
        SortedTree<Integer, String> tree = SortedTree.empty(Comparator.naturalOrder());
        for (Map.Entry<Integer, String> each : values.entrySet()) {
            tree = tree.with(each.getKey(), each.getValue());
        }
        return tree;
    }

    @Property(tries = 500)
    void itDoesWhatASortedMapDoes(@ForAll @Size(max = 300) List<@IntRange(min = -60, max = 60) Integer> steps) {
        SortedTree<Integer, String> tree = SortedTree.empty(Comparator.naturalOrder());
        Map<Integer, String> map = new TreeMap<>();
        for (int i = 0; i < steps.size(); i++) {
            int key = Math.abs(steps.get(i));
            SortedTree<Integer, String> before = tree;
            Map<Integer, String> was = Map.copyOf(map);
            if (steps.get(i) < 0) {
                tree = tree.without(key);
                map.remove(key);
            } else {
                tree = tree.with(key, "v" + i);
                map.put(key, "v" + i);
            }
            assertThat(tree.sound()).isTrue();
            assertThat(before.asMap(Integer.class)).as("the older one stays").isEqualTo(was);
        }
        assertThat(tree.asMap(Integer.class)).isEqualTo(map);
        assertThat(tree.values()).containsExactlyElementsOf(map.values());
        for (int i = 0; i < map.size(); i++) {
            assertThat(tree.values().get(i)).isEqualTo(new ArrayList<>(map.values()).get(i));
        }
    }

    @Property(tries = 500)
    void theDifferenceOfTwoTreesIsWhatDiffers(
            @ForAll @Size(max = 80) Map<@IntRange(max = 100) Integer, @IntRange(max = 3) Integer> one,
            @ForAll @Size(max = 80) Map<@IntRange(max = 100) Integer, @IntRange(max = 3) Integer> other) {
        Map<Integer, String> before = new TreeMap<>();
        one.forEach((key, value) -> before.put(key, "value " + value));
        Map<Integer, String> after = new TreeMap<>();
        other.forEach((key, value) -> after.put(key, "value " + value));
        List<String> told = new ArrayList<>();
        tree(after).since(tree(before), new SortedTree.Differences<>() {
            @Override
            public void added(String value) {
                told.add("+" + value);
            }

            @Override
            public void changed(String was, String is) {
                if (!was.equals(is)) {
                    told.add(was + ">" + is);
                }
            }

            @Override
            public void removed(String value) {
                told.add("-" + value);
            }
        });
        List<String> expected = new ArrayList<>();
        for (int key = 0; key <= 100; key++) {
            String was = before.getOrDefault(key, "");
            String is = after.getOrDefault(key, "");
            if (!was.equals(is)) {
                expected.add(was.isEmpty() ? "+" + is : is.isEmpty() ? "-" + was : was + ">" + is);
            }
        }
        assertThat(told).containsExactlyElementsOf(expected);
    }

    @Property(tries = 200)
    void aTreeOfASortedListHoldsTheList(@ForAll @IntRange(max = 500) int size) {
        List<Integer> values = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            values.add(i * 2);
        }
        SortedTree<Integer, Integer> tree = SortedTree.ofSorted(Comparator.naturalOrder(), values, value -> value);
        assertThat(tree.sound()).isTrue();
        assertThat(tree.values()).isEqualTo(values);
        assertThat(tree.get(1)).isEmpty();
    }

    @Example
    void viewsCannotBeChanged() {
        SortedTree<Integer, String> tree = tree(Map.of(1, "one"));
        assertThatThrownBy(() -> tree.values().add("two")).isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> tree.asMap(Integer.class).put(2, "two"))
                .isInstanceOf(UnsupportedOperationException.class);
        assertThatThrownBy(() -> tree.asMap(Integer.class).clear()).isInstanceOf(UnsupportedOperationException.class);
        assertThat(tree.asMap(Integer.class).containsKey("no number")).isFalse();
        assertThatThrownBy(() -> tree.values().get(1)).isInstanceOf(IndexOutOfBoundsException.class);
    }
}
