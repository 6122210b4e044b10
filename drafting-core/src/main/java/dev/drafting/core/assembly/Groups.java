package dev.drafting.core.assembly;

/** Things by number, some of which are found to be the same. */
final class Groups {
  private final int[] parent;

  Groups(int size) {
    parent = new int[size];
    for (int i = 0; i < size; i++) {
      parent[i] = i;
    }
  }

  private int find(int i) {
    int root = i;
    while (parent[root] != root) {
      parent[root] = parent[parent[root]];
      root = parent[root];
    }
    return root;
  }

  void join(int a, int b) {
    parent[find(a)] = find(b);
  }

  boolean together(int a, int b) {
    return find(a) == find(b);
  }

  int count() {
    int roots = 0;
    for (int i = 0; i < parent.length; i++) {
      if (parent[i] == i) {
        roots++;
      }
    }
    return roots;
  }
}
