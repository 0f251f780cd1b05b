import type { KeyboardEvent } from "react";
import { Button, Dialog, DialogTrigger, Popover } from "react-aria-components";
import { askMelody } from "../actions/ask.ts";
import { endTyping } from "../actions/steps.ts";
import { usePage } from "../store.ts";
import { problemId, useIsWrong } from "./field-problem.tsx";
import { KeyboardPicker } from "./keyboard-picker.tsx";
import { stepMelody, useMelody } from "./melody-now.ts";
import { SmallStaff, StaffPicker } from "./staff-picker.tsx";

/** What the arrow keys step to, MIDI: C1 to C8, wider than any horn. */
const reach = { low: 24, high: 108 };

/** The melody note: typed, stepped with the arrow keys, or picked on a staff or a keyboard. */
export function MelodyField() {
  const text = usePage((state) => state.history.present.inquiry.melodyText);
  const isBad = useIsWrong("melody");
  const lead = useMelody();
  const keyed = (event: KeyboardEvent) => {
    if (stepMelody(event.key, reach)) event.preventDefault();
  };
  return (
    <div className={isBad ? "field field-melody field-bad" : "field field-melody"}>
      <label htmlFor="melody">
        Melody<span className="desk-only">, sounding</span>
      </label>
      <div className="row melody-line">
        <input
          id="melody"
          className="loud"
          value={text}
          placeholder="D5"
          spellCheck={false}
          autoComplete="off"
          maxLength={8}
          aria-invalid={isBad}
          title="A letter and an octave, C4 is middle C; arrow keys step it"
          {...(isBad ? { "aria-describedby": problemId("melody") } : {})}
          onChange={(event) => askMelody(event.target.value)}
          onBlur={endTyping}
          onKeyDown={keyed}
        />
        <DialogTrigger>
          <Button className="melody-open" aria-label="Pick the melody note on a staff or keyboard">
            <SmallStaff sounding={isBad || text === "" ? undefined : lead} />
          </Button>
          <Popover className="pop melody-pop" placement="bottom start">
            <Dialog className="melody-dialog" aria-label="Pick the melody note">
              <StaffPicker />
              <KeyboardPicker />
            </Dialog>
          </Popover>
        </DialogTrigger>
      </div>
    </div>
  );
}
