import { useEffect, useMemo, useRef, type KeyboardEvent } from "react";
import type { PhraseWork } from "../../../explore/index.ts";
import { useSize } from "../../parts/use-size.ts";
import { usePhrase } from "../phrase-store.ts";
import { ChordInput } from "./chord-input.tsx";
import { entry, entryLength, useEntry } from "./entry-state.ts";
import { chainOf } from "./melody-edit.ts";
import { staffKey } from "./staff-keys.ts";
import { StaffLine } from "./staff-line.tsx";
import { planStaff, xOf } from "./staff-plan.ts";
import { staff } from "./staff-sizes.ts";

/** The note a moment or a repeated note belongs to. */
const noteIdOf = (id: string): string => id.replace(/[+~].*$/, "");

/** The melody on a staff: written by mouse, by keys, or played in. */
export function Staff({ work }: { readonly work: PhraseWork }) {
  const { melody } = work.question;
  const [room, size] = useSize<HTMLDivElement>({ width: 900, height: 300 });
  const lines = useMemo(() => planStaff(melody, Math.max(300, size.width)), [melody, size.width]);
  const at = useEntry((state) => state.at) * melody.division;
  const chordAt = useEntry((state) => state.chordAt);
  const gridLength = useEntry(entryLength) * melody.division;
  const { harmony, held, chosen } = useMarks(work);
  const keyed = (event: KeyboardEvent) => {
    if (event.target === event.currentTarget && staffKey(event)) event.preventDefault();
  };
  const last = lines.length - 1;
  const lineOf = (time: number) => {
    const found = lines.findIndex((line) => time < line.to);
    return found < 0 ? last : found;
  };
  const chordTime = chordAt === null ? null : chordAt * melody.division;
  const focus = useFocusBack(chordAt);
  return (
    <div
      className="staff"
      role="application"
      aria-roledescription="staff"
      aria-label={`Melody of ${melody.notes.length} notes`}
      aria-describedby="staff-help"
      tabIndex={0}
      ref={focus}
      onKeyDown={keyed}
      data-testid="staff"
    >
      <div ref={room} className="staff-room">
        {lines.map((line, index) => (
          <div key={line.from} className="staff-line-room">
            <StaffLine
              line={line}
              melody={melody}
              width={Math.max(300, size.width)}
              isLast={index === last}
              harmony={harmony}
              held={held}
              chosen={chosen}
              cursor={lineOf(at) === index ? at : null}
              gridLength={gridLength}
            />
            {chordTime !== null && lineOf(chordTime) === index && (
              <ChordInput
                key={chordTime}
                melody={melody}
                at={chordTime}
                x={xOf(line, chordTime)}
                y={staff.chords}
              />
            )}
          </div>
        ))}
      </div>
    </div>
  );
}

/** How notes are harmonised, which are fixed, and where the user is. */
function useMarks(work: PhraseWork) {
  const { melody, locks } = work.question;
  const place = usePhrase((state) => state.place?.momentId);
  const harmonised = usePhrase((state) => state.view?.phrase.harmonised);
  const harmony = useMemo(
    () => new Map((harmonised ?? []).map((one) => [one.note.id, one])),
    [harmonised],
  );
  const held = useMemo(
    () => new Set([...locks.notes, ...locks.moments].map(({ momentId }) => noteIdOf(momentId))),
    [locks],
  );
  const chosen = useMemo(
    () => new Set(place === undefined ? [] : chainOf(melody, noteIdOf(place))),
    [melody, place],
  );
  // The cursor follows where the user goes elsewhere in the view, and else moves by itself.
  const followed = useRef(place);
  useEffect(() => {
    if (followed.current === place) return;
    followed.current = place;
    const note = melody.notes.find(({ id }) => place !== undefined && id === noteIdOf(place));
    if (note !== undefined) entry.setState({ at: note.onset / melody.division });
  }, [melody, place]);
  return { harmony, held, chosen };
}

/** The staff takes the focus back when a chord's field closes. */
function useFocusBack(chordAt: number | null) {
  const staffRef = useRef<HTMLDivElement>(null);
  const before = useRef<number | null>(null);
  useEffect(() => {
    const isGone = document.activeElement === null || document.activeElement === document.body;
    if (before.current !== null && chordAt === null && isGone) staffRef.current?.focus();
    before.current = chordAt;
  }, [chordAt]);
  return staffRef;
}
