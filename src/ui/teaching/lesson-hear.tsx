import type { Idea } from "../../explore/index.ts";
import { headphoneCaution } from "../actions/caution.ts";
import { stopSound } from "../actions/hear.ts";
import { useSound } from "../actions/sound-state.ts";
import { Choice } from "../parts/choice.tsx";
import { WarnSign } from "../parts/warn-sign.tsx";
import { hearTextures, isLevelMatched, useNowSounding, type NamedTexture } from "./hear-texture.ts";
import { matchIdea } from "./teaching-moves.ts";
import { useTeaching } from "./teaching-store.ts";
import { useIsRoom } from "./use-room.ts";

/** Ways to hear a pair: one, the other, both in turn. */
export function HearPair(props: {
  readonly first: NamedTexture;
  readonly second: NamedTexture;
  readonly isMatched: boolean;
  /** Whether each can be heard alone here. */
  readonly hasEach?: boolean;
  readonly bothRef?: React.Ref<HTMLButtonElement>;
}) {
  const { first, second, isMatched, hasEach = true, bothRef } = props;
  const turn = useNowSounding();
  const isSilent = useSound((state) => state.blocked !== null);
  const way = isSilent ? "teach-way way-silent" : "teach-way";
  return (
    <div className="teach-ways" role="group" aria-label="Hear">
      {(hasEach ? [first, second] : []).map((one) => (
        <button
          key={one.name}
          type="button"
          className={way}
          data-last={turn === one.name}
          onClick={() => hearTextures([one], isMatched)}
        >
          {one.name}
        </button>
      ))}
      <button
        type="button"
        className={way}
        ref={bothRef}
        onClick={() => hearTextures([first, second], isMatched)}
      >
        {first.name}, then {isLetter(second.name) ? second.name : second.name.toLowerCase()}
      </button>
    </div>
  );
}

function isLetter(name: string): boolean {
  return name.length === 1;
}

/** Level of the pair, and what sounds now. */
export function LessonLevel({ idea }: { readonly idea: Idea }) {
  const chosen = useTeaching((state) => state.matched[idea]);
  const isRoom = useIsRoom();
  if (isRoom)
    return (
      <div className="teach-level">
        <b>{isLevelMatched(idea, chosen) ? "Level-matched" : "As played"}</b>
        <SoundLine />
      </div>
    );
  return (
    <div className="teach-level">
      <Choice
        label="Level"
        options={[
          { value: "played", text: "As played", meaning: "Differences of loudness are real." },
          {
            value: "matched",
            text: "Level-matched",
            meaning: "Both equally loud, so that loudness does not give the answer away.",
          },
        ]}
        value={isLevelMatched(idea, chosen) ? "matched" : "played"}
        onChange={(value) => matchIdea(idea, value === "matched")}
      />
      <SoundLine />
    </div>
  );
}

/** What sounds now and how to stop it; why nothing does; else the usual caution. */
export function SoundLine() {
  const turn = useNowSounding();
  const blocked = useSound((state) => state.blocked);
  const isCautioned = useSound((state) => state.isCautioned);
  if (blocked !== null)
    return (
      <p className="row teach-line">
        <WarnSign /> {blocked}
      </p>
    );
  if (turn !== null)
    return (
      <p className="row teach-line">
        <button type="button" className="link link-sound" onClick={stopSound}>
          Stop
        </button>
        <span className="quiet">Now {turn}</span>
      </p>
    );
  return (
    <p className="quiet teach-line">{isCautioned ? "Held for three seconds" : headphoneCaution}</p>
  );
}
