import { lessonTextures, searchSteps, type LessonTexture } from "../../../src/explore/index.ts";
import type { LayerId, Question } from "../../../src/voicing/index.ts";

const layers: readonly LayerId[] = ["free", "by-section", "crossed"];

const known = new Map<string, readonly LessonTexture[]>();

/** Every harmony of a question, of all three layers; searched once a question. */
export function texturesOf(question: Question): readonly LessonTexture[] {
  const key = JSON.stringify(question);
  const found = known.get(key) ?? searched(question);
  known.set(key, found);
  return found;
}

function searched(question: Question): readonly LessonTexture[] {
  return layers.flatMap((layer) => {
    const search = searchSteps(question, layer);
    let step = search.next();
    while (!step.done) step = search.next();
    return lessonTextures(question, layer, step.value.cells);
  });
}
