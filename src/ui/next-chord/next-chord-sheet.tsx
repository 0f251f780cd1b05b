import { useEffect, useMemo } from "react";
import { Button, Dialog, Heading, Modal, ModalOverlay } from "react-aria-components";
import { stopSound, warmSound } from "../actions/hear.ts";
import { LiveRegion } from "../parts/live-region.tsx";
import { usePage } from "../store.ts";
import { Continuations } from "./continuations.tsx";
import { beginNext, leaveNext, stepNow, turnRound } from "./next-chord-actions.ts";
import { useNextChord } from "./next-chord-store.ts";
import { Choice } from "../parts/choice.tsx";
import { NextFields } from "./next-fields.tsx";
import { NextHear } from "./next-hear.tsx";
import { StepView } from "./step-view.tsx";
import "./next-chord.css";

/** The voicing in view on its way into a neighbouring chord, over the whole page. */
export function NextChordSheet({ onClose }: { readonly onClose: () => void }) {
  const held = usePage((state) => JSON.stringify(state.view?.pitches ?? null));
  useEffect(() => {
    warmSound();
    return () => {
      stopSound();
      leaveNext();
    };
  }, []);
  // Undo may bring another voicing into view.
  useEffect(beginNext, [held]);
  return (
    <ModalOverlay
      className="next-ground"
      isOpen
      onOpenChange={(isOpen) => {
        if (!isOpen) onClose();
      }}
    >
      <Modal className="next-modal">
        <Dialog className="next">
          <header className="next-head">
            <Heading slot="title" level={1} className="loud">
              The next chord
            </Heading>
            <Direction />
            <Button className="link next-close" onPress={onClose}>
              Close
            </Button>
          </header>
          <NextFields />
          <NextBody />
          <LiveRegion />
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}

function Direction() {
  const isAfter = useNextChord((state) => state.isAfter);
  return (
    <Choice
      label="Direction"
      options={[
        { value: "after", text: "Into the chord after" },
        { value: "before", text: "Out of the chord before" },
      ]}
      value={isAfter ? "after" : "before"}
      onChange={(value) => turnRound(value === "after")}
    />
  );
}

/** Continuations, the one picked, and how to hear it. */
function NextBody() {
  const found = useNextChord((state) => state.found);
  const picked = useNextChord((state) => state.picked);
  const answered = useNextChord((state) => state.answered);
  const view = usePage((state) => state.view);
  const problem = useNextChord((state) => state.problem);
  // The step is worked out from the stores; it changes with what is read here.
  const step = useMemo(
    () =>
      found.length > 0 && picked !== null && answered !== null && view !== null ? stepNow() : null,
    [found, picked, answered, view],
  );
  return (
    <div className="next-body">
      <Continuations />
      {step === null ? (
        <p className="next-wait quiet">
          {problem === "" ? "Looking …" : "Nothing to show until that is put right."}
        </p>
      ) : (
        <StepView step={step} />
      )}
      <NextHear step={step} />
    </div>
  );
}
