import { Choice } from "./choice.tsx";

/** As played or level-matched: how sounds that are compared stand to each other in loudness. */
export function LevelChoice(props: {
  readonly isMatched: boolean;
  readonly onMatch: (isMatched: boolean) => void;
  /** What is made equally loud. */
  readonly what?: "voicing" | "answer";
}) {
  const { isMatched, onMatch, what = "voicing" } = props;
  return (
    <Choice
      label="Level"
      options={[
        { value: "played", text: "As played", meaning: "Differences of weight are real." },
        {
          value: "matched",
          text: "Level-matched",
          meaning: `Every ${what} equally loud, so that louder does not win by being louder.`,
        },
      ]}
      value={isMatched ? "matched" : "played"}
      onChange={(value) => onMatch(value === "matched")}
    />
  );
}
