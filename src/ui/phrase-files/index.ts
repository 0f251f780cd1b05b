export { PhraseFilesDoor } from "./phrase-files-door.tsx";
