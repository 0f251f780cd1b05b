/** A label that would like to stand at a height. */
export interface LabelWish {
  /** Where its middle would best be. */
  readonly y: number;
  readonly height: number;
}

interface Cluster {
  readonly first: number;
  readonly count: number;
  readonly height: number;
  readonly middle: number;
  /** Sum of the middles that would suit each member best, seen from the cluster's top. */
  readonly pull: number;
}

/**
 * Moves labels apart so that none lies on another, each as near to its wish as the others allow.
 * Labels that touch are centred together on the mean of their wishes.
 * @param wishes - ascending by y
 * @param gap - least space between two labels
 * @param top - no label reaches above this
 * @returns the middle of each label, in the order given
 */
export function spreadLabels(
  wishes: readonly LabelWish[],
  gap: number,
  top = -Infinity,
): readonly number[] {
  const clusters: Cluster[] = [];
  wishes.forEach((wish, index) => {
    let cluster = clusterOf(wish, index);
    for (
      let above = clusters.at(-1);
      above && touches(above, cluster, gap);
      above = clusters.at(-1)
    ) {
      clusters.pop();
      cluster = merged(above, cluster, gap);
    }
    clusters.push(cluster);
  });
  let free = top;
  return clusters
    .flatMap((cluster) => middles(cluster, wishes, gap))
    .map((middle, index) => {
      const half = (wishes[index]?.height ?? 0) / 2;
      const y = Math.max(middle, free + half);
      free = y + half + gap;
      return y;
    });
}

function clusterOf(wish: LabelWish, index: number): Cluster {
  const { y, height } = wish;
  return { first: index, count: 1, height, middle: y, pull: y - height / 2 };
}

function touches(above: Cluster, below: Cluster, gap: number): boolean {
  return above.middle + above.height / 2 + gap > below.middle - below.height / 2;
}

function merged(above: Cluster, below: Cluster, gap: number): Cluster {
  const height = above.height + gap + below.height;
  const count = above.count + below.count;
  const pull = above.pull + below.pull - below.count * (above.height + gap);
  return { first: above.first, count, height, pull, middle: pull / count + height / 2 };
}

function middles(cluster: Cluster, wishes: readonly LabelWish[], gap: number): readonly number[] {
  let top = cluster.middle - cluster.height / 2;
  return wishes.slice(cluster.first, cluster.first + cluster.count).map(({ height }) => {
    const middle = top + height / 2;
    top += height + gap;
    return middle;
  });
}
