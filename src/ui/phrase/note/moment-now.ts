import type { AskedMoment, Harmonised, VoicedMoment } from "../../../phrase/index.ts";
import { placeText } from "../../../theory/index.ts";
import { goTo } from "../phrase-actions.ts";
import { phraseStore, usePhrase, type PhraseInView } from "../phrase-store.ts";

/** The moment the user is at. */
export interface MomentNow {
  readonly view: PhraseInView;
  readonly asked: AskedMoment;
  readonly voiced: VoicedMoment;
  readonly harmonised: Harmonised;
  /** "bar 3, beat 2". */
  readonly where: string;
}

/**
 * The moment the user is at; the first one until they went somewhere.
 * @returns undefined while nothing is voiced
 */
export function useMomentNow(): MomentNow | undefined {
  const view = usePhrase((state) => state.view);
  const momentId = usePhrase((state) => state.place?.momentId);
  if (view === null) return undefined;
  const { phrase, answer } = view;
  const wanted = phrase.moments.findIndex(({ moment }) => moment.id === momentId);
  const index = Math.max(0, wanted);
  const asked = phrase.moments[index];
  const voiced = answer.moments[index];
  const harmonised = phrase.harmonised.find(({ note }) => note.id === asked?.moment.noteId);
  if (asked === undefined || voiced === undefined || harmonised === undefined) return undefined;
  const where = placeText(phrase.melody, asked.moment.onset);
  return { view, asked, voiced, harmonised, where };
}

/** Goes to the moment before or after. */
export function stepMoment(by: 1 | -1): void {
  const { view, place } = phraseStore.getState();
  if (view === null) return;
  const { moments } = view.phrase;
  const at = moments.findIndex(({ moment }) => moment.id === place?.momentId);
  const next = moments[Math.max(0, Math.min(moments.length - 1, Math.max(0, at) + by))];
  if (next !== undefined) goTo({ momentId: next.moment.id, playerId: null });
}
