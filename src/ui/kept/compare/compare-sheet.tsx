import { useEffect, useMemo, useState } from "react";
import { Button, Dialog, Heading, Modal, ModalOverlay } from "react-aria-components";
import { chooseWay, hearKept, matchLevels, stopSound, warmSound } from "../../actions/hear.ts";
import { useSound, type Way } from "../../actions/sound-state.ts";
import { Choice } from "../../parts/choice.tsx";
import { LevelChoice } from "../../parts/level-choice.tsx";
import { LiveRegion } from "../../parts/live-region.tsx";
import { ExportsDoor } from "../../exports/exports-door.tsx";
import { usePage } from "../../store.ts";
import { reportedKept, type ReportedKept } from "../reported-kept.ts";
import { CompareTable } from "./compare-table.tsx";
import "./compare.css";

/** The chosen voicings side by side, over the whole page. */
export function CompareSheet({ onClose }: { readonly onClose: () => void }) {
  useEffect(() => {
    warmSound();
    return stopSound;
  }, []);
  return (
    <ModalOverlay
      className="compare-ground"
      isOpen
      onOpenChange={(isOpen) => {
        if (!isOpen) onClose();
      }}
    >
      <Modal className="compare-modal">
        <Dialog className="compare">
          <Compared onClose={onClose} />
          <LiveRegion />
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}

function Compared({ onClose }: { readonly onClose: () => void }) {
  const kept = usePage((state) => state.history.present.kept);
  const compared = usePage((state) => state.history.present.compared);
  const chosen = useMemo(
    () => reportedKept(kept.filter(({ letter }) => compared.includes(letter))),
    [kept, compared],
  );
  const [against, setAgainst] = useState<string | null>(null);
  const base = chosen.find((one) => one.kept.letter === against) ?? chosen[0];
  return (
    <>
      <header className="compare-head">
        <Heading slot="title" level={1} className="loud">
          Side by side
        </Heading>
        {base !== undefined && (
          <Against chosen={chosen} base={base.kept.letter} onChange={setAgainst} />
        )}
        <HearTools chosen={chosen} />
        <ExportsDoor isDisabled={chosen.length === 0} />
        <Button className="link compare-close" onPress={onClose}>
          Close
        </Button>
      </header>
      {base === undefined ? (
        <p className="compare-none">Nothing is chosen any more. Close this and choose by letter.</p>
      ) : (
        <CompareTable chosen={chosen} base={base} onClose={onClose} />
      )}
    </>
  );
}

/** Which one the others are measured against. */
function Against(props: {
  readonly chosen: readonly ReportedKept[];
  readonly base: string;
  readonly onChange: (letter: string) => void;
}) {
  const { chosen, base, onChange } = props;
  return (
    <div className="row">
      <span className="quiet">Differences are against</span>
      <Choice
        label="Differences are against"
        options={chosen.map(({ kept }) => ({
          value: kept.letter,
          text: kept.letter,
          meaning: kept.name,
        }))}
        value={base}
        onChange={onChange}
      />
    </div>
  );
}

/** "Hear A, then B"; how many where letters would not fit. */
function turnsText(letters: readonly string[]): string {
  if (letters.length > 4) return `Hear all ${letters.length} in turn`;
  return `Hear ${letters.join(", then ")}`;
}

const ways: readonly { readonly value: Way; readonly text: string }[] = [
  { value: "hit", text: "Hit" },
  { value: "sustained", text: "Sustained" },
  { value: "rolled-from-bottom", text: "Rolled" },
];

/** In turn, in which way, at which level. */
function HearTools({ chosen }: { readonly chosen: readonly ReportedKept[] }) {
  const phase = useSound((state) => state.phase);
  const last = useSound((state) => state.last);
  const isMatched = useSound((state) => state.isMatched);
  const blocked = useSound((state) => state.blocked);
  return (
    <div className="row compare-hear" role="group" aria-label="Hear">
      {phase === "silent" ? (
        <button
          type="button"
          className="link link-sound"
          onClick={() => void hearKept(chosen.map(({ kept }) => kept))}
        >
          {turnsText(chosen.map(({ kept }) => kept.letter))}
        </button>
      ) : (
        <button type="button" className="link link-sound" onClick={stopSound}>
          Stop
        </button>
      )}
      <Choice label="Way to hear" options={ways} value={last} onChange={chooseWay} />
      <LevelChoice isMatched={isMatched} onMatch={matchLevels} />
      {blocked !== null && <span className="quiet">{blocked}</span>}
    </div>
  );
}
