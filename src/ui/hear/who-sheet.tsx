import { Switch } from "react-aria-components";
import type { Player } from "../../band/index.ts";
import { chooseWho, hearView, stopSound } from "../actions/hear.ts";
import { everybody, useSound } from "../actions/sound-state.ts";
import { Choice } from "../parts/choice.tsx";
import { SectionSign } from "../parts/section-mark.tsx";
import { SheetFrame } from "../parts/sheet.tsx";

/** Chooses any players, alone or against the rest. */
export function WhoSheet(props: {
  readonly players: readonly Player[];
  readonly isOpen: boolean;
  readonly onOpen: (isOpen: boolean) => void;
}) {
  const { players, isOpen, onOpen } = props;
  return (
    <SheetFrame title="Who is heard" open={{ isOpen, onChange: onOpen }}>
      <WhoFields players={players} />
    </SheetFrame>
  );
}

function WhoFields({ players }: { readonly players: readonly Player[] }) {
  const who = useSound((state) => state.who);
  const isSilent = useSound((state) => state.phase === "silent");
  const { playerIds, others } = who;
  const turn = (id: string, isIn: boolean) =>
    chooseWho({
      others,
      playerIds: isIn ? [...playerIds, id] : playerIds.filter((other) => other !== id),
    });
  return (
    <>
      <p className="sheet-lead">
        Players who are on stand out. With nobody on, everybody is heard as written.
      </p>
      <div className="row sheet-line">
        <span id="others-label">The others</span>
        <Choice
          label="The others"
          options={[
            { value: "silent", text: "Silent" },
            { value: "softer", text: "12 dB softer" },
          ]}
          value={others}
          onChange={(value) => chooseWho({ playerIds, others: value })}
        />
      </div>
      <div className="who-players">
        {players.map(({ id, name, section }) => (
          <Switch
            key={id}
            className="switch switch-player"
            isSelected={playerIds.includes(id)}
            onChange={(isIn) => turn(id, isIn)}
          >
            <span className="switch-sign" aria-hidden="true">
              {playerIds.includes(id) ? "on" : "off"}
            </span>
            <SectionSign section={section} />
            {name}
          </Switch>
        ))}
      </div>
      <div className="row">
        <button
          type="button"
          className="link link-sound"
          onClick={() => (isSilent ? hearView("way") : stopSound())}
        >
          {isSilent ? "Hear them" : "Stop"}
        </button>
        <button type="button" className="link" onClick={() => chooseWho(everybody)}>
          Everybody
        </button>
      </div>
    </>
  );
}
