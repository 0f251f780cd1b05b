import { SectionSign } from "../parts/section-mark.tsx";
import { Sheet } from "../parts/sheet.tsx";
import type { PhraseInView } from "../phrase/phrase-store.ts";
import { hearOtherwise } from "./phrase-sound.ts";
import { usePhraseSound } from "./phrase-sound-state.ts";
import { Toggle } from "./toggle.tsx";
import { groupsOf, turned, type HeardGroup } from "./who-words.ts";

/** Who is heard, player by player. */
export function HeardSheet({ view }: { readonly view: PhraseInView }) {
  const hasChoice = usePhraseSound(
    ({ silentIds, aloneIds }) => silentIds.length + aloneIds.length > 0,
  );
  return (
    <Sheet title="Who is heard" control="Player by player">
      <p className="sheet-lead">
        Alone: nobody else is heard. Silent: left out. Both work while the phrase sounds.
      </p>
      <div className="heard-groups">
        {groupsOf(view).map((group) => (
          <Group key={group.section} group={group} />
        ))}
      </div>
      <button
        type="button"
        className="link"
        disabled={!hasChoice}
        onClick={() => hearOtherwise({ silentIds: [], aloneIds: [] })}
      >
        Everybody
      </button>
    </Sheet>
  );
}

function Group({ group }: { readonly group: HeardGroup }) {
  const { section, name, players } = group;
  const ids = players.map(({ id }) => id);
  return (
    <fieldset className="heard-group">
      <legend className="row">
        <SectionSign section={section} />
        {name}
      </legend>
      <Line name={`All ${name.toLowerCase()}`} ids={ids} />
      {players.map((player) => (
        <Line key={player.id} name={player.name} ids={[player.id]} />
      ))}
    </fieldset>
  );
}

function Line({ name, ids }: { readonly name: string; readonly ids: readonly string[] }) {
  const silentIds = usePhraseSound((state) => state.silentIds);
  const aloneIds = usePhraseSound((state) => state.aloneIds);
  const isAlone = ids.every((id) => aloneIds.includes(id));
  const isSilent = ids.every((id) => silentIds.includes(id));
  return (
    <div className="row heard-line">
      <span>{name}</span>
      <Toggle
        isOn={isAlone}
        label={`${name} alone`}
        onTurn={(isOn) => hearOtherwise({ aloneIds: turned(aloneIds, ids, isOn) })}
      >
        Alone
      </Toggle>
      <Toggle
        isOn={isSilent}
        label={`${name} silent`}
        onTurn={(isOn) => hearOtherwise({ silentIds: turned(silentIds, ids, isOn) })}
      >
        Silent
      </Toggle>
    </div>
  );
}
