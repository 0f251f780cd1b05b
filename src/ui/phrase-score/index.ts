export { PhraseHear } from "./phrase-hear.tsx";
export { PhraseScore } from "./phrase-score.tsx";
