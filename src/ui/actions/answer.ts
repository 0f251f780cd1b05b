import type { SectionId } from "../../band/index.ts";
import { readInquiry, referencePoints } from "../../explore/index.ts";
import type { Answer, Asked, LayerMap } from "../state/page-state.ts";
import type { ShownLayer } from "../state/shown-layer.ts";
import { viewOf } from "../state/view-of.ts";
import { page, session } from "../store.ts";
import { namerOf } from "../words/pitch-names.ts";
import { atlasLink } from "./atlas-link.ts";
import { explainGaps } from "./explain-gaps.ts";
import { shadeMap } from "./shade.ts";

/** A search that takes longer shows its progress, ms. */
const patienceMs = 300;

/** The best there is, whoever sounds. */
const freeLayer: ShownLayer = { layer: "free", sections: null };

const isFree = ({ layer, sections }: ShownLayer): boolean => layer === "free" && sections === null;

/** The layer in view; a section that left the line-up is not waited for. */
function shownLayer(): ShownLayer {
  const { layer, sections, inquiry } = session();
  const has = (section: SectionId) => inquiry.players.some((each) => each.section === section);
  return { layer, sections: sections?.every(has) === true ? sections : null };
}

let slowTimer: ReturnType<typeof setTimeout> | undefined;

/** Reads the question as it stands; searches when it can be read, else says what is wrong. */
export function answerQuestion(): void {
  const { inquiry } = session();
  const layer = shownLayer();
  const reading = readInquiry(inquiry);
  callOff();
  if (!reading.ok) {
    // A chord that cannot be read has no tones: those of the last one stay.
    const strip = reading.strip.length > 0 ? reading.strip : page.getState().strip;
    return page.setState({ strip, problems: reading.problems });
  }
  page.setState({ strip: reading.strip, problems: [], emptyPlace: null, nextFew: null });
  const asked: Asked = {
    inquiry,
    question: reading.question,
    strip: reading.strip,
    remarks: reading.remarks,
    nameOf: namerOf(reading.question.chord),
  };
  searchLayer(asked, freeLayer, undefined, (free) => {
    if (isFree(layer)) settle(asked, free, free);
    else searchLayer(asked, layer, free, (map) => settle(asked, free, map));
  });
}

/** Searches another layer of the question that is answered already. */
export function answerLayer(): void {
  const { answer } = page.getState();
  const layer = shownLayer();
  callOff();
  if (answer === null || !answer.free.isWhole) return answerQuestion();
  const { asked, free } = answer;
  if (isFree(layer)) return settle(asked, free, free);
  searchLayer(asked, layer, free, (map) => settle(asked, free, map));
}

/** Ends the search; what is found stays. */
export function stopHere(): void {
  callOff();
}

/** Works the voicing in view out again, after a step that changed no question. */
export function refreshView(): void {
  const { answer, drag, view } = page.getState();
  if (answer !== null)
    page.setState({ view: viewOf(answer, session(), drag?.pitches ?? null, view) });
}

function callOff(): void {
  clearTimeout(slowTimer);
  if (page.getState().searching === null) return;
  atlasLink().stopSearch();
  page.setState({ searching: null });
}

function searchLayer(
  asked: Asked,
  layer: ShownLayer,
  free: LayerMap | undefined,
  whole: (map: LayerMap) => void,
): void {
  page.setState({
    fault: null,
    searching: { asked, cells: [], groupsDone: 0, groups: 0, isSlow: false },
  });
  slowTimer = setTimeout(() => {
    const { searching } = page.getState();
    if (searching !== null) page.setState({ searching: { ...searching, isSlow: true } });
    showPartly(asked, layer, free);
  }, patienceMs);
  atlasLink().search(asked.question, layer, {
    found(cells, groupsDone, groups) {
      const { searching } = page.getState();
      if (searching === null) return;
      const all = [...searching.cells, ...cells];
      page.setState({ searching: { ...searching, cells: all, groupsDone, groups } });
      if (searching.isSlow) showPartly(asked, layer, free);
    },
    done(cells, _counts, emptiedBy) {
      clearTimeout(slowTimer);
      page.setState({ searching: null });
      whole({ ...layer, cells, isWhole: true, emptiedBy });
    },
    failed(message) {
      clearTimeout(slowTimer);
      page.setState({ searching: null, fault: message });
    },
  });
}

/** Shows the cells found so far of a search that takes its time. */
function showPartly(asked: Asked, layer: ShownLayer, free: LayerMap | undefined): void {
  const { searching, answer } = page.getState();
  if (searching === null || searching.cells.length === 0) return;
  const map: LayerMap = { ...layer, cells: searching.cells, isWhole: false, emptiedBy: [] };
  const isSame = answer?.asked === asked;
  show({
    asked,
    free: free ?? map,
    map,
    references: isSame ? answer.references : [],
    gapWords: new Map(),
  });
}

function settle(asked: Asked, free: LayerMap, map: LayerMap): void {
  const { answer } = page.getState();
  const references = answer?.asked === asked ? answer.references : [];
  show({ asked, free, map, references, gapWords: new Map() });
  shadeMap();
  void explainGaps();
  if (references.length === 0) setTimeout(() => placeReferences(asked), 0);
}

function show(answer: Answer): void {
  const { drag, view, answer: before } = page.getState();
  const sameQuestion = before?.asked === answer.asked;
  page.setState({
    answer,
    view: viewOf(answer, session(), drag?.pitches ?? null, sameQuestion ? view : null),
  });
}

/** The textbook voicings come a moment after the map, so that the map never waits for them. */
function placeReferences(asked: Asked): void {
  const { answer } = page.getState();
  if (answer?.asked !== asked) return;
  page.setState({ answer: { ...answer, references: referencePoints(asked.question) } });
}
