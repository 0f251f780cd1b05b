// Written so that even a very old Node can read it and say what is wrong.

/** Lowest Node that the tool-chain supports, as package.json's "engines" has it. */
export const lowestNode = [20, 19, 0];

/**
 * Whether this Node is too old, in words.
 * @param {string} version - "20.19.0"
 * @returns {string | undefined} one sentence for people, or nothing when it will do
 */
export function nodeProblem(version) {
  const found = version.split(".").map(Number);
  for (let i = 0; i < lowestNode.length; i++) {
    if (found[i] > lowestNode[i]) return undefined;
    if (found[i] < lowestNode[i])
      return (
        "Hornweave needs Node " +
        lowestNode.join(".") +
        " or newer, and this is Node " +
        version +
        ". Install a newer Node (Debian's nodejs package or nodejs.org) and run the same command again."
      );
  }
  return undefined;
}
