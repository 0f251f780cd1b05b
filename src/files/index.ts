export { encodeWav, type WavFormat, type WavOptions } from "./wav.ts";
export type * from "./score/score-model.ts";
export { scorePart } from "./score/score-part.ts";
export {
  scoreOfVoicings,
  type ScoredVoicing,
  type VoicingScoreOptions,
} from "./score/score-of-voicings.ts";
export { scoreOfMelody } from "./score/score-of-melody.ts";
export { melodyOfScore, type MelodyAnswer, type MelodyReading } from "./score/melody-of-score.ts";
export { playedScore } from "./score/played-score.ts";
export { midiOf, musicXmlOf } from "./score/voicing-files.ts";
export { scoreOfPhrase, type PhraseScoreOptions } from "./score/score-of-phrase.ts";
export { midiOfPhrase, type PhraseMidiOptions } from "./score/midi-of-phrase.ts";
export { musicXmlOfPhrase } from "./score/phrase-files.ts";
export { writeMxl } from "./musicxml/write-mxl.ts";
export { writeMusicXml, type MusicXmlOptions } from "./musicxml/write-musicxml.ts";
export type { ScorePitch } from "./musicxml/staff-reading.ts";
export { readMusicXml, type ScoreReading } from "./musicxml/read-musicxml.ts";
export { readScoreFile } from "./musicxml/read-score-file.ts";
export { readMelodyFile } from "./read-melody-file.ts";
export { readAbc } from "./abc/read-abc.ts";
export { writeAbc } from "./abc/write-abc.ts";
export { writeMidi } from "./midi/write-midi.ts";
export {
  readMidi,
  type MidiFile,
  type MidiMark,
  type MidiNote,
  type MidiTrack,
} from "./midi/read-midi.ts";
export { renderWav, type BlockRenderer, type ByteSink } from "./render-wav.ts";
export type { RenderWavOptions } from "./render-wav.ts";
export type * from "./project/project-types.ts";
export { MODEL_VERSION } from "./project/model-version.ts";
export { writeProject, type WriteProjectOptions } from "./project/write-project.ts";
export { fitProject, type FittedProject } from "./project/fit-project.ts";
export { readProject } from "./project/read-project.ts";
export { readShareLink, writeShareLink } from "./project/share-link.ts";
export {
  openProjectStore,
  type ProjectStore,
  type SavedEntry,
  type SaveRequest,
  type StoredEntry,
  type StoredProject,
} from "./storage.ts";
export type { Shelf } from "./shelf.ts";
