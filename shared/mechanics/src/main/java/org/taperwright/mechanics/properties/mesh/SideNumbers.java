package org.taperwright.mechanics.properties.mesh;

import java.util.Arrays;
import java.util.List;

/** Numbers the sides of triangles: each pair of neighbouring corners once. */
final class SideNumbers {
    private final int[] head;
    private int[] next = new int[128];
    private int[] from = new int[128];
    private int[] to = new int[128];
    private int count;

    SideNumbers(int corners, List<int[]> triangles) {
        head = new int[corners];
        Arrays.fill(head, -1);
        for (int[] corner : triangles) {
            for (int k = 0; k < 3; k++) {
                int a = corner[k];
                int b = corner[(k + 1) % 3];
                if (find(a, b) < 0) {
                    add(Math.min(a, b), Math.max(a, b));
                }
            }
        }
    }

    /** The number of the side between two corners, or -1. */
    int find(int a, int b) {
        int low = Math.min(a, b);
        int high = Math.max(a, b);
        int side = head[low];
        while (side >= 0 && to[side] != high) {
            side = next[side];
        }
        return side;
    }

    private void add(int low, int high) {
        if (count == next.length) {
            next = Arrays.copyOf(next, 2 * count);
            from = Arrays.copyOf(from, 2 * count);
            to = Arrays.copyOf(to, 2 * count);
        }
        from[count] = low;
        to[count] = high;
        next[count] = head[low];
        head[low] = count++;
    }

    int count() {
        return count;
    }

    int[] from() {
        return Arrays.copyOf(from, count);
    }

    int[] to() {
        return Arrays.copyOf(to, count);
    }
}
