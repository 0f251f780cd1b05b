export { PhraseHear } from "./phrase-hear.tsx";
