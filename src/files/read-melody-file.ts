import type { Count, Problem } from "../base/index.ts";
import { readAbc } from "./abc/read-abc.ts";
import { decodeText } from "./decode-text.ts";
import { readScoreFile } from "./musicxml/read-score-file.ts";
import { melodyOfScore, type MelodyAnswer } from "./score/melody-of-score.ts";

/** Largest text that is opened, in bytes; a tune is a thousandth of it. */
const MOST_TEXT_BYTES: Count = 1_000_000;

/**
 * Reads a melody from a file, told by what is in it, whatever its name says: MusicXML, plain or
 * compressed, or ABC.
 * @param bytes - the file
 * @returns the melody with remarks, or everything wrong with it; problems of the music name their
 *   bar. Codes: "file-empty", "file-is-midi", "file-too-large", "file-not-text", and those of
 *   readScoreFile, melodyOfScore and readAbc
 */
export async function readMelodyFile(bytes: Uint8Array): Promise<MelodyAnswer> {
  if (bytes.length === 0) return refused({ code: "file-empty", message: "The file is empty." });
  if (startsWith(bytes, "MThd"))
    return refused({
      code: "file-is-midi",
      message:
        "This is a MIDI file, which holds no chord symbols; give the melody as MusicXML or ABC.",
    });
  if (isZip(bytes) || isXml(bytes)) {
    const read = readScoreFile(bytes);
    if (!read.ok) return refused(read.problem);
    const melody = melodyOfScore(read.value.score);
    if (!melody.ok) return melody;
    const remarks = [...read.value.remarks, ...melody.value.remarks];
    return { ok: true, value: { melody: melody.value.melody, remarks } };
  }
  if (bytes.length > MOST_TEXT_BYTES)
    return refused({
      code: "file-too-large",
      message: `A melody as text takes less than ${MOST_TEXT_BYTES / 1e6} MB; this file is larger.`,
    });
  const text = decodeText(bytes);
  return text.ok ? readAbc(text.value) : refused(text.problem);
}

const refused = (problem: Problem): MelodyAnswer => ({ ok: false, problems: [problem] });

const startsWith = (bytes: Uint8Array, word: string): boolean =>
  [...word].every((letter, index) => bytes[index] === letter.charCodeAt(0));

const isZip = (bytes: Uint8Array): boolean => startsWith(bytes, "PK");

/** The first sign is "<", in any encoding that is read; byte order marks and spaces may precede. */
function isXml(bytes: Uint8Array): boolean {
  const head = [...bytes.subarray(0, 400)].filter(
    (byte) => ![0x00, 0x09, 0x0a, 0x0d, 0x20, 0xef, 0xbb, 0xbf, 0xff, 0xfe].includes(byte),
  );
  return head[0] === 0x3c;
}
