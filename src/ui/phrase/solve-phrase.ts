import type { PhraseWork } from "../../explore/index.ts";
import {
  performPhrase,
  type Phrase,
  type PhraseAnswer,
  type PhraseQuestion,
} from "../../phrase/index.ts";
import { announce } from "../actions/announce.ts";
import { page, session } from "../store.ts";
import { askWorker, stopWorker } from "./phrase-client.ts";
import { phraseStore } from "./phrase-store.ts";
import { stillOffered } from "./alternatives.ts";
import { hearOfSearch } from "./search-news.ts";

/** What was found for a question; undo comes back to it at once. */
interface Found {
  readonly phrase: Phrase;
  readonly answer: PhraseAnswer;
  readonly isWhole: boolean;
}

const found = new WeakMap<PhraseQuestion, Found>();
let asked: PhraseQuestion | null = null;
let isFollowing = false;

/** Follows the session: whenever its phrase changes, the answer is worked out again. */
export function followPhrase(): void {
  if (isFollowing) return;
  isFollowing = true;
  page.subscribe(({ history: { present } }, { history: before }) => {
    if (present.phrase !== before.present.phrase) answerPhrase();
  });
  answerPhrase();
}

/** Works out what the session's phrase asks for. */
function answerPhrase(): void {
  const work = session().phrase;
  if (work === null) return forget();
  if (work.question !== asked) ask(work);
  else refresh(work);
}

function forget(): void {
  stopWorker();
  asked = null;
  phraseStore.setState({
    view: null,
    searching: null,
    alternatives: null,
    problems: [],
    fault: null,
    place: null,
  });
}

function ask({ question }: PhraseWork): void {
  asked = question;
  stopWorker();
  phraseStore.setState(({ alternatives }) => ({
    searching: null,
    fault: null,
    alternatives: stillOffered(alternatives, question),
  }));
  const known = found.get(question);
  if (known !== undefined) {
    phraseStore.setState({ problems: [] });
    show(known);
    if (known.isWhole) return;
  }
  search(question);
}

/** Goes on with a search that was stopped. */
export function searchOn(): void {
  const work = session().phrase;
  if (work !== null) search(work.question);
}

function search(question: PhraseQuestion): void {
  let phrase: Phrase | null = null;
  askWorker(question, (reply) => {
    if (reply.kind === "read") {
      ({ phrase } = reply);
      const { length } = phrase.moments;
      phraseStore.setState({ problems: [], searching: { done: 0, all: length } });
    } else if (reply.kind === "answer" && phrase !== null) {
      const { answer, isWhole } = reply;
      const known = { phrase, answer, isWhole };
      found.set(question, known);
      if (isWhole) phraseStore.setState({ searching: null });
      show(known);
      if (isWhole) announce(`The phrase is voiced: ${phrase.moments.length} moments.`);
    } else hearOfSearch(reply);
  });
}

function show({ phrase, answer, isWhole }: Found): void {
  const work = session().phrase;
  if (work === null) return;
  const performance = performPhrase(phrase, answer, { articulations: work.articulations });
  phraseStore.setState(({ place }) => ({
    view: { work, phrase, answer, performance, isWhole },
    place: phrase.moments.some(({ moment }) => moment.id === place?.momentId) ? place : null,
  }));
}

/** The same question: other marks, or other words typed. */
function refresh(work: PhraseWork): void {
  const { view } = phraseStore.getState();
  if (view === null || view.work.question !== work.question || view.work === work) return;
  const isSame = view.work.articulations === work.articulations;
  const { phrase, answer } = view;
  const performance = isSame
    ? view.performance
    : performPhrase(phrase, answer, { articulations: work.articulations });
  phraseStore.setState({ view: { ...view, work, performance } });
}
