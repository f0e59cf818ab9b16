package org.taperwright.mechanics.properties.solve;

import java.util.Arrays;
import org.taperwright.mechanics.properties.mesh.SectionMesh;

/**
 * An order of a mesh's nodes that keeps neighbours close: corners by reverse Cuthill-McKee, each side's nodes with the
 * later of its two corners, each element's inner node with the earliest of its three.
 */
public final class NodeOrder {
    private NodeOrder() {}

    /** For each node, in the mesh's numbering, its rank. */
    public static int[] of(SectionMesh mesh) {
        int[] corner = cuthillMcKee(mesh);
        int[] owner = owners(mesh, corner);
        int[] begin = new int[mesh.corners() + 1];
        for (int rank : owner) {
            begin[rank + 1]++;
        }
        for (int r = 0; r < mesh.corners(); r++) {
            begin[r + 1] += begin[r];
        }
        int[] order = new int[mesh.nodes()];
        // inner nodes have the highest numbers and come first, corners the lowest and come last
        for (int node = mesh.nodes() - 1; node >= 0; node--) {
            order[node] = begin[owner[node]]++;
        }
        return order;
    }

    /** The rank of the corner with which each node goes. */
    private static int[] owners(SectionMesh mesh, int[] corner) {
        int[] owner = Arrays.copyOf(corner, mesh.nodes());
        for (int side = 0; side < mesh.sides(); side++) {
            int later = Math.max(corner[mesh.sideFrom(side)], corner[mesh.sideTo(side)]);
            owner[mesh.corners() + 2 * side] = later;
            owner[mesh.corners() + 2 * side + 1] = later;
        }
        for (int e = 0; e < mesh.elements(); e++) {
            int[] nodes = mesh.element(e);
            owner[nodes[9]] = Math.min(corner[nodes[0]], Math.min(corner[nodes[1]], corner[nodes[2]]));
        }
        return owner;
    }

    private static int[] cuthillMcKee(SectionMesh mesh) {
        int n = mesh.corners();
        int[] start = new int[n + 1];
        for (int side = 0; side < mesh.sides(); side++) {
            start[mesh.sideFrom(side) + 1]++;
            start[mesh.sideTo(side) + 1]++;
        }
        for (int i = 0; i < n; i++) {
            start[i + 1] += start[i];
        }
        int[] at = Arrays.copyOf(start, n);
        int[] neighbour = new int[start[n]];
        for (int side = 0; side < mesh.sides(); side++) {
            neighbour[at[mesh.sideFrom(side)]++] = mesh.sideTo(side);
            neighbour[at[mesh.sideTo(side)]++] = mesh.sideFrom(side);
        }
        int far = 0;
        int[] reached = new int[n];
        for (int sweep = 0; sweep < 3; sweep++) {
            Arrays.fill(reached, -1);
            far = breadthFirst(far, start, neighbour, reached);
        }
        for (int i = 0; i < n; i++) {
            reached[i] = n - 1 - reached[i];
        }
        return reached;
    }

    /** Ranks all corners by breadth-first search, smaller degree first; the last one reached. */
    private static int breadthFirst(int first, int[] start, int[] neighbour, int[] rank) {
        int n = rank.length;
        int[] queue = new int[n];
        queue[0] = first;
        rank[first] = 0;
        int tail = 1;
        for (int headAt = 0; headAt < tail; headAt++) {
            int node = queue[headAt];
            int from = tail;
            for (int k = start[node]; k < start[node + 1]; k++) {
                int other = neighbour[k];
                if (rank[other] < 0) {
                    rank[other] = 0;
                    queue[tail++] = other;
                }
            }
            sortByDegree(queue, from, tail, start);
            for (int i = from; i < tail; i++) {
                rank[queue[i]] = i;
            }
        }
        return queue[tail - 1];
    }

    private static void sortByDegree(int[] queue, int from, int to, int[] start) {
        for (int i = from + 1; i < to; i++) {
            int node = queue[i];
            int degree = start[node + 1] - start[node];
            int j = i;
            while (j > from && start[queue[j - 1] + 1] - start[queue[j - 1]] > degree) {
                queue[j] = queue[j - 1];
                j--;
            }
            queue[j] = node;
        }
    }
}
