import { strToU8, zipSync } from "fflate";

/** Source: W3C MusicXML 4.0, container file; its media types. */
const SCORE_TYPE = "application/vnd.recordare.musicxml+xml";
const ZIP_TYPE = "application/vnd.recordare.musicxml";
const SCORE_NAME = "score.musicxml";
const CONTAINER = `<?xml version="1.0" encoding="UTF-8"?>
<container>
  <rootfiles>
    <rootfile full-path="${SCORE_NAME}" media-type="${SCORE_TYPE}"/>
  </rootfiles>
</container>
`;
/** Every file of ours bears this date, so that the same score gives the same bytes. */
const DATE = new Date(1980, 0, 1);

/**
 * Packs a MusicXML document as a compressed file.
 * @param musicXml - the document
 * @returns the bytes of the .mxl file: the media type first and unpacked, the container, the score
 * @source W3C MusicXML 4.0, compressed .mxl files
 */
export function writeMxl(musicXml: string): Uint8Array {
  return zipSync(
    {
      mimetype: [strToU8(ZIP_TYPE), { level: 0 }],
      "META-INF/container.xml": strToU8(CONTAINER),
      [SCORE_NAME]: strToU8(musicXml),
    },
    { mtime: DATE },
  );
}
