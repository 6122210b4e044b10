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

  /** The number of the group: the same for all its members until two groups are joined. */
  int group(int i) {
    int root = i;
    while (parent[root] != root) {
      parent[root] = parent[parent[root]];
      root = parent[root];
    }
    return root;
  }

  void join(int a, int b) {
    parent[group(a)] = group(b);
  }

  boolean together(int a, int b) {
    return group(a) == group(b);
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
